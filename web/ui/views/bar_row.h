// A bar to scale with the pieces cut from it, as one thing that can be pressed.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

[[nodiscard]] float bar_row_height(const ui::Ui& ui);

/// Which bar of the plan.
struct BarPlace {
    std::size_t group = 0;
    std::size_t bar = 0;
};
/// True when pressed. `open`: its list of cuts stands below.
bool bar_row(Desk& desk, const ui::Rect& rect, StockReading& reading, BarPlace at, bool open);

/// What the fills mean, in a line or more; the height used.
float bar_legend(Desk& desk, const ui::Rect& rect, StockReading& reading);

} // namespace treadle::views
