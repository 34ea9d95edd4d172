#include "quantity/parse.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using namespace treadle::quantity;

namespace {
constexpr BareUnit k_none{};
}

TEST_CASE("forces") {
    CHECK(parse_force("45.9 ton", k_none, "f").value() == us_tons(45.9));
    CHECK(parse_force("45.9 US tons", k_none, "f").value() == us_tons(45.9));
    CHECK(parse_force("230,7 kN", k_none, "f").value() == kilonewtons(230.7));
    CHECK(parse_force("500N", k_none, "f").value() == newtons(500.0));
    CHECK(parse_force("2 kip", k_none, "f").value() == us_tons(1.0));
    CHECK(parse_force("10 t", k_none, "f").value() == tonnes_force(10.0));
    CHECK(parse_force("10 tonne", k_none, "f").value() == tonnes_force(10.0));
    CHECK(parse_force("2000 lbf", k_none, "f").value() == us_tons(1.0));
    CHECK(parse_force("50", UnitSystem::inch, "f").value() == us_tons(50.0));
    CHECK(parse_force("50", UnitSystem::metric, "f").value() == kilonewtons(50.0));
}

TEST_CASE("stresses") {
    CHECK(parse_stress("65 ksi", k_none, "s").value() == ksi(65.0));
    CHECK(parse_stress("65000 psi", k_none, "s").value() == ksi(65.0));
    CHECK(parse_stress("448 MPa", k_none, "s").value() == megapascals(448.0));
    CHECK(parse_stress("448 N/mm²", k_none, "s").value() == megapascals(448.0));
    CHECK(parse_stress("200 GPa", k_none, "s").value() == megapascals(200000.0));
    CHECK(parse_stress("65", UnitSystem::inch, "s").value() == ksi(65.0));
    CHECK(parse_stress("448", UnitSystem::metric, "s").value() == megapascals(448.0));
}

TEST_CASE("angles, masses, densities and ratios") {
    CHECK(parse_angle("22-1/2", "a").value() == degrees(22.5));
    CHECK(parse_angle("90°", "a").value() == degrees(90.0));
    CHECK(to_degrees(parse_angle("1 rad", "a").value()) == doctest::Approx(57.29577951));
    CHECK(parse_mass("2 lb", k_none, "m").value() == pounds(2.0));
    CHECK(parse_mass("2500 g", k_none, "m").value() == kilograms(2.5));
    CHECK(parse_mass("1 t", k_none, "m").value() == kilograms(1000.0));
    CHECK(parse_mass("2", UnitSystem::metric, "m").value() == kilograms(2.0));
    CHECK(parse_density("7850 kg/m³", "d").value() == kilograms_per_cubic_metre(7850.0));
    CHECK(parse_density("7.85 g/cm3", "d").value() == kilograms_per_cubic_metre(7850.0));
    // 7850 x 0.0254^3 / 0.45359237 = 0.28360, worked from the definitions
    CHECK(to_kilograms_per_cubic_metre(parse_density("0.2836 lb/in3", "d").value()) ==
          doctest::Approx(7850.0).epsilon(0.0002));
    // 1728 in3 in a ft3
    CHECK(to_kilograms_per_cubic_metre(parse_density("1728 lb/ft3", "d").value()) ==
          doctest::Approx(to_kilograms_per_cubic_metre(parse_density("1 lb/in3", "d").value())));
    CHECK(parse_ratio("0.42", "k").value() == 0.42);
    CHECK(parse_ratio("1/4", "k").value() == 0.25);
    CHECK(parse_ratio("15 %", "k").value() == 0.15);
}

TEST_CASE("a missing or foreign unit is refused with the field") {
    const auto check = [](const auto& read) {
        REQUIRE_FALSE(read);
        CHECK(read.refusal().field == "station.force");
        CHECK_FALSE(read.refusal().reason.empty());
    };
    for (const char* text : {"",
                             "45",
                             "45 kg",
                             "45 ton 3",
                             "45-50 ton",
                             "inf kN",
                             "nan",
                             "0x1 kN",
                             "1e400 kN",
                             "1e308 kip",
                             "kN",
                             "1,250 kN",
                             "1/0 kN",
                             "45 mm"}) {
        CAPTURE(std::string(text));
        check(parse_force(text, k_none, "station.force"));
    }
    check(parse_stress("65", k_none, "station.force"));
    check(parse_stress("65 kN", k_none, "station.force"));
    check(parse_stress("1e308 GPa", k_none, "station.force"));
    check(parse_angle("90 mm", "station.force"));
    check(parse_mass("3 kN", UnitSystem::inch, "station.force"));
    check(parse_density("7850", "station.force"));
    check(parse_ratio("0.4 mm", "station.force"));
    check(parse_ratio("x", "station.force"));
}

TEST_CASE("a whole number is one, and nothing beside it") {
    CHECK(parse_whole("12", "n").value() == 12);
    CHECK(parse_whole(" -3 ", "n").value() == -3);
    CHECK(parse_whole("1e3", "n").value() == 1000);
    for (const char* text : {"", "1.5", "1/2", "12 mm", "2000000", "x"}) {
        CAPTURE(std::string(text));
        CHECK_FALSE(parse_whole(text, "n"));
    }
}
