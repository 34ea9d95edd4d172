#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

namespace {
/// 1/4 in A36, one bend. ASTM A6 appendix X4: least inside radius 1.5 t across the grain.
job::Part
bracket(double width, double leg_a, double leg_b, double radius = 0.0, double thickness = 0.25) {
    job::Part part = plate(inches(thickness), inches(width), Length{});
    part.section.shape = section::Shape::flat;
    part.legs = {inches(leg_a), inches(leg_b)};
    job::Bend bend;
    bend.angle = degrees(90.0);
    bend.radius = inches(radius);
    part.operations = {bend};
    return part;
}
const plan::OperationPlan& bend_of(const plan::PartPlan& plan) { return plan.operations.at(0); }
} // namespace

TEST_CASE("the radius comes from the V, and the grade's least radius must be met") {
    // V 2 in x 0.16 = 0.32 in is under 1.5 t = 0.375 in; V 3 in x 0.16 = 0.48 in is over.
    Bench bench;
    const auto planned = bench.plan(bracket(4.0, 4.0, 4.0));
    CHECK(bend_of(planned).outcome == Outcome::fits);
    CHECK(bend_of(planned).tools.vee == 2);
    CHECK(quantity::to_inches(bend_of(planned).bend.radius) == doctest::Approx(0.48));
    bench.shop.crib.vees.pop_back();
    const auto tight = bench.plan(bracket(4.0, 4.0, 4.0));
    CHECK(outcome_of(bend_of(tight), Rule::least_radius) == Outcome::does_not_fit);
}

TEST_CASE("grain along the bend asks for half as much again, unknown grain counts as along") {
    Bench bench; // 1.5 x 1.5 x 1/4 = 0.5625 in, over the 0.48 in that V 3 in makes
    job::Part part = bracket(4.0, 4.0, 4.0);
    for (const auto grain : {material::Grain::along, material::Grain::unknown}) {
        part.grain = grain;
        CHECK(outcome_of(bend_of(bench.plan(part)), Rule::least_radius) == Outcome::does_not_fit);
    }
}

TEST_CASE("a grade without a least-radius row cannot be said, one that must not bend is refused") {
    Bench bench;
    Grade grade = a36();
    grade.bend_group.clear();
    bench.catalog.grades.rows = {grade};
    CHECK(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))).outcome == Outcome::cannot_be_said);
    grade = a36();
    grade.refusal = {false, true, "Not to be bent."};
    bench.catalog.grades.rows = {grade};
    CHECK(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))).outcome == Outcome::does_not_fit);
}

TEST_CASE("a leg shorter than three quarters of the V falls into it") {
    Bench bench; // V 3 in: 0.75 V = 2.25 in
    CHECK(outcome_of(bend_of(bench.plan(bracket(4.0, 4.0, 2.25))), Rule::least_leg) ==
          Outcome::fits);
    CHECK(outcome_of(bend_of(bench.plan(bracket(4.0, 4.0, 2.24))), Rule::least_leg) ==
          Outcome::does_not_fit);
}

TEST_CASE("the bend may not be longer than brake, V block and punch") {
    Bench bench;
    CHECK(outcome_of(bend_of(bench.plan(bracket(10.0, 4.0, 4.0))), Rule::brake_length) ==
          Outcome::fits);
    CHECK(bend_of(bench.plan(bracket(10.1, 4.0, 4.0))).outcome == Outcome::does_not_fit);
    bench.shop.machine.attachments[0].length.reset();
    CHECK(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))).outcome == Outcome::cannot_be_said);
}

TEST_CASE("bend force against the smaller of brake and station") {
    // k = max(1.33, 1 + 4 t / V) = 1.3333 at V 3 in; F = k 80 ksi x 10 x 0.25^2 / 3 = 22.22 kip.
    Bench bench;
    bench.shop.machine.attachments[0].force = us_tons(11.12);
    CHECK(outcome_of(bend_of(bench.plan(bracket(10.0, 4.0, 4.0))), Rule::force) == Outcome::fits);
    bench.shop.machine.attachments[0].force = us_tons(11.10);
    CHECK(outcome_of(bend_of(bench.plan(bracket(10.0, 4.0, 4.0))), Rule::force) ==
          Outcome::fits_up_to);
    bench.shop.machine.attachments[0].force = us_tons(8.0); // 58/80 of it is 8.06
    CHECK(outcome_of(bend_of(bench.plan(bracket(10.0, 4.0, 4.0))), Rule::force) ==
          Outcome::does_not_fit);
}

TEST_CASE("a V under six thicknesses is refused, one over fourteen is warned of") {
    Bench bench; // 6 x 1/4 = 1.5 in
    bench.shop.crib.vees = {{inches(1.49), inches(10.0), 1}};
    const auto narrow = bench.plan(bracket(4.0, 4.0, 4.0));
    CHECK(outcome_of(bend_of(narrow), Rule::opening) == Outcome::does_not_fit);
    REQUIRE(bend_of(narrow).needs.size() == 1);
    CHECK(bend_of(narrow).needs[0].kind == plan::Need::Kind::vee_block);
    bench.shop.crib.vees = {{inches(3.5), inches(10.0), 1}};
    CHECK_FALSE(warns(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))), Rule::opening));
    bench.shop.crib.vees = {{inches(3.6), inches(10.0), 1}};
    CHECK(warns(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))), Rule::opening));
}

TEST_CASE("a wanted radius chooses the V, and another radius is said") {
    Bench bench;
    const auto planned = bench.plan(bracket(4.0, 4.0, 4.0, 0.5));
    CHECK(bend_of(planned).tools.vee == 2);
    CHECK_FALSE(warns(bend_of(planned), Rule::wanted_radius)); // 0.48 is within a tenth
    CHECK(warns(bend_of(bench.plan(bracket(4.0, 4.0, 4.0, 0.75))), Rule::wanted_radius));
}

TEST_CASE("of several Vs that reach the wanted radius the usual opening is taken") {
    // A 1/2 in nose makes 1/2 in in every V up to 3.125 in; A36 at 80 ksi: usual V 10 t = 2.5 in.
    Bench bench;
    bench.shop.crib.brake_punches = {{inches(0.5), inches(10.0), 1}};
    bench.shop.crib.vees = {{inches(3.0), inches(10.0), 1}, {inches(2.5), inches(10.0), 1}};
    CHECK(bend_of(bench.plan(bracket(4.0, 4.0, 4.0, 0.5))).tools.vee == 1);
}

TEST_CASE("without any V nothing is promised, without a punch it goes on the list") {
    Bench bench;
    bench.shop.crib.brake_punches.clear();
    const auto no_punch = bench.plan(bracket(4.0, 4.0, 4.0));
    CHECK(bend_of(no_punch).outcome == Outcome::fits);
    REQUIRE(bend_of(no_punch).needs.size() == 1);
    CHECK(bend_of(no_punch).needs[0].kind == plan::Need::Kind::brake_punch);
    bench.shop.crib.vees.clear();
    const auto no_vee = bench.plan(bracket(4.0, 4.0, 4.0));
    CHECK(bend_of(no_vee).outcome == Outcome::cannot_be_said);
    CHECK(find(bend_of(no_vee), Rule::opening)->missing == "crib.vees");
    REQUIRE(bend_of(no_vee).needs.size() == 1);
    CHECK(bend_of(no_vee).needs[0].kind == plan::Need::Kind::vee_block);
}

TEST_CASE("stroke of brake or station must cover the punch travel") {
    // Travel to 90 at V 3, r 0.48, t 0.25: V/2 - 0.4142 (r + t) = 1.198 in, and t / 2 more: 1.323.
    Bench bench;
    bench.shop.machine.attachments[0].stroke = inches(1.33);
    CHECK(outcome_of(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))), Rule::stroke) == Outcome::fits);
    bench.shop.machine.attachments[0].stroke = inches(1.32);
    CHECK(outcome_of(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))), Rule::stroke) ==
          Outcome::does_not_fit);
    bench.shop.machine.attachments[0].stroke.reset();
    bench.shop.machine.stations[4].stroke.reset();
    CHECK(outcome_of(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))), Rule::stroke) ==
          Outcome::cannot_be_said);
}

TEST_CASE("thickness over the brake's is refused; angles are not bent in a V") {
    Bench bench;
    bench.shop.machine.attachments[0].largest_thickness = inches(0.25);
    CHECK(outcome_of(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))), Rule::thickness_limit) ==
          Outcome::fits);
    bench.shop.machine.attachments[0].largest_thickness = inches(0.249);
    CHECK(outcome_of(bend_of(bench.plan(bracket(4.0, 4.0, 4.0))), Rule::thickness_limit) ==
          Outcome::does_not_fit);
    job::Part angle = bracket(4.0, 4.0, 4.0);
    angle.section.shape = section::Shape::angle;
    angle.section.height = inches(4.0);
    CHECK(bend_of(bench.plan(angle)).outcome == Outcome::does_not_fit);
}
