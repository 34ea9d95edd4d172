#include "geometry/notch.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <limits>
#include <string>

using namespace treadle;
using namespace treadle::geometry;
using quantity::to_inches;

namespace {

NotchOutline rectangle(NotchPlace place, double width_in, double depth_in) {
    return {NotchShape::rectangle, place, inches(width_in), inches(depth_in), Angle{}};
}
NotchOutline vee(double depth_in, double included_deg) {
    return {NotchShape::vee, NotchPlace::edge, Length{}, inches(depth_in), degrees(included_deg)};
}

} // namespace

TEST_SUITE_BEGIN("derived");

// Worked by hand from plane geometry; tolerance half of the last digit written.
TEST_CASE("length actually cut") {
    struct Row {
        const char* where;
        NotchOutline notch;
        double cut_in;
        double half_last_digit;
    };
    const std::array<Row, 6> rows{{
        {"edge 2 wide x 1.5 deep: 2 + 2 x 1.5", rectangle(NotchPlace::edge, 2.0, 1.5), 5.0, 1e-12},
        {"corner 1.5 x 2", rectangle(NotchPlace::corner, 1.5, 2.0), 3.5, 1e-12},
        {"90 deg V 1 deep: 2 / cos 45", vee(1.0, 90.0), 2.8284, 0.5e-4},
        {"60 deg V 1 deep: 2 / cos 30", vee(1.0, 60.0), 2.3094, 0.5e-4},
        {"cope of an angle's leg, 1 deep x 2-3/4 long: two sides",
         rectangle(NotchPlace::corner, 2.75, 1.0),
         3.75,
         1e-12},
        {"90 deg V to the far leg's inside face, 2 - 1/4 deep: 2 x 1.75 / cos 45",
         vee(1.75, 90.0),
         4.9497,
         0.5e-4},
    }};
    for (const Row& row : rows) {
        CAPTURE(std::string(row.where));
        CHECK(std::abs(to_inches(cut_length(row.notch)) - row.cut_in) <= row.half_last_digit);
    }
}

TEST_CASE("width at the edge") {
    CHECK(to_inches(mouth(vee(1.0, 60.0))) == doctest::Approx(1.1547).epsilon(5e-5)); // 2 tan 30
    CHECK(to_inches(mouth(vee(1.75, 90.0))) == doctest::Approx(3.5)); // 2 x 1.75 tan 45
    CHECK(mouth(rectangle(NotchPlace::edge, 2.0, 1.5)) == inches(2.0));
}

TEST_SUITE_END();
TEST_SUITE_BEGIN("property");

TEST_CASE("a wider V never cuts less, and always more than twice its depth") {
    double last = 0.0;
    for (int angle = 1; angle < 180; ++angle) {
        const double cut = to_inches(cut_length(vee(1.0, angle)));
        REQUIRE(cut > 2.0);
        REQUIRE(cut > last);
        last = cut;
    }
}

TEST_CASE("notches without a size are refused at the field") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double inf = std::numeric_limits<double>::infinity();
    for (const double bad : {0.0, -1.0, nan, inf}) {
        CHECK(checked(rectangle(NotchPlace::edge, 1.0, bad)).refusal().field == "depth");
        CHECK(checked(rectangle(NotchPlace::corner, bad, 1.0)).refusal().field == "width");
        CHECK(checked(vee(bad, 90.0)).refusal().field == "depth");
    }
    for (const double bad : {0.0, -10.0, 180.0, 200.0, nan, inf})
        CHECK(checked(vee(1.0, bad)).refusal().field == "angle");
    CHECK(checked(vee(1.0, 90.0)).ok());
    CHECK(checked(rectangle(NotchPlace::edge, 1.0, 1.0)).ok());
}

TEST_SUITE_END();
