// A figure to be read from two metres: digits as large as there is room for, the unit small beside.

#pragma once

#include "ui/widgets/ui.h"

#include <string_view>

namespace treadle::ui {

struct BigFigure {
    std::string_view digits; ///< digits and what stands between them: "2-1/4"
    std::string_view unit;
    std::string_view spoken; ///< "along 2-1/4 in"
};

/// Height of the digits, not of their line, with which the figure is just as wide as `width`; at
/// most `most`.
[[nodiscard]] float figure_height(const Ui& ui, const BigFigure& figure, float width, float most);
/// Drawn from the top left; the node's rectangle is as high as the digits.
void big_figure(
    Ui& ui, std::string_view id, float x, float y, float digit_height, const BigFigure& figure);

} // namespace treadle::ui
