#include "section/section.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <set>
#include <string>

using namespace treadle;
using section::Face;
using section::Section;
using section::Shape;

namespace {

constexpr Shape k_shapes[] = {Shape::flat,
                              Shape::plate,
                              Shape::angle,
                              Shape::channel,
                              Shape::round,
                              Shape::square,
                              Shape::pipe,
                              Shape::square_tube};
constexpr Face k_faces[] = {
    Face::flat, Face::leg_a, Face::leg_b, Face::web, Face::flange_top, Face::flange_bottom};

/// Sizes that make every shape.
Section sample(Shape shape) {
    Section section;
    section.shape = shape;
    section.width = millimetres(50);
    section.height = millimetres(80);
    section.thickness = millimetres(6);
    section.flange_thickness = millimetres(7);
    return section;
}

std::string fault_of(const Section& section) {
    const auto result = checked(section);
    return result ? std::string("none") : result.refusal().field;
}

template <class Change>
std::string fault_with(Shape shape, Change change) {
    Section section = sample(shape);
    change(section);
    return fault_of(section);
}

} // namespace

TEST_CASE("every shape and face has its own word") {
    std::set<std::string> words;
    for (const Shape shape : k_shapes)
        words.insert(shape_word(shape));
    CHECK(words.size() == 8);
    CHECK(words.count("") == 0);
    std::set<std::string> faces;
    for (const Face face : k_faces)
        faces.insert(face_word(face));
    CHECK(faces.size() == 6);
    CHECK(faces.count("") == 0);
}

TEST_CASE("metal is met on the faces a shape has, and on no other") {
    for (const Shape shape : k_shapes) {
        for (const Face face : k_faces) {
            bool own = false;
            for (const Face has : section::faces_of(shape))
                own = own || has == face;
            CAPTURE(shape_word(shape));
            CAPTURE(face_word(face));
            CHECK((thickness_at(sample(shape), face) > Length{}) == own);
        }
    }
}

TEST_CASE("rounds, squares, pipes and tubes have no face to punch") {
    for (const Shape shape : {Shape::round, Shape::square, Shape::pipe, Shape::square_tube})
        CHECK(section::faces_of(shape).empty());
}

TEST_CASE("legs and flanges reach across by their own sizes") {
    const Section angle = sample(Shape::angle);
    CHECK(width_of(angle, Face::leg_a) == millimetres(50));
    CHECK(width_of(angle, Face::leg_b) == millimetres(80));
    CHECK(width_of(angle, Face::flat) == Length{});
    const Section channel = sample(Shape::channel);
    CHECK(width_of(channel, Face::web) == millimetres(80));
    CHECK(width_of(channel, Face::flange_bottom) == millimetres(50));
    CHECK(width_of(sample(Shape::plate), Face::flat) == millimetres(50));
}

TEST_CASE("a channel's flange counts its root: 7 + (50 - 6) / 12 mm") {
    const Section channel = sample(Shape::channel);
    const double root = 7.0 + 44.0 / 12.0;
    const Length flange = thickness_at(channel, Face::flange_top);
    CHECK(std::abs(quantity::to_millimetres(flange) - root) < 1e-12);
    CHECK(thickness_at(channel, Face::web) == millimetres(6));
    CHECK(governing_thickness(channel) == flange);
}

TEST_CASE("the thickest metal of solid bars is the bar itself") {
    CHECK(governing_thickness(sample(Shape::round)) == millimetres(50));
    CHECK(governing_thickness(sample(Shape::square)) == millimetres(50));
    for (const Shape shape : {Shape::flat, Shape::angle, Shape::pipe, Shape::square_tube})
        CHECK(governing_thickness(sample(shape)) == millimetres(6));
}

// EN 10058 density: 50 x 5 mm flat is 0.00785 x 250 = 1.9625 kg/m.
TEST_CASE("worked: mass is area times density") {
    Section flat = sample(Shape::flat);
    flat.thickness = millimetres(5);
    const auto mass = mass_per_length(flat, quantity::kilograms_per_cubic_metre(7850));
    CHECK(std::abs(quantity::to_kilograms_per_metre(mass) - 1.9625) < 1e-12);
}

TEST_CASE("sound sections pass and lose the sizes they do not use") {
    for (const Shape shape : k_shapes) {
        CAPTURE(shape_word(shape));
        CHECK(fault_of(sample(shape)) == "none");
    }
    Section bar = sample(Shape::round);
    bar.root_radius = millimetres(std::numeric_limits<double>::quiet_NaN());
    const Section clean = section::checked(bar).value();
    CHECK(clean.width == millimetres(50));
    CHECK(clean.height == Length{});
    CHECK(clean.thickness == Length{});
    CHECK(clean.flange_thickness == Length{});
    CHECK(clean.root_radius == Length{});
}

TEST_CASE("sizes that are none are refused at their field") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double bad : {0.0, -3.0, 100e3, nan, std::numeric_limits<double>::infinity()}) {
        CAPTURE(bad);
        const auto size = millimetres(bad);
        for (const Shape shape : k_shapes)
            CHECK(fault_with(shape, [&](Section& s) { s.width = size; }) == "section.width");
        const auto channel = Shape::channel;
        CHECK(fault_with(channel, [&](Section& s) { s.height = size; }) == "section.height");
        CHECK(fault_with(channel, [&](Section& s) { s.thickness = size; }) == "section.thickness");
        CHECK(fault_with(channel, [&](Section& s) { s.flange_thickness = size; }) ==
              "section.flange_thickness");
    }
    CHECK(fault_with(Shape::angle, [&](Section& s) { s.root_radius = millimetres(nan); }) ==
          "section.root_radius");
    CHECK(fault_with(Shape::angle, [](Section& s) { s.root_radius = millimetres(-1); }) ==
          "section.root_radius");
}

TEST_CASE("sizes that do not make the shape are refused") {
    const auto thick = [](double value) {
        return [value](Section& s) { s.thickness = millimetres(value); };
    };
    CHECK(fault_with(Shape::flat, thick(50)) == "none");
    CHECK(fault_with(Shape::flat, thick(51)) == "section.thickness");
    CHECK(fault_with(Shape::plate, thick(51)) == "section.thickness");
    CHECK(fault_with(Shape::angle, thick(50)) == "section.thickness");
    CHECK(fault_with(Shape::channel, thick(50)) == "section.thickness");
    CHECK(fault_with(Shape::pipe, thick(25)) == "section.thickness");
    CHECK(fault_with(Shape::square_tube, thick(25)) == "section.thickness");
    CHECK(fault_with(Shape::channel, [](Section& s) { s.flange_thickness = millimetres(37); }) ==
          "section.flange_thickness");
    CHECK(fault_with(Shape::angle, [](Section& s) { s.root_radius = millimetres(45); }) ==
          "section.root_radius");
    const auto corner = [](double value) {
        return [value](Section& s) { s.root_radius = millimetres(value); };
    };
    CHECK(fault_with(Shape::square_tube, corner(5)) == "section.root_radius");
    CHECK(fault_with(Shape::square_tube, corner(12)) == "none");
    CHECK(fault_with(Shape::square_tube, corner(26)) == "section.root_radius");
}

TEST_CASE("a designation is found without regard to case, spaces and the multiplication sign") {
    section::SectionTable table;
    table.rows.resize(2);
    table.rows[0].section = sample(Shape::angle);
    table.rows[0].section.designation = "L3X3X1/4";
    table.rows[1].section = sample(Shape::pipe);
    table.rows[1].section.designation = "Pipe 1-1/2 sch 40";
    CHECK(table.find("l3x3x1/4") == &table.rows[0]);
    CHECK(table.find("L 3 \xC3\x97 3 \xC3\x97 1/4") == &table.rows[0]);
    CHECK(table.find("pipe 1-1/2 SCH40") == &table.rows[1]);
    CHECK(table.find("L3X3X1/2") == nullptr);
    CHECK(table.find("  ") == nullptr);
}
