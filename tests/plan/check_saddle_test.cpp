#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

namespace {
/// NPS 1-1/4 schedule 40: 1.660 x 0.140 in (ASME B36.10).
job::Part pipe(double wall = 0.140) {
    job::Part part = plate(inches(wall), inches(1.66), inches(40.0));
    part.section.shape = section::Shape::pipe;
    return part;
}
job::Saddle on(double run) {
    job::Saddle saddle;
    saddle.run_diameter = inches(run);
    return saddle;
}
} // namespace

TEST_CASE("a saddle needs the die for its own pipe on its own run") {
    Bench bench;
    CHECK(bench.plan(pipe(), on(1.9)).outcome == Outcome::fits);
    const auto other = bench.plan(pipe(), on(2.375));
    CHECK(other.outcome == Outcome::cannot_be_said);
    REQUIRE(other.needs.size() == 1);
    CHECK(other.needs[0].kind == plan::Need::Kind::saddle_die);
}

TEST_CASE("the wall is held to the die's, stronger metal takes it down") {
    Bench bench; // die: wall 1/4 in at 80 ksi
    CHECK(bench.plan(pipe(0.25), on(1.9)).outcome == Outcome::fits);
    CHECK(bench.plan(pipe(0.26), on(1.9)).outcome == Outcome::does_not_fit);
    bench.shop.machine.attachments[3].base = material::RatingBase{ksi(60.0)};
    CHECK(bench.plan(pipe(0.25), on(1.9)).outcome == Outcome::fits_up_to);
    CHECK(bench.plan(pipe(0.1875), on(1.9)).outcome == Outcome::fits); // 1/4 x 60/80
    bench.shop.machine.attachments[3].base.reset();
    CHECK(bench.plan(pipe(0.14), on(1.9)).outcome == Outcome::cannot_be_said);
}

TEST_CASE("a run thinner than the pipe, or a shape that is no pipe, is refused") {
    Bench bench;
    CHECK(bench.plan(pipe(), on(1.5)).outcome == Outcome::does_not_fit);
    CHECK(bench.plan(plate(inches(0.25), inches(2.0), inches(9.0)), on(1.9)).outcome ==
          Outcome::does_not_fit);
}

TEST_CASE("both ends take twice the strokes of one") {
    Bench bench;
    job::Saddle saddle = on(1.9);
    const int one = bench.plan(pipe(), saddle).strokes;
    saddle.end = job::End::both;
    CHECK(bench.plan(pipe(), saddle).strokes == 2 * one);
}
