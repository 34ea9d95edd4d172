// Plans by the worth of pieces are plans of no more bars than allowed, and often of the fewest.

#include <doctest/doctest.h>

#include "cutting/all_plans.h"
#include "cutting/worth_fill.h"

using namespace treadle;
using namespace treadle::test;
using cutting::Knapsack;
using cutting::WorthFill;

TEST_CASE("never more bars than allowed, never fewer than possible, often the fewest") {
    std::mt19937 random(51);
    int fewest = 0;
    int cases = 0;
    while (cases < 100) {
        const auto made = cutting::cut_list(few_pieces(random, false, false));
        if (!made.ok())
            continue; // a piece longer than the bar
        const CutList& list = *made;
        ++cases;
        CAPTURE(cases);
        const auto least = static_cast<int>(AllPlans(list).least_cost().value());
        Knapsack knapsack(list.length, list.longest_fill(), false);
        WorthFill fill(list, knapsack);
        fill.start(list.demand);
        CHECK(!fill.round(least - 1).has_value());
        bool found = false;
        for (int round = 0; round < 20 && !found; ++round)
            if (const auto plan = fill.round(least)) {
                found = true;
                CHECK(cutting::is_plan(list, *plan));
                CHECK(cutting::cost_of(list, *plan) == least);
            }
        fewest += found ? 1 : 0;
        CHECK(fill.work() > 0);
        CHECK(fill.knapsack_work() == knapsack.work());
    }
    CHECK(fewest >= 95);
}

TEST_CASE("later rounds find what the first did not") {
    int first = 0;
    int all = 0;
    for (std::uint32_t seed = 1; seed <= 30; ++seed) {
        const CutList list = list_of(shop_list(seed, seed % 2 == 0, 12, 60));
        Search search(list);
        search.run(k_second / 10);
        REQUIRE(search.proven());
        Knapsack knapsack(list.length, list.longest_fill(), false);
        WorthFill fill(list, knapsack);
        fill.start(list.demand);
        bool found = false;
        for (int round = 0; round < 50 && !found; ++round) {
            found = fill.round(static_cast<int>(search.cost())).has_value();
            first += found && round == 0 ? 1 : 0;
        }
        all += found ? 1 : 0;
    }
    CHECK(all > first);
}
