#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;

TEST_CASE("an unknown grade leaves every operation unsaid and names the field") {
    Bench bench;
    job::Part part = plate(inches(0.25), inches(8.0), inches(10.0));
    part.grade = "A9999";
    part.operations = {one_hole(inches(0.5625), inches(5.0), inches(4.0))};
    const auto planned = bench.plan(part);
    REQUIRE(planned.problem.has_value());
    CHECK(planned.problem->field == "grade");
    CHECK(planned.outcome == Outcome::cannot_be_said);
    CHECK(planned.operations.at(0).outcome == Outcome::cannot_be_said);
}

TEST_CASE("a grade refused for all work is refused at any size") {
    Bench bench;
    Grade hard;
    hard.id = hard.name = "AR400";
    hard.refusal = {true, true, "Wear plate shatters tools."};
    bench.catalog.grades.rows.push_back(hard);
    job::Part part = plate(inches(0.0625), inches(8.0), inches(10.0));
    part.grade = "AR400";
    CHECK(bench.plan(part, one_hole(inches(0.5625), inches(5.0), inches(4.0))).outcome ==
          Outcome::does_not_fit);
    CHECK(bench.plan(part, job::Cut{}).outcome == Outcome::does_not_fit);
}

TEST_CASE("metal thicker than the grade's last band cannot be said") {
    Bench bench;
    job::Part part = plate(inches(4.5), inches(8.0), inches(10.0));
    CHECK(bench.plan(part, job::Cut{}).outcome == Outcome::cannot_be_said);
}

TEST_CASE("a blank is the sum of its legs less the deductions, rounded up") {
    Bench bench;
    job::Part part = plate(inches(0.25), inches(4.0), Length{});
    part.legs = {inches(4.0), inches(6.0), inches(4.0)};
    job::Bend bend;
    bend.angle = degrees(90.0);
    part.operations = {bend, bend};
    const auto planned = bench.plan(part);
    const double deduction = quantity::to_inches(planned.operations[0].figures.deduction);
    CHECK(quantity::to_inches(planned.blank_exact) == doctest::Approx(14.0 - 2.0 * deduction));
    const double steps = quantity::to_inches(planned.blank_length) * 32.0;
    CHECK(steps == doctest::Approx(std::round(steps)));
    CHECK(planned.blank_length >= planned.blank_exact);
    CHECK(planned.blank_length - planned.blank_exact < inches(1.0 / 32.0));
}

TEST_CASE("mass is that of the blank") {
    // 1/2 x 10 x 12 plate: 60 in3 x 0.2836 lb/in3 = 17.01 lb (7850 kg/m3, ASTM A6: 490 lb/ft3).
    Bench bench;
    const auto planned = bench.plan(plate(inches(0.5), inches(10.0), inches(12.0)));
    CHECK(quantity::to_pounds(planned.mass_each) == doctest::Approx(17.014).epsilon(0.002));
}

TEST_CASE("replanning after one edit gives the plan of a whole new run") {
    Bench bench;
    for (int i = 0; i < 5; ++i) {
        job::Part part = plate(inches(0.25 + 0.0625 * i), inches(8.0), inches(10.0));
        part.id = part.mark = "P" + std::to_string(i);
        part.operations = {job::Cut{}, one_hole(inches(0.8125), inches(5.0), inches(4.0))};
        bench.job.parts.push_back(std::make_shared<const job::Part>(part));
    }
    const auto before = plan::make_plan(bench.job, bench.shop, bench.catalog);
    job::Part changed = *bench.job.parts[2];
    changed.section.thickness = inches(0.75);
    bench.job.parts[2] = std::make_shared<const job::Part>(changed);
    const auto again = plan::replan(before, bench.job, bench.shop, bench.catalog);
    const auto fresh = plan::make_plan(bench.job, bench.shop, bench.catalog);
    CHECK(again.parts[0] == before.parts[0]); // taken over, not planned again
    CHECK(again.parts[2] != before.parts[2]);
    CHECK(again.outcome == fresh.outcome);
    CHECK(again.parts[2]->outcome == fresh.parts[2]->outcome);
    CHECK(again.order.size() == fresh.order.size());
    CHECK(quantity::to_kilograms(again.mass) == quantity::to_kilograms(fresh.mass));
}

// candidates.cpp
TEST_CASE("the better of two stations is taken, and a known one before an unknown one") {
    Bench bench;
    equipment::Station strong = punch_station();
    strong.id = "strong";
    strong.force = us_tons(80.0);
    equipment::Station unknown = punch_station();
    unknown.id = "unknown";
    unknown.force.reset();
    bench.shop.machine.stations.push_back(strong);
    bench.shop.machine.stations.push_back(unknown);
    const auto part = plate(inches(0.5), inches(8.0), inches(10.0));
    const auto planned = bench.plan(part, one_hole(inches(0.8125), inches(5.0), inches(4.0)));
    CHECK(bench.shop.machine.stations[static_cast<std::size_t>(planned.tools.station)].id ==
          "strong");
    CHECK(planned.outcome == Outcome::fits);
}
