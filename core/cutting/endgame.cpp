#include "cutting/endgame.h"

#include <algorithm>
#include <cmath>

namespace treadle::cutting {

namespace {

constexpr double k_short_of_all = 1e4; // cost of a piece that no pattern makes
constexpr double k_rounding = 1e-6;
constexpr double k_no_end = 1e7;
constexpr int k_most_pivots = 2000;
constexpr long long k_probe_work = 100'000; // before the linear program is asked

} // namespace

Endgame::Endgame(const CutList& list,
                 std::vector<Candidate> candidates,
                 const std::vector<float>& prices,
                 double budget,
                 std::int64_t most_cost)
    : list_(list),
      candidates_(std::move(candidates)),
      first_{0},
      prices_(prices.begin(), prices.end()),
      most_cost_(most_cost),
      master_(list.size() + list.stock.size()) {
    const auto pieces = static_cast<int>(list.size());
    const auto kinds = static_cast<int>(list.stock.size());
    const double dear = k_short_of_all * static_cast<double>(std::max<std::int64_t>(most_cost, 1));
    for (int i = 0; i < pieces; ++i)
        master_.add(dear, {{i, 1.0}});
    for (int k = 0; k < kinds; ++k)
        master_.add(0.0, {{pieces + k, 1.0}});
    for (int i = 0; i < pieces; ++i)
        master_.add(0.0, {{i, -1.0}});
    first_column_ = static_cast<int>(master_.columns());
    Node root;
    root.rest = {list.demand, list.whole_stock()};
    root.budget = budget;
    for (std::size_t c = 0; c < candidates_.size(); ++c) {
        const Pattern& pattern = candidates_[c].pattern;
        std::vector<Entry> entries;
        for (std::size_t i = 0; i < list.size(); ++i)
            if (pattern.counts[i] > 0) {
                entries.push_back({static_cast<int>(i), static_cast<double>(pattern.counts[i])});
                held_.push_back({i, pattern.counts[i]});
            }
        first_.push_back(held_.size());
        entries.push_back({pieces + pattern.stock, 1.0});
        master_.add(static_cast<double>(list.stock[static_cast<std::size_t>(pattern.stock)].cost),
                    entries);
        root.open.push_back(static_cast<int>(c));
    }
    std::vector<double> demand(list.demand.begin(), list.demand.end());
    for (const StockKind& kind : list.stock)
        demand.push_back(kind.limited() ? kind.available : k_no_end);
    master_.start(demand);
    if (enter(root))
        path_.push_back(std::move(root));
    else if (state_ == State::looking)
        state_ = State::none;
}

std::span<const Endgame::Held> Endgame::held(int candidate) const {
    const auto at = static_cast<std::size_t>(candidate);
    return {&held_[first_[at]], first_[at + 1] - first_[at]};
}

/// Leaves out what loses too much here: by itself, and with the pieces that nobody asks for any
/// more. Lists the candidates that hold the scarcest piece.
bool Endgame::narrow(Node& node, std::vector<int>& holds) {
    std::vector<int> holders(list_.size(), 0);
    std::vector<int> open;
    open.reserve(node.open.size());
    std::size_t looked_at = 0;
    for (const int c : node.open) {
        const Candidate& candidate = candidates_[static_cast<std::size_t>(c)];
        const auto kind = static_cast<std::size_t>(candidate.pattern.stock);
        ++looked_at;
        if (candidate.loss > node.budget || node.rest.stock_left[kind] <= 0 ||
            node.cost + list_.stock[kind].cost > most_cost_)
            continue;
        double loss = candidate.loss;
        bool useful = false;
        for (const Held& one : held(c)) {
            const int asked = node.rest.demand[one.piece];
            useful = useful || asked > 0;
            if (one.count > asked)
                loss += prices_[one.piece] * (one.count - asked);
        }
        looked_at += held(c).size();
        if (!useful || loss > node.budget)
            continue;
        open.push_back(c);
        for (const Held& one : held(c))
            ++holders[one.piece];
    }
    work_ += static_cast<long long>(looked_at) * 2;
    node.open = std::move(open);
    std::size_t scarce = list_.size();
    for (std::size_t i = 0; i < list_.size(); ++i)
        if (node.rest.demand[i] > 0 && (scarce == list_.size() || holders[i] < holders[scarce]))
            scarce = i;
    if (holders[scarce] == 0)
        return false;
    for (const int c : node.open)
        for (const Held& one : held(c))
            if (one.piece == scarce)
                holds.push_back(c);
    return true;
}

/// The linear program of what is open. False when it costs too much; candidates that would make it
/// so are closed.
bool Endgame::relax(Node& node) {
    std::vector<char> is_open(candidates_.size(), 0);
    for (const int c : node.open)
        is_open[static_cast<std::size_t>(c)] = 1;
    for (std::size_t c = 0; c < candidates_.size(); ++c)
        master_.ban(first_column_ + static_cast<int>(c), is_open[c] == 0);
    // One piece too many is worth more than may be lost: as often as asked, and no more.
    const int first_spare = static_cast<int>(list_.size() + list_.stock.size());
    std::vector<char> strict(list_.size(), 0);
    for (std::size_t i = 0; i < list_.size(); ++i) {
        strict[i] = prices_[i] > node.budget ? 1 : 0;
        master_.ban(first_spare + static_cast<int>(i), strict[i] != 0);
    }
    std::vector<double> demand(node.rest.demand.begin(), node.rest.demand.end());
    for (std::size_t k = 0; k < list_.stock.size(); ++k)
        demand.push_back(list_.stock[k].limited() ? node.rest.stock_left[k] : k_no_end);
    work_ += static_cast<long long>(candidates_.size());
    if (!master_.demand(demand))
        return true; // nothing learned
    master_.improve(k_most_pivots);
    // A bound from the prices alone: it holds however well the program was solved.
    std::vector<double> price(list_.size());
    double least = 0.0;
    long long pieces = 0;
    for (std::size_t i = 0; i < list_.size(); ++i) {
        price[i] = strict[i] != 0 ? master_.dual(i) : std::max(0.0, master_.dual(i));
        least += price[i] * node.rest.demand[i];
        pieces += node.rest.demand[i];
    }
    std::vector<double> of_stock(list_.stock.size(), 0.0);
    for (std::size_t k = 0; k < list_.stock.size(); ++k)
        if (list_.stock[k].limited()) {
            of_stock[k] = std::min(0.0, master_.dual(list_.size() + k));
            least += of_stock[k] * node.rest.stock_left[k];
        }
    std::vector<double> reduced;
    double under = 0.0;
    for (const int c : node.open) {
        const auto at = static_cast<std::size_t>(c);
        const auto kind = static_cast<std::size_t>(candidates_[at].pattern.stock);
        double cost = static_cast<double>(list_.stock[kind].cost) - of_stock[kind];
        for (const Held& one : held(c))
            cost -= price[one.piece] * one.count;
        reduced.push_back(cost);
        under = std::min(under, cost);
    }
    least += under * static_cast<double>(pieces);
    const double spare = static_cast<double>(most_cost_ - node.cost) - least +
                         k_rounding * static_cast<double>(list_.unit);
    if (spare < 0.0)
        return false;
    std::size_t kept = 0;
    for (std::size_t at = 0; at < node.open.size(); ++at)
        if (reduced[at] - under <= spare)
            node.open[kept++] = node.open[at];
    node.open.resize(kept);
    return true;
}

/// False when nothing can come of this node, or the plan is found.
bool Endgame::enter(Node& node) {
    if (is_done(node.rest)) {
        finish(node);
        return false;
    }
    std::vector<int> holds;
    if (!narrow(node, holds))
        return false;
    if (odd(node) || !probe(node) || !relax(node))
        return false;
    std::vector<double> level(candidates_.size(), 0.0);
    for (std::size_t r = 0; r < master_.rows(); ++r)
        if (master_.basic(r) >= first_column_)
            level[static_cast<std::size_t>(master_.basic(r) - first_column_)] = master_.level(r);
    std::vector<char> is_open(candidates_.size(), 0);
    for (const int c : node.open)
        is_open[static_cast<std::size_t>(c)] = 1;
    for (const int c : holds)
        if (is_open[static_cast<std::size_t>(c)] != 0)
            node.next.push_back(c);
    std::stable_sort(node.next.begin(), node.next.end(), [&](int a, int b) {
        return level[static_cast<std::size_t>(a)] < level[static_cast<std::size_t>(b)];
    });
    return !node.next.empty();
}

/// Odd and even: where some pieces, counted in every open candidate, come in twos, but their number
/// is odd, there is no plan. Elimination over the field of two elements, of the pieces of which not
/// one too many may be made.
bool Endgame::odd(const Node& node) {
    const std::size_t words = node.open.size() / 64 + 1; // a bit for each candidate, and the demand
    const std::size_t last = node.open.size();
    std::vector<std::vector<std::uint64_t>> rows;
    std::vector<std::size_t> row_of(list_.size(), list_.size());
    for (std::size_t i = 0; i < list_.size(); ++i) {
        if (prices_[i] <= node.budget || node.rest.demand[i] <= 0)
            continue;
        row_of[i] = rows.size();
        rows.emplace_back(words + 1, 0);
        if (node.rest.demand[i] % 2 != 0)
            rows.back()[last / 64] |= std::uint64_t{1} << (last % 64);
    }
    for (std::size_t at = 0; at < node.open.size(); ++at)
        for (const Held& one : held(node.open[at])) {
            const std::size_t row = row_of[one.piece];
            if (row < rows.size() && one.count % 2 != 0)
                rows[row][at / 64] |= std::uint64_t{1} << (at % 64);
        }
    work_ += static_cast<long long>(rows.size() * rows.size() * (words + 1)) / 2;
    std::size_t done = 0;
    for (std::size_t at = 0; at < last && done < rows.size(); ++at) {
        const auto bit = [&](std::size_t r) { return (rows[r][at / 64] >> (at % 64) & 1) != 0; };
        std::size_t pivot = done;
        while (pivot < rows.size() && !bit(pivot))
            ++pivot;
        if (pivot == rows.size())
            continue;
        std::swap(rows[pivot], rows[done]);
        for (std::size_t r = done + 1; r < rows.size(); ++r)
            if (bit(r))
                for (std::size_t w = at / 64; w <= words; ++w)
                    rows[r][w] ^= rows[done][w];
        ++done;
    }
    for (std::size_t r = done; r < rows.size(); ++r)
        if ((rows[r][last / 64] >> (last % 64) & 1) != 0)
            return true;
    return false;
}

/// Looks below a node without the linear program, for a short while. False when that settles it.
bool Endgame::probe(const Node& top) {
    const long long until = work_ + k_probe_work;
    std::vector<Node> path{top};
    path.back().next.clear();
    if (!narrow(path.back(), path.back().next))
        return false;
    while (!path.empty()) {
        if (work_ > until)
            return true;
        Node& node = path.back();
        if (node.next.empty()) {
            path.pop_back();
            continue;
        }
        const int candidate = node.next.back();
        node.next.pop_back();
        Node child = child_of(node, candidate);
        std::erase(node.open, candidate);
        if (is_done(child.rest)) {
            path_.insert(path_.end(), path.begin(), path.end());
            finish(child);
            return false;
        }
        if (narrow(child, child.next))
            path.push_back(std::move(child));
    }
    return false;
}

Endgame::Node Endgame::child_of(const Node& node, int candidate) const {
    const auto at = static_cast<std::size_t>(candidate);
    const auto kind = static_cast<std::size_t>(candidates_[at].pattern.stock);
    Node child;
    child.rest = node.rest;
    child.open = node.open;
    child.chosen = candidate;
    child.cost = node.cost + list_.stock[kind].cost;
    child.budget = node.budget - candidates_[at].loss;
    if (list_.stock[kind].limited())
        --child.rest.stock_left[kind];
    for (const Held& one : held(candidate)) {
        const int taken = std::min(one.count, child.rest.demand[one.piece]);
        child.budget -= prices_[one.piece] * (one.count - taken);
        child.rest.demand[one.piece] -= taken;
    }
    return child;
}

void Endgame::finish(const Node& node) {
    plan_.clear();
    const auto put = [&](int candidate) {
        if (candidate >= 0)
            plan_.push_back({candidates_[static_cast<std::size_t>(candidate)].pattern, 1});
    };
    for (const Node& step : path_)
        put(step.chosen);
    put(node.chosen);
    state_ = State::found;
}

void Endgame::run(long long work) {
    const long long until = this->work() + work;
    while (state_ == State::looking && this->work() < until) {
        if (path_.empty()) {
            state_ = State::none;
            return;
        }
        Node& node = path_.back();
        if (node.next.empty()) {
            path_.pop_back();
            continue;
        }
        const int candidate = node.next.back();
        node.next.pop_back();
        Node child = child_of(node, candidate);
        std::erase(node.open, candidate); // whatever holds it was in that child
        if (enter(child))
            path_.push_back(std::move(child));
    }
}

} // namespace treadle::cutting
