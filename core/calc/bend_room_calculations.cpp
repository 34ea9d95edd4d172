#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/bend_room.h"
#include "process/cards.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_relief_inputs[] = {k_thickness_input, k_bend_radius_input};
constexpr OutputSpec k_relief_outputs[] = {
    {"width", "mm", "least width"},
    {"depth", "mm", "least depth"},
};
constexpr const base::FormulaCard* k_relief_cards[] = {&process::k_relief_width_card,
                                                       &process::k_relief_depth_card};

Result<Answer> answer_relief(Reader& in) {
    const Length thickness = in.length("thickness");
    const Length radius = in.length("radius");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("width", process::relief_width_working(thickness))
        .add("depth", process::relief_depth_working(thickness, radius))
        .finish();
}

constexpr InputSpec k_hole_inputs[] = {
    k_thickness_input,
    k_bend_radius_input,
    {"hole", InputKind::length, true, "diameter, or width of a slot", "", "1/2 in"},
    {"kind", InputKind::word, false, "round when not given", "round|slot"},
    {"times",
     InputKind::ratio,
     false,
     "of the thickness, 1.5 to 10; careful when not given",
     "",
     "3"},
    {"opening", InputKind::length, false, "of the V, for the bend line", "", "2 in"},
};
constexpr OutputSpec k_hole_outputs[] = {
    {"distance", "mm", "edge of the hole to the inside face of the other leg"},
    {"from_bend_line", "mm", "edge of the hole to the bend line, with an opening"},
};
constexpr const base::FormulaCard* k_hole_cards[] = {&process::k_hole_to_bend_card,
                                                     &process::k_hole_to_die_card};

Result<Answer> answer_hole(Reader& in) {
    process::HoleNearBend hole;
    hole.thickness = in.length("thickness");
    hole.radius = in.length("radius");
    hole.hole = in.length("hole");
    if (in.choice("kind") == 1)
        hole.kind = process::NearHole::slot_along;
    if (in.has("times"))
        hole.times = in.ratio("times");
    const Length opening = in.length("opening");
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    answer.add("distance", process::hole_to_bend_working(hole));
    if (in.has("opening"))
        answer.add("from_bend_line", process::hole_to_die_working(opening));
    return answer.finish();
}

} // namespace

const Calculation k_bend_relief{"bend.relief",
                                "Least size of a bend relief",
                                k_relief_inputs,
                                k_relief_outputs,
                                k_relief_cards,
                                answer_relief};
const Calculation k_bend_hole_distance{"bend.hole_distance",
                                       "Least distance of a hole from a bend",
                                       k_hole_inputs,
                                       k_hole_outputs,
                                       k_hole_cards,
                                       answer_hole};

} // namespace treadle::calc
