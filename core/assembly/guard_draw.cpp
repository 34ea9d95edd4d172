// draw_guard of guard.h: the sides one after the other, unfolded at the corners.

#include <algorithm>
#include <string>

#include "assembly/guard.h"
#include "assembly/pieces.h"

namespace treadle::assembly {

namespace {

constexpr int k_most_drawn = 400; // pickets; more are a grey band at any size

struct Pen {
    const Guard& guard;
    const GuardHeights& heights;
    const std::string& mark;
    Elevation& out;
    int pickets = 0;

    [[nodiscard]] Length ground(Length x) const { return x * guard.rake.tangent; }
    /// A rail over a level stretch, its underside so far over the surface.
    void rail(Length x, Length level, Length over, Length depth, const char* code) {
        out.outlines.push_back(marked(box({x, ground(x) + over}, level, depth, guard.rake.tangent),
                                      mark + "-" + code));
    }
    void post(Length x) {
        const Length width = guard.post.width;
        const Length low = ground(x + width / 2.0) - guard.below + guard.base;
        const Length high = ground(x + width / 2.0) + guard.height - heights.cap;
        out.outlines.push_back(marked(box({x, low}, width, high - low), mark + "-P"));
    }
    void panel(const GuardSide& side, Length x);
};

void Pen::panel(const GuardSide& side, Length x) {
    const Length low = guard.bottom_gap + heights.bottom;
    rail(x, side.clear, guard.bottom_gap, heights.bottom, "B");
    rail(x, side.clear, low + heights.between, heights.top, "T");
    if (guard.fill == Fill::midrail) {
        const Length mid = low + (heights.between - heights.bottom) / 2.0;
        rail(x, side.clear, mid, heights.bottom, "M");
    }
    const Length width = guard.picket_width;
    for (const Length mark_along : side.infill.marks) {
        if (++pickets > k_most_drawn)
            return;
        const Length level =
            mark_along / (guard.rake.along(quantity::metres(1.0)) / quantity::metres(1.0));
        const Length left = x + level - width / 2.0;
        out.outlines.push_back(marked(
            box({left, ground(left) + low}, width, heights.between, guard.rake.tangent, Shade::bar),
            mark + "-K"));
    }
}

void dimension(const Guard& guard, const std::vector<GuardSide>& sides, Elevation& out) {
    const GuardSide& first = sides.front();
    const Length post = guard.post.width;
    const Length under = -(guard.below + guard.height / 8.0);
    out.spans.push_back({{Length{}, under}, {first.run, under}, "run"});
    const Length over = guard.height * 1.125 + (post + first.clear) * guard.rake.tangent;
    out.spans.push_back({{post, over}, {post + first.clear, over}, "clear"});
    out.spans.push_back(
        {{-(guard.height / 8.0), Length{}}, {-(guard.height / 8.0), guard.height}, ""});
}

} // namespace

Elevation
draw_guard(const Guard& guard, const std::vector<GuardSide>& sides, const std::string& mark) {
    Elevation out;
    const GuardHeights heights = guard_heights(guard);
    Pen pen{guard, heights, mark, out};
    Length x;
    int panels = 0;
    for (const GuardSide& side : sides) {
        pen.post(x);
        const Length begin = x;
        for (int i = 0; i < side.panels && !is_full(out); ++i) {
            pen.panel(side, x + guard.post.width);
            x += guard.post.width + side.clear;
            pen.post(x);
        }
        if (guard.cap.width > Length{})
            pen.rail(begin, side.run, guard.height - heights.cap, heights.cap, "C");
        panels += side.panels;
    }
    out.outlines.push_back(
        line({{Length{}, Length{}}, {x + guard.post.width, pen.ground(x + guard.post.width)}}));
    dimension(guard, sides, out);
    out.description = std::string(guard.rake.slope ? "Guard up a stair" : "Level guard") + ", " +
                      std::to_string(panels) + (panels == 1 ? " panel, " : " panels, ") +
                      std::to_string(sides.size()) + (sides.size() == 1 ? " side." : " sides.");
    return out;
}

} // namespace treadle::assembly
