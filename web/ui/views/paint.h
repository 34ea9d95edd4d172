// Draws a picture of a part: ink outline, steel fill, holes as paper.

#pragma once

#include "ui/views/picture.h"
#include "ui/widgets/ui.h"

#include <string_view>

namespace treadle::views {

/// `operation`: drawn heavy and numbered in ink, the rest numbered in outline.
void paint_part(ui::Ui& ui,
                std::string_view id,
                const ui::Rect& rect,
                ui::Surface& surface,
                const Picture& picture,
                int operation);

/// The same where it is only looked at: all of it.
void paint_part(
    ui::Ui& ui, std::string_view id, const ui::Rect& rect, const Picture& picture, int operation);

/// The size of the type that is painted in pictures, for a room of theirs.
[[nodiscard]] float type_of(const ui::Ui& ui);
/// A picture that was laid out for this rectangle; silent, because what stands around it says what
/// it is. `hatch` is the ink of hatches. Returns where on the screen it came to lie.
ui::Surface paint_silent(ui::Ui& ui,
                         const ui::Rect& rect,
                         const Picture& picture,
                         ui::Ink hatch = ui::Ink::quiet);

/// Where an operation that is on its way would lie, and which ways it goes.
struct PlaceOnDrawing {
    ui::PointMm at;
    bool along = false;
    bool across = false;
};
/// Over a drawing of these bounds: the operation as it would be, and lines through its place.
void paint_trial(ui::Ui& ui,
                 const ui::Rect& rect,
                 ui::Surface& surface,
                 const ui::BoundsMm& bounds,
                 const Picture& trial,
                 const PlaceOnDrawing& place);

/// Outline only, for a list; silent, because the row says what it is.
void paint_small(ui::Ui& ui, const ui::Rect& rect, const Picture& picture);

} // namespace treadle::views
