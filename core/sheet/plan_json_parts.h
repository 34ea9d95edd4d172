// Private to the room: the pieces of the plan's JSON that stand in a file of their own.

#pragma once

#include "base/json_writer.h"
#include "plan/plan.h"

namespace treadle::sheet {

/// Null for one operator. Figures are minutes, or strokes where the shop's times are not known.
void write_at_once(base::JsonWriter& json, const plan::Plan& plan, const equipment::Shop& shop);

} // namespace treadle::sheet
