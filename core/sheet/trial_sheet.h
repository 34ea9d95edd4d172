// Private to the room: trial strips, and how far finished legs come out, on the sheet and in JSON.

#pragma once

#include "base/json_writer.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

/// What each record of trial strips gives, and the blank of every part that goes by it.
void write_trials(Html& html, const SheetInputs& in);
/// A bent part's legs against the class asked for; nothing for a part without bends.
void write_leg_spreads(Html& html, const SheetInputs& in, const plan::PartPlan& part);
/// "leg_spreads": a line for each leg of a bent part.
void write_leg_spreads(base::JsonWriter& json,
                       const plan::PartPlan& part,
                       const job::Job& job,
                       const equipment::Shop& shop);

} // namespace treadle::sheet
