// The parts: list, chosen part, and beside it the working or the sizes.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void parts_place(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
