// What stands up beside a tool: the other leg of an angle, a channel's flanges or its web.

#include "plan/checks.h"

namespace treadle::plan {

Length standing_metal(const Section& section, section::Face face) {
    switch (section.shape) {
    case section::Shape::angle:
        return section.thickness + section.root_radius;
    case section::Shape::channel:
        return (face == section::Face::web ? section.flange_thickness : section.thickness) +
               section.root_radius;
    default:
        return Length{};
    }
}

} // namespace treadle::plan
