// Shearing flats, bars and angles.
//
// Symbols   w  width   t  thickness   S  shear strength   a  rake (flat) or leg (angle)   b  leg
//           p  penetration, share of t   A  area   F  force   theta  angle of the cut from square
// Formula   F = S (w' t - w'^2 tan a / 2), w' = min(w, p t / tan a); no rake: F = w t S
//                                          card k_flat_shear_card
//           F = A S                        card k_bar_shear_card
//           F = S t (a + b - t)            card k_angle_shear_card
//           A / cos theta                  card k_mitre_factor_card
// Valid     sharp blades, cold metal; rake over 0 and below 30 degrees; theta below 60 degrees
// Source    sources.json: asm-handbook-shear (raked form), derived-mechanics, derived-geometry
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <optional>

namespace treadle::process {

/// Flat or plate. Without a stated rake the blades count as parallel: the careful choice.
struct FlatShear {
    Length width;
    Length thickness;
    Stress shear_strength;
    std::optional<Angle> rake;
    double penetration = 1.0; ///< share of thickness to fracture, used only with a rake; 0 < p <= 1
};
[[nodiscard]] base::Result<Force> flat_shear_force(const FlatShear& cut);
[[nodiscard]] base::Result<Working> flat_shear_working(const FlatShear& cut);

enum class BarShape { round, square };
struct BarShear {
    BarShape shape = BarShape::round;
    Length size;
    Stress shear_strength;
};
[[nodiscard]] base::Result<Force> bar_shear_force(const BarShear& cut);
[[nodiscard]] base::Result<Working> bar_shear_working(const BarShear& cut);

/// Both legs at once.
struct AngleShear {
    Length leg_a;
    Length leg_b;
    Length thickness;
    Stress shear_strength;
};
/// Sharp-cornered area t (a + b - t) times shear strength, as the published checks print it.
[[nodiscard]] base::Result<Force> angle_shear_force(const AngleShear& cut);
[[nodiscard]] base::Result<Working> angle_shear_working(const AngleShear& cut);
/// Added to an angle's force in verdicts, for the rolled fillet (derived: 1-2 %).
inline constexpr double k_rolled_fillet_factor = 1.02;

/// A cut at an angle from square lengthens the cut plane: area over cos(angle). Below 60 degrees.
[[nodiscard]] base::Result<double> mitre_factor(Angle from_square);

} // namespace treadle::process
