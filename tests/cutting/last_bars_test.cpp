// The last bars: whatever can be made with next to no waste is made, and nothing else.

#include <doctest/doctest.h>

#include "cutting/all_plans.h"
#include "cutting/last_bars.h"

using namespace treadle;
using namespace treadle::test;
using cutting::Knapsack;
using cutting::LastBars;

namespace {

constexpr long long k_enough = 10'000'000;

/// Bars times length less the pieces.
long long waste(const CutList& list, int bars) {
    return bars * static_cast<long long>(list.stock[0].closed) -
           cutting::fill_of(list, list.demand);
}

} // namespace

TEST_CASE("finds a plan just where trying everything does") {
    std::mt19937 random(61);
    int found = 0;
    int none = 0;
    while (found < 40 || none < 40) {
        const auto made = cutting::cut_list(few_pieces(random, false, false));
        if (!made.ok())
            continue; // a piece longer than the bar
        const CutList& list = *made;
        const auto least = static_cast<int>(AllPlans(list).least_cost().value());
        Knapsack knapsack(list.length, list.longest_fill(), false);
        LastBars last(list, knapsack);
        for (int bars = 1; bars <= least; ++bars) {
            CAPTURE(bars);
            const auto plan = last.plan(list.demand, bars, k_enough);
            if (waste(list, bars) < 0 || waste(list, bars) >= list.length.back()) {
                CHECK(!plan.has_value());
                continue;
            }
            CHECK(plan.has_value() == (bars == least));
            if (!plan) {
                ++none;
                continue;
            }
            ++found;
            CHECK(cutting::is_plan(list, *plan));
            CHECK(cutting::cost_of(list, *plan) == bars);
        }
        CHECK(last.knapsack_work() == knapsack.work());
    }
}

TEST_CASE("triplets of twenty bars are put together without a linear program") {
    for (std::uint32_t seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        const CutList list = list_of(triplets(seed, 20));
        Knapsack knapsack(list.length, list.longest_fill(), false);
        LastBars last(list, knapsack);
        const auto plan = last.plan(list.demand, 20, k_enough);
        REQUIRE(plan.has_value());
        CHECK(cutting::is_plan(list, *plan));
        CHECK(cutting::cost_of(list, *plan) == 20);
    }
}

TEST_CASE("gives up when the work is done") {
    const CutList list = list_of(triplets(7, 20));
    Knapsack knapsack(list.length, list.longest_fill(), false);
    LastBars last(list, knapsack);
    CHECK(!last.plan(list.demand, 20, 0).has_value());
    const long long gathered = last.work();
    CHECK(last.plan(list.demand, 20, k_enough).has_value());
    CHECK(last.work() > 2 * gathered);
    CHECK(last.work() < k_enough);
}
