// A surface for drawings in millimetres, y upwards.
//
// The view says what lies where; this file makes it fit, keeps strokes and type in pixels, and
// gives one picture node with a sentence. It knows nothing of plates or holes.

#pragma once

#include "ui/widgets/text.h"
#include "ui/widgets/ui.h"

#include <functional>
#include <span>
#include <string_view>
#include <vector>

namespace treadle::ui {

struct PointMm {
    double x = 0;
    double y = 0;
};

struct BoundsMm {
    PointMm low;
    PointMm high;
};

struct Stroke {
    Ink ink = Ink::cut;
    float px = 2.5F;
    bool dashed = false;
};

class DrawingPainter {
public:
    /// Fills a simple polygon, which may have inward corners.
    void fill(std::span<const PointMm> outline, Ink ink);
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
    [[nodiscard]] double scale() const { return scale_; }

private:
    friend void drawing(Ui&,
                        std::string_view,
                        const Rect&,
                        const struct Drawing&,
                        const std::function<void(DrawingPainter&)>&);
    DrawingPainter(Ui& ui, const Rect& rect, const BoundsMm& bounds);
    [[nodiscard]] PointMm on_screen(PointMm point) const;

    Ui& ui_;
    double scale_ = 1;
    double origin_x_ = 0;
    double origin_y_ = 0;
};

struct Drawing {
    BoundsMm bounds;         ///< what must be seen
    float margin_px = 8;     ///< kept free around it, for dimensions
    std::string_view spoken; ///< the sentence of the picture; without one it is only ink
};

void drawing(Ui& ui,
             std::string_view id,
             const Rect& rect,
             const Drawing& drawing,
             const std::function<void(DrawingPainter&)>& paint);

} // namespace treadle::ui
