// saddle.cpp and saddle_blank.cpp.

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "layout/saddle.h"

using namespace treadle;
using layout::SaddleEdge;
using layout::SaddleJoint;

namespace {

SaddleJoint joint(double branch, double run, double angle = 90.0, double offset = 0.0) {
    return {inches(branch), inches(0.1), inches(run), degrees(angle), inches(offset), {}};
}
std::string field(const SaddleJoint& j) {
    const auto shape = layout::saddle_shape(j);
    return shape.ok() ? "" : shape.refusal().field;
}

} // namespace

TEST_CASE("no ordinate lies behind the long point or beyond the depth, and the sides mirror") {
    for (const double angle : {90.0, 75.0, 60.0, 45.0, 30.0, 15.0}) {
        for (const double branch : {0.5, 1.0, 1.5, 1.9}) {
            const auto made = layout::saddle_template(joint(branch, 1.9, angle), 24);
            REQUIRE(made.ok());
            CAPTURE(angle);
            CAPTURE(branch);
            double least = 1e9;
            for (std::size_t i = 0; i < made->ordinates.size(); ++i) {
                CHECK(made->ordinates[i] >= Length{});
                CHECK(made->ordinates[i] <= made->shape.depth + millimetres(1e-9));
                CHECK(to_inches(made->ordinates[i]) ==
                      doctest::Approx(to_inches(made->ordinates[(24 - i) % 24])));
                least = std::fmin(least, to_inches(made->ordinates[i]));
            }
            CHECK(to_inches(made->ordinates[0]) == doctest::Approx(to_inches(made->shape.throat)));
            CHECK(least < 0.1); // a station lies near the long point
        }
    }
}

TEST_CASE("a thicker branch sinks deeper; on a larger run it sinks less") {
    double before = 0.0;
    for (double branch = 0.25; branch <= 2.375; branch += 0.125) {
        const auto shape = layout::saddle_shape(joint(branch, 2.375));
        REQUIRE(shape.ok());
        CHECK(to_inches(shape->throat) > before);
        before = to_inches(shape->throat);
    }
    for (double run = 2.5; run < 12.0; run += 0.5) {
        const auto shape = layout::saddle_shape(joint(2.375, run));
        CHECK(to_inches(shape->throat) < before);
        before = to_inches(shape->throat);
    }
}

TEST_CASE("the sweep for an offset meets the closed form where there is next to none") {
    for (const double angle : {90.0, 60.0, 45.0, 30.0}) {
        for (const double branch : {0.6, 1.2, 1.8}) {
            const auto closed = layout::saddle_shape(joint(branch, 1.9, angle));
            const auto swept = layout::saddle_shape(joint(branch, 1.9, angle, 1e-9));
            REQUIRE(closed.ok());
            REQUIRE(swept.ok());
            CAPTURE(angle);
            CAPTURE(branch);
            CHECK(to_inches(swept->cut_back) ==
                  doctest::Approx(to_inches(closed->cut_back)).epsilon(1e-7));
            CHECK(to_inches(swept->depth) ==
                  doctest::Approx(to_inches(closed->depth)).epsilon(1e-7));
        }
    }
}

TEST_CASE("saddles refuse by name") {
    CHECK(field(joint(0.0, 1.9)) == "branch_od");
    CHECK(field(joint(1.9, 0.0)) == "run_od");
    CHECK(field(joint(2.0, 1.9)) == "branch_od");
    CHECK(field(joint(1.5, 1.9, 90, 0.21)) == "offset");
    CHECK(field(joint(1.5, 1.9, 90, 0.2)).empty()); // exactly: 0.75 + 0.2 = 0.95
    CHECK(field(joint(1.5, 1.9, 91)) == "angle");
    CHECK(field(joint(1.5, 1.9, 5)) == "angle");
    SaddleJoint bore = joint(1.5, 1.9);
    bore.edge = SaddleEdge::bore;
    CHECK(field(bore).empty());
    bore.branch_wall = Length{};
    CHECK(field(bore) == "branch_wall");
    bore.branch_wall = inches(0.75);
    CHECK(field(bore) == "branch_wall");
    CHECK(layout::saddle_template(joint(1.5, 1.9), 3).refusal().field == "ordinates");
    CHECK(layout::saddle_template(joint(1.5, 1.9), 16, -inches(1)).refusal().field == "paper");
}

TEST_CASE("knife edges are said") {
    const auto note = [](const SaddleJoint& j) {
        return layout::ordinate_working(j, *layout::saddle_shape(j)).note;
    };
    CHECK(note(joint(1.9, 1.9)).find("Knife") != std::string::npos);
    CHECK(note(joint(0.9, 1.9)).find("Knife") == std::string::npos);
    CHECK(note(joint(0.9, 1.9, 90, 0.45)).find("Knife") != std::string::npos);
}

TEST_CASE("blanks and dies refuse by name") {
    layout::SaddleBlank blank{joint(1.0, 1.9), inches(2.375), inches(30), {}};
    CHECK(layout::saddle_blank_working(blank).ok());
    blank.centres = inches(2);
    CHECK(layout::saddle_blank_working(blank).refusal().field == "centres");
    CHECK(layout::throat_to_throat_working(blank).refusal().field == "centres");
    blank.centres = inches(30);
    blank.second_run_od = inches(0.9);
    CHECK(layout::saddle_blank_working(blank).refusal().field == "second_run_od");
    CHECK(layout::die_mismatch({inches(0.9), inches(1.9), inches(1)}).refusal().field == "die_od");
    CHECK(layout::die_mismatch({inches(1.9), inches(0.9), inches(1)}).refusal().field ==
          "branch_od");
}
