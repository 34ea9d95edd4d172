// Developed length of rings, hooks and eyes in rod, flat and profile.
//
// Symbols   L  length   D  inside or outside diameter   h  depth of the bar in the plane of bending
//           c  centroid from the face that D is measured to   A  arc, degrees   s  straight   u
//           tail
// Formula   L = (A / 360) pi (Di + 2 c) + s, c = h / 2; outside Do - 2 c   card k_ring_length_card
//           L = s + (A / 360) pi (Di + d) + u                            card k_hook_length_card
// Valid     neutral line at the centroid: inside radius over 5 h; below it a trial is asked for
// Source    sources.json: tabellenbuch-metall, derived-geometry
// Rounding  none here; the caller rounds up, and adds trim for ends that do not bend

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

enum class Face { inside, outside };
struct Ring {
    Length diameter;
    Face measured = Face::inside;
    Length depth;    ///< of the bar in the plane of bending; profiles: zero when not known
    Length centroid; ///< from the measured face: half of the depth but for profiles
    Angle arc;       ///< over 0, up to 360
    Length straight; ///< added at the ends, zero or more
    bool hard_way = false;
};
[[nodiscard]] base::Result<Working> ring_diameter_working(const Ring& ring);
[[nodiscard]] base::Result<Working> ring_length_working(const Ring& ring);

struct Hook {
    Length bar; ///< depth in the plane of bending
    Length inside_diameter;
    Length straight; ///< shank, zero or more
    Length tail;     ///< zero or more
    Angle angle;     ///< turned through, over 0 up to 360: an eye
};
[[nodiscard]] base::Result<Working> hook_length_working(const Hook& hook);

} // namespace treadle::process
