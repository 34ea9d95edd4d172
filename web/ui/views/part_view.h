// One part: what it is, its drawing, its operations with their verdicts.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void part_view(Desk& desk, const ui::Rect& rect, int part);

} // namespace treadle::views
