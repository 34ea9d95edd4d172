#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/cut_rules.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_mitre_inputs[] = {
    {"width", InputKind::length, true, "width of the flat", "", "4 in"},
    {"angle", InputKind::angle, true, "of the cut, from square", "", "45 deg"},
};
constexpr OutputSpec k_mitre_outputs[] = {{"cut", "mm", "length of the cut"}};
constexpr const base::FormulaCard* k_mitre_cards[] = {&process::k_mitre_cut_card};

Result<Answer> answer_mitre(Reader& in) {
    const Length width = in.length("width");
    const Angle angle = in.angle("angle");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("cut", process::mitre_cut_working(width, angle)).finish();
}

constexpr InputSpec k_outside_input{
    "outside", InputKind::length, true, "outside diameter", "", "2 in"};
constexpr InputSpec k_wall_input{"wall", InputKind::length, true, "wall", "", "0.120 in"};

constexpr InputSpec k_tube_inputs[] = {
    k_outside_input, k_wall_input, k_material_input, k_shear_strength_input};
constexpr OutputSpec k_tube_outputs[] = {{"force", "kN", "to cut the wall alone"}};
constexpr const base::FormulaCard* k_tube_cards[] = {&process::k_tube_shear_card};

Result<Answer> answer_tube(Reader& in) {
    process::TubeShear cut;
    cut.outside = in.length("outside");
    cut.wall = in.length("wall");
    const StrengthUsed strength = in.shear_strength(cut.wall, "wall");
    cut.strength = strength.value;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::tube_shear_working(cut), strength.note).finish();
}

constexpr InputSpec k_flattening_inputs[] = {
    k_outside_input,
    k_wall_input,
    {"yield_strength", InputKind::stress, true, "of the tube", "", "46 ksi"},
};
constexpr OutputSpec k_flattening_outputs[] = {{"force", "kN", "that crushes the tube"}};
constexpr const base::FormulaCard* k_flattening_cards[] = {&process::k_tube_flattening_card};

Result<Answer> answer_flattening(Reader& in) {
    process::TubeShear cut;
    cut.outside = in.length("outside");
    cut.wall = in.length("wall");
    cut.strength = in.stress("yield_strength");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::tube_flattening_working(cut)).finish();
}

constexpr InputSpec k_thickness_only[] = {k_thickness_input};
constexpr OutputSpec k_gap_outputs[] = {
    {"least", "mm", "tight end"},
    {"greatest", "mm", "wide end"},
};
constexpr const base::FormulaCard* k_gap_cards[] = {&process::k_knife_gap_card};

Result<Answer> answer_gap(Reader& in) {
    const Length thickness = in.length("thickness");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("least", process::knife_gap_working(thickness, process::KnifeGap::tight))
        .add("greatest", process::knife_gap_working(thickness, process::KnifeGap::wide))
        .finish();
}

constexpr OutputSpec k_trim_outputs[] = {{"length", "mm", "shortest piece to shear off"}};
constexpr const base::FormulaCard* k_trim_cards[] = {&process::k_least_trim_card};

Result<Answer> answer_trim(Reader& in) {
    const Length thickness = in.length("thickness");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("length", process::least_trim_working(thickness)).finish();
}

constexpr InputSpec k_rating_inputs[] = {
    {"thickness", InputKind::length, true, "published", "", "1/2 in"},
    {"width", InputKind::length, true, "published", "", "8 in"},
    {"rated_strength",
     InputKind::stress,
     true,
     "tensile strength that the pair was published for",
     "",
     "65 ksi"},
    k_material_input,
    k_tensile_strength_input,
};
constexpr OutputSpec k_rating_outputs[] = {
    {"thickness", "mm", "for the stock, at the published width: the careful rule"},
    {"width", "mm", "for the stock, at the published thickness, parallel blades"},
    {"thickness_root", "mm", "by the square root, for comparison"},
};
constexpr const base::FormulaCard* k_rating_cards[] = {
    &process::k_rating_thickness_card, &process::k_rating_width_card, &process::k_rating_root_card};

Result<Answer> answer_rating(Reader& in) {
    process::ShearRating pair;
    pair.thickness = in.length("thickness");
    pair.width = in.length("width");
    pair.rated_strength = in.stress("rated_strength");
    const Grade* grade = in.material();
    if (grade != nullptr && grade->refusal.cutting)
        in.refuse({"material", grade->refusal.reason, ""});
    const StrengthUsed strength = in.tensile_strength(pair.thickness);
    pair.tensile_strength = strength.value;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("thickness", process::rating_thickness_working(pair), strength.note)
        .add("width", process::rating_width_working(pair))
        .add("thickness_root", process::rating_root_working(pair))
        .finish();
}

} // namespace

const Calculation k_shear_mitre{"shear.mitre",
                                "Length of a mitred cut across a flat",
                                k_mitre_inputs,
                                k_mitre_outputs,
                                k_mitre_cards,
                                answer_mitre};
const Calculation k_shear_tube{"shear.tube",
                               "Force to shear the wall of a tube",
                               k_tube_inputs,
                               k_tube_outputs,
                               k_tube_cards,
                               answer_tube};
const Calculation k_shear_tube_flattening{"shear.tube_flattening",
                                          "Load that flattens a tube between plain jaws",
                                          k_flattening_inputs,
                                          k_flattening_outputs,
                                          k_flattening_cards,
                                          answer_flattening};
const Calculation k_shear_knife_gap{"shear.knife_gap",
                                    "Gap between shear knives",
                                    k_thickness_only,
                                    k_gap_outputs,
                                    k_gap_cards,
                                    answer_gap};
const Calculation k_shear_trim{"shear.trim",
                               "Shortest piece to shear off",
                               k_thickness_only,
                               k_trim_outputs,
                               k_trim_cards,
                               answer_trim};
const Calculation k_shear_rating{"shear.rating",
                                 "A published pair for stock of another strength",
                                 k_rating_inputs,
                                 k_rating_outputs,
                                 k_rating_cards,
                                 answer_rating};

} // namespace treadle::calc
