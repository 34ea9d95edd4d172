// A bar to scale with the pieces cut from it, as one thing that can be pressed.
//
// Pieces are full and have their marks where there is room; what is kept is an empty outline, scrap
// is hatched, trimmed ends are black: told apart without colour.

#pragma once

#include "ui/widgets/ui.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace treadle::ui {

struct BarSpan {
    enum class Kind : std::uint8_t { piece, kept, scrap, trim };
    Kind kind = Kind::piece;
    double from = 0; ///< as a share of the longest bar
    double to = 0;
    std::string label;   ///< left out where it has no room
    double label_to = 0; ///< it stands between `from` and here: one for several spans alike
};

struct StockBar {
    std::string_view title;  ///< "Bar 240 × 4"
    std::string_view beside; ///< at the right: what is left
    std::string_view spoken; ///< all of it in one sentence
    double length = 1;       ///< as a share of the longest bar
    std::span<const BarSpan> spans;
    bool open = false; ///< its list of cuts stands below
};

[[nodiscard]] float stock_bar_height(const Ui& ui);
/// True when pressed.
bool stock_bar(Ui& ui, std::string_view id, const Rect& rect, const StockBar& bar);
/// What the fills mean, in a line or more; the height used.
float stock_bar_legend(Ui& ui, const Rect& rect);

} // namespace treadle::ui
