// The order of work: set-up after set-up, and what has to be bought first.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void order_view(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
