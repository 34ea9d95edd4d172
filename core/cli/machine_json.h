// What the machines of a shop can do, for other programs: SI units, keys that end in their unit.

#pragma once

#include "plan/capacity.h"
#include "plan/machines.h"

#include <string>
#include <vector>

namespace treadle::cli {

/// {"machines":[…]}: which do the whole job, and what stops the others.
[[nodiscard]] std::string machines_json(const std::vector<plan::MachineAnswer>& answers,
                                        const job::Job& job,
                                        const equipment::Shop& shop);

/// The envelope of a place, and the job's operations in it.
[[nodiscard]] std::string capacity_json(const plan::Capacity& capacity,
                                        plan::Mounting place,
                                        const std::string& grade,
                                        const job::Job& job,
                                        const equipment::Shop& shop);

} // namespace treadle::cli
