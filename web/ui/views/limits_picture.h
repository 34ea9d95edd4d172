// The picture of a place's limits: metal as high as it may be thick, hatched where its strength
// decides, and the job's operations in it.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Fills `rect`. The point that was pressed, as its place in the reading; none: nothing.
std::optional<std::size_t> limits_picture(Desk& desk, const ui::Rect& rect, LimitsReading& reading);

/// What metal and hatching mean, in words. Returns the height used.
float limits_legend(Desk& desk, const ui::Rect& rect, LimitsReading& reading);

} // namespace treadle::views
