// Second aim, once the number of bars stands: left-overs that can be used again.
//
// Least scrap first; then fewest left-overs worth keeping; then what is left in as few, as long
// ends as possible. Single pieces move from bar to bar, two change places, a bar's pieces go to
// another left-over of the rack. Never more bars, never more cost, never more scrap; counted, so
// the same everywhere.

#pragma once

#include <cstdint>

#include "cutting/cut_list.h"

namespace treadle::plan {

/// What is left of a bar of each kind, in the list's own units.
struct LeftoverRule {
    std::vector<std::int64_t> bar; ///< usable length of each kind
    std::int64_t keep = 0; ///< left-overs from here on are kept; zero: nothing is known of that
};

struct Leftover {
    std::int64_t scrap = 0; ///< ends shorter than what is kept; without a rule none is
    std::int64_t kept = 0;  ///< number of ends that are kept; without a rule all ends count
    std::int64_t bulk = 0;  ///< sum of squares of the ends: few long ones have more
};
[[nodiscard]] std::int64_t
end_of(const cutting::CutList& list, const LeftoverRule& rule, const cutting::Pattern& pattern);
[[nodiscard]] Leftover
leftover_of(const cutting::CutList& list, const LeftoverRule& rule, const cutting::Bars& bars);
/// a is the better one.
[[nodiscard]] bool better(const Leftover& a, const Leftover& b);

/// Bars that cost the same or less, in at most as many, and leave no worse.
[[nodiscard]] cutting::Bars
tidied(const cutting::CutList& list, const LeftoverRule& rule, const cutting::Bars& bars);

} // namespace treadle::plan
