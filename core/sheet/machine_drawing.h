// The piece as it lies at the machine: datum end and edge heavy, the place of this step heavier
// than the rest, and a bar for each stop that is set. No text: the figures stand beside it, large.

#pragma once

#include "plan/machine_steps.h"
#include "sheet/drawing.h"

namespace treadle::sheet {

/// Of a step on a part; a bend is drawn from the side, after it.
[[nodiscard]] Drawing draw_machine_step(const plan::PartPlan& plan, const plan::MachineStep& step);

} // namespace treadle::sheet
