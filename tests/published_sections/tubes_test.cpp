// Reproduces: AISC Shapes Database v15.0 (2017), square HSS to 4 in: nominal weight and the area of
//             the design wall; EN 10219-2, rectangular hollow sections; weight tables of light
//             mechanical tube (ASTM A513 sizes)
// How read:   read (open copy of the table; excerpt of EN 10219-2); mechanical tube from memory
// Tolerance:  1 % HSS and EN 10219-2, 0.5 % mechanical tube, whose tables print sharp corners

#include <doctest/doctest.h>

#include <cmath>
#include <iterator>
#include <string>

#include "evidence_rows.h"
#include "published_sections/printed.h"

using namespace treadle;
using namespace treadle::published;

namespace {

struct HollowSection {
    std::string where;
    double side_in;
    double wall_in; // nominal
    double printed_lb_per_ft;
    double design_wall_in;
    double printed_area_in2;
};

const HollowSection k_hss[] = {
    {"HSS2X2X1/8", 2, 0.125, 3.05, 0.116, 0.840},
    {"HSS2X2X3/16", 2, 0.1875, 4.32, 0.174, 1.19},
    {"HSS2X2X1/4", 2, 0.25, 5.41, 0.233, 1.51},
    {"HSS2-1/4X2-1/4X1/8", 2.25, 0.125, 3.48, 0.116, 0.956},
    {"HSS2-1/2X2-1/2X1/8", 2.5, 0.125, 3.90, 0.116, 1.07},
    {"HSS2-1/2X2-1/2X3/16", 2.5, 0.1875, 5.59, 0.174, 1.54},
    {"HSS2-1/2X2-1/2X1/4", 2.5, 0.25, 7.11, 0.233, 1.97},
    {"HSS3X3X1/8", 3, 0.125, 4.75, 0.116, 1.30},
    {"HSS3X3X3/16", 3, 0.1875, 6.87, 0.174, 1.89},
    {"HSS3X3X1/4", 3, 0.25, 8.81, 0.233, 2.44},
    {"HSS4X4X1/8", 4, 0.125, 6.46, 0.116, 1.77},
    {"HSS4X4X3/16", 4, 0.1875, 9.42, 0.174, 2.58},
    {"HSS4X4X1/4", 4, 0.25, 12.21, 0.233, 3.37},
};

struct Tube {
    std::string where;
    double width;
    double height;
    double wall;
    double printed;
};

// Inches and lb/ft.
const Tube k_mechanical[] = {
    {"1/2 x 1/2 x 0.065", 0.5, 0.5, 0.065, 0.385},
    {"3/4 x 3/4 x 0.065", 0.75, 0.75, 0.065, 0.606},
    {"1 x 1 x 0.065", 1, 1, 0.065, 0.827},
    {"1 x 1 x 0.083", 1, 1, 0.083, 1.035},
    {"1 x 1 x 0.120", 1, 1, 0.120, 1.436},
    {"1-1/4 x 1-1/4 x 0.083", 1.25, 1.25, 0.083, 1.317},
    {"1-1/2 x 1-1/2 x 0.083", 1.5, 1.5, 0.083, 1.600},
    {"1-1/2 x 1-1/2 x 0.120", 1.5, 1.5, 0.120, 2.252},
    {"2 x 2 x 0.083", 2, 2, 0.083, 2.164},
    {"2 x 2 x 0.120", 2, 2, 0.120, 3.068},
};

// Millimetres and kg/m.
const Tube k_european[] = {
    {"RHS 40 x 20 x 2", 40, 20, 2, 1.68},
    {"RHS 50 x 30 x 3", 50, 30, 3, 3.30},
    {"RHS 60 x 40 x 4", 60, 40, 4, 5.45},
};

Section tube(Length width, Length height, Length wall, Length corner) {
    Section section;
    section.shape = Shape::square_tube;
    section.width = width;
    section.height = height;
    section.thickness = wall;
    section.root_radius = corner;
    return section;
}

} // namespace

TEST_SUITE("published") {

    TEST_CASE("HSS weights and areas reproduce the AISC Shapes Database v15.0") {
        CHECK(std::size(k_hss) == 13);
        for (const HollowSection& row : k_hss) {
            CAPTURE(row.where);
            const Length side = inches(row.side_in);
            const Length wall = inches(row.wall_in);
            const double weight = pounds_per_foot_of(tube(side, side, wall, 2.0 * wall));
            CHECK(std::abs(over_print(weight, row.printed_lb_per_ft)) <= 0.01);
            const Length design = inches(row.design_wall_in);
            const double metal =
                quantity::to_square_inches(area(tube(side, side, design, 2.0 * design)));
            CHECK(std::abs(over_print(metal, row.printed_area_in2)) <= 0.01);
        }
        test::count_rows("published", 13, "section.weight");
    }

    TEST_CASE("light tube weights reproduce mechanical tube tables (from memory)") {
        CHECK(std::size(k_mechanical) == 10);
        for (const Tube& row : k_mechanical) {
            CAPTURE(row.where);
            const Section section =
                tube(inches(row.width), inches(row.height), inches(row.wall), Length{});
            CHECK(std::abs(over_print(pounds_per_foot_of(section), row.printed)) <= 0.005);
        }
        test::count_rows("from-memory", 10, "section.weight");
    }

    TEST_CASE("rectangular tube masses reproduce EN 10219-2") {
        CHECK(std::size(k_european) == 3);
        for (const Tube& row : k_european) {
            CAPTURE(row.where);
            const Length wall = millimetres(row.wall);
            const Section section =
                tube(millimetres(row.width), millimetres(row.height), wall, 2.0 * wall);
            CHECK(std::abs(over_print(kilograms_per_metre_of(section), row.printed)) <= 0.01);
        }
        test::count_rows("published", 3, "section.weight");
    }

} // TEST_SUITE
