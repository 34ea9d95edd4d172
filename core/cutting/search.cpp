#include "cutting/search.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadle::cutting {

namespace {

constexpr double k_rounding = 1e-6;
constexpr double k_sure = 0.7; // a dive cuts every pattern used so often before it solves again
constexpr double k_shuffle = 0.25;
constexpr int k_dives_before_end = 2;
constexpr std::size_t k_most_candidates = 20'000;
constexpr std::size_t k_most_counts = 4'000'000; // of all candidates: 16 MB
constexpr long long k_endgame_work = 300'000'000;
constexpr std::int64_t k_few_bars = 40;
constexpr int k_worth_rounds = 10;
constexpr int k_worth_share = 8; // of the work so far one part in so many
constexpr int k_last_share = 4;
constexpr long long k_last_work = 1'000'000;
constexpr int k_most_dives = 100'000;
constexpr long long k_most_placed = 5'000;

/// Work of looking over the list once.
long long look(const CutList& list) {
    return static_cast<long long>(list.size() * (list.stock.size() + 8));
}

} // namespace

Search::Search(CutList list)
    : list_(std::move(list)),
      relaxation_(list_),
      worth_fill_(list_, relaxation_.fills()),
      last_bars_(list_, relaxation_.fills()) {}

long long Search::work() const {
    return relaxation_.work() + worth_fill_.work() + last_bars_.work() + endgame_work_ +
           (endgame_ ? endgame_->work() : 0) + other_work_;
}

Search::Node Search::root() const { return {{list_.demand, list_.whole_stock()}, {}}; }

void Search::run(long long work) {
    const long long until = this->work() + work;
    while (phase_ != Phase::done && this->work() < until) {
        step();
        if (proven())
            phase_ = Phase::done;
    }
}

void Search::step() {
    switch (phase_) {
    case Phase::quick:
        return quick();
    case Phase::columns:
        return columns();
    case Phase::dive:
        return dive();
    case Phase::prices:
        return prices();
    case Phase::endgame:
        return endgame();
    case Phase::done:
        return;
    }
}

void Search::offer(const Bars& bars) {
    const std::int64_t cost = cost_of(list_, bars);
    if (has_plan_ && cost >= cost_)
        return;
    Bars plan = trimmed(list_, bars);
    if (!is_plan(list_, plan))
        return;
    has_plan_ = true;
    best_ = std::move(plan);
    cost_ = cost_of(list_, best_);
}

void Search::offer_with_rest(const Node& node) {
    other_work_ += look(list_);
    auto rest = first_fit(list_, node.rest);
    if (!rest)
        return;
    Bars bars = node.bars;
    bars.insert(bars.end(), rest->begin(), rest->end());
    offer(bars);
}

void Search::take_certificate(const Certificate& certificate) {
    Certificate checked = certificate;
    const std::int64_t bound = proven_bound(list_, checked);
    other_work_ += static_cast<long long>(list_.size()) * list_.longest_fill() * 2;
    if (certificate_.prices.empty() || bound > certificate_bound_) {
        certificate_ = std::move(checked);
        certificate_bound_ = bound;
    }
    bound_ = std::max(bound_, bound);
}

void Search::quick() {
    phase_ = Phase::columns;
    const Node start = root();
    if (const auto bars = first_fit(list_, start.rest))
        offer(*bars);
    other_work_ += look(list_) * 8;
    Certificate lengths;
    lengths.prices.assign(list_.length.begin(), list_.length.end());
    lengths.per_cost = list_.longest_fill();
    take_certificate(lengths);
    const long long pieces =
        std::accumulate(list_.demand.begin(), list_.demand.end(), 0LL); // each is placed by itself
    if (!proven() && pieces <= k_most_placed) {
        other_work_ += pieces * static_cast<long long>(list_.size());
        if (const auto bars = best_fit(list_, start.rest))
            offer(*bars);
    }
    if (!proven())
        relaxation_.start(best_);
}

void Search::columns() {
    const bool done = relaxation_.round(Relaxation::Stop::when_rounding_is_clear);
    if (cost_at_least(relaxation_.bound(), list_.unit) > bound_)
        take_certificate(relaxation_.certificate());
    if (!done)
        return;
    phase_ = Phase::dive;
    node_ = root();
    node_is_set_ = true;
}

/// Cuts what the relaxation cuts whole, and then what it cuts most.
void Search::fix(Node& node) {
    struct Part {
        int pattern;
        double share;
    };
    std::vector<Part> parts;
    const auto cut = [&](int pattern, int times) {
        Bars bars = cut_like(list_, relaxation_.pattern(pattern), times, node.rest);
        node.bars.insert(node.bars.end(), bars.begin(), bars.end());
    };
    for (const Relaxation::Use& use : relaxation_.uses()) {
        const int times = static_cast<int>(std::floor(use.times + k_rounding));
        if (times > 0)
            cut(use.pattern, times);
        if (use.times - times > k_rounding)
            parts.push_back({use.pattern, use.times - times});
    }
    other_work_ += look(list_) * static_cast<long long>(parts.size() + 1);
    // Later dives look elsewhere: the shares are shuffled a little.
    double sure = k_sure;
    if (dives_ > 0) {
        for (Part& part : parts) {
            shuffle_ = shuffle_ * 6364136223846793005ULL + 1442695040888963407ULL;
            part.share += k_shuffle * static_cast<double>(shuffle_ >> 40) / 16777216.0;
        }
        sure += k_shuffle;
    }
    std::stable_sort(
        parts.begin(), parts.end(), [](const Part& a, const Part& b) { return a.share > b.share; });
    for (std::size_t p = 0; p < parts.size() && (p == 0 || parts[p].share >= sure); ++p)
        cut(parts[p].pattern, 1);
}

/// The last bars of a dive once more, by the worth of pieces; for a share of the work so far.
void Search::fill_by_worth() {
    const StockKind& kind = list_.stock.front();
    if (list_.stock.size() != 1 || list_.ends || kind.limited())
        return;
    const std::int64_t most = (cost_ - list_.unit - cost_of(list_, node_->bars)) / kind.cost;
    if (!has_plan_ || most > k_few_bars)
        return;
    worth_fill_.start(node_->rest.demand);
    for (int round = 0; round < k_worth_rounds; ++round) {
        if ((worth_fill_.work() + worth_fill_.knapsack_work()) * k_worth_share > work())
            return;
        if (const auto rest = worth_fill_.round(static_cast<int>(most))) {
            Bars bars = node_->bars;
            bars.insert(bars.end(), rest->begin(), rest->end());
            return offer(bars);
        }
    }
}

/// The last bars of a dive once more, where nearly all must be full.
void Search::try_last_bars() {
    const StockKind& kind = list_.stock.front();
    if (list_.stock.size() != 1 || list_.ends || kind.limited() || !has_plan_)
        return;
    const std::int64_t most = (cost_ - list_.unit - cost_of(list_, node_->bars)) / kind.cost;
    if (most > k_few_bars ||
        (last_bars_.work() + last_bars_.knapsack_work()) * k_last_share > work())
        return;
    const auto rest = last_bars_.plan(node_->rest.demand, static_cast<int>(most), k_last_work);
    if (!rest)
        return;
    Bars bars = node_->bars;
    bars.insert(bars.end(), rest->begin(), rest->end());
    offer(bars);
}

/// One node, or one round of its relaxation.
void Search::dive() {
    if (!node_) {
        ++dives_;
        if (dives_ >= k_dives_before_end && endgame_of_ != cost_ && has_plan_) {
            phase_ = Phase::prices;
            node_is_set_ = false;
            return;
        }
        if (dives_ > k_most_dives) {
            phase_ = Phase::done;
            return;
        }
        node_ = root();
        node_is_set_ = false;
    }
    if (!node_is_set_) {
        offer_with_rest(*node_);
        if (proven() || is_done(node_->rest) ||
            !relaxation_.set(node_->rest.demand, node_->rest.stock_left)) {
            node_.reset();
            return;
        }
        node_is_set_ = true;
    }
    if (!node_->bars.empty() || dives_ > 0)
        if (!relaxation_.round(Relaxation::Stop::when_rounding_is_clear))
            return;
    const std::int64_t least =
        cost_of(list_, node_->bars) + cost_at_least(relaxation_.bound(), list_.unit);
    if (has_plan_ && least >= cost_) {
        node_.reset();
        return;
    }
    fill_by_worth();
    if (!proven())
        try_last_bars();
    if (proven())
        return;
    const std::size_t bars = node_->bars.size();
    fix(*node_);
    node_is_set_ = false;
    if (node_->bars.size() == bars)
        node_.reset();
}

/// Prices for the endgame: the relaxation of the whole, to its very end.
void Search::prices() {
    if (!node_is_set_) {
        const Node start = root();
        if (!relaxation_.set(
                start.rest.demand, start.rest.stock_left, Relaxation::Prices::decided)) {
            endgame_of_ = cost_;
            phase_ = Phase::dive;
            return;
        }
        node_is_set_ = true;
    }
    const bool done = relaxation_.round(Relaxation::Stop::when_best);
    if (cost_at_least(relaxation_.bound(), list_.unit) > bound_)
        take_certificate(relaxation_.certificate());
    if (!done || proven())
        return;
    node_is_set_ = false;
    endgame_of_ = cost_;
    double budget = 0.0;
    const std::vector<float> prices = relaxation_.priced_fills();
    std::vector<Candidate> open = candidates(prices, budget);
    phase_ = Phase::dive;
    if (open.empty())
        return;
    endgame_ =
        std::make_unique<Endgame>(list_, std::move(open), prices, budget, cost_ - list_.unit);
    endgame_most_ = endgame_->work() + k_endgame_work;
    phase_ = Phase::endgame;
}

/// Patterns that lose no more than a better plan may lose. None when there are too many.
std::vector<Candidate> Search::candidates(const std::vector<float>& prices, double& budget) {
    double per_cost = 0.0;
    std::vector<double> largest;
    for (const StockKind& kind : list_.stock) {
        largest.push_back(static_cast<double>(relaxation_.fills().best(kind).value));
        if (!kind.limited() && kind.cost > 0)
            per_cost = std::max(per_cost, largest.back() / static_cast<double>(kind.cost));
    }
    if (!(per_cost > 0.0))
        return {};
    // Prices are whole numbers in the millions: two more than needed cover all rounding here.
    budget = static_cast<double>(cost_ - list_.unit) * per_cost + 2.0;
    for (std::size_t i = 0; i < list_.size(); ++i)
        budget -= static_cast<double>(prices[i]) * list_.demand[i];
    std::vector<double> bonus;
    for (std::size_t k = 0; k < list_.stock.size(); ++k) {
        const StockKind& kind = list_.stock[k];
        bonus.push_back(kind.limited()
                            ? std::max(0.0, largest[k] - per_cost * static_cast<double>(kind.cost))
                            : 0.0);
        if (kind.limited())
            budget += bonus.back() * kind.available;
    }
    const std::size_t most = std::min(k_most_candidates, k_most_counts / list_.size());
    std::vector<Candidate> out;
    for (std::size_t k = 0; k < list_.stock.size(); ++k) {
        const double whole = per_cost * static_cast<double>(list_.stock[k].cost) + bonus[k];
        auto found =
            relaxation_.fills().all(list_.stock[k],
                                    static_cast<float>(std::floor(std::max(0.0, whole - budget))),
                                    most - out.size());
        if (!found)
            return {};
        for (Counts& counts : *found) {
            double value = 0.0;
            for (std::size_t i = 0; i < list_.size(); ++i)
                value += static_cast<double>(prices[i]) * counts[i];
            if (whole - value <= budget)
                out.push_back(
                    {{static_cast<int>(k), std::move(counts)}, std::max(0.0, whole - value)});
        }
    }
    other_work_ += static_cast<long long>(out.size()) * 64;
    return out;
}

void Search::endgame() {
    constexpr long long slice = 1'000'000;
    endgame_->run(slice);
    if (endgame_->state() == Endgame::State::looking && endgame_->work() < endgame_most_)
        return;
    if (endgame_->state() == Endgame::State::found)
        offer(endgame_->plan());
    if (endgame_->state() == Endgame::State::none)
        bound_ = std::max(bound_, cost_);
    endgame_work_ += endgame_->work();
    endgame_.reset();
    phase_ = Phase::dive;
}

} // namespace treadle::cutting
