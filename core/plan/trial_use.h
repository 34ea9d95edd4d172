// Trial strips in the plan: which record a bend goes by, and what a record does to the blanks.
//
// A record holds for a bend of its grade, thickness and V, and of its grain when it names one. Its
// K goes before the house's and the table's. One that gives no sound K is left aside, and said.

#pragma once

#include "equipment/shop.h"
#include "job/job.h"
#include "plan/plan.h"
#include "process/trial_bend.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::plan {

/// Sizes of metal and tools count as the same when they print alike to a tenth of a millimetre.
inline constexpr Length k_same_size = millimetres(0.05);

/// What has to match for a record to hold.
struct TrialBendCase {
    std::string_view grade;    ///< id
    std::string_view as_named; ///< what the part calls it
    Length thickness;
    Length opening;
    material::Grain grain = material::Grain::unknown;
};
[[nodiscard]] bool trial_matches(const equipment::TrialRecord& record, const TrialBendCase& bend);

/// The record as the formulas take it. Refuses what trial_deductions() refuses.
[[nodiscard]] base::Result<process::Trial> trial_of(const equipment::TrialRecord& record);

/// K and deduction of a record with their spread, and how far it can be used.
struct TrialReading {
    double k = 0.0;
    Length deduction;                       ///< mean of the strips
    std::optional<Length> deduction_spread; ///< largest less smallest; none of a single strip
    std::vector<Working> workings;
};
/// Refuses, at "radius", when the K is not sound: 0.25 to 0.50.
[[nodiscard]] base::Result<TrialReading> read_trial(const equipment::TrialRecord& record);

/// The rule for a bend's blank, where it comes from, and the first matching record left aside.
struct BlankChoice {
    process::BlankRule rule;
    BlankSource source = BlankSource::din6935;
    int trial = k_none;
    int left_aside = k_none;
};
/// What every bend goes by for which there are no strips.
[[nodiscard]] BlankChoice house_choice(const equipment::HouseRules& rules);
[[nodiscard]] BlankChoice blank_choice(const equipment::Shop& shop, const TrialBendCase& bend);

/// One part that goes by a record: its blank with the record, and as it was without it.
struct TrialEffect {
    int part = 0; ///< of the plan
    Length with_record;
    Length without_record;
    BlankSource otherwise = BlankSource::din6935; ///< what its first bend would go by instead
};
/// Every part of the plan that goes by the record.
[[nodiscard]] std::vector<TrialEffect> trial_effects(const Plan& plan,
                                                     int record,
                                                     const job::Job& job,
                                                     const equipment::Shop& shop,
                                                     const job::Catalog& catalog);

/// "A36, 1/4 in thick, V 2 in, 90°, 3 strips: K 0.421, deduction 0.442 in, spread 0.010 in", or
/// what is wrong with it.
[[nodiscard]] std::string trial_words(const equipment::TrialRecord& record, PrintStyle style);
/// "HK1: blank 7 1/32 in by trial strips, 7 in by DIN 6935"
[[nodiscard]] std::string
trial_effect_words(const TrialEffect& effect, const Plan& plan, PrintStyle style);
/// "trial strips", "the house's K", "DIN 6935"
[[nodiscard]] const char* blank_source_words(BlankSource source);
[[nodiscard]] const char* blank_source_key(BlankSource source);

} // namespace treadle::plan
