#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"
#include "material/cards.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_inputs[] = {
    {"material", InputKind::material, true, "grade", "", "A36"},
    {"thickness", InputKind::length, true, "of the metal", "", "1/2 in"},
};
constexpr OutputSpec k_outputs[] = {
    {"shear_strength", "MPa", "of the strongest metal that the grade allows"},
    {"tensile_upper", "MPa", "of the strongest metal that the grade allows"},
    {"tensile_minimum", "MPa", "as the grade promises it"},
    {"yield_minimum", "MPa", "as the grade promises it"},
    {"shear_ratio", "", "shear over tensile strength"},
    {"elongation", "", "least, on 2 in where the standard says so"},
};
constexpr const base::FormulaCard* k_cards[] = {&material::k_shear_strength_card};

/// "ASTM A36: published. Mill certificates …"
std::string note_of(const Grade& grade) {
    std::string note = grade.standard + ": " + base::evidence_words(grade.evidence) + ".";
    return grade.note.empty() ? note : note + " " + grade.note;
}

Result<Answer> answer_strength(Reader& in) {
    const Grade* grade = in.material();
    const Length thickness = in.length("thickness");
    if (grade != nullptr && grade->refusal.cutting && grade->bands.empty())
        in.refuse({"material", grade->refusal.reason, ""});
    if (in.failed() || grade == nullptr)
        return in.refusal();
    const auto band = material::band_for(*grade, thickness);
    if (!band.ok())
        return band.refusal();
    const auto upper = material::upper_tensile(*grade, thickness);
    if (!upper.ok())
        return upper.refusal();
    AnswerBuilder answer;
    answer
        .add("shear_strength",
             Working{&material::k_shear_strength_card,
                     {{"r", quantity::Number{grade->shear_ratio, 2}}, {"Rm", upper->value}},
                     {"S", material::shear_strength(*grade, upper->value)},
                     note_of(*grade)})
        .figure("tensile_upper", upper->value)
        .figure("tensile_minimum", band->tensile_minimum)
        .figure("yield_minimum", band->yield_minimum)
        .figure("shear_ratio", quantity::Number{grade->shear_ratio, 2});
    if (grade->elongation_pct > 0.0)
        answer.figure("elongation", quantity::Share{grade->elongation_pct / 100.0});
    return answer.finish();
}

} // namespace

const Calculation k_material_strength{"material.strength",
                                      "Strengths of a grade, and which one counts",
                                      k_inputs,
                                      k_outputs,
                                      k_cards,
                                      answer_strength};

} // namespace treadle::calc
