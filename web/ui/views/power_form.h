// Motor, cord and generator of the shop, and what the plan says of them.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where the form ends.
float power_form(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
