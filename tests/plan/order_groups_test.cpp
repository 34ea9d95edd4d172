// Fewest visits over groups of work (order_groups.cpp, order_knot.cpp, order_bounds.cpp), apart
// from any metal: against brute force where small, against the station-by-station order where
// large.

#include "plan/order_groups.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <set>

using namespace treadle::plan;

namespace {

/// Left of every route: the stages not yet finished, without what is done.
using Left = std::vector<Route>;

/// Written for plainness, not speed: takes finished groups out of the first stage.
Left after(Left left, int group) {
    for (Route& route : left)
        while (!route.empty()) {
            RouteStage& stage = route.front();
            const auto at = std::find(stage.begin(), stage.end(), group);
            if (at == stage.end())
                break;
            stage.erase(at);
            if (!stage.empty())
                break;
            route.erase(route.begin());
        }
    return left;
}

bool is_done(const Left& left) {
    return std::all_of(left.begin(), left.end(), [](const Route& route) { return route.empty(); });
}

bool does_everything(const std::vector<Route>& routes, const std::vector<int>& visits) {
    return is_done(std::accumulate(visits.begin(), visits.end(), routes, after));
}

/// Every list of one length, then every list one longer.
int brute_force(int groups, const std::vector<Route>& routes) {
    std::set<Left> reached{routes};
    for (int visits = 0;; ++visits) {
        std::set<Left> next;
        for (const Left& left : reached) {
            if (is_done(left))
                return visits;
            for (int group = 0; group < groups; ++group)
                next.insert(after(left, group));
        }
        reached = std::move(next);
    }
}

struct RandomWork {
    std::vector<WorkGroup> groups;
    std::vector<Route> routes;
};

RandomWork random_work(std::mt19937& random, int groups, int parts, int stages, int wide) {
    const auto below = [&](int end) {
        return static_cast<int>(random() % static_cast<unsigned>(end));
    };
    RandomWork work;
    for (int g = 0; g < groups; ++g) {
        work.groups.push_back({0, below(3)});
        work.routes.push_back({{g}}); // every group is asked for
    }
    for (int p = 0; p < parts; ++p) {
        Route route(static_cast<std::size_t>(1 + below(stages)));
        for (RouteStage& stage : route)
            for (int i = 1 + below(wide); i > 0; --i) {
                const int group = below(groups);
                if (std::find(stage.begin(), stage.end(), group) == stage.end())
                    stage.push_back(group);
            }
        work.routes.push_back(route);
    }
    return work;
}

} // namespace

TEST_CASE("two parts that cross need one group twice") {
    const std::vector<WorkGroup> groups(2);
    const std::vector<Route> routes{{{0}, {1}}, {{1}, {0}}};
    const Visits visits = fewest_visits(groups, routes, {0, 1, 0});
    CHECK(visits.order.size() == 3); // two would leave one part's second stage
    CHECK(visits.proven());
}

TEST_CASE("work without circles needs every group once") {
    const std::vector<WorkGroup> groups(4);
    const std::vector<Route> routes{{{0}, {2}, {3}}, {{1, 0}, {2}}, {{1}, {3}}};
    const Visits visits = fewest_visits(groups, routes, {0, 1, 0, 2, 3});
    CHECK(visits.order.size() == 4);
    CHECK(visits.proven());
    CHECK(does_everything(routes, visits.order));
}

TEST_CASE("two circles apart from each other are counted by themselves") {
    const std::vector<WorkGroup> groups(4);
    const std::vector<Route> routes{
        {{0}, {1}, {2}}, {{1}, {0}, {3}}, {{2}, {3}, {2}}, {{3}, {2}, {3}}};
    const Visits visits = fewest_visits(groups, routes, station_by_station(groups, routes));
    // 0 and 1 cross: three. 2 3 2 and 3 2 3 share two of three: four.
    CHECK(visits.order.size() == 7);
    CHECK(visits.proven());
    CHECK(does_everything(routes, visits.order));
}

TEST_CASE("small work needs what brute force over all lists finds") {
    std::mt19937 random(20261126);
    for (int round = 0; round < 200; ++round) {
        CAPTURE(round);
        const int groups = 2 + round % 4;
        const RandomWork work = random_work(random, groups, 2 + round % 3, 4, 1 + round % 2);
        const Visits visits =
            fewest_visits(work.groups, work.routes, station_by_station(work.groups, work.routes));
        CHECK(does_everything(work.routes, visits.order));
        CHECK(visits.proven());
        CHECK(static_cast<int>(visits.order.size()) == brute_force(groups, work.routes));
    }
}

TEST_CASE("large work: never more visits than station by station, never fewer than the bound") {
    std::mt19937 random(20261127);
    std::size_t saved = 0;
    for (int round = 0; round < 12; ++round) {
        CAPTURE(round);
        const RandomWork work =
            random_work(random, 5 + 4 * round, 30 + 20 * round, 2 + round, 1 + round % 3);
        const std::vector<int> round_the_shop = station_by_station(work.groups, work.routes);
        REQUIRE(does_everything(work.routes, round_the_shop));
        const Visits visits = fewest_visits(work.groups, work.routes, round_the_shop);
        CHECK(does_everything(work.routes, visits.order));
        CHECK(visits.order.size() <= round_the_shop.size());
        CHECK(visits.least <= static_cast<int>(visits.order.size()));
        CHECK(visits.least >= static_cast<int>(work.groups.size()));
        saved += round_the_shop.size() - visits.order.size();
        const Visits again = fewest_visits(work.groups, work.routes, round_the_shop);
        CHECK(again.order == visits.order); // counted, not timed
    }
    CHECK(saved > 0);
}
