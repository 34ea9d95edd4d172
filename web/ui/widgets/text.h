// Words on the page. Each gives its node, so that what is drawn can also be heard and found.

#pragma once

#include "ui/widgets/ui.h"

#include <string_view>

namespace treadle::ui {

enum class Align : std::uint8_t { left, centre, right };

struct TextStyle {
    TextSize size = TextSize::body;
    bool bold = false;
    Ink ink = Ink::ink;
    Align align = Align::left;
};

/// Width of one line in CSS pixels.
[[nodiscard]] float text_width(const Ui& ui, std::string_view words, const TextStyle& style = {});
/// Height of one line.
[[nodiscard]] float line_height(const Ui& ui, TextSize size);

/// One line, centred in the height of `rect`; what is too long is cut with "…" (the node keeps
/// the whole). Returns the width drawn.
float text(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style = {});
/// Wrapped at the width of `rect`, from its top. Returns the height used.
float paragraph(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style = {});
/// Height that paragraph() would use.
[[nodiscard]] float
paragraph_height(const Ui& ui, float width, std::string_view words, const TextStyle& style = {});
/// One line with the rank of a heading, level 1 to 4.
float heading(Ui& ui, const Rect& rect, std::string_view words, int level, TextStyle style = {});

/// Only ink, no node: for a widget that has a node with these words already.
float draw_text(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style = {});
float draw_paragraph(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style = {});

} // namespace treadle::ui
