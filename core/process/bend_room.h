// Room beside a bend: reliefs, holes near it, and where its line is marked.
//
// Symbols   t  thickness   r  inside radius   V  opening   w  width   d  depth   x  distance
// Formula   w >= max(t, 1/32 in)           card k_relief_width_card
//           d >= r + t                     card k_relief_depth_card
//           x >= n t + r, n = 2.5, 3, 4    card k_hole_to_bend_card
//           x >= V / 2                     card k_hole_to_die_card
// Valid     cold bends in a V; x from the edge of the hole to the inside face of the other leg
// Source    sources.json: common-practice-bending, derived-geometry
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <optional>

namespace treadle::process {

[[nodiscard]] base::Result<Working> relief_width_working(Length thickness);
[[nodiscard]] base::Result<Working> relief_depth_working(Length thickness, Length radius);

enum class NearHole { round, slot_along };
struct HoleNearBend {
    Length thickness;
    Length radius; ///< of the bend
    NearHole kind = NearHole::round;
    Length hole;                 ///< diameter, or width of a slot
    std::optional<double> times; ///< none: the careful rule
};
/// Edge of the hole to the inside face of the other leg.
[[nodiscard]] base::Result<Working> hole_to_bend_working(const HoleNearBend& hole);
/// Edge of the hole to the bend line, so that it never lies over the open V.
[[nodiscard]] base::Result<Working> hole_to_die_working(Length opening);

} // namespace treadle::process
