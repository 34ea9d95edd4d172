#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"
#include "process/blank.h"
#include "process/cards.h"
#include "process/empirical_bend.h"
#include "process/input_check.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr const char* k_methods = "din6935|handbook-soft|handbook-medium|handbook-hard";

constexpr const char* k_leg_ends = "tangent|apex";

/// Beyond 90 degrees the standard measures legs to the tangent planes, while K tables keep to the
/// apex: each its own custom, and the other one by name.
process::LegsTo legs_to(Reader& in) {
    if (!in.has("legs_to"))
        return in.has("k") ? process::LegsTo::apex : process::LegsTo::tangent_planes;
    return in.choice("legs_to") == 1 ? process::LegsTo::apex : process::LegsTo::tangent_planes;
}

/// A K given goes before; without one the method, DIN 6935 when none is named.
process::BlankRule rule(Reader& in) {
    process::BlankRule out;
    out.legs_to = legs_to(in);
    if (in.has("k")) {
        in.refuse_if_given("method", "Give k or a method, not both.");
        out.method = process::BlankMethod::k_factor;
        out.k_factor = in.ratio("k");
        return out;
    }
    switch (in.choice("method")) {
    case 1:
        out.method = process::BlankMethod::handbook_soft;
        break;
    case 2:
        out.method = process::BlankMethod::handbook_medium;
        break;
    case 3:
        out.method = process::BlankMethod::handbook_hard;
        break;
    default:
        break;
    }
    return out;
}

// Rules of thumb for a single bend, after the methods: in the order of process::EmpiricalRule.
constexpr const char* k_bend_methods = "din6935|handbook-soft|handbook-medium|handbook-hard|"
                                       "faa|groover|school-sheet|us-shop";
constexpr int k_first_empirical = 4;

constexpr InputSpec k_bend_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "4 mm"},
    {"radius", InputKind::length, true, "inside radius", "", "6 mm"},
    {"angle", InputKind::angle, true, "turned through", "", "90 deg"},
    {"k", InputKind::ratio, false, "neutral line from the inside over thickness", "", "0.42"},
    {"method", InputKind::word, false, "din6935 when neither is given", k_bend_methods},
    {"legs_to",
     InputKind::word,
     false,
     "over 90 degrees: apex with k or a rule of thumb, else tangent",
     k_leg_ends},
};
constexpr OutputSpec k_bend_outputs[] = {
    {"allowance", "mm", "length of metal in the bend"},
    {"deduction", "mm", "taken off the sum of the outside legs"},
    {"setback", "mm", "outside setback"},
    {"k", "", "neutral line from the inside over thickness"},
};
constexpr const base::FormulaCard* k_bend_cards[] = {&process::k_bend_allowance_din_card,
                                                     &process::k_bend_allowance_given_card,
                                                     &process::k_bend_allowance_handbook_card,
                                                     &process::k_bend_deduction_din_card,
                                                     &process::k_bend_deduction_card,
                                                     &process::k_outside_setback_card,
                                                     &process::k_outside_setback_apex_card,
                                                     &process::k_allowance_faa_card,
                                                     &process::k_allowance_groover_card,
                                                     &process::k_deduction_school_card,
                                                     &process::k_deduction_us_card};

Result<Answer>
answer_empirical(Reader& in, const process::SharpBend& bend, process::EmpiricalRule rule) {
    in.refuse_if_given("k", "Give k or a method, not both.");
    const auto legs_to =
        in.choice("legs_to") == 0 ? process::LegsTo::tangent_planes : process::LegsTo::apex;
    if (in.failed())
        return in.refusal();
    const auto figures = process::empirical_figures(bend, rule, legs_to);
    if (!figures.ok())
        return figures.refusal();
    const process::BlankRule setback{process::BlankMethod::k_factor, 0.5, legs_to};
    return AnswerBuilder()
        .add("allowance", process::empirical_allowance_working(bend, rule, legs_to))
        .add("deduction", process::empirical_deduction_working(bend, rule, legs_to))
        .add("setback", process::setback_working(bend, setback))
        .figure("k", quantity::Number{figures->k, 4})
        .finish();
}

/// The three share every step: each answers with all of them, so that none is worked out apart.
Result<Answer> answer_bend(Reader& in) {
    const process::SharpBend bend{in.length("thickness"), in.length("radius"), in.angle("angle")};
    const int method = in.choice("method");
    if (method >= k_first_empirical)
        return answer_empirical(
            in, bend, static_cast<process::EmpiricalRule>(method - k_first_empirical));
    const process::BlankRule how = rule(in);
    if (in.failed())
        return in.refusal();
    const auto figures = process::bend_figures(bend, how);
    if (!figures.ok())
        return figures.refusal();
    return AnswerBuilder()
        .add("allowance", process::allowance_working(bend, how))
        .add("deduction", process::deduction_working(bend, how))
        .add("setback", process::setback_working(bend, how))
        .figure("k", quantity::Number{figures->k, 4})
        .finish();
}

constexpr InputSpec k_blank_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "4 mm"},
    {"legs",
     InputKind::length_list,
     true,
     "outside legs, one more than bends",
     "",
     "50 mm; 100 mm; 50 mm"},
    {"bends",
     InputKind::bends,
     true,
     "angle turned through and inside radius of each",
     "",
     "angle=90 deg, radius=6 mm; angle=90 deg, radius=6 mm"},
    {"k", InputKind::ratio, false, "neutral line from the inside over thickness", "", "0.42"},
    {"method", InputKind::word, false, "din6935 when neither is given", k_methods},
    {"legs_to", InputKind::word, false, "over 90 degrees: apex with k, else tangent", k_leg_ends},
};
constexpr OutputSpec k_blank_outputs[] = {
    {"blank", "mm", "flat length, not rounded"},
    {"bend_lines", "mm", "middle of each bend on the flat, from the starting end"},
};
constexpr const base::FormulaCard* k_blank_cards[] = {&process::k_blank_length_card,
                                                      &process::k_bend_deduction_din_card,
                                                      &process::k_bend_deduction_card};

Result<Answer> answer_blank(Reader& in) {
    const Length thickness = in.length("thickness");
    process::BentPart part;
    part.outside_legs = in.lengths("legs");
    for (const Reader::Bend& bend : in.bends("bends"))
        part.bends.push_back({thickness, bend.radius, bend.angle});
    const process::BlankRule how = rule(in);
    if (in.failed())
        return in.refusal();
    process::InputCheck check; // the thickness belongs to the part here, not to one bend
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    const auto blank = process::blank_length(part, how);
    if (!blank.ok())
        return blank.refusal();
    AnswerBuilder answer;
    answer.add("blank", process::blank_working(part, how)).list("bend_lines", blank->bend_lines);
    for (const process::SharpBend& bend : part.bends)
        answer.show(process::deduction_working(bend, how));
    return answer.finish();
}

} // namespace

const Calculation k_bend_allowance{"bend.allowance",
                                   "Length of metal in a bend",
                                   k_bend_inputs,
                                   k_bend_outputs,
                                   k_bend_cards,
                                   answer_bend};
const Calculation k_bend_deduction{"bend.deduction",
                                   "What a bend takes off the outside legs",
                                   k_bend_inputs,
                                   k_bend_outputs,
                                   k_bend_cards,
                                   answer_bend};
const Calculation k_bend_setback{"bend.setback",
                                 "Outside setback of a bend",
                                 k_bend_inputs,
                                 k_bend_outputs,
                                 k_bend_cards,
                                 answer_bend};
const Calculation k_bend_blank{"bend.blank",
                               "Flat length of a bent part",
                               k_blank_inputs,
                               k_blank_outputs,
                               k_blank_cards,
                               answer_blank};

} // namespace treadle::calc
