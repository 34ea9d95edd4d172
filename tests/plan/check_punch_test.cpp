#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

namespace {
const job::Part k_half_plate = plate(inches(0.5), inches(8.0), inches(10.0));
job::Punch centre_hole(Length size) { return one_hole(size, inches(5.0), inches(4.0)); }
} // namespace

TEST_CASE("a hole that the strongest A36 needs 50 ton for fits 50 ton, a little more does not") {
    // F = pi d t S, S = 0.80 x 80 ksi = 64 ksi, t = 1/2 in: 50 ton = 100 kip at
    // d = 100 / (pi x 0.5 x 64) = 0.994718 in (formula of the punching chapter of any press text).
    Bench bench;
    bench.shop.machine.stations[0].holders = {{"holder", inches(3.0), false}};
    CHECK(outcome_of(bench.plan(k_half_plate, centre_hole(inches(0.9947))), Rule::force) ==
          Outcome::fits);
    const auto over = bench.plan(k_half_plate, centre_hole(inches(0.9948)));
    CHECK(outcome_of(over, Rule::force) == Outcome::fits_up_to);
    CHECK(over.outcome == Outcome::fits_up_to);
}

TEST_CASE("up to the grade's weakest a certificate can still make it fit, beyond it cannot") {
    // At the 58 ksi minimum S = 46.4 ksi: 100 / (pi x 0.5 x 46.4) = 1.372025 in.
    Bench bench;
    bench.shop.machine.stations[0].holders = {{"holder", inches(3.0), false}};
    const auto just = bench.plan(k_half_plate, centre_hole(inches(1.3720)));
    CHECK(just.outcome == Outcome::fits_up_to);
    CHECK(bench.plan(k_half_plate, centre_hole(inches(1.3721))).outcome == Outcome::does_not_fit);
    // The strength it fits up to: 50 ton over pi d t, divided by the shear ratio.
    const double limit_ksi = 100.0 / (3.14159265358979 * 1.3720 * 0.5) / 0.80;
    CHECK(quantity::to_ksi(plan::Check(*find(just, Rule::force)).limit) ==
          doctest::Approx(limit_ksi).epsilon(1e-9));
}

TEST_CASE("a certificate read below the limit turns a conditional fit into a fit") {
    Bench bench;
    bench.shop.machine.stations[0].holders = {{"holder", inches(3.0), false}};
    job::Part part = k_half_plate;
    CHECK(bench.plan(part, centre_hole(inches(1.125))).outcome == Outcome::fits_up_to);
    part.certified_tensile = ksi(66.0);
    CHECK(bench.plan(part, centre_hole(inches(1.125))).outcome == Outcome::fits);
    part.certified_tensile = ksi(72.0);
    CHECK(bench.plan(part, centre_hole(inches(1.125))).outcome == Outcome::does_not_fit);
    part.certified_tensile = ksi(57.0); // under the grade: something is wrong with the paper
    CHECK(bench.plan(part, centre_hole(inches(0.5625))).outcome == Outcome::cannot_be_said);
}

TEST_CASE("a hole as wide as the metal is thick fits, a smaller one does not") {
    Bench bench;
    CHECK(outcome_of(bench.plan(k_half_plate, centre_hole(inches(0.5))), Rule::hole_thickness) ==
          Outcome::fits);
    const auto small = bench.plan(k_half_plate, centre_hole(inches(0.499)));
    CHECK(outcome_of(small, Rule::hole_thickness) == Outcome::does_not_fit);
    CHECK(small.outcome == Outcome::does_not_fit);
}

TEST_CASE("a small hole in strong metal is warned of before it is refused") {
    Bench bench; // 4 S t / sc = 4 x 64 x 0.5 / 180 = 0.711 in
    CHECK(warns(bench.plan(k_half_plate, centre_hole(inches(0.70))), Rule::punch_stress));
    CHECK_FALSE(warns(bench.plan(k_half_plate, centre_hole(inches(0.72))), Rule::punch_stress));
}

TEST_CASE("the smallest holder that takes the punch is chosen, and none is a refusal") {
    Bench bench;
    job::Part thin = plate(inches(0.125), inches(8.0), inches(10.0));
    CHECK(bench.plan(thin, centre_hole(inches(1.0))).tools.holder == 0);
    CHECK(bench.plan(thin, centre_hole(inches(1.0626))).tools.holder == 1);
    CHECK(outcome_of(bench.plan(thin, centre_hole(inches(2.5))), Rule::holder) == Outcome::fits);
    CHECK(outcome_of(bench.plan(thin, centre_hole(inches(2.51))), Rule::holder) ==
          Outcome::does_not_fit);
}

TEST_CASE("a shaped punch only goes into a keyed holder") {
    Bench bench;
    job::Part thin = plate(inches(0.125), inches(8.0), inches(10.0));
    job::Punch square = centre_hole(inches(0.7));
    square.hole.shape = geometry::HoleShape::square; // 0.990 across corners: keyed 1 in holder
    CHECK(bench.plan(thin, square).outcome == Outcome::fits);
    square.hole.size = inches(0.75); // 1.061 across corners: only the holder without a key
    const auto turned = bench.plan(thin, square);
    CHECK(outcome_of(turned, Rule::alignment) == Outcome::does_not_fit);
}

TEST_CASE("the throat must reach a hole from some edge, with a quarter inch to spare") {
    Bench bench;
    job::Part wide = plate(inches(0.25), inches(40.0), inches(60.0));
    CHECK(outcome_of(bench.plan(wide, one_hole(inches(0.8125), inches(30.0), inches(7.75))),
                     Rule::throat) == Outcome::fits);
    CHECK(outcome_of(bench.plan(wide, one_hole(inches(0.8125), inches(30.0), inches(7.76))),
                     Rule::throat) == Outcome::does_not_fit);
    // From the far edge or an end it is reachable again.
    CHECK(outcome_of(bench.plan(wide, one_hole(inches(0.8125), inches(30.0), inches(33.0))),
                     Rule::throat) == Outcome::fits);
    CHECK(outcome_of(bench.plan(wide, one_hole(inches(0.8125), inches(5.0), inches(20.0))),
                     Rule::throat) == Outcome::fits);
}

TEST_CASE("stroke: metal, stripper gap and die entry must fit in it") {
    Bench bench;
    bench.shop.machine.stations[0].stroke = inches(0.875);
    CHECK(outcome_of(bench.plan(k_half_plate, centre_hole(inches(0.8125))), Rule::stroke) ==
          Outcome::fits);
    bench.shop.machine.stations[0].stroke = inches(0.874);
    CHECK(outcome_of(bench.plan(k_half_plate, centre_hole(inches(0.8125))), Rule::stroke) ==
          Outcome::does_not_fit);
}

TEST_CASE("each missing datum of the station is named and never a fit") {
    const auto without = [](auto clear, const char* path) {
        Bench bench;
        clear(bench.shop.machine.stations[0]);
        const auto planned = bench.plan(k_half_plate, centre_hole(inches(0.5625)));
        CHECK(planned.outcome == Outcome::cannot_be_said);
        bool named = false;
        for (const auto& check : planned.checks)
            named = named || check.missing == path;
        CHECK_MESSAGE(named, path);
    };
    using equipment::Station;
    without([](Station& s) { s.force.reset(); }, "machine.stations[0].force");
    without([](Station& s) { s.throat.reset(); }, "machine.stations[0].throat");
    without([](Station& s) { s.stroke.reset(); }, "machine.stations[0].stroke");
    without([](Station& s) { s.holders.clear(); }, "machine.stations[0].holders");
}

TEST_CASE("an angle's standing leg needs daylight and room for the tool body") {
    Bench bench;
    job::Part angle = plate(inches(0.25), inches(3.0), inches(12.0));
    angle.section.shape = section::Shape::angle;
    angle.section.height = inches(3.0);
    job::Punch hole = one_hole(inches(0.8125), inches(6.0), inches(1.75));
    hole.face = section::Face::leg_a;
    CHECK(bench.plan(angle, hole).outcome == Outcome::fits);
    hole.at.y = inches(1.0); // leg 1/4 and clearance 3/4
    CHECK(outcome_of(bench.plan(angle, hole), Rule::flange_clearance) == Outcome::fits);
    hole.at.y = inches(0.99);
    CHECK(outcome_of(bench.plan(angle, hole), Rule::flange_clearance) == Outcome::does_not_fit);
    hole.at.y = inches(1.75);
    bench.shop.machine.stations[0].daylight = inches(2.9);
    CHECK(outcome_of(bench.plan(angle, hole), Rule::daylight) == Outcome::does_not_fit);
    bench.shop.machine.stations[0].flange_clearance.reset();
    CHECK(outcome_of(bench.plan(angle, hole), Rule::flange_clearance) == Outcome::cannot_be_said);
}

TEST_CASE("tools: punch by size, die by clearance, and what is missing goes on the list") {
    Bench bench;
    job::Part part = plate(inches(0.375), inches(8.0), inches(10.0));
    const auto have = bench.plan(part, centre_hole(inches(0.8125)));
    CHECK(have.tools.punch == 0);
    CHECK(have.tools.die == 0); // 27/32: 1/32 in total at 3/8 in (common practice, no source)
    CHECK(have.needs.empty());
    const auto lack = bench.plan(part, centre_hole(inches(0.6875)));
    CHECK(lack.outcome == Outcome::fits); // the machine does it; the crib lacks the tool
    REQUIRE(lack.needs.size() == 2);
    CHECK(warns(lack, Rule::tool_in_crib));
    CHECK(quantity::to_inches(lack.tools.die_size.size) == doctest::Approx(0.6875 + 1.0 / 32.0));
}

TEST_CASE("a die of three quarters of the usual clearance is still taken, to the very fraction") {
    Bench bench; // 15/16 in 1/2 plate: 1/16 in total is usual, 63/64 leaves 3/64
    bench.shop.crib.punches = {{round_hole(inches(0.9375)), 1}};
    bench.shop.crib.dies = {{round_hole(inches(63.0 / 64.0)), 1}};
    CHECK(bench.plan(k_half_plate, centre_hole(inches(0.9375))).tools.die == 0);
    bench.shop.crib.dies = {{round_hole(inches(0.98)), 1}};
    CHECK(bench.plan(k_half_plate, centre_hole(inches(0.9375))).tools.die == plan::k_none);
}

TEST_CASE("tube is not punched, and a machine without a punch station says so") {
    Bench bench;
    job::Part tube = plate(inches(0.125), inches(2.0), inches(10.0));
    tube.section.shape = section::Shape::square_tube;
    tube.section.height = inches(2.0);
    CHECK(bench.plan(tube, centre_hole(inches(0.5))).outcome == Outcome::does_not_fit);
    bench.shop.machine.stations.erase(bench.shop.machine.stations.begin());
    CHECK(outcome_of(bench.plan(k_half_plate, centre_hole(inches(0.5625))), Rule::no_station) ==
          Outcome::does_not_fit);
}
