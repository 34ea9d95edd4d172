// Strokes of a hatched fill: hatch.cpp. Places worked by hand: a stroke is on x - y = n * pitch.

#include "sheet/hatch.h"

#include <doctest/doctest.h>

using namespace treadle;
using quantity::to_millimetres;
using sheet::Spot;
using sheet::Stroke;

namespace {

void check_stroke(const Stroke& stroke, Spot from, Spot to) {
    CHECK(to_millimetres(stroke.from.x) == doctest::Approx(from.x));
    CHECK(to_millimetres(stroke.from.y) == doctest::Approx(from.y));
    CHECK(to_millimetres(stroke.to.x) == doctest::Approx(to.x));
    CHECK(to_millimetres(stroke.to.y) == doctest::Approx(to.y));
}

std::vector<Spot> box(double left, double right, double high) {
    return {{left, 0.0}, {right, 0.0}, {right, high}, {left, high}};
}

} // namespace

TEST_CASE("strokes rise from side to side of a square, none at its corners") {
    const auto strokes = sheet::hatch_of(box(0.0, 10.0, 10.0), 5.0);
    REQUIRE(strokes.size() == 3);
    check_stroke(strokes[0], {0.0, 5.0}, {5.0, 10.0});
    check_stroke(strokes[1], {0.0, 0.0}, {10.0, 10.0});
    check_stroke(strokes[2], {5.0, 0.0}, {10.0, 5.0});
}

TEST_CASE("a stroke goes on in the shape beside it") {
    const auto left = sheet::hatch_of(box(0.0, 10.0, 4.0), 3.0);
    const auto right = sheet::hatch_of(box(10.0, 20.0, 4.0), 3.0);
    // Through the border at x = 10 goes x - y = 9, at y = 1.
    int through = 0;
    for (const Stroke& a : left)
        for (const Stroke& b : right)
            if (to_millimetres(a.to.x) == doctest::Approx(10.0) && a.to.y == b.from.y) {
                ++through;
                CHECK(to_millimetres(a.to.y) == doctest::Approx(1.0));
                CHECK(to_millimetres(b.from.x) == doctest::Approx(10.0));
            }
    CHECK(through == 1);
}

TEST_CASE("a stroke stops where the shape has a gap") {
    // Two posts on a sill: the stroke x - y = 0 leaves the left one at 4 and meets the right
    // one at 6.
    const std::vector<Spot> shape = {{0.0, 0.0},
                                     {10.0, 0.0},
                                     {10.0, 10.0},
                                     {6.0, 10.0},
                                     {6.0, 2.0},
                                     {4.0, 2.0},
                                     {4.0, 10.0},
                                     {0.0, 10.0}};
    const auto on_the_diagonal = sheet::hatch_of(shape, 20.0);
    REQUIRE(on_the_diagonal.size() == 2);
    check_stroke(on_the_diagonal[0], {0.0, 0.0}, {4.0, 4.0});
    check_stroke(on_the_diagonal[1], {6.0, 6.0}, {10.0, 10.0});
}

TEST_CASE("no pitch and no shape give no strokes") {
    CHECK(sheet::hatch_of(box(0.0, 10.0, 10.0), 0.0).empty());
    CHECK(sheet::hatch_of(box(0.0, 10.0, 10.0), 1e-9).empty());
    CHECK(sheet::hatch_of({{0.0, 0.0}, {10.0, 0.0}}, 1.0).empty());
}
