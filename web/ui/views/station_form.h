// One station of the machine, as its plate describes it. What is not known stays empty.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float station_form(Desk& desk, const ui::Rect& rect, int station);

} // namespace treadle::views
