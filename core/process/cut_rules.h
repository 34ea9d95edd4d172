// Around shears: mitres, tube, knife gap, short trims, ratings for metal of another strength.
//
// Symbols   w  width   t  thickness   S  shear strength   D  outside of a tube   theta  from square
//           Fr, Fu  tensile strength of the rating and of the stock
// Formula   cut = w / cos theta                        card k_mitre_cut_card
//           F = S t (a + b - t) / cos theta            card k_mitred_angle_card
//           F = pi (D - t) t S                         card k_tube_shear_card
//           F = 55 Mp sqrt(D/t), Mp = Fy t^2 / 4       card k_tube_flattening_card
//           gap = t / 20 to t / 10                     card k_knife_gap_card
//           trim = max(1/2 in, t)                      card k_least_trim_card
//           t' = t min(1, Fr / Fu)                     cards k_rating_..._card
// Valid     theta below 60 degrees; tube only between blades that hold its shape
// Source    sources.json: derived-geometry, derived-mechanics, tu-delft-2338,
//           common-practice-shear, program-rule
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "process/shear.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

[[nodiscard]] base::Result<Working> mitre_cut_working(Length width, Angle from_square);
[[nodiscard]] base::Result<Working> mitred_angle_working(const AngleShear& cut, Angle from_square);

struct TubeShear {
    Length outside;
    Length wall;
    Stress strength; ///< shear strength for the cut, yield strength for the flattening
};
/// The wall alone.
[[nodiscard]] base::Result<Working> tube_shear_working(const TubeShear& cut);
/// What plain jaws need to crush the tube before they cut.
[[nodiscard]] base::Result<Working> tube_flattening_working(const TubeShear& cut);

enum class KnifeGap { tight, wide };
[[nodiscard]] base::Result<Working> knife_gap_working(Length thickness, KnifeGap end);
[[nodiscard]] base::Result<Working> least_trim_working(Length thickness);

/// A published pair of a flat shear, and stock of another strength.
struct ShearRating {
    Length thickness;
    Length width;
    Stress rated_strength; ///< tensile strength that the pair was published for
    Stress tensile_strength;
};
/// In proportion to the strength: the careful rule. Weaker metal gains nothing.
[[nodiscard]] base::Result<Working> rating_thickness_working(const ShearRating& pair);
/// Square root: what raked blades would allow, for comparison.
[[nodiscard]] base::Result<Working> rating_root_working(const ShearRating& pair);
/// Width at the published thickness, by the area of the cut.
[[nodiscard]] base::Result<Working> rating_width_working(const ShearRating& pair);

} // namespace treadle::process
