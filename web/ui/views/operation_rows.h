// The operations of a part: number, title, demand beside offer, verdict and margin; the chosen one
// with its checks.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where they ended.
float operation_rows(Desk& desk, const ui::Rect& rect, int part);

} // namespace treadle::views
