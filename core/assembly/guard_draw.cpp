// guard_heights, draw_guard and draw_landing of guard.h: the sides one after the other, unfolded at
// the corners.

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
    Spot origin; ///< foot of the first post's near side
    int pickets = 0;

    [[nodiscard]] Length ground(Length x) const {
        return origin.y + (x - origin.x) * guard.rake.tangent;
    }
    /// A rail over a level stretch, its underside so far over the surface.
    void rail(Length x, Length level, Length over, Length depth, const Piece& piece) {
        out.outlines.push_back(marked(box({x, ground(x) + over}, level, depth, guard.rake.tangent),
                                      mark + "-" + piece.code));
    }
    void post(Length x) {
        const Length width = guard.post.width;
        const Length low = ground(x + width / 2.0) - guard.below + guard.base;
        const Length high = ground(x + width / 2.0) + guard.height - heights.cap;
        out.outlines.push_back(
            marked(box({x, low}, width, high - low), mark + "-" + guard.pieces->post.code));
    }
    void panel(const GuardSide& side, Length x);
    /// From a post that is drawn, to the last one; returns where that stands.
    Length side(const GuardSide& side, Length x);
};

void Pen::panel(const GuardSide& side, Length x) {
    const Length low = guard.bottom_gap + heights.bottom;
    rail(x, side.clear, guard.bottom_gap, heights.bottom, guard.pieces->bottom);
    rail(x, side.clear, low + heights.between, heights.top, guard.pieces->top);
    if (guard.fill == Fill::midrail) {
        const Length mid = low + (heights.between - heights.bottom) / 2.0;
        rail(x, side.clear, mid, heights.bottom, guard.pieces->mid);
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
            mark + "-" + guard.pieces->picket.code));
    }
}

Length Pen::side(const GuardSide& side, Length begin) {
    Length x = begin;
    for (int i = 0; i < side.panels && !is_full(out); ++i) {
        panel(side, x + guard.post.width);
        x += guard.post.width + side.clear;
        post(x);
    }
    if (guard.cap.width > Length{})
        rail(begin, side.run, guard.height - heights.cap, heights.cap, guard.pieces->cap);
    return x;
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

GuardHeights guard_heights(const Guard& guard) {
    GuardHeights out;
    if (guard.cap.width > Length{})
        out.cap = guard.rake.upright(rail_depth(guard.cap));
    out.top = guard.rake.upright(rail_depth(guard.top));
    out.bottom = guard.rake.upright(rail_depth(guard.bottom));
    out.between = guard.height - guard.bottom_gap - out.cap - out.top - out.bottom;
    return out;
}

Elevation
draw_guard(const Guard& guard, const std::vector<GuardSide>& sides, const std::string& mark) {
    Elevation out;
    const GuardHeights heights = guard_heights(guard);
    Pen pen{guard, heights, mark, out, {}};
    Length x;
    int panels = 0;
    for (const GuardSide& side : sides) {
        pen.post(x);
        x = pen.side(side, x);
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

void draw_landing(Elevation& out,
                  const Guard& flight,
                  const Guard& landing,
                  const GuardSide& side,
                  Landing which,
                  const std::string& mark) {
    const GuardHeights heights = guard_heights(landing);
    const Length post = flight.post.width;
    const bool upper = which == Landing::upper;
    // The shared post is the flight's: drawn there already.
    const Length shared = upper ? flight.runs.front() - post : Length{};
    const Spot origin{upper ? shared : post - side.run,
                      (shared + post / 2.0) * flight.rake.tangent};
    Pen pen{landing, heights, mark, out, origin};
    if (upper) {
        pen.side(side, origin.x);
    } else {
        pen.post(origin.x);
        Length x = origin.x;
        for (int i = 0; i < side.panels && !is_full(out); ++i) {
            pen.panel(side, x + post);
            x += post + side.clear;
            if (i + 1 < side.panels)
                pen.post(x);
        }
        if (landing.cap.width > Length{})
            pen.rail(
                origin.x, side.run, landing.height - heights.cap, heights.cap, landing.pieces->cap);
    }
    const Length end = origin.x + side.run;
    out.outlines.push_back(line({{origin.x, origin.y}, {end, origin.y}}));
    out.description += upper ? " A landing above." : " A landing below.";
}

} // namespace treadle::assembly
