// Reproduces: ANSI/AISC 360-16 tables J3.3, J3.3M, J3.4, J3.4M, J3.5 and section J3.5; the AISC
//             FAQ 5.1.1 on slots; Brockenbrough and Merritt, pp. 5.47-5.48 (AISC 360-05)
// How read:   text of 360-16 and the handbook in excerpt, J3.3 in inches second-hand; rows marked
//             from memory were not looked up
// Tolerance:  to the printed digit, which is exact

#include <array>

#include "layout/bolt.h"
#include "published_layout/asked.h"

using namespace treadle;
using namespace treadle::test;
using calc::Input;

namespace {

const char* const k_hole = "hole.for_bolt";
const char* const k_edge = "hole.edge";

double width(const char* bolt, const char* kind) {
    return inch(k_hole, "width", {{"bolt", bolt}, {"kind", kind}});
}
double length(const char* bolt, const char* kind) {
    return inch(k_hole, "length", {{"bolt", bolt}, {"kind", kind}});
}
double width_mm(const char* bolt, const char* kind, const char* edition = "360-16") {
    return base_figure(k_hole, "width", {{"bolt", bolt}, {"kind", kind}, {"edition", edition}});
}
double length_mm(const char* bolt, const char* kind) {
    return base_figure(k_hole, "length", {{"bolt", bolt}, {"kind", kind}});
}

AskedRow hole(const char* where, double ours, double expected) {
    return {k_published, k_hole, where, ours, expected, k_exact};
}

Input::Object rolled(const char* bolt, Input::Object more = {}) {
    Input::Object in{{"bolt", bolt}, {"edge", "rolled"}};
    in.insert(in.end(), more.begin(), more.end());
    return in;
}
double edge(const char* bolt, Input::Object more = {}) {
    return inch(k_edge, "least_edge", rolled(bolt, std::move(more)));
}
double sheared(const char* bolt) {
    return inch(k_edge, "least_edge", {{"bolt", bolt}, {"edge", "sheared"}});
}

} // namespace

TEST_CASE("bolt-hole: hole.for_bolt reproduces J3.3 and J3.3M") {
    const std::array k_rows{
        hole("3/4 standard", width("3/4 in", "standard"), 0.8125),
        hole("1 in standard, 360-16", width("1 in", "standard"), 1.125),
        hole("1/2 standard", width("1/2 in", "standard"), 0.5625),
        hole("5/8 oversize", width("5/8 in", "oversize"), 0.8125),
        hole("7/8 short slot", length("7/8 in", "short slot"), 1.125),
        hole("3/4 long slot", length("3/4 in", "long slot"), 1.875),
        hole("M20 oversize", width_mm("M20", "oversize"), 24),
        hole("M30 short slot, width", width_mm("M30", "short slot"), 33),
        hole("M30 short slot, length", length_mm("M30", "short slot"), 40),
        hole("M20 short slot, 26 and not 36", length_mm("M20", "short slot"), 26),
        hole("M24 standard", width_mm("M24", "standard"), 27),
        hole("M27 long slot", length_mm("M27", "long slot"), 67),
        hole("M36 by the last row", width_mm("M36", "oversize"), 44),
    };
    CHECK(k_rows.size() == 13);
    check_and_count(k_rows);
}

TEST_CASE("bolt-hole, bolt-hole-normal-en: rows from memory and by the last row's formula") {
    const auto row = [](const char* where, double ours, double expected) {
        return AskedRow{k_memory, k_hole, where, ours, expected, k_exact};
    };
    const std::array k_rows{
        // d + 1/8, d + 5/16, d + 1/8 by d + 3/8, d + 1/8 by 2.5 d
        row("1-1/4 standard", width("1-1/4 in", "standard"), 1.375),
        row("1-1/4 oversize", width("1-1/4 in", "oversize"), 1.5625),
        row("1-1/4 short slot, width", width("1-1/4 in", "short slot"), 1.375),
        row("1-1/4 short slot, length", length("1-1/4 in", "short slot"), 1.625),
        row("1-1/4 long slot, width", width("1-1/4 in", "long slot"), 1.375),
        row("1-1/4 long slot, length", length("1-1/4 in", "long slot"), 3.125),
        row("M12, 360-22", width_mm("M12", "standard", "360-22"), 14),
        row("EN 1090-2 M12", width_mm("M12", "standard", "en-1090"), 13),
        row("EN 1090-2 M20", width_mm("M20", "standard", "en-1090"), 22),
        row("EN 1090-2 M27", width_mm("M27", "standard", "en-1090"), 30),
        row("M12 before 360-22",
            refused(k_hole, "bolt", {{"bolt", "M12"}, {"kind", "standard"}}),
            1),
    };
    CHECK(k_rows.size() == 11);
    check_and_count(k_rows);
    const auto older = [](const char* bolt) {
        return inch(k_hole, "width", {{"bolt", bolt}, {"kind", "standard"}, {"edition", "360-10"}});
    };
    // Editions differ by 1/16 in from 1 in up, and AISC from EN by 1 mm at M24.
    const std::array k_differ{
        AskedRow{k_differs,
                 k_hole,
                 "1 in, 360-10",
                 width("1 in", "standard") - older("1 in"),
                 0.0625,
                 k_exact},
        AskedRow{k_differs,
                 k_hole,
                 "1-1/4 in, 360-10",
                 width("1-1/4 in", "standard") - older("1-1/4 in"),
                 0.0625,
                 k_exact},
        AskedRow{k_differs,
                 k_hole,
                 "M24, EN",
                 width_mm("M24", "standard") - width_mm("M24", "standard", "en-1090"),
                 1,
                 k_exact},
    };
    CHECK(k_differ.size() == 3);
    check_and_count(k_differ);
}

TEST_CASE("a slot of 13/16 by 1-1/4 for a 3/4 bolt is a long slot (AISC FAQ 5.1.1)") {
    const auto kind = layout::slot_kind({layout::BoltSystem::inch, inches(0.75)}, inches(1.25));
    REQUIRE(kind.ok());
    CHECK(*kind == layout::HoleKind::long_slot);
    const std::array k_rows{
        AskedRow{k_published,
                 k_edge,
                 "called a short slot, it is refused",
                 refused(k_edge,
                         "slot_length",
                         rolled("3/4 in", {{"kind", "short slot"}, {"slot_length", "1-1/4 in"}})),
                 1,
                 0},
    };
    CHECK(k_rows.size() == 1);
    check_and_count(k_rows);
}

TEST_CASE("edge-least, edge-slot-addition: hole.edge reproduces J3.4, J3.4M and J3.5") {
    const auto row = [](const char* where, double ours, double expected) {
        return AskedRow{k_published, k_edge, where, ours, expected, k_exact};
    };
    const std::array k_rows{
        row("3/4", edge("3/4 in"), 1.0),
        row("1/2", edge("1/2 in"), 0.75),
        row("7/8", edge("7/8 in"), 1.125),
        row("1-1/4", edge("1-1/4 in"), 1.625),
        row("1-1/2: 1.25 d", edge("1-1/2 in"), 1.875),
        row("M36, 46 and not 48", edge("M36") * 25.4, 46),
        row("M20", edge("M20") * 25.4, 26),
        row("M30", edge("M30") * 25.4, 38),
        row("1 in oversize: 1.25 + 0.125", edge("1 in", {{"kind", "oversize"}}), 1.375),
        row("3/4 long slot: 1 + 0.75 x 0.75", edge("3/4 in", {{"kind", "long slot"}}), 1.5625),
        row("same, 1-3/8 long: C2 0.5625 - 0.25",
            edge("3/4 in", {{"kind", "long slot"}, {"slot_length", "1-3/8 in"}}),
            1.3125),
        row("same, along the edge",
            edge("3/4 in", {{"kind", "long slot"}, {"slot_axis", "parallel"}}),
            1.0),
        row("3/4 short slot: 1 + 1/8", edge("3/4 in", {{"kind", "short slot"}}), 1.125),
        row("M24 oversize: 30 + 3", edge("M24", {{"kind", "oversize"}}) * 25.4, 33),
        row("3/4 pitch least", inch(k_edge, "least_spacing", rolled("3/4 in")), 2.0),
        row("3/4 pitch preferred", inch(k_edge, "preferred_spacing", rolled("3/4 in")), 2.25),
        row("M24 pitch least", inch(k_edge, "least_spacing", rolled("M24")) * 25.4, 64),
        row("M24 pitch preferred", inch(k_edge, "preferred_spacing", rolled("M24")) * 25.4, 72),
        row("edge at most, t 1/4",
            inch(k_edge, "greatest_edge", rolled("3/4 in", {{"thickness", "1/4 in"}})),
            3.0),
        row("edge at most, t 1/2",
            inch(k_edge, "greatest_edge", rolled("3/4 in", {{"thickness", "1/2 in"}})),
            6.0),
        row("edge at most, t 1: 6 in and no more",
            inch(k_edge, "greatest_edge", rolled("3/4 in", {{"thickness", "1 in"}})),
            6.0),
    };
    CHECK(k_rows.size() == 21);
    check_and_count(k_rows);
}

TEST_CASE("edge-least-sheared: the older column is the careful one, and it differs") {
    const auto metric = [](const char* where, const char* bolt, double expected) {
        return AskedRow{k_published, k_edge, where, sheared(bolt) * 25.4, expected, k_exact};
    };
    const auto memory = [](const char* where, double ours, double expected) {
        return AskedRow{k_memory, k_edge, where, ours, expected, k_exact};
    };
    const std::array k_rows{
        metric("handbook M16", "M16", 28),
        metric("handbook M20", "M20", 34),
        metric("handbook M24", "M24", 42),
        metric("handbook M36", "M36", 64),
        memory("3/4 sheared", sheared("3/4 in"), 1.25),
        memory("1/2 sheared", sheared("1/2 in"), 0.875),
        memory("1-1/4 sheared", sheared("1-1/4 in"), 2.25),
        memory("1-1/2 sheared: 1.75 d", sheared("1-1/2 in"), 2.625),
        // EN 1993-1-8 table 3.3 with d0: 1.2 x 22 and 2.2 x 22
        memory("EN M20",
               inch(k_edge, "least_edge", rolled("M20", {{"rule", "en-1993"}})) * 25.4,
               26.4),
        memory("EN M20 pitch",
               inch(k_edge, "least_spacing", rolled("M20", {{"rule", "en-1993"}})) * 25.4,
               48.4),
        memory("EN M24: 1.2 x 26",
               inch(k_edge, "least_edge", rolled("M24", {{"rule", "en-1993"}})) * 25.4,
               31.2),
        memory("EN M24 pitch: 2.2 x 26",
               inch(k_edge, "least_spacing", rolled("M24", {{"rule", "en-1993"}})) * 25.4,
               57.2),
        memory("EN hole 30: 1.2 x 30",
               base_figure(k_edge,
                           "least_edge",
                           {{"hole", "30 mm"}, {"edge", "rolled"}, {"rule", "en-1993"}}),
               36),
        memory("EN hole 30 pitch",
               base_figure(k_edge,
                           "least_spacing",
                           {{"hole", "30 mm"}, {"edge", "rolled"}, {"rule", "en-1993"}}),
               66),
    };
    CHECK(k_rows.size() == 14);
    check_and_count(k_rows);
    const auto newer = [](const char* bolt) {
        return inch(
            k_edge, "least_edge", {{"bolt", bolt}, {"edge", "sheared"}, {"rule", "360-16"}});
    };
    const std::array k_differ{
        AskedRow{k_differs,
                 k_edge,
                 "3/4: 1-1/4 against 1",
                 sheared("3/4 in") - newer("3/4 in"),
                 0.25,
                 k_exact},
        AskedRow{k_differs,
                 k_edge,
                 "M36: 64 against 46",
                 (sheared("M36") - newer("M36")) * 25.4,
                 18,
                 k_exact},
    };
    CHECK(k_differ.size() == 2);
    check_and_count(k_differ);
}

TEST_CASE("hole-greatest-pitch, hole-clear: pitches and the metal between") {
    const char* const k_pitch = "hole.greatest_pitch";
    const char* const k_clear = "hole.clear";
    const auto pitch = [&](const char* t, const char* surface) {
        return inch(k_pitch, "pitch", {{"thickness", t}, {"surface", surface}});
    };
    const std::array k_rows{
        AskedRow{k_published, k_pitch, "painted, 1/4", pitch("1/4 in", "painted"), 6.0, k_exact},
        AskedRow{
            k_published, k_pitch, "weathering, 1/4", pitch("1/4 in", "weathering"), 3.5, k_exact},
        AskedRow{k_published,
                 k_pitch,
                 "painted, 3/4: 12 in and no more",
                 pitch("3/4 in", "painted"),
                 12.0,
                 k_exact},
        AskedRow{k_published,
                 k_pitch,
                 "weathering, 20 mm: 180 mm and no more",
                 base_figure(k_pitch, "pitch", {{"thickness", "20 mm"}, {"system", "metric"}}),
                 180,
                 k_exact},
        // 1.25 - 0.8125 / 2
        AskedRow{k_worked,
                 k_clear,
                 "to an edge at 1-1/4",
                 inch(k_clear, "clear", {{"bolt", "3/4 in"}, {"edge_distance", "1-1/4 in"}}),
                 0.84375,
                 k_exact},
        // 3 - 0.8125
        AskedRow{k_worked,
                 k_clear,
                 "between, at 3",
                 inch(k_clear, "clear", {{"bolt", "3/4 in"}, {"spacing", "3 in"}}),
                 2.1875,
                 k_exact},
        // M20 at 60: 60 - 22
        AskedRow{k_worked,
                 k_clear,
                 "between, M20 at 60 mm",
                 base_figure(k_clear, "clear", {{"bolt", "M20"}, {"spacing", "60 mm"}}),
                 38,
                 k_exact},
        // 2.25 - 1.875 = 0.375, less than 0.75
        AskedRow{k_memory,
                 k_clear,
                 "long slots end to end at 2-1/4",
                 refused(k_clear,
                         "spacing",
                         {{"bolt", "3/4 in"}, {"kind", "long slot"}, {"spacing", "2-1/4 in"}}),
                 1,
                 0},
        // 1.875 + 0.75
        AskedRow{k_memory,
                 k_edge,
                 "so slots end to end start at 2-5/8",
                 inch(k_edge, "least_spacing", rolled("3/4 in", {{"kind", "long slot"}})),
                 2.625,
                 k_exact},
    };
    CHECK(k_rows.size() == 9);
    check_and_count(k_rows);
}

TEST_CASE("angle-gage, angle-gage-between: gages of AISC Manual table 1-7A, from memory") {
    const auto gage = [](const char* out, const char* leg) {
        return inch("angle.gage", out, {{"leg", leg}});
    };
    const auto row = [](const char* where, double ours, double expected) {
        return AskedRow{k_memory, "angle.gage", where, ours, expected, k_exact};
    };
    const double toe = 2.0 - gage("g", "2 in"); // 7/8
    const std::array k_rows{
        row("8", gage("g", "8 in"), 4.5),
        row("6, single", gage("g", "6 in"), 3.5),
        row("6, first", gage("g1", "6 in"), 2.25),
        row("6, second", gage("g2", "6 in"), 2.5),
        row("5, first", gage("g1", "5 in"), 2.0),
        row("4", gage("g", "4 in"), 2.5),
        row("3", gage("g", "3 in"), 1.75),
        row("2", gage("g", "2 in"), 1.125),
        row("1", gage("g", "1 in"), 0.625),
        row("2 in leg, toe: 1/2 bolt fits", toe > edge("1/2 in") ? 1 : 0, 1),
        row("2 in leg, toe: 5/8 bolt just fits", toe - edge("5/8 in"), 0),
        row("2 in leg, toe: 3/4 bolt is too close", edge("3/4 in") > toe ? 1 : 0, 1),
    };
    CHECK(k_rows.size() == 12);
    check_and_count(k_rows);
    const char* const k_both = "angle.gage_between";
    const auto both = [&](const char* a, const char* b, const char* t) {
        return inch(k_both, "gage", {{"leg_a", a}, {"leg_b", b}, {"thickness", t}});
    };
    const std::array k_between{
        // AISC 360 B4.3b, from memory: 2.5 + 2.5 - 0.25; 2.5 + 1.75 - 0.375; 1.125 x 2 - 0.1875
        AskedRow{k_memory, k_both, "L4x4x1/4", both("4 in", "4 in", "1/4 in"), 4.75, k_exact},
        AskedRow{k_memory, k_both, "L4x3x3/8", both("4 in", "3 in", "3/8 in"), 3.875, k_exact},
        AskedRow{k_memory, k_both, "L2x2x3/16", both("2 in", "2 in", "3/16 in"), 2.0625, k_exact},
    };
    CHECK(k_between.size() == 3);
    check_and_count(k_between);
}

TEST_CASE("bolt-hex, bolt-washer-room, bolt-socket-room: ASME B18.2.6 and ASTM F436 from memory") {
    const char* const k_room = "bolt.room";
    const auto flats = [&](const char* bolt) {
        return inch(k_room, "across_flats", {{"bolt", bolt}});
    };
    const auto washer = [&](const char* bolt) {
        return inch(k_room, "washer_gage", {{"bolt", bolt}, {"fillet_end", "0.5 in"}});
    };
    const std::array k_rows{
        AskedRow{k_memory, k_room, "7/8 flats", flats("7/8 in"), 1.4375, 0.001},
        AskedRow{k_memory,
                 k_room,
                 "7/8 corners",
                 inch(k_room, "across_corners", {{"bolt", "7/8 in"}}),
                 1.660,
                 0.001},
        AskedRow{k_memory, k_room, "1/2 flats", flats("1/2 in"), 0.875, k_exact},
        AskedRow{k_memory, k_room, "5/8 flats", flats("5/8 in"), 1.0625, k_exact},
        AskedRow{k_memory, k_room, "1 flats", flats("1 in"), 1.625, k_exact},
        // L2x2x1/4: k 0.500, usual gage 1.125
        AskedRow{k_memory, k_room, "washer 1/2 clears 1.125", washer("1/2 in"), 1.031, 0.001},
        AskedRow{k_memory, k_room, "washer 5/8 rides the fillet", washer("5/8 in"), 1.156, 0.001},
        AskedRow{k_memory, k_room, "washer 1: 0.5 + 2 / 2", washer("1 in"), 1.5, k_exact},
        // common practice: socket / 2 + 1/16
        AskedRow{k_practice,
                 k_room,
                 "socket 1-1/2",
                 inch(k_room, "wall_distance", {{"bolt", "3/4 in"}, {"socket", "1-1/2 in"}}),
                 0.8125,
                 k_exact},
        AskedRow{k_practice,
                 k_room,
                 "socket 2",
                 inch(k_room, "wall_distance", {{"bolt", "3/4 in"}, {"socket", "2 in"}}),
                 1.0625,
                 k_exact},
        AskedRow{k_practice,
                 k_room,
                 "socket 1",
                 inch(k_room, "wall_distance", {{"bolt", "1/2 in"}, {"socket", "1 in"}}),
                 0.5625,
                 k_exact},
    };
    CHECK(k_rows.size() == 11);
    check_and_count(k_rows);
}
