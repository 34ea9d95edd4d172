#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/notch_rules.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_bites_inputs[] = {
    {"along", InputKind::length, true, "length of the notch", "", "6 in"},
    {"tool", InputKind::length, true, "length of the tool", "", "2 in"},
    {"overlap", InputKind::length, false, "of two bites; none when not given", "", "1/4 in"},
    {"depth", InputKind::length, false, "of the notch, for the edge that bites cut", "", "1 in"},
};
constexpr OutputSpec k_bites_outputs[] = {
    {"count", "", "bites"},
    {"first_edge", "mm", "cut by the first bite, with a depth"},
    {"later_edge", "mm", "cut by each later bite, with a depth"},
};
constexpr const base::FormulaCard* k_bites_cards[] = {
    &process::k_notch_bites_card, &process::k_first_bite_card, &process::k_later_bite_card};

Result<Answer> answer_bites(Reader& in) {
    const process::NotchBites notch{in.length("along"), in.length("tool"), in.length("overlap")};
    const Length depth = in.length("depth");
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    answer.add("count", process::notch_bites_working(notch));
    if (in.has("depth"))
        answer.add("first_edge", process::first_bite_working(notch, depth))
            .add("later_edge", process::later_bite_working(notch, depth));
    return answer.finish();
}

constexpr InputSpec k_vee_inputs[] = {
    {"depth", InputKind::length, false, "of the V", "", "1 in"},
    {"leg", InputKind::length, false, "leg to fold, in place of depth", "", "2 in"},
    {"thickness", InputKind::length, false, "of the standing leg, with leg", "", "1/4 in"},
    {"angle", InputKind::angle, false, "included; 90 when not given", "", "60 deg"},
};
constexpr OutputSpec k_vee_outputs[] = {
    {"depth", "mm", "of the V"},
    {"mouth", "mm", "width at the edge"},
    {"edge", "mm", "length of the cut edge"},
};
constexpr const base::FormulaCard* k_vee_cards[] = {
    &process::k_vee_depth_card, &process::k_vee_mouth_card, &process::k_vee_cut_card};

Result<Answer> answer_vee(Reader& in) {
    const bool by_leg = in.has("leg");
    if (by_leg) {
        in.require("thickness");
        in.refuse_if_given("depth", "Give the depth or the leg, not both.");
    } else {
        in.require("depth");
        in.refuse_if_given("thickness", "The thickness goes with the leg.");
    }
    const Length leg = in.length("leg");
    const Length thickness = in.length("thickness");
    Length depth = in.length("depth");
    const Angle angle = in.has("angle") ? in.angle("angle") : degrees(90.0);
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    if (by_leg) {
        const auto working = process::vee_depth_working(leg, thickness);
        if (!working.ok())
            return working.refusal();
        depth = *std::get_if<Length>(&working->result.value);
        answer.add("depth", working);
    } else {
        answer.figure("depth", depth);
    }
    return answer.add("mouth", process::vee_mouth_working(depth, angle))
        .add("edge", process::vee_cut_working(depth, angle))
        .finish();
}

constexpr InputSpec k_slot_inputs[] = {
    {"width", InputKind::length, true, "of the slot", "", "1 in"},
    {"depth", InputKind::length, true, "from the edge", "", "2 in"},
};
constexpr OutputSpec k_slot_outputs[] = {{"edge", "mm", "length of the cut edge"}};
constexpr const base::FormulaCard* k_slot_cards[] = {&process::k_slot_notch_card};

Result<Answer> answer_slot(Reader& in) {
    const Length width = in.length("width");
    const Length depth = in.length("depth");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("edge", process::slot_notch_working(width, depth)).finish();
}

} // namespace

const Calculation k_notch_bites{"notch.bites",
                                "Bites along a notch longer than the tool",
                                k_bites_inputs,
                                k_bites_outputs,
                                k_bites_cards,
                                answer_bites};
const Calculation k_notch_vee{"notch.vee",
                              "Depth, mouth and cut edge of a V",
                              k_vee_inputs,
                              k_vee_outputs,
                              k_vee_cards,
                              answer_vee};
const Calculation k_notch_slot{"notch.slot",
                               "Cut edge of a slot from the edge, round at its end",
                               k_slot_inputs,
                               k_slot_outputs,
                               k_slot_cards,
                               answer_slot};

} // namespace treadle::calc
