// The rack: bars and drops that are there, bars that can be bought, and what cutting them takes.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float rack_form(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
