#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/input_check.h"
#include "process/punch_tool.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_edge_inputs[] = {k_hole_shape_input, k_hole_size_input, k_hole_size2_input};
constexpr OutputSpec k_edge_outputs[] = {
    {"edge", "mm", "length of the cut edge"},
    {"across", "mm", "circle round the hole: what the holder has to take"},
    {"area", "mm2", "0 for a hole known only by its edge"},
};
constexpr const base::FormulaCard* k_edge_cards[] = {&process::k_hole_edge_card};

Result<Answer> answer_edge(Reader& in) {
    const geometry::HoleOutline hole = read_hole(in);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("edge", process::hole_edge_working(hole))
        .figure("across", geometry::circumscribed(hole))
        .figure("area", geometry::hole_area(hole))
        .finish();
}

constexpr InputSpec k_punch_strength_input{
    "punch_strength",
    InputKind::stress,
    false,
    "mean compressive stress allowed in the punch; 180 ksi when not given",
    "",
    "180 ksi"};

constexpr InputSpec k_stress_inputs[] = {k_hole_shape_input,
                                         k_hole_size_input,
                                         k_hole_size2_input,
                                         k_thickness_input,
                                         k_material_input,
                                         k_shear_strength_input};
constexpr OutputSpec k_stress_outputs[] = {{"stress", "MPa", "mean compressive stress"}};
constexpr const base::FormulaCard* k_stress_cards[] = {&process::k_punch_stress_card};

Result<Answer> answer_stress(Reader& in) {
    process::PunchCut cut;
    cut.hole = read_hole(in);
    cut.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(cut.thickness, "thickness");
    cut.shear_strength = strength.value;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("stress", process::punch_stress_working(cut), strength.note)
        .finish();
}

constexpr InputSpec k_thickest_inputs[] = {
    k_hole_shape_input,
    k_hole_size_input,
    k_hole_size2_input,
    {"shear_strength", InputKind::stress, true, "upper bound of the metal", "", "50 ksi"},
    k_punch_strength_input,
};
constexpr OutputSpec k_thickness_outputs[] = {{"thickness", "mm", "greatest thickness"}};
constexpr const base::FormulaCard* k_thickest_cards[] = {&process::k_punch_thickest_card};

Result<Answer> answer_thickest(Reader& in) {
    const geometry::HoleOutline hole = read_hole(in);
    const Stress strength = in.stress("shear_strength");
    const Stress limit =
        in.has("punch_strength") ? in.stress("punch_strength") : process::k_punch_stress_limit;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("thickness", process::punch_thickest_working(hole, strength, limit))
        .finish();
}

constexpr InputSpec k_free_inputs[] = {
    {"size", InputKind::length, true, "diameter of the punch", "", "1/2 in"},
    k_thickness_input,
    k_material_input,
    k_shear_strength_input,
    {"modulus",
     InputKind::stress,
     false,
     "of the punch; 29000 ksi when not given",
     "",
     "30000 ksi"},
};
constexpr OutputSpec k_free_outputs[] = {
    {"length", "mm", "longest free length of a guided punch"},
    {"unguided", "mm", "the same when nothing guides the point"},
};
constexpr const base::FormulaCard* k_free_cards[] = {&process::k_punch_free_length_card,
                                                     &process::k_punch_free_end_card};
constexpr Stress k_tool_steel_modulus = ksi(29'000.0);

Result<Answer> answer_free(Reader& in) {
    process::FreePunch punch;
    punch.diameter = in.length("size");
    punch.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(punch.thickness, "thickness");
    punch.shear_strength = strength.value;
    punch.modulus = in.has("modulus") ? in.stress("modulus") : k_tool_steel_modulus;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("length", process::punch_free_length_working(punch), strength.note)
        .add("unguided", process::punch_free_end_working(punch))
        .finish();
}

constexpr InputSpec k_bolt_inputs[] = {
    {"bolt", InputKind::bolt, false, "for the rule aisc", "", "3/4 in"},
    {"hole", InputKind::length, false, "for the rule en1090", "", "22 mm"},
    {"rule", InputKind::word, false, "aisc when not given", "aisc|en1090"},
};
constexpr const base::FormulaCard* k_bolt_cards[] = {&process::k_bolt_hole_aisc_card,
                                                     &process::k_bolt_hole_en_card};

Result<Answer> answer_bolt(Reader& in) {
    if (in.choice("rule") == 1) {
        in.require("hole");
        in.refuse_if_given("bolt", "This rule goes by the hole.");
        const Length hole = in.length("hole");
        if (in.failed())
            return in.refusal();
        return AnswerBuilder().add("thickness", process::bolt_hole_en_working(hole)).finish();
    }
    in.require("bolt");
    in.refuse_if_given("hole", "This rule goes by the bolt.");
    const auto bolt = in.bolt("bolt");
    if (in.failed() || !bolt)
        return in.refusal();
    return AnswerBuilder()
        .add("thickness", process::bolt_hole_aisc_working(bolt->diameter))
        .finish();
}

constexpr InputSpec k_stroke_inputs[] = {
    k_thickness_input,
    {"stripper_gap", InputKind::length, true, "of the stripper over the stock", "", "1/8 in"},
    {"die_entry", InputKind::length, false, "1/8 in when not given", "", "1/8 in"},
};
constexpr OutputSpec k_stroke_outputs[] = {{"stroke", "mm", "least stroke"}};
constexpr const base::FormulaCard* k_stroke_cards[] = {&process::k_punch_stroke_card};

Result<Answer> answer_stroke(Reader& in) {
    process::PunchStroke stroke;
    stroke.thickness = in.length("thickness");
    stroke.stripper_gap = in.length("stripper_gap");
    stroke.die_entry = in.has("die_entry") ? in.length("die_entry") : process::k_usual_die_entry;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("stroke", process::punch_stroke_working(stroke)).finish();
}

constexpr InputSpec k_heel_inputs[] = {
    {"thickness", InputKind::length, true, "of the standing leg", "", "1/4 in"},
    {"fillet", InputKind::length, false, "heel to the end of the fillet", "", "9/16 in"},
    {"die_radius", InputKind::length, false, "outside radius of a flat die", "", "1 in"},
    {"clearance_radius",
     InputKind::length,
     false,
     "of a relieved die, in place of fillet and die_radius",
     "",
     "3/4 in"},
};
constexpr OutputSpec k_heel_outputs[] = {{"distance", "mm", "hole centre from the heel"}};
constexpr const base::FormulaCard* k_heel_cards[] = {&process::k_punch_heel_card};

Result<Answer> answer_heel(Reader& in) {
    process::BesideLeg leg;
    leg.thickness = in.length("thickness");
    leg.relieved = in.has("clearance_radius");
    if (leg.relieved) {
        in.refuse_if_given("fillet", "A relieved die clears the fillet.");
        in.refuse_if_given("die_radius", "Give one of the two radii.");
        leg.die_radius = in.length("clearance_radius");
    } else {
        in.require("fillet");
        in.require("die_radius");
        leg.fillet = in.length("fillet");
        leg.die_radius = in.length("die_radius");
    }
    if (in.failed())
        return in.refusal();
    process::InputCheck check;
    check.length(leg.thickness, "thickness");
    if (leg.relieved)
        check.length(leg.die_radius, "clearance_radius");
    if (check.failed())
        return check.refusal();
    return AnswerBuilder().add("distance", process::punch_from_heel_working(leg)).finish();
}

} // namespace

const Calculation k_punch_edge{"punch.edge",
                               "Cut edge, area and size across of a hole",
                               k_edge_inputs,
                               k_edge_outputs,
                               k_edge_cards,
                               answer_edge};
const Calculation k_punch_stress{"punch.stress",
                                 "Mean compressive stress in the punch",
                                 k_stress_inputs,
                                 k_stress_outputs,
                                 k_stress_cards,
                                 answer_stress};
const Calculation k_punch_thickest{"punch.thickest",
                                   "Thickest metal that a punch stands",
                                   k_thickest_inputs,
                                   k_thickness_outputs,
                                   k_thickest_cards,
                                   answer_thickest};
const Calculation k_punch_free_length{"punch.free_length",
                                      "Longest free length of a punch point",
                                      k_free_inputs,
                                      k_free_outputs,
                                      k_free_cards,
                                      answer_free};
const Calculation k_punch_bolt_hole{"punch.bolt_hole",
                                    "Thickest metal for a bolt hole punched full size",
                                    k_bolt_inputs,
                                    k_thickness_outputs,
                                    k_bolt_cards,
                                    answer_bolt};
const Calculation k_punch_stroke{"punch.stroke",
                                 "Stroke that a hole needs",
                                 k_stroke_inputs,
                                 k_stroke_outputs,
                                 k_stroke_cards,
                                 answer_stroke};
const Calculation k_punch_from_heel{"punch.from_heel",
                                    "Least distance of a hole from the heel of an angle",
                                    k_heel_inputs,
                                    k_heel_outputs,
                                    k_heel_cards,
                                    answer_heel};

} // namespace treadle::calc
