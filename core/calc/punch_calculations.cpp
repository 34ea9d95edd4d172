#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/punch.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_force_inputs[] = {
    k_hole_shape_input,
    k_hole_size_input,
    k_hole_size2_input,
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/2 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"},
    {"penetration",
     InputKind::ratio,
     false,
     "share of the thickness to fracture, for the work",
     "",
     "0.38"},
};
constexpr OutputSpec k_force_outputs[] = {
    {"force", "kN", "force of the stroke"},
    {"stripping", "kN", "force to strip the stock"},
    {"work", "J", "work of the stroke"},
};
constexpr const base::FormulaCard* k_force_cards[] = {
    &process::k_punch_force_card, &process::k_punch_stripping_card, &process::k_punch_work_card};

Result<Answer> answer_force(Reader& in) {
    process::PunchCut cut;
    cut.hole = read_hole(in);
    cut.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(cut.thickness, "thickness");
    cut.shear_strength = strength.value;
    const double penetration =
        in.has("penetration") ? in.ratio("penetration") : process::k_deepest_penetration;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("force", process::punch_force_working(cut), strength.note)
        .add("stripping", process::stripping_working(cut))
        .add("work", process::punch_work_working(cut, penetration))
        .finish();
}

constexpr InputSpec k_smallest_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/2 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"},
    {"punch_strength",
     InputKind::stress,
     false,
     "mean compressive stress allowed in the punch; 180 ksi when not given",
     "",
     "180 ksi"},
};
constexpr OutputSpec k_size_outputs[] = {{"size", "mm", "diameter of a round hole"}};
constexpr const base::FormulaCard* k_smallest_cards[] = {&process::k_punch_smallest_card};
constexpr const base::FormulaCard* k_largest_cards[] = {&process::k_punch_largest_card};

Result<Answer> answer_smallest(Reader& in) {
    process::SmallestHole question;
    question.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(question.thickness, "thickness");
    question.shear_strength = strength.value;
    const bool given = in.has("punch_strength");
    question.punch_strength = given ? in.stress("punch_strength") : process::k_punch_stress_limit;
    if (in.failed())
        return in.refusal();
    const char* limit = given ? "" : " Punch stress limit 180 ksi: common practice, no source.";
    return AnswerBuilder()
        .add("size", process::smallest_hole_working(question), strength.note + limit)
        .finish();
}

constexpr InputSpec k_largest_inputs[] = {
    {"thickness", InputKind::length, true, "thickness of the metal", "", "1/2 in"},
    {"material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"},
    {"shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"},
    {"capacity", InputKind::force, true, "force on offer", "", "50 ton"},
};

Result<Answer> answer_largest(Reader& in) {
    process::LargestHole question;
    question.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(question.thickness, "thickness");
    question.shear_strength = strength.value;
    question.capacity = in.force("capacity");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("size", process::largest_hole_working(question), strength.note)
        .finish();
}

} // namespace

const Calculation k_punch_force{"punch.force",
                                "Force, stripping force and work to punch a hole",
                                k_force_inputs,
                                k_force_outputs,
                                k_force_cards,
                                answer_force};
const Calculation k_punch_smallest{"punch.smallest",
                                   "Smallest round hole that its punch stands",
                                   k_smallest_inputs,
                                   k_size_outputs,
                                   k_smallest_cards,
                                   answer_smallest};
const Calculation k_punch_largest{"punch.largest",
                                  "Largest round hole for a force",
                                  k_largest_inputs,
                                  k_size_outputs,
                                  k_largest_cards,
                                  answer_largest};

} // namespace treadle::calc
