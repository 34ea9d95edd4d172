// Cutting edges that the job uses: strokes so far, and which has to be ground.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float wear_rows(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
