// Reproduces: 29 CFR 1910.29; IRC R312.1 (quoted by a county code); ADA 505; ISPSC 305 (quoted by
//             counties); IBC 1015 and Approved Document K from memory; hand arithmetic
// How read:   OSHA and ADA texts in excerpt; the others as said
// Tolerance:  exact, or half of the last digit worked out

#include <array>

#include "layout/guard_limit.h"
#include "published_layout/asked.h"

using namespace treadle;
using namespace treadle::test;
using calc::Input;

namespace {

const char* const k_picket = "picket.spacing";

Input::Object
panel(const char* opening, const char* picket, const char* limit, Input::Object more = {}) {
    Input::Object in{{"opening", opening}, {"picket", picket}, {"limit", limit}};
    in.insert(in.end(), more.begin(), more.end());
    return in;
}

AskedRow worked(const char* calculation,
                const char* where,
                double ours,
                double expected,
                double tolerance = k_exact) {
    return {k_worked, calculation, where, ours, expected, tolerance};
}

double bound(const char* rule, const char* out) {
    return inch("guard.limit", out, {{"rule", rule}});
}
double least(const char* rule) { return bound(rule, "least"); }
double greatest(const char* rule) { return bound(rule, "greatest"); }
double keeps(const char* rule, const char* value) {
    return ask("guard.limit", {{"rule", rule}, {"value", value}}).ok() ? 1.0 : 0.0;
}

} // namespace

TEST_CASE("picket-gap, picket-gap-closed: panels worked by hand") {
    const Input::Object level = panel("72 in", "3/4 in", "4 in");
    const Input::Object rounded = panel("72 in", "3/4 in", "4 in", {{"step", "1/16 in"}});
    const Input::Object demo = panel("94 in", "3/4 in", "3-7/8 in", {{"step", "1/16 in"}});
    const Input::Object closed = panel("47 in", "1 in", "4 in", {{"ends", "picket"}});
    const std::array k_rows{
        // (72 - 4) / 4.75 = 14.3: 15; (72 - 11.25) / 16
        worked(k_picket, "72: pickets", base_figure(k_picket, "count", level), 15),
        worked(k_picket, "72: gap", inch(k_picket, "gap", level), 3.796875),
        worked(k_picket, "72: pitch", inch(k_picket, "pitch", level), 4.546875),
        worked(k_picket, "72: face 1", inch_item(k_picket, "positions", 0, level), 3.796875),
        worked(k_picket, "72: face 2", inch_item(k_picket, "positions", 1, level), 8.34375),
        worked(k_picket, "72: face 15", inch_item(k_picket, "positions", 14, level), 67.453125),
        worked(k_picket,
               "72 to 1/16: largest gap is up to 3.859375 and over 3.796875",
               inch(k_picket, "largest_gap", rounded),
               3.828125,
               0.03125),
        // 2400, 16, 100: ceil(2300 / 116) = 20; (2400 - 320) / 21
        worked(k_picket,
               "2400 mm: pickets",
               base_figure(k_picket, "count", panel("2400 mm", "16 mm", "100 mm")),
               20),
        worked(k_picket,
               "2400 mm: gap",
               base_figure(k_picket, "gap", panel("2400 mm", "16 mm", "100 mm")),
               99.048,
               0.001),
        // (49 - 4) / 4.5 = 10 exactly
        worked(k_picket,
               "exact fit: 10, not 11",
               base_figure(k_picket, "count", panel("49 in", "1/2 in", "4 in")),
               10),
        worked(k_picket,
               "exact fit: gap",
               inch(k_picket, "gap", panel("49 in", "1/2 in", "4 in")),
               4.0),
        worked(k_picket,
               "exact fit: warned",
               said(k_picket, "Warning", panel("49 in", "1/2 in", "4 in")),
               1,
               0),
        worked(k_picket,
               "13: pickets",
               base_figure(k_picket, "count", panel("13 in", "1/2 in", "3-7/8 in")),
               3),
        worked(k_picket,
               "13: gap",
               inch(k_picket, "gap", panel("13 in", "1/2 in", "3-7/8 in")),
               2.875),
        worked(k_picket,
               "13: not warned",
               said(k_picket, "Warning", panel("13 in", "1/2 in", "3-7/8 in")),
               0,
               0),
        worked(k_picket,
               "3-1/2: none",
               base_figure(k_picket, "count", panel("3.5 in", "3/4 in", "4 in")),
               0),
        worked(
            k_picket, "3-1/2: gap", inch(k_picket, "gap", panel("3.5 in", "3/4 in", "4 in")), 3.5),
        // 94: ceil(90.125 / 4.625) = 20; (94 - 15) / 21 = 3.76190
        worked(k_picket, "94: pickets", base_figure(k_picket, "count", demo), 20),
        worked(k_picket, "94: gap", inch(k_picket, "gap", demo), 3.76190, 0.00001),
        worked(k_picket, "94: face 1", inch_item(k_picket, "positions", 0, demo), 3.75),
        worked(k_picket, "94: face 3", inch_item(k_picket, "positions", 2, demo), 12.8125),
        worked(k_picket, "94: face 5", inch_item(k_picket, "positions", 4, demo), 21.8125),
        worked(k_picket, "94: last face", inch_item(k_picket, "positions", 19, demo), 89.5),
        worked(k_picket, "94: largest gap", inch(k_picket, "largest_gap", demo), 3.8125),
        // pickets against both posts: ceil((47 + 4) / 5) = 11; (47 - 11) / 10
        worked(k_picket, "closed: pickets", base_figure(k_picket, "count", closed), 11),
        worked(k_picket, "closed: gap", inch(k_picket, "gap", closed), 3.6),
        worked(k_picket, "closed: last face", inch_item(k_picket, "positions", 10, closed), 46),
        // uprights under 19 in: ceil((80 - 19) / 21) = 3; (80 - 6) / 4
        worked(k_picket,
               "uprights: count",
               base_figure(k_picket, "count", panel("80 in", "2 in", "19 in")),
               3),
        worked(k_picket,
               "uprights: gap",
               inch(k_picket, "gap", panel("80 in", "2 in", "19 in")),
               18.5,
               0.001),
    };
    CHECK(k_rows.size() == 29);
    check_and_count(k_rows);
}

TEST_CASE("post-panels, picket-per-tread: posts of a run, pickets of a stair") {
    const char* const k_post = "post.spacing";
    const char* const k_tread = "picket.per_tread";
    const Input::Object run{{"run", "30 ft"}, {"post", "2 in"}, {"greatest_spacing", "8 ft"}};
    const Input::Object metric{{"run", "10 m"}, {"post", "50 mm"}, {"greatest_spacing", "2500 mm"}};
    const auto tread = [](const char* depth, const char* count, const char* limit) {
        return Input::Object{
            {"tread", depth}, {"count", count}, {"picket", "3/4 in"}, {"limit", limit}};
    };
    const std::array k_rows{
        // 360 / 96 = 3.75: 4; (360 - 5 x 2) / 4
        worked(k_post, "30 ft: panels", base_figure(k_post, "panels", run), 4),
        worked(k_post, "30 ft: clear", inch(k_post, "clear", run), 87.5),
        worked(k_post, "30 ft: posts", base_figure(k_post, "posts", run), 5),
        // 10000 / 2500 = 4 exactly; (10000 - 250) / 4
        worked(k_post, "10 m: panels", base_figure(k_post, "panels", metric), 4),
        worked(k_post, "10 m: clear", base_figure(k_post, "clear", metric), 2437.5),
        // a code author's own note on a public forum: 10 in tread, two of 3/4 leave 4-1/4
        AskedRow{k_published,
                 k_tread,
                 "10 in, two",
                 inch(k_tread, "gap", tread("10 in", "2", "4 in")),
                 4.25,
                 k_exact},
        AskedRow{k_published,
                 k_tread,
                 "fails 4",
                 said(k_tread, "Over the limit", tread("10 in", "2", "4 in")),
                 1,
                 0},
        AskedRow{k_published,
                 k_tread,
                 "passes 4-3/8",
                 said(k_tread, "Over the limit", tread("10 in", "2", "4-3/8 in")),
                 0,
                 0},
        // 11 / 3 - 0.75
        worked(k_tread,
               "11 in, three",
               inch(k_tread, "gap", tread("11 in", "3", "4 in")),
               2.916667,
               1e-6),
    };
    CHECK(k_rows.size() == 9);
    check_and_count(k_rows);
}

TEST_CASE("rake-angle, rake-along, rake-bevel, rake-picket-length, rake-blank: stairs by hand") {
    const char* const k_rake = "rake.picket";
    const char* const k_on_slope = "rake.spacing";
    const auto stair =
        [](const char* riser, const char* tread, const char* between, Input::Object more = {}) {
            Input::Object in{{"riser", riser},
                             {"tread", tread},
                             {"picket", "3/4 in"},
                             {"between_rails", between}};
            in.insert(in.end(), more.begin(), more.end());
            return in;
        };
    const Input::Object seven = stair("7 in", "11 in", "28 in", {{"gap", "3-3/4 in"}});
    const Input::Object demo = stair("7-1/2 in", "10-1/2 in", "26 in");
    const Input::Object slope{{"riser", "7-1/2 in"},
                              {"tread", "10-1/2 in"},
                              {"opening", "70 in"},
                              {"picket", "3/4 in"},
                              {"limit", "3-7/8 in"}};
    const std::array k_rows{
        // atan(7 / 11); 3.75 / cos; 0.75 x 7 / 11; 28 / cos
        worked(k_rake, "7/11: slope", base_figure(k_rake, "angle", seven), 32.471, 0.001),
        worked(k_rake, "7/11: gap on the rail", inch(k_rake, "gap_on_rail", seven), 4.4449, 0.0005),
        worked(k_rake, "7/11: bevel offset", inch(k_rake, "bevel_offset", seven), 0.4773, 0.0005),
        worked(k_rake, "7/11: length", inch(k_rake, "length", seven), 33.189, 0.001),
        worked(k_rake, "7/11: blank, 33.189 + 0.4773", inch(k_rake, "blank", seven), 33.666, 0.001),
        // atan(7.5 / 10.5), 26 / cos, 0.75 tan, their sum
        worked(k_rake, "7.5/10.5: slope", base_figure(k_rake, "angle", demo), 35.538, 0.001),
        worked(k_rake, "7.5/10.5: length", inch(k_rake, "length", demo), 31.951, 0.001),
        worked(
            k_rake, "7.5/10.5: bevel offset", inch(k_rake, "bevel_offset", demo), 0.5357, 0.0005),
        worked(k_rake, "7.5/10.5: blank", inch(k_rake, "blank", demo), 32.487, 0.001),
        // 70 cos = 56.961: ceil(53.086 / 4.625) = 12; (56.961 - 9) / 13; (3.6893 + 0.75) / cos
        worked(k_on_slope, "70 on the rail: pickets", base_figure(k_on_slope, "count", slope), 12),
        worked(k_on_slope, "70 on the rail: gap", inch(k_on_slope, "gap", slope), 3.6893, 0.0005),
        worked(k_on_slope,
               "70 on the rail: pitch",
               inch(k_on_slope, "pitch_on_rail", slope),
               5.4555,
               0.0005),
        // last face + picket + gap = 70 along the rail: 70 - 5.4555
        worked(k_on_slope,
               "70 on the rail: last face",
               inch_item(k_on_slope, "positions", 11, slope),
               64.5445,
               0.001),
    };
    CHECK(k_rows.size() == 13);
    check_and_count(k_rows);
}

TEST_CASE("rake-triangle, rake-rail-height, rake-step: under the rail and on slopes") {
    const char* const k_opening = "rake.opening";
    const char* const k_panel = "rake.panel";
    const auto stair = [](const char* riser, const char* tread) {
        return Input::Object{{"riser", riser}, {"tread", tread}, {"limit", "6 in"}};
    };
    Input::Object raised = stair("7 in", "11 in");
    raised.emplace_back("rail_height", "1.465 in");
    Input::Object gap = stair("7 in", "11 in");
    gap.emplace_back("gap", "3-3/4 in");
    const std::array k_rows{
        // 7 + 11 - sqrt(49 + 121); 7 (6 / 4.9616 - 1); x cos 32.471
        worked(k_opening,
               "7/11: sphere",
               inch(k_opening, "sphere", stair("7 in", "11 in")),
               4.9616,
               0.0005),
        worked(k_opening,
               "7/11: highest rail",
               inch(k_opening, "highest_rail", stair("7 in", "11 in")),
               1.4650,
               0.0005),
        worked(k_opening,
               "7/11: square to it",
               inch(k_opening, "highest_rail_square", stair("7 in", "11 in")),
               1.2360,
               0.0005),
        worked(
            k_opening, "7/11: rail there, sphere", inch(k_opening, "sphere", raised), 6.0, 0.0005),
        worked(k_opening,
               "7/11: gap on the rail",
               inch(k_opening, "gap_on_rail", gap),
               4.4449,
               0.0005),
        worked(k_opening,
               "7-3/4/10: sphere",
               inch(k_opening, "sphere", stair("7-3/4 in", "10 in")),
               5.0984,
               0.0005),
        worked(k_opening,
               "7-3/4/10: highest rail",
               inch(k_opening, "highest_rail", stair("7-3/4 in", "10 in")),
               1.3705,
               0.0005),
        worked(k_opening,
               "7.5/10.5: sphere",
               inch(k_opening, "sphere", stair("7.5 in", "10.5 in")),
               5.097,
               0.0005),
        worked(k_opening,
               "7.5/10.5: highest rail",
               inch(k_opening, "highest_rail", stair("7.5 in", "10.5 in")),
               1.330,
               0.0005),
        // atan(1 / 12); 96 / cos
        worked(k_panel,
               "1:12: angle",
               base_figure(k_panel, "angle", {{"slope", "1/12"}, {"panel", "96 in"}}),
               4.764,
               0.001),
        worked(k_panel,
               "1:12: rail",
               inch(k_panel, "rail_length", {{"slope", "1/12"}, {"panel", "96 in"}}),
               96.333,
               0.001),
        worked(
            k_panel,
            "1 ft in 12: the same",
            inch(k_panel, "rail_length", {{"rise", "1 ft"}, {"run", "12 ft"}, {"panel", "96 in"}}),
            96.333,
            0.001),
        // 94 x 0.08 = 7.52: the bottom gap grows past 2 in
        worked(k_panel,
               "8 %: step",
               inch(k_panel, "step", {{"slope", "8 %"}, {"panel", "94 in"}}),
               7.52),
        worked(k_panel,
               "8 %: warned",
               said(k_panel, "Warning", {{"slope", "8 %"}, {"panel", "94 in"}}),
               1,
               0),
        // 94 x 0.02 = 1.88
        worked(k_panel,
               "2 %: step",
               inch(k_panel, "step", {{"slope", "2 %"}, {"panel", "94 in"}}),
               1.88),
        worked(k_panel,
               "2 %: not warned",
               said(k_panel, "Warning", {{"slope", "2 %"}, {"panel", "94 in"}}),
               0,
               0),
    };
    CHECK(k_rows.size() == 16);
    check_and_count(k_rows);
}

TEST_CASE("guard.limit: guard-limit-irc, guard-limit-osha, guard-limit-ada, guard-limit-pool") {
    const auto row = [](const char* where, double ours, double expected) {
        return AskedRow{k_published, "guard.limit", where, ours, expected, k_exact};
    };
    const std::array k_rows{
        row("R312.1.1 drop", greatest("irc-drop"), 30),
        row("R312.1.2 guard", least("irc-guard-height"), 36),
        row("R312.1.2 stair", least("irc-stair-guard-height"), 34),
        row("R312.1.3 sphere", greatest("irc-opening"), 4),
        row("R312.1.3 exception 2", greatest("irc-stair-opening"), 4.375),
        row("R312.1.3 exception 1", greatest("irc-stair-triangle"), 6),
        row("2000 IBC relaxed", greatest("ibc-relaxed-opening"), 21),
        row("2000 IBC 34 to 42 in", greatest("ibc-2000-upper-opening"), 8),
        row("(b)(1) least", least("osha-top-edge"), 39),
        row("(b)(1) greatest", greatest("osha-top-edge"), 45),
        row("(b)(2)(iii)", greatest("osha-opening"), 19),
        row("(f) stair rail", least("osha-stair-rail-height"), 42),
        row("(f) handrail least", least("osha-handrail-height"), 30),
        row("(f) handrail greatest", greatest("osha-handrail-height"), 38),
        row("(f) finger room", least("osha-finger-room"), 2.25),
        row("505.4 least", least("ada-handrail-height"), 34),
        row("505.4 greatest", greatest("ada-handrail-height"), 38),
        row("505.5", least("ada-wall-clearance"), 1.5),
        row("505.7.1 least", least("ada-round-grip"), 1.25),
        row("505.7.1 greatest", greatest("ada-round-grip"), 2),
        row("505.7.2 perimeter least", least("ada-grip-perimeter"), 4),
        row("505.7.2 perimeter greatest", greatest("ada-grip-perimeter"), 6.25),
        row("505.7.2 across", greatest("ada-grip-across"), 2.25),
        row("505.10.1", least("ada-extension"), 12),
        row("pool height", least("pool-barrier-height"), 48),
        row("pool sphere", greatest("pool-opening"), 4),
        row("pool pickets", greatest("pool-picket-gap"), 1.75),
        row("pool bottom", greatest("pool-bottom-gap"), 2),
        row("top edge 38.5", keeps("osha-top-edge", "38.5 in"), 0),
        row("top edge 39", keeps("osha-top-edge", "39 in"), 1),
        row("top edge 45", keeps("osha-top-edge", "45 in"), 1),
        row("top edge 46", keeps("osha-top-edge", "46 in"), 1),
        row("46 is noted",
            said("guard.limit",
                 "Higher than usual",
                 {{"rule", "osha-top-edge"}, {"value", "46 in"}}),
            1),
        row("45 is not",
            said("guard.limit",
                 "Higher than usual",
                 {{"rule", "osha-top-edge"}, {"value", "45 in"}}),
            0),
        // outside diameters from the AISC Shapes Database
        row("NPS 1-1/2, 1.900", keeps("ada-round-grip", "1.900 in"), 1),
        row("NPS 1, 1.315", keeps("ada-round-grip", "1.315 in"), 1),
        row("NPS 2, 2.375", keeps("ada-round-grip", "2.375 in"), 0),
        row("1-1/2 square tube, 6.0 round", keeps("ada-grip-perimeter", "6.0 in"), 1),
        row("2 x 2 tube, 7.6 round", keeps("ada-grip-perimeter", "7.6 in"), 0),
        row("gap 4 touches a 4 in sphere", keeps("irc-opening", "4 in"), 0),
        row("gap 3-7/8", keeps("irc-opening", "3-7/8 in"), 1),
    };
    CHECK(k_rows.size() == 41);
    check_and_count(k_rows);
}

TEST_CASE("guard.limit: guard-limit-ibc, guard-limit-uk and toeboards from memory") {
    const auto row = [](const char* where, double ours, double expected) {
        return AskedRow{k_memory, "guard.limit", where, ours, expected, k_exact};
    };
    const std::array k_rows{
        row("IBC 1015.3", least("ibc-guard-height"), 42),
        row("IBC 1015.4 to 36 in", greatest("ibc-opening"), 4),
        row("IBC 1015.4 to 42 in", greatest("ibc-upper-opening"), 4.375),
        row("1910.29(k) height", least("osha-toeboard-height"), 3.5),
        row("1910.29(k) gap", greatest("osha-toeboard-gap"), 0.25),
        row("Document K sphere, mm", greatest("uk-opening") * 25.4, 100),
        row("Document K guard, mm", least("uk-guard-height") * 25.4, 1100),
        row("Document K stair, mm", least("uk-stair-guard-height") * 25.4, 900),
    };
    CHECK(k_rows.size() == 8);
    check_and_count(k_rows);
    // Dwellings and other buildings differ by 6 in; the wall clearance of OSHA and ADA by 3/4.
    const std::array k_differ{
        AskedRow{k_differs,
                 "guard.limit",
                 "IBC against IRC",
                 least("ibc-guard-height") - least("irc-guard-height"),
                 6,
                 k_exact},
        AskedRow{k_differs,
                 "guard.limit",
                 "OSHA against ADA",
                 least("osha-finger-room") - least("ada-wall-clearance"),
                 0.75,
                 k_exact},
        AskedRow{k_differs,
                 "guard.limit",
                 "2000 IBC against later",
                 greatest("ibc-2000-upper-opening") - greatest("ibc-upper-opening"),
                 3.625,
                 k_exact},
    };
    CHECK(k_differ.size() == 3);
    check_and_count(k_differ);
    for (const layout::GuardLimit& limit : layout::guard_limits())
        CHECK(said("guard.limit", "local code governs", {{"rule", limit.rule}}) == 1.0);
}

TEST_CASE("guard-midrail: midway under the top edge, 1910.29(b)(2)(i)") {
    const char* const k_mid = "guard.midrail";
    const auto row = [&](const char* where, double ours, double expected) {
        return AskedRow{k_published, k_mid, where, ours, expected, k_exact};
    };
    const std::array k_rows{
        row("42", inch(k_mid, "height", {{"top_edge", "42 in"}}), 21),
        row("45", inch(k_mid, "height", {{"top_edge", "45 in"}}), 22.5),
        row("39", inch(k_mid, "height", {{"top_edge", "39 in"}}), 19.5),
        row("38.5 is refused", refused(k_mid, "top_edge", {{"top_edge", "38.5 in"}}), 1),
    };
    CHECK(k_rows.size() == 4);
    check_and_count(k_rows);
}
