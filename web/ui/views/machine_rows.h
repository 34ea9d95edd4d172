// The shop's machines: which does the whole job, what stops the others, and which one is in use.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float machine_rows(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
