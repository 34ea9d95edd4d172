// What leaves: the worksheet, tables, the job's file. And what comes in.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void sheets_view(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
