#include "cutting/cut_list.h"

#include <algorithm>

namespace treadle::cutting {

int CutList::longest_fill() const {
    int longest = 0;
    for (const StockKind& kind : stock)
        longest = std::max(longest, kind.closed);
    return longest;
}

std::vector<int> CutList::whole_stock() const {
    std::vector<int> left;
    for (const StockKind& kind : stock)
        left.push_back(kind.available);
    return left;
}

long long fill_of(const CutList& list, const Counts& counts) {
    long long fill = 0;
    for (std::size_t i = 0; i < list.size(); ++i)
        fill += static_cast<long long>(counts[i]) * list.length[i];
    return fill;
}

std::int64_t cost_of(const CutList& list, const Bars& bars) {
    std::int64_t cost = 0;
    for (const CutBars& bar : bars)
        cost += list.stock[static_cast<std::size_t>(bar.pattern.stock)].cost * bar.times;
    return cost;
}

bool is_plan(const CutList& list, const Bars& bars) {
    std::vector<long long> made(list.size(), 0);
    std::vector<long long> used(list.stock.size(), 0);
    for (const CutBars& bar : bars) {
        const auto kind = static_cast<std::size_t>(bar.pattern.stock);
        if (bar.times < 1 || kind >= list.stock.size() ||
            bar.pattern.counts.size() != list.size() ||
            !list.stock[kind].takes(fill_of(list, bar.pattern.counts)))
            return false;
        used[kind] += bar.times;
        for (std::size_t i = 0; i < list.size(); ++i) {
            if (bar.pattern.counts[i] < 0)
                return false;
            made[i] += static_cast<long long>(bar.times) * bar.pattern.counts[i];
        }
    }
    for (std::size_t k = 0; k < list.stock.size(); ++k)
        if (list.stock[k].limited() && used[k] > list.stock[k].available)
            return false;
    for (std::size_t i = 0; i < list.size(); ++i)
        if (made[i] != list.demand[i])
            return false;
    return true;
}

Bars trimmed(const CutList& list, const Bars& bars) {
    std::vector<long long> spare(list.size(), 0);
    for (const CutBars& bar : bars)
        for (std::size_t i = 0; i < list.size(); ++i)
            spare[i] += static_cast<long long>(bar.times) * bar.pattern.counts[i];
    for (std::size_t i = 0; i < list.size(); ++i)
        spare[i] -= list.demand[i];
    Bars out;
    const auto put = [&](const CutBars& bar) {
        for (CutBars& known : out)
            if (known.pattern.stock == bar.pattern.stock &&
                known.pattern.counts == bar.pattern.counts) {
                known.times += bar.times;
                return;
            }
        out.push_back(bar);
    };
    for (CutBars bar : bars) {
        while (bar.times > 0) {
            // As many bars as can be cut alike: all, or the first with what is to spare left out.
            CutBars same = bar;
            bool cut_less = false;
            for (std::size_t i = 0; i < list.size(); ++i)
                if (spare[i] > 0 && bar.pattern.counts[i] > 0) {
                    const auto less = std::min<long long>(spare[i], bar.pattern.counts[i]);
                    same.pattern.counts[i] -= static_cast<int>(less);
                    spare[i] -= less;
                    cut_less = true;
                }
            if (cut_less)
                same.times = 1;
            bar.times -= same.times;
            if (fill_of(list, same.pattern.counts) > 0)
                put(same);
        }
    }
    return out;
}

} // namespace treadle::cutting
