// Private to the room: arcs between two spots of an outline.

#pragma once

#include "sheet/drafting.h"

#include <vector>

namespace treadle::sheet {

/// The circle that a bulged way runs on. Angles in radians, anticlockwise above zero.
struct Arc {
    Spot centre;
    double radius = 0.0;
    double start = 0.0;
    double sweep = 0.0;
    [[nodiscard]] Spot at(double share) const;
};
/// From `from` to `to` by `from.bulge`, which must not be zero.
[[nodiscard]] Arc arc_between(Spot from, Spot to);

/// The way from this spot to the next turns through an angle in radians, anticlockwise above zero.
void bend(Spot& spot, double sweep);

/// What the ways between the spots reach, arcs with their bows.
[[nodiscard]] Box bounds_of(const std::vector<Spot>& spots, bool closed);

/// Chords in place of arcs, no farther from them than `within`.
[[nodiscard]] std::vector<Spot>
straightened(const std::vector<Spot>& spots, bool closed, double within);

} // namespace treadle::sheet
