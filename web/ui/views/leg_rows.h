// How far each leg of a bent part may come out from its size.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Nothing for a straight part. Returns where it ended.
float leg_rows(Desk& desk, const ui::Rect& rect, PartReading& part);

} // namespace treadle::views
