#include "sheet/drawing_layout.h"

#include "sheet/drafting.h"

#include <algorithm>
#include <cmath>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_points_per_mm = 72.0 / 25.4;
constexpr double k_margin_points = 34.0; ///< for figures on each side
constexpr double k_least_points = 48.0;

Spot spot(const assembly::Spot& at) { return {to_millimetres(at.x), to_millimetres(at.y)}; }

/// What the outlines, rounds and spans reach over.
Box bounds_of(const assembly::Elevation& elevation) {
    Box box{{1e12, 1e12}, {-1e12, -1e12}};
    const auto reach = [&](Spot at, double around) {
        box.low = {std::min(box.low.x, at.x - around), std::min(box.low.y, at.y - around)};
        box.high = {std::max(box.high.x, at.x + around), std::max(box.high.y, at.y + around)};
    };
    for (const assembly::Outline& outline : elevation.outlines)
        for (const assembly::Spot& at : outline.spots)
            reach(spot(at), 0.0);
    for (const assembly::Round& round : elevation.rounds)
        reach(spot(round.centre), to_millimetres(round.radius));
    for (const assembly::Span& span : elevation.spans) {
        reach(spot(span.from), 0.0);
        reach(spot(span.to), 0.0);
    }
    return box;
}

double unit_for(const Box& bounds, PictureBox box) {
    const double margin = 2.0 * k_margin_points;
    const double wide = std::max(k_least_points, box.width_mm * k_points_per_mm - margin);
    const double high = std::max(k_least_points, box.height_mm * k_points_per_mm - margin);
    return std::max(
        {(bounds.high.x - bounds.low.x) / wide, (bounds.high.y - bounds.low.y) / high, 1e-6});
}

/// Figures stand beside the steel, not in it.
void keep_steel_free(Drafter& draft, const std::vector<Spot>& spots) {
    Box box{spots.front(), spots.front()};
    for (const Spot& at : spots) {
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
    draft.keep_free(box);
}

void draw_span(Drafter& draft, const assembly::Span& span, PrintStyle style) {
    const Spot from = spot(span.from);
    const Spot to = spot(span.to);
    const double gap = std::hypot(to.x - from.x, to.y - from.y);
    if (gap <= 0.0)
        return;
    const Spot way{(to.x - from.x) / gap, (to.y - from.y) / gap};
    const Spot out{-way.y, way.x};
    draft.measure(from, to, out, -4.0, 0.0, 4.0);
    const std::string figure = print(millimetres(gap), style);
    const std::string text = span.words.empty() ? figure : span.words + " " + figure;
    const Spot middle{(from.x + to.x) / 2.0, (from.y + to.y) / 2.0};
    // Beside the line: far enough for half the text where the line is upright.
    const double off = draft.points(10.0) + std::abs(out.x) * draft.text_width(text) / 2.0;
    const auto beside = [&](double by) {
        return Spot{middle.x + out.x * by, middle.y + out.y * by};
    };
    draft.label_where_free({beside(off), beside(-off), beside(2.0 * off)}, text, plan::k_none);
}

} // namespace

Drawing draw_layout(const assembly::Elevation& elevation, PrintStyle style, PictureBox box) {
    Drafter draft(unit_for(bounds_of(elevation), box));
    for (const assembly::Outline& outline : elevation.outlines) {
        std::vector<Spot> spots;
        for (const assembly::Spot& at : outline.spots)
            spots.push_back(spot(at));
        if (outline.shade == assembly::Shade::open) {
            draft.path(spots, Pen::outline);
            continue;
        }
        keep_steel_free(draft, spots);
        draft.shape(
            spots, outline.shade == assembly::Shade::bar ? Fill::paper : Fill::steel, Pen::outline);
    }
    for (const assembly::Round& round : elevation.rounds)
        draft.circle(spot(round.centre),
                     to_millimetres(round.radius),
                     round.hole ? Fill::paper : Fill::steel);
    for (const assembly::Span& span : elevation.spans)
        draw_span(draft, span, style);
    return draft.finish(elevation.description);
}

} // namespace treadle::sheet
