// The bar over everything: what job this is, whether it is kept, where one is, undo and redo.

#pragma once

#include "ui/views/desk.h"
#include "ui/widgets/rect.h"

namespace treadle::views {

[[nodiscard]] float top_bar_height(const ui::Ui& ui);
void top_bar(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
