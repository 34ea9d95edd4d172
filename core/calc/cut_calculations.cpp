#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/cut_rules.h"
#include "process/input_check.h"
#include "process/notch.h"
#include "process/shear.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr OutputSpec k_force_outputs[] = {{"force", "kN", "force of the cut"}};

constexpr InputSpec k_flat_inputs[] = {
    {"width", InputKind::length, true, "width of the flat", "", "4 in"},
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/2 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"},
    {"rake",
     InputKind::angle,
     false,
     "of the blade; without it the blades count as parallel",
     "",
     "3 deg"},
    {"penetration",
     InputKind::ratio,
     false,
     "share of the thickness to fracture, with a rake only",
     "",
     "0.38"},
};
constexpr const base::FormulaCard* k_flat_cards[] = {&process::k_flat_shear_card};

Result<Answer> answer_flat(Reader& in) {
    process::FlatShear cut;
    cut.width = in.length("width");
    cut.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(cut.thickness, "thickness");
    cut.shear_strength = strength.value;
    if (in.has("rake"))
        cut.rake = in.angle("rake");
    else
        in.refuse_if_given("penetration", "The penetration counts only with a stated rake.");
    if (in.has("penetration"))
        cut.penetration = in.ratio("penetration");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::flat_shear_working(cut), strength.note).finish();
}

constexpr InputSpec k_bar_inputs[] = {
    {"shape", InputKind::word, true, "shape of the bar", "round|square"},
    {"size", InputKind::length, true, "diameter or side", "", "1 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"},
};
constexpr const base::FormulaCard* k_bar_cards[] = {&process::k_bar_shear_card};

Result<Answer> answer_bar(Reader& in) {
    process::BarShear cut;
    cut.shape = in.choice("shape") == 1 ? process::BarShape::square : process::BarShape::round;
    cut.size = in.length("size");
    const StrengthUsed strength = in.shear_strength(cut.size, "size");
    cut.shear_strength = strength.value;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::bar_shear_working(cut), strength.note).finish();
}

constexpr InputSpec k_angle_inputs[] = {
    {"leg_a", InputKind::length, true, "one leg", "", "3 in"},
    {"leg_b", InputKind::length, true, "other leg", "", "2 in"},
    {"thickness", InputKind::length, true, "thickness of the legs", "", "1/2 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"},
    {"mitre",
     InputKind::angle,
     false,
     "of the cut from square; square when not given",
     "",
     "45 deg"},
};
constexpr const base::FormulaCard* k_angle_cards[] = {&process::k_angle_shear_card,
                                                      &process::k_mitred_angle_card};

Result<Answer> answer_angle(Reader& in) {
    process::AngleShear cut;
    cut.leg_a = in.length("leg_a");
    cut.leg_b = in.length("leg_b");
    cut.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(cut.thickness, "thickness");
    cut.shear_strength = strength.value;
    const Angle mitre = in.angle("mitre");
    if (!in.failed() && in.has("mitre")) {
        process::InputCheck check;
        check.angle_within(mitre, 0.0, 60.0, "mitre");
        if (check.failed())
            return check.refusal();
    }
    if (in.failed())
        return in.refusal();
    if (in.has("mitre"))
        return AnswerBuilder()
            .add("force", process::mitred_angle_working(cut, mitre), strength.note)
            .show(process::angle_shear_working(cut))
            .finish();
    return AnswerBuilder().add("force", process::angle_shear_working(cut), strength.note).finish();
}

constexpr InputSpec k_notch_inputs[] = {
    {"shape", InputKind::word, true, "shape of the notch", "rectangle|vee"},
    {"width", InputKind::length, false, "of a rectangle, along the edge", "", "4 in"},
    {"depth", InputKind::length, true, "from the edge", "", "1 in"},
    {"angle", InputKind::angle, false, "of a V, included", "", "90 deg"},
    {"place", InputKind::word, false, "of a rectangle; the edge when not given", "edge|corner"},
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/2 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"},
};
constexpr const base::FormulaCard* k_notch_cards[] = {&process::k_notch_force_card};

geometry::NotchOutline notch(Reader& in) {
    geometry::NotchOutline out;
    const bool vee = in.choice("shape") == 1;
    if (vee) {
        out.shape = geometry::NotchShape::vee;
        in.require("angle");
        in.refuse_if_given("width", "A V has a depth and an angle; its mouth follows.");
        in.refuse_if_given("place", "A V is cut from an edge.");
    } else {
        in.require("width");
        in.refuse_if_given("angle", "A rectangle has no angle.");
    }
    out.width = in.length("width");
    out.depth = in.length("depth");
    process::InputCheck check;
    if (!vee)
        check.length(out.width, "width");
    if (!in.failed() && check.failed())
        in.refuse(check.refusal());
    out.included = in.angle("angle");
    if (in.choice("place") == 1)
        out.place = geometry::NotchPlace::corner;
    return out;
}

Result<Answer> answer_notch(Reader& in) {
    process::NotchCut cut;
    cut.notch = notch(in);
    cut.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(cut.thickness, "thickness");
    cut.shear_strength = strength.value;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::notch_force_working(cut), strength.note).finish();
}

} // namespace

const Calculation k_shear_flat{"shear.flat",
                               "Force to shear a flat or plate",
                               k_flat_inputs,
                               k_force_outputs,
                               k_flat_cards,
                               answer_flat};
const Calculation k_shear_bar{"shear.bar",
                              "Force to crop a round or square bar",
                              k_bar_inputs,
                              k_force_outputs,
                              k_bar_cards,
                              answer_bar};
const Calculation k_shear_angle{"shear.angle",
                                "Force to shear an angle",
                                k_angle_inputs,
                                k_force_outputs,
                                k_angle_cards,
                                answer_angle};
const Calculation k_notch_force{"notch.force",
                                "Force of one notching bite",
                                k_notch_inputs,
                                k_force_outputs,
                                k_notch_cards,
                                answer_notch};

} // namespace treadle::calc
