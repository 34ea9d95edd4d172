// Reproduces: AISC Shapes Database v15.0 (2017), weights of angles to 6 in (column W); small angles
//             from weight tables of bar mills
//             EN 10056-1, masses of equal and unequal leg angles
// How read:   read (open copy of the table); mill tables and EN 10056-1 from memory
// Tolerance:  inch: +0 -2 %, because the catalogue rounds the sharp-cornered weight up, to 0.01 or
//             0.1 lb/ft; metric: 0.35 %, within half of the last of three printed digits

#include <doctest/doctest.h>

#include <cmath>
#include <iterator>
#include <string>

#include "evidence_rows.h"
#include "published_sections/printed.h"

using namespace treadle;
using namespace treadle::published;

namespace {

struct InchAngle {
    std::string where;
    double leg_a_in;
    double leg_b_in;
    double thickness_in;
    double printed_lb_per_ft;
    Read read;
};

const InchAngle k_inch[] = {
    {"L1X1X1/8", 1, 1, 0.125, 0.8, Read::from_memory},
    {"L1X1X1/4", 1, 1, 0.25, 1.49, Read::from_memory},
    {"L1-1/4X1-1/4X1/8", 1.25, 1.25, 0.125, 1.01, Read::from_memory},
    {"L1-1/4X1-1/4X3/16", 1.25, 1.25, 0.1875, 1.48, Read::from_memory},
    {"L1-1/2X1-1/2X1/8", 1.5, 1.5, 0.125, 1.23, Read::from_memory},
    {"L1-1/2X1-1/2X3/16", 1.5, 1.5, 0.1875, 1.8, Read::from_memory},
    {"L1-1/2X1-1/2X1/4", 1.5, 1.5, 0.25, 2.34, Read::from_memory},
    {"L1-3/4X1-3/4X1/8", 1.75, 1.75, 0.125, 1.44, Read::from_memory},
    {"L1-3/4X1-3/4X3/16", 1.75, 1.75, 0.1875, 2.12, Read::from_memory},
    {"L2X2X1/8", 2, 2, 0.125, 1.65, Read::seen},
    {"L2X2X3/16", 2, 2, 0.1875, 2.44, Read::seen},
    {"L2X2X1/4", 2, 2, 0.25, 3.19, Read::seen},
    {"L2X2X3/8", 2, 2, 0.375, 4.7, Read::seen},
    {"L2-1/2X2-1/2X3/16", 2.5, 2.5, 0.1875, 3.07, Read::seen},
    {"L2-1/2X2-1/2X1/4", 2.5, 2.5, 0.25, 4.1, Read::seen},
    {"L2-1/2X2-1/2X3/8", 2.5, 2.5, 0.375, 5.9, Read::seen},
    {"L3X3X3/16", 3, 3, 0.1875, 3.71, Read::seen},
    {"L3X3X1/4", 3, 3, 0.25, 4.9, Read::seen},
    {"L3X3X3/8", 3, 3, 0.375, 7.2, Read::seen},
    {"L3X3X1/2", 3, 3, 0.5, 9.4, Read::seen},
    {"L3-1/2X3-1/2X1/4", 3.5, 3.5, 0.25, 5.8, Read::seen},
    {"L3-1/2X3-1/2X3/8", 3.5, 3.5, 0.375, 8.5, Read::seen},
    {"L4X4X1/4", 4, 4, 0.25, 6.6, Read::seen},
    {"L4X4X5/16", 4, 4, 0.3125, 8.2, Read::seen},
    {"L4X4X3/8", 4, 4, 0.375, 9.8, Read::seen},
    {"L4X4X1/2", 4, 4, 0.5, 12.8, Read::seen},
    {"L5X5X5/16", 5, 5, 0.3125, 10.3, Read::seen},
    {"L5X5X3/8", 5, 5, 0.375, 12.3, Read::seen},
    {"L5X5X1/2", 5, 5, 0.5, 16.2, Read::seen},
    {"L6X6X3/8", 6, 6, 0.375, 14.9, Read::seen},
    {"L6X6X1/2", 6, 6, 0.5, 19.6, Read::seen},
    {"L2-1/2X1-1/2X3/16", 2.5, 1.5, 0.1875, 2.44, Read::seen},
    {"L2-1/2X2X3/16", 2.5, 2, 0.1875, 2.75, Read::seen},
    {"L2-1/2X2X1/4", 2.5, 2, 0.25, 3.62, Read::seen},
    {"L3X2X3/16", 3, 2, 0.1875, 3.07, Read::seen},
    {"L3X2X1/4", 3, 2, 0.25, 4.1, Read::seen},
    {"L3X2-1/2X1/4", 3, 2.5, 0.25, 4.5, Read::seen},
    {"L3-1/2X2-1/2X1/4", 3.5, 2.5, 0.25, 4.9, Read::seen},
    {"L3-1/2X3X1/4", 3.5, 3, 0.25, 5.4, Read::seen},
    {"L4X3X1/4", 4, 3, 0.25, 5.8, Read::seen},
    {"L4X3X3/8", 4, 3, 0.375, 8.5, Read::seen},
    {"L5X3X1/4", 5, 3, 0.25, 6.6, Read::seen},
    {"L5X3X3/8", 5, 3, 0.375, 9.8, Read::seen},
    {"L5X3-1/2X3/8", 5, 3.5, 0.375, 10.4, Read::seen},
    {"L6X3-1/2X5/16", 6, 3.5, 0.3125, 9.8, Read::seen},
    {"L6X4X3/8", 6, 4, 0.375, 12.3, Read::seen},
    {"L6X4X1/2", 6, 4, 0.5, 16.2, Read::seen},
};

struct MetricAngle {
    std::string where;
    double leg_a_mm;
    double leg_b_mm;
    double thickness_mm;
    double root_mm;
    double printed_kg_per_m;
};

const MetricAngle k_metric[] = {
    {"L 20 x 20 x 3", 20, 20, 3, 3.5, 0.882},     {"L 25 x 25 x 3", 25, 25, 3, 3.5, 1.12},
    {"L 30 x 30 x 3", 30, 30, 3, 5, 1.36},        {"L 35 x 35 x 4", 35, 35, 4, 5, 2.09},
    {"L 40 x 40 x 4", 40, 40, 4, 6, 2.42},        {"L 45 x 45 x 4.5", 45, 45, 4.5, 7, 3.06},
    {"L 50 x 50 x 5", 50, 50, 5, 7, 3.77},        {"L 50 x 50 x 6", 50, 50, 6, 7, 4.47},
    {"L 60 x 60 x 6", 60, 60, 6, 8, 5.42},        {"L 70 x 70 x 7", 70, 70, 7, 9, 7.38},
    {"L 80 x 80 x 8", 80, 80, 8, 10, 9.63},       {"L 90 x 90 x 9", 90, 90, 9, 11, 12.2},
    {"L 100 x 100 x 10", 100, 100, 10, 12, 15.0}, {"L 120 x 120 x 12", 120, 120, 12, 13, 21.6},
    {"L 30 x 20 x 3", 30, 20, 3, 4, 1.12},        {"L 40 x 20 x 4", 40, 20, 4, 4, 1.77},
    {"L 50 x 30 x 5", 50, 30, 5, 5, 2.96},        {"L 60 x 40 x 5", 60, 40, 5, 6, 3.76},
    {"L 65 x 50 x 5", 65, 50, 5, 6, 4.35},        {"L 75 x 50 x 6", 75, 50, 6, 7, 5.65},
    {"L 80 x 60 x 7", 80, 60, 7, 8, 7.36},        {"L 100 x 50 x 6", 100, 50, 6, 8, 6.84},
    {"L 125 x 75 x 8", 125, 75, 8, 11, 12.2},
};

Section angle(Length a, Length b, Length t, Length root) {
    Section section;
    section.shape = Shape::angle;
    section.width = a;
    section.height = b;
    section.thickness = t;
    section.root_radius = root;
    return section;
}

} // namespace

TEST_SUITE("published") {

    TEST_CASE("angle weights reproduce the AISC Shapes Database v15.0 and mill tables") {
        CHECK(std::size(k_inch) == 47);
        int seen = 0;
        for (const InchAngle& row : k_inch) {
            CAPTURE(row.where);
            const Section section = angle(
                inches(row.leg_a_in), inches(row.leg_b_in), inches(row.thickness_in), Length{});
            const double over =
                over_print(pounds_per_foot_of(section, k_inch_angle_steel), row.printed_lb_per_ft);
            CAPTURE(over);
            CHECK(over <= 0.0);
            CHECK(over >= -0.02);
            seen += row.read == Read::seen ? 1 : 0;
        }
        CHECK(seen == 38);
        test::count_rows("published", 38, "section.weight");
        test::count_rows("from-memory", 9, "section.weight");
    }

    TEST_CASE("angle masses reproduce EN 10056-1 (from memory)") {
        CHECK(std::size(k_metric) == 23);
        for (const MetricAngle& row : k_metric) {
            CAPTURE(row.where);
            const Section section = angle(millimetres(row.leg_a_mm),
                                          millimetres(row.leg_b_mm),
                                          millimetres(row.thickness_mm),
                                          millimetres(row.root_mm));
            const double over = over_print(kilograms_per_metre_of(section), row.printed_kg_per_m);
            CAPTURE(over);
            CHECK(std::abs(over) <= 0.0035);
        }
        test::count_rows("from-memory", 23, "section.weight");
    }

} // TEST_SUITE
