// The whole screen: bar, messages, the place one is in, and the notice.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// `shown`: what a lesson demonstrates, as a desk of its own; null when nothing is.
void screen(Desk& desk, Desk* shown = nullptr);

} // namespace treadle::views
