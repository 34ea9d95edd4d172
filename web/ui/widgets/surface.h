// How a drawing is looked at: whole, or closer and some part of it. Millimetres, y upwards, on a
// rectangle of pixels.

#pragma once

#include "ui/widgets/rect.h"

#include <string>
#include <string_view>

namespace treadle::ui {

struct PointMm {
    double x = 0;
    double y = 0;
};

struct BoundsMm {
    PointMm low;
    PointMm high;
};

class Surface {
public:
    static constexpr float k_most_zoom = 32;
    static constexpr float k_step = 1.5F; ///< of a key or a notch

    [[nodiscard]] float zoom() const { return zoom_; }
    [[nodiscard]] bool is_whole() const { return zoom_ <= 1; }
    /// The zoom to lay labels out for: a step at or below the zoom, so that they get more room than
    /// they ask for, and a drawing is laid out anew once a step, not once a frame.
    [[nodiscard]] float laid_out_zoom() const;

    /// Names what is shown. Something else is seen whole again.
    void show(std::string_view what);
    /// Puts a drawing of these bounds into the rectangle, as close as is wished.
    void fit(const Rect& rect, const BoundsMm& bounds);
    /// Grows or shrinks around a point of the screen. False at either end.
    bool zoom_by(float factor, float x, float y);
    /// The same around the middle.
    bool zoom_by(float factor);
    /// Moves what is seen; never beyond the drawing. False when nothing moved.
    bool pan(float dx, float dy);
    bool see_whole();

    [[nodiscard]] PointMm on_screen(PointMm point) const {
        return {origin_x_ + point.x * scale_, origin_y_ - point.y * scale_};
    }
    [[nodiscard]] PointMm under(double x, double y) const {
        return {(x - origin_x_) / scale_, (origin_y_ - y) / scale_};
    }
    /// Pixels to a millimetre.
    [[nodiscard]] double scale() const { return scale_; }
    [[nodiscard]] const Rect& rect() const { return rect_; }

private:
    void hold_inside();
    void keep_anchor(double x, double y);

    std::string what_;
    float zoom_ = 1;
    Rect rect_;
    BoundsMm bounds_;
    double scale_ = 1;
    double origin_x_ = 0;
    double origin_y_ = 0;
    // The point of the drawing that stays where it is when the drawing is laid out anew.
    PointMm anchor_;
    double anchor_x_ = 0; ///< from the rectangle's corner
    double anchor_y_ = 0;
};

} // namespace treadle::ui
