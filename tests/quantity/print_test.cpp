#include "quantity/parse.h"
#include "quantity/print.h"
#include "quantity/working.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <random>

using namespace treadle;
using namespace treadle::quantity;

namespace {
constexpr PrintStyle k_inch{UnitSystem::inch, 16};
constexpr PrintStyle k_fine{UnitSystem::inch, 64};
constexpr PrintStyle k_metric{UnitSystem::metric, 16};
constexpr std::uint64_t k_seed = 811;

double unit_interval(std::mt19937_64& random) {
    return static_cast<double>(random() >> 11U) * 0x1p-53;
}
} // namespace

TEST_CASE("inch lengths are reduced fractions, metric ones tenths") {
    CHECK(print(inches(1.375), k_inch) == "1-3/8 in");
    CHECK(print(inches(0.5), k_inch) == "1/2 in");
    CHECK(print(inches(12.0), k_inch) == "12 in");
    CHECK(print(inches(0.0), k_inch) == "0 in");
    CHECK(print(inches(-1.375), k_inch) == "-1-3/8 in");
    CHECK(print(inches(0.99), k_inch) == "1 in");
    CHECK(print_bare(inches(3.0 + 5.0 / 64.0), k_fine) == "3-5/64");
    CHECK(print(millimetres(35.0), k_metric) == "35 mm");
    CHECK(print(millimetres(12.54), k_metric) == "12.5 mm");
    CHECK(print(millimetres(-0.01), k_metric) == "0 mm");
}

TEST_CASE("feet and inches") {
    CHECK(print_feet(inches(54.5), k_inch) == "4'-6 1/2\"");
    CHECK(print_feet(inches(48.1875), k_inch) == "4'-0 3/16\"");
    CHECK(print_feet(inches(48.0), k_inch) == "4'-0\"");
    CHECK(print_feet(inches(6.5), k_inch) == "6 1/2\"");
    CHECK(print_feet(inches(-54.5), k_inch) == "-4'-6 1/2\"");
    CHECK(print_feet(millimetres(1384.3), k_metric) == "1384.3 mm");
    // 11.99 in is 12 in to a sixteenth: one foot, never 0'-12"
    CHECK(print_feet(inches(11.99), k_inch) == "1'-0\"");
}

TEST_CASE("decimals whatever the system") {
    CHECK(print_decimal(inches(0.03125), k_inch) == "0.031 in");
    CHECK(print_decimal(inches(0.03125), k_inch, Rounding::up) == "0.032 in");
    CHECK(print_decimal(millimetres(0.8), k_metric) == "0.8 mm");
    CHECK(print_decimal(millimetres(8.257), k_metric, Rounding::down) == "8.25 mm");
}

TEST_CASE("forces, stresses and the rest in the shop's units") {
    CHECK(print(us_tons(45.94), k_inch) == "45.9 ton");
    CHECK(print(us_tons(45.91), k_inch, Rounding::up) == "46.0 ton");
    CHECK(print(us_tons(45.99), k_inch, Rounding::down) == "45.9 ton");
    CHECK(print(kilonewtons(230.74), k_metric) == "230.7 kN");
    CHECK(print(ksi(52.0), k_inch) == "52 ksi");
    CHECK(print(ksi(9.6), k_inch) == "9.6 ksi");
    CHECK(print(megapascals(407.6), k_metric) == "408 MPa");
    CHECK(print(kilograms(12.34), k_metric) == "12.3 kg");
    CHECK(print(pounds(1.234), k_inch) == "1.23 lb");
    CHECK(print(pounds_per_foot(4.9), k_inch) == "4.90 lb/ft");
    CHECK(print(kilograms_per_metre(7.29), k_metric) == "7.29 kg/m");
    CHECK(print(foot_pounds(812.4), k_inch) == "812 ft-lbf");
    CHECK(print(joules(1100.2), k_metric) == "1100 J");
    CHECK(print(inches(2.0) * inches(1.5), k_inch) == "3.000 in²");
    CHECK(print(degrees(22.5), k_inch) == "22.5 deg");
    CHECK(print(degrees(90.0), k_metric) == "90 deg");
}

TEST_CASE("a working shows more digits than a sheet") {
    CHECK(print_working(inches(0.3125), k_inch) == "0.3125 in");
    CHECK(print_working(millimetres(7.9375), k_metric) == "7.94 mm");
    CHECK(print_working(us_tons(45.946), k_inch) == "45.95 ton");
    CHECK(print_working(ksi(48.75), k_inch) == "48.8 ksi");
    CHECK(print_working(Number{0.42, 3}, k_inch) == "0.420");
    CHECK(print_working(Share{0.26}, k_metric) == "26 %");
    CHECK(print_working(degrees(45.0), k_metric) == "45 deg");
}

TEST_CASE("a value on a step stays there whichever way is rounded, dust or no dust") {
    for (const int denominator : {2, 4, 8, 16, 32, 64}) {
        const PrintStyle style{UnitSystem::inch, denominator};
        for (int n = 0; n <= 480 * denominator; n += 7) {
            const double exact = static_cast<double>(n) / denominator;
            for (const double value : {exact, exact * (1.0 + 1e-13), exact * (1.0 - 1e-13)})
                for (const Rounding way : {Rounding::up, Rounding::down, Rounding::nearest})
                    REQUIRE(round_to_step(inches(value), style, way) == inches(exact));
        }
    }
    // 0.1 mm steps are no exact doubles, which is where creeping would show
    for (int n = 0; n < 20000; ++n)
        REQUIRE(to_millimetres(round_to_step(millimetres(n * 0.1), k_metric, Rounding::up)) ==
                n / 10.0);
}

TEST_CASE("rounding up is never below and rounding down never above the value") {
    std::mt19937_64 random(k_seed);
    for (int i = 0; i < 20000; ++i) {
        const Length value = inches(unit_interval(random) * 480.0 - 20.0);
        // The snap on a step may take or give 1e-9 of the count, far below anything that is cut.
        const Length dust = millimetres(1e-9 * (std::abs(to_millimetres(value)) + 1.0));
        for (const PrintStyle style : {k_inch, k_fine, k_metric}) {
            const Length up = round_to_step(value, style, Rounding::up);
            const Length down = round_to_step(value, style, Rounding::down);
            const Length step = style.system == UnitSystem::metric
                                    ? millimetres(0.1)
                                    : inches(1.0 / style.denominator);
            REQUIRE(up >= value - dust);
            REQUIRE(down <= value + dust);
            REQUIRE(up - value <= step + dust);
            REQUIRE(value - down <= step + dust);
            const auto printed = parse_length(print(value, style, Rounding::up), {}, "x");
            REQUIRE(printed);
            REQUIRE(*printed >= value - dust);
        }
    }
}

TEST_CASE("every 1/64 inch up to 480 in prints and reads back identical") {
    for (int n = 0; n <= 480 * 64; ++n) {
        const Length value = inches(n / 64.0);
        for (const std::string& text : {print(value, k_fine), print_feet(value, k_fine)}) {
            CAPTURE(text);
            const auto back = parse_length(text, {}, "length");
            REQUIRE(back);
            REQUIRE(*back == value);
        }
        const auto bare = parse_length(print_bare(value, k_fine), UnitSystem::inch, "length");
        REQUIRE(bare);
        REQUIRE(*bare == value);
    }
}
