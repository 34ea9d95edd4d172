// Hand arithmetic on two cylinders, pipe sizes of the AISC Shapes Database (NPS 1-1/2: 1.900
// outside, 1.610 bore; NPS 2: 2.375); and an independent bisection on the run's surface. Tolerance:
// half of the last digit worked out, or as the row says

#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "published_layout/asked.h"

using namespace treadle;
using namespace treadle::test;
using calc::Input;

namespace {

const char* const k_template = "saddle.template";

Input::Object joint(const char* branch, const char* run, Input::Object more = {}) {
    Input::Object in{{"branch_od", branch}, {"run_od", run}};
    in.insert(in.end(), more.begin(), more.end());
    return in;
}
const Input::Object k_square = joint("1.9 in", "2.375 in");
const Input::Object k_bore =
    joint("1.9 in", "2.375 in", {{"branch_wall", "0.145 in"}, {"laid_out", "bore"}});
const Input::Object k_slant = joint("1.9 in", "2.375 in", {{"angle", "45"}});
const Input::Object k_equal = joint("1.9 in", "1.9 in");
const Input::Object k_equal_slant = joint("1.9 in", "1.9 in", {{"angle", "60"}});
const Input::Object k_offset = joint("1.05 in", "2.375 in", {{"offset", "0.4 in"}});

AskedRow row(const char* where, double ours, double expected, double tolerance) {
    return {k_worked, k_template, where, ours, expected, tolerance};
}
double y(const Input::Object& in, std::size_t station) {
    return inch_item(k_template, "ordinates", station, in);
}

struct Joint {
    double run;    ///< radius
    double branch; ///< radius
    double angle;  ///< degrees
    double offset;
};

/// The cut at p round the branch, found on the run's surface by bisection: a point is walked along
/// the branch's side from far outside until it meets the run's cylinder. The run lies along x; the
/// branch's axis leans from z towards x and passes the run's axis at the offset in y.
double cut_by_bisection(const Joint& j, double p) {
    const double lean = j.angle * std::numbers::pi / 180.0;
    const double axis[3] = {std::cos(lean), 0.0, std::sin(lean)};
    // Across the branch, towards the acute side: square to the axis, in the plane of both axes.
    const double acute[3] = {-std::sin(lean), 0.0, std::cos(lean)};
    const auto distance = [&](double w) { // from the run's axis to the point at w
        const double side = j.branch * std::cos(p);
        const double across = j.offset + j.branch * std::sin(p);
        const double up = w * axis[2] - side * acute[2];
        return std::hypot(across, up);
    };
    // Downwards from far out the first meeting is the near side of the run.
    double far = 50.0 * j.run;
    double near = j.branch * std::cos(p) * acute[2] / axis[2]; // on the level of the run's axis
    for (int i = 0; i < 200; ++i) {
        const double middle = (far + near) / 2.0;
        (distance(middle) > j.run ? far : near) = middle;
    }
    return (far + near) / 2.0;
}

} // namespace

TEST_CASE("saddle-throat, saddle-ordinate, saddle-cut-back: joints by hand") {
    const std::array k_rows{
        // 1.1875 - sqrt(1.1875^2 - 0.95^2); with the bore's 0.805
        row("square throat", inch(k_template, "throat", k_square), 0.4750, 0.0005),
        row("square, bore", inch(k_template, "throat", k_bore), 0.3145, 0.0005),
        row("equal pipes", inch(k_template, "throat", k_equal), 0.950, k_exact),
        // 3 - sqrt(9 - 1)
        row("2 in on 6 in", inch(k_template, "throat", joint("2 in", "6 in")), 0.1716, 0.0005),
        row("45: y at 0", y(k_slant, 0), 1.9169, 0.001),
        row("45: y at 90", y(k_slant, 4), 0.2951, 0.001),
        row("45: y at 180", y(k_slant, 8), 0.0169, 0.001),
        row("45: depth", inch(k_template, "depth", k_slant), 1.9169, 0.001),
        row("offset 0.4: y at 0", y(k_offset, 0), 0.3734, 0.001),
        row("offset 0.4: y at 90", y(k_offset, 4), 0.0, 0.001),
        row("offset 0.4: y at 180", y(k_offset, 8), 0.3734, 0.001),
        row("offset 0.4: y at 270", y(k_offset, 12), 0.4362, 0.001),
        row("r + e > R is refused",
            refused(k_template, "offset", joint("1.315 in", "1.66 in", {{"offset", "0.25 in"}})),
            1,
            0),
        row("48.3 on 60.3",
            base_figure(k_template, "throat", joint("48.3 mm", "60.3 mm")),
            12.100,
            0.005),
        // least w: sqrt(R^2 - r^2), the same square and slanted; 0.8730 on the bore; 0 for equals
        row("square: cut back", inch(k_template, "cut_back", k_square), 0.7125, 0.0001),
        row("bore: cut back", inch(k_template, "cut_back", k_bore), 0.8730, 0.0001),
        row("45: cut back", inch(k_template, "cut_back", k_slant), 0.7125, 0.0001),
        row("equal 60: cut back", inch(k_template, "cut_back", k_equal_slant), 0.0, 0.0001),
        row("45: long point", base_figure(k_template, "long_point", k_slant), 138.59, 0.01),
        row("equal 60: long point",
            base_figure(k_template, "long_point", k_equal_slant),
            90.0,
            0.01),
        // pi x 1.9 / 16; pi x 48.3 / 12
        row("spacing, 16", inch(k_template, "spacing", k_square), 0.37306, 0.00001),
        row("spacing, 12",
            base_figure(k_template, "spacing", joint("48.3 mm", "60.3 mm", {{"ordinates", "12"}})),
            12.645,
            0.001),
        // paper 0.2 mm: pi x 48.5 / 12
        row("spacing, paper",
            base_figure(k_template,
                        "spacing",
                        joint("48.3 mm", "60.3 mm", {{"ordinates", "12"}, {"paper", "0.2 mm"}})),
            12.697,
            0.001),
    };
    CHECK(k_rows.size() == 23);
    check_and_count(k_rows);
}

TEST_CASE("saddle-ordinate, saddle-spacing: whole templates of 16 and 12 stations") {
    struct Station {
        double square, bore, slant, equal, equal_slant;
    };
    // y from the long point; stations 0 to 8, the others mirror them
    const std::array k_rows{
        Station{0.4750, 0.3145, 1.9169, 0.9500, 1.6454},
        Station{0.4180, 0.2738, 1.7639, 0.8777, 1.5202},
        Station{0.2667, 0.1692, 1.3441, 0.6718, 1.1635},
        Station{0.0874, 0.0528, 0.7823, 0.3635, 0.6297},
        Station{0.0000, 0.0000, 0.2951, 0.0000, 0.0000},
        Station{0.0874, 0.0528, 0.0552, 0.3635, 0.2099},
        Station{0.2667, 0.1692, 0.0006, 0.6718, 0.3878},
        Station{0.4180, 0.2738, 0.0086, 0.8777, 0.5067},
        Station{0.4750, 0.3145, 0.0169, 0.9500, 0.5485},
    };
    CHECK(k_rows.size() == 9);
    for (std::size_t i = 0; i < k_rows.size(); ++i) {
        CAPTURE(i);
        const Station& s = k_rows[i];
        for (const std::size_t at : {i, (16 - i) % 16}) {
            CHECK(std::abs(y(k_square, at) - s.square) <= 0.00005001);
            CHECK(std::abs(y(k_bore, at) - s.bore) <= 0.00005001);
            CHECK(std::abs(y(k_slant, at) - s.slant) <= 0.00005001);
            CHECK(std::abs(y(k_equal, at) - s.equal) <= 0.00005001);
            CHECK(std::abs(y(k_equal_slant, at) - s.equal_slant) <= 0.00005001);
        }
    }
    count_rows(k_worked, 5 * k_rows.size(), k_template);
    const Input::Object metric = joint("48.3 mm", "60.3 mm", {{"ordinates", "12"}});
    const std::array k_metric{12.100, 9.576, 3.667, 0.0, 3.667, 9.576, 12.100};
    CHECK(k_metric.size() == 7);
    for (std::size_t i = 0; i < k_metric.size(); ++i)
        CHECK(std::abs(item(k_template, "ordinates", i, metric) - k_metric[i]) <= 0.0005001);
    count_rows(k_worked, k_metric.size(), k_template);
}

TEST_CASE("saddle-ordinate agrees with a bisection on the run's cylinder") {
    const std::array k_joints{Joint{30.15, 24.15, 90, 0},
                              Joint{30.15, 24.15, 45, 0},
                              Joint{30.15, 13, 30, 0},
                              Joint{24.15, 24.15, 60, 0},
                              Joint{30.15, 13.3, 90, 10},
                              Joint{30.15, 13.3, 50, 10},
                              Joint{100, 20, 20, 60},
                              Joint{57, 30, 75, 26.9}};
    constexpr int k_stations = 36;
    std::size_t rows = 0;
    for (const Joint& j : k_joints) {
        CAPTURE(j.angle);
        CAPTURE(j.offset);
        double least = 1e9;
        constexpr int k_fine = 7200;
        for (int i = 0; i < k_fine; ++i)
            least = std::fmin(least, cut_by_bisection(j, 2.0 * std::numbers::pi * i / k_fine));
        const auto mm = [](double value) { return std::to_string(value) + " mm"; };
        const Input::Object in{{"branch_od", mm(2 * j.branch)},
                               {"run_od", mm(2 * j.run)},
                               {"angle", std::to_string(j.angle)},
                               {"offset", mm(j.offset)},
                               {"ordinates", std::to_string(k_stations)}};
        CHECK(base_figure(k_template, "cut_back", in) ==
              doctest::Approx(least).epsilon(0.0001).scale(1));
        for (int i = 0; i < k_stations; ++i) {
            const double at = 2.0 * std::numbers::pi * i / k_stations;
            const double whole = item(k_template, "ordinates", static_cast<std::size_t>(i), in) +
                                 base_figure(k_template, "cut_back", in);
            CAPTURE(i);
            CHECK(std::abs(whole - cut_by_bisection(j, at)) <= 2e-5); // sizes have six decimals
            ++rows;
        }
    }
    CHECK(rows == 288);
    count_rows("cross-check", rows, k_template);
}

TEST_CASE("saddle-blank, saddle-throats: posts at 48 in") {
    const char* const k_blank = "saddle.blank";
    const auto posts = [](const char* run, Input::Object more = {}) {
        Input::Object in{{"branch_od", "1.9 in"}, {"run_od", run}, {"centres", "48 in"}};
        in.insert(in.end(), more.begin(), more.end());
        return in;
    };
    const auto line = [&](const char* where, double ours, double expected, double tolerance) {
        return AskedRow{k_worked, k_blank, where, ours, expected, tolerance};
    };
    const Input::Object bore{{"branch_wall", "0.145 in"}, {"laid_out", "bore"}};
    const std::array k_rows{
        // 48 - 2 x 0.7125; 48 - 2.375
        line("NPS 2 posts: blank", inch(k_blank, "blank", posts("2.375 in")), 46.5750, 0.001),
        line("NPS 2 posts: throats",
             inch(k_blank, "throat_to_throat", posts("2.375 in")),
             45.6250,
             0.001),
        // 48 - 2 x 0.8730
        line("on the bore", inch(k_blank, "blank", posts("2.375 in", bore)), 46.2540, 0.001),
        line("equal pipes: blank", inch(k_blank, "blank", posts("1.9 in")), 48.0, k_exact),
        line("equal pipes: throats",
             inch(k_blank, "throat_to_throat", posts("1.9 in")),
             46.1,
             k_exact),
        // one of each: 48 - 0.7125; 48 - 1.1875 - 0.95
        line("one of each: blank",
             inch(k_blank, "blank", posts("2.375 in", {{"second_run_od", "1.9 in"}})),
             47.2875,
             0.001),
        line("one of each: throats",
             inch(k_blank, "throat_to_throat", posts("2.375 in", {{"second_run_od", "1.9 in"}})),
             45.8625,
             0.001),
        // 45 degrees: 48 / sin 45 - 2 x 0.7125 = 67.8823 - 1.4250
        line("slanted: blank",
             inch(k_blank, "blank", posts("2.375 in", {{"angle", "45"}})),
             66.4573,
             0.001),
        // 1/32 in at each end: 46.5750 - 0.0625
        line("fit-up: blank",
             inch(k_blank, "blank", posts("2.375 in", {{"fit_up", "1/32 in"}})),
             46.5125,
             0.001),
    };
    CHECK(k_rows.size() == 9);
    check_and_count(k_rows);
}

TEST_CASE("saddle-die: a die of another radius") {
    const char* const k_die = "saddle.die";
    const auto die = [](const char* tool, const char* run, const char* branch) {
        return Input::Object{{"die_od", tool}, {"run_od", run}, {"branch_od", branch}};
    };
    const auto line = [&](const char* where, double ours, double expected, double tolerance) {
        return AskedRow{k_worked, k_die, where, ours, expected, tolerance};
    };
    const std::array k_rows{
        // h(x) = x - sqrt(x^2 - 0.83^2): h(0.95) = 0.4878, h(1.1875) = 0.3382
        line("0.95 on 1.1875: crown",
             inch(k_die, "crown_gap", die("1.9 in", "2.375 in", "1.66 in")),
             0.1496,
             0.001),
        line("0.95 on 1.1875: flank",
             inch(k_die, "flank_gap", die("1.9 in", "2.375 in", "1.66 in")),
             0.0,
             k_exact),
        line("1.1875 on 0.95: flank",
             inch(k_die, "flank_gap", die("2.375 in", "1.9 in", "1.66 in")),
             0.1496,
             0.001),
        line("1.1875 on 0.95: warned",
             said(k_die, "Over 1/16 in", die("2.375 in", "1.9 in", "1.66 in")),
             1,
             0),
        line("its own die",
             inch(k_die, "crown_gap", die("1.9 in", "1.9 in", "1.66 in")),
             0.0,
             k_exact),
        line("smaller than the branch",
             refused(k_die, "die_od", die("1.5 in", "1.9 in", "1.66 in")),
             1,
             0),
        // a die by the nominal 1-1/2 on an NPS 1-1/2 run: h(0.75) - h(0.95), r 0.6575:
        // 0.3892 - 0.2643
        line("nominal for outside",
             inch(k_die, "crown_gap", die("1.5 in", "1.9 in", "1.315 in")),
             0.1249,
             0.0005),
    };
    CHECK(k_rows.size() == 7);
    check_and_count(k_rows);
}
