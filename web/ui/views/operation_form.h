// Every size of one operation, by typing; and the choice of a new one.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float operation_form(Desk& desk, const ui::Rect& rect, int part, int operation);

/// Keys for a new operation. Returns where they ended.
float operation_choice(Desk& desk, const ui::Rect& rect, int part);

} // namespace treadle::views
