#include "plan/words.h"

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;

namespace {
const PrintStyle k_inch{UnitSystem::inch, 16};
const PrintStyle k_metric{UnitSystem::metric, 16};
} // namespace

TEST_CASE("a verdict is said with its strength, rounded down against us") {
    plan::OperationPlan planned;
    planned.outcome = Outcome::fits_up_to;
    plan::Check check;
    check.outcome = Outcome::fits_up_to;
    check.limit = ksi(70.9);
    planned.checks = {check};
    CHECK(plan::verdict_words(planned, k_inch) == "fits up to 70 ksi");
    CHECK(plan::verdict_words(planned, k_metric) == "fits up to 488 MPa"); // 488.8
    check.limit = ksi(65.0); // the smallest of several limits counts
    planned.checks.push_back(check);
    CHECK(plan::verdict_words(planned, k_inch) == "fits up to 65 ksi");
}

TEST_CASE("the four outcomes have four words and four keys") {
    plan::OperationPlan planned;
    planned.outcome = Outcome::fits;
    CHECK(plan::verdict_words(planned, k_inch) == "fits");
    planned.outcome = Outcome::does_not_fit;
    CHECK(plan::verdict_words(planned, k_inch) == "does not fit");
    planned.outcome = Outcome::cannot_be_said;
    CHECK(plan::verdict_words(planned, k_inch) == "cannot be said");
    CHECK(std::string(plan::outcome_key(Outcome::fits)) == "fits");
    CHECK(std::string(plan::outcome_key(Outcome::fits_up_to)) == "fits_up_to");
    CHECK(std::string(plan::outcome_key(Outcome::cannot_be_said)) == "cannot_be_said");
    CHECK(std::string(plan::outcome_key(Outcome::does_not_fit)) == "does_not_fit");
}

TEST_CASE("a part without operations is not said to fit") {
    Bench bench;
    const auto planned = bench.plan(plate(inches(0.5), inches(8.0), inches(10.0)));
    CHECK(plan::verdict_words(planned, k_inch) == "no work here");
}

TEST_CASE("margins are rounded against us: spare down, over up") {
    Bench bench; // 13/16 in 1/2 in A36: pi x 0.8125 x 0.5 x 64 / 2 = 40.84 ton of 50: 18.3 %
    const auto part = plate(inches(0.5), inches(8.0), inches(10.0));
    const auto fits = bench.plan(part, one_hole(inches(0.8125), inches(5.0), inches(4.0)));
    CHECK(plan::margin_words(fits, k_inch) == "18 % to spare");
    bench.shop.machine.stations[0].force = us_tons(43.0); // 5.0 % left: under a tenth
    const auto tight = bench.plan(part, one_hole(inches(0.8125), inches(5.0), inches(4.0)));
    CHECK(plan::margin_words(tight, k_inch) == "5 % to spare: tight");
    bench.shop.machine.stations[0].force = us_tons(20.0); // 40.84 / 20 = 204.2 %
    const auto over = bench.plan(part, one_hole(inches(0.8125), inches(5.0), inches(4.0)));
    CHECK(plan::margin_words(over, k_inch) == "105 % over");
    bench.shop.machine.stations[0].force.reset();
    const auto unknown = bench.plan(part, one_hole(inches(0.8125), inches(5.0), inches(4.0)));
    CHECK(plan::margin_words(unknown, k_inch) == "not known: machine.stations[0].force");
}

// titles.cpp
TEST_CASE("titles say the operation as the shop would") {
    job::Part part = plate(inches(0.5), inches(8.0), inches(10.0));
    part.operations = {one_hole(inches(0.8125), inches(5.0), inches(4.0)), job::Cut{}};
    CHECK(plan::operation_title(part, 0, k_inch) == "Punch 13/16 round");
    CHECK(plan::operation_title(part, 1, k_inch) == "Shear to 10");
    CHECK(plan::part_title(part, k_inch) == "Plate 1/2 × 8 × 10");
    part.section.shape = section::Shape::angle;
    part.section.width = part.section.height = inches(3.0);
    part.section.thickness = inches(0.25);
    CHECK(plan::part_title(part, k_inch) == "Angle 3 × 3 × 1/4, 10 long");
    job::Part pipe = part;
    pipe.section.shape = section::Shape::pipe;
    pipe.section.width = inches(1.66);
    pipe.section.thickness = inches(0.14);
    CHECK(plan::section_title(pipe.section, k_inch) == "Pipe 1.660 × 0.140");
}

TEST_CASE("a sentence gives demand and offer, or what is missing") {
    Bench bench;
    const auto part = plate(inches(0.5), inches(8.0), inches(10.0));
    auto planned = bench.plan(part, one_hole(inches(0.8125), inches(5.0), inches(4.0)));
    const std::string said = plan::sentence(*find(planned, plan::Rule::force), k_inch);
    CHECK(said.find("40.9 ton") != std::string::npos); // 40.84 rounded up
    CHECK(said.find("50") != std::string::npos);
    bench.shop.machine.stations[0].throat.reset();
    planned = bench.plan(part, one_hole(inches(0.8125), inches(5.0), inches(4.0)));
    CHECK(plan::sentence(*find(planned, plan::Rule::throat), k_inch)
              .find("machine.stations[0].throat") != std::string::npos);
}

// missing_words.cpp
TEST_CASE("what is missing is said by the shop's names, not by paths") {
    const equipment::Shop s = shop();
    CHECK(plan::with_names("needs machine.stations[2].largest_mitre", s) ==
          "needs largest mitre of Bar shear");
    CHECK(plan::with_names("Not known: machine.attachments[1].vee_included.", s) ==
          "Not known: vee included of " + s.machine.attachments[1].name + ".");
    CHECK(plan::with_names("needs crib.saddle_dies", s) == "needs saddle dies in the crib");
    CHECK(plan::with_names("needs grade.bend_group", s) == "needs the grade's least inside radius");
    CHECK(plan::missing_sentence("machine.stations[2].stroke", s) ==
          "Not known: stroke of Bar shear. Enter it under Shop, Bar shear.");
    CHECK(plan::missing_sentence("crib.vees[0].height", s) ==
          "Not known: height of V block 1. Enter it under Shop among the tools.");
    CHECK(plan::missing_sentence("grade.bend_group", s) ==
          "Not known: the grade's least inside radius. Enter it with the grade.");
    // A path beyond the shop's lists stays as it is: better odd than wrong.
    CHECK(plan::with_names("needs machine.stations[99].force", s) ==
          "needs machine.stations[99].force");
}
