// A surface for drawings in millimetres, y upwards.
//
// The view says what lies where; this file makes it fit, keeps strokes and type in pixels, and
// gives one picture node with a sentence. It knows nothing of plates or holes.

#pragma once

#include "ui/widgets/surface.h"
#include "ui/widgets/text.h"
#include "ui/widgets/ui.h"

#include <array>
#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace treadle::ui {

struct Stroke {
    Ink ink = Ink::cut;
    float px = 2.5F;
    bool dashed = false;
};

class DrawingPainter {
public:
    /// Fills a polygon by its triangles (polygon.h), which its owner keeps.
    void
    fill(std::span<const PointMm> outline, std::span<const std::array<int, 3>> triangles, Ink ink);
    void line(std::span<const PointMm> points, const Stroke& stroke, bool closed = false);
    void segment(PointMm from, PointMm to, const Stroke& stroke);
    /// Anticlockwise from `from_deg` to `to_deg`, 0 along x.
    void
    arc(PointMm centre, double radius_mm, double from_deg, double to_deg, const Stroke& stroke);
    void circle(PointMm centre, double radius_mm, const Stroke& stroke);
    void disc(PointMm centre, double radius_mm, Ink ink);
    /// Centred on the height of the type; `shift_px` moves it on the screen, y downwards.
    void text(PointMm at,
              std::string_view words,
              const TextStyle& style,
              float shift_x_px = 0,
              float shift_y_px = 0);
    /// A number in a ring of fixed size.
    void ring(PointMm at, int number, bool chosen, float shift_x_px = 0, float shift_y_px = 0);

    /// Pixels to a millimetre, for a view that leaves out what would be too small.
    [[nodiscard]] double scale() const { return surface_.scale(); }

    DrawingPainter(Ui& ui, const Surface& surface) : ui_(ui), surface_(surface) {}

private:
    [[nodiscard]] PointMm on_screen(PointMm point) const { return surface_.on_screen(point); }

    Ui& ui_;
    const Surface& surface_;
};

struct Drawing {
    BoundsMm bounds;         ///< what must be seen
    float margin_px = 8;     ///< kept free around it, for dimensions
    std::string_view spoken; ///< the sentence of the picture; without one it is only ink
};

/// All of it.
void drawing(Ui& ui,
             std::string_view id,
             const Rect& rect,
             const Drawing& drawing,
             const std::function<void(DrawingPainter&)>& paint);
/// As the surface is looked at.
void drawing(Ui& ui,
             std::string_view id,
             const Rect& rect,
             Surface& surface,
             const Drawing& drawing,
             const std::function<void(DrawingPainter&)>& paint);
/// A handle for a place of a drawing: a knob beside it, so that a finger does not hide the place.
struct Knob {
    PointMm at; ///< on the screen
    std::string_view name;
    bool along = true; ///< which ways it can go
    bool across = true;
};
struct KnobTouch {
    std::optional<HandleDrag> drag;
    bool pressed = false; ///< by key, or a tap
};
KnobTouch knob(Ui& ui, std::string_view id, const Rect& inside, const Knob& knob);

} // namespace treadle::ui
