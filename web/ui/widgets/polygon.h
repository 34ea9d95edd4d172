// Triangles of a simple polygon, so that outlines with inward corners can be filled.

#pragma once

#include <array>
#include <span>
#include <vector>

namespace treadle::ui {

struct PlanePoint {
    double x = 0;
    double y = 0;
};

/// Indices into `outline`, which may turn either way. A polygon that crosses itself gives fewer
/// triangles than it should, never a hang.
[[nodiscard]] std::vector<std::array<int, 3>> triangles_of(std::span<const PlanePoint> outline);

} // namespace treadle::ui
