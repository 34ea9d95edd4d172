#include "plan/stock_leftover.h"

#include <algorithm>
#include <optional>

namespace treadle::plan {

namespace {

using cutting::Bars;
using cutting::CutList;
using cutting::Pattern;

/// Moves looked at: enough for any list of a shop, a few milliseconds at most.
constexpr long long k_most_looks = 1'000'000;
constexpr std::size_t k_nothing = static_cast<std::size_t>(-1);

Leftover operator+(const Leftover& a, const Leftover& b) {
    return {a.scrap + b.scrap, a.kept + b.kept, a.bulk + b.bulk};
}

class Tidying {
public:
    Tidying(const CutList& list, const LeftoverRule& rule, Bars bars)
        : list_(list),
          rule_(rule),
          bars_(std::move(bars)),
          used_(list.stock.size(), 0) {
        for (const cutting::CutBars& bar : bars_) {
            fills_.push_back(cutting::fill_of(list_, bar.pattern.counts));
            used_[static_cast<std::size_t>(bar.pattern.stock)] += bar.times;
        }
    }

    Bars run() {
        bool moved = true;
        while (moved && looks_ < k_most_looks) {
            moved = false;
            for (std::size_t p = 0; p < bars_.size() && !moved; ++p) {
                moved = change_kind(p);
                for (std::size_t q = 0; q < bars_.size() && !moved; ++q)
                    moved = improve(p, q);
            }
        }
        bars_.erase(std::remove_if(bars_.begin(),
                                   bars_.end(),
                                   [](const cutting::CutBars& bar) { return bar.times == 0; }),
                    bars_.end());
        return std::move(bars_);
    }

private:
    [[nodiscard]] Leftover ends(int stock, long long fill) const {
        if (fill == 0)
            return {}; // stays in the rack
        const std::int64_t end = std::max<std::int64_t>(
            0, rule_.bar[static_cast<std::size_t>(stock)] - fill * list_.scale);
        if (end == 0)
            return {};
        if (end < rule_.keep)
            return {end, 0, end * end};
        return {0, 1, end * end};
    }
    [[nodiscard]] bool takes(int stock, long long fill) const {
        return fill == 0 || list_.stock[static_cast<std::size_t>(stock)].takes(fill);
    }

    void take_one(std::size_t p) {
        --bars_[p].times;
        --used_[static_cast<std::size_t>(bars_[p].pattern.stock)];
    }
    void put_one(Pattern pattern) {
        const long long fill = cutting::fill_of(list_, pattern.counts);
        if (fill == 0)
            return;
        ++used_[static_cast<std::size_t>(pattern.stock)];
        for (cutting::CutBars& bar : bars_)
            if (bar.pattern.stock == pattern.stock && bar.pattern.counts == pattern.counts) {
                ++bar.times;
                return;
            }
        bars_.push_back({std::move(pattern), 1});
        fills_.push_back(fill);
    }

    /// One bar of p cut from another kind that costs no more.
    bool change_kind(std::size_t p) {
        const int from = bars_[p].pattern.stock;
        if (bars_[p].times == 0)
            return false;
        for (std::size_t k = 0; k < list_.stock.size(); ++k) {
            const int to = static_cast<int>(k);
            const cutting::StockKind& kind = list_.stock[k];
            ++looks_;
            if (to == from || kind.cost > list_.stock[static_cast<std::size_t>(from)].cost ||
                used_[k] >= kind.available || !kind.takes(fills_[p]) ||
                !better(ends(to, fills_[p]), ends(from, fills_[p])))
                continue;
            Pattern pattern = bars_[p].pattern;
            pattern.stock = to;
            take_one(p);
            put_one(std::move(pattern));
            return true;
        }
        return false;
    }

    /// One piece of a bar of p to a bar of q, for one of q's or for none.
    bool improve(std::size_t p, std::size_t q) {
        if (bars_[p].times == 0 || bars_[q].times == 0 || (p == q && bars_[p].times < 2))
            return false;
        const Leftover now =
            ends(bars_[p].pattern.stock, fills_[p]) + ends(bars_[q].pattern.stock, fills_[q]);
        for (std::size_t i = 0; i < list_.size(); ++i) {
            if (bars_[p].pattern.counts[i] == 0)
                continue;
            if (better_with(p, q, i, k_nothing, now))
                return exchange(p, q, i, k_nothing);
            for (std::size_t j = i + 1; j < list_.size(); ++j)
                if (bars_[q].pattern.counts[j] > 0 && better_with(p, q, i, j, now))
                    return exchange(p, q, i, j);
        }
        return false;
    }

    bool
    better_with(std::size_t p, std::size_t q, std::size_t i, std::size_t j, const Leftover& now) {
        ++looks_;
        const long long shift = list_.length[i] - (j == k_nothing ? 0 : list_.length[j]);
        const int from = bars_[p].pattern.stock;
        const int to = bars_[q].pattern.stock;
        const long long less = fills_[p] - shift;
        const long long more = fills_[q] + shift;
        return takes(from, less) && takes(to, more) &&
               better(ends(from, less) + ends(to, more), now);
    }

    bool exchange(std::size_t p, std::size_t q, std::size_t i, std::size_t j) {
        Pattern less = bars_[p].pattern;
        Pattern more = bars_[q].pattern;
        --less.counts[i];
        ++more.counts[i];
        if (j != k_nothing) {
            ++less.counts[j];
            --more.counts[j];
        }
        take_one(p);
        take_one(q);
        put_one(std::move(less));
        put_one(std::move(more));
        return true;
    }

    const CutList& list_;
    const LeftoverRule& rule_;
    Bars bars_;
    std::vector<long long> fills_;
    std::vector<long long> used_;
    long long looks_ = 0;
};

} // namespace

std::int64_t end_of(const CutList& list, const LeftoverRule& rule, const Pattern& pattern) {
    return std::max<std::int64_t>(0,
                                  rule.bar[static_cast<std::size_t>(pattern.stock)] -
                                      cutting::fill_of(list, pattern.counts) * list.scale);
}

Leftover leftover_of(const CutList& list, const LeftoverRule& rule, const Bars& bars) {
    Leftover sum;
    for (const cutting::CutBars& bar : bars) {
        const std::int64_t end = end_of(list, rule, bar.pattern);
        if (end == 0)
            continue;
        const bool kept = end >= rule.keep;
        sum.scrap += kept ? 0 : end * bar.times;
        sum.kept += kept ? bar.times : 0;
        sum.bulk += end * end * bar.times;
    }
    return sum;
}

bool better(const Leftover& a, const Leftover& b) {
    if (a.scrap != b.scrap)
        return a.scrap < b.scrap;
    if (a.kept != b.kept)
        return a.kept < b.kept;
    return a.bulk > b.bulk;
}

Bars tidied(const CutList& list, const LeftoverRule& rule, const Bars& bars) {
    return Tidying(list, rule, bars).run();
}

} // namespace treadle::plan
