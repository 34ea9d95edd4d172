#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"
#include "process/input_check.h"
#include "section/cards.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_inputs[] = {
    {"section", InputKind::section, true, "designation, or shape and sizes", "", "L3X3X1/4"},
    {"length", InputKind::length, false, "for the mass", "", "20 ft"},
    {"material", InputKind::material, false, "grade, for its density", "", "A36"},
};
constexpr OutputSpec k_outputs[] = {
    {"area", "mm2", "area of the section"},
    {"mass_per_length", "kg/m", "with a material"},
    {"mass", "kg", "with a material and a length"},
};

Result<Answer> answer_weight(Reader& in) {
    const Section section = in.section("section");
    const Grade* grade = in.material();
    const Length length = in.length("length");
    if (in.has("length") && !in.has("material"))
        in.require("material");
    if (in.failed())
        return in.refusal();
    if (in.has("length")) {
        process::InputCheck check;
        check.length(length, "length");
        if (check.failed())
            return check.refusal();
    }
    AnswerBuilder answer;
    const Area area = section::area(section);
    answer.figure("area", area);
    if (grade == nullptr)
        return answer.finish();
    const MassPerLength mass = section::mass_per_length(section, grade->density);
    answer.add(
        "mass_per_length",
        Working{
            &section::mass_card(),
            {{"A", area},
             {"rho", quantity::Number{quantity::to_kilograms_per_cubic_metre(grade->density), 0}}},
            {"m", mass},
            ""});
    if (in.has("length"))
        answer.figure("mass", mass * length);
    return answer.finish();
}

/// The section room hands its cards out by function.
std::span<const base::FormulaCard* const> weight_cards() { return section::cards(); }

} // namespace

const Calculation k_section_weight{"section.weight",
                                   "Area and theoretical mass of a section",
                                   k_inputs,
                                   k_outputs,
                                   weight_cards(),
                                   answer_weight};

} // namespace treadle::calc
