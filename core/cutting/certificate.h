// A bound that anyone can check with whole numbers and a table: prices for the pieces, and the most
// that any one bar can hold of them.

#pragma once

#include <cstdint>
#include <vector>

#include "cutting/cut_list.h"

namespace treadle::cutting {

struct Certificate {
    std::vector<std::int64_t> prices; ///< of each piece of the list
    /// Largest value of a bar for each unit of its cost, over stock there is no end of. With one
    /// kind of stock at cost 1: the largest value of a pattern.
    std::int64_t per_cost = 0;
    std::vector<std::int64_t> largest; ///< value of a pattern, for each kind of stock
};

/// The bound that these prices prove: largest values computed anew, in whole numbers only. Zero
/// when they prove nothing.
[[nodiscard]] std::int64_t proven_bound(const CutList& list, Certificate& certificate);

} // namespace treadle::cutting
