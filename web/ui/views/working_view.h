// The working of an operation: every formula with its values, range and source.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Title, expression, values, range and source of one working. Returns where it ended.
float one_working(Desk& desk, ui::Rect rest, const std::vector<std::string>& lines);

/// Returns where it ended.
float working_view(Desk& desk, const ui::Rect& rect, int part, int operation);

} // namespace treadle::views
