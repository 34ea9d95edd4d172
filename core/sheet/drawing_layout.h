// The elevation of a layout as a drawing: the same for the page's canvas and for SVG.

#pragma once

#include "sheet/drawing.h"

#include "assembly/made.h"

namespace treadle::sheet {

/// Figures that find no room are left out: they stand in the layout's list of figures as well.
[[nodiscard]] Drawing
draw_layout(const assembly::Elevation& elevation, PrintStyle style, PictureBox box);

} // namespace treadle::sheet
