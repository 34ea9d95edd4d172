#include "cutting/relaxation.h"

#include <algorithm>
#include <cmath>

namespace treadle::cutting {

namespace {

constexpr double k_smoothing = 0.6; // share of the best bound's prices
constexpr int k_pivots_a_round = 6; // then price again: new columns are worth more than old ones
constexpr double k_helps = 1e-7;
constexpr double k_rounding = 1e-6;    // of a cost: less above a whole one is none
constexpr double k_no_end = 1e7;       // bars, where there is no limit
constexpr double k_little_more = 1e-5; // pieces; uneven, so that no two patterns tie
constexpr double k_headroom = 0.98;

} // namespace

std::int64_t cost_at_least(double cost, std::int64_t unit) {
    return static_cast<std::int64_t>(std::ceil(cost / static_cast<double>(unit) - k_rounding)) *
           unit;
}

Relaxation::Relaxation(const CutList& list)
    : list_(list),
      knapsack_(list.length, list.longest_fill(), list.ends),
      master_(list.size() + list.stock.size()),
      demand_(list.demand),
      stock_left_(list.whole_stock()),
      prices_(list.size()) {}

std::vector<double> Relaxation::right_side(Prices prices) const {
    std::vector<double> side(demand_.begin(), demand_.end());
    if (prices == Prices::decided)
        for (std::size_t i = 0; i < side.size(); ++i)
            side[i] += k_little_more * (1.0 + static_cast<double>(i * 7919 % 101) / 273.0);
    for (std::size_t k = 0; k < list_.stock.size(); ++k)
        side.push_back(list_.stock[k].limited() ? stock_left_[k] : k_no_end);
    return side;
}

void Relaxation::start(const Bars& bars) {
    const auto pieces = static_cast<int>(list_.size());
    double dearest = 0.0;
    for (const StockKind& kind : list_.stock)
        dearest = std::max(dearest, static_cast<double>(kind.cost));
    for (int i = 0; i < pieces; ++i) {
        // A bar for one piece alone. Where no stock without end takes it, a price that any pays.
        const bool always = std::any_of(list_.stock.begin(), list_.stock.end(), [&](const auto& k) {
            return !k.limited() && k.takes(list_.length[static_cast<std::size_t>(i)]);
        });
        master_.add(always ? dearest : 1000.0 * (dearest + static_cast<double>(list_.unit)),
                    {{i, 1.0}});
    }
    for (int k = 0; k < static_cast<int>(list_.stock.size()); ++k)
        master_.add(0.0, {{pieces + k, 1.0}}); // stock left over
    for (int i = 0; i + 1 < pieces; ++i)
        master_.add(0.0, {{i, -1.0}, {i + 1, 1.0}}); // a longer piece for a shorter one
    master_.add(0.0, {{pieces - 1, -1.0}});          // one piece too many
    first_pattern_ = static_cast<int>(master_.columns());
    master_.start(right_side(Prices::any));
    for (const CutBars& bar : bars)
        add(bar.pattern);
    master_.improve(static_cast<int>(4 * master_.rows()));
    // The length of the pieces is a price already, and a good one to start from.
    const double longest = list_.longest_fill();
    for (const int length : list_.length)
        center_.push_back(dearest * length / longest);
}

bool Relaxation::set(const Counts& demand, const std::vector<int>& stock_left, Prices prices) {
    demand_ = demand;
    stock_left_ = stock_left;
    best_bound_ = 0.0;
    center_.clear();
    // Rounds end as soon as they may. Dual pivots while some column helps go round in circles.
    master_.improve(static_cast<int>(4 * master_.rows()));
    if (!master_.demand(right_side(prices)))
        return false;
    master_.improve(static_cast<int>(4 * master_.rows()));
    return true;
}

int Relaxation::add(const Pattern& pattern) {
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < list_.size(); ++i)
        if (pattern.counts[i] > 0)
            entries.push_back({static_cast<int>(i), static_cast<double>(pattern.counts[i])});
    entries.push_back({static_cast<int>(list_.size()) + pattern.stock, 1.0});
    patterns_.push_back(pattern);
    const auto kind = static_cast<std::size_t>(pattern.stock);
    return master_.add(static_cast<double>(list_.stock[kind].cost), entries);
}

/// Scaled so that no fill can be worth more than float counts exactly, and rounded down.
void Relaxation::whole_prices(const std::vector<double>& prices) {
    double steepest = 0.0;
    for (std::size_t i = 0; i < list_.size(); ++i)
        if (demand_[i] > 0)
            steepest = std::max(steepest, prices[i] / list_.length[i]);
    const double scale = steepest > 0.0 ? k_headroom * static_cast<double>(k_largest_exact) /
                                              (steepest * list_.longest_fill())
                                        : 0.0;
    for (std::size_t i = 0; i < list_.size(); ++i)
        prices_[i] = demand_[i] > 0 ? static_cast<float>(std::floor(prices[i] * scale)) : 0.0F;
    certificate_.per_cost = static_cast<std::int64_t>(std::ceil(scale));
}

/// The bound of the prices that the knapsack was just solved for.
void Relaxation::take_bound(const std::vector<double>& prices) {
    double per_cost = 0.0;
    std::vector<double> largest;
    for (const StockKind& kind : list_.stock) {
        largest.push_back(static_cast<double>(knapsack_.best(kind).value));
        if (!kind.limited() && kind.cost > 0)
            per_cost = std::max(per_cost, largest.back() / static_cast<double>(kind.cost));
    }
    if (!(per_cost > 0.0))
        per_cost = static_cast<double>(certificate_.per_cost);
    if (!(per_cost > 0.0))
        return;
    double worth = 0.0;
    for (std::size_t i = 0; i < list_.size(); ++i)
        worth += static_cast<double>(prices_[i]) * demand_[i];
    for (std::size_t k = 0; k < list_.stock.size(); ++k) {
        const double over = largest[k] - per_cost * static_cast<double>(list_.stock[k].cost);
        if (list_.stock[k].limited() && over > 0.0)
            worth -= stock_left_[k] * over;
    }
    if (worth / per_cost <= best_bound_ && !center_.empty() && best_bound_ > 0.0)
        return;
    best_bound_ = std::max(best_bound_, worth / per_cost);
    center_ = prices;
    certificate_.prices.assign(prices_.begin(), prices_.end());
}

bool Relaxation::add_columns() {
    bool helped = false;
    Counts counts;
    for (std::size_t k = 0; k < list_.stock.size(); ++k) {
        const StockKind& kind = list_.stock[k];
        if (stock_left_[k] <= 0)
            continue;
        knapsack_.read(knapsack_.best(kind).length, counts);
        double reduced = static_cast<double>(kind.cost) - master_.dual(list_.size() + k);
        for (std::size_t i = 0; i < list_.size(); ++i)
            reduced -= counts[i] * master_.dual(i);
        if (reduced < -k_helps && master_.enter(add({static_cast<int>(k), counts})))
            helped = true;
    }
    return helped;
}

bool Relaxation::round(Stop stop) {
    std::vector<double> duals(list_.size());
    for (std::size_t i = 0; i < list_.size(); ++i)
        duals[i] = std::max(0.0, master_.dual(i));
    if (center_.empty())
        center_ = duals;
    for (const double share : {k_smoothing, 0.0}) {
        std::vector<double> prices(list_.size());
        for (std::size_t i = 0; i < list_.size(); ++i)
            prices[i] = share * center_[i] + (1.0 - share) * duals[i];
        whole_prices(prices);
        knapsack_.solve(prices_, demand_);
        take_bound(prices);
        if (!add_columns())
            continue;
        master_.improve(k_pivots_a_round);
        return stop == Stop::when_rounding_is_clear &&
               cost_at_least(best_bound_, list_.unit) >= cost_at_least(cost(), list_.unit);
    }
    return true;
}

std::vector<Relaxation::Use> Relaxation::uses() const {
    std::vector<Use> uses;
    for (std::size_t r = 0; r < master_.rows(); ++r)
        if (master_.basic(r) >= first_pattern_ && master_.level(r) > k_rounding)
            uses.push_back({master_.basic(r) - first_pattern_, master_.level(r)});
    return uses;
}

std::vector<float> Relaxation::priced_fills() {
    std::vector<double> duals(list_.size());
    for (std::size_t i = 0; i < list_.size(); ++i)
        duals[i] = std::max(0.0, master_.dual(i));
    whole_prices(duals);
    knapsack_.solve(prices_, demand_, true);
    return prices_;
}

} // namespace treadle::cutting
