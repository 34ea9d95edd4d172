#include "ui/views/limits_picture.h"

#include "ui/views/legend.h"
#include "ui/views/paint.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace treadle::views {

namespace {

/// Amber, as the points whose certificate must be read.
constexpr ui::Ink k_hatch = ui::Ink::up_to;

/// Draws the chart; where its axes lie on the screen.
ui::Rect axes(ui::Ui& ui, const ui::Rect& rect, LimitsReading& reading) {
    const PictureRoom room{rect.w, rect.h, type_of(ui)};
    const Picture& picture = reading.picture.in(room, [&](sheet::PictureBox box) {
        sheet::LimitsDrawing made = sheet::draw_limits(reading.chart, box);
        reading.axes_low = made.low;
        reading.axes_high = made.high;
        return std::move(made.drawing);
    });
    const ui::Surface surface = paint_silent(ui, rect, picture, k_hatch);
    const auto on_screen = [&](const sheet::Point& point) {
        return surface.on_screen(
            {quantity::to_millimetres(point.x), quantity::to_millimetres(point.y)});
    };
    const ui::PointMm low = on_screen(reading.axes_low);
    const ui::PointMm high = on_screen(reading.axes_high);
    return {static_cast<float>(low.x),
            static_cast<float>(high.y),
            static_cast<float>(high.x - low.x),
            static_cast<float>(low.y - high.y)};
}

template <bool Any>
sheet::Drawing sample(sheet::PictureBox box) {
    return sheet::draw_limits_sample(Any, box);
}

} // namespace

std::optional<std::size_t>
limits_picture(Desk& desk, const ui::Rect& rect, LimitsReading& reading) {
    ui::Ui& ui = desk.ui;
    const float line = ui::line_height(ui, ui::TextSize::small);
    ui.add_node("picture", ui::Role::picture, rect, reading.spoken);
    const ui::Rect plot = axes(ui, rect, reading);
    std::optional<std::size_t> pressed;
    const float finger = std::max(44.0F, ui.size().target);
    const auto& clusters = reading.clusters(plot.w,
                                            plot.h,
                                            {0,
                                             0,
                                             std::max(finger + ui.size().gap, 3.4F * line),
                                             std::max(finger + ui.size().gap, 2 * line)});
    for (const LimitCluster& cluster : clusters) {
        const LimitPoint& worst = reading.points[cluster.first];
        const ui::Rect place{plot.x + cluster.x - finger / 2,
                             plot.bottom() - cluster.y - finger / 2,
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

float limits_legend(Desk& desk, const ui::Rect& rect, LimitsReading& reading) {
    constexpr std::array k_samples = {
        Sample{"Any metal of the grade fits", sample<true>},
        Sample{"Only with a certificate that says it is weak enough", sample<false>}};
    return legend(desk.ui, rect, k_samples, reading.samples, k_hatch);
}

} // namespace treadle::views
