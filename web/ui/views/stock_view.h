// The bars of the job: what to pull and buy, where to cut, and the proof that fewer will not do.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void stock_view(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
