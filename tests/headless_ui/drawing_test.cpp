#include "ui/widgets/polygon.h"
#include "ui/widgets/rect.h"

#include <doctest/doctest.h>

#include <cmath>

using treadle::ui::PlanePoint;
using treadle::ui::Rect;
using treadle::ui::triangles_of;

namespace {

double area_of(const std::vector<PlanePoint>& points) {
    double twice = 0;
    for (const auto& [a, b, c] : triangles_of(points)) {
        const PlanePoint& p = points[static_cast<std::size_t>(a)];
        const PlanePoint& q = points[static_cast<std::size_t>(b)];
        const PlanePoint& r = points[static_cast<std::size_t>(c)];
        twice += std::fabs((q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y));
    }
    return twice / 2;
}

} // namespace

TEST_CASE("triangles cover a square, an angle and a channel, whichever way they turn") {
    const std::vector<PlanePoint> square{{0, 0}, {4, 0}, {4, 4}, {0, 4}};
    CHECK(area_of(square) == doctest::Approx(16));
    // 6 by 6 less 5 by 5
    std::vector<PlanePoint> angle{{0, 0}, {6, 0}, {6, 1}, {1, 1}, {1, 6}, {0, 6}};
    CHECK(area_of(angle) == doctest::Approx(11));
    // 8 by 4 less 6 by 3
    const std::vector<PlanePoint> channel{
        {0, 0}, {8, 0}, {8, 4}, {7, 4}, {7, 1}, {1, 1}, {1, 4}, {0, 4}};
    CHECK(area_of(channel) == doctest::Approx(14));
    std::vector<PlanePoint> other_way(angle.rbegin(), angle.rend());
    CHECK(area_of(other_way) == doctest::Approx(11));
}

TEST_CASE("corners on a straight side and doubled corners do not disturb the filling") {
    const std::vector<PlanePoint> points{{0, 0}, {2, 0}, {4, 0}, {4, 0}, {4, 4}, {0, 4}};
    CHECK(area_of(points) == doctest::Approx(16));
}

TEST_CASE("an outline that is none, or crosses itself, ends without triangles that are wrong") {
    CHECK(triangles_of(std::vector<PlanePoint>{}).empty());
    CHECK(triangles_of(std::vector<PlanePoint>{{0, 0}, {1, 1}}).empty());
    const std::vector<PlanePoint> bow{{0, 0}, {4, 4}, {4, 0}, {0, 4}};
    CHECK(triangles_of(bow).size() <= 2);
}

TEST_CASE("cutting a rectangle loses nothing but the gaps") {
    Rect page{10, 20, 100, 60};
    const Rect top = page.cut_top(15, 5);
    CHECK(top == Rect{10, 20, 100, 15});
    CHECK(page == Rect{10, 40, 100, 40});
    const Rect right = page.cut_right(30, 10);
    CHECK(right == Rect{80, 40, 30, 40});
    CHECK(page == Rect{10, 40, 60, 40});
    CHECK(page.cut_left(1000).w == 60);
    CHECK(page.is_empty());
    CHECK(Rect{0, 0, 100, 10}.column(2, 3, 5) == Rect{70, 0, 30, 10});
}
