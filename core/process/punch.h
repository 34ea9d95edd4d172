// Punching: what a hole asks of the machine and of its own punch.
//
// Symbols   L  cut length   t  thickness   S  shear strength   F  force   d  hole size
//           sc  mean compressive stress allowed in the punch   p  penetration, share of t
// Formula   F = L t S                card k_punch_force_card
//           Fs = 0.20 F              card k_punch_stripping_card
//           E = F p t                card k_punch_work_card
//           d >= max(4 S t/sc, t)    card k_punch_smallest_card
//           d = F/(pi t S)           card k_punch_largest_card
// Valid     sharp tools, usual clearance, cold metal, the whole edge cut at once. A blunt edge adds
//           15 to 30 %. No credit for a ground punch: nobody has said that this one is
// Source    sources.json: kalpakjian-schmid, pytel-singer, common-practice-shear
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "geometry/hole.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

/// Cut perimeter, metal and strength of one stroke through the full thickness.
struct PunchCut {
    geometry::HoleOutline hole;
    Length thickness;
    Stress shear_strength;
};

[[nodiscard]] base::Result<Force> punch_force(const PunchCut& cut);
/// 20 % of the cutting force: sizes a stripper, is never subtracted from anything.
[[nodiscard]] base::Result<Force> stripping_force(const PunchCut& cut);

/// Deepest penetration that the die handbooks print for a metal (soft aluminium, 60 % of t): with
/// the metal not named, the most work. Smaller would understate the work of soft metal.
inline constexpr double k_deepest_penetration = 0.60;
[[nodiscard]] base::Result<Energy> punch_work(const PunchCut& cut,
                                              double penetration = k_deepest_penetration);

struct SmallestHole {
    Length thickness;
    Stress shear_strength;
    Stress punch_strength; ///< allowed mean compressive stress in the punch
};
/// Larger of 4 S t / sc and t itself: the careful rule.
[[nodiscard]] base::Result<Length> smallest_hole(const SmallestHole& question);

struct LargestHole {
    Length thickness;
    Stress shear_strength;
    Force capacity;
};
[[nodiscard]] base::Result<Length> largest_round_hole(const LargestHole& question);

/// Cautious allowed stress for an unguided shock-resisting punch (common practice, no source).
inline constexpr Stress k_punch_stress_limit = ksi(180.0);

// Workings, built on request from the same inputs.
[[nodiscard]] base::Result<Working> punch_force_working(const PunchCut& cut);
[[nodiscard]] base::Result<Working> stripping_working(const PunchCut& cut);
[[nodiscard]] base::Result<Working> punch_work_working(const PunchCut& cut,
                                                       double penetration = k_deepest_penetration);
[[nodiscard]] base::Result<Working> smallest_hole_working(const SmallestHole& question);
[[nodiscard]] base::Result<Working> largest_hole_working(const LargestHole& question);

} // namespace treadle::process
