#include "process/trial_bend.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <algorithm>
#include <string>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_deduction_symbols[] = {
    {"BD", "taken off the sum of the outside legs"},
    {"n", "trials"},
    {"a", "one outside leg"},
    {"b", "other outside leg"},
    {"L", "length of the strip"},
};
constexpr base::CardSymbol k_k_symbols[] = {
    {"K", "neutral line from the inside over thickness"},
    {"SB", "outside setback"},
    {"BD", "deduction, mean of the trials"},
    {"A", "angle turned through"},
    {"r", "inside radius"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_spread_symbols[] = {
    {"spread", "largest less smallest K"},
    {"n", "trials"},
};

constexpr double k_most = 0.50;
constexpr double k_wide_spread = 0.05; // 0.010 in of leg at 1/8 in

Length mean(const std::vector<Length>& values) {
    Length sum;
    for (const Length value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

double k_of(const SharpBend& bend, Length setback, Length deduction) {
    const Length allowance = 2.0 * setback - deduction;
    return (allowance / bend.angle.in_radians() - bend.radius) / bend.thickness;
}

base::Result<Length> checked_setback(const Trial& trial) {
    if (trial.deductions.empty())
        return base::Refusal{"deduction", "There is no trial.", ""};
    InputCheck check;
    check.length(trial.bend.radius, "radius");
    if (check.failed())
        return check.refusal();
    return outside_setback(trial.bend, trial.legs_to);
}

base::Result<double> checked_k(const Trial& trial) {
    const auto setback = checked_setback(trial);
    if (!setback.ok())
        return setback.refusal();
    const double k = k_of(trial.bend, *setback, mean(trial.deductions));
    // A hair over 0.5 is rounding of the lengths, not of the metal.
    if (!(k > 0.0 && k <= k_most + 1e-9))
        return base::Refusal{"radius",
                             "The trial gives a neutral line outside the inner half of the metal: "
                             "re-measure the radius, then the legs.",
                             "K over 0 and up to 0.50"};
    return std::min(k, k_most);
}

quantity::Number trials(const Trial& trial) {
    return {static_cast<double>(trial.deductions.size()), 0};
}

} // namespace

const base::FormulaCard k_trial_deduction_card{"trial-deduction",
                                               "Deduction measured on trial strips",
                                               "BD = a + b - L",
                                               k_deduction_symbols,
                                               "mean of the trials",
                                               "derived-geometry",
                                               Evidence::derived,
                                               ""};
const base::FormulaCard k_trial_k_card{"trial-k",
                                       "K from a trial strip",
                                       "K = ((2 SB - BD) / A - r) / t",
                                       k_k_symbols,
                                       "A in radians; K from 0.25 to 0.50 is sound; keep V, "
                                       "punch, metal and grain beside it",
                                       "derived-geometry",
                                       Evidence::derived,
                                       ""};
const base::FormulaCard k_trial_spread_card{"trial-spread",
                                            "How far the trials lie apart",
                                            "spread = largest K - smallest K",
                                            k_spread_symbols,
                                            "two strips or more",
                                            "derived-geometry",
                                            Evidence::derived,
                                            ""};

base::Result<std::vector<Length>> trial_deductions(const std::vector<TrialStrip>& strips) {
    std::vector<Length> out;
    for (const TrialStrip& strip : strips) {
        InputCheck check;
        check.length(strip.blank, "blank").length(strip.leg_a, "legs").length(strip.leg_b, "legs");
        if (check.failed())
            return check.refusal();
        if (!clearly_below(strip.leg_a, strip.blank) || !clearly_below(strip.leg_b, strip.blank))
            return base::Refusal{"legs", "A leg is as long as the whole strip.", ""};
        out.push_back(strip.leg_a + strip.leg_b - strip.blank);
    }
    return out;
}

base::Result<Working> trial_deduction_working(const Trial& trial) {
    const auto setback = checked_setback(trial);
    if (!setback.ok())
        return setback.refusal();
    return Working{
        &k_trial_deduction_card, {{"n", trials(trial)}}, {"BD", mean(trial.deductions)}, ""};
}

base::Result<Working> trial_k_working(const Trial& trial) {
    const auto k = checked_k(trial);
    if (!k.ok())
        return k.refusal();
    return Working{
        &k_trial_k_card,
        {{"SB", *outside_setback(trial.bend, trial.legs_to)},
         {"BD", mean(trial.deductions)},
         {"A", trial.bend.angle},
         {"r", trial.bend.radius},
         {"t", trial.bend.thickness}},
        {"K", quantity::Number{*k, 4}},
        *k < k_least_usual_k ? "Warning: under 0.25, which is unusual. Re-measure the radius." : ""};
}

base::Result<Working> trial_spread_working(const Trial& trial) {
    const auto k = checked_k(trial);
    if (!k.ok())
        return k.refusal();
    const Length setback = *outside_setback(trial.bend, trial.legs_to);
    const auto [low, high] = std::minmax_element(trial.deductions.begin(), trial.deductions.end());
    const double spread = k_of(trial.bend, setback, *low) - k_of(trial.bend, setback, *high);
    const char* note = "";
    if (trial.deductions.size() < 2)
        note = "One strip says nothing of the spread: bend a second one.";
    else if (spread > k_wide_spread)
        note = "Warning: the strips lie far apart. Measure again before you keep this K.";
    return Working{&k_trial_spread_card,
                   {{"n", trials(trial)}},
                   {"spread", quantity::Number{spread, 4}},
                   note};
}

} // namespace treadle::process
