#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"
#include "process/bar_length.h"
#include "process/cards.h"
#include "process/input_check.h"

#include <algorithm>

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_ring_inputs[] = {
    {"shape", InputKind::word, true, "of the bar", "round|square|flat|profile"},
    {"inside", InputKind::length, false, "diameter inside", "", "20 in"},
    {"outside", InputKind::length, false, "diameter outside, in place of inside", "", "24 in"},
    {"size", InputKind::length, false, "diameter, side, or width of a flat", "", "2 in"},
    {"thickness", InputKind::length, false, "of a flat", "", "1/4 in"},
    {"way", InputKind::word, false, "of a flat: over its thickness or its width", "easy|hard"},
    {"centroid",
     InputKind::length,
     false,
     "of a profile, from the face that the diameter is measured to",
     "",
     "0.592 in"},
    {"arc", InputKind::angle, false, "360 when not given", "", "240 deg"},
    {"straight", InputKind::length, false, "ends added to the arc", "", "4 in"},
};
constexpr OutputSpec k_ring_outputs[] = {
    {"blank", "mm", "developed length"},
    {"diameter", "mm", "of the line that keeps its length"},
};
constexpr const base::FormulaCard* k_ring_cards[] = {&process::k_ring_length_card,
                                                     &process::k_ring_diameter_card};

enum Shape { round, square, flat, profile };

/// Depth of the bar in the plane of bending, by its shape and the way.
void read_depth(Reader& in, Shape shape, process::Ring& ring) {
    if (shape == profile)
        in.require("centroid");
    else
        in.refuse_if_given("centroid", "Only a profile needs its centroid told.");
    if (shape == flat) {
        in.require("thickness");
        in.require("way");
        ring.hard_way = in.choice("way") == 1;
    } else {
        in.refuse_if_given("thickness", "Only a flat has a thickness.");
        in.refuse_if_given("way", "Only a flat has an easy and a hard way.");
    }
    if (shape == round || shape == square || ring.hard_way)
        in.require("size");
    if (shape == profile)
        in.refuse_if_given("size", "A profile is given by its centroid.");
    const Length size = in.length("size");
    const Length thickness = in.length("thickness");
    process::InputCheck check;
    if (in.has("size"))
        check.length(size, "size");
    if (in.has("thickness"))
        check.length(thickness, "thickness");
    if (!in.failed() && check.failed())
        in.refuse(check.refusal());
    if (shape == profile) {
        ring.centroid = in.length("centroid");
        return;
    }
    ring.depth = shape == flat && !ring.hard_way ? thickness : size;
    ring.centroid = ring.depth / 2.0;
}

Result<Answer> answer_ring(Reader& in) {
    process::Ring ring;
    const bool inside = in.has("inside");
    if (inside)
        in.refuse_if_given("outside", "Give one of inside and outside.");
    else
        in.require("outside");
    ring.measured = inside ? process::Face::inside : process::Face::outside;
    ring.diameter = in.length(inside ? "inside" : "outside");
    read_depth(in, static_cast<Shape>(std::max(in.choice("shape"), 0)), ring);
    ring.arc = in.has("arc") ? in.angle("arc") : degrees(360.0);
    ring.straight = in.length("straight");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("blank", process::ring_length_working(ring))
        .add("diameter", process::ring_diameter_working(ring))
        .finish();
}

constexpr InputSpec k_hook_inputs[] = {
    {"bar", InputKind::length, true, "diameter, or depth in the plane of bending", "", "3/8 in"},
    {"inside_diameter", InputKind::length, true, "of the hook", "", "1 in"},
    {"straight", InputKind::length, false, "shank", "", "4 in"},
    {"tail", InputKind::length, false, "after the bend", "", "1/2 in"},
    {"angle", InputKind::angle, false, "180 when not given; 360 for an eye", "", "180 deg"},
};
constexpr OutputSpec k_hook_outputs[] = {{"blank", "mm", "developed length"}};
constexpr const base::FormulaCard* k_hook_cards[] = {&process::k_hook_length_card};

Result<Answer> answer_hook(Reader& in) {
    process::Hook hook;
    hook.bar = in.length("bar");
    hook.inside_diameter = in.length("inside_diameter");
    hook.straight = in.length("straight");
    hook.tail = in.length("tail");
    hook.angle = in.has("angle") ? in.angle("angle") : degrees(180.0);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("blank", process::hook_length_working(hook)).finish();
}

} // namespace

const Calculation k_bar_ring{"bar.ring",
                             "Developed length of a ring or an arc",
                             k_ring_inputs,
                             k_ring_outputs,
                             k_ring_cards,
                             answer_ring};
const Calculation k_bar_hook{"bar.hook",
                             "Developed length of a hook or an eye",
                             k_hook_inputs,
                             k_hook_outputs,
                             k_hook_cards,
                             answer_hook};

} // namespace treadle::calc
