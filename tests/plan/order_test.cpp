// The order of work of whole jobs: order.cpp, and part_work.cpp for the stages of a part.

#include "plan/words.h"

#include <map>
#include <random>

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;

namespace {

job::Part bracket(const std::string& id, Length hole) {
    job::Part part = plate(inches(0.25), inches(4.0), Length{});
    part.id = part.mark = id;
    part.count = 3;
    part.legs = {inches(5.0), inches(5.0)};
    job::Bend bend;
    bend.angle = degrees(90.0);
    part.operations = {bend, one_hole(hole, inches(2.0), inches(2.0)), job::Cut{}};
    return part;
}

plan::Plan plan_of(const std::vector<job::Part>& parts, Bench bench = {}) {
    for (const job::Part& part : parts)
        bench.job.parts.push_back(std::make_shared<const job::Part>(part));
    return plan::make_plan(bench.job, bench.shop, bench.catalog);
}

int phase(const job::Operation& operation) {
    return std::holds_alternative<job::Cut>(operation)     ? 0
           : std::holds_alternative<job::Notch>(operation) ? 1
           : std::holds_alternative<job::Punch>(operation) ? 2
                                                           : 3;
}

/// Every operation once, and inside a part never a later kind of work before an earlier one.
void check_order(const plan::Plan& plan) {
    std::map<std::pair<int, int>, int> seen;
    std::map<int, int> last;
    for (const auto& set_up : plan.order)
        for (const auto& step : set_up.steps) {
            ++seen[{step.part, step.operation}];
            const auto& part = *plan.parts[static_cast<std::size_t>(step.part)]->part;
            const int now = phase(part.operations[static_cast<std::size_t>(step.operation)]);
            CHECK(now >= last[step.part]);
            last[step.part] = now;
        }
    std::size_t expected = 0;
    for (const auto& part : plan.parts)
        if (part->outcome <= plan::Outcome::fits_up_to)
            expected += part->operations.size();
    CHECK(seen.size() == expected);
    for (const auto& [key, times] : seen)
        CHECK(times == 1);
}

} // namespace

TEST_CASE("parts that share tools share set-ups: two brackets need one of each") {
    const auto plan = plan_of({bracket("A", inches(0.8125)), bracket("B", inches(0.8125))});
    REQUIRE(plan.outcome == plan::Outcome::fits);
    CHECK(plan.order.size() == 3); // shear, punch, bend
    check_order(plan);
    CHECK(plan.order[0].strokes == 6);
    CHECK(plan.pieces == 6);
}

TEST_CASE("another hole costs one set-up more") {
    CHECK(plan_of({bracket("A", inches(0.8125)), bracket("B", inches(0.6875))}).order.size() == 4);
}

TEST_CASE("a part that does not fit is not put into the order") {
    job::Part bad = bracket("B", inches(0.8125));
    bad.section.thickness = inches(3.0);
    const auto plan = plan_of({bracket("A", inches(0.8125)), bad});
    REQUIRE(plan.parts[1]->outcome == plan::Outcome::does_not_fit);
    for (const auto& set_up : plan.order)
        for (const auto& step : set_up.steps)
            CHECK(step.part == 0);
    check_order(plan);
}

namespace {

/// Bends over a narrow and a wide V, one after the other.
job::Part two_bends(const std::string& id, Length first, Length second) {
    job::Part part = plate(inches(0.25), inches(4.0), Length{});
    part.id = part.mark = id;
    part.legs.assign(3, inches(9.0));
    for (const Length radius : {first, second}) {
        job::Bend bend;
        bend.angle = degrees(20.0);
        bend.radius = radius;
        part.operations.emplace_back(bend);
    }
    return part;
}

} // namespace

TEST_CASE("every group of work once is proven fewest") {
    const auto plan = plan_of({bracket("A", inches(0.8125)), bracket("B", inches(0.6875))});
    CHECK(plan.order_proven);
    CHECK(plan.least_set_ups == 4);
    CHECK(plan::order_words(plan) == "4 set-ups, proven fewest");
}

TEST_CASE("parts whose bends cross come back to one V, and no order avoids it") {
    Bench bench;
    bench.shop.crib.vees = {{inches(2.5), inches(10.0), 1}, {inches(3.25), inches(10.0), 1}};
    const auto plan = plan_of(
        {two_bends("A", inches(0.4), inches(0.52)), two_bends("B", inches(0.52), inches(0.4))},
        bench);
    REQUIRE(plan.outcome == plan::Outcome::fits);
    CHECK(plan.order.size() == 3);
    CHECK(plan.order_proven);
    check_order(plan);
}

TEST_CASE("an order that is not proven says how many are needed at least") {
    plan::Plan plan;
    plan.order.resize(24);
    plan.least_set_ups = 22;
    CHECK(plan::order_words(plan) == "24 set-ups, at least 22 needed");
}

TEST_CASE("random jobs keep the precedence and never need more set-ups than operations") {
    std::mt19937 random(20261125);
    for (int round = 0; round < 50; ++round) {
        std::vector<job::Part> parts;
        for (int i = 0; i < 8; ++i) {
            job::Part part = bracket("P" + std::to_string(i),
                                     inches(0.5625 + 0.125 * static_cast<double>(random() % 3)));
            if (random() % 2 == 0)
                part.operations.push_back(one_hole(inches(0.8125), inches(3.0), inches(1.0)));
            if (random() % 3 == 0) {
                job::Notch notch;
                notch.along = notch.depth = inches(0.5);
                part.operations.push_back(notch);
            }
            parts.push_back(part);
        }
        const auto plan = plan_of(parts);
        check_order(plan);
        std::size_t steps = 0;
        for (const auto& set_up : plan.order)
            steps += set_up.steps.size();
        CHECK(plan.order.size() <= steps);
    }
}
