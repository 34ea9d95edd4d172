// Hand arithmetic on frames of angle and flat bar.
// Tolerance: exact, or half of the last digit worked out

#include <array>

#include "published_layout/asked.h"

using namespace treadle;
using namespace treadle::test;
using calc::Input;

namespace {

const char* const k_frame = "frame.cut";

Input::Object frame(const char* kind, Input::Object more = {}) {
    Input::Object in{{"kind", kind},
                     {"width", "24 in"},
                     {"height", "18 in"},
                     {"leg", "2 in"},
                     {"thickness", "1/4 in"}};
    in.insert(in.end(), more.begin(), more.end());
    return in;
}
AskedRow row(const char* calculation,
             const char* where,
             double ours,
             double expected,
             double tolerance = k_exact) {
    return {k_worked, calculation, where, ours, expected, tolerance};
}

} // namespace

TEST_CASE("frame-mitre, frame-butt, frame-bar: a 24 by 18 frame of L2x2x1/4, and others") {
    const Input::Object mitre = frame("mitre");
    const Input::Object butt = frame("butt");
    const Input::Object picture{{"kind", "mitre"},
                                {"opening_width", "12 in"},
                                {"opening_height", "9 in"},
                                {"leg", "1-1/2 in"}};
    const Input::Object inside{{"kind", "mitre"},
                               {"width", "400 mm"},
                               {"height", "300 mm"},
                               {"leg", "40 mm"},
                               {"thickness", "4 mm"},
                               {"heel", "inside"}};
    const std::array k_rows{
        row(k_frame, "mitre: width", inch(k_frame, "width_piece", mitre), 24),
        row(k_frame, "mitre: height", inch(k_frame, "height_piece", mitre), 18),
        row(k_frame, "mitre: opening", inch(k_frame, "opening_width", mitre), 20),
        row(k_frame, "mitre: opening", inch(k_frame, "opening_height", mitre), 14),
        row(k_frame, "butt: through", inch(k_frame, "width_piece", butt), 24),
        row(k_frame, "butt: between, 18 - 2 x 1/4", inch(k_frame, "height_piece", butt), 17.5),
        row(k_frame, "butt: notch depth", inch(k_frame, "notch_depth", butt), 1.75),
        row(k_frame, "butt: notch along", inch(k_frame, "notch_width", butt), 1.75),
        row(k_frame, "picture: width", inch(k_frame, "width_piece", picture), 15),
        row(k_frame, "picture: height", inch(k_frame, "height_piece", picture), 12),
        // 2 (15 - 1.5) + 2 (12 - 1.5) + 1.5
        row(k_frame, "picture: bar", inch(k_frame, "bar", picture), 49.5),
        row(k_frame, "heel inside: width", base_figure(k_frame, "width_piece", inside), 480),
        row(k_frame, "heel inside: height", base_figure(k_frame, "height_piece", inside), 380),
        row(k_frame, "heel inside: opening", base_figure(k_frame, "opening_width", inside), 400),
    };
    CHECK(k_rows.size() == 14);
    check_and_count(k_rows);
}

TEST_CASE("frame-setback, frame-notch, gusset: corners by hand") {
    const auto setback = [](const char* leg, const char* corner) {
        return inch("frame.mitre", "setback", {{"leg", leg}, {"corner", corner}});
    };
    const auto notch = [](const char* out, const char* leg, const char* t, const char* angle) {
        return base_figure("frame.notch", out, {{"leg", leg}, {"thickness", t}, {"angle", angle}});
    };
    const Input::Object six_eight{{"leg_a", "8 in"}, {"leg_b", "6 in"}};
    const std::array k_rows{
        // 2 / tan 60; 2 / tan 30
        row("frame.mitre", "120", setback("2 in", "120"), 1.1547, 0.0005),
        row("frame.mitre", "60", setback("2 in", "60"), 3.4641, 0.0005),
        row("frame.mitre", "90", setback("2 in", "90"), 2.0),
        row("frame.mitre",
            "60: cut off square",
            base_figure("frame.mitre", "cut", {{"leg", "2 in"}, {"corner", "60"}}),
            60),
        // 2 - 1/4; 2 x 1.75
        row("frame.notch", "L2x2x1/4: depth", notch("depth", "2 in", "1/4 in", "90") / 25.4, 1.75),
        row("frame.notch", "L2x2x1/4: width", notch("width", "2 in", "1/4 in", "90") / 25.4, 3.5),
        // 50 - 5; 90 tan 22.5
        row("frame.notch", "L50x50x5, 45: depth", notch("depth", "50 mm", "5 mm", "45"), 45),
        row("frame.notch",
            "L50x50x5, 45: width",
            notch("width", "50 mm", "5 mm", "45"),
            37.279,
            0.005),
        row("gusset.cut", "6 and 8: edge", inch("gusset.cut", "edge", six_eight), 10),
        row("gusset.cut",
            "6 and 8: angle at 8",
            base_figure("gusset.cut", "angle", six_eight),
            36.870,
            0.001),
        // a clip of 1 x 1: 1.4142
        row("gusset.cut",
            "clip 1 x 1",
            inch("gusset.cut", "edge", {{"leg_a", "1 in"}, {"leg_b", "1 in"}}),
            1.4142,
            0.00005),
    };
    CHECK(k_rows.size() == 11);
    check_and_count(k_rows);
}

TEST_CASE("a frame notched and bent from one bar") {
    const Input::Object bent = frame("notch-and-bend", {{"k", "0.33"}});
    const auto deduction = [](const char* t, const char* r, const char* k) {
        return base_figure("bend.deduction",
                           "deduction",
                           {{"thickness", t}, {"radius", r}, {"angle", "90"}, {"k", k}});
    };
    const std::array k_rows{
        // (2 - 1.5708 K) t
        row("bend.deduction",
            "t 1/4, sharp, K 0.33",
            deduction("1/4 in", "0 in", "0.33") / 25.4,
            0.3704,
            0.0005),
        row("bend.deduction",
            "t 1/4, sharp, K 0.5",
            deduction("1/4 in", "0 in", "0.5") / 25.4,
            0.3037,
            0.0005),
        // 2 x 7.5 - 1.5708 (2.5 + 2.2)
        row("bend.deduction",
            "t 5, r 2.5, K 0.44",
            deduction("5 mm", "2.5 mm", "0.44"),
            7.617,
            0.005),
        // 84 - 3 x 0.3704
        row(k_frame, "blank", inch(k_frame, "blank", bent), 82.889, 0.001),
        // 24 - BD/2; 42 - 1.5 BD; 66 - 2.5 BD
        row(k_frame, "notch 1", inch_item(k_frame, "notch_centres", 0, bent), 23.815, 0.001),
        row(k_frame, "notch 2", inch_item(k_frame, "notch_centres", 1, bent), 41.444, 0.001),
        row(k_frame, "notch 3", inch_item(k_frame, "notch_centres", 2, bent), 65.074, 0.001),
        row(k_frame, "notch depth", inch(k_frame, "notch_depth", bent), 1.75),
        row(k_frame, "notch width", inch(k_frame, "notch_width", bent), 3.5),
        // butted: the last end is short by t: 82.889 - 0.25
        row(k_frame,
            "butted closing",
            inch(k_frame, "blank", frame("notch-and-bend", {{"k", "0.33"}, {"closing", "butt"}})),
            82.639,
            0.001),
        // no K given: 0.5, the longest: 84 - 3 x 0.3037
        row(k_frame, "no K", inch(k_frame, "blank", frame("notch-and-bend")), 83.089, 0.001),
    };
    CHECK(k_rows.size() == 11);
    check_and_count(k_rows);
}
