// The worksheet: the plan on paper, set-up by set-up, and its plain forms.

#pragma once

#include "plan/plan.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::sheet {

enum class Paper { letter, a4 };
enum class SheetUnits { as_job, inch, metric, both };

/// What is printed: sheets for the one who sets up, fetches, cuts, bends, checks.
struct SheetKinds {
    bool summary = true;  ///< parts with verdicts, and what is not made
    bool tools = true;    ///< to fetch and to buy
    bool set_ups = true;  ///< cautions, power, set-ups with stops, first pieces and hold points
    bool cutting = true;  ///< bars with their stops and drops
    bool parts = true;    ///< drawings flat and bent
    bool workings = true; ///< every formula of the job with its source
};

struct SheetOptions {
    Paper paper = Paper::letter;
    SheetUnits units = SheetUnits::as_job;
    SheetKinds kinds = {};
    // Said at the foot of every page when given: the core knows no clock and no build.
    std::string date = {};
    std::string program = {};
    std::string code = {}; ///< of the job, so that a sheet is known to be of this one
    /// Boxes to tick are controls, each with its key in data-tick; else they are drawn.
    bool live_ticks = false;
    /// Whether a box is ticked, by its key; without it none is.
    std::function<bool(std::string_view)> ticked = {};
    /// Address of the style sheet to link; empty: the style is written into the page, so that the
    /// file stands alone (the browser page links, because its content policy forbids inline style).
    std::string style_address;
    /// Address of the page that opens jobs; empty: not known, and the sheet says nothing of it.
    std::string link_page = {};
    /// The whole address that opens this job; empty: the job is too long for one.
    std::string link = {};
    /// Title of a source by its key; without it (or for an empty answer) the key itself is printed.
    std::function<std::string(std::string_view)> source_title = {};
};

/// How figures are printed on such a paper.
[[nodiscard]] PrintStyle sheet_style(PrintStyle of_job, SheetUnits units);
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
struct CautionInputs {
    const plan::Plan& plan;
    const job::Job& job;
    const equipment::Shop& shop;
    const job::Catalog& catalog;
};
struct CautionLine {
    std::string words;
    std::string anchor; ///< the paragraph behind it, or that it is common practice
};
/// Said in place of cautions when there is no table of them.
inline constexpr const char* k_cautions_missing =
    "The cautions are missing from this program: read the machine's manual before any stroke.";
/// Those of every job, then those that the plan's operations, metals and tools call for.
/// With `only`, of that work alone.
[[nodiscard]] std::vector<CautionLine> cautions(const CautionInputs& in,
                                                std::optional<equipment::Work> only = std::nullopt);
/// Those of one set-up's operations alone.
[[nodiscard]] std::vector<CautionLine> set_up_cautions(const CautionInputs& in,
                                                       const plan::SetUp& set_up);
/// Before anybody reaches between the tools.
[[nodiscard]] std::string tool_change_caution(const job::Catalog& catalog);

} // namespace treadle::sheet
