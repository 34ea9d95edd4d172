// What is left over, moved together: stock_leftover.cpp.

#include "plan/stock_leftover.h"

#include <doctest/doctest.h>

#include <random>

#include "cutting/answer.h"
#include "cutting/problem.h"

using namespace treadle;
using cutting::Bars;
using cutting::CutList;
using cutting::CutProblem;

namespace {

CutList list_of(const CutProblem& problem) { return cutting::cut_list(problem).value(); }

plan::LeftoverRule rule_of(const CutProblem& problem, std::int64_t keep) {
    plan::LeftoverRule rule;
    for (const cutting::CutStock& stock : problem.stock)
        rule.bar.push_back(stock.length);
    rule.keep = keep;
    return rule;
}

int count_of(const Bars& bars) {
    int count = 0;
    for (const cutting::CutBars& bar : bars)
        count += bar.times;
    return count;
}

} // namespace

TEST_CASE("two ends that are scrap become one that is kept") {
    const CutProblem problem{{{41, 2}, {30, 2}}, {{100, 1, std::nullopt}}, 0, 0};
    const CutList list = list_of(problem);
    const Bars bars = {{{0, {1, 1}}, 2}}; // 29 left of each
    const auto rule = rule_of(problem, 35);
    CHECK(plan::leftover_of(list, rule, bars).scrap == 58);
    const Bars tidy = plan::tidied(list, rule, bars);
    CHECK(cutting::is_plan(list, tidy));
    const plan::Leftover left = plan::leftover_of(list, rule, tidy); // 18 and 40
    CHECK(left.scrap == 18);
    CHECK(left.kept == 1);
    CHECK(left.bulk == 18 * 18 + 40 * 40);
    CHECK(plan::end_of(list, rule, {0, {0, 2}}) == 40);
}

TEST_CASE("without a length to keep from, what is left is moved into few long ends") {
    const CutProblem problem{{{20, 6}}, {{100, 1, std::nullopt}}, 0, 0};
    const CutList list = list_of(problem);
    const Bars tidy = plan::tidied(list, rule_of(problem, 0), {{{0, {3}}, 2}});
    CHECK(count_of(tidy) == 2);
    CHECK(plan::leftover_of(list, rule_of(problem, 0), tidy).bulk == 80 * 80); // 5 and 1
}

TEST_CASE("the left-over of the rack that fits best is used") {
    const CutProblem problem{{{45, 1}}, {{100, 1, std::nullopt}, {50, 0, 1}, {46, 0, 1}}, 0, 0};
    const Bars tidy = plan::tidied(list_of(problem), rule_of(problem, 40), {{{1, {1}}, 1}});
    REQUIRE(tidy.size() == 1);
    CHECK(tidy[0].pattern.stock == 2);
}

TEST_CASE("an end too short to hold is never made") {
    const CutProblem problem{{{20, 6}}, {{109, 1, std::nullopt}}, 0, 15};
    const CutList list = list_of(problem);
    const Bars tidy = plan::tidied(list, rule_of(problem, 0), {{{0, {3}}, 2}});
    CHECK(cutting::is_plan(list, tidy)); // 5 would leave 9
    CHECK(plan::leftover_of(list, rule_of(problem, 0), tidy).bulk == 29 * 29 + 69 * 69);
}

TEST_CASE("never more bars, never more cost, never worse left") {
    std::mt19937 random(5);
    int improved = 0;
    for (int round = 0; round < 80; ++round) {
        CAPTURE(round);
        CutProblem problem;
        for (int i = 0; i < 5; ++i)
            problem.pieces.push_back(
                {10 + static_cast<int>(random() % 60), 1 + static_cast<int>(random() % 6)});
        problem.stock = {{120, 120, std::nullopt}, {90, 90, 3}, {70, 0, 2}, {75, 0, 1}};
        problem.kerf = static_cast<int>(random() % 3);
        problem.least_end = static_cast<int>(random() % 2) * 6;
        const CutList list = list_of(problem);
        const auto rule = rule_of(problem, static_cast<int>(random() % 2) * 25);
        const Bars bars = cutting::solve(list, 50'000'000).bars;
        REQUIRE(cutting::is_plan(list, bars));
        const Bars tidy = plan::tidied(list, rule, bars);
        CHECK(cutting::is_plan(list, tidy));
        CHECK(count_of(tidy) <= count_of(bars));
        CHECK(cutting::cost_of(list, tidy) <= cutting::cost_of(list, bars));
        const plan::Leftover before = plan::leftover_of(list, rule, bars);
        const plan::Leftover after = plan::leftover_of(list, rule, tidy);
        CHECK_FALSE(plan::better(before, after));
        CHECK(after.scrap <= before.scrap);
        improved += plan::better(after, before) ? 1 : 0;
        const Bars again = plan::tidied(list, rule, tidy);
        CHECK_FALSE(plan::better(plan::leftover_of(list, rule, again), after));
    }
    CHECK(improved > 10);
}
