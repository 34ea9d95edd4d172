// What two people (or more) do at the machine at once: the plan's set-ups shared out in lanes.
//
// Method  The set-ups stay as they are, so no person more ever costs a set-up more; lanes.h shares
//         them out so that the longest lane is as short as found. Two set-ups never overlap at one
//         station, with one attachment, at stations of which either excludes the other, with a tool
//         that the crib does not have once for each person, or where no station is planned
// Valid   a part is in one place at a time, with all its pieces, and its work keeps its order.
//         Counted in the shop's own times (job_time.h); strokes alone where those are not known.
//         Whether the machine has the force for both at once its maker says: at_once_caution
// Source  common practice, no source

#pragma once

#include "plan/lanes.h"
#include "plan/plan.h"

#include <string>
#include <utility>
#include <vector>

namespace treadle::plan {

/// More people find no free station at a compact machine.
inline constexpr int k_most_lanes = 4;

struct AtOnce {
    int people = 1;
    bool timed = false; ///< figures of `lanes` are seconds; else strokes, changes not counted
    Lanes lanes;        ///< tasks are indices of the plan's order
    /// Stations that this plan uses and that may run side by side: indices of the machine's.
    std::vector<std::pair<int, int>> stations;
};

/// With one operator the lane is the order. Computed on request: a few milliseconds at most.
[[nodiscard]] AtOnce at_once(const Plan& plan, const equipment::Shop& shop);

/// May these two set-ups be at work at the same time, as far as machine and crib go?
[[nodiscard]] bool
may_run_at_once(const equipment::Shop& shop, const Tooling& a, const Tooling& b, int people);

/// "24.1 min with 2 people, 38.0 min alone; at least 22.0 min"
[[nodiscard]] std::string at_once_words(const AtOnce& shared);
/// "24.1 min", "120 strokes"
[[nodiscard]] std::string lane_words(const AtOnce& shared, double figure);
/// What nobody but the machine's maker can say.
[[nodiscard]] const char* at_once_caution();

} // namespace treadle::plan
