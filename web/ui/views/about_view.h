// What this program is, who decides, whose work is in it. And the notice at first start.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where the words ended.
float about_words(Desk& desk, ui::Rect rest);

/// Over everything until it is accepted. Draw it last.
void notice(Desk& desk);

/// Messages that stay until they are dismissed. Returns the height used, from the top of `rect`.
float messages(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
