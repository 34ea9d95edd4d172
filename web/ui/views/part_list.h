// The parts of the job: mark, count, title, a small drawing and the verdict.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// `rail`: only marks and shapes, when the room is needed elsewhere.
void part_list(Desk& desk, const ui::Rect& rect, bool rail);

} // namespace treadle::views
