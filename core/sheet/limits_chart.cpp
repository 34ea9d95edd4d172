// The shares of drawing_limits.h, from what plan::capacity answered.

#include "quantity/print.h"
#include "sheet/drawing_limits.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

constexpr double k_head_room = 1.1; ///< so that the topmost line is inside
constexpr double k_farthest = 1.5; ///< a point may stretch the axes so far; beyond it is at the rim
constexpr int k_most_ticks = 7;

double mm(Length length) { return quantity::to_millimetres(length); }

/// Steps of the shop's own scale: inches doubled, millimetres by 1, 2, 5.
std::vector<LimitTick> ticks(double reach_mm, PrintStyle style) {
    const bool inch = style.system == UnitSystem::inch;
    double step = inch ? 25.4 / style.denominator : 1;
    for (int i = 0; reach_mm / step > k_most_ticks; ++i)
        step *= inch || i % 3 != 1 ? 2 : 2.5;
    std::vector<LimitTick> list;
    for (int i = 0; step * i <= reach_mm; ++i)
        list.push_back({step * i / reach_mm, quantity::print_bare(millimetres(step * i), style)});
    return list;
}

/// Between two points the smaller of both limits holds.
std::vector<LimitStep> envelope_mm(const std::vector<plan::CapacityPoint>& points) {
    std::vector<LimitStep> steps;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const plan::CapacityPoint& before = points[i - 1];
        const plan::CapacityPoint& at = points[i];
        const LimitStep step{mm(before.x),
                             mm(at.x),
                             mm(std::min(before.thickness.fits, at.thickness.fits)),
                             mm(std::min(before.thickness.fits_up_to, at.thickness.fits_up_to)),
                             mm(std::max(before.thickness.least, at.thickness.least))};
        if (!steps.empty() && steps.back().fits == step.fits &&
            steps.back().fits_up_to == step.fits_up_to && steps.back().least == step.least)
            steps.back().to = step.to;
        else
            steps.push_back(step);
    }
    return steps;
}

/// Bars have no axis: each stands in the middle half of a column of its own, one wide.
std::vector<LimitStep> columns_mm(const std::vector<plan::CapacityBar>& bars) {
    std::vector<LimitStep> steps;
    for (std::size_t i = 0; i < bars.size(); ++i) {
        const double from = static_cast<double>(i) + 0.25;
        if (bars[i].missing.empty())
            steps.push_back({from,
                             from + 0.5,
                             mm(bars[i].size.fits),
                             mm(bars[i].size.fits_up_to),
                             mm(bars[i].size.least)});
    }
    return steps;
}

double along_mm(const plan::Capacity& capacity, const plan::JobPoint& point) {
    for (std::size_t i = 0; i < capacity.bars.size(); ++i)
        if (capacity.bars[i].shape == point.shape)
            return static_cast<double>(i) + 0.5;
    return mm(point.x);
}

struct Reach {
    double wide = 0.0;
    double high = 0.0;
};

Reach reach_of(const plan::Capacity& capacity, const std::vector<LimitStep>& steps) {
    Reach reach;
    for (const LimitStep& step : steps) {
        reach.wide = std::max(reach.wide, step.to);
        reach.high = std::max(reach.high, step.fits_up_to);
    }
    const Reach envelope = reach;
    const auto stretch = [](double reached, double envelope_to, double to) {
        return std::max(reached, envelope_to > 0 ? std::min(to, envelope_to * k_farthest) : to);
    };
    for (const plan::JobPoint& point : capacity.job) {
        reach.wide = stretch(reach.wide, envelope.wide, along_mm(capacity, point));
        reach.high = stretch(reach.high, envelope.high, mm(point.thickness));
    }
    // Nothing fits, and nothing is asked for.
    const double least = mm(inches(1.0));
    reach.wide = (reach.wide > 0 ? reach.wide : least) * k_head_room;
    reach.high = (reach.high > 0 ? reach.high : least) * k_head_room;
    if (!capacity.bars.empty())
        reach.wide = static_cast<double>(capacity.bars.size());
    return reach;
}

} // namespace

LimitsChart limits_chart(const plan::Capacity& capacity, PrintStyle style) {
    const bool bars = !capacity.bars.empty();
    const char* unit = style.system == UnitSystem::inch ? ", in" : ", mm";
    LimitsChart chart;
    chart.axis = plan::capacity_axis_words(capacity.kind);
    if (!bars)
        chart.x_title = chart.axis + unit;
    chart.y_title = std::string(bars ? "size" : "thickness") + unit;
    chart.description = "Greatest " + chart.y_title + " over " + chart.axis;
    chart.steps = bars ? columns_mm(capacity.bars) : envelope_mm(capacity.points);
    const Reach reach = reach_of(capacity, chart.steps);
    for (LimitStep& step : chart.steps)
        step = {step.from / reach.wide,
                step.to / reach.wide,
                step.fits / reach.high,
                step.fits_up_to / reach.high,
                step.least / reach.high};
    for (const plan::JobPoint& point : capacity.job)
        chart.job.push_back({std::min(1.0, along_mm(capacity, point) / reach.wide),
                             std::min(1.0, mm(point.thickness) / reach.high)});
    for (std::size_t i = 0; i < capacity.bars.size(); ++i)
        chart.x_ticks.push_back(
            {(static_cast<double>(i) + 0.5) / reach.wide,
             capacity.bars[i].shape == section::Shape::round ? "Round" : "Square"});
    if (!bars)
        chart.x_ticks = ticks(reach.wide, style);
    chart.y_ticks = ticks(reach.high, style);
    return chart;
}

} // namespace treadle::sheet
