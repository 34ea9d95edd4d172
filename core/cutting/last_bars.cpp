#include "cutting/last_bars.h"

#include <algorithm>
#include <utility>

namespace treadle::cutting {

namespace {

constexpr std::size_t k_most_fills = 500;

} // namespace

LastBars::LastBars(const CutList& list, Knapsack& knapsack)
    : list_(list),
      knapsack_(knapsack),
      holders_(list.size()) {}

std::span<const LastBars::Held> LastBars::held(int fill) const {
    const auto at = static_cast<std::size_t>(fill);
    return {&held_[first_[at]], first_[at + 1] - first_[at]};
}

/// All fills of these pieces that waste no more. False when there are too many.
bool LastBars::gather(const Counts& demand, long long slack) {
    std::vector<float> lengths(list_.size(), 0.0F);
    for (std::size_t i = 0; i < list_.size(); ++i)
        if (demand[i] > 0)
            lengths[i] = static_cast<float>(list_.length[i]);
    const StockKind& kind = list_.stock.front();
    const long long before = knapsack_.work();
    knapsack_.solve(lengths, demand);
    auto found = knapsack_.all(kind, static_cast<float>(kind.closed - slack), k_most_fills);
    knapsack_work_ += knapsack_.work() - before;
    if (!found)
        return false;
    fills_ = std::move(*found);
    waste_.clear();
    held_.clear();
    first_.assign(1, 0);
    for (const Counts& fill : fills_) {
        waste_.push_back(kind.closed - static_cast<int>(fill_of(list_, fill)));
        for (std::size_t i = 0; i < list_.size(); ++i)
            if (fill[i] > 0)
                held_.push_back({i, fill[i]});
        first_.push_back(held_.size());
    }
    work_ += static_cast<long long>(fills_.size() * list_.size());
    return true;
}

/// Takes the fill off what is left, or puts it back.
void LastBars::use(int fill, int times) {
    for (const Held& one : held(fill)) {
        left_[one.piece] -= times * one.count;
        pieces_left_ -= times * one.count;
    }
    slack_ -= times * waste_[static_cast<std::size_t>(fill)];
}

/// Leaves out what can no longer be cut. Lists the fills that hold the scarcest piece, those of
/// scarce pieces last. False when a piece is in none.
bool LastBars::narrow(const std::vector<int>& open, Level& level) {
    level.open.clear();
    level.next.clear();
    std::fill(holders_.begin(), holders_.end(), 0);
    std::size_t looked_at = open.size() + list_.size();
    for (const int fill : open) {
        const auto pieces = held(fill);
        looked_at += pieces.size();
        if (waste_[static_cast<std::size_t>(fill)] > slack_ ||
            std::any_of(pieces.begin(), pieces.end(), [&](const Held& one) {
                return one.count > left_[one.piece];
            }))
            continue;
        level.open.push_back(fill);
        for (const Held& one : pieces)
            ++holders_[one.piece];
    }
    work_ += static_cast<long long>(looked_at);
    std::size_t scarce = list_.size();
    for (std::size_t i = 0; i < list_.size(); ++i)
        if (left_[i] > 0 && (scarce == list_.size() || holders_[i] < holders_[scarce]))
            scarce = i;
    if (holders_[scarce] == 0)
        return false;
    std::vector<std::pair<long long, int>> order;
    for (const int fill : level.open) {
        bool holds = false;
        long long common = 0;
        for (const Held& one : held(fill)) {
            holds = holds || one.piece == scarce;
            common += one.count * holders_[one.piece];
        }
        if (holds)
            order.emplace_back(-common, fill);
    }
    std::sort(order.begin(), order.end());
    for (const auto& [common, fill] : order)
        level.next.push_back(fill);
    return true;
}

bool LastBars::search(int most_bars, long long most_work) {
    const long long until = work_ + most_work;
    std::vector<int> all(fills_.size());
    for (std::size_t fill = 0; fill < all.size(); ++fill)
        all[fill] = static_cast<int>(fill);
    path_.resize(static_cast<std::size_t>(most_bars));
    path_[0].chosen = -1;
    if (!narrow(all, path_[0]))
        return false;
    std::size_t depth = 0;
    while (work_ < until) {
        Level& level = path_[depth];
        if (level.chosen >= 0) { // whatever holds it was tried
            use(level.chosen, -1);
            std::erase(level.open, level.chosen);
            level.chosen = -1;
        }
        if (level.next.empty()) {
            if (depth-- == 0)
                return false;
            continue;
        }
        level.chosen = level.next.back();
        level.next.pop_back();
        use(level.chosen, 1);
        if (pieces_left_ == 0) {
            path_.resize(depth + 1);
            return true;
        }
        if (depth + 1 == path_.size())
            continue;
        path_[depth + 1].chosen = -1;
        if (narrow(level.open, path_[depth + 1]))
            ++depth;
    }
    return false;
}

std::optional<Bars> LastBars::plan(const Counts& demand, int most_bars, long long most_work) {
    long long slack = static_cast<long long>(most_bars) * list_.stock.front().closed;
    int shortest = 0;
    pieces_left_ = 0;
    for (std::size_t i = 0; i < list_.size(); ++i)
        if (demand[i] > 0) {
            shortest = list_.length[i];
            pieces_left_ += demand[i];
            slack -= static_cast<long long>(demand[i]) * list_.length[i];
        }
    if (slack < 0 || slack >= shortest || !gather(demand, slack) || fills_.empty())
        return std::nullopt;
    left_ = demand;
    slack_ = slack;
    if (!search(most_bars, most_work))
        return std::nullopt;
    Bars bars;
    for (const Level& level : path_)
        bars.push_back({{0, fills_[static_cast<std::size_t>(level.chosen)]}, 1});
    return bars;
}

} // namespace treadle::cutting
