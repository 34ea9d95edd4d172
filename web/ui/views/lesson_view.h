// Lessons: the list, a step, the same for a whole class to see, and what a demonstration opens.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// The whole screen, without the tabs of the job. `shown`: the demonstration's own desk, or null.
void lesson_view(Desk& desk, const ui::Rect& rect, Desk* shown);

} // namespace treadle::views
