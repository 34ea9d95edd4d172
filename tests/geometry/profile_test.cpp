#include "geometry/profile.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

using namespace treadle;
using geometry::ProfileLine;

namespace {
geometry::ConvexOutline square() {
    return geometry::convex_outline({{-1, -1}, {1, -1}, {1, 1}, {-1, 1}});
}
} // namespace

TEST_CASE("a line's distance from an outline") {
    CHECK(geometry::distance_mm({{3, -5}, {3, 5}}, square()) == doctest::Approx(2.0));
    CHECK(geometry::distance_mm({{2, 2}, {5, 2}}, square()) == doctest::Approx(std::sqrt(2.0)));
    // Across the corner: x + y = 4 passes the corner (1, 1) at sqrt 2.
    CHECK(geometry::distance_mm({{4, 0}, {0, 4}}, square()) == doctest::Approx(std::sqrt(2.0)));
}

TEST_CASE("a line that crosses, lies inside or touches has no distance") {
    CHECK(geometry::distance_mm({{-5, 0}, {5, 0.5}}, square()) == 0.0);
    CHECK(geometry::distance_mm({{-0.2, 0}, {0.3, 0.1}}, square()) == 0.0);
    CHECK(geometry::distance_mm({{1, 1}, {4, 4}}, square()) == 0.0);
    CHECK(geometry::distance_mm({{0, 3}, {3, 0}}, square()) > 0.0);
}

TEST_CASE("the quick gap never claims more than the distance") {
    for (int i = 0; i < 200; ++i) {
        const double a = i * 0.37;
        const ProfileLine line{{4 * std::cos(a), 3 * std::sin(a)},
                               {std::cos(2 * a) * 6, 5 - a / 20}};
        CHECK(geometry::least_gap_mm(line, square()) <=
              geometry::distance_mm(line, square()) + 1e-12);
    }
}

TEST_CASE("a folded strip turns by its folds and keeps its straight lengths") {
    geometry::FoldedStrip strip;
    const double quarter = std::numbers::pi / 2.0;
    geometry::fold_strip({{10.0, 14.0, 3.0, quarter}}, 34.0, 1.0, strip);
    // 10 along, a quarter of radius 3 upwards, 20 up: ends at (13, 1 + 3 + 20).
    CHECK(strip.lines.front().to.x_mm == doctest::Approx(10.0));
    CHECK(strip.lines.back().to.x_mm == doctest::Approx(13.0));
    CHECK(strip.lines.back().to.y_mm == doctest::Approx(24.0));
    CHECK(strip.folds.front() == 0);
    CHECK(strip.folds.back() == 1);
    geometry::fold_strip({{10.0, 14.0, 3.0, -quarter}}, 34.0, 1.0, strip);
    CHECK(strip.lines.back().to.y_mm == doctest::Approx(1.0 - 3.0 - 20.0));
}
