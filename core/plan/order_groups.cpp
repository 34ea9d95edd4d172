#include "plan/order_groups.h"

#include "base/stable_sort.h"
#include "plan/order_knot.h"

#include <algorithm>
#include <cstddef>
#include <functional>
#include <queue>
#include <set>
#include <utility>

namespace treadle::plan {

namespace {

/// Steps of the search for all knots together; a few milliseconds.
constexpr long long k_most_work = 2'000'000;
/// Routes that ask for nothing new are looked for among so many.
constexpr std::size_t k_most_compared = 200;

/// Does visits and knows what is ready.
class Progress {
public:
    Progress(std::size_t groups, const std::vector<Route>& routes)
        : routes_(routes),
          at_(routes.size()),
          open_(routes.size()),
          ready_(groups) {
        for (std::size_t r = 0; r < routes.size(); ++r)
            release(r);
    }

    [[nodiscard]] bool is_ready(int group) const {
        return !ready_[static_cast<std::size_t>(group)].empty();
    }
    void visit(int group) {
        std::vector<std::size_t>& ready = ready_[static_cast<std::size_t>(group)];
        while (!ready.empty()) {
            const std::size_t route = ready.back();
            ready.pop_back();
            if (--open_[route] == 0) {
                ++at_[route];
                release(route);
            }
        }
    }

private:
    void release(std::size_t route) {
        if (at_[route] == routes_[route].size())
            return;
        const RouteStage& stage = routes_[route][at_[route]];
        open_[route] = stage.size();
        for (const int group : stage)
            ready_[static_cast<std::size_t>(group)].push_back(route);
    }

    const std::vector<Route>& routes_;
    std::vector<std::size_t> at_;
    std::vector<std::size_t> open_; ///< of the stage at hand, not yet done
    std::vector<std::vector<std::size_t>> ready_;
};

/// Who waits for whom: groups first, then a joint between every two stages of a route.
struct Waiting {
    std::vector<std::vector<int>> next;

    Waiting(std::size_t groups, const std::vector<Route>& routes) : next(groups) {
        for (const Route& route : routes)
            for (std::size_t s = 0; s + 1 < route.size(); ++s) {
                const auto joint = static_cast<int>(next.size());
                for (const int before : route[s])
                    next[static_cast<std::size_t>(before)].push_back(joint);
                next.push_back(route[s + 1]);
            }
    }
};

/// Circles by depth-first search with low links (Tarjan's way, without recursion: routes are long).
class Circles {
public:
    explicit Circles(const Waiting& waiting)
        : next_(waiting.next),
          seen_(next_.size(), -1),
          low_(next_.size()),
          of_(next_.size(), -1),
          edge_(next_.size()) {
        for (std::size_t i = 0; i < next_.size(); ++i)
            if (seen_[i] < 0)
                walk(static_cast<int>(i));
    }
    [[nodiscard]] int count() const { return count_; }
    [[nodiscard]] int of(int node) const { return of_[static_cast<std::size_t>(node)]; }

private:
    void enter(int node) {
        const auto n = static_cast<std::size_t>(node);
        seen_[n] = low_[n] = clock_++;
        path_.push_back(node);
        stack_.push_back(node);
    }
    void walk(int root) {
        enter(root);
        while (!path_.empty()) {
            const int node = path_.back();
            const auto n = static_cast<std::size_t>(node);
            if (edge_[n] < next_[n].size()) {
                const int to = next_[n][edge_[n]++];
                const auto t = static_cast<std::size_t>(to);
                if (seen_[t] < 0)
                    enter(to);
                else if (of_[t] < 0)
                    low_[n] = std::min(low_[n], seen_[t]);
                continue;
            }
            path_.pop_back();
            if (!path_.empty()) {
                int& above = low_[static_cast<std::size_t>(path_.back())];
                above = std::min(above, low_[n]);
            }
            if (low_[n] == seen_[n])
                close(node);
        }
    }
    void close(int node) {
        for (int top = k_open; top != node;) {
            top = stack_.back();
            stack_.pop_back();
            of_[static_cast<std::size_t>(top)] = count_;
        }
        ++count_;
    }

    static constexpr int k_open = -1;
    const std::vector<std::vector<int>>& next_;
    std::vector<int> seen_;
    std::vector<int> low_;
    std::vector<int> of_;
    std::vector<std::size_t> edge_;
    std::vector<int> path_;
    std::vector<int> stack_;
    int clock_ = 0;
    int count_ = 0;
};

/// Groups of a circle and what the routes ask of them.
struct Circle {
    std::vector<int> groups;
    std::vector<Route> routes; ///< in places of `groups`
    std::size_t begun = 0;     ///< while routes are taken apart: route + 1 of the last one
    std::size_t stage = 0;
};

bool same_single(const RouteStage& a, const RouteStage& b) {
    return a.size() == 1 && b.size() == 1 && a == b;
}

/// Each route, seen from each circle.
void take_apart(const std::vector<Route>& routes,
                const Circles& circles,
                const std::vector<int>& place,
                std::vector<Circle>& found) {
    for (std::size_t r = 0; r < routes.size(); ++r)
        for (std::size_t s = 0; s < routes[r].size(); ++s)
            for (const int group : routes[r][s]) {
                Circle& circle = found[static_cast<std::size_t>(circles.of(group))];
                if (circle.groups.size() < 2)
                    continue;
                if (circle.begun != r + 1) {
                    circle.begun = r + 1;
                    circle.routes.emplace_back();
                    circle.stage = routes[r].size();
                }
                if (circle.stage != s)
                    circle.routes.back().emplace_back();
                circle.stage = s;
                circle.routes.back().back().push_back(place[static_cast<std::size_t>(group)]);
            }
}

bool asks_no_more(const Route& small, const Route& large) {
    std::size_t at = 0;
    for (const RouteStage& stage : large)
        if (at < small.size() && same_single(small[at], stage))
            ++at;
    return at == small.size();
}

/// Distinct routes, without repeats in a row and without those that others do in passing.
void simplify(std::vector<Route>& routes) {
    for (Route& route : routes)
        route.erase(std::unique(route.begin(), route.end(), same_single), route.end());
    std::sort(routes.begin(), routes.end());
    routes.erase(std::unique(routes.begin(), routes.end()), routes.end());
    if (routes.size() > k_most_compared)
        return;
    std::vector<Route> kept;
    for (std::size_t i = 0; i < routes.size(); ++i) {
        bool needed = true;
        for (std::size_t j = 0; j < routes.size() && needed; ++j)
            needed = i == j || !asks_no_more(routes[i], routes[j]);
        if (needed)
            kept.push_back(routes[i]);
    }
    routes = std::move(kept);
}

/// Circles one after the other: none waits for a later one; of those free, earlier kinds first.
std::vector<int> in_sequence(const Waiting& waiting,
                             const Circles& circles,
                             const std::vector<Circle>& found,
                             const std::vector<WorkGroup>& groups) {
    std::vector<int> waits(found.size());
    std::vector<std::vector<int>> next(found.size());
    for (std::size_t n = 0; n < waiting.next.size(); ++n)
        for (const int to : waiting.next[n]) {
            const int here = circles.of(static_cast<int>(n));
            const int there = circles.of(to);
            if (here == there)
                continue;
            next[static_cast<std::size_t>(here)].push_back(there);
            ++waits[static_cast<std::size_t>(there)];
        }
    using Entry = std::pair<std::pair<int, int>, int>; // kind, first group; circle
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> free;
    const auto release = [&](int circle) {
        const std::vector<int>& members = found[static_cast<std::size_t>(circle)].groups;
        const bool joint = members.empty(); // a joint holds nothing up
        free.push({joint ? std::pair{-1, circle}
                         : std::pair{groups[static_cast<std::size_t>(members.front())].kind,
                                     members.front()},
                   circle});
    };
    for (std::size_t c = 0; c < found.size(); ++c)
        if (waits[c] == 0)
            release(static_cast<int>(c));
    std::vector<int> sequence;
    while (!free.empty()) {
        const int circle = free.top().second;
        free.pop();
        sequence.push_back(circle);
        for (const int to : next[static_cast<std::size_t>(circle)])
            if (--waits[static_cast<std::size_t>(to)] == 0)
                release(to);
    }
    return sequence;
}

/// What a list of visits does in each circle.
std::vector<std::vector<int>>
shares(const std::vector<int>& visits, const Circles& circles, const std::vector<int>& place) {
    std::vector<std::vector<int>> lists(static_cast<std::size_t>(circles.count()));
    for (const int group : visits)
        lists[static_cast<std::size_t>(circles.of(group))].push_back(
            place[static_cast<std::size_t>(group)]);
    return lists;
}

} // namespace

std::vector<int> station_by_station(const std::vector<WorkGroup>& groups,
                                    const std::vector<Route>& routes) {
    Progress progress(groups.size(), routes);
    std::vector<int> shop(groups.size());
    for (std::size_t g = 0; g < groups.size(); ++g)
        shop[g] = static_cast<int>(g);
    const auto station = [&](int group) { return groups[static_cast<std::size_t>(group)].station; };
    base::stable_sort(shop, [&](int a, int b) { return station(a) < station(b); });
    std::vector<int> visits;
    for (std::size_t before = 1; before > 0;) {
        before = 0;
        for (std::size_t first = 0; first < shop.size();) {
            std::size_t last = first;
            bool any = false;
            for (; last < shop.size() && station(shop[last]) == station(shop[first]); ++last) {
                if (!progress.is_ready(shop[last]))
                    continue;
                progress.visit(shop[last]);
                visits.push_back(shop[last]);
                any = true;
                ++before;
            }
            if (!any) // nothing is left here for now
                first = last;
        }
    }
    return visits;
}

Visits fewest_visits(const std::vector<WorkGroup>& groups,
                     const std::vector<Route>& routes,
                     const std::vector<int>& known) {
    const Waiting waiting(groups.size(), routes);
    const Circles circles(waiting);
    std::vector<Circle> found(static_cast<std::size_t>(circles.count()));
    std::vector<int> place(groups.size());
    long long knots = 0;
    for (std::size_t g = 0; g < groups.size(); ++g) {
        std::vector<int>& members =
            found[static_cast<std::size_t>(circles.of(static_cast<int>(g)))].groups;
        place[g] = static_cast<int>(members.size());
        members.push_back(static_cast<int>(g));
        knots += members.size() == 2 ? 1 : 0;
    }
    take_apart(routes, circles, place, found);
    const auto ours = shares(known, circles, place);
    const auto round = shares(station_by_station(groups, routes), circles, place);
    Visits all;
    for (const int at : in_sequence(waiting, circles, found, groups)) {
        const auto c = static_cast<std::size_t>(at);
        Circle& circle = found[c];
        if (circle.groups.size() == 1) {
            all.order.push_back(circle.groups.front());
            ++all.least;
        } else if (!circle.groups.empty()) {
            simplify(circle.routes);
            const Visits best = solve_knot({static_cast<int>(circle.groups.size()), circle.routes},
                                           {ours[c], round[c]},
                                           k_most_work / knots);
            for (const int visit : best.order)
                all.order.push_back(circle.groups[static_cast<std::size_t>(visit)]);
            all.least += best.least;
        }
    }
    return all;
}

} // namespace treadle::plan
