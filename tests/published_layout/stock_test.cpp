// Hand arithmetic on running places and bars; weights of bars from the AISC Shapes Database v15.0
// Tolerance:  exact unless the row says so

#include <array>
#include <cmath>

#include "published_layout/asked.h"

using namespace treadle;
using namespace treadle::test;
using calc::Input;

namespace {

const char* const k_running = "running.places";

Input::Object six_holes(const char* step) {
    Input::Object in{
        {"length", "23-7/16 in"}, {"first", "1-1/2 in"}, {"last", "1-1/2 in"}, {"count", "6"}};
    if (*step != '\0')
        in.emplace_back("step", step);
    return in;
}

double bar_pounds(Input::Object section, const char* length) {
    const Input::Object in{
        {"section", Input(std::move(section))}, {"length", length}, {"material", "A36"}};
    return figure(ask("section.weight", in), "mass") / 0.45359237;
}

Input::Object bar(const char* length, const char* piece, Input::Object more = {}) {
    Input::Object in{{"length", length}, {"piece", piece}};
    in.insert(in.end(), more.begin(), more.end());
    return in;
}

double count(const char* length, const char* piece, Input::Object more = {}) {
    return base_figure("bar.pieces", "count", bar(length, piece, std::move(more)));
}

AskedRow pieces(const char* where, double ours, double expected, double tolerance = k_exact) {
    return {k_worked, "bar.pieces", where, ours, expected, tolerance};
}

} // namespace

TEST_CASE("running-places: six holes in 23-7/16, to the sixteenth") {
    // (23.4375 - 3) / 5 = 4.0875; each place once from the datum
    const auto place = [](std::size_t i) {
        return inch_item(k_running, "positions", i, six_holes("1/16 in"));
    };
    const auto row = [](const char* where, double ours, double expected) {
        return AskedRow{k_worked, k_running, where, ours, expected, k_exact};
    };
    const double pitch = inch(k_running, "pitch", six_holes(""));
    const std::array k_rows{
        row("pitch", pitch, 4.0875),
        row("1", place(0), 1.5),
        row("2", place(1), 5.5625),
        row("3", place(2), 9.6875),
        row("4", place(3), 13.75),
        row("5", place(4), 17.875),
        row("6", place(5), 21.9375),
    };
    CHECK(k_rows.size() == 7);
    check_and_count(k_rows);
    // Chained 4-1/16 pitches end at 1.5 + 5 x 4.0625 = 21.8125: 1/8 short.
    const double chained = 1.5 + 5.0 * std::floor(pitch * 16.0 + 0.5) / 16.0;
    const std::array k_differ{
        AskedRow{k_differs, k_running, "chained, last hole", chained, 21.8125, k_exact},
        AskedRow{k_differs, k_running, "chained is short by", place(5) - chained, 0.125, k_exact},
    };
    CHECK(k_differ.size() == 2);
    check_and_count(k_differ);
}

TEST_CASE("bar-usable: bars in other units, and trimmed") {
    const auto usable = [](Input::Object in) { return inch("bar.usable", "usable", in); };
    const std::array k_rows{
        AskedRow{k_worked, "bar.usable", "6 m", usable({{"length", "6 m"}}), 236.22, 0.01},
        AskedRow{k_worked,
                 "bar.usable",
                 "12 m in feet",
                 usable({{"length", "12 m"}}) / 12.0,
                 39.370,
                 0.01},
        // 252 - 1
        AskedRow{k_worked,
                 "bar.usable",
                 "21 ft, 1/2 off each end",
                 usable({{"length", "21 ft"}, {"trim_start", "1/2 in"}, {"trim_end", "1/2 in"}}),
                 251.0,
                 k_exact},
    };
    CHECK(k_rows.size() == 3);
    check_and_count(k_rows);
}

TEST_CASE("section.weight reproduces whole bars of the shapes database") {
    const std::array k_rows{
        // 3.19 x 40, and 2.72 lb/ft x 21
        AskedRow{k_published,
                 "section.weight",
                 "L2x2x1/4, 40 ft",
                 bar_pounds({{"shape", "angle"},
                             {"width", "2 in"},
                             {"height", "2 in"},
                             {"thickness", "1/4 in"}},
                            "40 ft"),
                 127.6,
                 0.1},
        AskedRow{k_published,
                 "section.weight",
                 "NPS 1-1/2 schedule 40, 21 ft",
                 bar_pounds({{"shape", "pipe"}, {"width", "1.9 in"}, {"thickness", "0.145 in"}},
                            "21 ft"),
                 57.1,
                 0.2},
    };
    CHECK(k_rows.size() == 2);
    check_and_count(k_rows);
}

TEST_CASE("bar-pieces: equal pieces, by hand") {
    const Input::Object saw{{"kerf", "1/8 in"}};
    const Input::Object slug{{"kerf", "3/4 in"}};
    const Input::Object trims{{"trim_start", "5 mm"}, {"trim_end", "5 mm"}};
    const Input::Object thin{{"kerf", "0.063 in"}};
    const std::array k_rows{
        // 8 of 60 from 240: 4 a bar on a shear (2 bars), 3 on a saw (3 bars)
        pieces("60 from 240, shear: bars", std::ceil(8 / count("240 in", "60 in")), 2),
        pieces("60 from 240, saw: bars", std::ceil(8 / count("240 in", "60 in", saw)), 3),
        // 16 of 29-1/2 from 240: 8 a bar; with a 3/4 slug (240.75) / 30.25 = 7.96
        pieces("29-1/2 from 240, shear", count("240 in", "29-1/2 in"), 8),
        pieces("29-1/2 from 240, slug", count("240 in", "29-1/2 in", slug), 7),
        // 5 x 47.5 = 237.5 leaves 2.5 in: not holdable under 4
        pieces("47-1/2 from 240", count("240 in", "47-1/2 in"), 5),
        pieces("47-1/2 from 240, 4 in to hold",
               count("240 in", "47-1/2 in", {{"holdable", "4 in"}}),
               4),
        // 5990 = 5 x 1195 + 15
        pieces("1195 from 6000, trimmed", count("6000 mm", "1195 mm", trims), 5),
        pieces("its drop",
               base_figure("bar.pieces", "drop", bar("6000 mm", "1195 mm", trims)),
               15,
               1e-6),
        // 252 - 6 x 36.063 = 35.622; seven would need 252.378
        pieces("36 from 252, saw", count("252 in", "36 in", thin), 6),
        pieces("its drop", inch("bar.pieces", "drop", bar("252 in", "36 in", thin)), 35.622, 0.001),
        pieces("36 from 252, shear", count("252 in", "36 in"), 7),
        pieces("its drop", inch("bar.pieces", "drop", bar("252 in", "36 in")), 0),
    };
    CHECK(k_rows.size() == 12);
    check_and_count(k_rows);
}
