// Worked from the definitions: 490 lb/ft3 (ASTM A6) and 7850 kg/m3 (EN 10058, EN 10060).
// Trade tables round 490/144 = 3.4028 to 3.4 lb/ft per square inch, hence 0.5 %.

#include <doctest/doctest.h>

#include <cmath>
#include <iterator>
#include <string>

#include "evidence_rows.h"
#include "published_sections/printed.h"

using namespace treadle;
using namespace treadle::published;

namespace {

struct Bar {
    std::string where;
    Shape shape;
    double width;
    double thickness;
    double worked;
};

// Inches and lb/ft: 3.4 b t, 2.67 d2, 3.4 a2.
const Bar k_inch[] = {
    {"flat 1/4 x 2: 3.4 x 0.5", Shape::flat, 2, 0.25, 1.700},
    {"flat 3/8 x 3: 3.4 x 1.125", Shape::flat, 3, 0.375, 3.825},
    {"flat 1/2 x 4: 3.4 x 2", Shape::flat, 4, 0.5, 6.800},
    {"round 1/2: 2.67 x 0.25", Shape::round, 0.5, 0, 0.667},
    {"round 5/8: 2.67 x 0.390625", Shape::round, 0.625, 0, 1.043},
    {"round 1: 2.67", Shape::round, 1, 0, 2.670},
    {"square 1/2: 3.4 x 0.25", Shape::square, 0.5, 0, 0.850},
    {"square 3/4: 3.4 x 0.5625", Shape::square, 0.75, 0, 1.912},
    {"plate 1/4, a foot wide: 490/12 x 0.25", Shape::plate, 12, 0.25, 10.210},
};

// Millimetres and kg/m: 0.00785 b t, 0.0061654 d2.
const Bar k_metric[] = {
    {"flat 50 x 5: 0.00785 x 250", Shape::flat, 50, 5, 1.962},
    {"flat 40 x 10: 0.00785 x 400", Shape::flat, 40, 10, 3.140},
    {"round 12: 0.0061654 x 144", Shape::round, 12, 0, 0.888},
    {"round 16: 0.0061654 x 256", Shape::round, 16, 0, 1.578},
    {"plate 10, a metre wide: 7.85 x 10", Shape::plate, 1000, 10, 78.500},
};

Section bar(const Bar& row, Length unit) {
    Section section;
    section.shape = row.shape;
    section.width = row.width * unit;
    section.thickness = row.thickness * unit;
    return section;
}

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("bar and plate weights in pounds per foot") {
        CHECK(std::size(k_inch) == 9);
        for (const Bar& row : k_inch) {
            CAPTURE(row.where);
            const double ours = pounds_per_foot_of(bar(row, inches(1)));
            CHECK(std::abs(over_print(ours, row.worked)) <= 0.005);
        }
        test::count_rows("worked", 9, "section.weight");
    }

    TEST_CASE("bar and plate masses in kilograms per metre") {
        CHECK(std::size(k_metric) == 5);
        for (const Bar& row : k_metric) {
            CAPTURE(row.where);
            const double ours = kilograms_per_metre_of(bar(row, millimetres(1)));
            CHECK(std::abs(over_print(ours, row.worked)) <= 0.005);
        }
        test::count_rows("worked", 5, "section.weight");
    }

    // 0.5 x 10 x 12 in3 at 490/1728 lb/in3 is 17.014 lb.
    TEST_CASE("a base plate 1/2 x 10 x 12 weighs 17.014 lb") {
        const Section plate = bar({"", Shape::plate, 10, 0.5, 0}, inches(1));
        const Mass mass = mass_per_length(plate, k_inch_steel) * inches(12);
        CHECK(std::abs(quantity::to_pounds(mass) - 17.014) <= 0.0005);
        test::count_rows("worked", 1, "section.weight");
    }

} // TEST_SUITE
