// Frames of angle and flat bar: mitred, butted, or notched and bent from one bar; gussets.
//
// Symbols   W, H  frame   b  leg in the frame's plane, or face   t  thickness   A  corner, inside
//           d  angle bent through
// Formula   mitre: setback b / tan(A/2), cut 90 - A/2 off square       card frame-setback
//           piece = outside; heel inside: heel + 2 setback              card frame-mitre
//           butt: between pieces H - 2 t, notch b - t                   card frame-butt
//           flat bar, shared cuts: sum of (L - b), and b                card frame-bar
//           V-notch: depth b - t, width 2 (b - t) tan(d/2)              card frame-notch
//           gusset: sqrt(p^2 + q^2), atan(q / p)                        card gusset
// Source    sources.json: derived-geometry
// Rounding  none. The blank of a bent frame is process/blank.h's

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::layout {

/// In the order of the words "outside|inside": where the standing leg, the heel, lies.
enum class Heel { outside, inside };

struct Frame {
    Length width; ///< heel to heel; outside faces for flat bar
    Length height;
    Length leg;       ///< in the frame's plane; the face of a flat bar
    Length thickness; ///< of the standing leg; zero for flat bar
    Heel heel = Heel::outside;
};
struct FramePieces {
    Length width_piece; ///< two of each
    Length height_piece;
    Length opening_width;
    Length opening_height;
};
/// Square corners. Long point to long point.
[[nodiscard]] base::Result<FramePieces> mitred_frame(const Frame& frame);
/// The width pieces go through.
[[nodiscard]] base::Result<FramePieces> butted_frame(const Frame& frame);

/// Which of the four figures a working ends in.
enum class FrameFigure { width_piece, height_piece, opening_width, opening_height };
[[nodiscard]] base::Result<Working> mitred_working(const Frame& frame, FrameFigure figure);
[[nodiscard]] base::Result<Working> butted_working(const Frame& frame, FrameFigure figure);

/// The bar for a mitred frame of flat bar, neighbours sharing their 45 degree cuts on a shear.
[[nodiscard]] base::Result<Working> flat_frame_bar_working(const Frame& frame);

[[nodiscard]] base::Result<Length> mitre_setback(Length leg, Angle corner);
[[nodiscard]] base::Result<Working> mitre_setback_working(Length leg, Angle corner);
[[nodiscard]] base::Result<Working> mitre_cut_working(Length leg, Angle corner);

struct CornerNotch {
    Length leg;
    Length thickness;
    Angle bend = degrees(90.0); ///< turned through
};
struct NotchSizes {
    Length depth; ///< from the toe to the inside face of the standing leg
    Length width; ///< at the toe
};
[[nodiscard]] base::Result<NotchSizes> corner_notch(const CornerNotch& notch);
[[nodiscard]] base::Result<Working> notch_depth_working(const CornerNotch& notch);
[[nodiscard]] base::Result<Working> notch_width_working(const CornerNotch& notch);

/// A right-angled plate by its legs; the angle lies at leg_a.
[[nodiscard]] base::Result<Working> gusset_edge_working(Length leg_a, Length leg_b);
[[nodiscard]] base::Result<Working> gusset_angle_working(Length leg_a, Length leg_b);

} // namespace treadle::layout
