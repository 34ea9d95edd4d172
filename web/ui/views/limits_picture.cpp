#include "ui/views/limits_picture.h"

#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_scale{ui::TextSize::small, false, ui::Ink::ink, ui::Align::left};
constexpr float k_tick = 7;
constexpr float k_edge = 3; ///< over the metal that fits

/// Where a millimetre lies on the screen.
struct Axes {
    ui::Rect plot;
    double wide;
    double high;
    [[nodiscard]] float x(double at) const {
        return std::round(plot.x + plot.w * static_cast<float>(std::min(1.0, at / wide)));
    }
    [[nodiscard]] float y(double at) const {
        return std::round(plot.bottom() - plot.h * static_cast<float>(std::min(1.0, at / high)));
    }
};

/// The line along the upper ends of the steps, with its risers.
void stairs(ui::Ui& ui,
            const Axes& axes,
            const std::vector<LimitStep>& steps,
            double LimitStep::*top,
            ui::Ink ink,
            float stroke) {
    double before = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const LimitStep& step = steps[i];
        const bool apart = i > 0 && steps[i - 1].to < step.from;
        const auto riser = [&](double at, double low, double high) {
            const float y = axes.y(std::max(low, high));
            ui.fill({axes.x(at) - stroke / 2, y, stroke, axes.y(std::min(low, high)) - y}, ink);
        };
        if (apart)
            riser(steps[i - 1].to, before, 0);
        riser(step.from, apart ? 0 : before, step.*top);
        if (step.*top > 0)
            ui.fill({axes.x(step.from) - stroke / 2,
                     axes.y(step.*top) - stroke / 2,
                     axes.x(step.to) - axes.x(step.from) + stroke,
                     stroke},
                    ink);
        before = step.*top;
        if (i + 1 == steps.size())
            riser(step.to, before, 0);
    }
}

void scales(ui::Ui& ui, const Axes& axes, const LimitsReading& reading) {
    const ui::Rect& plot = axes.plot;
    const float line = ui::line_height(ui, ui::TextSize::small);
    ui.fill({plot.x - 2, plot.y, 2, plot.h + 2}, ui::Ink::ink);
    ui.fill({plot.x - 2, plot.bottom(), plot.w + 2, 2}, ui::Ink::ink);
    for (const LimitTick& tick : reading.y_ticks) {
        const float y = axes.y(tick.at);
        ui.fill({plot.x - 2 - k_tick, y, k_tick, 1}, ui::Ink::ink);
        const float width = ui::text_width(ui, tick.words, k_scale);
        ui::draw_text(
            ui, {plot.x - k_tick - 6 - width, y - line / 2, width, line}, tick.words, k_scale);
    }
    for (const LimitTick& tick : reading.x_ticks) {
        const float x = axes.x(tick.at);
        ui.fill({x, plot.bottom() + 2, 1, k_tick}, ui::Ink::ink);
        const float width = ui::text_width(ui, tick.words, k_scale);
        ui::draw_text(
            ui, {x - width / 2, plot.bottom() + k_tick + 4, width, line}, tick.words, k_scale);
    }
}

void metal(ui::Ui& ui, const Axes& axes, const std::vector<LimitStep>& steps) {
    for (const LimitStep& step : steps) {
        const float x = axes.x(step.from);
        const float width = axes.x(step.to) - x;
        const float fits = axes.y(step.fits);
        const float up_to = axes.y(step.up_to);
        const float least = axes.y(step.least);
        if (fits < least)
            ui.fill({x, fits, width, least - fits}, ui::Ink::steel);
        const float low = std::min(fits, least);
        if (up_to < low)
            ui::draw_hatch(ui, {x, up_to, width, low - up_to}, ui::Ink::up_to);
    }
    stairs(ui, axes, steps, &LimitStep::up_to, ui::Ink::up_to, 1);
    stairs(ui, axes, steps, &LimitStep::fits, ui::Ink::cut, k_edge);
}

} // namespace

std::optional<std::size_t>
limits_picture(Desk& desk, const ui::Rect& rect, LimitsReading& reading) {
    ui::Ui& ui = desk.ui;
    const float line = ui::line_height(ui, ui::TextSize::small);
    ui.add_node("picture", ui::Role::picture, rect, reading.spoken);
    Axes axes{rect, reading.wide, reading.high};
    float gutter = 0;
    for (const LimitTick& tick : reading.y_ticks)
        gutter = std::max(gutter, ui::text_width(ui, tick.words, k_scale));
    axes.plot.cut_left(gutter + k_tick + 8);
    axes.plot.cut_right(line); // half of the last figure
    ui::draw_text(ui,
                  {rect.x, rect.y, rect.w, line},
                  reading.y_title,
                  {ui::TextSize::small, true, ui::Ink::quiet, ui::Align::left});
    axes.plot.cut_top(line + 4);
    ui::draw_text(ui,
                  axes.plot.cut_bottom(line),
                  reading.x_title,
                  {ui::TextSize::small, true, ui::Ink::quiet, ui::Align::right});
    axes.plot.cut_bottom(line + k_tick + 6);
    if (ui.is_visible(rect)) {
        metal(ui, axes, reading.steps);
        scales(ui, axes, reading);
    }
    std::optional<std::size_t> pressed;
    const float finger = std::max(44.0F, ui.size().target);
    const auto& clusters = reading.clusters(axes.plot.w,
                                            axes.plot.h,
                                            {0,
                                             0,
                                             std::max(finger + ui.size().gap, 3.4F * line),
                                             std::max(finger + ui.size().gap, 2 * line)});
    for (const LimitCluster& cluster : clusters) {
        const LimitPoint& worst = reading.points[cluster.first];
        const ui::Rect place{axes.plot.x + cluster.x - finger / 2,
                             axes.plot.bottom() - cluster.y - finger / 2,
                             finger,
                             finger};
        if (ui::verdict_point(ui,
                              "point-" + std::to_string(cluster.first),
                              place,
                              {worst.mark, cluster.label, cluster.spoken, worst.same_grade}))
            pressed = cluster.first;
    }
    return pressed;
}

float limits_legend(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const float line = ui::line_height(ui, ui::TextSize::small);
    const float swatch = std::round(line * 1.4F);
    ui::Rect rest{rect.x, rect.y, rect.w, line + 4};
    for (const bool sure : {true, false}) {
        const char* words = sure ? "Any metal of the grade fits"
                                 : "Only with a certificate that says it is weak enough";
        const float width = swatch + 8 + ui::text_width(ui, words, k_scale);
        if (rest.x > rect.x && rest.w < width)
            rest = {rect.x, rest.bottom(), rect.w, line + 4};
        ui::Rect place = rest.cut_left(width, 20);
        const ui::Rect box = place.cut_left(swatch, 8).inset(0, 4);
        ui.fill(box, sure ? ui::Ink::steel : ui::Ink::paper);
        if (!sure)
            ui::draw_hatch(ui, box, ui::Ink::up_to);
        ui.fill({box.x, box.y, box.w, sure ? k_edge : 1.0F}, sure ? ui::Ink::cut : ui::Ink::up_to);
        ui::text(ui, place, words, k_scale);
    }
    return rest.bottom() - rect.y;
}

} // namespace treadle::views
