#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

namespace {
const job::Part k_plate = plate(inches(0.25), inches(8.0), inches(20.0));
job::Notch corner(double along, double depth) {
    job::Notch notch;
    notch.edge = job::NotchEdge::start_far;
    notch.along = inches(along);
    notch.depth = inches(depth);
    return notch;
}
job::Notch vee(double depth, double included) {
    job::Notch notch;
    notch.shape = geometry::NotchShape::vee;
    notch.edge = job::NotchEdge::far_edge;
    notch.at = inches(10.0);
    notch.depth = inches(depth);
    notch.included = degrees(included);
    return notch;
}
} // namespace

TEST_CASE("a corner notch asks for both its sides at once") {
    // L = 2 + 3 = 5 in, t = 1/4 in, S = 64 ksi: 80 kip = 40 ton (worked by hand).
    Bench bench;
    CHECK(outcome_of(bench.plan(k_plate, corner(2.0, 3.0)), Rule::force) == Outcome::fits);
    bench.shop.machine.attachments[2].force = us_tons(39.9);
    CHECK(outcome_of(bench.plan(k_plate, corner(2.0, 3.0)), Rule::force) == Outcome::fits_up_to);
    bench.shop.machine.attachments[2].force = us_tons(28.9); // 29 ton at the 58 ksi minimum
    CHECK(outcome_of(bench.plan(k_plate, corner(2.0, 3.0)), Rule::force) == Outcome::does_not_fit);
}

TEST_CASE("the station under a notcher counts as well as the notcher") {
    Bench bench;
    bench.shop.machine.stations[4].force = us_tons(30.0);
    CHECK(outcome_of(bench.plan(k_plate, corner(2.0, 3.0)), Rule::force) == Outcome::fits_up_to);
    bench.shop.machine.stations[4].force.reset();
    CHECK(outcome_of(bench.plan(k_plate, corner(2.0, 3.0)), Rule::force) ==
          Outcome::cannot_be_said);
}

TEST_CASE("depth and thickness are held to the tool's") {
    Bench bench;
    bench.shop.machine.stations[4].force = us_tons(400.0);
    bench.shop.machine.attachments[2].force = us_tons(400.0);
    CHECK(bench.plan(k_plate, corner(1.0, 3.0)).outcome == Outcome::fits);
    CHECK(bench.plan(k_plate, corner(1.0, 3.01)).outcome == Outcome::does_not_fit);
    CHECK(bench.plan(plate(inches(0.5), inches(8.0), inches(20.0)), corner(1.0, 1.0)).outcome ==
          Outcome::fits);
    CHECK(bench.plan(plate(inches(0.51), inches(8.0), inches(20.0)), corner(1.0, 1.0)).outcome ==
          Outcome::does_not_fit);
}

TEST_CASE("a notch longer than the tool takes several overlapping bites") {
    Bench bench;
    CHECK(bench.plan(k_plate, corner(2.0, 1.0)).strokes == 1);
    // 1 + ceil((6 - 2) / (2 - 1/8)) = 4
    CHECK(bench.plan(k_plate, corner(6.0, 1.0)).strokes == 4);
}

TEST_CASE("a V is cut by blades of its own angle only") {
    Bench bench;
    CHECK(bench.plan(k_plate, vee(1.0, 90.0)).outcome == Outcome::fits);
    CHECK(outcome_of(bench.plan(k_plate, vee(1.0, 60.0)), Rule::notch_tool) ==
          Outcome::does_not_fit);
    bench.shop.machine.attachments[1].vee_included.reset();
    CHECK(bench.plan(k_plate, vee(1.0, 90.0)).outcome == Outcome::cannot_be_said);
}

TEST_CASE("no notcher and no notcher data are two different answers") {
    Bench bench;
    bench.shop.machine.attachments[2].depth.reset();
    CHECK(bench.plan(k_plate, corner(1.0, 1.0)).outcome == Outcome::cannot_be_said);
    bench.shop.machine.attachments.clear();
    CHECK(outcome_of(bench.plan(k_plate, corner(1.0, 1.0)), Rule::no_station) ==
          Outcome::does_not_fit);
}
