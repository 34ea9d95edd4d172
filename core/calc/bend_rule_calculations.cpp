#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/bend_rules.h"
#include "process/cards.h"
#include "process/input_check.h"

#include <algorithm>

namespace treadle::calc {

namespace {

using base::Result;

constexpr OutputSpec k_force_outputs[] = {{"force", "kN", "bending force"}};

constexpr InputSpec k_shop_inputs[] = {
    k_thickness_input,
    {"length", InputKind::length, true, "along the bend line", "", "12 in"},
    k_opening_input,
    {"rule", InputKind::word, true, "tons per foot, or kN per metre", "inch|metric"},
};
constexpr const base::FormulaCard* k_shop_cards[] = {&process::k_shop_force_inch_card,
                                                     &process::k_shop_force_metric_card};

Result<Answer> answer_shop(Reader& in) {
    const process::ShopBend bend{in.length("thickness"), in.length("length"), in.length("opening")};
    const auto rule = in.choice("rule") == 1 ? process::ShopForce::kilonewtons_per_metre
                                             : process::ShopForce::tons_per_foot;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::shop_force_working(bend, rule)).finish();
}

constexpr InputSpec k_bar_inputs[] = {
    {"shape", InputKind::word, true, "flat: bent the hard way", "round|square|flat"},
    {"size", InputKind::length, true, "diameter, side, or width of a flat", "", "3/4 in"},
    {"thickness", InputKind::length, false, "of a flat", "", "3/8 in"},
    {"span", InputKind::length, true, "opening, or between supports", "", "6 in"},
    k_material_input,
    k_tensile_strength_input,
    {"k", InputKind::ratio, false, "factor; careful when not given", "", "1.33"},
};
constexpr const base::FormulaCard* k_bar_cards[] = {&process::k_bar_bend_card};

Result<Answer> answer_bar(Reader& in) {
    process::BarBend bend;
    bend.shape = static_cast<process::BentBar>(std::max(in.choice("shape"), 0));
    bend.size = in.length("size");
    const bool flat = bend.shape == process::BentBar::flat_hard_way;
    if (flat)
        in.require("thickness");
    else
        in.refuse_if_given("thickness", "This shape has one size only.");
    bend.thickness = in.length("thickness");
    bend.span = in.length("span");
    const StrengthUsed strength =
        flat ? in.tensile_strength(bend.thickness) : in.tensile_strength(bend.size, "size");
    bend.tensile_strength = strength.value;
    if (in.has("k"))
        bend.factor = in.ratio("k");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::bar_bend_working(bend), strength.note).finish();
}

constexpr InputSpec k_bottoming_inputs[] = {
    {"force", InputKind::force, true, "of air bending", "", "15 ton"},
    {"kind", InputKind::word, true, "of bending", "bottoming|coining"},
    {"times", InputKind::ratio, false, "top of the range when not given", "", "5"},
};
constexpr const base::FormulaCard* k_bottoming_cards[] = {&process::k_bottoming_card};

Result<Answer> answer_bottoming(Reader& in) {
    const Force force = in.force("force");
    const auto kind = in.choice("kind") == 1 ? process::Press::coining : process::Press::bottoming;
    std::optional<double> times;
    if (in.has("times"))
        times = in.ratio("times");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("force", process::bottoming_working(force, kind, times)).finish();
}

constexpr InputSpec k_work_inputs[] = {
    {"force", InputKind::force, true, "peak force", "", "4.34 kN"},
    {"stroke", InputKind::length, true, "under load", "", "15 mm"},
    {"share", InputKind::ratio, false, "mean over peak force; 1 when not given", "", "0.75"},
};
constexpr OutputSpec k_work_outputs[] = {{"work", "J", "of the bend"}};
constexpr const base::FormulaCard* k_work_cards[] = {&process::k_bend_work_card};

Result<Answer> answer_work(Reader& in) {
    const Force force = in.force("force");
    const Length stroke = in.length("stroke");
    const double share = in.has("share") ? in.ratio("share") : 1.0;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("work", process::bend_work_working(force, stroke, share)).finish();
}

constexpr InputSpec k_travel_inputs[] = {
    k_opening_input, k_bend_radius_input, k_thickness_input, k_bend_angle_input};
constexpr OutputSpec k_travel_outputs[] = {{"travel", "mm", "from first touch"}};
constexpr const base::FormulaCard* k_travel_cards[] = {&process::k_punch_travel_card};

Result<Answer> answer_travel(Reader& in) {
    const Length opening = in.length("opening");
    const Length radius = in.length("radius");
    const Length thickness = in.length("thickness");
    const Angle angle = in.angle("angle");
    process::InputCheck check;
    check.length(radius, "radius");
    if (!in.failed() && check.failed())
        return check.refusal();
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("travel", process::punch_travel_working(opening, radius, thickness, angle))
        .finish();
}

constexpr InputSpec k_for_radius_inputs[] = {
    k_thickness_input,
    {"radius", InputKind::length, true, "inside radius wanted", "", "1/4 in"},
    {"material", InputKind::material, false, "grade, for its share", "", "A36"},
    {"share", InputKind::ratio, false, "radius over opening, in place of material", "", "0.16"},
};
constexpr OutputSpec k_for_radius_outputs[] = {{"opening", "mm", "of the V"}};
constexpr const base::FormulaCard* k_for_radius_cards[] = {&process::k_opening_for_radius_card};

Result<Answer> answer_for_radius(Reader& in) {
    process::WantedRadius bend;
    bend.thickness = in.length("thickness");
    bend.radius = in.length("radius");
    bend.share = in.air_bend_share();
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("opening", process::opening_for_radius_working(bend)).finish();
}

constexpr InputSpec k_ductility_inputs[] = {
    k_thickness_input,
    {"reduction", InputKind::ratio, false, "reduction of area", "", "10 %"},
    {"elongation", InputKind::ratio, false, "in place of reduction", "", "20 %"},
};
constexpr OutputSpec k_radius_outputs[] = {{"radius", "mm", "inside radius"}};
constexpr const base::FormulaCard* k_ductility_cards[] = {&process::k_ductility_reduction_card,
                                                          &process::k_ductility_elongation_card};

Result<Answer> answer_ductility(Reader& in) {
    const Length thickness = in.length("thickness");
    const bool by_reduction = in.has("reduction");
    if (by_reduction)
        in.refuse_if_given("elongation", "Give one of reduction and elongation.");
    else
        in.require("elongation");
    const double ductility = by_reduction ? in.ratio("reduction") : in.ratio("elongation");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("radius",
             by_reduction ? process::radius_by_reduction_working(thickness, ductility)
                          : process::radius_by_elongation_working(thickness, ductility))
        .finish();
}

constexpr InputSpec k_hard_way_inputs[] = {
    {"width", InputKind::length, true, "in the plane of bending", "", "2 in"},
    {"radius", InputKind::length, false, "inside radius, for the strain", "", "6 in"},
    {"strain", InputKind::ratio, false, "of the outer edge, in place of radius", "", "15 %"},
};
constexpr OutputSpec k_hard_way_outputs[] = {
    {"strain", "", "of the outer edge"},
    {"radius", "mm", "inside radius"},
};
constexpr const base::FormulaCard* k_hard_way_cards[] = {&process::k_hard_way_strain_card,
                                                         &process::k_hard_way_radius_card};

Result<Answer> answer_hard_way(Reader& in) {
    const Length width = in.length("width");
    const bool by_radius = in.has("radius");
    if (by_radius)
        in.refuse_if_given("strain", "Give one of radius and strain.");
    else
        in.require("strain");
    const Length radius = in.length("radius");
    const double strain = in.ratio("strain");
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    if (by_radius)
        answer.add("strain", process::hard_way_strain_working(width, radius))
            .figure("radius", radius);
    else
        answer.figure("strain", quantity::Share{strain})
            .add("radius", process::hard_way_radius_working(width, strain));
    return answer.finish();
}

} // namespace

const Calculation k_bend_force_shop{"bend.force_shop",
                                    "Bending force of mild steel by a shop rule",
                                    k_shop_inputs,
                                    k_force_outputs,
                                    k_shop_cards,
                                    answer_shop};
const Calculation k_bend_bar_force{"bend.bar_force",
                                   "Force to bend a bar over a span",
                                   k_bar_inputs,
                                   k_force_outputs,
                                   k_bar_cards,
                                   answer_bar};
const Calculation k_bend_bottoming{"bend.bottoming",
                                   "Force to bottom or to coin",
                                   k_bottoming_inputs,
                                   k_force_outputs,
                                   k_bottoming_cards,
                                   answer_bottoming};
const Calculation k_bend_work{
    "bend.work", "Work of a bend", k_work_inputs, k_work_outputs, k_work_cards, answer_work};
const Calculation k_bend_travel{"bend.travel",
                                "Punch travel of an air bend",
                                k_travel_inputs,
                                k_travel_outputs,
                                k_travel_cards,
                                answer_travel};
const Calculation k_bend_opening_for_radius{"bend.opening_for_radius",
                                            "Opening of the V that makes a radius",
                                            k_for_radius_inputs,
                                            k_for_radius_outputs,
                                            k_for_radius_cards,
                                            answer_for_radius};
const Calculation k_bend_radius_from_ductility{"bend.radius_from_ductility",
                                               "Smallest inside radius from a tensile test",
                                               k_ductility_inputs,
                                               k_radius_outputs,
                                               k_ductility_cards,
                                               answer_ductility};
const Calculation k_bend_hard_way{"bend.hard_way",
                                  "Strain or radius of a flat bent the hard way",
                                  k_hard_way_inputs,
                                  k_hard_way_outputs,
                                  k_hard_way_cards,
                                  answer_hard_way};

} // namespace treadle::calc
