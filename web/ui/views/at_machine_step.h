// The middle of the view at the machine: tools, figures, lines to tick, the piece, verdict, safety.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void at_machine_step(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
