// Punching: what a hole asks of the machine and of its own punch.

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
[[nodiscard]] base::Result<Energy> punch_work(const PunchCut& cut);

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
[[nodiscard]] base::Result<Working> punch_work_working(const PunchCut& cut);
[[nodiscard]] base::Result<Working> smallest_hole_working(const SmallestHole& question);
[[nodiscard]] base::Result<Working> largest_hole_working(const LargestHole& question);

} // namespace treadle::process
