// An independent method: bends drawn point by point, measured as polygons.

#include "process/blank.h"

#include <algorithm>
#include <cmath>

#include "evidence_rows.h"
#include "published/rows.h"

using namespace treadle;
using process::BlankMethod;

namespace {

struct Point {
    double x, y;
};

/// A bend about (0, 0) starting at the bottom, turning anti-clockwise.
Point on_arc(double radius, double turned) {
    return {radius * std::sin(turned), -radius * std::cos(turned)};
}

double polygon_length(double radius, double angle, int steps) {
    double sum = 0.0;
    for (int i = 0; i < steps; ++i) {
        const Point a = on_arc(radius, angle * i / steps);
        const Point b = on_arc(radius, angle * (i + 1) / steps);
        sum += std::hypot(b.x - a.x, b.y - a.y);
    }
    return sum;
}

/// How far the outside of the bend reaches past the start of the arc, along the first leg: up to
/// its own apex (where the two outer faces meet) for obtuse openings, else to the widest point.
double reach(double radius, double angle) {
    if (angle < 0.5 * 3.14159265358979) {
        // First face y = -radius; second face through `end`, direction (cos, sin) of the angle.
        const Point end = on_arc(radius, angle);
        const double along = (-radius - end.y) / std::sin(angle);
        return end.x + along * std::cos(angle);
    }
    double widest = 0.0;
    for (int i = 0; i <= 20000; ++i)
        widest = std::max(widest, on_arc(radius, angle * i / 20000).x);
    return widest;
}

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("allowance, setback and deduction agree with bends drawn point by point") {
        int rows = 0;
        for (const double angle_deg : {5.0, 30.0, 60.0, 89.0, 91.0, 120.0, 150.0, 179.0}) {
            for (const double r : {0.5, 3.0, 20.0}) {
                for (const double k : {0.25, 0.42, 0.5}) {
                    const double t = 4.0;
                    const double angle = angle_deg / 180.0 * 3.14159265358979;
                    const auto f =
                        process::bend_figures({millimetres(t), millimetres(r), degrees(angle_deg)},
                                              {BlankMethod::k_factor, k});
                    REQUIRE(f.ok());
                    CAPTURE(angle_deg);
                    CAPTURE(r);
                    CAPTURE(k);
                    const double arc = polygon_length(r + k * t, angle, 20000);
                    const double setback = reach(r + t, angle);
                    CHECK(std::abs(quantity::to_millimetres(f->allowance) - arc) < 1e-5);
                    CHECK(std::abs(quantity::to_millimetres(f->setback) - setback) < 1e-5);
                    CHECK(std::abs(quantity::to_millimetres(f->deduction) - (2 * setback - arc)) <
                          2e-5);
                    ++rows;
                }
            }
        }
        CHECK(rows == 72);
        test::count_rows("cross-check", 72, "bend.allowance");
        test::count_rows("cross-check", 72, "bend.setback");
        test::count_rows("cross-check", 72, "bend.deduction");
    }

} // TEST_SUITE
