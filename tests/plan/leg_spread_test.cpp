// How far finished legs come out, against the class of ISO 2768-1 that was asked for.

#include "plan/bend_bench.h"
#include "plan/leg_spread.h"

#include <cmath>

using namespace treadle;
using namespace treadle::test;
using plan::LegSpread;
using plan::SpreadVerdict;

namespace {

constexpr double k_half_mm = 0.127; // half of a spread of 0.010 in

/// An eighth of A36 over the V of 1-1/4, deductions 0.255 and 0.265 in; all invented.
Bench measured(double stop_mm = 0.3, double cut_mm = 0.5) {
    Bench bench = with_sizes();
    equipment::TrialRecord record;
    record.grade = "A36";
    record.thickness = inches(0.125);
    record.opening = inches(1.25);
    record.radius = inches(0.2);
    record.angle = degrees(90.0);
    record.strips = {{inches(6.0), inches(3.1), inches(3.155)},
                     {inches(6.0), inches(3.1), inches(3.165)}};
    bench.shop.trials = {record};
    bench.shop.rules.stop_repeat = millimetres(stop_mm);
    bench.shop.rules.cut_repeat = millimetres(cut_mm);
    bench.job.tolerance = job::ToleranceClass::coarse;
    return bench;
}

std::vector<LegSpread> legs(const Bench& bench, const job::Part& part) {
    return plan::leg_spreads(bench.plan(part), bench.job, bench.shop);
}

double mm(const std::optional<Length>& value) {
    REQUIRE(value);
    return quantity::to_millimetres(*value);
}

const job::Part k_angle = bent({3, 4}, {true});

} // namespace

TEST_CASE("a leg set at the stop takes the stop and half the deduction, the other the cut too") {
    const Bench bench = measured();
    const auto part = bench.plan(k_angle);
    REQUIRE(part.bends);
    REQUIRE(part.bends->steps.size() == 1);
    REQUIRE_FALSE(part.bends->steps[0].start_gauged);
    const auto found = plan::leg_spreads(part, bench.job, bench.shop);
    REQUIRE(found.size() == 2);
    CHECK(found[0].nominal == inches(3.0));
    CHECK(mm(found[0].worst) == doctest::Approx(0.5 + 0.3 + k_half_mm));
    CHECK(mm(found[0].rss) == doctest::Approx(std::sqrt(0.25 + 0.09 + k_half_mm * k_half_mm)));
    // The blank of 6.74 in is cut to 6-3/4: 0.254 mm over, on the leg at its far end.
    CHECK(mm(found[1].worst) == doctest::Approx(0.254 + 0.3 + k_half_mm));
    CHECK(mm(found[1].rss) == doctest::Approx(0.254 + std::sqrt(0.09 + k_half_mm * k_half_mm)));
}

TEST_CASE("both sides of the class: by the worst case, by RSS, outside") {
    // Class c allows 0.8 mm from 30 to 120 mm, 0.546 beside the offset: worst case at a stop of
    // 0.419, RSS at 0.531025.
    const auto verdict = [](double stop_mm) { return legs(measured(stop_mm), k_angle)[1].verdict; };
    CHECK(verdict(0.4189) == SpreadVerdict::within);
    CHECK(verdict(0.4191) == SpreadVerdict::within_by_rss);
    CHECK(verdict(0.5310) == SpreadVerdict::within_by_rss);
    CHECK(verdict(0.5311) == SpreadVerdict::outside);
    const auto of_class = [](job::ToleranceClass grade) {
        Bench bench = measured();
        bench.job.tolerance = grade;
        return legs(bench, k_angle)[1].verdict;
    };
    // 0.681 worst, 0.580 by RSS; f 0.15, m 0.3, v 1.5.
    CHECK(of_class(job::ToleranceClass::fine) == SpreadVerdict::outside);
    CHECK(of_class(job::ToleranceClass::medium) == SpreadVerdict::outside);
    CHECK(of_class(job::ToleranceClass::very_coarse) == SpreadVerdict::within);
}

TEST_CASE("what is not known is named, and nothing is said") {
    const auto last = [](auto change) {
        Bench bench = measured();
        change(bench);
        return legs(bench, k_angle)[1];
    };
    const auto said = [](const LegSpread& leg, const char* words) {
        CHECK(leg.verdict == SpreadVerdict::cannot_be_said);
        CHECK_FALSE(leg.worst);
        CHECK_FALSE(leg.rss);
        CHECK(leg.limit);
        CHECK(leg.missing.find(words) != std::string::npos);
    };
    said(last([](Bench& b) { b.shop.trials.clear(); }),
         "trial strips of A36, 1/8 in thick, in a V of 1-1/4 in");
    said(last([](Bench& b) { b.shop.trials[0].strips.pop_back(); }), "a second trial strip of A36");
    said(last([](Bench& b) { b.shop.rules.stop_repeat.reset(); }), "back stop");
    // The order of bends decides which edge is gauged.
    said(last([](Bench& b) { b.shop.crib.vees[0].width.reset(); }), "an order of the bends");
    Bench bench = measured();
    bench.shop.rules.cut_repeat.reset();
    const auto both = legs(bench, k_angle);
    CHECK(both[1].verdict == SpreadVerdict::within);
    said(both[0], "sheared");
    CHECK(both[0].missing.find(';') == std::string::npos);
}

TEST_CASE(
    "two strips that agree to the last digit have a spread of nothing, and that is a figure") {
    Bench bench = measured();
    bench.shop.trials[0].strips[1] = bench.shop.trials[0].strips[0];
    const auto leg = legs(bench, k_angle)[0];
    CHECK(leg.verdict == SpreadVerdict::within); // 0.8 of 0.8
    CHECK(mm(leg.worst) == doctest::Approx(0.5 + 0.3));
}

TEST_CASE("without a class asked for there are figures and no verdict") {
    Bench bench = measured();
    bench.job.tolerance.reset();
    const auto leg = legs(bench, k_angle)[0];
    CHECK(leg.verdict == SpreadVerdict::not_asked);
    CHECK_FALSE(leg.limit);
    CHECK(mm(leg.worst) == doctest::Approx(0.5 + 0.3 + k_half_mm));
}

TEST_CASE("a leg outside the class's table cannot be said") {
    Bench bench = measured();
    bench.job.tolerance = job::ToleranceClass::fine;
    const auto found = legs(bench, bent({3, 100}, {true}));
    CHECK(found[1].verdict == SpreadVerdict::cannot_be_said);
    CHECK_FALSE(found[1].limit);
    CHECK(found[1].worst);
    CHECK(found[1].missing.find("figure of this class") != std::string::npos);
}

TEST_CASE("two bends set from the same end: the cut cancels in the leg between") {
    const Bench bench = measured();
    const auto part = bench.plan(bent({3, 6, 3}, {true, true}));
    REQUIRE(part.bends);
    REQUIRE(part.bends->steps.size() == 2);
    for (const plan::BendStep& step : part.bends->steps) {
        REQUIRE_FALSE(step.start_gauged);
        REQUIRE(step.against == plan::k_none);
    }
    const auto found = plan::leg_spreads(part, bench.job, bench.shop);
    CHECK(mm(found[1].worst) == doctest::Approx(2 * 0.3 + 2 * k_half_mm));
}

TEST_CASE("a stop against a standing leg takes in where that leg stands") {
    // A hat: both flanges from the far end, then both risers against the outside of leg 5.
    const Bench bench = measured();
    const auto part = bench.plan(bent({2.5, 2.25, 4, 2.25, 2.5}, {true, false, false, true}));
    REQUIRE(part.bends);
    REQUIRE(part.bends->steps.size() == 4);
    for (const plan::BendStep& step : part.bends->steps) {
        REQUIRE_FALSE(step.start_gauged);
        REQUIRE(step.against == (step.bend == 1 || step.bend == 4 ? plan::k_none : 4));
    }
    const auto found = plan::leg_spreads(part, bench.job, bench.shop);
    // Leg 4 is set directly: its stop and half its own far bend; that of the standing one cancels.
    CHECK(mm(found[3].worst) == doctest::Approx(0.3 + k_half_mm));
    // Leg 2 lies between a free end's line and one set against leg 5: three stops, three halves.
    CHECK(mm(found[1].worst) == doctest::Approx(3 * 0.3 + 3 * k_half_mm));
}

TEST_CASE("a part without bends has no legs to look at, and a spread turns no verdict") {
    Bench bench = measured(5.0);
    job::Part flat = plate(inches(0.125), inches(4.0), inches(10.0));
    flat.operations = {job::Cut{}};
    CHECK(legs(bench, flat).empty());
    const auto outcome = bench.plan(k_angle).outcome;
    CHECK(legs(bench, k_angle)[1].verdict == SpreadVerdict::outside);
    CHECK(bench.plan(k_angle).outcome == outcome);
    CHECK(outcome == with_sizes().plan(k_angle).outcome);
}
