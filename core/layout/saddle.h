// The saddle (cope) that fits one round tube to another.
//
// Symbols   R  run's outside radius   r  branch radius   B  angle between the axes   e  offset
//           p  angle round the branch, 0 on the side that leans towards the run
// Formula   w(p) = (sqrt(R^2 - (e + r sin p)^2) + r cos p cos B) / sin B   axes' crossing to the
// cut
//           y(p) = w(p) - least w                                        card saddle-ordinate
//           throat y(0)                                                  card saddle-throat
//           taken off per end: least w; no offset and r > R cos B: sqrt(R^2 - r^2)
//                                                                        card saddle-cut-back
//           blank C / sin B - least w1 - least w2 - gaps                 card saddle-blank
//           a die of another radius: h(x) = x - sqrt(x^2 - r^2), gap h(die) - h(R)
//                                                                        card saddle-die
// Valid     r + e up to R, B from 10 to 90 degrees; knife edges at the flanks are said in the note
// Source    sources.json: derived-geometry
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <vector>

namespace treadle::layout {

/// In the order of the words "outside|bore": a tool cuts square through and every point of the wall
/// seats; with the torch square to the surface the bore's edge is laid out.
enum class SaddleEdge { outside, bore };

struct SaddleJoint {
    Length branch_od;
    Length branch_wall{}; ///< for the bore alone
    Length run_od;
    Angle angle = degrees(90.0); ///< between the axes, the acute one
    Length offset{};             ///< between the axes
    SaddleEdge edge = SaddleEdge::outside;
};
struct SaddleShape {
    Length cut_back;  ///< axes' crossing to the long point, along the branch
    Angle long_point; ///< round the branch
    Length throat;    ///< long point to the crown on the acute side
    Length depth;     ///< long point to the deepest ordinate
};
[[nodiscard]] base::Result<SaddleShape> saddle_shape(const SaddleJoint& joint);

struct SaddleTemplate {
    SaddleShape shape;
    std::vector<Length> ordinates; ///< from the long point, at equal stations round the branch
    Length spacing;                ///< of the stations, on the wrapped paper's outside
};
[[nodiscard]] base::Result<SaddleTemplate>
saddle_template(const SaddleJoint& joint, int stations, Length paper = Length{});
// Workings of what was made of the same joint.
[[nodiscard]] Working ordinate_working(const SaddleJoint& joint, const SaddleShape& shape);
[[nodiscard]] Working throat_working(const SaddleJoint& joint, const SaddleShape& shape);
[[nodiscard]] Working cut_back_working(const SaddleJoint& joint, const SaddleShape& shape);
[[nodiscard]] Working
spacing_working(const SaddleJoint& joint, const SaddleTemplate& made, Length paper);

/// A branch between two parallel runs.
struct SaddleBlank {
    SaddleJoint joint; ///< at the first run
    Length second_run_od;
    Length centres; ///< between the runs' axes, square to them
    Length fit_up;  ///< gap left at each end
};
[[nodiscard]] base::Result<Working> saddle_blank_working(const SaddleBlank& blank);
[[nodiscard]] base::Result<Working> throat_to_throat_working(const SaddleBlank& blank);

struct SaddleDie {
    Length die_od;
    Length run_od;
    Length branch_od;
};
struct DieMismatch {
    Length crown_gap;
    Length flank_gap;
};
/// Refuses "die_od" smaller than the branch: no saddle in one stroke.
[[nodiscard]] base::Result<DieMismatch> die_mismatch(const SaddleDie& die);
[[nodiscard]] base::Result<Working> crown_gap_working(const SaddleDie& die);
[[nodiscard]] base::Result<Working> flank_gap_working(const SaddleDie& die);

} // namespace treadle::layout
