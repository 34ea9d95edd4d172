// What is to be cut from what, in whole numbers of any one unit.

#pragma once

#include "base/result.h"

#include <cstdint>
#include <optional>
#include <vector>

#include "cutting/cut_list.h"

namespace treadle::cutting {

struct CutPiece {
    std::int64_t length = 0;
    std::int64_t count = 1;
};

struct CutStock {
    std::int64_t length = 0;
    std::int64_t cost = 1;
    std::optional<std::int64_t> available; ///< none: as many as it takes
};

struct CutProblem {
    std::vector<CutPiece> pieces;
    std::vector<CutStock> stock;
    std::int64_t kerf = 0;      ///< lost between two pieces
    std::int64_t least_end = 0; ///< shorter ends cannot be held for the last cut; none at all can
};

inline constexpr std::int64_t k_most_pieces = 1'000'000;
inline constexpr std::size_t k_most_lengths = 2'000;
inline constexpr std::int64_t k_longest_bar = 2'000'000'000;
inline constexpr std::int64_t k_longest_fill = 400'000; ///< in the largest unit common to all

/// Merges equal lengths, puts the kerf in, measures in the largest common unit, and shortens a bar
/// to what pieces can fill. Every step exact: the same plans.
/// Refuses, naming "pieces[3].length" or "stock[0].cost": lengths not above zero or above
/// k_longest_bar, counts not above zero, more than k_most_pieces pieces or k_most_lengths lengths,
/// a piece longer than every bar, negative costs, kerfs or ends.
[[nodiscard]] base::Result<CutList> cut_list(const CutProblem& problem);

/// Length of a piece of the list in the problem's own unit, without the kerf.
[[nodiscard]] std::int64_t own_length(const CutList& list, std::size_t piece);

} // namespace treadle::cutting
