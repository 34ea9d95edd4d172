#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/shop_rules.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_guard_inputs[] = {
    {"distance", InputKind::length, true, "of the opening from the hazard", "", "3 in"},
};
constexpr OutputSpec k_guard_outputs[] = {{"opening", "mm", "greatest opening"}};
constexpr const base::FormulaCard* k_guard_cards[] = {&process::k_guard_opening_card};

Result<Answer> answer_guard(Reader& in) {
    const Length distance = in.length("distance");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("opening", process::guard_opening_working(distance)).finish();
}

constexpr InputSpec k_class_input{"class", InputKind::word, false, "coarse when not given", "m|c"};

constexpr InputSpec k_length_inputs[] = {
    {"size", InputKind::length, true, "nominal", "", "100 mm"},
    {"class", InputKind::word, false, "coarse when not given", "m|c|f|v"},
};
constexpr OutputSpec k_length_outputs[] = {{"tolerance", "mm", "to both sides"}};
constexpr const base::FormulaCard* k_length_cards[] = {&process::k_tolerance_length_card};

process::ToleranceClass read_class(Reader& in) {
    switch (in.choice("class")) {
    case 0:
        return process::ToleranceClass::medium;
    case 2:
        return process::ToleranceClass::fine;
    case 3:
        return process::ToleranceClass::very_coarse;
    default:
        return process::ToleranceClass::coarse;
    }
}

Result<Answer> answer_length(Reader& in) {
    const Length size = in.length("size");
    const auto grade = read_class(in);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("tolerance", process::tolerance_length_working(size, grade))
        .finish();
}

constexpr InputSpec k_angle_inputs[] = {
    {"leg", InputKind::length, true, "shorter leg of the angle", "", "100 mm"},
    k_class_input,
};
constexpr OutputSpec k_angle_outputs[] = {{"tolerance", "deg", "to both sides"}};
constexpr const base::FormulaCard* k_angle_cards[] = {&process::k_tolerance_angle_card};

Result<Answer> answer_angle(Reader& in) {
    const Length leg = in.length("leg");
    const auto grade = read_class(in);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("tolerance", process::tolerance_angle_working(leg, grade)).finish();
}

} // namespace

const Calculation k_guard_opening{"guard.opening",
                                  "Greatest opening in a guard",
                                  k_guard_inputs,
                                  k_guard_outputs,
                                  k_guard_cards,
                                  answer_guard};
const Calculation k_tolerance_length{"tolerance.length",
                                     "General tolerance of a length",
                                     k_length_inputs,
                                     k_length_outputs,
                                     k_length_cards,
                                     answer_length};
const Calculation k_tolerance_angle{"tolerance.angle",
                                    "General tolerance of an angle",
                                    k_angle_inputs,
                                    k_angle_outputs,
                                    k_angle_cards,
                                    answer_angle};

} // namespace treadle::calc
