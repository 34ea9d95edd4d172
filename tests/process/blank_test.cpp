#include "process/blank.h"
#include "process/cards.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace treadle;
using process::BlankMethod;
using process::BlankRule;

namespace {

process::SharpBend bend(double t, double r, double angle) {
    return {millimetres(t), millimetres(r), degrees(angle)};
}

process::BentPart part() { return {{millimetres(50), millimetres(60)}, {bend(4, 6, 90)}}; }

} // namespace

TEST_CASE("bends refuse by field") {
    CHECK(process::bend_figures(bend(0, 6, 90), {}).refusal().field == "thickness");
    CHECK(process::bend_figures(bend(4, -1, 90), {}).refusal().field == "radius");
    for (const double angle : {0.0, 180.0, -90.0, std::nan("")})
        CHECK(process::bend_figures(bend(4, 6, angle), {}).refusal().field == "angle");
    for (const double k : {0.0, 0.51, -0.3, std::nan("")})
        CHECK(process::bend_figures(bend(4, 6, 90), {BlankMethod::k_factor, k}).refusal().field ==
              "k");
}

TEST_CASE("a sharp bend has no DIN neutral line, but takes a measured K") {
    CHECK(process::bend_figures(bend(4, 0, 90), {}).refusal().field == "radius");
    CHECK(process::bend_figures(bend(10, 0.5, 90), {}).refusal().field == "radius");
    CHECK(process::bend_figures(bend(10, 0.51, 90), {}).ok());
    CHECK(process::bend_figures(bend(4, 0, 90), {BlankMethod::k_factor, 0.33}).ok());
    CHECK(process::allowance_working(bend(10, 4.9, 90), {})->note.find("trial strip") !=
          std::string::npos);
    CHECK(process::allowance_working(bend(10, 5.0, 90), {})->note.find("trial strip") ==
          std::string::npos);
}

TEST_CASE("DIN's k meets its ceiling without a step") {
    const auto k = [](double r) { return process::bend_figures(bend(1, r, 90), {})->k; };
    CHECK(k(5.0) == doctest::Approx(0.5).epsilon(0.001));
    CHECK(k(5.001) == 0.5);
    CHECK(k(500.0) == 0.5);
}

TEST_CASE("both sides of DIN's branches") {
    // Opening angle 165 still counts, beyond it nothing is taken off.
    CHECK(process::bend_figures(bend(8, 8, 15), {})->deduction > Length{});
    CHECK(process::bend_figures(bend(8, 8, 14.99), {})->deduction == Length{});
    // The two forms of the setback are one at 90 degrees.
    const auto below = process::outside_setback(bend(4, 6, 90 - 1e-9));
    const auto above = process::outside_setback(bend(4, 6, 90 + 1e-9));
    CHECK(quantity::to_millimetres(*below) ==
          doctest::Approx(quantity::to_millimetres(*above)).epsilon(1e-9));
    // Another rule has no such limit.
    CHECK(process::bend_figures(bend(8, 8, 10), {BlankMethod::k_factor, 0.4})->deduction >
          Length{});
}

TEST_CASE("a very acute opening may take off less than nothing") {
    CHECK(process::bend_figures(bend(2, 3, 179), {})->deduction < Length{});
}

TEST_CASE("a part is refused where it does not hold together") {
    auto p = part();
    p.outside_legs.pop_back();
    CHECK(process::blank_length(p, {}).refusal().field == "legs");
    p = part();
    p.outside_legs[1] = millimetres(9.9); // the setback is 10
    CHECK(process::blank_length(p, {}).refusal().field == "legs[1]");
    p.outside_legs[1] = millimetres(10.0);
    CHECK(process::blank_length(p, {}).ok());
    p = part();
    p.outside_legs[0] = millimetres(std::nan(""));
    CHECK(process::blank_length(p, {}).refusal().field == "legs[0]");
    p = part();
    p.bends[0].radius = millimetres(-1);
    CHECK(process::blank_length(p, {}).refusal().field == "bends[0].radius");
    CHECK(process::blank_length(part(), {BlankMethod::k_factor, 0.7}).refusal().field == "k");
    p = part();
    p.outside_legs.push_back(millimetres(50));
    p.bends.push_back(bend(5, 6, 90));
    CHECK(process::blank_length(p, {}).refusal().field == "bends[1].thickness");
}

TEST_CASE("a straight part is its own length") {
    const auto blank = process::blank_length({{millimetres(123)}, {}}, {});
    REQUIRE(blank.ok());
    CHECK(blank->length == millimetres(123));
    CHECK(blank->bend_lines.empty());
    CHECK(process::blank_working({{millimetres(123)}, {}}, {}).ok());
}

TEST_CASE("turned round, a part has the same blank and its bend lines from the other end") {
    const process::BentPart there{{millimetres(40), millimetres(70), millimetres(55)},
                                  {bend(4, 6, 90), bend(4, 8, 60)}};
    const process::BentPart back{{millimetres(55), millimetres(70), millimetres(40)},
                                 {bend(4, 8, 60), bend(4, 6, 90)}};
    const auto a = process::blank_length(there, {});
    const auto b = process::blank_length(back, {});
    REQUIRE(a.ok());
    REQUIRE(b.ok());
    const auto mm = [](Length l) { return quantity::to_millimetres(l); };
    CHECK(mm(a->length) == doctest::Approx(mm(b->length)));
    CHECK(mm(a->bend_lines[0]) == doctest::Approx(mm(b->length - b->bend_lines[1])));
    CHECK(mm(a->bend_lines[1]) == doctest::Approx(mm(b->length - b->bend_lines[0])));
}

TEST_CASE("each working carries its rule's card") {
    const BlankRule din;
    const BlankRule given{BlankMethod::k_factor, 0.4};
    const BlankRule hard{BlankMethod::handbook_hard, 0.0};
    const auto b = bend(4, 6, 90);
    CHECK(process::allowance_working(b, din)->card == &process::k_bend_allowance_din_card);
    CHECK(process::allowance_working(b, given)->card == &process::k_bend_allowance_given_card);
    CHECK(process::allowance_working(b, hard)->card == &process::k_bend_allowance_handbook_card);
    CHECK(process::deduction_working(b, din)->card == &process::k_bend_deduction_din_card);
    CHECK(process::deduction_working(b, given)->card == &process::k_bend_deduction_card);
    CHECK(process::setback_working(b, din)->card == &process::k_outside_setback_card);
    const auto blank = process::blank_working(part(), din);
    CHECK(blank->card == &process::k_blank_length_card);
    CHECK(std::get<Length>(blank->result.value) == process::blank_length(part(), din)->length);
    CHECK(std::string(process::blank_method_word(BlankMethod::handbook_hard)) == "handbook-hard");
}
