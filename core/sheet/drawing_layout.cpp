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

/// Nor on a line: in pieces as long as a letter, for a box around a slanting line holds much else.
void keep_line_free(Drafter& draft, const std::vector<Spot>& spots) {
    const double piece = draft.points(9.0);
    for (std::size_t i = 1; i < spots.size(); ++i) {
        const Spot from = spots[i - 1];
        const Spot way{spots[i].x - from.x, spots[i].y - from.y};
        const double pieces = std::ceil(std::hypot(way.x, way.y) / piece);
        const auto at = [&](double share) {
            return Spot{from.x + way.x * share, from.y + way.y * share};
        };
        for (double k = 0.0; k < pieces; k += 1.0)
            keep_steel_free(draft, {at(k / pieces), at((k + 1.0) / pieces)});
    }
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
    std::vector<Spot> places;
    for (const double far : {1.0, -1.0, 2.0, -2.0, 3.0, -3.0, 4.0, -4.0})
        places.push_back(beside(far * off));
    // A crowded figure is read with trouble, one that is left out is not read at all.
    if (!draft.label_where_free(places, text, plan::k_none))
        draft.label(places.front(), text, Anchor::middle);
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
            keep_line_free(draft, spots);
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
