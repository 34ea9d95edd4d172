// Shearing flats, bars and angles.

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

/// Both legs at once, area t (a + b - t) and 2 % for the rolled fillet.
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
