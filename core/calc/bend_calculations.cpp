#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"
#include "process/air_bend.h"
#include "process/cards.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr OutputSpec k_radius_outputs[] = {{"radius", "mm", "inside radius"}};

constexpr InputSpec k_force_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/4 in"},
    {"length", InputKind::length, true, "along the bend line", "", "12 in"},
    {"opening", InputKind::length, true, "of the V", "", "2 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"tensile_strength", InputKind::stress, false, "in place of material", "", "60 ksi"},
    {"method", InputKind::word, false, "careful when not given", "careful|textbook"},
    {"k", InputKind::ratio, false, "the textbook's factor, for that method only", "", "1.33"},
};
constexpr OutputSpec k_force_outputs[] = {{"force", "kN", "bending force"}};
constexpr const base::FormulaCard* k_force_cards[] = {&process::k_bend_force_card,
                                                      &process::k_bend_force_given_card};

Result<Answer> answer_force(Reader& in) {
    process::AirBend bend;
    bend.thickness = in.length("thickness");
    bend.length = in.length("length");
    bend.opening = in.length("opening");
    const StrengthUsed strength = in.tensile_strength(bend.thickness);
    bend.tensile_strength = strength.value;
    // A factor of the asker's own can only be meant for the textbook's formula.
    const bool textbook = in.has("method") ? in.choice("method") == 1 : in.has("k");
    if (textbook)
        in.require("k");
    else
        in.refuse_if_given("k", "A factor of your own goes with the method textbook.");
    const double factor = in.ratio("k");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("force",
             textbook ? process::bend_force_with_factor_working(bend, factor)
                      : process::bend_force_working(bend),
             strength.note)
        .finish();
}

constexpr InputSpec k_opening_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/4 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"tensile_strength", InputKind::stress, false, "in place of material", "", "60 ksi"},
};
constexpr OutputSpec k_opening_outputs[] = {{"opening", "mm", "of the V"}};
constexpr const base::FormulaCard* k_opening_cards[] = {&process::k_usual_opening_card};

Result<Answer> answer_opening(Reader& in) {
    const Length thickness = in.length("thickness");
    const StrengthUsed strength = in.tensile_strength(thickness);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("opening", process::usual_opening_working(thickness, strength.value), strength.note)
        .finish();
}

constexpr InputSpec k_radius_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/4 in"},
    {"opening", InputKind::length, true, "of the V", "", "2 in"},
    {"material", InputKind::material, false, "grade, for its share", "", "A36"},
    {"share", InputKind::ratio, false, "radius over opening, in place of material", "", "16 %"},
    {"nose", InputKind::length, false, "radius of the punch nose", "", "1/8 in"},
};
constexpr const base::FormulaCard* k_radius_cards[] = {&process::k_air_bend_radius_card};

Result<Answer> answer_radius(Reader& in) {
    process::AirBendRadius bend;
    bend.thickness = in.length("thickness");
    bend.opening = in.length("opening");
    bend.nose = in.length("nose");
    bend.share = in.air_bend_share();
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("radius", process::air_bend_radius_working(bend)).finish();
}

constexpr InputSpec k_leg_inputs[] = {
    {"opening", InputKind::length, true, "of the V", "", "2 in"},
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/4 in"},
    {"radius", InputKind::length, true, "inside radius", "", "5/16 in"},
    {"angle", InputKind::angle, true, "turned through", "", "90 deg"},
};
constexpr OutputSpec k_leg_outputs[] = {{"leg", "mm", "shortest outside leg"}};
constexpr const base::FormulaCard* k_leg_cards[] = {&process::k_least_leg_card};

Result<Answer> answer_leg(Reader& in) {
    const process::LeastLeg bend{
        in.length("opening"), in.length("thickness"), in.length("radius"), in.angle("angle")};
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("leg", process::least_leg_working(bend)).finish();
}

constexpr InputSpec k_least_radius_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/4 in"},
    {"material", InputKind::material, true, "grade", "", "A36"},
    {"grain",
     InputKind::word,
     false,
     "rolling direction against the bend line; unknown counts as along",
     "unknown|across|along"}, // in the order of material::Grain
    {"angle", InputKind::angle, false, "turned through; 90 degrees when not given", "", "90 deg"},
};
constexpr const base::FormulaCard* k_least_radius_cards[] = {
    &process::k_least_radius_plate_card,
    &process::k_least_radius_practice_card,
    &process::k_least_radius_din_card,
    &process::k_least_radius_aluminium_card,
    &process::k_least_radius_austenitic_card};

Result<Answer> answer_least_radius(Reader& in) {
    const Length thickness = in.length("thickness");
    const Grade* grade = in.material();
    const int grain = in.choice("grain");
    const Angle angle = in.has("angle") ? in.angle("angle") : degrees(90.0);
    if (in.failed() || grade == nullptr)
        return in.refusal();
    return AnswerBuilder()
        .add("radius",
             process::least_radius_working(thickness,
                                           *grade,
                                           grain < 0 ? material::Grain::unknown
                                                     : static_cast<material::Grain>(grain),
                                           angle))
        .finish();
}

} // namespace

const Calculation k_bend_force{"bend.force",
                               "Force to bend in a V",
                               k_force_inputs,
                               k_force_outputs,
                               k_force_cards,
                               answer_force};
const Calculation k_bend_opening{"bend.opening",
                                 "Usual opening of the V",
                                 k_opening_inputs,
                                 k_opening_outputs,
                                 k_opening_cards,
                                 answer_opening};
const Calculation k_bend_radius{"bend.radius",
                                "Inside radius that air bending makes",
                                k_radius_inputs,
                                k_radius_outputs,
                                k_radius_cards,
                                answer_radius};
const Calculation k_bend_least_leg{"bend.least_leg",
                                   "Shortest outside leg that bridges the V",
                                   k_leg_inputs,
                                   k_leg_outputs,
                                   k_leg_cards,
                                   answer_leg};
const Calculation k_bend_least_radius{"bend.least_radius",
                                      "Smallest inside radius without cracking",
                                      k_least_radius_inputs,
                                      k_radius_outputs,
                                      k_least_radius_cards,
                                      answer_least_radius};

} // namespace treadle::calc
