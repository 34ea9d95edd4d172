// Private to the room: the pieces that worksheet_html is put together from.

#pragma once

#include "sheet/html.h"
#include "sheet/worksheet.h"

namespace treadle::sheet {

struct SheetInputs {
    const plan::Plan& plan;
    const job::Job& job;
    const equipment::Shop& shop;
    const job::Catalog& catalog;
    const SheetOptions& options;
};

void write_summary(Html& html, const SheetInputs& in);
/// The set-ups shared out, where two or more work at the machine.
void write_at_once(Html& html, const SheetInputs& in);
/// Searches with a counted budget, so that page and command write the same.
void write_stock(Html& html, const SheetInputs& in);
void write_set_ups(Html& html, const SheetInputs& in);
void write_parts(Html& html, const SheetInputs& in);
void write_not_made(Html& html, const SheetInputs& in);
void write_shopping(Html& html, const SheetInputs& in);
void write_tools(Html& html, const SheetInputs& in);
void write_workings(Html& html, const SheetInputs& in);

/// The order of a part's bends, a small side view after each.
void write_bend_order(Html& html, const SheetInputs& in, const plan::PartPlan& part);
/// How the part lies for a bend and what its stop is set to; empty where no order is planned.
[[nodiscard]] std::vector<std::string>
bend_settings(const plan::PartPlan& part, int operation, PrintStyle style);

/// A shape and a word: never by colour alone.
void write_verdict(Html& html, plan::Outcome outcome, const std::string& words);

} // namespace treadle::sheet
