#include "process/bar_length.h"

#include <doctest/doctest.h>

#include <numbers>
#include <string>

using namespace treadle;
using process::Face;

namespace {

process::Ring ring(Face face, double diameter, double depth, double arc = 360.0) {
    return {millimetres(diameter),
            face,
            millimetres(depth),
            millimetres(depth / 2.0),
            degrees(arc),
            {},
            false};
}

std::string field(const base::Result<Working>& working) {
    return working.ok() ? "" : working.refusal().field;
}

double length_mm(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return quantity::to_millimetres(*std::get_if<Length>(&working->result.value));
}

} // namespace

TEST_CASE("inside and outside name the same ring") {
    CHECK(length_mm(process::ring_length_working(ring(Face::inside, 300, 20))) ==
          doctest::Approx(length_mm(process::ring_length_working(ring(Face::outside, 340, 20)))));
}

TEST_CASE("a ring keeps an inside, an arc stays within one turn") {
    CHECK(field(process::ring_length_working(ring(Face::outside, 40, 20))) == "outside");
    CHECK(field(process::ring_length_working(ring(Face::inside, 300, 20, 360.1))) == "arc");
    CHECK(field(process::ring_length_working(ring(Face::inside, 300, 20, 0))) == "arc");
    CHECK(field(process::ring_diameter_working(ring(Face::inside, 0, 20))) == "inside");
}

TEST_CASE("tight rings and the hard way are warned of on the far side of their limits") {
    // Inside radius 5 x 20 = 100 mm; 5 % strain at inside diameter 19 x 20 = 380 mm.
    CHECK_FALSE(process::ring_length_working(ring(Face::inside, 199, 20))->note.empty());
    CHECK(process::ring_length_working(ring(Face::inside, 200, 20))->note.empty());
    process::Ring hard = ring(Face::inside, 379, 20);
    hard.hard_way = true;
    CHECK(process::ring_length_working(hard)->note.find("Warning") == 0);
    hard.diameter = millimetres(381);
    CHECK(process::ring_length_working(hard)->note.empty());
}

TEST_CASE("arcs of a ring add up to it") {
    double sum = 0.0;
    for (const double arc : {10.0, 80.0, 150.0, 120.0})
        sum += length_mm(process::ring_length_working(ring(Face::inside, 300, 20, arc)));
    CHECK(sum == doctest::Approx(std::numbers::pi * 320.0));
}

TEST_CASE("a hook warns under one bar of inside radius, and is refused by name") {
    const auto hook = [](double bar, double inside, double angle) {
        return process::hook_length_working(
            {millimetres(bar), millimetres(inside), {}, {}, degrees(angle)});
    };
    CHECK(hook(10, 19.9, 180)->note.find("Warning") == 0);
    CHECK(hook(10, 20, 180)->note.empty());
    CHECK(field(hook(0, 20, 180)) == "bar");
    CHECK(field(hook(10, 0, 180)) == "inside_diameter");
    CHECK(field(hook(10, 20, 361)) == "angle");
}
