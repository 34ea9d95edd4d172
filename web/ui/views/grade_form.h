// A grade of the user's own: typed in from its certificate or standard.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Begins with the grade of `part`, as a copy under a name of its own. Returns where it ended.
float grade_form(Desk& desk, const ui::Rect& rect, const job::Part& part);

} // namespace treadle::views
