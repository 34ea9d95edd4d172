// Rules of the shop that belong to no single cut: guard openings, general tolerances.
//
// Symbols   x  distance of the guard from the hazard   o  opening   n  nominal size
// Formula   o by bands of x                     card k_guard_opening_card
//           tolerance by bands of n and class   cards k_tolerance_length_card,
//           k_tolerance_angle_card
// Valid     x from 1/2 in to 31-1/2 in; n from 0.5 mm to 4000 mm, fine to 2000, very coarse
//           from over 3
// Source    sources.json: cfr-1910-217, iso-2768-1
// Rounding  on a limit of two bands the stricter one

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

/// Greatest opening in a guard; nearer than 1/2 in the table allows none.
[[nodiscard]] base::Result<Working> guard_opening_working(Length distance);

enum class ToleranceClass { fine, medium, coarse, very_coarse };
/// Either way. Refuses "size" where the class has no figure.
[[nodiscard]] base::Result<Working> tolerance_length_working(Length size, ToleranceClass grade);
/// By the shorter leg of the angle; medium and coarse only.
[[nodiscard]] base::Result<Working> tolerance_angle_working(Length leg, ToleranceClass grade);

} // namespace treadle::process
