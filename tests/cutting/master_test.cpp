// Small linear programs worked by hand, and others solved a second way.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "cutting/master.h"

using namespace treadle::cutting;

namespace {

constexpr double k_dear = 100.0;
constexpr double k_near = 1e-6;
constexpr int k_enough = 10'000;

Master with_units(std::size_t rows) {
    Master master(rows);
    for (int r = 0; r < static_cast<int>(rows); ++r)
        master.add(k_dear, {{r, 1.0}});
    for (int r = 0; r < static_cast<int>(rows); ++r)
        master.add(0.0, {{r, -1.0}}); // one too many
    return master;
}

/// Twelve random patterns of five pieces.
void add_patterns(Master& master, std::mt19937& random) {
    for (int n = 0; n < 12; ++n) {
        std::vector<Entry> entries;
        for (int r = 0; r < 5; ++r)
            if (const auto count = random() % 4; count > 0)
                entries.push_back({r, static_cast<double>(count)});
        master.add(1.0 + static_cast<double>(random() % 3), entries);
    }
}

std::vector<double> random_demand(std::mt19937& random) {
    std::vector<double> demand;
    for (int r = 0; r < 5; ++r)
        demand.push_back(static_cast<double>(1 + random() % 20));
    return demand;
}

/// Best by its own conditions: nothing short, no column helps, prices times demand is the cost.
void check_best(const Master& master, const std::vector<double>& demand) {
    double worth = 0.0;
    for (std::size_t r = 0; r < master.rows(); ++r) {
        CHECK(master.level(r) >= -k_near);
        worth += master.dual(r) * demand[r];
    }
    CHECK(worth == doctest::Approx(master.objective()));
    for (int c = 0; c < static_cast<int>(master.columns()); ++c)
        CHECK(master.reduced_cost(c) >= -k_near);
}

} // namespace

TEST_CASE("three programs worked by hand") {
    {
        // Bars of 10 for five of 5 and four of 3: (2,0), (1,1), (0,3). All three columns cost 1;
        // prices 1/2 and 1/3 allow all of them: 5/2 + 4/3 = 23/6.
        Master master = with_units(2);
        master.add(1.0, {{0, 2.0}});
        master.add(1.0, {{0, 1.0}, {1, 1.0}});
        master.add(1.0, {{1, 3.0}});
        master.start({5.0, 4.0});
        master.improve(k_enough);
        CHECK(master.objective() == doctest::Approx(23.0 / 6.0));
        CHECK(master.dual(0) == doctest::Approx(1.0 / 2.0));
        CHECK(master.dual(1) == doctest::Approx(1.0 / 3.0));
        // A better pattern (1,2): prices 1/2 and 1/4 then, 5/2 + 1 = 7/2.
        CHECK(master.enter(master.add(1.0, {{0, 1.0}, {1, 2.0}})));
        master.improve(k_enough);
        CHECK(master.objective() == doctest::Approx(3.5));
    }
    {
        // Six of one piece, three to a bar, two bars only: two bars do; seven make one dear.
        Master master(2);
        master.add(k_dear, {{0, 1.0}});
        master.add(0.0, {{1, 1.0}});
        master.add(1.0, {{0, 3.0}, {1, 1.0}});
        master.start({6.0, 2.0});
        master.improve(k_enough);
        CHECK(master.objective() == doctest::Approx(2.0));
        CHECK(master.demand({7.0, 2.0}));
        master.improve(k_enough);
        CHECK(master.objective() == doctest::Approx(2.0 + k_dear));
    }
    {
        // One cheap column shut: the dearer one is used; open again: the cheap one.
        Master master = with_units(1);
        const int cheap = master.add(1.0, {{0, 2.0}});
        master.add(3.0, {{0, 2.0}});
        master.start({4.0});
        master.improve(k_enough);
        CHECK(master.objective() == doctest::Approx(2.0));
        master.ban(cheap, true);
        CHECK(master.demand({4.0}));
        master.improve(k_enough);
        CHECK(master.objective() == doctest::Approx(6.0));
        CHECK(!master.enter(cheap));
        master.ban(cheap, false);
        CHECK(master.demand({4.0}));
        master.improve(k_enough);
        CHECK(master.objective() == doctest::Approx(2.0));
    }
}

TEST_CASE("the best is the best by its own conditions") {
    std::mt19937 random(21);
    for (int n = 0; n < 200; ++n) {
        Master master = with_units(5);
        add_patterns(master, random);
        const std::vector<double> demand = random_demand(random);
        master.start(demand);
        master.improve(k_enough);
        check_best(master, demand);
        CHECK(master.work() > 0);
    }
}

TEST_CASE("a changed demand costs what a fresh solve costs") {
    std::mt19937 random(22);
    for (int n = 0; n < 200; ++n) {
        const auto seed = random();
        Master kept = with_units(5);
        std::mt19937 once(seed);
        add_patterns(kept, once);
        kept.start(random_demand(random));
        kept.improve(k_enough);
        for (int change = 0; change < 5; ++change) {
            const std::vector<double> demand = random_demand(random);
            REQUIRE(kept.demand(demand));
            kept.improve(k_enough);
            check_best(kept, demand);
            Master fresh = with_units(5);
            std::mt19937 again(seed);
            add_patterns(fresh, again);
            fresh.start(demand);
            fresh.improve(k_enough);
            CHECK(kept.objective() == doctest::Approx(fresh.objective()));
        }
    }
}

TEST_CASE("hundreds of pivots leave no rounding that matters") {
    std::mt19937 random(23);
    Master master = with_units(60);
    for (int n = 0; n < 600; ++n) {
        std::vector<Entry> entries;
        for (int r = static_cast<int>(random() % 12); r < 60;
             r += 1 + static_cast<int>(random() % 24))
            entries.push_back({r, static_cast<double>(1 + random() % 3)});
        master.add(1.0, entries);
    }
    std::vector<double> demand;
    for (int r = 0; r < 60; ++r)
        demand.push_back(static_cast<double>(1 + random() % 9));
    master.start(demand);
    for (int round = 0; round < 60; ++round) { // the inverse is made anew in between
        for (double& d : demand)
            d = static_cast<double>(1 + random() % 9);
        REQUIRE(master.demand(demand));
        master.improve(k_enough);
    }
    check_best(master, demand);
}
