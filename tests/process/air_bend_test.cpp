#include "process/air_bend.h"
#include "process/cards.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace treadle;

namespace {

process::AirBend good() { return {inches(0.25), inches(12.0), inches(2.0), ksi(60.0)}; }

process::LeastLeg leg(double angle_deg) {
    return {inches(2.0), inches(0.25), inches(0.32), degrees(angle_deg)};
}

} // namespace

TEST_CASE("bending refuses by field") {
    auto bend = good();
    bend.thickness = {};
    CHECK(process::bend_force(bend).refusal().field == "thickness");
    bend = good();
    bend.length = {};
    CHECK(process::bend_force(bend).refusal().field == "length");
    bend = good();
    bend.tensile_strength = ksi(std::nan(""));
    CHECK(process::bend_force(bend).refusal().field == "tensile_strength");
    CHECK(process::bend_force_with_factor(good(), 0.0).refusal().field == "k");
    CHECK(process::bend_force_with_factor(good(), 20.1).refusal().field == "k");
    CHECK(process::usual_opening({}, ksi(60.0)).refusal().field == "thickness");
    CHECK(process::air_bend_radius({inches(0.25), inches(2.0), 0.0, {}}).refusal().field ==
          "share");
    CHECK(
        process::air_bend_radius({inches(0.25), inches(2.0), 0.16, inches(-1.0)}).refusal().field ==
        "nose");
    CHECK(process::punch_travel(inches(2.0), inches(9.0), inches(0.25), degrees(90))
              .refusal()
              .field == "radius");
}

TEST_CASE("a V of exactly six thicknesses is the narrowest") {
    auto bend = good();
    bend.opening = inches(1.5);
    CHECK(process::bend_force(bend).ok());
    CHECK(process::air_bend_radius({bend.thickness, bend.opening, 0.16, {}}).ok());
    bend.opening = inches(1.499);
    CHECK(process::bend_force(bend).refusal().field == "opening");
    CHECK(process::air_bend_radius({bend.thickness, bend.opening, 0.16, {}}).refusal().field ==
          "opening");
    CHECK(process::bend_force_with_factor(bend, 1.33).ok());
    bend.opening = bend.thickness;
    CHECK(process::bend_force_with_factor(bend, 1.33).refusal().field == "opening");
}

TEST_CASE("both sides of each step of the usual opening") {
    const auto ratio = [](double t, double rm) {
        return *process::usual_opening(inches(t), ksi(rm)) / inches(t);
    };
    CHECK(ratio(0.375, 69.9) == doctest::Approx(8.0));
    CHECK(ratio(0.376, 69.9) == doctest::Approx(10.0));
    CHECK(ratio(0.5, 69.9) == doctest::Approx(10.0));
    CHECK(ratio(0.501, 69.9) == doctest::Approx(12.0));
    CHECK(ratio(0.375, 70.0) == doctest::Approx(10.0));
    CHECK(ratio(0.376, 70.0) == doctest::Approx(12.0));
    CHECK(ratio(0.501, 70.0) == doctest::Approx(12.0));
}

TEST_CASE("thicker, longer, stronger and narrower never need less") {
    std::mt19937 random(22); // fixed seed
    std::uniform_real_distribution<double> t(0.5, 20.0);
    std::uniform_real_distribution<double> ratio(6.0, 30.0);
    std::uniform_real_distribution<double> more(1.0, 1.5);
    for (int i = 0; i < 500; ++i) {
        const double thickness = t(random);
        const process::AirBend bend{millimetres(thickness),
                                    millimetres(500.0),
                                    millimetres(thickness * 1.5 * ratio(random)),
                                    megapascals(450.0)};
        process::AirBend worse = bend;
        worse.thickness = more(random) * bend.thickness;
        worse.length = more(random) * bend.length;
        worse.tensile_strength = more(random) * bend.tensile_strength;
        CHECK(*process::bend_force(worse) >= *process::bend_force(bend));
        process::AirBend narrower = bend;
        narrower.opening = larger(bend.opening / more(random), 6.0 * bend.thickness);
        CHECK(*process::bend_force(narrower) >= *process::bend_force(bend) * (1.0 - 1e-12));
        CHECK(*process::usual_opening(worse.thickness, worse.tensile_strength) >=
              *process::usual_opening(bend.thickness, bend.tensile_strength));
    }
}

TEST_CASE("the punch nose decides only where it is the larger") {
    const process::AirBendRadius blunt{inches(0.25), inches(2.0), 0.16, inches(0.5)};
    const process::AirBendRadius sharp{inches(0.25), inches(2.0), 0.16, inches(0.1)};
    CHECK(quantity::to_inches(*process::air_bend_radius(blunt)) == doctest::Approx(0.5));
    CHECK(quantity::to_inches(*process::air_bend_radius(sharp)) == doctest::Approx(0.32));
    CHECK(process::air_bend_radius_working(blunt)->note !=
          process::air_bend_radius_working(sharp)->note);
}

TEST_CASE("the least leg grows with the angle and is never under the setback") {
    Length before;
    for (double angle = 5.0; angle <= 150.0; angle += 5.0) {
        const auto least = process::least_leg(leg(angle));
        REQUIRE(least.ok());
        CHECK(*least >= before);
        before = *least;
    }
    auto blunt = leg(90.0);
    blunt.radius = inches(3.0);
    CHECK(quantity::to_inches(*process::least_leg(blunt)) == doctest::Approx(3.25));
    for (const double angle : {0.0, -90.0, 150.1, 180.0, std::nan("")})
        CHECK(process::least_leg(leg(angle)).refusal().field == "angle");
}

TEST_CASE("workings carry the formula's own result and the factor used") {
    const auto careful = process::bend_force_working(good());
    REQUIRE(careful.ok());
    CHECK(careful->card == &process::k_bend_force_card);
    CHECK(std::get<Force>(careful->result.value) == *process::bend_force(good()));
    CHECK(std::get<quantity::Number>(careful->values[0].value).value == doctest::Approx(1.5));
    const auto given = process::bend_force_with_factor_working(good(), 1.33);
    CHECK(given->card == &process::k_bend_force_given_card);
    CHECK(process::least_leg_working(leg(90.0))->card == &process::k_least_leg_card);
    CHECK(process::usual_opening_working(inches(0.25), ksi(80.0))->card ==
          &process::k_usual_opening_card);
}
