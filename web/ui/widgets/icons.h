// The few signs of the page, drawn with strokes. None stands without a word or a spoken name.

#pragma once

#include "ui/theme/theme.h"

#include <cstdint>

struct ImDrawList;

namespace treadle::ui {

enum class Icon : std::uint8_t {
    none,
    undo,
    redo,
    plus,
    minus,
    tick,
    cross,
    print,
    open,
    save,
    back,
    next,
    up,
    down,
    find
};

/// In a square of `size` around the centre.
void draw_icon(
    ImDrawList& draw, Icon icon, float centre_x, float centre_y, float size, Colour colour);

} // namespace treadle::ui
