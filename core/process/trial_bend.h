// K from trial strips: cut to a known length, bent once, both outside legs measured.
//
// Symbols   BD  deduction   a, b  outside legs   L  length of the strip   SB  outside setback
//           A  angle turned   r  inside radius   t  thickness   K  neutral line over thickness
// Formula   BD = a + b - L, mean of the trials               card k_trial_deduction_card
//           K = ((2 SB - BD) / A - r) / t, A in radians      card k_trial_k_card
//           spread = largest less smallest K                 card k_trial_spread_card
// Valid     one angle, radius and thickness; K in 0.25-0.50, refused outside 0-0.50
// Source    sources.json: derived-geometry
// Rounding  none: the deduction is the more robust thing to keep

#pragma once

#include "base/result.h"
#include "process/blank.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <vector>

namespace treadle::process {

/// A K under this is unusual: the radius was most likely read wrong.
inline constexpr double k_least_usual_k = 0.25;

struct TrialStrip {
    Length blank;
    Length leg_a;
    Length leg_b;
};
/// Refuses "legs" of which one is as long as its strip.
[[nodiscard]] base::Result<std::vector<Length>>
trial_deductions(const std::vector<TrialStrip>& strips);

struct Trial {
    SharpBend bend;
    std::vector<Length> deductions; ///< one for each strip
    LegsTo legs_to = LegsTo::tangent_planes;
};
/// The mean.
[[nodiscard]] base::Result<Working> trial_deduction_working(const Trial& trial);
/// From the mean. Refuses "radius" when K cannot be: the radius is the likely slip.
[[nodiscard]] base::Result<Working> trial_k_working(const Trial& trial);
[[nodiscard]] base::Result<Working> trial_spread_working(const Trial& trial);

} // namespace treadle::process
