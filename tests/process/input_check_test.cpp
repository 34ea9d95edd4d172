#include "process/input_check.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace treadle;
using process::InputCheck;

namespace {

bool length_fails(Length value) {
    InputCheck check;
    check.length(value, "thickness");
    return check.failed();
}

} // namespace

TEST_CASE("nothing, less than nothing, not a number and absurd are refused by field") {
    for (const double mm : {0.0,
                            -1.0,
                            100'001.0,
                            std::numeric_limits<double>::infinity(),
                            -std::numeric_limits<double>::infinity(),
                            std::nan("")})
        CHECK(length_fails(millimetres(mm)));
    CHECK_FALSE(length_fails(millimetres(100'000.0)));
    CHECK_FALSE(length_fails(millimetres(1e-6)));

    InputCheck stress;
    stress.stress(megapascals(5001.0), "shear_strength");
    REQUIRE(stress.failed());
    CHECK(stress.refusal().field == "shear_strength");
    InputCheck force;
    force.force(kilonewtons(1'000'001.0), "capacity");
    CHECK(force.failed());
}

TEST_CASE("zero passes only where it is asked for") {
    InputCheck check;
    check.length_or_zero({}, "radius");
    CHECK_FALSE(check.failed());
    check.length_or_zero(millimetres(-1e-9), "radius");
    CHECK(check.failed());
}

TEST_CASE("angles and ratios keep their ends") {
    InputCheck check;
    check.angle_within(degrees(0.1), 0.0, 180.0, "angle").ratio(0.5, 0.5, "k");
    CHECK_FALSE(check.failed());
    for (const double angle : {0.0, 180.0, std::nan("")}) {
        InputCheck bad;
        bad.angle_within(degrees(angle), 0.0, 180.0, "angle");
        CHECK(bad.failed());
    }
    for (const double ratio : {0.0, 0.5001, std::nan("")}) {
        InputCheck bad;
        bad.ratio(ratio, 0.5, "k");
        CHECK(bad.failed());
    }
}

TEST_CASE("the first fault is the one that is told") {
    InputCheck check;
    check.length({}, "width").length({}, "thickness");
    CHECK(check.refusal().field == "width");
}

TEST_CASE("a hair from unit conversion is not below") {
    CHECK_FALSE(process::clearly_below(inches(1.5), 6.0 * inches(0.25)));
    CHECK_FALSE(process::clearly_below(millimetres(10.0 - 1e-9), millimetres(10.0)));
    CHECK(process::clearly_below(millimetres(9.999), millimetres(10.0)));
}
