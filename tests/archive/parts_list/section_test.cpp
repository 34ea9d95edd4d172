// parts_list_section.cpp: sections as the trade writes them.

#include "archive/parts_list/lists.h"
#include "archive/parts_list_section.h"

using namespace treadle;
using archive::SectionCells;
using parts_list_test::catalog;
using section::Shape;

namespace {

/// Keyed by hand: what a fabricator means by the text.
struct Row {
    const char* text;
    const char* unit; ///< of bare numbers
    Shape shape;
    double width_mm;
    double height_mm;
    double thickness_mm;
};
constexpr Row k_rows[] = {
    {"L3X3X1/4", "", Shape::angle, 76.2, 76.2, 6.35},
    {"l 3 x 3 x 1/4", "", Shape::angle, 76.2, 76.2, 6.35},
    {"L 3 \u00D7 3 \u00D7 1/4", "mm", Shape::angle, 76.2, 76.2, 6.35},
    {"L 2.5 x 2.5 x .25", "in", Shape::angle, 63.5, 63.5, 6.35},
    {"L2\"x2\"x1/4\"", "", Shape::angle, 50.8, 50.8, 6.35},
    {"EA 50x5", "mm", Shape::angle, 50, 50, 5},
    {"UA 60x40x5", "mm", Shape::angle, 60, 40, 5},
    {"Winkel 50x50x6", "mm", Shape::angle, 50, 50, 6},
    {"C6x8.2", "", Shape::channel, 48.8, 152.4, 5.1},
    {"UPN 100", "", Shape::channel, 50, 100, 6},
    {"HSS2x2x1/8", "", Shape::square_tube, 50.8, 50.8, 3.175},
    {"HSS 3 x 2 x .125", "in", Shape::square_tube, 76.2, 50.8, 3.175},
    {"SHS 40x3", "mm", Shape::square_tube, 40, 40, 3},
    {"FB 3 x 1/2", "in", Shape::flat, 76.2, 0, 12.7},
    {"FL 1/4 x 2", "in", Shape::flat, 50.8, 0, 6.35},
    {"flat bar 50x10", "mm", Shape::flat, 50, 0, 10},
    {"flat bar 50x10 mm", "", Shape::flat, 50, 0, 10},
    {"50 x 10 mm flat", "in", Shape::flat, 50, 0, 10},
    {"Flachstahl 50x12,5", "mm", Shape::flat, 50, 0, 12.5},
    {"PL 1/2 x 6", "in", Shape::plate, 152.4, 0, 12.7},
    {"PL1/2\"x6\"", "", Shape::plate, 152.4, 0, 12.7},
    {"Bl 10 x 200", "mm", Shape::plate, 200, 0, 10},
    {"RD 3/4", "in", Shape::round, 19.05, 0, 0},
    {"3/4\" rod", "", Shape::round, 19.05, 0, 0},
    {"SQ 1/2", "in", Shape::square, 12.7, 0, 0},
    {"Vierkant 20", "mm", Shape::square, 20, 0, 0},
    {"PIPE 1-1/2\" SCH 40", "", Shape::pipe, 48.26, 0, 3.683},
    {"CHS 33.7x2.6", "mm", Shape::pipe, 33.7, 0, 2.6},
};

SectionCells cells(const char* text, const char* unit) {
    SectionCells made;
    made.text = text;
    made.unit = made.width_unit = made.thickness_unit = unit;
    return made;
}

} // namespace

TEST_CASE("sections are read as the trade writes them") {
    const job::Catalog known = catalog();
    for (const Row& row : k_rows) {
        CAPTURE(row.text);
        const auto read = archive::section_in(cells(row.text, row.unit), known.sections);
        REQUIRE_MESSAGE(read.ok(), (read.ok() ? "" : read.refusal().reason));
        CHECK(read->shape == row.shape);
        CHECK(to_millimetres(read->width) == doctest::Approx(row.width_mm).epsilon(0.005));
        CHECK(to_millimetres(read->height) == doctest::Approx(row.height_mm).epsilon(0.005));
        CHECK(to_millimetres(read->thickness) == doctest::Approx(row.thickness_mm).epsilon(0.01));
        CHECK(archive::looks_like_section(row.text, known.sections));
    }
}

TEST_CASE("an angle of the trade takes its root radius from the catalogue, a typed one is sharp") {
    const job::Catalog known = catalog();
    CHECK(archive::section_in(cells("EA 50x50x5", "mm"), known.sections)->root_radius > Length{});
    CHECK(archive::section_in(cells("angle 50x50x5", "mm"), known.sections)->root_radius ==
          Length{});
}

TEST_CASE("a section that may be two things is refused, and so is one without a unit") {
    const job::Catalog known = catalog();
    for (const char* text : {"FB 3 x 1/2", "PL 1/2 x 6", "RD 3/4"}) {
        const auto read = archive::section_in(cells(text, ""), known.sections);
        REQUIRE_FALSE(read.ok());
        CHECK(read.refusal().reason == "The unit is missing.");
    }
    for (const char* text : {"50x10",
                             "pipe 1 x 0.133",
                             "3/8 PL",
                             "Plate 1/4",
                             "W8x10",
                             "tube 2 x 0.12",
                             "EA 50x40x5",
                             "FB 3 x 1/2 x 20",
                             "L 3",
                             "FB",
                             "FB 3 x",
                             "FB -3 x 1/2",
                             "PL 10ga x 6",
                             "round 1e308",
                             "L 2 x 2 x 4",
                             "flat 1,250 x 10",
                             "C7x7",
                             "x",
                             "channel 6 x 2"}) {
        CAPTURE(text);
        const auto read = archive::section_in(cells(text, "in"), known.sections);
        REQUIRE_FALSE(read.ok());
        CHECK_FALSE(read.refusal().reason.empty());
    }
}

TEST_CASE("width and thickness may stand in columns of their own") {
    const job::Catalog known = catalog();
    SectionCells own = cells("", "in");
    own.width = "3";
    own.thickness = "3/8";
    const auto flat = archive::section_in(own, known.sections);
    REQUIRE(flat.ok());
    CHECK(flat->shape == Shape::flat);
    CHECK(flat->width == inches(3.0));
    CHECK(flat->thickness == inches(0.375));
    own.text = "PL";
    CHECK(archive::section_in(own, known.sections)->shape == Shape::plate);
    own.text = "PL 3/8";
    own.thickness = "";
    CHECK(archive::section_in(own, known.sections)->width == inches(3.0));
    own.text = "L3X3X1/4";
    CHECK_FALSE(archive::section_in(own, known.sections).ok());
    own.text = "";
    own.thickness = "4"; // thicker than wide: the columns are mixed up
    CHECK_FALSE(archive::section_in(own, known.sections).ok());
}
