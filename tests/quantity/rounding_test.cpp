// Rows of the shop's rounding, worked by hand: print.cpp and parse_length.cpp together.
// Fractions reduced, halves away from zero, sixteen sixteenths carried into inches and twelve
// inches into feet; sums are made on exact values, only what is printed is rounded.

#include "quantity/parse.h"
#include "quantity/print.h"

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace treadle;
using namespace treadle::quantity;

namespace {

Length read(const char* text) { return parse_length(text, UnitSystem::inch, "x").value(); }

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("three ways to write 13-3/4 in") {
        // 349.25 / 25.4 = 13.75
        for (const char* text : {"1'-1 3/4\"", "13-3/4", "349.25 mm"}) {
            CAPTURE(text);
            CHECK(to_inches(read(text)) == doctest::Approx(13.75).epsilon(1e-12));
        }
        CHECK(to_millimetres(read("10' 6-1/2\"")) == doctest::Approx(3213.1)); // 126.5 x 25.4
    }

    TEST_CASE("rounded to a fraction, reduced and carried") {
        struct Row {
            const char* length;
            int denominator;
            const char* printed;
        };
        const std::array k_rows{
            Row{"11.984375 in", 16, "12 in"},     // 11-63/64 is nearest to 16/16
            Row{"3.796875 in", 16, "3-13/16 in"}, // 12.75 sixteenths over 3
            Row{"3.796875 in", 32, "3-13/16 in"}, // 25.5 thirty-seconds: the half goes up to 26
            Row{"3.796875 in", 64, "3-51/64 in"}, // 51 sixty-fourths exactly
            Row{"0.03125 in", 16, "1/16 in"},     // half of one, away from zero
            Row{"100 mm", 16, "3-15/16 in"},      // 3.93701 in
        };
        CHECK(k_rows.size() == 6);
        for (const Row& row : k_rows) {
            CAPTURE(row.length);
            CAPTURE(row.denominator);
            CHECK(print(read(row.length), {UnitSystem::inch, row.denominator}) == row.printed);
        }
    }

    TEST_CASE("twelve inches are carried into feet") {
        // 71-63/64 in to the sixteenth is 72 in
        CHECK(print_feet(read("71.984375 in"), {UnitSystem::inch, 16}) == "6'-0\"");
    }
}
