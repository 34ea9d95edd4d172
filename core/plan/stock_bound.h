// Private to the room: a bound that no number of bars can add up to is raised to the next that can.

#pragma once

#include <cstdint>

#include "cutting/cut_list.h"

namespace treadle::plan {

/// The least sum of whole bars' costs that is not under `bound`; `cost`, the sum of a plan, is one
/// of them. With bars of 240 and one of 144 nothing lies between 960 and 1104.
[[nodiscard]] std::int64_t
raised_bound(const cutting::CutList& list, std::int64_t bound, std::int64_t cost);

} // namespace treadle::plan
