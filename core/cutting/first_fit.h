// Plans made without looking back.

#pragma once

#include <optional>

#include "cutting/cut_list.h"

namespace treadle::cutting {

/// What is still to be made, of which bars.
struct Rest {
    Counts demand;
    std::vector<int> stock_left;
};

[[nodiscard]] bool is_done(const Rest& rest);

/// Longest piece first: bars of the kind that holds most for its cost, each filled with the longest
/// that still fits. None when the stock runs out.
[[nodiscard]] std::optional<Bars> first_fit(const CutList& list, Rest rest);

/// Each piece, longest first, into the bar it leaves the least room in. Only for one kind of stock.
[[nodiscard]] std::optional<Bars> best_fit(const CutList& list, const Rest& rest);

/// One bar filled with the longest that still fits, one after the other.
void fill_up(const CutList& list, const Counts& demand, int room, Counts& counts);

/// Cuts bars like this pattern, up to so many: what is asked for of it, a shorter piece in the
/// place of one that is not, and what else fits. Takes them off the rest.
[[nodiscard]] Bars cut_like(const CutList& list, const Pattern& pattern, int times, Rest& rest);

} // namespace treadle::cutting
