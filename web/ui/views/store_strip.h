// The line over every place when what is done is not kept as one would think: another tab writes
// the job, the browser has no room, or keeps nothing.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// The height it took; 0 when all is well.
float store_strip(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
