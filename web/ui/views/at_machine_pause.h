// Work at the machine that stands still: held, come back to, at the end, or with nothing to do.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// The middle of the screen while nothing is worked on.
void at_machine_pause(Desk& desk, const ui::Rect& rect);
void at_machine_end(Desk& desk, const ui::Rect& rect);
/// Under the bar of every other place while work is on hold. Returns the height used.
float work_on_hold(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
