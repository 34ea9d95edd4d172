// One attachment: where it is bolted on and what it can do.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float attachment_form(Desk& desk, const ui::Rect& rect, int attachment);

} // namespace treadle::views
