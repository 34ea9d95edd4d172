// Plans made without looking back are plans, and within what is known of them.

#include <doctest/doctest.h>

#include "cutting/first_fit.h"
#include "cutting/lists.h"

using namespace treadle;
using namespace treadle::test;
using cutting::Rest;

namespace {

Rest whole(const CutList& list) { return {list.demand, list.whole_stock()}; }

} // namespace

TEST_CASE("first and best fit make every piece, within their known worst case") {
    for (std::uint32_t seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        const CutList list =
            list_of(seed % 3 == 0 ? triplets(seed, 20) : shop_list(seed, seed % 2 == 0, 12, 80));
        long long metal = 0;
        for (std::size_t i = 0; i < list.size(); ++i)
            metal += static_cast<long long>(list.length[i]) * list.demand[i];
        const std::int64_t room = list.longest_fill();
        for (const auto& plan :
             {cutting::first_fit(list, whole(list)), cutting::best_fit(list, whole(list))}) {
            REQUIRE(plan.has_value());
            CHECK(cutting::is_plan(list, *plan));
            const std::int64_t bars = cutting::cost_of(list, *plan);
            CHECK(bars >= (metal + room - 1) / room);
            // 11/9 of the least and 6/9: G. Dosa, The tight bound of first fit decreasing, 2007.
            Search search(list);
            search.run(k_second / 10);
            CHECK(bars * 9 <= search.cost() * 11 + 6);
            CHECK(search.cost() <= bars);
        }
    }
}

TEST_CASE("where the stock runs out there is no plan") {
    CutProblem problem;
    problem.pieces = {{60, 3}};
    problem.stock = {{100, 1, 2}};
    CutList list = list_of(problem);
    CHECK(!cutting::first_fit(list, whole(list)).has_value());
    CHECK(!cutting::best_fit(list, whole(list)).has_value());
    problem.stock[0].available = 3;
    list = list_of(problem);
    CHECK(cutting::first_fit(list, whole(list)).has_value());
    CHECK(cutting::best_fit(list, whole(list)).has_value());
}

TEST_CASE("a drop that costs nothing is used before a bar") {
    CutProblem problem;
    problem.pieces = {{60, 2}};
    problem.stock = {{100, 1, std::nullopt}, {65, 0, 1}};
    const CutList list = list_of(problem);
    const auto plan = cutting::first_fit(list, whole(list));
    REQUIRE(plan.has_value());
    CHECK(cutting::cost_of(list, *plan) == 1);
    CHECK(!cutting::best_fit(list, whole(list)).has_value()); // knows one kind of bar
}

TEST_CASE("a bar is filled up with the longest that fits") {
    CutProblem problem;
    problem.pieces = {{50, 1}, {30, 2}, {20, 4}, {10, 1}};
    problem.stock = {{100, 1, std::nullopt}};
    const CutList list = list_of(problem); // in tens
    Counts counts(4, 0);
    cutting::fill_up(list, list.demand, 10, counts);
    CHECK(counts == Counts{1, 1, 1, 0});
    counts = {1, 0, 0, 0}; // is in already: five left to fill
    cutting::fill_up(list, list.demand, 5, counts);
    CHECK(counts == Counts{1, 1, 1, 0});
}

TEST_CASE("a pattern is cut with shorter pieces where its own are made") {
    CutProblem problem;
    problem.pieces = {{50, 3}, {40, 1}, {10, 1}};
    problem.stock = {{100, 1, std::nullopt}};
    const CutList list = list_of(problem);
    Rest rest = whole(list);
    // Two of 50, then the third with a 40 and a 10 in its mate's place.
    const Bars bars = cutting::cut_like(list, {0, {2, 0, 0}}, 5, rest);
    CHECK(cutting::is_done(rest));
    CHECK(cutting::is_plan(list, bars));
    CHECK(cutting::cost_of(list, bars) == 2);
}

TEST_CASE("no more bars are cut alike than there are, and ends stay") {
    CutProblem problem;
    problem.pieces = {{46, 6}, {44, 2}};
    problem.stock = {{100, 1, 2}};
    problem.least_end = 10;
    const CutList list = list_of(problem);
    Rest rest = whole(list);
    // 46 and 46 leave 8: each bar holds one of them, or a 46 and a 44 with 10 left.
    const Bars bars = cutting::cut_like(list, {0, {2, 0}}, 9, rest);
    CHECK(cutting::cost_of(list, bars) <= 2);
    for (const CutBars& bar : bars)
        CHECK(list.stock[0].takes(cutting::fill_of(list, bar.pattern.counts)));
    CHECK(rest.stock_left[0] == 2 - cutting::cost_of(list, bars));
}
