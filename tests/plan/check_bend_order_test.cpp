// The order of bends in the plan of a part: with all sizes of the tools, and without.

#include "bend_bench.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

TEST_CASE("a size that is missing is named, and the verdict stays") {
    const job::Part part = bent({3, 1.3, 3}, {true, true});
    const auto without = Bench().plan(part);
    REQUIRE(without.bends);
    CHECK(without.bends->missing == "crib.vees[0].width");
    CHECK(without.bends->steps.empty());
    CHECK(without.bends->blocked.empty());
    for (const plan::OperationPlan& operation : without.operations)
        CHECK(find(operation, Rule::bend_order) == nullptr);

    Bench bench = with_sizes();
    bench.shop.machine.attachments[0].least_gauge.reset();
    const auto no_gauge = bench.plan(part);
    CHECK(no_gauge.bends->missing == "machine.attachments[0].least_gauge");
    CHECK(no_gauge.outcome != Outcome::does_not_fit);
}

TEST_CASE("a deep narrow U does not fit, and its leg is named at the bend") {
    const auto plan = with_sizes().plan(bent({3, 1.3, 3}, {true, true}));
    REQUIRE(plan.bends);
    REQUIRE(plan.bends->blocked.size() == 1);
    const auto& block = plan.bends->blocked[0];
    const auto& operation = plan.operations[static_cast<std::size_t>(block.bend)];
    CHECK(outcome_of(operation, Rule::bend_order) == Outcome::does_not_fit);
    CHECK(find(operation, Rule::bend_order)->said.find("leg 1 meets the punch") !=
          std::string::npos);
    CHECK(plan.outcome == Outcome::does_not_fit);
}

TEST_CASE("a part without bends has no order of bends") {
    job::Part part = plate(inches(0.125), inches(4.0), inches(10.0));
    part.operations = {job::Cut{}};
    CHECK_FALSE(with_sizes().plan(part).bends);
}

TEST_CASE("more bends than are searched leave the verdict") {
    const auto plan =
        with_sizes().plan(bent(std::vector<double>(14, 6.0), std::vector<bool>(13, true)));
    REQUIRE(plan.bends);
    CHECK(plan.bends->too_many);
    CHECK(plan.bends->steps.empty());
    CHECK(plan.outcome != Outcome::does_not_fit);
}

TEST_CASE("the work on a part follows the order of its bends") {
    // Lips that point inwards: both are bent before the sides, whatever their number.
    Bench bench = with_sizes();
    const auto made =
        std::make_shared<const job::Part>(bent({1, 3, 9, 3, 1}, {true, true, true, true}));
    bench.job.parts = {made};
    const auto plan = plan::make_plan(bench.job, bench.shop, bench.catalog);
    const plan::PartPlan& part = *plan.parts.at(0);
    REQUIRE(part.bends);
    REQUIRE(part.bends->steps.size() == 4);
    std::vector<int> wanted;
    for (const plan::BendStep& step : part.bends->steps)
        wanted.push_back(step.bend);
    CHECK(wanted != std::vector<int>{1, 2, 3, 4});
    std::vector<int> done;
    for (const plan::SetUp& set_up : plan.order)
        for (const plan::Step& step : set_up.steps)
            if (step.operation > 0)
                done.push_back(step.operation);
    CHECK(done == wanted);
}

TEST_CASE("stops are set on the blank as it is cut") {
    const auto plan = with_sizes().plan(bent({3, 4}, {true}));
    REQUIRE(plan.bends);
    REQUIRE(plan.bends->steps.size() == 1);
    const plan::BendStep& step = plan.bends->steps[0];
    const Length line = plan.blank.bend_lines[0];
    CHECK(step.stop == (step.start_gauged ? line : plan.blank_length - line));
    CHECK(step.against == -1);
    CHECK_FALSE(step.turned);
}
