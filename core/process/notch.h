// Notching: the force of one bite, and how many bites.
//
// Symbols   L  length cut   t  thickness   S  shear strength   F  force
//           n  bites   b  tool length   o  overlap
// Formula   F = L t S                            card k_notch_force_card
//           n = 1 + ceil((Ltot - b)/(b - o))     card k_notch_bites_card
// Valid     the whole edge at once: no credit for the first touch at a corner
// Source    sources.json: derived-mechanics, derived-geometry
// Rounding  bites up

#pragma once

#include "base/result.h"
#include "geometry/notch.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

struct NotchCut {
    geometry::NotchOutline notch;
    Length thickness;
    Stress shear_strength;
};
[[nodiscard]] base::Result<Force> notch_force(const NotchCut& cut);
[[nodiscard]] base::Result<Working> notch_force_working(const NotchCut& cut);

/// Bites of a tool of length b along a notch longer than the tool, with overlap o:
/// 1 + ceil((along - b) / (b - o)). Refuses an overlap over half the tool.
[[nodiscard]] base::Result<int> notch_bites(Length along, Length tool, Length overlap);

} // namespace treadle::process
