#include "plan/trial_use.h"

#include <algorithm>
#include <utility>

namespace treadle::plan {

namespace {

bool same_size(Length a, Length b) {
    const Length apart = a > b ? a - b : b - a;
    return apart <= k_same_size;
}

} // namespace

bool trial_matches(const equipment::TrialRecord& record, const TrialBendCase& bend) {
    const bool grain = record.grain == material::Grain::unknown || record.grain == bend.grain;
    const bool grade = record.grade == bend.grade || record.grade == bend.as_named;
    return grain && grade && same_size(record.thickness, bend.thickness) &&
           same_size(record.opening, bend.opening);
}

base::Result<process::Trial> trial_of(const equipment::TrialRecord& record) {
    std::vector<process::TrialStrip> strips;
    for (const equipment::TrialStrip& strip : record.strips)
        strips.push_back({strip.blank, strip.leg_a, strip.leg_b});
    auto deductions = process::trial_deductions(strips);
    if (!deductions)
        return deductions.refusal();
    process::Trial trial;
    trial.bend = {record.thickness, record.radius, record.angle};
    trial.deductions = std::move(deductions).value();
    return trial;
}

base::Result<TrialReading> read_trial(const equipment::TrialRecord& record) {
    const auto trial = trial_of(record);
    if (!trial)
        return trial.refusal();
    const auto k = process::trial_k_working(*trial);
    if (!k)
        return k.refusal();
    TrialReading reading;
    reading.k = std::get<quantity::Number>(k->result.value).value;
    if (reading.k < process::k_least_usual_k)
        return base::Refusal{"radius",
                             "The trial gives a K under 0.25: re-measure the radius, then the "
                             "legs.",
                             "K from 0.25 to 0.50"};
    const auto deduction = process::trial_deduction_working(*trial);
    if (!deduction)
        return deduction.refusal();
    reading.deduction = std::get<Length>(deduction->result.value);
    reading.workings = {*deduction, *k};
    if (trial->deductions.size() < 2)
        return reading;
    const auto [low, high] =
        std::minmax_element(trial->deductions.begin(), trial->deductions.end());
    reading.deduction_spread = *high - *low;
    if (const auto spread = process::trial_spread_working(*trial))
        reading.workings.push_back(*spread);
    return reading;
}

BlankChoice house_choice(const equipment::HouseRules& rules) {
    BlankChoice choice;
    if (rules.blank_k > 0.0) {
        choice.rule = {process::BlankMethod::k_factor, rules.blank_k};
        choice.source = BlankSource::house_k;
    }
    return choice;
}

BlankChoice blank_choice(const equipment::Shop& shop, const TrialBendCase& bend) {
    BlankChoice choice = house_choice(shop.rules);
    for (std::size_t i = 0; i < shop.trials.size(); ++i) {
        const equipment::TrialRecord& record = shop.trials[i];
        if (!trial_matches(record, bend))
            continue;
        const auto reading = read_trial(record);
        if (!reading) {
            if (choice.left_aside == k_none)
                choice.left_aside = static_cast<int>(i);
            continue;
        }
        // The strips with the part's own grain go before those that do not say theirs.
        const bool nearer = choice.trial == k_none || record.grain != material::Grain::unknown;
        if (!nearer)
            continue;
        choice.rule = {process::BlankMethod::k_factor, reading->k};
        choice.source = BlankSource::trial;
        choice.trial = static_cast<int>(i);
        if (record.grain != material::Grain::unknown)
            break;
    }
    return choice;
}

std::vector<TrialEffect> trial_effects(const Plan& plan,
                                       int record,
                                       const job::Job& job,
                                       const equipment::Shop& shop,
                                       const job::Catalog& catalog) {
    std::vector<TrialEffect> effects;
    if (record < 0 || static_cast<std::size_t>(record) >= shop.trials.size())
        return effects;
    std::optional<equipment::Shop> without; // a shop is large: copied only when a part goes by it
    for (std::size_t i = 0; i < plan.parts.size(); ++i) {
        const PartPlan& part = *plan.parts[i];
        const auto uses = [&](const OperationPlan& bend) { return bend.trial == record; };
        if (part.problem || std::none_of(part.operations.begin(), part.operations.end(), uses))
            continue;
        if (!without) {
            without = shop;
            without->trials.erase(without->trials.begin() + record);
        }
        const PartPlan other = plan_part(part.part, job, *without, catalog);
        BlankSource otherwise = BlankSource::din6935;
        for (std::size_t o = part.operations.size(); o-- > 0;)
            if (uses(part.operations[o]))
                otherwise = other.operations[o].blank_source;
        effects.push_back({static_cast<int>(i), part.blank_length, other.blank_length, otherwise});
    }
    return effects;
}

std::string trial_words(const equipment::TrialRecord& record, PrintStyle style) {
    const PrintStyle fine{style.system, 64, style.both};
    const std::size_t strips = record.strips.size();
    std::string words = record.grade + ", " + quantity::print(record.thickness, fine) +
                        " thick, V " + quantity::print(record.opening, fine) + ", " +
                        quantity::print(record.angle, style) + ", " + std::to_string(strips) +
                        (strips == 1 ? " strip: " : " strips: ");
    const auto reading = read_trial(record);
    if (!reading)
        return words + "left aside. " + reading.refusal().reason;
    words += "K " + quantity::print_working(quantity::Number{reading->k, 3}, style) +
             ", deduction " + quantity::print_working(reading->deduction, style);
    return words + (reading->deduction_spread
                        ? ", spread " + quantity::print_working(*reading->deduction_spread, style)
                        : ", spread not known: bend a second strip");
}

std::string trial_effect_words(const TrialEffect& effect, const Plan& plan, PrintStyle style) {
    const PrintStyle fine{style.system, 64, style.both};
    const auto blank = [&](Length length) {
        return length > Length{} ? quantity::print(length, fine, Rounding::up)
                                 : std::string("no blank");
    };
    return plan.parts[static_cast<std::size_t>(effect.part)]->part->mark + ": blank " +
           blank(effect.with_record) + " by " + blank_source_words(BlankSource::trial) + ", " +
           blank(effect.without_record) + " by " + blank_source_words(effect.otherwise);
}

const char* blank_source_words(BlankSource source) {
    switch (source) {
    case BlankSource::din6935:
        return "DIN 6935";
    case BlankSource::house_k:
        return "the house's K";
    case BlankSource::trial:
        return "trial strips";
    }
    return "";
}

const char* blank_source_key(BlankSource source) {
    switch (source) {
    case BlankSource::din6935:
        return "din6935";
    case BlankSource::house_k:
        return "house_k";
    case BlankSource::trial:
        return "trial";
    }
    return "";
}

} // namespace treadle::plan
