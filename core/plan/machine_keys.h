// Private to the room: by what a step at the machine is known again when the plan is made anew.
//
// Names and sizes go in, never an index of a list of the shop: a punch more in the crib changes no
// step. Lengths count to the micrometre.

#pragma once

#include "plan/machine_steps.h"

#include <string>

namespace treadle::plan {

/// The set-up itself: its place is what is mounted, its content what is set.
[[nodiscard]] StepKey set_up_key(const SetUp& set_up, const equipment::Shop& shop);
/// A step on a part, in this set-up. Its part, operation, position and kind are filled in.
[[nodiscard]] StepKey work_key(const MachineStep& step,
                               const PartPlan& part,
                               const SetUp& set_up,
                               const equipment::Shop& shop);

} // namespace treadle::plan
