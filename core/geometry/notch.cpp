#include "geometry/notch.h"

#include <cmath>

namespace treadle::geometry {

base::Result<NotchOutline> checked(NotchOutline notch) {
    if (!(notch.depth > Length{}) || !is_finite(notch.depth))
        return base::Refusal{"depth", "The depth of a notch has to be above zero.", "above 0"};
    if (notch.shape == NotchShape::rectangle) {
        if (!(notch.width > Length{}) || !is_finite(notch.width))
            return base::Refusal{"width", "The width of a notch has to be above zero.", "above 0"};
        return notch;
    }
    if (!(notch.included > Angle{}) || !(notch.included < degrees(180.0)))
        return base::Refusal{"angle", "The angle of a V notch is out of range.", "0 to 180 deg"};
    return notch;
}

Length cut_length(const NotchOutline& notch) {
    if (notch.shape == NotchShape::vee)
        return 2.0 * notch.depth / std::cos(notch.included.in_radians() / 2.0);
    const double sides = notch.place == NotchPlace::edge ? 2.0 : 1.0;
    return notch.width + sides * notch.depth;
}

Length mouth(const NotchOutline& notch) {
    if (notch.shape == NotchShape::vee)
        return 2.0 * notch.depth * std::tan(notch.included.in_radians() / 2.0);
    return notch.width;
}

} // namespace treadle::geometry
