// The bound of the linear program: against a printed value, and never above what all plans cost.

#include <doctest/doctest.h>

#include "cutting/all_plans.h"
#include "cutting/first_fit.h"
#include "cutting/relaxation.h"

using namespace treadle;
using namespace treadle::test;
using cutting::Relaxation;

namespace {

void solve_to_the_end(Relaxation& relaxation, const CutList& list) {
    const auto plan = cutting::first_fit(list, {list.demand, list.whole_stock()});
    relaxation.start(plan.value_or(Bars{}));
    int rounds = 0;
    while (!relaxation.round(Relaxation::Stop::when_best))
        REQUIRE(++rounds < 100'000);
}

} // namespace

TEST_CASE("a printed example") {
    // Chvatal, Linear Programming (1983), chapter 13; from memory: 452.25, so 453 bars.
    CutProblem problem;
    problem.pieces = {{45, 97}, {36, 610}, {31, 395}, {14, 211}};
    problem.stock = {{100, 1, std::nullopt}};
    const CutList list = list_of(problem);
    Relaxation relaxation(list);
    solve_to_the_end(relaxation, list);
    CHECK(relaxation.cost() == doctest::Approx(452.25));
    CHECK(relaxation.bound() <= 452.25 + 1e-6);
    CHECK(relaxation.bound() > 452.0);
    cutting::Certificate certificate = relaxation.certificate();
    CHECK(cutting::proven_bound(list, certificate) == 453);
}

TEST_CASE("threes that fill their bars lose nothing") {
    for (std::uint32_t seed = 1; seed <= 5; ++seed) {
        const CutList list = list_of(triplets(seed, 15));
        Relaxation relaxation(list);
        solve_to_the_end(relaxation, list);
        CHECK(relaxation.cost() == doctest::Approx(15.0));
    }
}

TEST_CASE("no bound lies above the least cost of all plans") {
    std::mt19937 random(31);
    int tight = 0;
    int cases = 0;
    while (cases < 150) {
        const auto made = cutting::cut_list(few_pieces(random, cases % 3 == 1, cases % 3 == 2));
        if (!made.ok())
            continue; // a piece longer than every bar
        const CutList& list = *made;
        const auto least = AllPlans(list).least_cost();
        if (!least)
            continue;
        CAPTURE(cases);
        ++cases;
        Relaxation relaxation(list);
        solve_to_the_end(relaxation, list);
        CHECK(relaxation.bound() <= static_cast<double>(*least) + 1e-6);
        CHECK(relaxation.cost() <= static_cast<double>(*least) + 1e-6);
        cutting::Certificate certificate = relaxation.certificate();
        const std::int64_t proven = cutting::proven_bound(list, certificate);
        CHECK(proven <= *least);
        tight += proven == *least ? 1 : 0;
        Search search(list);
        search.run(k_second);
        CHECK(search.cost() == *least);
        CHECK(search.bound() == *least);
    }
    CHECK(tight > 75);
}

TEST_CASE("what is left of a plan is bounded too, and the columns stay") {
    const CutList list = list_of(shop_list(9, true, 12, 60));
    Relaxation relaxation(list);
    solve_to_the_end(relaxation, list);
    const double whole = relaxation.cost();
    Counts half = list.demand;
    for (int& count : half)
        count = (count + 1) / 2;
    REQUIRE(relaxation.set(half, list.whole_stock()));
    while (!relaxation.round(Relaxation::Stop::when_best)) {
    }
    const double of_half = relaxation.cost();
    CHECK(of_half < whole);
    CHECK(of_half >= whole / 2 - 1e-6);
    // A solve of the half from its own start costs the same.
    CutList alone = list;
    alone.demand = half;
    Relaxation fresh(alone);
    solve_to_the_end(fresh, alone);
    CHECK(fresh.cost() == doctest::Approx(of_half));
    // The patterns in use make what is asked for.
    std::vector<double> made(list.size(), 0.0);
    for (const Relaxation::Use& use : relaxation.uses())
        for (std::size_t i = 0; i < list.size(); ++i)
            made[i] += use.times * relaxation.pattern(use.pattern).counts[i];
    double metal = 0.0;
    double asked = 0.0;
    for (std::size_t i = 0; i < list.size(); ++i) {
        metal += made[i] * list.length[i];
        asked += static_cast<double>(half[i]) * list.length[i];
    }
    CHECK(metal >= asked - 1e-3);
}

TEST_CASE("many lengths: what is left after the whole bars is solved without going in circles") {
    for (std::uint32_t seed = 1; seed <= 4; ++seed) {
        CAPTURE(seed);
        std::mt19937 random(seed);
        CutProblem problem;
        problem.stock.push_back({1000, 1, std::nullopt});
        for (int n = 0; n < 500; ++n)
            problem.pieces.push_back({100 + static_cast<std::int64_t>(random() % 600), 1});
        const CutList list = list_of(problem);
        Relaxation relaxation(list);
        const auto plan = cutting::first_fit(list, {list.demand, list.whole_stock()});
        REQUIRE(plan.has_value());
        relaxation.start(*plan);
        while (!relaxation.round(Relaxation::Stop::when_rounding_is_clear)) {
        }
        cutting::Rest rest{list.demand, list.whole_stock()};
        for (const Relaxation::Use& use : relaxation.uses())
            if (use.times > 0.99)
                CHECK(!cutting::cut_like(list, relaxation.pattern(use.pattern), 1, rest).empty());
        const long long before = relaxation.work();
        CHECK(relaxation.set(rest.demand, rest.stock_left));
        // Some hundred pivots; in circles it would be thousands.
        const auto rows = static_cast<long long>(list.size() + 1);
        CHECK(relaxation.work() - before < 400 * rows * rows);
    }
}

TEST_CASE("costs are rounded up to what bars can cost") {
    CHECK(cutting::cost_at_least(12.3, 1) == 13);
    CHECK(cutting::cost_at_least(12.0, 1) == 12);
    CHECK(cutting::cost_at_least(12.0000001, 1) == 12); // rounding
    CHECK(cutting::cost_at_least(12.3, 5) == 15);
}
