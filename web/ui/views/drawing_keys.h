// The keys under a drawing: nearer, farther, all of it. They do what two fingers and the wheel do.

#pragma once

#include "ui/views/desk.h"

#include <optional>
#include <string_view>

namespace treadle::views {

/// In the scope of the drawing. Takes its place from the left of `row`. Zooms around the middle, or
/// around a point of the screen.
void zoom_keys(Desk& desk,
               ui::Rect& row,
               ui::Surface& surface,
               std::string_view what,
               const std::optional<ui::PointMm>& around = std::nullopt);
/// Plus, minus and 0 zoom, arrows move what is zoomed, while the keyboard is at the drawing.
void zoom_by_keyboard(Desk& desk, ui::Surface& surface, bool arrows);

} // namespace treadle::views
