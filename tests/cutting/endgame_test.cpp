// The last step of a search against all plans there are: a better one is found just when there is
// one.

#include <doctest/doctest.h>

#include "cutting/all_plans.h"
#include "cutting/endgame.h"

using namespace treadle;
using namespace treadle::test;
using cutting::Candidate;
using cutting::Endgame;
using cutting::Pattern;

namespace {

/// Every fill of every bar that no piece can be added to, with what it loses when a piece is worth
/// its length, and a bar of this cost must hold `per_cost` for each unit of it.
std::vector<Candidate> all_fills(const CutList& list, double per_cost) {
    std::vector<Candidate> out;
    for (std::size_t k = 0; k < list.stock.size(); ++k) {
        Counts counts(list.size(), 0);
        const auto walk = [&](const auto& self, std::size_t i, int room) -> void {
            if (i == list.size()) {
                for (std::size_t p = 0; p < list.size(); ++p)
                    if (counts[p] < list.demand[p] && list.length[p] <= room)
                        return;
                const double worth = list.stock[k].closed - room;
                const double whole = per_cost * static_cast<double>(list.stock[k].cost);
                if (worth > 0.0)
                    out.push_back({{static_cast<int>(k), counts}, whole - worth});
                return;
            }
            for (int count = 0; count <= list.demand[i] && count * list.length[i] <= room;
                 ++count) {
                counts[i] = count;
                self(self, i + 1, room - count * list.length[i]);
            }
            counts[i] = 0;
        };
        walk(walk, 0, list.stock[k].closed);
    }
    return out;
}

Endgame endgame_of(const CutList& list, std::int64_t most_cost) {
    double per_cost = 0.0;
    for (const cutting::StockKind& kind : list.stock)
        per_cost = std::max(per_cost, kind.closed / static_cast<double>(kind.cost));
    double budget = per_cost * static_cast<double>(most_cost) + 0.01;
    for (std::size_t i = 0; i < list.size(); ++i)
        budget -= static_cast<double>(list.length[i]) * list.demand[i];
    return {list,
            all_fills(list, per_cost),
            std::vector<float>(list.length.begin(), list.length.end()),
            budget,
            most_cost};
}

CutProblem problem_of(std::mt19937& random, bool several) {
    CutProblem problem = few_pieces(random, false, false);
    if (several) {
        problem.stock[0].cost = problem.stock[0].length;
        problem.stock.push_back({70, 75, 2});
        problem.stock.push_back({50, 48, std::nullopt});
    }
    return problem;
}

} // namespace

TEST_CASE("a plan of the least cost is found, and none of less") {
    std::mt19937 random(41);
    int found = 0;
    int none = 0;
    for (int n = 0; n < 200; ++n) {
        CAPTURE(n);
        const CutList list = list_of(problem_of(random, n % 2 == 1));
        const auto least = AllPlans(list).least_cost();
        REQUIRE(least.has_value());
        Endgame same = endgame_of(list, *least);
        same.run(k_second);
        REQUIRE(same.state() == Endgame::State::found);
        const Bars plan = cutting::trimmed(list, same.plan());
        CHECK(cutting::is_plan(list, plan));
        CHECK(cutting::cost_of(list, plan) <= *least);
        ++found;
        Endgame less = endgame_of(list, *least - list.unit);
        less.run(k_second);
        CHECK(less.state() == Endgame::State::none);
        ++none;
    }
    CHECK(found == 200);
    CHECK(none == 200);
}

TEST_CASE("in slices or at once: the same end") {
    const CutList list = list_of(triplets(3, 7));
    Endgame whole = endgame_of(list, 7);
    whole.run(k_second);
    Endgame slices = endgame_of(list, 7);
    for (int n = 0; n < 1'000'000 && slices.state() == Endgame::State::looking; ++n)
        slices.run(1000);
    REQUIRE(whole.state() == Endgame::State::found);
    REQUIRE(slices.state() == Endgame::State::found);
    REQUIRE(slices.plan().size() == whole.plan().size());
    for (std::size_t b = 0; b < whole.plan().size(); ++b)
        CHECK(slices.plan()[b].pattern.counts == whole.plan()[b].pattern.counts);
    CHECK(slices.work() == whole.work());
}

TEST_CASE("no fills, no plan") {
    const CutList list = list_of(triplets(1, 4));
    Endgame empty(list, {}, std::vector<float>(list.size(), 1.0F), 1.0, 3);
    empty.run(k_second);
    CHECK(empty.state() == Endgame::State::none);
}

TEST_CASE("odd pieces of which every bar holds two have no plan") {
    // Three of 50, two and two in bars of 100, and no bar with one: nothing to lose.
    CutProblem problem;
    problem.pieces = {{50, 3}, {10, 5}};
    problem.stock = {{100, 1, std::nullopt}};
    const CutList list = list_of(problem);
    const std::vector<Candidate> twos{{{0, {2, 0}}, 0.0}, {{0, {0, 5}}, 0.0}};
    Endgame endgame(list, twos, {50.0F, 10.0F}, 1.0, 3);
    endgame.run(k_second);
    CHECK(endgame.state() == Endgame::State::none);
    // May one piece be lost, the second bar holds one too many.
    Endgame with_loss(list, twos, {50.0F, 10.0F}, 50.0, 3);
    with_loss.run(k_second);
    CHECK(with_loss.state() == Endgame::State::found);
}
