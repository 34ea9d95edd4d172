// Side views as thick lines and convex outlines: how far a line keeps from an outline.
//
// Plain millimetres inside: these are the innermost loops of the search for an order of bends.

#pragma once

#include <vector>

namespace treadle::geometry {

struct ProfilePoint {
    double x_mm = 0.0;
    double y_mm = 0.0;
};
struct ProfileLine {
    ProfilePoint from;
    ProfilePoint to;
};

/// A convex outline, corners anticlockwise, with the box round it.
struct ConvexOutline {
    std::vector<ProfilePoint> corners;
    ProfilePoint low;
    ProfilePoint high;
};
[[nodiscard]] ConvexOutline convex_outline(std::vector<ProfilePoint> corners);

/// Between the boxes round both: never more than the distance itself, and quickly found.
[[nodiscard]] double least_gap_mm(const ProfileLine& line, const ConvexOutline& outline);
/// Zero when the line touches, crosses or lies inside.
[[nodiscard]] double distance_mm(const ProfileLine& line, const ConvexOutline& outline);

/// A strip folded along its middle surface, from a bend line outwards.
struct Fold {
    double from_mm = 0.0;   ///< along the flat, where the arc of this bend begins
    double to_mm = 0.0;     ///< and ends
    double radius_mm = 0.0; ///< of the middle surface
    double turn_rad = 0.0;  ///< positive turns towards +y
};
/// Lines of the folded strip, from (0, y) along +x.
struct FoldedStrip {
    std::vector<ProfileLine> lines;
    std::vector<int> folds; ///< how many folds lie before the end of each line
};
/// `folds` in order outwards, `end_mm` the free end on the flat. Arcs become chords of up to 30
/// deg.
void fold_strip(const std::vector<Fold>& folds, double end_mm, double y_mm, FoldedStrip& strip);

} // namespace treadle::geometry
