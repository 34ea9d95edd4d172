// How far a tool has to open so that the stock, or the bent piece, comes out: and no farther.
//
// Symbols   t  thickness    g  clearance over the stock    L  leg that stands up    A  angle turned
// Formula   brake: h = max(t, L sin A) + g, A from 90 degrees on counts as 90   card
//           k_brake_opening_card
//           blade: h = t + g                                                    card
//           k_blade_opening_card
// Valid     brake: one bend, the other leg laid flat on the V, the piece drawn out to the front;
//           where it is drawn out along the bend line, L is zero. Blades: straight, level
// Source    geometry; the clearance is common practice, no source
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

struct BrakeOpening {
    Length thickness;
    Length leg; ///< outside, the one that stands up; zero: drawn out along the bend line
    Angle angle;
    Length clearance;
};
/// Punch nose over the V.
[[nodiscard]] base::Result<Length> brake_opening(const BrakeOpening& bend);
[[nodiscard]] base::Result<Working> brake_opening_working(const BrakeOpening& bend);

/// Upper blade over the lower one.
[[nodiscard]] base::Result<Length> blade_opening(Length thickness, Length clearance);
[[nodiscard]] base::Result<Working> blade_opening_working(Length thickness, Length clearance);

} // namespace treadle::process
