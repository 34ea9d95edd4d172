// Who does which set-up when several people work at the machine.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Nothing with one operator. Returns where it ended.
float lane_rows(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
