// Private to the room: how a set-up is set, how its steps are worked off, and edges to grind.

#pragma once

#include "base/json_writer.h"
#include "plan/plan.h"

namespace treadle::sheet {

/// "settings": null where nothing is set. Lengths are null where they are not known.
void write_settings(base::JsonWriter& json,
                    const plan::SetUp& set_up,
                    const equipment::Shop& shop,
                    PrintStyle style);
/// Into an open step: batches, what is measured on the first piece, and its mark.
void write_step_work(base::JsonWriter& json,
                     const plan::Plan& plan,
                     const plan::Step& step,
                     const equipment::Shop& shop);
/// "wear": a line for each cutting tool of the crib.
void write_wear(base::JsonWriter& json,
                const plan::Plan& plan,
                const equipment::Shop& shop,
                PrintStyle style);

} // namespace treadle::sheet
