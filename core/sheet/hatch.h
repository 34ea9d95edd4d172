// Private to the room: strokes across a shape, made once so that every renderer shows the same.

#pragma once

#include "sheet/drafting.h"

#include <vector>

namespace treadle::sheet {

/// Rising strokes at 45 degrees, `pitch` apart along x and cut off at the straight sides of the
/// shape. Their places hang on the drawing, not on the shape: what is hatched beside each other
/// is hatched through.
[[nodiscard]] std::vector<Stroke> hatch_of(const std::vector<Spot>& outline, double pitch);

} // namespace treadle::sheet
