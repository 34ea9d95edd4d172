#include "quantity/quantity.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <limits>
#include <string>

using namespace treadle;
using namespace treadle::quantity;

TEST_SUITE_BEGIN("published");

// Reproduces: NIST Special Publication 811 (2008), appendix B.8, conversion factors
// How read:   from memory, and recomputed from the exact definitions
// Tolerance:  half of the last printed digit
struct PrintedFactor {
    const char* where;
    double ours;
    double printed;
    double half_last_digit;
};
const std::array<PrintedFactor, 10> k_factors{{
    {"inch in mm (exact)", to_millimetres(inches(1.0)), 25.4, 0.0},
    {"foot in mm (exact)", to_millimetres(feet(1.0)), 304.8, 0.0},
    {"pound in kg (exact)", to_kilograms(pounds(1.0)), 0.45359237, 0.0},
    {"US ton-force in kN", to_kilonewtons(us_tons(1.0)), 8.896443, 0.5e-6},
    {"pound-force in N", to_newtons(pounds_force(1.0)), 4.448222, 0.5e-6},
    {"ksi in MPa", to_megapascals(ksi(1.0)), 6.894757, 0.5e-6},
    {"foot pound-force in J", to_joules(foot_pounds(1.0)), 1.355818, 0.5e-6},
    {"pound per foot in kg/m", to_kilograms_per_metre(pounds_per_foot(1.0)), 1.48816, 0.5e-5},
    {"square inch in mm2 (exact)", to_square_millimetres(inches(1.0) * inches(1.0)), 645.16, 1e-12},
    {"tonne-force in kN (exact)", to_kilonewtons(tonnes_force(1.0)), 9.80665, 1e-15},
}};

TEST_CASE("unit ratios reproduce NIST SP 811, appendix B") {
    for (const PrintedFactor& row : k_factors) {
        CAPTURE(std::string(row.where));
        CHECK(std::abs(row.ours - row.printed) <= row.half_last_digit);
    }
}

TEST_SUITE_END();
TEST_SUITE_BEGIN("property");

TEST_CASE("reading in the unit it was made in gives the number back") {
    for (const double v : {0.0, 0.0625, 1.375, 42.0, 480.0}) {
        CAPTURE(v);
        CHECK(to_inches(inches(v)) == doctest::Approx(v).epsilon(1e-15));
        CHECK(to_us_tons(us_tons(v)) == doctest::Approx(v).epsilon(1e-15));
        CHECK(to_ksi(ksi(v)) == doctest::Approx(v).epsilon(1e-15));
        CHECK(to_foot_pounds(foot_pounds(v)) == doctest::Approx(v).epsilon(1e-15));
        CHECK(to_pounds_per_foot(pounds_per_foot(v)) == doctest::Approx(v).epsilon(1e-15));
    }
}

TEST_CASE("products and ratios carry their dimension") {
    // 1 in x 1 in x 50 ksi = 50 kip = 25 US ton
    const Force f = inches(1.0) * inches(1.0) * ksi(50.0);
    CHECK(to_us_tons(f) == doctest::Approx(25.0).epsilon(1e-14));
    const double ratio = inches(3.0) / inches(2.0);
    CHECK(ratio == doctest::Approx(1.5));
    CHECK(to_millimetres(square_root(millimetres(3.0) * millimetres(12.0))) ==
          doctest::Approx(6.0));
    CHECK(larger(inches(1.0), millimetres(25.0)) == inches(1.0));
    CHECK(smaller(inches(1.0), millimetres(25.0)) == millimetres(25.0));
}

TEST_CASE("what is not a number is neither above nor below zero") {
    const Length nothing = millimetres(std::numeric_limits<double>::quiet_NaN());
    CHECK_FALSE(nothing > Length{});
    CHECK_FALSE(nothing <= Length{});
    CHECK_FALSE(is_finite(nothing));
}

TEST_SUITE_END();
