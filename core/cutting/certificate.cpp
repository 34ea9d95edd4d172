#include "cutting/certificate.h"

#include <algorithm>

namespace treadle::cutting {

namespace {

constexpr std::int64_t k_nothing = -1; // no sum of pieces comes to this length

/// Value of the best fill of just each length, in whole numbers; a count goes in as powers of two.
std::vector<std::int64_t> best_values(const CutList& list,
                                      const std::vector<std::int64_t>& prices) {
    const int longest = list.longest_fill();
    std::vector<std::int64_t> value(static_cast<std::size_t>(longest) + 1, k_nothing);
    value[0] = 0;
    for (std::size_t i = 0; i < list.size(); ++i) {
        int left = std::min(list.demand[i], longest / list.length[i]);
        for (int take = 1; left > 0; take *= 2) {
            const int count = std::min(take, left);
            const int width = count * list.length[i];
            for (int j = longest; j >= width; --j) {
                const std::int64_t before = value[static_cast<std::size_t>(j - width)];
                std::int64_t& here = value[static_cast<std::size_t>(j)];
                if (before != k_nothing)
                    here = std::max(here, before + count * prices[i]);
            }
            left -= count;
        }
    }
    return value;
}

std::int64_t largest_in(const StockKind& kind, const std::vector<std::int64_t>& value) {
    std::int64_t largest = 0;
    for (int j = 0; j <= kind.closed; ++j)
        if (kind.takes(j))
            largest = std::max(largest, value[static_cast<std::size_t>(j)]);
    return largest;
}

} // namespace

std::int64_t proven_bound(const CutList& list, Certificate& certificate) {
    const std::vector<std::int64_t> value = best_values(list, certificate.prices);
    certificate.largest.clear();
    std::int64_t per_cost = 0;
    for (const StockKind& kind : list.stock) {
        const std::int64_t largest = largest_in(kind, value);
        certificate.largest.push_back(largest);
        if (kind.limited())
            continue;
        if (kind.cost <= 0)
            return 0; // free stock without end
        per_cost = std::max(per_cost, (largest + kind.cost - 1) / kind.cost);
    }
    if (per_cost == 0)
        per_cost = std::max<std::int64_t>(certificate.per_cost, 1);
    certificate.per_cost = per_cost;
    std::int64_t worth = 0;
    for (std::size_t i = 0; i < list.size(); ++i)
        worth += certificate.prices[i] * list.demand[i];
    for (std::size_t k = 0; k < list.stock.size(); ++k)
        if (list.stock[k].limited())
            worth -=
                list.stock[k].available *
                std::max<std::int64_t>(0, certificate.largest[k] - per_cost * list.stock[k].cost);
    if (worth <= 0)
        return 0;
    const std::int64_t bound = (worth + per_cost - 1) / per_cost;
    return (bound + list.unit - 1) / list.unit * list.unit;
}

} // namespace treadle::cutting
