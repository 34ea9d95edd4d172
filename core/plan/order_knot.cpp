#include "plan/order_knot.h"

#include "base/stable_sort.h"
#include "plan/order_bounds.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <unordered_map>

namespace treadle::plan {

namespace {

constexpr std::size_t k_widest = 24;            ///< lists kept side by side
constexpr std::size_t k_most_cells = 2'000'000; ///< groups times stages; beyond: not searched

/// A list of visits, sharing its beginning with others.
struct Node {
    State state;
    int parent = -1;
    int group = -1;
    int visits = 0;
    int least = 0; ///< visits still needed
};

class Search {
public:
    Search(const Knot& knot, long long most_work)
        : knot_(knot),
          bounds_(knot),
          most_work_(most_work) {}

    Visits run(std::vector<int> known) {
        Visits best{std::move(known), 0};
        nodes_.push_back({State(knot_.routes.size(), Place{0}), -1, -1, 0, 0});
        // One visit each is never enough in a knot.
        best.least = nodes_[0].least =
            std::max(bounds_.least(knot_, nodes_[0].state), knot_.groups + 1);
        if (best.proven())
            return best;
        widen(best);
        if (best.proven())
            return best;
        shortest_first(best);
        return best;
    }

private:
    /// Every useful visit from a node, as new nodes behind the others.
    void expand(std::size_t at) {
        const std::size_t before = nodes_.size();
        for (int group = 0; group < knot_.groups; ++group) {
            Node next{nodes_[at].state, static_cast<int>(at), group, nodes_[at].visits + 1, 0};
            bool moved = false;
            for (std::size_t r = 0; r < knot_.routes.size(); ++r)
                moved = advance(knot_.routes[r], group, next.state[r]) || moved;
            work_ += static_cast<long long>(knot_.routes.size());
            if (!moved)
                continue;
            next.least = bounds_.least(knot_, next.state);
            work_ += bounds_.work();
            if (bounds_.is_finished(
                    knot_, next.state, group)) { // it must be visited, and never again
                nodes_.resize(before);
                nodes_.push_back(std::move(next));
                return;
            }
            nodes_.push_back(std::move(next));
        }
    }

    void keep(const Node& end, Visits& best) const {
        if (end.visits >= static_cast<int>(best.order.size()))
            return;
        best.order.clear();
        for (const Node* node = &end; node->parent >= 0;
             node = &nodes_[static_cast<std::size_t>(node->parent)])
            best.order.push_back(node->group);
        std::reverse(best.order.begin(), best.order.end());
    }

    /// The most promising lists of each length side by side.
    void widen(Visits& best) {
        const auto one = bounds_.work() * knot_.groups * static_cast<long long>(best.order.size());
        const auto width = static_cast<std::size_t>(
            std::clamp(most_work_ / 3 / std::max(one, 1LL), 1LL, static_cast<long long>(k_widest)));
        std::vector<std::size_t> now{0};
        while (!now.empty() && work_ < most_work_) {
            std::vector<std::size_t> next;
            for (const std::size_t at : now) {
                const std::size_t from = nodes_.size();
                expand(at);
                for (std::size_t i = from; i < nodes_.size(); ++i)
                    if (nodes_[i].least == 0)
                        keep(nodes_[i], best);
                    else if (nodes_[i].visits + nodes_[i].least <
                             static_cast<int>(best.order.size()))
                        next.push_back(i);
            }
            base::stable_sort(next, [&](std::size_t a, std::size_t b) {
                return nodes_[a].least != nodes_[b].least ? nodes_[a].least < nodes_[b].least
                                                          : nodes_[a].state > nodes_[b].state;
            });
            next.erase(std::unique(next.begin(),
                                   next.end(),
                                   [&](std::size_t a, std::size_t b) {
                                       return nodes_[a].state == nodes_[b].state;
                                   }),
                       next.end());
            if (next.size() > width)
                next.resize(width);
            now = std::move(next);
        }
    }

    /// The bound of a list is its visits and the least still needed; the smallest is looked at
    /// first, of equals the longest. The first complete one is the shortest there is.
    void shortest_first(Visits& best) {
        nodes_.resize(1);
        std::unordered_map<State, int> seen{{nodes_[0].state, 0}};
        std::vector<std::vector<std::size_t>> open(best.order.size() + 1);
        const auto root = static_cast<std::size_t>(nodes_[0].least);
        open[root].push_back(0);
        for (std::size_t bound = root; bound < best.order.size();) {
            if (open[bound].empty()) {
                ++bound;
                continue;
            }
            best.least = static_cast<int>(bound);
            const std::size_t at = open[bound].back();
            open[bound].pop_back();
            if (nodes_[at].least == 0) {
                keep(nodes_[at], best);
                return;
            }
            if (nodes_[at].visits > seen.at(nodes_[at].state))
                continue;
            if (work_ >= most_work_)
                return;
            const std::size_t from = nodes_.size();
            expand(at);
            for (std::size_t i = from; i < nodes_.size(); ++i) {
                // A bound never falls along a list.
                nodes_[i].least =
                    std::max(nodes_[i].least, static_cast<int>(bound) - nodes_[i].visits);
                const auto total = static_cast<std::size_t>(nodes_[i].visits + nodes_[i].least);
                const auto [known, fresh] = seen.try_emplace(nodes_[i].state, nodes_[i].visits);
                if (total >= best.order.size() || (!fresh && known->second <= nodes_[i].visits))
                    continue;
                known->second = nodes_[i].visits;
                open[total].push_back(i);
            }
        }
        best.least = static_cast<int>(best.order.size());
    }

    const Knot& knot_;
    Bounds bounds_;
    std::vector<Node> nodes_;
    long long work_ = 0;
    long long most_work_;
};

/// Leaves out visits that are not needed, from the front.
std::vector<int> pruned(const Knot& knot, std::vector<int> visits, long long most_work) {
    long long work = 0;
    for (std::size_t i = 0; i < visits.size() && work < most_work;) {
        std::vector<int> fewer = visits;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        if (does_all(knot.routes, fewer))
            visits = std::move(fewer);
        else
            ++i;
        work += static_cast<long long>(visits.size() * knot.routes.size());
    }
    return visits;
}

} // namespace

bool does_all(const std::vector<Route>& routes, const std::vector<int>& visits) {
    for (const Route& route : routes) {
        Place place = 0;
        for (const int group : visits)
            advance(route, group, place);
        if (stage_of(place) < route.size())
            return false;
    }
    return true;
}

Visits
solve_knot(const Knot& knot, const std::vector<std::vector<int>>& known, long long most_work) {
    const std::vector<int>* shortest = &known.front();
    for (const std::vector<int>& list : known)
        if (list.size() < shortest->size())
            shortest = &list;
    std::size_t stages = 0;
    bool small = true;
    for (const Route& route : knot.routes) {
        stages += route.size() + 1;
        small = small && route.size() <= k_most_stages;
        for (const RouteStage& stage : route)
            small = small && stage.size() <= k_most_in_stage;
    }
    if (!small || stages * static_cast<std::size_t>(knot.groups) > k_most_cells)
        return {*shortest, knot.groups + 1};
    return Search(knot, most_work).run(pruned(knot, *shortest, most_work));
}

} // namespace treadle::plan
