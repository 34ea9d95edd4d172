#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/layout_inputs.h"
#include "process/blank.h"
#include "process/cards.h"

#include <utility>

#include "layout/cards.h"
#include "layout/frame.h"

namespace treadle::calc {

namespace {

using base::Result;
using layout::FrameFigure;

constexpr InputSpec k_frame_inputs[] = {
    {"kind", InputKind::word, true, "of corner", "mitre|butt|notch-and-bend"},
    {"width", InputKind::length, false, "heel to heel, or outside of flat bar", "", "24 in"},
    {"height", InputKind::length, false, "heel to heel, or outside of flat bar", "", "18 in"},
    {"opening_width", InputKind::length, false, "in place of width", "", "20 in"},
    {"opening_height", InputKind::length, false, "in place of height", "", "14 in"},
    {"leg", InputKind::length, true, "in the frame's plane, or face of flat bar", "", "2 in"},
    {"thickness", InputKind::length, false, "of the angle; none for flat bar", "", "1/4 in"},
    {"heel", InputKind::word, false, "standing leg; outside if not given", "outside|inside"},
    {"k", InputKind::ratio, false, "for bends; 0.5, the longest blank, if not given", "", "0.33"},
    {"radius", InputKind::length, false, "inside, for bends; sharp if not given", "", "1/16 in"},
    {"closing", InputKind::word, false, "of a bent frame; mitre if not given", "mitre|butt"},
};
constexpr OutputSpec k_frame_outputs[] = {
    {"width_piece", "mm", "two of them, long point to long point; a bent frame's side"},
    {"height_piece", "mm", "two of them"},
    {"opening_width", "mm", "toe to toe"},
    {"opening_height", "mm", "toe to toe"},
    {"bar", "mm", "mitred flat bar: all pieces, shared cuts"},
    {"notch_depth", "mm", "from the toe; butt: at each end of the height pieces"},
    {"notch_width", "mm", "at the toe; butt: along the piece"},
    {"blank", "mm", "bent frame, starting at a width side"},
    {"notch_centres", "mm", "list: from the starting end"},
};
constexpr const base::FormulaCard* k_frame_cards[] = {&layout::k_frame_mitre_card,
                                                      &layout::k_frame_butt_card,
                                                      &layout::k_frame_bar_card,
                                                      &layout::k_frame_notch_card,
                                                      &process::k_bend_deduction_card,
                                                      &process::k_blank_length_card};

enum class Corner { mitre, butt, bent };

/// Outside, or from the opening.
Length side(Reader& in, const char* name, const char* opening, Length more) {
    if (in.has(name) == in.has(opening)) {
        in.refuse({in.has(name) ? opening : name, "Give the outside or the opening.", ""});
        return {};
    }
    return in.has(name) ? size_given(in, name) : size_given(in, opening) + more;
}

layout::Frame read_frame(Reader& in, Corner corner) {
    layout::Frame frame;
    frame.leg = size_given(in, "leg");
    frame.thickness = size_given(in, "thickness");
    frame.heel = word_or_first<layout::Heel>(in, "heel");
    const Length more = frame.heel == layout::Heel::inside ? Length{} : 2.0 * frame.leg;
    frame.width = side(in, "width", "opening_width", more);
    frame.height = side(in, "height", "opening_height", more);
    if (corner != Corner::mitre)
        in.require("thickness");
    if (corner == Corner::bent && frame.heel == layout::Heel::inside)
        in.refuse({"heel", "A bent frame is here with the standing leg outside.", "outside"});
    if (corner != Corner::bent)
        for (const char* name : {"k", "radius", "closing"})
            in.refuse_if_given(name, "Only a bent frame asks for this.");
    return frame;
}

void add_pieces(AnswerBuilder& answer, const layout::Frame& frame, Corner corner) {
    static constexpr std::pair<const char*, FrameFigure> k_figures[] = {
        {"width_piece", FrameFigure::width_piece},
        {"height_piece", FrameFigure::height_piece},
        {"opening_width", FrameFigure::opening_width},
        {"opening_height", FrameFigure::opening_height}};
    for (const auto& [name, figure] : k_figures)
        answer.add(name,
                   corner == Corner::butt ? layout::butted_working(frame, figure)
                                          : layout::mitred_working(frame, figure));
}

void add_butt_notch(AnswerBuilder& answer, const layout::Frame& frame) {
    answer.add("notch_depth", layout::notch_depth_working({frame.leg, frame.thickness}))
        .figure("notch_width", frame.leg - frame.thickness);
}

/// Four sides round, three bends; the fourth corner closes mitred, or butted with one end short.
Result<Answer> answer_bent(Reader& in, const layout::Frame& frame, AnswerBuilder& answer) {
    const process::BlankRule rule{process::BlankMethod::k_factor,
                                  in.has("k") ? in.ratio("k") : 0.5};
    const Length radius = in.length("radius");
    const bool butt = in.choice("closing") == 1;
    if (in.failed())
        return in.refusal();
    const process::SharpBend bend{frame.thickness, radius, degrees(90.0)};
    const Length last = butt ? frame.height - frame.thickness : frame.height;
    const process::BentPart part{{frame.width, frame.height, frame.width, last},
                                 {bend, bend, bend}};
    const auto blank = process::blank_length(part, rule);
    if (!blank.ok()) { // legs and bends are this frame's sides and corners
        base::Refusal fault = blank.refusal();
        if (fault.field.rfind("bends", 0) == 0)
            fault.field = "radius";
        if (fault.field.rfind("legs", 0) == 0)
            fault.field = "leg";
        return fault;
    }
    return answer.show(process::deduction_working(bend, rule))
        .add("notch_depth", layout::notch_depth_working({frame.leg, frame.thickness}))
        .add("notch_width", layout::notch_width_working({frame.leg, frame.thickness}))
        .add("blank",
             process::blank_working(part, rule),
             butt ? "Closing corner butted: the last side is short by the thickness."
                  : "Closing corner mitred.")
        .list("notch_centres", blank->bend_lines)
        .finish();
}

Result<Answer> answer_frame(Reader& in) {
    const auto corner = word_or_first<Corner>(in, "kind");
    const layout::Frame frame = read_frame(in, corner);
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    add_pieces(answer, frame, corner);
    if (corner == Corner::bent) {
        if (const auto pieces = layout::mitred_frame(frame); !pieces.ok())
            return pieces.refusal();
        return answer_bent(in, frame, answer);
    }
    if (corner == Corner::butt)
        add_butt_notch(answer, frame);
    else if (!in.has("thickness"))
        answer.add("bar", layout::flat_frame_bar_working(frame));
    return answer.finish();
}

constexpr InputSpec k_mitre_inputs[] = {
    {"leg", InputKind::length, true, "or face of the bar", "", "2 in"},
    {"corner", InputKind::angle, true, "inside angle", "", "120"},
};
constexpr OutputSpec k_mitre_outputs[] = {
    {"setback", "mm", "long point to short point"},
    {"cut", "deg", "off square"},
};
constexpr const base::FormulaCard* k_mitre_cards[] = {&layout::k_frame_setback_card};

Result<Answer> answer_mitre(Reader& in) {
    const Length leg = in.length("leg");
    const Angle corner = in.angle("corner");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("setback", layout::mitre_setback_working(leg, corner))
        .add("cut", layout::mitre_cut_working(leg, corner))
        .finish();
}

constexpr InputSpec k_notch_inputs[] = {
    {"leg", InputKind::length, true, "that is notched", "", "50 mm"},
    {"thickness", InputKind::length, true, "of the angle", "", "5 mm"},
    {"angle", InputKind::angle, true, "bent through", "", "45"},
};
constexpr OutputSpec k_notch_outputs[] = {
    {"depth", "mm", "from the toe"},
    {"width", "mm", "at the toe"},
};
constexpr const base::FormulaCard* k_notch_cards[] = {&layout::k_frame_notch_card};

Result<Answer> answer_notch(Reader& in) {
    const layout::CornerNotch notch{in.length("leg"), in.length("thickness"), in.angle("angle")};
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("depth", layout::notch_depth_working(notch))
        .add("width", layout::notch_width_working(notch))
        .finish();
}

constexpr InputSpec k_gusset_inputs[] = {
    {"leg_a", InputKind::length, true, "one leg", "", "8 in"},
    {"leg_b", InputKind::length, true, "the other", "", "6 in"},
};
constexpr OutputSpec k_gusset_outputs[] = {
    {"edge", "mm", "slant edge"},
    {"angle", "deg", "at leg_a"},
};
constexpr const base::FormulaCard* k_gusset_cards[] = {&layout::k_gusset_card};

Result<Answer> answer_gusset(Reader& in) {
    const Length a = in.length("leg_a");
    const Length b = in.length("leg_b");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("edge", layout::gusset_edge_working(a, b))
        .add("angle", layout::gusset_angle_working(a, b))
        .finish();
}

} // namespace

const Calculation k_frame_cut{"frame.cut",
                              "Pieces, notches and blank of a frame",
                              k_frame_inputs,
                              k_frame_outputs,
                              k_frame_cards,
                              answer_frame};
const Calculation k_frame_mitre{"frame.mitre",
                                "Mitre of a corner",
                                k_mitre_inputs,
                                k_mitre_outputs,
                                k_mitre_cards,
                                answer_mitre};
const Calculation k_frame_notch{"frame.notch",
                                "V-notch in the flat leg for a bent corner",
                                k_notch_inputs,
                                k_notch_outputs,
                                k_notch_cards,
                                answer_notch};
const Calculation k_gusset_cut{"gusset.cut",
                               "Slant edge of a gusset or corner clip",
                               k_gusset_inputs,
                               k_gusset_outputs,
                               k_gusset_cards,
                               answer_gusset};

} // namespace treadle::calc
