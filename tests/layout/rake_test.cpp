#include <doctest/doctest.h>

#include <cmath>

#include "layout/rake.h"

using namespace treadle;
using layout::Slope;
using layout::StairTriangle;

TEST_CASE("steeper slopes: longer along the rail, longer pickets, longer bevels") {
    double along = 0.0;
    double length = 0.0;
    double bevel = -1.0;
    for (double rise = 0.5; rise < 40.0; rise += 0.5) {
        const Slope slope{inches(rise), inches(10)};
        const auto on_rail = layout::along_rail(inches(4), slope);
        const auto cut = layout::raked_cut({slope, inches(0.75), inches(30)});
        REQUIRE(on_rail.ok());
        REQUIRE(cut.ok());
        CHECK(to_inches(*on_rail) > along);
        CHECK(to_inches(cut->length) > length);
        CHECK(to_inches(cut->bevel_offset) > bevel);
        CHECK(to_inches(*on_rail) == doctest::Approx(4.0 * std::hypot(rise, 10.0) / 10.0));
        CHECK(to_inches(*layout::level_of(*on_rail, slope)) == doctest::Approx(4.0));
        along = to_inches(*on_rail);
        length = to_inches(cut->length);
        bevel = to_inches(cut->bevel_offset);
    }
}

TEST_CASE("the sphere of the triangle touches riser, tread and rail") {
    // Riser on x = 0, tread on y = 0, the rail's underside above the nosing line x/t + y/r = 1.
    for (const double r : {5.0, 7.0, 7.75}) {
        for (const double t : {9.0, 10.0, 11.0, 14.0}) {
            for (const double b : {0.0, 0.5, 1.2}) {
                const auto sphere = layout::triangle_sphere({inches(r), inches(t), inches(b)});
                REQUIRE(sphere.ok());
                const double radius = to_inches(*sphere) / 2.0;
                // distance of the centre (radius, radius) from r x + t y = t (r + b)
                const double distance =
                    std::abs(r * radius + t * radius - t * (r + b)) / std::hypot(r, t);
                CHECK(distance == doctest::Approx(radius).epsilon(1e-9));
            }
        }
    }
}

TEST_CASE("the highest rail lets just the limit in, and a higher one more") {
    const StairTriangle stair{inches(7), inches(11), {}};
    const auto highest = layout::highest_rail(stair, inches(6));
    REQUIRE(highest.ok());
    StairTriangle there = stair;
    there.rail_height = *highest;
    CHECK(to_inches(*layout::triangle_sphere(there)) == doctest::Approx(6.0));
    there.rail_height = *highest + inches(0.1);
    CHECK(*layout::triangle_sphere(there) > inches(6));
    const auto over = layout::triangle_working(there, inches(6));
    REQUIRE(over.ok());
    CHECK(over->note.find("passes") != std::string::npos);
}

TEST_CASE("slopes and triangles refuse by name") {
    CHECK(layout::slope_angle({Length{}, inches(10)}).refusal().field == "rise");
    CHECK(layout::slope_angle({inches(10), Length{}}).refusal().field == "run");
    CHECK(layout::slope_angle({inches(100), inches(1)}).refusal().field == "rise");
    CHECK(layout::along_rail(Length{}, {inches(7), inches(11)}).refusal().field == "gap");
    CHECK(layout::raked_cut({{inches(7), inches(11)}, Length{}, inches(28)}).refusal().field ==
          "picket");
    CHECK(layout::raked_cut({{inches(7), inches(11)}, inches(1), Length{}}).refusal().field ==
          "between_rails");
    CHECK(layout::triangle_sphere({inches(7), inches(11), inches(40)}).refusal().field ==
          "rail_height");
    CHECK(layout::triangle_sphere({inches(7), inches(11), -inches(1)}).refusal().field ==
          "rail_height");
    CHECK(layout::highest_rail({inches(7), inches(11), {}}, inches(4)).refusal().field == "limit");
    CHECK(layout::highest_rail({inches(2), inches(11), {}}, inches(6)).refusal().field == "limit");
    CHECK(layout::step_working(Length{}, {inches(1), inches(12)}).refusal().field == "panel");
}
