#include "process/cards.h"
#include "process/die_clearance.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace treadle;

namespace {

Grade grade(material::Family family, Stress minimum) {
    Grade g;
    g.id = "made-up";
    g.family = family;
    g.bands.push_back({inches(4.0), minimum, minimum, minimum});
    return g;
}

double total_64ths(double t_in, const Grade* g = nullptr) {
    const auto clearance = process::die_clearance(inches(t_in), g);
    return clearance.ok() ? quantity::to_inches(clearance->total) * 64.0 : NAN;
}

} // namespace

TEST_CASE("both sides of each step") {
    CHECK(total_64ths(0.187) == doctest::Approx(1.0));
    CHECK(total_64ths(0.1875) == doctest::Approx(2.0));
    CHECK(total_64ths(0.499) == doctest::Approx(2.0));
    CHECK(total_64ths(0.5) == doctest::Approx(4.0));
    CHECK(total_64ths(1.0) == doctest::Approx(4.0));
    CHECK(total_64ths(1.001) == doctest::Approx(6.0));
    CHECK(process::die_clearance(inches(1.501), nullptr).refusal().field == "thickness");
}

TEST_CASE("harder metal takes the larger step from 3/8 in up") {
    const Grade stainless = grade(material::Family::stainless_steel, ksi(60.0));
    const Grade strong = grade(material::Family::carbon_steel, ksi(70.0));
    const Grade mild = grade(material::Family::carbon_steel, ksi(69.0));
    for (const Grade* hard : {&stainless, &strong}) {
        CHECK(total_64ths(0.374, hard) == doctest::Approx(2.0));
        CHECK(total_64ths(0.375, hard) == doctest::Approx(4.0));
    }
    CHECK(total_64ths(0.375, &mild) == doctest::Approx(2.0));
}

TEST_CASE("clearance never falls as the metal gets thicker") {
    const Grade strong = grade(material::Family::carbon_steel, ksi(70.0));
    for (const Grade* g : {static_cast<const Grade*>(nullptr), &strong}) {
        double before = 0.0;
        for (double t = 0.02; t < 1.5; t += 0.01) {
            CHECK(total_64ths(t, g) >= before);
            before = total_64ths(t, g);
        }
    }
}

TEST_CASE("a die not larger than its punch is refused, always") {
    CHECK(process::clearance_of_pair(inches(1.0), inches(1.0), inches(0.25)).refusal().field ==
          "die");
    CHECK(process::clearance_of_pair(inches(1.0), inches(0.99), inches(0.25)).refusal().field ==
          "die");
    // 25.4 mm written the other way: a hair from conversion is no clearance.
    CHECK_FALSE(
        process::clearance_of_pair(inches(1.0), millimetres(25.4 + 1e-12), inches(0.25)).ok());
    CHECK(process::clearance_of_pair({}, inches(1.0), inches(0.25)).refusal().field == "punch");
    const auto pair = process::clearance_of_pair(inches(1.0), inches(1.03125), inches(0.25));
    REQUIRE(pair.ok());
    CHECK(pair->share == doctest::Approx(0.125));
    CHECK(quantity::to_inches(pair->per_side) == doctest::Approx(1.0 / 64.0));
}

TEST_CASE("metal that must not be cut gets no die") {
    Grade plate = grade(material::Family::carbon_steel, ksi(180.0));
    plate.refusal = {true, true, "Too hard."};
    const auto refused = process::die_clearance(inches(0.25), &plate);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.refusal().field == "material");
    CHECK(refused.refusal().reason == "Too hard.");
}

TEST_CASE("the working warns of tight and loose shares") {
    CHECK(process::die_clearance_working(inches(0.25), nullptr)->note.empty());
    CHECK_FALSE(process::die_clearance_working(inches(0.05), nullptr)->note.empty());
    CHECK(process::die_clearance_working(inches(0.25), nullptr)->card ==
          &process::k_die_clearance_card);
    CHECK_FALSE(process::die_clearance_working({}, nullptr).ok());
}
