#include "plan/stock_bound.h"

#include <algorithm>

namespace treadle::plan {

namespace {

/// Sums looked at, in units of cost: more than any job's bars come to.
constexpr std::int64_t k_most_sums = 1'000'000;

/// Which sums, in units, bars can have: one kind after the other.
std::vector<char> sums_up_to(const cutting::CutList& list, std::int64_t most) {
    std::vector<char> can(static_cast<std::size_t>(most) + 1, 0);
    can[0] = 1;
    std::vector<int> left(can.size());
    for (const cutting::StockKind& kind : list.stock) {
        const auto cost = static_cast<std::size_t>(kind.cost / list.unit);
        if (cost == 0)
            continue;
        for (std::size_t sum = 0; sum < can.size(); ++sum) {
            left[sum] = can[sum] != 0 ? kind.available : 0;
            if (can[sum] != 0 || sum < cost || left[sum - cost] == 0)
                continue;
            can[sum] = 1;
            left[sum] = left[sum - cost] - (kind.limited() ? 1 : 0);
        }
    }
    return can;
}

} // namespace

std::int64_t raised_bound(const cutting::CutList& list, std::int64_t bound, std::int64_t cost) {
    if (bound >= cost || bound < 0 || cost / list.unit > k_most_sums)
        return bound;
    const std::vector<char> can = sums_up_to(list, cost / list.unit);
    std::int64_t sum = (bound + list.unit - 1) / list.unit;
    while (sum < cost / list.unit && can[static_cast<std::size_t>(sum)] == 0)
        ++sum;
    return std::max(bound, sum * list.unit);
}

} // namespace treadle::plan
