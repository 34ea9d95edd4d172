// What the ram is set to, worked by hand: core/plan/settings.cpp and setting_words.cpp.
//
// Punch: stock, gap and 1/8 in into the die are common practice, no source. Brake: geometry.

#include "plan/settings.h"

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;

namespace {

void add(Bench& bench, job::Part part, const char* mark) {
    part.id = part.mark = mark;
    bench.job.parts.push_back(std::make_shared<const job::Part>(std::move(part)));
}

job::Part punched(double thickness_in) {
    job::Part part = plate(inches(thickness_in), inches(4.0), inches(8.0));
    part.operations = {one_hole(inches(0.8125), inches(4.0), inches(2.0))};
    return part;
}

/// An L of 1/4 in, 4 in and 3 in outside, in the 3 in V of the crib.
job::Part bent() {
    job::Part part = plate(inches(0.25), inches(4.0), Length{});
    part.legs = {inches(4.0), inches(3.0)};
    part.operations = {job::Bend{}};
    std::get<job::Bend>(part.operations[0]).angle = degrees(90.0);
    return part;
}

plan::Plan plan_of(const Bench& bench) {
    return plan::make_plan(bench.job, bench.shop, bench.catalog);
}

plan::SetUp only_set_up(const Bench& bench) {
    const plan::Plan planned = plan_of(bench);
    REQUIRE(planned.order.size() == 1);
    return planned.order[0];
}

double in(const std::optional<Length>& length) {
    REQUIRE(length.has_value());
    return quantity::to_inches(*length);
}

std::string lines_of(const Bench& bench, const plan::SetUp& set_up) {
    std::string all;
    for (const std::string& line : plan::setting_lines(set_up, bench.shop, bench.job.style))
        all += line + "\n";
    return all;
}

bool has(const std::string& text, const char* words) {
    return text.find(words) != std::string::npos;
}

} // namespace

TEST_CASE("the punch clears the thickest stock of its set-up by the gap, and enters the die") {
    Bench bench;
    bench.shop.rules.stripper_gap = inches(0.125);
    bench.shop.crib.dies = {{round_hole(inches(0.84375)), 1}};
    add(bench, punched(0.25), "P1");
    CHECK(in(only_set_up(bench).settings.stroke_up) == doctest::Approx(0.375)); // 1/4 + 1/8
    add(bench, punched(0.3125), "P2");
    const plan::SetUp both = only_set_up(bench);
    REQUIRE(both.steps.size() == 2);
    CHECK(in(both.settings.stroke_up) == doctest::Approx(0.4375)); // 5/16 + 1/8
    CHECK(in(both.settings.stroke_down) == doctest::Approx(0.125));
    CHECK(in(both.settings.stripper_gap) == doctest::Approx(0.125));
    CHECK(both.steps[static_cast<std::size_t>(both.settings.up_step)].part == 1);
    const std::string lines = lines_of(bench, both);
    CHECK(has(lines, "Stripper gap above the stock: 1/8 in"));
    CHECK(has(lines, "Ram up: 7/16 in over the die"));
    CHECK(has(lines, "Ram down: 1/8 in into the die"));
}

TEST_CASE("without a house gap the largest there may be is counted, and said") {
    Bench bench;
    add(bench, punched(0.25), "P1");
    const plan::SetUp set_up = only_set_up(bench);
    CHECK(in(set_up.settings.stroke_up) == doctest::Approx(0.5)); // 1/4 + 1/4
    CHECK(has(lines_of(bench, set_up), "as small as the stock slides, never over 1/4 in"));
}

TEST_CASE("the setting of a punch is the figure its stroke was checked with") {
    Bench bench;
    bench.shop.rules.stripper_gap = inches(0.125);
    add(bench, punched(0.25), "P1");
    const plan::Plan planned = plan_of(bench);
    const plan::Settings& settings = planned.order.at(0).settings;
    const plan::Check* check = find(planned.parts[0]->operations[0], plan::Rule::stroke);
    REQUIRE(check != nullptr);
    CHECK(in(settings.stroke_up) + in(settings.stroke_down) ==
          doctest::Approx(quantity::to_inches(std::get<Length>(check->demand_high))));
    const auto workings = plan::explain_settings(planned, planned.order[0], bench.shop);
    REQUIRE(workings.size() == 1);
    CHECK(std::string(workings[0].card->id) == "punch-stroke");
    CHECK(std::get<Length>(workings[0].result.value) == inches(0.5)); // 1/4 + 1/8 + 1/8
}

TEST_CASE("a punch station whose stroke is not known gets no setting: it does no work") {
    Bench bench;
    bench.shop.machine.stations[0].stroke.reset();
    add(bench, punched(0.25), "P1");
    CHECK(plan_of(bench).order.empty());
}

TEST_CASE("blades open for the stock and the gap, as far as the stroke is known and long enough") {
    Bench bench;
    bench.shop.rules.stripper_gap = inches(0.125);
    job::Part part = plate(inches(0.25), inches(4.0), inches(8.0));
    part.operations = {job::Cut{}};
    add(bench, part, "P1");
    std::optional<Length>& stroke = bench.shop.machine.stations[1].stroke;

    const plan::SetUp unknown = only_set_up(bench);
    CHECK_FALSE(unknown.settings.stroke_up.has_value());
    CHECK(unknown.settings.missing == "machine.stations[1].stroke");
    CHECK(has(lines_of(bench, unknown),
              "Ram: cannot be said. Not known: stroke of Flat shear. Enter it under "
              "Shop, Flat shear."));

    stroke = inches(0.375);
    const plan::SetUp just = only_set_up(bench);
    CHECK(in(just.settings.stroke_up) == doctest::Approx(0.375));
    CHECK_FALSE(just.settings.stroke_down.has_value());
    CHECK(lines_of(bench, just).rfind("Ram up: 3/8 in over the lower blade", 0) == 0);

    stroke = inches(0.374);
    const plan::SetUp shorter = only_set_up(bench);
    CHECK_FALSE(shorter.settings.stroke_up.has_value());
    CHECK(has(lines_of(bench, shorter), "Ram up: all the way"));
}

TEST_CASE("blades with the stock's own shape are brought in line, whatever the stroke") {
    Bench bench;
    job::Part bar = plate(Length{}, inches(0.75), inches(8.0));
    bar.section.shape = section::Shape::round;
    bar.operations = {job::Cut{}};
    add(bench, bar, "B1");
    CHECK(lines_of(bench, only_set_up(bench)) ==
          "Ram up until the openings of the blades are in line\n");
}

TEST_CASE("the brake opens for the standing leg and goes down the punch's travel") {
    Bench bench;
    bench.shop.rules.stripper_gap = inches(0.125);
    bench.shop.machine.stations[4].stroke = inches(6.0);
    add(bench, bent(), "L1");
    const plan::Plan planned = plan_of(bench);
    REQUIRE(planned.order.size() == 1);
    const plan::OperationPlan& bend = planned.parts[0]->operations[0];
    const double v = quantity::to_inches(bend.tools.opening);
    const double r = quantity::to_inches(bend.bend.radius);
    const plan::Settings& settings = planned.order[0].settings;
    CHECK(in(settings.stroke_down) == // V/2 - (sqrt 2 - 1)(r + t) at 90 degrees
          doctest::Approx(v / 2.0 - 0.41421356 * (r + 0.25)));
    CHECK(in(settings.stroke_up) == doctest::Approx(3.125)); // 3 sin 90 + 1/8
    CHECK_FALSE(settings.out_along);
    CHECK(has(lines_of(bench, planned.order[0]), "the piece comes out to the front"));
    const auto workings = plan::explain_settings(planned, planned.order[0], bench.shop);
    REQUIRE(workings.size() == 2);
    CHECK(std::string(workings[0].card->id) == "brake-opening");
    CHECK(std::get<Length>(workings[0].result.value) == *settings.stroke_up);
    CHECK(std::string(workings[1].card->id) == "punch-travel");
    CHECK(std::get<Length>(workings[1].result.value) == *settings.stroke_down);
}

TEST_CASE("where the stroke does not open so far, the piece comes out along the bend line") {
    Bench bench;
    bench.shop.rules.stripper_gap = inches(0.125);
    add(bench, bent(), "L1");
    const Length needed = plan_of(bench).parts[0]->operations[0].stroke_needed;
    std::optional<Length>& stroke = bench.shop.machine.stations[4].stroke;
    const auto settings = [&](double open_in) { // nose over the V at the top of the stroke
        stroke = needed - inches(0.25) + inches(open_in);
        return only_set_up(bench).settings;
    };
    CHECK_FALSE(settings(3.126).out_along);
    CHECK(settings(3.124).out_along);
    CHECK(in(settings(3.124).stroke_up) == doctest::Approx(0.375)); // 1/4 + 1/8
    CHECK(in(settings(0.3).stroke_up) == doctest::Approx(0.3));     // all that is left
    stroke = needed - inches(0.001);
    CHECK(plan_of(bench).order.empty()); // the angle is not reached: no work there
}

TEST_CASE("thicker stock is never given a lower ram, and a wider gap never either") {
    double last = 0.0;
    for (int sixteenths = 2; sixteenths <= 8; ++sixteenths) {
        Bench bench;
        add(bench, punched(sixteenths / 16.0), "P1");
        const plan::Plan planned = plan_of(bench);
        if (planned.order.empty())
            continue;
        const double up = in(planned.order[0].settings.stroke_up);
        CHECK(up > last);
        last = up;
        bench.shop.rules.stripper_gap = inches(0.0625);
        CHECK(in(plan_of(bench).order.at(0).settings.stroke_up) < up);
    }
    CHECK(last > 0.0);
}
