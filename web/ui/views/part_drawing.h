// A drawing of the chosen part that can be looked at closely, and on which its operations are
// chosen and put in their places.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// The drawing in `rect`, its keys below. Returns where they ended.
float part_drawing(Desk& desk, const ui::Rect& rect, PartReading& part, bool finished);

} // namespace treadle::views
