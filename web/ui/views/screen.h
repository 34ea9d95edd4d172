// The whole screen: bar, messages, the place one is in, and the notice.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void screen(Desk& desk);

} // namespace treadle::views
