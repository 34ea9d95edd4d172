// Covers section_text.cpp.

#include "assembly/ground.h"
#include "assembly/section_text.h"

using namespace treadle;
using section::Shape;

namespace {

base::Result<Section> read(const char* text, UnitSystem units = UnitSystem::inch) {
    return assembly::parse_section(text, units, test::catalog().sections, "bar");
}

} // namespace

TEST_CASE("a section is read by its shape's word and its sizes") {
    struct Row {
        const char* text;
        Shape shape;
        double width_in;
        double height_in;
        double thickness_in;
    };
    constexpr Row k_rows[] = {{"flat 1-1/2 x 3/8 in", Shape::flat, 1.5, 0, 0.375},
                              {"Flat 2\" x 1/4\"", Shape::flat, 2, 0, 0.25},
                              {"square 3/4", Shape::square, 0.75, 0, 0},
                              {"round 1 in", Shape::round, 1, 0, 0},
                              {"tube 2 x 1-1/2 x 1/8 in", Shape::square_tube, 2, 1.5, 0.125},
                              {"tube 2 \xC3\x97 1/8 in", Shape::square_tube, 2, 2, 0.125},
                              {"angle 3 x 2 x 1/4 in", Shape::angle, 3, 2, 0.25},
                              {"pipe 1.9 x 0.145 in", Shape::pipe, 1.9, 0, 0.145},
                              {"flat 25.4 mm x 1/4 in", Shape::flat, 1, 0, 0.25}};
    CHECK(std::size(k_rows) == 9);
    for (const Row& row : k_rows) {
        CAPTURE(row.text);
        const auto section = read(row.text);
        REQUIRE(section.ok());
        CHECK(section->shape == row.shape);
        CHECK(to_inches(section->width) == doctest::Approx(row.width_in));
        CHECK(to_inches(section->height) == doctest::Approx(row.height_in));
        CHECK(to_inches(section->thickness) == doctest::Approx(row.thickness_in));
    }
}

TEST_CASE("sizes without a unit take that of the last, and that of the job where it has none") {
    CHECK(to_millimetres(read("flat 40 x 8 mm")->width) == doctest::Approx(40.0));
    CHECK(to_millimetres(read("flat 40 x 8", UnitSystem::metric)->thickness) ==
          doctest::Approx(8.0));
    CHECK(assembly::section_with_units("flat 40 x 8", UnitSystem::metric) == "flat 40 x 8 mm");
    CHECK(assembly::section_with_units("flat 40 x 8 mm", UnitSystem::inch) == "flat 40 x 8 mm");
    CHECK(assembly::section_with_units("Pipe 1-1/2 sch 40", UnitSystem::metric) ==
          "Pipe 1-1/2 sch 40");
}

TEST_CASE("a designation of the catalogue stands for its row") {
    CHECK(read("C3x4.1")->shape == Shape::channel);
    CHECK(to_inches(read("pipe 1-1/2 sch 40")->width) == doctest::Approx(1.9));
}

TEST_CASE("what is no section is refused with the forms that are read") {
    for (const char* text : {"",
                             "flat",
                             "flat 2 in",
                             "blob 2 x 3 in",
                             "round 1 x 2 in",
                             "flat 2 x 0 in",
                             "flat 2 x -1 in",
                             "tube 1 x 2 in",
                             "angle 2 x 2 x 2 x 2 in",
                             "flat x",
                             "x x x"}) {
        CAPTURE(text);
        const auto section = read(text);
        REQUIRE_FALSE(section.ok());
        CHECK(section.refusal().field == "bar");
        CHECK_FALSE(section.refusal().reason.empty());
    }
}
