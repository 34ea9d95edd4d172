// Outlines by their area: what is cut away is plane geometry.

#include "sheet/outline.h"
#include "sheet/sample.h"

#include <cmath>
#include <numbers>

using namespace treadle;
using job::NotchEdge;

namespace {

double area_in2(const std::vector<sheet::Spot>& spots) {
    double twice = 0.0;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        const sheet::Spot a = spots[i];
        const sheet::Spot b = spots[(i + 1) % spots.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return twice / 2.0 / (25.4 * 25.4);
}

/// Area of a flat 10 x 4 with these operations; positive only when walked anticlockwise.
double area_with(std::vector<job::Operation> operations) {
    job::Part part = sheet_test::part("F", section::Shape::flat);
    part.section.width = inches(4.0);
    part.length = inches(10.0);
    part.operations = std::move(operations);
    plan::PartPlan plan;
    plan.part = std::make_shared<const job::Part>(part);
    plan.blank_length = part.length;
    plan.blank_width = part.section.width;
    return area_in2(sheet::face_outline(plan, section::Face::flat, 254.0).outline);
}

job::Notch notch(NotchEdge edge, double at_in) {
    job::Notch made;
    made.edge = edge;
    made.at = inches(at_in);
    made.along = inches(1.5);
    made.depth = inches(0.5);
    return made;
}

} // namespace

TEST_CASE("every notch takes its own area away, wherever it is") {
    CHECK(area_with({}) == doctest::Approx(40.0));
    for (const NotchEdge edge : {NotchEdge::near_edge,
                                 NotchEdge::far_edge,
                                 NotchEdge::start_end,
                                 NotchEdge::finish_end,
                                 NotchEdge::start_near,
                                 NotchEdge::start_far,
                                 NotchEdge::finish_near,
                                 NotchEdge::finish_far})
        CHECK(area_with({notch(edge, 2.0)}) == doctest::Approx(40.0 - 0.75));
    job::Notch vee = notch(NotchEdge::far_edge, 5.0);
    vee.shape = geometry::NotchShape::vee;
    vee.included = degrees(90.0);
    CHECK(area_with({vee}) == doctest::Approx(40.0 - 0.25)); // half of 1 x 1/2
}

TEST_CASE("all corners and edges together take the sum") {
    CHECK(area_with({notch(NotchEdge::near_edge, 5.0),
                     notch(NotchEdge::near_edge, 3.0),
                     notch(NotchEdge::far_edge, 5.0),
                     notch(NotchEdge::far_edge, 7.0),
                     notch(NotchEdge::start_end, 2.0),
                     notch(NotchEdge::finish_end, 2.0),
                     notch(NotchEdge::start_near, 0.0),
                     notch(NotchEdge::start_far, 0.0),
                     notch(NotchEdge::finish_near, 0.0),
                     notch(NotchEdge::finish_far, 0.0)}) == doctest::Approx(40.0 - 10 * 0.75));
}

TEST_CASE("a mitre cuts a triangle off, to either side") {
    job::Cut cut;
    cut.finish_mitre = degrees(45.0);
    CHECK(area_with({cut}) == doctest::Approx(40.0 - 8.0));
    cut.finish_mitre = degrees(-45.0);
    cut.start_mitre = degrees(45.0);
    CHECK(area_with({cut}) == doctest::Approx(40.0 - 16.0));
}

TEST_CASE("shaped holes have the area of their shape") {
    using geometry::HoleShape;
    const auto area = [](geometry::HoleOutline hole, bool turned) {
        return area_in2(sheet::hole_corners(hole, turned));
    };
    for (const bool turned : {false, true}) {
        CHECK(area({HoleShape::square, inches(0.5), {}}, turned) == doctest::Approx(0.25));
        CHECK(area({HoleShape::rectangle, inches(0.5), inches(1.0)}, turned) ==
              doctest::Approx(0.5));
        // Hexagon, 1 across flats: sqrt(3) / 2.
        CHECK(area({HoleShape::hexagon, inches(1.0), {}}, turned) ==
              doctest::Approx(std::numbers::sqrt3 / 2.0));
        // Obround 1/2 x 1-1/4: round of 1/2 and 1/2 x 3/4; its arcs are split into chords.
        CHECK(area({HoleShape::obround, inches(0.5), inches(1.25)}, turned) ==
              doctest::Approx(0.375 + std::numbers::pi / 16.0).epsilon(0.005));
    }
    CHECK(sheet::hole_corners({HoleShape::round, inches(1.0), {}}, false).empty());
}

TEST_CASE("sections are drawn with the metal they have") {
    Section angle;
    angle.shape = section::Shape::angle;
    angle.width = inches(3.0);
    angle.height = inches(2.0);
    angle.thickness = inches(0.25);
    CHECK(area_in2(sheet::section_outlines(angle).front()) ==
          doctest::Approx(0.25 * (3.0 + 2.0 - 0.25)));
    Section tube;
    tube.shape = section::Shape::square_tube;
    tube.width = tube.height = inches(2.0);
    tube.thickness = inches(0.125);
    const auto rings = sheet::section_outlines(tube);
    REQUIRE(rings.size() == 2);
    CHECK(area_in2(rings[0]) - area_in2(rings[1]) == doctest::Approx(4.0 - 1.75 * 1.75));
}
