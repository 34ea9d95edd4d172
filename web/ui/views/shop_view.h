// What the shop owns: machine, stations, attachments, tooling, house rules, all of it editable.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void shop_view(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
