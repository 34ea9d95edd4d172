// The worksheet: the plan on paper, set-up by set-up, and its plain forms.

#pragma once

#include "plan/plan.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::sheet {

enum class Paper { letter, a4 };

struct SheetOptions {
    Paper paper = Paper::letter;
    /// Address of the style sheet to link; empty: the style is written into the page, so that the
    /// file stands alone (the browser page links, because its content policy forbids inline style).
    std::string style_address;
    bool workings = true; ///< every formula of the job with its source, at the end
    /// Title of a source by its key; without it (or for an empty answer) the key itself is printed.
    std::function<std::string(std::string_view)> source_title = {};
};

/// The style sheet itself (what a linking page has to serve).
[[nodiscard]] std::string worksheet_style();

[[nodiscard]] std::string worksheet_html(const plan::Plan& plan,
                                         const job::Job& job,
                                         const equipment::Shop& shop,
                                         const job::Catalog& catalog,
                                         const SheetOptions& options);
/// One row per operation: mark, count, section, grade, operation, set-up, tools, verdict, margin.
[[nodiscard]] std::string
worksheet_csv(const plan::Plan& plan, const job::Job& job, const equipment::Shop& shop);
/// The plan as JSON, SI units, keys ending in their unit.
[[nodiscard]] std::string
plan_json(const plan::Plan& plan, const job::Job& job, const equipment::Shop& shop);

/// The safety notice, the same words at first start and on every sheet.
[[nodiscard]] const char* safety_notice();
/// Its first sentence, where every line counts.
[[nodiscard]] const char* manual_decides();
/// The cautions for the stations and attachments a plan uses, in our own words.
[[nodiscard]] std::vector<std::string> cautions(const plan::Plan& plan,
                                                const equipment::Shop& shop);
/// Those of one set-up's station and attachment alone.
[[nodiscard]] std::vector<std::string> set_up_cautions(const plan::Tooling& tools,
                                                       const equipment::Shop& shop);
/// Before anybody reaches between the tools.
[[nodiscard]] const char* tool_change_caution();

} // namespace treadle::sheet
