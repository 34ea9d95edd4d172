// Bars to cut: each piece with its running stop, what is left, what to pull and what to buy.

#pragma once

#include "plan/stock.h"

#include <optional>
#include <vector>

#include "cutting/answer.h"

namespace treadle::plan {

/// One piece on its bar, measured from the bar's datum end (trim included).
struct PieceCut {
    int piece = 0; ///< of the group
    Length from;   ///< where it begins
    Length stop;   ///< where it is cut off: the running stop. Shared mitres: the long point
    bool last_is_end = false; ///< not cut: the bar ends here
};

/// Bars cut alike, in cutting order: longest first, so that the rest stays long enough to hold.
struct BarPlan {
    int kind = 0; ///< of the group
    int times = 1;
    std::vector<PieceCut> cuts;
    Length drop;       ///< what the last cut leaves, without the trim at the far end
    bool kept = false; ///< long enough to keep; else scrap
    int pulled = 0;    ///< of these, from the rack; the rest is bought
};

/// What is taken of one kind of bar.
struct KindUse {
    int kind = 0;
    int pull = 0; ///< from the rack
    int buy = 0;
};

struct KeptDrop {
    Length length;
    int count = 1;
};

/// What the plan comes to. Masses are there when the metal's density is known.
struct StockSums {
    std::optional<Mass> taken; ///< bars and drops that are cut up
    std::optional<Mass> bought;
    std::optional<Mass> parts;
    std::optional<Mass> kept;
    std::optional<Mass> scrap;   ///< taken, less parts and kept drops: kerfs and trims are in it
    std::optional<double> price; ///< of what is bought; none: a price is missing
};

struct GroupPlan {
    bool has_plan = false; ///< none: a problem, nothing searched yet, or the stock does not reach
    bool falls_short = false; ///< the rack does not reach
    std::vector<BarPlan> bars;
    std::vector<KindUse> use;
    std::vector<KeptDrop> kept; ///< longest first
    int whole_bars = 0;
    int drops_used = 0;
    std::int64_t cost = 0;  ///< in the group's aim: bars, steps of length, hundredths of money
    std::int64_t bound = 0; ///< no plan costs less
    bool proven = false;
    bool done = false; ///< searching on changes nothing
    long long work = 0;
    StockSums sums;
};

struct StockPlan {
    std::vector<GroupPlan> groups; ///< one for one
    StockSums sums;        ///< of the groups that have a plan; a mass is there if all have it
    bool complete = false; ///< every group has a plan
    bool proven = false;   ///< and no plan of any group costs less
};

/// An answer that is no plan for the group counts as none. After the search what is left over is
/// moved together where that costs nothing (stock_leftover.h).
[[nodiscard]] GroupPlan group_plan(const StockGroup& group, const cutting::CutAnswer& answer);
/// The plans of all groups and what they come to together.
[[nodiscard]] StockPlan sum_up(std::vector<GroupPlan> groups);
/// Both of them, with one answer a group.
[[nodiscard]] StockPlan stock_plan(const std::vector<StockGroup>& groups,
                                   const std::vector<cutting::CutAnswer>& answers);

/// The rack cannot hold the pieces: searched to the end, or the bound is more than all of its bars
/// cost. Searching on changes nothing.
[[nodiscard]] bool falls_short(const StockGroup& group, const cutting::CutAnswer& answer);

/// Searches every group from the start with this much work; groups with a problem get none.
[[nodiscard]] std::vector<cutting::CutAnswer> stock_answers(const std::vector<StockGroup>& groups,
                                                            long long work);

/// Work that a sheet gives each group: the same on every machine, so that sheets are the same.
inline constexpr long long k_sheet_work = 100'000'000;

} // namespace treadle::plan
