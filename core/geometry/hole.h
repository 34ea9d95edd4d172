// Outlines of punched holes: cut length, area, and the circle that must pass a holder.

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"

namespace treadle::geometry {

enum class HoleShape { round, square, rectangle, obround, hexagon, perimeter };
[[nodiscard]] const char* hole_shape_word(HoleShape shape);

/// size   diameter; side; one side; width (small dimension); across flats; the perimeter itself
/// size2  rectangle: the other side; obround: overall length; else unused
struct HoleOutline {
    HoleShape shape = HoleShape::round;
    Length size;
    Length size2;
};

/// Sizes positive and finite, obround length not below its width. Fields "size", "size2".
[[nodiscard]] base::Result<HoleOutline> checked(HoleOutline hole);

[[nodiscard]] Length perimeter(const HoleOutline& hole);
/// Zero for `perimeter`, which has no known area.
[[nodiscard]] Area hole_area(const HoleOutline& hole);
/// Smallest dimension across: what "hole not smaller than thickness" looks at. Zero for
/// `perimeter`: a given edge length may be that of any slot, so nothing can be said in its favour.
[[nodiscard]] Length least_width(const HoleOutline& hole);
/// Diameter of the circle round the outline: what has to pass the holder. For `perimeter` half the
/// edge, which no closed outline outreaches.
[[nodiscard]] Length circumscribed(const HoleOutline& hole);
/// Half extents along and across the part, the long side along unless turned.
struct HalfExtent {
    Length along;
    Length across;
};
[[nodiscard]] HalfExtent half_extent(const HoleOutline& hole, bool turned);

} // namespace treadle::geometry
