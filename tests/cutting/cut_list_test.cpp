// What is a plan, and what is not: cut_list.cpp.

#include <doctest/doctest.h>

#include "cutting/cut_list.h"
#include "cutting/lists.h"

using namespace treadle;
using namespace treadle::test;

namespace {

/// Pieces of 50 (two), 30 (three) and 20 (one); bars of 100, and two of 60.
CutList small() {
    CutProblem problem;
    problem.pieces = {{50, 2}, {30, 3}, {20, 1}};
    problem.stock = {{100, 5, std::nullopt}, {60, 2, 2}};
    CutList list = list_of(problem);
    REQUIRE(list.scale == 10);
    REQUIRE(list.length == std::vector<int>{5, 3, 2});
    return list;
}

CutBars bar(int stock, Counts counts, int times = 1) { return {{stock, std::move(counts)}, times}; }

} // namespace

TEST_CASE("a plan makes every piece as often as asked") {
    const CutList list = small();
    CHECK(cutting::is_plan(list, {bar(0, {2, 0, 0}), bar(0, {0, 3, 0}), bar(1, {0, 0, 1})}));
    CHECK(cutting::is_plan(list, {bar(0, {1, 1, 1}), bar(0, {1, 1, 0}), bar(1, {0, 1, 0})}));
    CHECK(!cutting::is_plan(list, {bar(0, {2, 0, 0}), bar(0, {0, 3, 0})}));    // no 20
    CHECK(!cutting::is_plan(list, {bar(0, {1, 0, 2}, 2), bar(0, {0, 3, 0})})); // four 20
    CHECK(
        !cutting::is_plan(list, {bar(0, {1, 2, 0}), bar(0, {1, 1, 1}), bar(1, {0, 0, 1})})); // 110
    CHECK(!cutting::is_plan(list, {}));
    // Counts of another list, and a piece taken back.
    CHECK(!cutting::is_plan(list, {bar(0, {2, 0}), bar(0, {0, 3}), bar(1, {0, 0})}));
    CHECK(!cutting::is_plan(list, {bar(0, {2, 0, -1}), bar(0, {0, 3, 0}), bar(1, {0, 0, 2})}));
}

TEST_CASE("a plan uses no bar that is not there") {
    const CutList list = small();
    const Bars twos{bar(1, {0, 2, 0}), bar(1, {0, 1, 1})};
    Bars plan = twos;
    plan.push_back(bar(0, {2, 0, 0}));
    CHECK(cutting::is_plan(list, plan));
    // A third of 60.
    CHECK(!cutting::is_plan(list, {bar(1, {1, 0, 0}, 2), bar(1, {0, 2, 0}), bar(0, {0, 1, 1})}));
    CHECK(!cutting::is_plan(list, {bar(2, {2, 0, 0}), bar(1, {0, 2, 0}), bar(1, {0, 1, 1})}));
    CHECK(!cutting::is_plan(list, {bar(-1, {2, 0, 0}), bar(1, {0, 2, 0}), bar(1, {0, 1, 1})}));
    CHECK(!cutting::is_plan(list, {bar(0, {2, 0, 0}, 0), bar(1, {0, 2, 0}), bar(1, {0, 1, 1})}));
}

TEST_CASE("an end too short to hold is no plan, none at all is") {
    CutProblem problem;
    problem.pieces = {{46, 4}};
    problem.stock = {{100, 1, std::nullopt}};
    problem.least_end = 10;
    CutList list = list_of(problem);
    CHECK(list.scale == 2);
    CHECK(!cutting::is_plan(list, {bar(0, {2}, 2)})); // 8 left
    CHECK(cutting::is_plan(list, {bar(0, {1}, 4)}));
    problem.pieces[0].length = 50;
    list = list_of(problem);
    CHECK(cutting::is_plan(list, {bar(0, {2}, 2)})); // nothing left
}

TEST_CASE("costs and fills add up") {
    const CutList list = small();
    CHECK(cutting::fill_of(list, {1, 1, 1}) == 10);
    CHECK(cutting::cost_of(list, {bar(0, {1, 0, 0}, 3), bar(1, {0, 1, 0}, 2)}) == 19);
    CHECK(list.longest_fill() == 10);
    CHECK(list.whole_stock() == std::vector<int>{cutting::k_no_limit, 2});
    CHECK(!list.stock[0].limited());
    CHECK(list.stock[1].limited());
}

TEST_CASE("what is made too often is taken out, bars alike are put together") {
    const CutList list = small();
    // Four of 50, four of 30 and three of 20: two, one and two too many.
    const Bars plan = cutting::trimmed(
        list, {bar(0, {2, 0, 0}, 2), bar(0, {0, 2, 1}), bar(0, {0, 2, 1}), bar(1, {0, 0, 1})});
    CHECK(cutting::is_plan(list, plan));
    CHECK(cutting::cost_of(list, plan) <= 22);
    // The same bar given twice is one entry with two bars.
    CutProblem problem;
    problem.pieces = {{50, 4}};
    problem.stock = {{100, 1, std::nullopt}};
    const Bars same = cutting::trimmed(list_of(problem), {bar(0, {2}), bar(0, {2})});
    REQUIRE(same.size() == 1);
    CHECK(same[0].times == 2);
    // A bar of nothing but what is too many is no bar.
    const Bars fewer = cutting::trimmed(list_of(problem), {bar(0, {2}, 3)});
    CHECK(cutting::is_plan(list_of(problem), fewer));
    CHECK(cutting::cost_of(list_of(problem), fewer) == 2);
}
