// A cutting problem as the search sees it, and the bars it makes of it.
//
// Lengths are whole numbers, longest piece first, each with the kerf that parts it from the next.

#pragma once

#include <cstdint>
#include <limits>
#include <vector>

namespace treadle::cutting {

/// How many of each piece of the list.
using Counts = std::vector<int>;

inline constexpr int k_no_limit = std::numeric_limits<int>::max();

/// Bars of one length. A fill of up to `open` leaves an end that can be held, one from `full` to
/// `closed` leaves none; what lies between cannot be cut.
struct StockKind {
    int open = 0;
    int full = 0;
    int closed = 0;
    std::int64_t cost = 1;
    int available = k_no_limit;

    [[nodiscard]] bool limited() const { return available != k_no_limit; }
    [[nodiscard]] bool takes(long long fill) const {
        return fill <= open || (fill >= full && fill <= closed);
    }
};

struct CutList {
    std::vector<int> length; ///< falling, none twice
    Counts demand;
    std::vector<StockKind> stock;
    bool ends = false;      ///< some fills that are short enough cannot be cut
    std::int64_t unit = 1;  ///< every cost is a multiple of it
    std::int64_t scale = 1; ///< lengths are this many of the problem's own units
    std::int64_t kerf = 0;  ///< in the same units; already in every length

    [[nodiscard]] std::size_t size() const { return length.size(); }
    [[nodiscard]] int longest_fill() const;
    [[nodiscard]] std::vector<int> whole_stock() const; ///< bars of each kind
};

struct Pattern {
    int stock = 0;
    Counts counts;
};

/// Bars cut alike.
struct CutBars {
    Pattern pattern;
    int times = 0;
};
using Bars = std::vector<CutBars>;

[[nodiscard]] long long fill_of(const CutList& list, const Counts& counts);
[[nodiscard]] std::int64_t cost_of(const CutList& list, const Bars& bars);
/// Every piece exactly as often as asked, every fill one that its bar takes, no stock used twice.
[[nodiscard]] bool is_plan(const CutList& list, const Bars& bars);
/// The same bars with pieces taken out that are not asked for, those that cut alike together.
[[nodiscard]] Bars trimmed(const CutList& list, const Bars& bars);

} // namespace treadle::cutting
