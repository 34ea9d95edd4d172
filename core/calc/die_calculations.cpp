#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/die_clearance.h"
#include "process/input_check.h"
#include "process/punch_rules.h"

#include <algorithm>
#include <utility>

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_die_inputs[] = {
    {"size", InputKind::length, true, "of the punch; of the slug when that is wanted", "", "1 in"},
    k_thickness_input,
    {"material", InputKind::material, false, "grade; harder metal takes more", "", "A36"},
    {"shear_strength", InputKind::stress, false, "for the rule formula", "", "400 MPa"},
    {"rule",
     InputKind::word,
     false,
     "steps of the shop when not given",
     "steps|formula|groover|handbook"},
    {"temper", InputKind::word, false, "for the rules groover, handbook", "soft|medium|hard"},
    {"wanted", InputKind::word, false, "hole when not given", "hole|slug"},
};
constexpr OutputSpec k_die_outputs[] = {
    {"clearance_total", "mm", "die opening less punch"},
    {"clearance_per_side", "mm", "half of it"},
    {"die_size", "mm", "die opening"},
    {"punch_size", "mm", "punch"},
};
constexpr const base::FormulaCard* k_die_cards[] = {&process::k_die_clearance_card,
                                                    &process::k_clearance_formula_card,
                                                    &process::k_clearance_groover_card,
                                                    &process::k_clearance_handbook_card};

enum Rule { steps, formula, groover, handbook };

/// A working whose result is the clearance, both sides together or per side.
struct Clearance {
    Result<Working> working;
    double sides; ///< that the working's result counts
    std::string note;
};

Clearance clearance(Reader& in, Rule rule, Length thickness) {
    if (rule == groover || rule == handbook) {
        in.require("temper");
        in.refuse_if_given("material", "This rule goes by the temper.");
        in.refuse_if_given("shear_strength", "This rule goes by the temper.");
        const auto temper = static_cast<process::Temper>(std::max(in.choice("temper"), 0));
        return {rule == groover ? process::clearance_groover_working(thickness, temper)
                                : process::clearance_handbook_working(thickness, temper),
                1.0,
                ""};
    }
    in.refuse_if_given("temper", "Only the rules groover and handbook go by the temper.");
    if (rule == formula) {
        const StrengthUsed strength = in.shear_strength(thickness, "thickness");
        return {process::clearance_formula_working(thickness, strength.value), 1.0, strength.note};
    }
    in.refuse_if_given("shear_strength", "The steps do not go by the strength.");
    return {process::die_clearance_working(thickness, in.material()), 2.0, ""};
}

Result<Answer> answer_die(Reader& in) {
    const Length size = in.length("size");
    const Length thickness = in.length("thickness");
    process::InputCheck check;
    check.length(size, "size");
    if (!in.failed() && check.failed())
        return check.refusal();
    const Rule rule = static_cast<Rule>(std::max(in.choice("rule"), 0));
    const Clearance found = clearance(in, rule, thickness);
    const bool slug = in.choice("wanted") == 1;
    if (in.failed())
        return in.refusal();
    if (!found.working.ok())
        return found.working.refusal();
    const Length result = *std::get_if<Length>(&found.working->result.value);
    const Length total = result * (2.0 / found.sides);
    if (slug && !process::clearly_below(total, size))
        return base::Refusal{"size", "The slug is smaller than the clearance.", ""};
    const Length punch = slug ? size - total : size;
    Working shown = *found.working;
    shown.note = found.note.empty() ? shown.note : found.note + " " + shown.note;
    return AnswerBuilder()
        .figure("clearance_total", total)
        .figure("clearance_per_side", total / 2.0)
        .figure("die_size", punch + total)
        .figure("punch_size", punch)
        .show(std::move(shown))
        .finish();
}

constexpr InputSpec k_pair_inputs[] = {
    {"punch", InputKind::length, true, "size of the punch", "", "13/16 in"},
    {"die", InputKind::length, true, "opening of the die", "", "27/32 in"},
    k_thickness_input,
};
constexpr OutputSpec k_pair_outputs[] = {
    {"clearance_total", "mm", "die opening less punch"},
    {"clearance_per_side", "mm", "half of it"},
    {"share", "", "total over the thickness"},
};
constexpr const base::FormulaCard* k_pair_cards[] = {&process::k_clearance_pair_card};

Result<Answer> answer_pair(Reader& in) {
    const Length punch = in.length("punch");
    const Length die = in.length("die");
    const Length thickness = in.length("thickness");
    if (in.failed())
        return in.refusal();
    const auto clearance = process::clearance_of_pair(punch, die, thickness);
    if (!clearance.ok())
        return clearance.refusal();
    return AnswerBuilder()
        .add("clearance_total", process::clearance_pair_working(punch, die, thickness))
        .figure("clearance_per_side", clearance->per_side)
        .figure("share", quantity::Share{clearance->share})
        .finish();
}

} // namespace

const Calculation k_punch_die{
    "punch.die", "Die for a punch", k_die_inputs, k_die_outputs, k_die_cards, answer_die};
const Calculation k_punch_clearance{"punch.clearance",
                                    "Clearance of a punch and a die",
                                    k_pair_inputs,
                                    k_pair_outputs,
                                    k_pair_cards,
                                    answer_pair};

} // namespace treadle::calc
