// The picture of drawing_limits.h, laid out in millimetres of paper.

#include "sheet/drawing_limits.h"

#include "sheet/drafting.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

constexpr double k_mm_per_point = 25.4 / 72.0;
constexpr double k_line_points = 11.0; ///< of type
constexpr double k_tick_points = 4.0;
constexpr double k_gap_points = 3.0;
constexpr double k_edge_points = 2.0; ///< that a finished drawing has around it

struct Plot {
    Box axes;
    Drafter draft;

    [[nodiscard]] double x(double share) const {
        return axes.low.x + (axes.high.x - axes.low.x) * share;
    }
    [[nodiscard]] double y(double share) const {
        return axes.low.y + (axes.high.y - axes.low.y) * share;
    }
    [[nodiscard]] std::vector<Spot> box(double from, double to, double low, double high) const {
        return {{x(from), y(low)}, {x(to), y(low)}, {x(to), y(high)}, {x(from), y(high)}};
    }
};

/// Steel where any metal of the grade fits, hatched over it where only some does.
void draw_metal(Plot& plot, const LimitStep& step) {
    if (step.fits > step.least)
        plot.draft.shape(
            plot.box(step.from, step.to, step.least, step.fits), Fill::steel, Pen::none);
    const double sure = std::max(step.fits, step.least);
    if (step.fits_up_to > sure)
        plot.draft.shape(
            plot.box(step.from, step.to, sure, step.fits_up_to), Fill::hatched, Pen::none);
}

/// The line along the upper ends of the steps. It begins and ends on the axis wherever nothing
/// fits or nothing is known.
void draw_stairs(Plot& plot, const std::vector<LimitStep>& steps, double LimitStep::*top, Pen pen) {
    std::vector<Spot> line;
    const auto finish = [&] {
        if (line.empty())
            return;
        line.push_back({line.back().x, plot.y(0.0)});
        plot.draft.path(line, pen);
        line.clear();
    };
    double end = 0.0;
    for (const LimitStep& step : steps) {
        if (!(step.*top > 0.0) || step.from > end)
            finish();
        end = step.to;
        if (!(step.*top > 0.0))
            continue;
        if (line.empty())
            line.push_back({plot.x(step.from), plot.y(0.0)});
        const double y = plot.y(step.*top);
        if (line.back().y == y) // no riser: a corner that is there twice has no direction
            line.pop_back();
        else
            line.push_back({plot.x(step.from), y});
        line.push_back({plot.x(step.to), y});
    }
    finish();
}

void draw_x_axis(Plot& plot, const std::vector<LimitTick>& ticks) {
    Drafter& draft = plot.draft;
    const double y = plot.axes.low.y;
    const double foot = y - draft.points(k_tick_points);
    Dimension& axis = draft.dimension(plot.axes.low, {plot.axes.high.x, y});
    for (const LimitTick& tick : ticks) {
        const double x = plot.x(tick.at);
        axis.ticks.push_back({to_point({x, y}), to_point({x, foot})});
        draft.label_where_free(
            {{x, foot - draft.points(k_line_points / 2.0)}}, tick.words, plan::k_none);
    }
}

void draw_y_axis(Plot& plot, const std::vector<LimitTick>& ticks) {
    Drafter& draft = plot.draft;
    const double x = plot.axes.low.x;
    const double foot = x - draft.points(k_tick_points);
    Dimension& axis = draft.dimension(plot.axes.low, {x, plot.axes.high.y});
    for (const LimitTick& tick : ticks) {
        const double y = plot.y(tick.at);
        axis.ticks.push_back({to_point({x, y}), to_point({foot, y})});
        const double half = draft.text_width(tick.words) / 2.0;
        draft.label_where_free(
            {{foot - draft.points(k_gap_points) - half, y}}, tick.words, plan::k_none);
    }
}

/// Room for the figures of both axes and the titles, on a box of this size.
Box axes_in(const Drafter& draft, const LimitsChart& chart, PictureBox box) {
    double gutter = 0.0;
    for (const LimitTick& tick : chart.y_ticks)
        gutter = std::max(gutter, draft.text_width(tick.words));
    const double half =
        chart.x_ticks.empty() ? 0.0 : draft.text_width(chart.x_ticks.back().words) / 2.0;
    const double edge = draft.points(k_edge_points);
    const double figures = draft.points(k_tick_points + k_line_points);
    const double title = draft.points(k_line_points + k_gap_points);
    const Spot low{edge + gutter + draft.points(k_tick_points + k_gap_points),
                   edge + figures + (chart.x_title.empty() ? 0.0 : title)};
    return {low,
            {std::max(low.x, box.width_mm - edge - half),
             std::max(low.y, box.height_mm - edge - title)}};
}

void draw_titles(Drafter& draft, const LimitsChart& chart, PictureBox box) {
    const double edge = draft.points(k_edge_points);
    const double half = draft.points(k_line_points / 2.0);
    draft.label({edge, box.height_mm - edge - half}, chart.y_title, Anchor::start, true);
    if (!chart.x_title.empty())
        draft.label({box.width_mm - edge, edge + half}, chart.x_title, Anchor::end, true);
}

} // namespace

LimitsDrawing draw_limits(const LimitsChart& chart, PictureBox box) {
    Drafter draft(k_mm_per_point);
    const double edge = draft.points(k_edge_points);
    draft.include({edge, edge});
    draft.include({box.width_mm - edge, box.height_mm - edge});
    draw_titles(draft, chart, box);
    Plot plot{axes_in(draft, chart, box), std::move(draft)};
    for (const LimitStep& step : chart.steps)
        draw_metal(plot, step);
    draw_stairs(plot, chart.steps, &LimitStep::fits_up_to, Pen::hatch);
    draw_stairs(plot, chart.steps, &LimitStep::fits, Pen::outline);
    draw_x_axis(plot, chart.x_ticks);
    draw_y_axis(plot, chart.y_ticks);
    return {plot.draft.finish(chart.description + "."),
            to_point(plot.axes.low),
            to_point(plot.axes.high)};
}

Drawing draw_limits_sample(bool any_metal, PictureBox box) {
    Drafter draft(k_mm_per_point);
    const double edge = draft.points(k_edge_points);
    Plot plot{{{edge, edge}, {box.width_mm - edge, box.height_mm - edge}}, std::move(draft)};
    const LimitStep step{0.0, 1.0, any_metal ? 1.0 : 0.0, any_metal ? 0.0 : 1.0, 0.0};
    draw_metal(plot, step);
    plot.draft.path({{plot.x(0.0), plot.y(1.0)}, {plot.x(1.0), plot.y(1.0)}},
                    any_metal ? Pen::outline : Pen::hatch);
    return plot.draft.finish("");
}

} // namespace treadle::sheet
