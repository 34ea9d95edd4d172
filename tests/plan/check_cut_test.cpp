#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

namespace {
job::Part flat(double thickness, double width, double length) {
    job::Part part = plate(inches(thickness), inches(width), inches(length));
    part.section.shape = section::Shape::flat;
    return part;
}
Outcome rated(const Bench& bench, const job::Part& part) {
    return outcome_of(bench.plan(part, job::Cut{}), Rule::rated_size);
}
} // namespace

TEST_CASE("published pairs are dominated, never interpolated") {
    // Pairs 1/2 x 8 and 3/8 x 12 at 65 ksi; A36 may reach 80 ksi, so thickness counts 80/65 more:
    // 1/2 x 65/80 = 0.40625 in (linear, the careful rule; worked by hand).
    Bench bench;
    CHECK(rated(bench, flat(0.40625, 8.0, 20.0)) == Outcome::fits);
    CHECK(rated(bench, flat(0.4063, 8.0, 20.0)) == Outcome::fits_up_to);
    CHECK(rated(bench, flat(0.5, 8.0, 20.0)) == Outcome::fits_up_to);
    CHECK(rated(bench, flat(0.5001, 8.0, 20.0)) == Outcome::does_not_fit);
    // Between the pairs: neither covers 7/16 x 10.
    CHECK(rated(bench, flat(0.4375, 10.0, 20.0)) == Outcome::does_not_fit);
    CHECK(rated(bench, flat(0.375, 12.0, 20.0)) == Outcome::fits_up_to);
    CHECK(rated(bench, flat(0.375, 12.01, 20.0)) == Outcome::does_not_fit);
}

TEST_CASE("weaker stock never takes the published thickness up") {
    Bench bench;
    Grade weak = a36();
    weak.bands = {{inches(4.0), ksi(20.0), ksi(30.0), ksi(40.0)}};
    bench.catalog.grades.rows = {weak};
    CHECK(rated(bench, flat(0.5, 8.0, 20.0)) == Outcome::fits);
    CHECK(rated(bench, flat(0.51, 8.0, 20.0)) == Outcome::does_not_fit);
}

TEST_CASE("the blade must be as long as the cut, and a mitre lengthens it") {
    Bench bench;
    bench.shop.machine.stations[1].rated = {{inches(0.5), inches(20.0), {}, {}}};
    CHECK(outcome_of(bench.plan(flat(0.25, 14.0, 20.0), job::Cut{}), Rule::blade) == Outcome::fits);
    CHECK(outcome_of(bench.plan(flat(0.25, 14.01, 20.0), job::Cut{}), Rule::blade) ==
          Outcome::does_not_fit);
    job::Cut mitred;
    mitred.finish_mitre = degrees(30.0); // 1 / cos 30 = 1.1547: 12.13 in still fits 14 in
    CHECK(outcome_of(bench.plan(flat(0.25, 12.12, 20.0), mitred), Rule::blade) == Outcome::fits);
    CHECK(outcome_of(bench.plan(flat(0.25, 12.13, 20.0), mitred), Rule::blade) ==
          Outcome::does_not_fit);
}

TEST_CASE("a mitre steeper than the shear's is refused, an unknown one is not promised") {
    Bench bench;
    job::Cut cut;
    cut.start_mitre = degrees(30.0);
    CHECK(outcome_of(bench.plan(flat(0.25, 4.0, 20.0), cut), Rule::mitre) == Outcome::fits);
    cut.start_mitre = degrees(-31.0);
    CHECK(outcome_of(bench.plan(flat(0.25, 4.0, 20.0), cut), Rule::mitre) == Outcome::does_not_fit);
    bench.shop.machine.stations[1].largest_mitre.reset();
    CHECK(outcome_of(bench.plan(flat(0.25, 4.0, 20.0), cut), Rule::mitre) ==
          Outcome::cannot_be_said);
}

TEST_CASE("a piece shorter than the hold-down grips is refused") {
    Bench bench;
    CHECK(outcome_of(bench.plan(flat(0.25, 2.0, 2.0), job::Cut{}), Rule::least_piece) ==
          Outcome::fits);
    CHECK(outcome_of(bench.plan(flat(0.25, 2.0, 1.99), job::Cut{}), Rule::least_piece) ==
          Outcome::does_not_fit);
    bench.shop.machine.stations[1].least_piece.reset();
    CHECK(outcome_of(bench.plan(flat(0.25, 2.0, 2.0), job::Cut{}), Rule::least_piece) ==
          Outcome::cannot_be_said);
}

TEST_CASE("ratings without a base strength or without sizes cannot be used") {
    Bench bench;
    bench.shop.machine.stations[1].base.reset();
    CHECK(rated(bench, flat(0.25, 4.0, 20.0)) == Outcome::cannot_be_said);
    bench = Bench{};
    bench.shop.machine.stations[1].rated.clear();
    CHECK(rated(bench, flat(0.25, 4.0, 20.0)) == Outcome::cannot_be_said);
}

TEST_CASE("a shear rated by force counts parallel blades") {
    // w t S = 4 x 0.5 x 64 ksi = 128 kip = 64 ton at the strongest, 46.4 ton at the weakest.
    Bench bench;
    auto& station = bench.shop.machine.stations[1];
    station.rated.clear();
    station.force = us_tons(64.0);
    CHECK(outcome_of(bench.plan(flat(0.5, 4.0, 20.0), job::Cut{}), Rule::force) == Outcome::fits);
    station.force = us_tons(63.9);
    CHECK(outcome_of(bench.plan(flat(0.5, 4.0, 20.0), job::Cut{}), Rule::force) ==
          Outcome::fits_up_to);
    station.force = us_tons(46.3);
    CHECK(outcome_of(bench.plan(flat(0.5, 4.0, 20.0), job::Cut{}), Rule::force) ==
          Outcome::does_not_fit);
}

TEST_CASE("bars and angles go by their own published sizes") {
    Bench bench; // bar shear: round 1-1/4, square 1; angle shear 4 x 3/8; all at 80 ksi
    job::Part bar = plate(Length{}, inches(1.25), inches(20.0));
    bar.section.shape = section::Shape::round;
    CHECK(rated(bench, bar) == Outcome::fits);
    bar.section.width = inches(1.26);
    CHECK(rated(bench, bar) == Outcome::does_not_fit);
    bar.section.shape = section::Shape::square;
    bar.section.width = inches(1.0);
    CHECK(rated(bench, bar) == Outcome::fits);
    bar.section.width = inches(1.01); // a round rating is no square rating
    CHECK(rated(bench, bar) == Outcome::does_not_fit);
    job::Part angle = plate(inches(0.375), inches(3.0), inches(20.0));
    angle.section.shape = section::Shape::angle;
    angle.section.height = inches(4.0); // the longer leg counts
    CHECK(rated(bench, angle) == Outcome::fits);
    angle.section.height = inches(4.01);
    CHECK(rated(bench, angle) == Outcome::does_not_fit);
}

TEST_CASE("tube, pipe and channel are not sheared with open blades") {
    Bench bench;
    for (const auto shape :
         {section::Shape::pipe, section::Shape::square_tube, section::Shape::channel}) {
        job::Part part = plate(inches(0.125), inches(2.0), inches(20.0));
        part.section.shape = shape;
        part.section.height = inches(4.0);
        part.section.flange_thickness = inches(0.25);
        CHECK(bench.plan(part, job::Cut{}).outcome == Outcome::does_not_fit);
    }
}

TEST_CASE("slitting to width needs a blade as long as the part") {
    Bench bench;
    bench.shop.machine.stations[1].rated = {{inches(0.5), inches(20.0), {}, {}}};
    job::Cut slit;
    slit.side = job::CutSide::width;
    CHECK(outcome_of(bench.plan(flat(0.25, 4.0, 14.0), slit), Rule::blade) == Outcome::fits);
    CHECK(outcome_of(bench.plan(flat(0.25, 4.0, 14.1), slit), Rule::blade) ==
          Outcome::does_not_fit);
}
