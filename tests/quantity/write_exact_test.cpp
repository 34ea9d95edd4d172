#include "quantity/parse.h"
#include "quantity/print.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <random>

using namespace treadle;
using namespace treadle::quantity;

namespace {

constexpr std::uint64_t k_seed = 6935;

/// A spread that meets both the short forms and the long ones: raw, rounded in mm, in inch parts.
double some_value(std::mt19937_64& random, int i) {
    const double raw = static_cast<double>(random() >> 11U) * 0x1p-53 * 20000.0;
    switch (i % 4) {
    case 0:
        return raw;
    case 1:
        return std::round(raw * 10.0) / 10.0;
    case 2:
        return std::round(raw * 64.0) / 64.0 * 25.4;
    default:
        return raw * 1e-5;
    }
}

} // namespace

TEST_CASE("files read back the identical value: 10,000 random ones in both systems") {
    std::mt19937_64 random(k_seed);
    for (int i = 0; i < 10000; ++i) {
        const double v = some_value(random, i);
        for (const UnitSystem system : {UnitSystem::inch, UnitSystem::metric}) {
            CAPTURE(v);
            const auto length = parse_length(write_exact(millimetres(v), system), {}, "x");
            REQUIRE(length);
            REQUIRE(*length == millimetres(v));
            const auto negative = parse_length(write_exact(millimetres(-v), system), {}, "x");
            REQUIRE(negative);
            REQUIRE(*negative == millimetres(-v));
            for (const Force f : {newtons(v), us_tons(std::round(v) / 10.0)}) {
                const auto force = parse_force(write_exact(f, system), {}, "x");
                REQUIRE(force);
                REQUIRE(*force == f);
            }
            for (const Stress s : {megapascals(v), ksi(std::round(v) / 10.0)}) {
                const auto stress = parse_stress(write_exact(s, system), {}, "x");
                REQUIRE(stress);
                REQUIRE(*stress == s);
            }
            for (const Mass m : {kilograms(v), pounds(std::round(v))}) {
                const auto mass = parse_mass(write_exact(m, system), {}, "x");
                REQUIRE(mass);
                REQUIRE(*mass == m);
            }
        }
        for (const Density d : {kilograms_per_cubic_metre(v), Density::from_base(v * 1e-9)}) {
            const auto density = parse_density(write_exact(d), "x");
            REQUIRE(density);
            REQUIRE(*density == d);
        }
        const auto angle = parse_angle(write_exact(degrees(v)), "x");
        REQUIRE(angle);
        REQUIRE(*angle == degrees(v));
    }
}

TEST_CASE("what a person typed is what the file shows") {
    CHECK(write_exact(inches(1.375), UnitSystem::inch) == "1-3/8 in");
    CHECK(write_exact(inches(-0.5), UnitSystem::inch) == "-1/2 in");
    CHECK(write_exact(inches(0.1345), UnitSystem::inch) == "0.1345 in");
    CHECK(write_exact(millimetres(35.0), UnitSystem::inch) == "35 mm");
    CHECK(write_exact(millimetres(35.0), UnitSystem::metric) == "35 mm");
    CHECK(write_exact(millimetres(9.525), UnitSystem::metric) == "9.525 mm");
    CHECK(write_exact(inches(0.375), UnitSystem::metric) == "3/8 in");
    CHECK(write_exact(us_tons(65.0), UnitSystem::inch) == "65 ton");
    CHECK(write_exact(kilonewtons(578.3), UnitSystem::metric) == "578.3 kN");
    CHECK(write_exact(ksi(65.0), UnitSystem::inch) == "65 ksi");
    CHECK(write_exact(megapascals(448.0), UnitSystem::inch) == "448 MPa");
    CHECK(write_exact(pounds(4.9), UnitSystem::inch) == "4.9 lb");
    CHECK(write_exact(kilograms_per_cubic_metre(7850.0)) == "7850 kg/m3");
    CHECK(write_exact(degrees(22.5)) == "22.5 deg");
}
