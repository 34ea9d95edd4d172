// What can be written or chosen.
//
// The canvas draws the field; a real input or select element lies over it and takes the typing,
// so that soft keyboards, paste, dictation and screen readers work as everywhere. A text is given
// back when the user leaves the field or presses Enter; Escape brings the old one back.
//
// A value that was refused stays in the field: pass the user's own text as `value` and say in
// `error` what is wrong and what is allowed.

#pragma once

#include "ui/widgets/entry.h"
#include "ui/widgets/ui.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace treadle::ui {

struct Field {
    std::string_view label; ///< above the box; also the spoken name
    std::string_view value;
    std::string_view unit;  ///< quiet, at the right inside the box
    std::string_view note;  ///< small, below the box, when there is no error
    std::string_view error; ///< red edge, and spoken; `field_error` shows it where there is room
    bool enabled = true;
    const FigureKind* kind = nullptr; ///< of a figure: what the number pad and the echo need
    bool live = false; ///< gives the text at every letter; arrows, Enter and Escape are the page's
};

/// Why what stands in the field `id` was not taken, with the cross of "does not fit"; the height.
float field_error(Ui& ui, std::string_view id, const Rect& rect, std::string_view words);

inline constexpr float k_field_inside = 12; ///< between the box and its text, as in site.css

/// Height that a field takes: label, box and the line below when `with_line`.
[[nodiscard]] float field_height(const Ui& ui, bool with_line);

/// Returns the text that was committed in this frame.
std::optional<std::string>
text_field(Ui& ui, std::string_view id, const Rect& rect, const Field& field);
/// The same for a figure as the user writes it ("1-1/8", "20 mm"): large type.
std::optional<std::string>
number_field(Ui& ui, std::string_view id, const Rect& rect, const Field& field);
/// One of `options`, through the browser's own picker. Returns a new choice.
std::optional<int> choice(Ui& ui,
                          std::string_view id,
                          const Rect& rect,
                          const Field& field,
                          std::span<const std::string> options,
                          int selected);

} // namespace treadle::ui
