#include "ui/widgets/surface.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace treadle::ui {

namespace {

constexpr float k_layout_step = 1.25F;
constexpr float k_nearly_whole = 1.02F;

} // namespace

float Surface::laid_out_zoom() const {
    float step = 1;
    while (step * k_layout_step <= zoom_ * 1.0001F)
        step *= k_layout_step;
    return step;
}

void Surface::show(std::string_view what) {
    if (what_ == what)
        return;
    what_.assign(what);
    zoom_ = 1;
}

void Surface::fit(const Rect& rect, const BoundsMm& bounds) {
    rect_ = rect;
    bounds_ = bounds;
    const double width = std::max(bounds.high.x - bounds.low.x, 1e-6);
    const double height = std::max(bounds.high.y - bounds.low.y, 1e-6);
    const double whole =
        std::min(static_cast<double>(rect.w) / width, static_cast<double>(rect.h) / height);
    scale_ = std::max(whole, 1e-9) * static_cast<double>(zoom_);
    origin_x_ = static_cast<double>(rect.x) + anchor_x_ - anchor_.x * scale_;
    origin_y_ = static_cast<double>(rect.y) + anchor_y_ + anchor_.y * scale_;
    hold_inside();
}

void Surface::hold_inside() {
    const auto held = [](double low, double size, double from, double room) {
        if (size <= room)
            return from + (room - size) / 2;
        return std::clamp(low, from + room - size, from);
    };
    const double width = (bounds_.high.x - bounds_.low.x) * scale_;
    const double height = (bounds_.high.y - bounds_.low.y) * scale_;
    const double left = held(origin_x_ + bounds_.low.x * scale_,
                             width,
                             static_cast<double>(rect_.x),
                             static_cast<double>(rect_.w));
    const double top = held(origin_y_ - bounds_.high.y * scale_,
                            height,
                            static_cast<double>(rect_.y),
                            static_cast<double>(rect_.h));
    origin_x_ = left - bounds_.low.x * scale_;
    origin_y_ = top + bounds_.high.y * scale_;
}

void Surface::keep_anchor(double x, double y) {
    anchor_ = under(x, y);
    anchor_x_ = x - static_cast<double>(rect_.x);
    anchor_y_ = y - static_cast<double>(rect_.y);
}

bool Surface::zoom_by(float factor, float x, float y) {
    float next = std::clamp(zoom_ * factor, 1.0F, k_most_zoom);
    if (next < k_nearly_whole)
        next = 1;
    if (next == zoom_)
        return false;
    keep_anchor(static_cast<double>(x), static_cast<double>(y));
    // Events may come faster than frames.
    scale_ *= static_cast<double>(next) / static_cast<double>(zoom_);
    zoom_ = next;
    origin_x_ = static_cast<double>(x) - anchor_.x * scale_;
    origin_y_ = static_cast<double>(y) + anchor_.y * scale_;
    hold_inside();
    keep_anchor(static_cast<double>(x), static_cast<double>(y));
    return true;
}

bool Surface::zoom_by(float factor) {
    return zoom_by(factor, rect_.x + rect_.w / 2, rect_.y + rect_.h / 2);
}

bool Surface::pan(float dx, float dy) {
    if (is_whole())
        return false;
    const double before_x = origin_x_;
    const double before_y = origin_y_;
    origin_x_ += static_cast<double>(dx);
    origin_y_ += static_cast<double>(dy);
    hold_inside();
    keep_anchor(static_cast<double>(rect_.x + rect_.w / 2),
                static_cast<double>(rect_.y + rect_.h / 2));
    return origin_x_ != before_x || origin_y_ != before_y;
}

bool Surface::see_whole() {
    if (is_whole())
        return false;
    zoom_ = 1;
    return true;
}

} // namespace treadle::ui
