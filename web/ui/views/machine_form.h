// The machine as a whole, and the house rules.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Each returns where it ended.
float machine_form(Desk& desk, const ui::Rect& rect);
float rules_form(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
