#include "geometry/hole.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <limits>
#include <set>
#include <string>

using namespace treadle;
using namespace treadle::geometry;
using quantity::to_inches;
using quantity::to_millimetres;

namespace {

HoleOutline hole(HoleShape shape, double size_in, double size2_in = 0.0) {
    return {shape, inches(size_in), inches(size2_in)};
}

constexpr std::array<HoleShape, 6> k_shapes{HoleShape::round,
                                            HoleShape::square,
                                            HoleShape::rectangle,
                                            HoleShape::obround,
                                            HoleShape::hexagon,
                                            HoleShape::perimeter};

} // namespace

TEST_SUITE_BEGIN("derived");

// Worked by hand from plane geometry; tolerance half of the last digit written.
TEST_CASE("perimeters") {
    struct Row {
        const char* where;
        HoleOutline outline;
        double perimeter_in;
        double half_last_digit;
    };
    const std::array<Row, 6> rows{{
        {"square 1: 4 x 1", hole(HoleShape::square, 1.0), 4.0, 1e-12},
        {"rectangle 1 x 2: 2 (1 + 2)", hole(HoleShape::rectangle, 1.0, 2.0), 6.0, 1e-12},
        {"obround 13/16 x 1-1/8: pi 0.8125 + 2 x 0.3125 = 2.5525 + 0.625",
         hole(HoleShape::obround, 0.8125, 1.125),
         3.1775,
         0.5e-4},
        {"hexagon 1 across flats: 2 sqrt 3", hole(HoleShape::hexagon, 1.0), 3.4641, 0.5e-4},
        {"round 1: pi", hole(HoleShape::round, 1.0), 3.14159, 0.5e-5},
        {"given edge", hole(HoleShape::perimeter, 7.5), 7.5, 1e-12},
    }};
    for (const Row& row : rows) {
        CAPTURE(std::string(row.where));
        CHECK(std::abs(to_inches(perimeter(row.outline)) - row.perimeter_in) <=
              row.half_last_digit);
    }
}

TEST_CASE("the circle round an outline") {
    CHECK(to_inches(circumscribed(hole(HoleShape::hexagon, 1.0))) ==
          doctest::Approx(1.1547).epsilon(5e-5)); // 2 / sqrt 3
    CHECK(to_inches(circumscribed(hole(HoleShape::square, 1.0))) ==
          doctest::Approx(1.41421).epsilon(5e-6)); // sqrt 2
    CHECK(to_inches(circumscribed(hole(HoleShape::rectangle, 3.0, 4.0))) ==
          doctest::Approx(5.0)); // 3-4-5 triangle
    CHECK(circumscribed(hole(HoleShape::obround, 0.8125, 1.125)) == inches(1.125));
    CHECK(circumscribed(hole(HoleShape::round, 0.5)) == inches(0.5));
}

TEST_CASE("areas") {
    const auto area_in2 = [](const HoleOutline& h) {
        return quantity::to_square_inches(hole_area(h));
    };
    CHECK(area_in2(hole(HoleShape::round, 2.0)) == doctest::Approx(3.14159).epsilon(2e-6));
    CHECK(area_in2(hole(HoleShape::square, 2.0)) == doctest::Approx(4.0));
    CHECK(area_in2(hole(HoleShape::rectangle, 1.0, 2.0)) == doctest::Approx(2.0));
    // pi/4 + 1 x 1
    CHECK(area_in2(hole(HoleShape::obround, 1.0, 2.0)) == doctest::Approx(1.785398).epsilon(1e-6));
    // sqrt(3)/2
    CHECK(area_in2(hole(HoleShape::hexagon, 1.0)) == doctest::Approx(0.866025).epsilon(1e-6));
    CHECK(hole_area(hole(HoleShape::perimeter, 5.0)) == Area{});
}

TEST_SUITE_END();
TEST_SUITE_BEGIN("property");

TEST_CASE("an obround as long as it is wide is a round hole, a rectangle of equal sides a square") {
    const HoleOutline round = hole(HoleShape::round, 0.75);
    const HoleOutline short_slot = hole(HoleShape::obround, 0.75, 0.75);
    CHECK(perimeter(short_slot) == perimeter(round));
    CHECK(hole_area(short_slot) == hole_area(round));
    CHECK(to_inches(perimeter(hole(HoleShape::rectangle, 0.75, 0.75))) ==
          doctest::Approx(to_inches(perimeter(hole(HoleShape::square, 0.75)))));
}

TEST_CASE("an outline never outreaches its circle, nor is it narrower than its least width") {
    for (const HoleShape shape : k_shapes) {
        const HoleOutline outline = hole(shape, 0.5, 1.25);
        const HalfExtent half = half_extent(outline, false);
        CAPTURE(std::string(hole_shape_word(shape)));
        CHECK(2.0 * half.along <= circumscribed(outline) + millimetres(1e-9));
        CHECK(half.across <= half.along);
        CHECK(2.0 * half.across >= least_width(outline));
        const HalfExtent turned = half_extent(outline, true);
        CHECK(turned.along == half.across);
        CHECK(turned.across == half.along);
    }
}

TEST_CASE("of a hole known by its edge alone nothing is assumed in its favour") {
    const HoleOutline edge_only = hole(HoleShape::perimeter, 6.0);
    CHECK(least_width(edge_only) == Length{});
    // A slit of no width has half its edge as length: the furthest any outline reaches.
    CHECK(circumscribed(edge_only) == inches(3.0));
    CHECK(least_width(hole(HoleShape::rectangle, 2.0, 1.0)) == inches(1.0));
}

TEST_CASE("holes without a size are refused at the field") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double inf = std::numeric_limits<double>::infinity();
    for (const HoleShape shape : k_shapes)
        for (const double bad : {0.0, -1.0, nan, inf}) {
            REQUIRE_FALSE(checked(hole(shape, bad, 1.0)));
            CHECK(checked(hole(shape, bad, 1.0)).refusal().field == "size");
        }
    for (const HoleShape shape : {HoleShape::rectangle, HoleShape::obround})
        for (const double bad : {0.0, -1.0, nan, inf})
            CHECK(checked(hole(shape, 0.5, bad)).refusal().field == "size2");
    CHECK(checked(hole(HoleShape::obround, 1.0, 0.9)).refusal().field == "size2");
    CHECK(checked(hole(HoleShape::obround, 1.0, 1.0)).ok());
    CHECK(checked(hole(HoleShape::rectangle, 1.0, 0.5)).ok());
    CHECK(checked(hole(HoleShape::round, 1.0)).ok());
}

TEST_CASE("every shape has its own word") {
    std::set<std::string> words;
    for (const HoleShape shape : k_shapes)
        words.insert(hole_shape_word(shape));
    CHECK(words.size() == k_shapes.size());
}

TEST_SUITE_END();
