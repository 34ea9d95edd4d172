// The working of an operation: every formula with its values, range and source.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float working_view(Desk& desk, const ui::Rect& rect, int part, int operation);

} // namespace treadle::views
