// Worked by hand from DIN 6935's formula v = 2 (r+s) - (pi A / 180)(r + k s / 2),
// k = 0.65 + 0.5 log10(r/s), and from BA = (pi A / 180)(r + K t).
// Tolerance: half of the last digit written.

#include "process/blank.h"

#include <array>

#include "evidence_rows.h"
#include "published/rows.h"

using namespace treadle;
using namespace treadle::test;
using process::BlankMethod;
using process::BlankRule;

namespace {

process::BendFigures
figures(double t, double r, double angle_deg, const BlankRule& rule = BlankRule{}) {
    const auto result =
        process::bend_figures({millimetres(t), millimetres(r), degrees(angle_deg)}, rule);
    REQUIRE(result.ok());
    return *result;
}

/// By the opening angle, as the standard writes it.
double din_v(double opening_deg, double r, double s) {
    return quantity::to_millimetres(figures(s, r, 180.0 - opening_deg).deduction);
}

struct Given {
    double allowance, setback, deduction;
};
Given with_k(double t, double r, double angle_deg, double k) {
    const auto f = figures(t, r, angle_deg, {BlankMethod::k_factor, k});
    return {quantity::to_millimetres(f.allowance),
            quantity::to_millimetres(f.setback),
            quantity::to_millimetres(f.deduction)};
}

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("bend-deduction-din over a grid at 90 degrees") {
        struct Line {
            double r;
            std::array<double, 10> v; ///< by s; -1 where r/s < 0.6 leaves the good range
        };
        constexpr std::array k_s{1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0};
        constexpr std::array k_lines{
            Line{1, {1.92, 2.77, -1, -1, -1, -1, -1, -1, -1, -1}},
            Line{1.6, {2.10, 2.90, 3.74, 4.60, -1, -1, -1, -1, -1, -1}},
            Line{2.5, {2.41, 3.18, 3.98, 4.80, 5.63, 7.35, -1, -1, -1, -1}},
            Line{4, {2.97, 3.70, 4.46, 5.24, 6.04, 7.67, 9.35, 11.07, -1, -1}},
            Line{6, {3.79, 4.45, 5.18, 5.93, 6.69, 8.26, 9.87, 11.51, 14.88, 18.34}},
            Line{10, {5.51, 6.11, 6.72, 7.42, 8.14, 9.62, 11.15, 12.71, 15.90, 19.19}},
            Line{16, {8.08, 8.69, 9.30, 9.90, 10.51, 11.88, 13.32, 14.80, 17.84, 20.96}},
            Line{20, {9.80, 10.41, 11.01, 11.62, 12.23, 13.44, 14.85, 16.29, 19.25, 22.30}},
            Line{25, {11.94, 12.55, 13.16, 13.77, 14.37, 15.59, 16.81, 18.21, 21.09, 24.06}},
        };
        int rows = 0;
        for (const Line& line : k_lines) {
            for (std::size_t i = 0; i < k_s.size(); ++i) {
                if (line.v[i] < 0.0)
                    continue;
                CAPTURE(line.r);
                CAPTURE(k_s[i]);
                CHECK(std::abs(din_v(90, line.r, k_s[i]) - line.v[i]) <= 0.0051);
                ++rows;
            }
        }
        CHECK(rows == 70);
        count_rows("worked", 70, "bend.deduction");
    }

    TEST_CASE("bend-deduction-din in its three branches") {
        const std::array k_rows{
            Row{"opening 60, r 6, s 5: k 0.6896", din_v(60, 6, 5), 5.823, 0.0005},
            Row{"opening 45, r 6, s 4", din_v(45, 6, 4), 2.385, 0.0005},
            Row{"opening 30, r 3, s 2", din_v(30, 3, 2), 0.214, 0.0005},
            Row{"opening 75, r 10, s 5", din_v(75, 10, 5), 8.006, 0.0005},
            Row{"opening 120, r 4, s 3", din_v(120, 4, 3), 2.775, 0.0005},
            Row{"opening 135, r 6, s 5", din_v(135, 6, 5), 3.046, 0.0005},
            Row{"opening 150, r 10, s 6", din_v(150, 10, 6), 2.143, 0.0005},
            Row{"opening 165, r 8, s 8", din_v(165, 8, 8), 1.438, 0.0005},
            Row{"opening 170, r 8, s 8: nothing", din_v(170, 8, 8), 0.0, 0.0},
            Row{"r/s 6: k 1", din_v(90, 30, 5), 18.949, 0.0005},
            Row{"r = s = 5, k 0.65", din_v(90, 5, 5), 9.5935, 0.00005},
        };
        CHECK(k_rows.size() == 11);
        check_rows(k_rows);
        count_rows("worked", 11, "bend.deduction");
    }

    TEST_CASE("bend-allowance-din, bend-allowance-given, bend-deduction and bend-setback") {
        const Given inch =
            with_k(0.25, 0.25, 90, 0.42); // the numbers are inches, the ratio the same
        const Given obtuse = with_k(6, 6, 45, 0.42);
        const Given acute = with_k(3, 4.5, 120, 0.40);
        const std::array k_rows{
            Row{"t r 0.25, K 0.42: BA 1.5708 x 0.355", inch.allowance, 0.5576, 0.00005},
            Row{"setback 0.5 tan 45", inch.setback, 0.5, 1e-9},
            Row{"2 x 0.5 - 0.5576", inch.deduction, 0.4424, 0.00005},
            Row{"t r 6, 45 degrees: BA 0.7854 x 8.52", obtuse.allowance, 6.6916, 0.00005},
            Row{"setback 12 tan 22.5", obtuse.setback, 4.9706, 0.00005},
            Row{"2 x 4.9706 - 6.6916", obtuse.deduction, 3.2495, 0.0001},
            Row{"t 3, r 4.5, 120 degrees: BA 2.0944 x 5.7", acute.allowance, 11.9381, 0.00005},
            // The apex form would be 7.5 tan 60 = 12.99; beyond 90 degrees legs end at the tangent
            // plane.
            Row{"setback 7.5", acute.setback, 7.5, 1e-9},
            Row{"2 x 7.5 - 11.9381", acute.deduction, 3.0619, 0.00005},
            Row{"DIN, r = s = 1: K 0.325, BA 1.5708 x 1.325",
                quantity::to_millimetres(figures(1, 1, 90).allowance),
                2.0813,
                0.00005},
        };
        CHECK(k_rows.size() == 10);
        check_rows(k_rows);
        count_rows("worked", 4, "bend.allowance");
        count_rows("worked", 3, "bend.setback");
        count_rows("worked", 3, "bend.deduction");
    }

    TEST_CASE("bend-setback-apex: a K table keeps to the apex at every angle") {
        // t 3, r 4.5, 120 degrees, K 0.40: 7.5 tan 60 = 12.9904; 2 x 12.9904 - 11.9381 = 14.0427.
        process::BlankRule rule{process::BlankMethod::k_factor, 0.40, process::LegsTo::apex};
        const process::SharpBend bend{millimetres(3), millimetres(4.5), degrees(120)};
        const auto figures = process::bend_figures(bend, rule);
        REQUIRE(figures.ok());
        const std::array k_rows{
            Row{"7.5 tan 60", quantity::to_millimetres(figures->setback), 12.9904, 0.00005},
            Row{"2 x 12.9904 - 11.9381",
                quantity::to_millimetres(figures->deduction),
                14.0427,
                0.00005},
        };
        CHECK(k_rows.size() == 2);
        check_rows(k_rows);
        CHECK_FALSE(
            process::bend_figures({millimetres(3), millimetres(4.5), degrees(176)}, rule).ok());
        count_rows("worked", 1, "bend.setback");
        count_rows("worked", 1, "bend.deduction");
    }

    TEST_CASE("blank-length of a U, with bend lines and leg origins") {
        const process::SharpBend bend{millimetres(4), millimetres(6), degrees(90)};
        const auto blank = process::blank_length(
            {{millimetres(50), millimetres(100), millimetres(50)}, {bend, bend}}, BlankRule{});
        REQUIRE(blank.ok());
        REQUIRE(blank->bend_lines.size() == 2);
        REQUIRE(blank->leg_origins.size() == 3);
        const auto mm = [](Length l) { return quantity::to_millimetres(l); };
        const std::array k_rows{
            Row{"200 - 2 x 8.257", mm(blank->length), 183.49, 0.005},
            Row{"first line at 50 - 8.257 / 2", mm(blank->bend_lines[0]), 45.872, 0.0005},
            Row{"second leg counts from 50 - 8.257", mm(blank->leg_origins[1]), 41.743, 0.0005},
            Row{"second line at 41.743 + 100 - 8.257 / 2",
                mm(blank->bend_lines[1]),
                137.615,
                0.0005},
            Row{"third leg counts from 150 - 2 x 8.257",
                mm(blank->leg_origins[2]),
                133.487,
                0.0005},
        };
        CHECK(k_rows.size() == 5);
        check_rows(k_rows);
        count_rows("worked", 5, "bend.blank");
    }

    TEST_CASE("the rules of the neutral line spread over half a millimetre at r = t = 3 mm") {
        // Known disagreement. 12 - 1.5708 (3 + 3 K).
        const std::array k_rows{
            Row{"K 0.33 (Groover, r under 2 t)", with_k(3, 3, 90, 0.33).deduction, 5.73, 0.005},
            Row{"DIN 6935", din_v(90, 3, 3), 5.76, 0.005},
            Row{"Machinery's Handbook, 0.64",
                quantity::to_millimetres(
                    figures(3, 3, 90, {BlankMethod::handbook_medium, 0.0}).deduction),
                5.37,
                0.005},
            Row{"FAA, K 0.4475", with_k(3, 3, 90, 0.4475).deduction, 5.18, 0.005},
        };
        CHECK(k_rows.size() == 4);
        check_rows(k_rows);
        count_rows("disagreement", 4, "bend.deduction");
    }

} // TEST_SUITE
