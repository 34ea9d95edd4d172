// The place Jobs: what is kept on this device, files in and out, states to go back to, the trash,
// and what the host's shelf offers.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void jobs_view(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
