// Drawings that are looked at closely: all lies where it lies in the whole drawing, and text takes
// less of the part, so that more of it finds room.

#pragma once

#include "sheet/drawing.h"

namespace treadle::sheet {

/// As draw_flat and draw_finished for this box, a point of the picture being worth so many
/// millimetres of the part; never more than in the whole drawing.
[[nodiscard]] Drawing
draw_flat_near(const plan::PartPlan& plan, PrintStyle style, PictureBox box, double mm_per_point);
[[nodiscard]] Drawing draw_finished_near(const plan::PartPlan& plan,
                                         PrintStyle style,
                                         PictureBox box,
                                         double mm_per_point);

} // namespace treadle::sheet
