#include "geometry/hole.h"

#include <numbers>

namespace treadle::geometry {

const char* hole_shape_word(HoleShape shape) {
    switch (shape) {
    case HoleShape::round:
        return "round";
    case HoleShape::square:
        return "square";
    case HoleShape::rectangle:
        return "rectangle";
    case HoleShape::obround:
        return "obround";
    case HoleShape::hexagon:
        return "hexagon";
    case HoleShape::perimeter:
        return "perimeter";
    }
    return "";
}

base::Result<HoleOutline> checked(HoleOutline hole) {
    if (!(hole.size > Length{}) || !is_finite(hole.size))
        return base::Refusal{
            "size", "The size of a hole has to be above zero.", "above 0 and below 100 m (328 ft)"};
    const bool two_sizes = hole.shape == HoleShape::rectangle || hole.shape == HoleShape::obround;
    if (!two_sizes)
        return hole;
    if (!(hole.size2 > Length{}) || !is_finite(hole.size2))
        return base::Refusal{"size2",
                             "The second size of this hole has to be above zero.",
                             "above 0 and below 100 m (328 ft)"};
    if (hole.shape == HoleShape::obround && hole.size2 < hole.size)
        return base::Refusal{"size2",
                             "An obround hole cannot be shorter than it is wide.",
                             "overall length at least the width"};
    return hole;
}

Length perimeter(const HoleOutline& hole) {
    switch (hole.shape) {
    case HoleShape::round:
        return std::numbers::pi * hole.size;
    case HoleShape::square:
        return 4.0 * hole.size;
    case HoleShape::rectangle:
        return 2.0 * (hole.size + hole.size2);
    case HoleShape::obround:
        return std::numbers::pi * hole.size + 2.0 * (hole.size2 - hole.size);
    case HoleShape::hexagon:
        return 2.0 * std::numbers::sqrt3 * hole.size;
    case HoleShape::perimeter:
        return hole.size;
    }
    return {};
}

Area hole_area(const HoleOutline& hole) {
    switch (hole.shape) {
    case HoleShape::round:
        return std::numbers::pi / 4.0 * (hole.size * hole.size);
    case HoleShape::square:
        return hole.size * hole.size;
    case HoleShape::rectangle:
        return hole.size * hole.size2;
    case HoleShape::obround:
        return std::numbers::pi / 4.0 * (hole.size * hole.size) +
               hole.size * (hole.size2 - hole.size);
    case HoleShape::hexagon:
        return std::numbers::sqrt3 / 2.0 * (hole.size * hole.size);
    case HoleShape::perimeter:
        return {};
    }
    return {};
}

Length least_width(const HoleOutline& hole) {
    switch (hole.shape) {
    case HoleShape::rectangle:
        return smaller(hole.size, hole.size2);
    case HoleShape::perimeter:
        return {};
    case HoleShape::round:
    case HoleShape::square:
    case HoleShape::obround:
    case HoleShape::hexagon:
        break;
    }
    return hole.size;
}

Length circumscribed(const HoleOutline& hole) {
    switch (hole.shape) {
    case HoleShape::round:
        return hole.size;
    case HoleShape::square:
        return std::numbers::sqrt2 * hole.size;
    case HoleShape::rectangle:
        return quantity::square_root(hole.size * hole.size + hole.size2 * hole.size2);
    case HoleShape::obround:
        return hole.size2;
    case HoleShape::hexagon:
        return 2.0 / std::numbers::sqrt3 * hole.size;
    case HoleShape::perimeter:
        // No closed outline reaches further than half its edge.
        return hole.size / 2.0;
    }
    return {};
}

HalfExtent half_extent(const HoleOutline& hole, bool turned) {
    HalfExtent half;
    switch (hole.shape) {
    case HoleShape::round:
    case HoleShape::square:
        half = {hole.size / 2.0, hole.size / 2.0};
        break;
    case HoleShape::rectangle:
    case HoleShape::obround:
        half = {larger(hole.size, hole.size2) / 2.0, smaller(hole.size, hole.size2) / 2.0};
        break;
    case HoleShape::hexagon:
        half = {circumscribed(hole) / 2.0, hole.size / 2.0};
        break;
    case HoleShape::perimeter:
        half = {hole.size / 4.0, hole.size / 4.0};
        break;
    }
    if (turned)
        return {half.across, half.along};
    return half;
}

} // namespace treadle::geometry
