// Air bending in a V: force, opening, radius, least leg, least radius, punch travel.

#pragma once

#include "base/result.h"
#include "material/grade.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

struct AirBend {
    Length thickness;
    Length length; ///< along the bend line
    Length opening;
    Stress tensile_strength;
};
/// k = max(1.33, 1 + 4 t / V): the careful choice of two printed factors.
[[nodiscard]] base::Result<Force> bend_force(const AirBend& bend);
/// A factor of the asker's own, for textbook comparison.
[[nodiscard]] base::Result<Force> bend_force_with_factor(const AirBend& bend, double factor);
[[nodiscard]] base::Result<Working> bend_force_working(const AirBend& bend);

/// Usual opening for the thickness: 8 t, 10 t over 3/8 in, 12 t over 1/2 in; one step larger for
/// tensile strengths of 70 ksi and more.
[[nodiscard]] base::Result<Length> usual_opening(Length thickness, Stress upper_tensile);
[[nodiscard]] base::Result<Working> usual_opening_working(Length thickness, Stress upper_tensile);
inline constexpr double k_least_opening_ratio = 6.0;  ///< V / t below this: refused
inline constexpr double k_most_opening_ratio = 14.0; ///< above: imprecise, warned

struct AirBendRadius {
    Length thickness;
    Length opening;
    double share = 0.16; ///< of the opening, by metal
    Length nose;         ///< punch nose radius; zero when unknown
};
/// Larger of share x V and the nose.
[[nodiscard]] base::Result<Length> air_bend_radius(const AirBendRadius& bend);
[[nodiscard]] base::Result<Working> air_bend_radius_working(const AirBendRadius& bend);

struct LeastLeg {
    Length opening;
    Length thickness;
    Length radius;
    Angle angle; ///< turned through
};
/// Outside leg that still bridges the die at the end of the stroke; 0.75 V at 90 degrees.
[[nodiscard]] base::Result<Length> least_leg(const LeastLeg& bend);
[[nodiscard]] base::Result<Working> least_leg_working(const LeastLeg& bend);

/// Smallest inside radius; unknown grain counts as along. Refuses grades without a table row.
[[nodiscard]] base::Result<Length> least_radius(Length thickness, const Grade& grade, material::Grain grain);
[[nodiscard]] base::Result<Working> least_radius_working(Length thickness, const Grade& grade,
                                                         material::Grain grain);

/// Punch travel from first touch, sharp shoulders; add t / 2 for a stroke check.
[[nodiscard]] base::Result<Length> punch_travel(Length opening, Length radius, Length thickness,
                                                Angle angle);

} // namespace treadle::process
