// Layouts that make parts: what is asked, what it makes, which rules it meets, and the keys that
// put it into the job, change it there or take it out.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void layouts_view(Desk& desk, const ui::Rect& rect);

/// Under the head of a part that a layout made: which one, a key to it, and one to detach. Returns
/// where it ended.
float origin_line(Desk& desk, const ui::Rect& rect, const std::string& part_id);

} // namespace treadle::views
