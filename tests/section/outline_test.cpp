// Areas by a second way: the outline as a fine polygon, and the shoelace formula.

#include "section/section.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstddef>
#include <numbers>
#include <vector>

using namespace treadle;
using section::Section;
using section::Shape;

namespace {

struct Point {
    double x = 0.0;
    double y = 0.0;
};
using Outline = std::vector<Point>;

double enclosed(const Outline& outline) {
    double twice = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point& a = outline[i];
        const Point& b = outline[(i + 1) % outline.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return 0.5 * std::abs(twice);
}

void arc(Outline& outline, Point centre, double radius, double from_deg, double to_deg) {
    const int steps = 8000;
    for (int i = 0; i <= steps; ++i) {
        const double at = (from_deg + (to_deg - from_deg) * i / steps) * std::numbers::pi / 180.0;
        outline.push_back({centre.x + radius * std::cos(at), centre.y + radius * std::sin(at)});
    }
}

Outline rounded_box(double width, double height, double radius) {
    Outline outline;
    arc(outline, {width - radius, height - radius}, radius, 0, 90);
    arc(outline, {radius, height - radius}, radius, 90, 180);
    arc(outline, {radius, radius}, radius, 180, 270);
    arc(outline, {width - radius, radius}, radius, 270, 360);
    return outline;
}

Outline angle_outline(double a, double b, double t, double root) {
    const double toe = root / 2.0;
    Outline outline{{0, 0}, {a, 0}};
    arc(outline, {a - toe, t - toe}, toe, 0, 90);
    arc(outline, {t + root, t + root}, root, 270, 180);
    arc(outline, {t - toe, b - toe}, toe, 0, 90);
    outline.push_back({0, b});
    return outline;
}

/// Back of the web on x = 0; the inner flange faces rise 1 in 6 towards the web.
Outline channel_outline(double depth, double flange, double web, double mean) {
    const double overhang = flange - web;
    const double toe = mean - overhang / 12.0;
    const double root = mean + overhang / 12.0;
    return {{0, 0},
            {flange, 0},
            {flange, toe},
            {web, root},
            {web, depth - root},
            {flange, depth - toe},
            {flange, depth},
            {0, depth}};
}

bool same_area(const Section& section, double polygon) {
    const double ours = quantity::to_square_millimetres(area(section));
    // 8000 chords a turn leave about 1e-7 of a circle.
    return std::abs(ours - polygon) <= 1e-6 * polygon;
}

Section make(Shape shape, double width, double height, double thickness) {
    Section section;
    section.shape = shape;
    section.width = millimetres(width);
    section.height = millimetres(height);
    section.thickness = millimetres(thickness);
    return section;
}

} // namespace

TEST_SUITE("geometry") {

    TEST_CASE("flat, plate, square and round") {
        CHECK(same_area(make(Shape::flat, 50, 0, 5), enclosed({{0, 0}, {50, 0}, {50, 5}, {0, 5}})));
        CHECK(
            same_area(make(Shape::plate, 90, 0, 7), enclosed({{0, 0}, {90, 0}, {90, 7}, {0, 7}})));
        CHECK(same_area(make(Shape::square, 12, 0, 0), enclosed(rounded_box(12, 12, 0))));
        Outline circle;
        arc(circle, {}, 8, 0, 360);
        CHECK(same_area(make(Shape::round, 16, 0, 0), enclosed(circle)));
    }

    TEST_CASE("pipe is the outer circle less the bore") {
        Outline outer;
        Outline bore;
        arc(outer, {}, 30, 0, 360);
        arc(bore, {}, 26, 0, 360);
        CHECK(same_area(make(Shape::pipe, 60, 0, 4), enclosed(outer) - enclosed(bore)));
    }

    TEST_CASE("sharp angle with unequal legs") {
        const Outline outline{{0, 0}, {80, 0}, {80, 7}, {7, 7}, {7, 60}, {0, 60}};
        CHECK(same_area(make(Shape::angle, 80, 60, 7), enclosed(outline)));
    }

    TEST_CASE("angle with root and toe radii") {
        Section section = make(Shape::angle, 125, 75, 8);
        section.root_radius = millimetres(11);
        CHECK(same_area(section, enclosed(angle_outline(125, 75, 8, 11))));
    }

    TEST_CASE("channel with sloped flanges, and the root of its flange") {
        Section section = make(Shape::channel, 40, 100, 6);
        section.flange_thickness = millimetres(8);
        const Outline outline = channel_outline(100, 40, 6, 8);
        CHECK(same_area(section, enclosed(outline)));
        const double root =
            quantity::to_millimetres(thickness_at(section, section::Face::flange_top));
        CHECK(std::abs(root - outline[3].y) < 1e-12);
    }

    TEST_CASE("square tube, sharp and rounded") {
        Section section = make(Shape::square_tube, 60, 40, 4);
        CHECK(same_area(section,
                        enclosed(rounded_box(60, 40, 0)) - enclosed(rounded_box(52, 32, 0))));
        section.root_radius = millimetres(8);
        CHECK(same_area(section,
                        enclosed(rounded_box(60, 40, 8)) - enclosed(rounded_box(52, 32, 4))));
    }

} // TEST_SUITE
