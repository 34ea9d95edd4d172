// Air bending in a V: force, opening, radius, least leg, least radius, punch travel.
//
// Symbols   t  thickness   L  length along the bend   V  opening of the die   Rm  tensile strength
//           A  angle turned through   r  inside radius   f  half of A   y  punch travel
// Formula   F = k Rm L t^2 / V, k = max(1.33, 1 + 4 t/V)         card k_bend_force_card
//           V = 8 t, 10 t, 12 t                                  card k_usual_opening_card
//           r = max(share V, nose)                               card k_air_bend_radius_card
//           leg = 0.75 V (cos 45 / cos f), not under the setback card k_least_leg_card
//           r >= table by metal                                  cards k_least_radius_..._card
//           y = V/2 tan f - (r + t)(1/cos f - 1)                 card k_punch_travel_card
// Valid     V from 6 t; angles turned up to 150 degrees; air bending only: bottoming asks for 3-5
//           times the force, coining for 5-10 times
// Source    sources.json: lange-oehler, groover, astm-a6-x4, din-6935,
//           aluminum-association-bend, common-practice-bending
// Rounding  none here; the caller rounds, against us

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
/// A factor of the asker's own, for textbook comparison: no lower limit but V over t.
[[nodiscard]] base::Result<Force> bend_force_with_factor(const AirBend& bend, double factor);
[[nodiscard]] base::Result<Working> bend_force_working(const AirBend& bend);
[[nodiscard]] base::Result<Working> bend_force_with_factor_working(const AirBend& bend,
                                                                   double factor);

/// Usual opening for the thickness: 8 t, 10 t over 3/8 in, 12 t over 1/2 in; one step larger, but
/// not over 12 t, for tensile strengths of 70 ksi and more.
[[nodiscard]] base::Result<Length> usual_opening(Length thickness, Stress upper_tensile);
[[nodiscard]] base::Result<Working> usual_opening_working(Length thickness, Stress upper_tensile);
inline constexpr double k_least_opening_ratio = 6.0; ///< V / t below this: refused
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

inline constexpr Angle k_most_air_bend =
    degrees(150.0); ///< turned through; beyond: no V closes so far

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
/// Angles turned over 120 degrees take the next thicker column of the DIN table.
[[nodiscard]] base::Result<Length> least_radius(Length thickness,
                                                const Grade& grade,
                                                material::Grain grain,
                                                Angle angle = degrees(90.0));
[[nodiscard]] base::Result<Working> least_radius_working(Length thickness,
                                                         const Grade& grade,
                                                         material::Grain grain,
                                                         Angle angle = degrees(90.0));

/// Punch travel from first touch, sharp shoulders; add t / 2 for a stroke check.
[[nodiscard]] base::Result<Length>
punch_travel(Length opening, Length radius, Length thickness, Angle angle);

} // namespace treadle::process
