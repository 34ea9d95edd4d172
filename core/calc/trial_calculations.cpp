#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/input_check.h"
#include "process/trial_bend.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_inputs[] = {
    k_thickness_input,
    k_bend_radius_input,
    k_bend_angle_input,
    {"blank",
     InputKind::length,
     false,
     "length of the strip; a list for repeated trials, or one for all",
     "",
     "6 in"},
    {"legs",
     InputKind::length_list,
     false,
     "both outside legs; for repeated trials a pair after the other, or a list of pairs",
     "",
     "3.221 in; 3.221 in"},
    {"deduction",
     InputKind::length,
     false,
     "in place of blank and legs; a list for repeated trials",
     "",
     "0.442 in"},
    {"legs_to",
     InputKind::word,
     false,
     "over 90 degrees: tangent with legs, apex with deduction",
     "tangent|apex"},
};
constexpr OutputSpec k_outputs[] = {
    {"k", "", "neutral line from the inside over thickness"},
    {"deduction", "mm", "taken off the outside legs, mean of the trials"},
    {"spread", "", "largest less smallest k"},
};
constexpr const base::FormulaCard* k_cards[] = {
    &process::k_trial_k_card, &process::k_trial_deduction_card, &process::k_trial_spread_card};

std::vector<Length> measured(Reader& in) {
    in.require("blank");
    in.require("legs");
    const std::vector<Length> blanks = in.one_or_more("blank");
    const std::vector<Length> legs = in.one_or_more("legs");
    if (in.failed())
        return {};
    const std::size_t trials = legs.size() / 2;
    if (trials == 0 || legs.size() % 2 != 0) {
        in.refuse({"legs", "Each trial has two legs.", ""});
        return {};
    }
    if (blanks.size() != 1 && blanks.size() != trials) {
        in.refuse({"blank", "There is one length for all trials, or one for each.", ""});
        return {};
    }
    std::vector<process::TrialStrip> strips;
    for (std::size_t i = 0; i < trials; ++i)
        strips.push_back({blanks[blanks.size() == 1 ? 0 : i], legs[2 * i], legs[2 * i + 1]});
    const auto deductions = process::trial_deductions(strips);
    if (!deductions.ok()) {
        in.refuse(deductions.refusal());
        return {};
    }
    return *deductions;
}

Result<Answer> answer(Reader& in) {
    process::Trial trial;
    trial.bend = {in.length("thickness"), in.length("radius"), in.angle("angle")};
    const bool given = in.has("deduction");
    if (given) {
        in.refuse_if_given("blank", "Give the deduction, or blank and legs.");
        in.refuse_if_given("legs", "Give the deduction, or blank and legs.");
        trial.deductions = in.one_or_more("deduction");
    } else {
        trial.deductions = measured(in);
    }
    const int to = in.has("legs_to") ? in.choice("legs_to") : given ? 1 : 0;
    trial.legs_to = to == 1 ? process::LegsTo::apex : process::LegsTo::tangent_planes;
    if (in.failed())
        return in.refusal();
    process::InputCheck check;
    if (given) // one told is above zero; one measured may turn round in a very acute bend
        for (const Length deduction : trial.deductions)
            check.length(deduction, "deduction");
    if (check.failed())
        return check.refusal();
    return AnswerBuilder()
        .add("k", process::trial_k_working(trial))
        .add("deduction", process::trial_deduction_working(trial))
        .add("spread", process::trial_spread_working(trial))
        .finish();
}

} // namespace

const Calculation k_bend_k_from_trial{
    "bend.k_from_trial", "K from trial strips", k_inputs, k_outputs, k_cards, answer};

} // namespace treadle::calc
