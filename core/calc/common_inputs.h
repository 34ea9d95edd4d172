// Inputs that many calculations share, so that one thing has one name and one meaning everywhere.

#pragma once

#include "calc/calculation.h"
#include "geometry/hole.h"

namespace treadle::calc {

class Reader;

inline constexpr InputSpec k_thickness_input{
    "thickness", InputKind::length, true, "thickness of the metal", "", "1/4 in"};
inline constexpr InputSpec k_material_input{
    "material", InputKind::material, false, "grade; its strongest metal counts", "", "A36"};
inline constexpr InputSpec k_shear_strength_input{
    "shear_strength", InputKind::stress, false, "in place of material", "", "50 ksi"};
inline constexpr InputSpec k_tensile_strength_input{
    "tensile_strength", InputKind::stress, false, "in place of material", "", "60 ksi"};
inline constexpr InputSpec k_opening_input{
    "opening", InputKind::length, true, "of the V", "", "2 in"};
inline constexpr InputSpec k_bend_radius_input{
    "radius", InputKind::length, true, "inside radius", "", "1/4 in"};
inline constexpr InputSpec k_bend_angle_input{
    "angle", InputKind::angle, true, "turned through", "", "90 deg"};

// A hole: its shape, and one or two sizes. The shapes are in the order of geometry::HoleShape.
inline constexpr InputSpec k_hole_shape_input{"shape",
                                              InputKind::word,
                                              true,
                                              "shape of the hole",
                                              "round|square|rectangle|obround|hexagon|perimeter"};
inline constexpr InputSpec k_hole_size_input{
    "size",
    InputKind::length,
    true,
    "diameter, side, width, across flats, or the perimeter",
    "",
    "1-1/8 in"};
inline constexpr InputSpec k_hole_size2_input{
    "size2",
    InputKind::length,
    false,
    "other side of a rectangle, overall length of an obround",
    "",
    "2 in"};
[[nodiscard]] geometry::HoleOutline read_hole(Reader& in);

} // namespace treadle::calc
