// What would make the chosen operation fit: each change with its verdict and a key that makes it.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Draws nothing when there is no remedy. Returns where it ended.
float remedy_rows(Desk& desk, const ui::Rect& rect, int part, int operation);

} // namespace treadle::views
