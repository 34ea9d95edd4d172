// Draws a picture of a part: ink outline, steel fill, holes as paper.

#pragma once

#include "ui/views/reading.h"
#include "ui/widgets/ui.h"

#include <string_view>

namespace treadle::views {

/// `operation`: drawn heavy and numbered in ink, the rest numbered in outline.
void paint_part(
    ui::Ui& ui, std::string_view id, const ui::Rect& rect, const Picture& picture, int operation);

/// Outline only, for a list; silent, because the row says what it is.
void paint_small(ui::Ui& ui, const ui::Rect& rect, const Picture& picture);

} // namespace treadle::views
