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
    PrintStyle style; ///< of this paper; what is planned keeps to the job's own
};

/// A box to tick, by a key that stays while what it is for stays.
void write_tick(Html& html, const SheetInputs& in, const std::string& key, const std::string& name);
/// Ticks of a list: each line has a box of its own.
void write_ticks(Html& html,
                 const SheetInputs& in,
                 const std::string& key,
                 const std::vector<std::string>& lines);
/// The first piece of a set-up: what is measured, room for what was, and where to hold.
void write_first_pieces(Html& html, const SheetInputs& in, const plan::SetUp& set_up, int number);

/// A code to scan, where it is known which page opens it and the job is short enough.
void write_code(Html& html, const SheetInputs& in);
void write_summary(Html& html, const SheetInputs& in);
/// The set-ups shared out, where two or more work at the machine.
void write_at_once(Html& html, const SheetInputs& in);
/// Searches with a counted budget, so that page and command write the same.
void write_stock(Html& html, const SheetInputs& in);
void write_set_ups(Html& html, const SheetInputs& in);
/// What made some of the parts: elevation, rules met and broken. Nothing in a job without layouts.
void write_layouts(Html& html, const SheetInputs& in);
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
