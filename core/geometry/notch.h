// Notches: rectangles from an edge or a corner, and V notches; the length actually cut.

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"

namespace treadle::geometry {

enum class NotchShape { rectangle, vee };
enum class NotchPlace { edge, corner };

struct NotchOutline {
    NotchShape shape = NotchShape::rectangle;
    NotchPlace place = NotchPlace::edge; ///< a V is always from an edge
    Length width;                        ///< rectangle: along the edge; V: unused
    Length depth;
    Angle included; ///< V only, over 0 and below 180
};

/// Sizes positive and finite, angle in range. Fields "width", "depth", "angle".
[[nodiscard]] base::Result<NotchOutline> checked(NotchOutline notch);

/// Length actually cut: edge w + 2 d, corner w + d, V 2 d / cos(half the included angle).
[[nodiscard]] Length cut_length(const NotchOutline& notch);
/// Width at the edge: w, or for a V 2 d tan(half the included angle).
[[nodiscard]] Length mouth(const NotchOutline& notch);

} // namespace treadle::geometry
