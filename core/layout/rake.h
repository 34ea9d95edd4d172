// Railing on stairs and slopes: pickets stand upright, the rails lean.
//
// Symbols   R, T  rise and run of the slope   A  slope   g  gap, measured level   w  picket
//           c  between the rails, square to them   v  upright length   r, t  riser and tread
// Formula   A = atan(R / T)                                        card rake-angle
//           along the rail s = h / cos A                           card rake-along
//           v = c / cos A                                          card rake-picket-length
//           bevel w tan A                                          card rake-bevel
//           blank v + w tan A                                      card rake-blank
//           sphere d = (r + t - sqrt(r^2 + t^2)) (1 + b / r)       card rake-triangle
//           highest rail b = r (D / (r + t - sqrt(r^2 + t^2)) - 1) card rake-rail-height
//           step of a level panel p tan A                          card rake-step
// Valid     slopes over 0 and up to 80 degrees; the triangle while the sphere's radius is below r
// Source    sources.json: derived-geometry
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::layout {

/// A slope by two lengths; only their ratio counts.
struct Slope {
    Length rise;
    Length run;
};
[[nodiscard]] base::Result<Angle> slope_angle(const Slope& slope);
[[nodiscard]] base::Result<Working> slope_working(const Slope& slope);
/// What is `level` long as seen from above, measured along the rail.
[[nodiscard]] base::Result<Length>
along_rail(Length level, const Slope& slope, const char* field = "gap");
[[nodiscard]] base::Result<Working>
along_rail_working(Length level, const Slope& slope, const char* field = "gap");
/// What is `along` long on the rail, as seen from above.
[[nodiscard]] base::Result<Length> level_of(Length along, const Slope& slope);

struct RakedPicket {
    Slope slope;
    Length picket;
    Length between_rails; ///< square to the rails
};
struct RakedCut {
    Length length;       ///< on the centre line
    Length bevel_offset; ///< long side less short side
    Length blank;        ///< long point to the opposite point
};
[[nodiscard]] base::Result<RakedCut> raked_cut(const RakedPicket& picket);
[[nodiscard]] base::Result<Working> raked_length_working(const RakedPicket& picket);
[[nodiscard]] base::Result<Working> raked_bevel_working(const RakedPicket& picket);
[[nodiscard]] base::Result<Working> raked_blank_working(const RakedPicket& picket);

/// Under the bottom rail of a stair.
struct StairTriangle {
    Length riser;
    Length tread;
    Length rail_height; ///< underside of the rail over the nosing line, upright
};
/// Refuses "rail_height" when the sphere would no longer rest in the corner.
[[nodiscard]] base::Result<Length> triangle_sphere(const StairTriangle& stair);
[[nodiscard]] base::Result<Working> triangle_working(const StairTriangle& stair, Length limit);
/// Refuses "limit" when the sphere passes even with the rail on the nosing line.
[[nodiscard]] base::Result<Length> highest_rail(const StairTriangle& stair, Length limit);
[[nodiscard]] base::Result<Working> highest_rail_working(const StairTriangle& stair, Length limit);

[[nodiscard]] base::Result<Working> step_working(Length panel, const Slope& slope);

} // namespace treadle::layout
