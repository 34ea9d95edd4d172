#include "quantity/input_limits.h"

#include <doctest/doctest.h>

#include <limits>
#include <string>

using namespace treadle;
using namespace treadle::quantity;

TEST_CASE("sizes are above zero, finite and below 100 m; places may be zero") {
    const double inf = std::numeric_limits<double>::infinity();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK_FALSE(size_fault(inches(0.5), "a"));
    CHECK_FALSE(place_fault(Length{}, "a"));
    for (const double bad : {-1.0, inf, -inf, nan, 100000.0}) {
        CAPTURE(bad);
        REQUIRE(size_fault(millimetres(bad), "a"));
        CHECK(size_fault(millimetres(bad), "a")->field == "a");
        CHECK(place_fault(millimetres(bad), "a"));
    }
    CHECK(size_fault(Length{}, "a"));
    CHECK_FALSE(size_fault(millimetres(99999.9), "a"));
}

TEST_CASE("counts and fractions keep to their range") {
    CHECK_FALSE(count_fault(1, 1, 3, "n"));
    CHECK_FALSE(count_fault(3, 1, 3, "n"));
    CHECK(count_fault(0, 1, 3, "n"));
    CHECK(count_fault(4, 1, 3, "n"));
    for (const int good : {2, 4, 8, 16, 32, 64})
        CHECK_FALSE(denominator_fault(good, "d"));
    for (const int bad : {-16, 0, 1, 3, 10, 128})
        CHECK(denominator_fault(bad, "d"));
}

TEST_CASE("names are clean and short, counted in characters") {
    CHECK_FALSE(text_fault("", "name"));
    CHECK(text_fault(" ", "name", Presence::required));
    CHECK(text_fault("\x01", "name"));
    CHECK_FALSE(text_fault(std::string(200, 'a'), "name"));
    CHECK(text_fault(std::string(201, 'a'), "name"));
    std::string wide;
    for (int i = 0; i < 200; ++i)
        wide += "é";
    CHECK_FALSE(text_fault(wide, "name"));
}

TEST_CASE("the path grows as a refusal travels up") {
    const base::Refusal fault{"size", "r", "d"};
    CHECK(inside("parts", 3, inside("operations", 2, inside("hole", fault))).field ==
          "parts[3].operations[2].hole.size");
    CHECK(item("legs", 1) == "legs[1]");
}
