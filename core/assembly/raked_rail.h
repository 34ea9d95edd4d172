// A rail that leans between two upright posts, its ends square: private to the room.
//
// Symbols   L  level, post face to post face   A  slope   t  depth of the rail
// Formula   s = L / cos A - t tan A            card raked-rail
// Source    sources.json: derived-geometry. A bar t deep and s long, leaning by A, stands
//           s cos A + t sin A wide
// Rounding  none

#pragma once

#include "assembly/infill.h"

namespace treadle::assembly {

/// What square ends cost: the depth over the slope.
[[nodiscard]] Length lost_by_square_ends(Length depth, const Rake& rake);
/// Refuses "spacing" when nothing is left.
[[nodiscard]] base::Result<Length> raked_rail(Length level, Length depth, const Rake& rake);
[[nodiscard]] base::Result<Working>
raked_rail_working(Length level, Length depth, const Rake& rake);

} // namespace treadle::assembly
