// How the screen looks and is held: theme, size of keys and type, hand, number pad.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Fills `rect` from its top; returns where it ended. What is chosen is seen at once.
float screen_form(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
