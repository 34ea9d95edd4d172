// A rectangle in CSS pixels, and cutting it up: all the layout that a view needs.

#pragma once

#include <algorithm>

namespace treadle::ui {

struct Rect {
    float x = 0;
    float y = 0;
    float w = 0;
    float h = 0;

    [[nodiscard]] float right() const { return x + w; }
    [[nodiscard]] float bottom() const { return y + h; }
    [[nodiscard]] bool contains(float px, float py) const {
        return px >= x && px < right() && py >= y && py < bottom();
    }
    [[nodiscard]] bool is_empty() const { return !(w > 0 && h > 0); }
    [[nodiscard]] Rect inset(float by) const { return inset(by, by); }
    [[nodiscard]] Rect inset(float dx, float dy) const {
        return {x + dx, y + dy, std::max(0.0F, w - 2 * dx), std::max(0.0F, h - 2 * dy)};
    }
    [[nodiscard]] Rect moved(float dx, float dy) const { return {x + dx, y + dy, w, h}; }
    [[nodiscard]] Rect common(const Rect& o) const {
        const float left = std::max(x, o.x);
        const float top = std::max(y, o.y);
        return {left,
                top,
                std::max(0.0F, std::min(right(), o.right()) - left),
                std::max(0.0F, std::min(bottom(), o.bottom()) - top)};
    }

    // Cutting takes a strip off this rectangle and gives it back; `gap` is lost between them.
    Rect cut_top(float height, float gap = 0) {
        height = std::min(height, h);
        const Rect strip{x, y, w, height};
        const float lost = std::min(h, height + gap);
        y += lost;
        h -= lost;
        return strip;
    }
    Rect cut_bottom(float height, float gap = 0) {
        height = std::min(height, h);
        const Rect strip{x, bottom() - height, w, height};
        h = std::max(0.0F, h - height - gap);
        return strip;
    }
    Rect cut_left(float width, float gap = 0) {
        width = std::min(width, w);
        const Rect strip{x, y, width, h};
        const float lost = std::min(w, width + gap);
        x += lost;
        w -= lost;
        return strip;
    }
    Rect cut_right(float width, float gap = 0) {
        width = std::min(width, w);
        const Rect strip{right() - width, y, width, h};
        w = std::max(0.0F, w - width - gap);
        return strip;
    }
    /// The `index`th of `count` equal columns.
    [[nodiscard]] Rect column(int index, int count, float gap) const {
        const float each = (w - gap * static_cast<float>(count - 1)) / static_cast<float>(count);
        return {x + static_cast<float>(index) * (each + gap), y, each, h};
    }

    friend bool operator==(const Rect& a, const Rect& b) {
        return a.x == b.x && a.y == b.y && a.w == b.w && a.h == b.h;
    }
};

} // namespace treadle::ui
