// Outlines by their area: what is cut away is plane geometry.

#include "sheet/arc.h"
#include "sheet/outline.h"
#include "sheet/sample.h"

#include <cmath>
#include <numbers>

using namespace treadle;
using job::NotchEdge;

namespace {

double area_in2(const std::vector<sheet::Spot>& outline) {
    const std::vector<sheet::Spot> spots = sheet::straightened(outline, true, 1e-6);
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
        // Obround 1/2 x 1-1/4: round of 1/2 and 1/2 x 3/4.
        CHECK(area({HoleShape::obround, inches(0.5), inches(1.25)}, turned) ==
              doctest::Approx(0.375 + std::numbers::pi / 16.0).epsilon(0.0002)); // 256 chords
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

TEST_CASE("an arc is the circle through its ends that its bulge says") {
    // A quarter of a circle of radius 2 around 1, 1, from 3, 1 to 1, 3. Geometry.
    const sheet::Spot from{3.0, 1.0, std::tan(std::numbers::pi / 8.0)};
    const sheet::Arc arc = sheet::arc_between(from, {1.0, 3.0});
    CHECK(arc.centre.x == doctest::Approx(1.0));
    CHECK(arc.centre.y == doctest::Approx(1.0));
    CHECK(arc.radius == doctest::Approx(2.0));
    CHECK(arc.sweep == doctest::Approx(std::numbers::pi / 2.0));
    CHECK(arc.at(0.5).x == doctest::Approx(1.0 + std::numbers::sqrt2));
    // The other way round it bows to the other side.
    const sheet::Arc back = sheet::arc_between({3.0, 1.0, -from.bulge}, {1.0, 3.0});
    CHECK(back.centre.x == doctest::Approx(3.0));
    CHECK(back.centre.y == doctest::Approx(3.0));
}

TEST_CASE("the bounds of an arc hold its bow, and its chords keep to it") {
    const std::vector<sheet::Spot> ring{{5.0, 2.0, 1.0}, {-1.0, 2.0, 1.0}}; // radius 3 around 2, 2
    const sheet::Box box = sheet::bounds_of(ring, true);
    CHECK(box.low.x == doctest::Approx(-1.0));
    CHECK(box.low.y == doctest::Approx(-1.0));
    CHECK(box.high.y == doctest::Approx(5.0));
    for (const double within : {0.5, 0.05, 0.005}) {
        const auto chords = sheet::straightened(ring, true, within);
        for (std::size_t i = 0; i < chords.size(); ++i) {
            const sheet::Spot a = chords[i];
            const sheet::Spot b = chords[(i + 1) % chords.size()];
            CHECK(std::hypot(a.x - 2.0, a.y - 2.0) == doctest::Approx(3.0));
            const double middle = std::hypot((a.x + b.x) / 2.0 - 2.0, (a.y + b.y) / 2.0 - 2.0);
            CHECK(3.0 - middle <= within * 1.0001);
        }
        CHECK(chords.size() < 16 / std::sqrt(within));
    }
}

TEST_CASE("a rolled angle has its fillet and round toes, a tube its round corners") {
    Section angle;
    angle.shape = section::Shape::angle;
    angle.width = angle.height = inches(3.0);
    angle.thickness = inches(0.25);
    angle.root_radius = inches(0.3125);
    // A fillet adds (1 - pi / 4) r^2, each toe of half the radius takes as much of its own.
    const double corner = 1.0 - std::numbers::pi / 4.0;
    const double r = 0.3125;
    const double toe = r / 2.0;
    CHECK(area_in2(sheet::section_outlines(angle).front()) ==
          doctest::Approx(0.25 * 5.75 + corner * (r * r - 2.0 * toe * toe)));
    Section tube;
    tube.shape = section::Shape::square_tube;
    tube.width = tube.height = inches(2.0);
    tube.thickness = inches(0.125);
    tube.root_radius = inches(0.25);
    const auto rings = sheet::section_outlines(tube);
    CHECK(area_in2(rings[0]) == doctest::Approx(4.0 - 4.0 * corner * 0.25 * 0.25));
    CHECK(area_in2(rings[1]) == doctest::Approx(1.75 * 1.75 - 4.0 * corner * 0.125 * 0.125));
}
