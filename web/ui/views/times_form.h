// The shop's own times and limits for handling, and its labour rate.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where the form ends.
float times_form(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
