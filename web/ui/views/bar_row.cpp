#include "ui/views/bar_row.h"

#include "sheet/stock_sheet.h"

#include "ui/views/legend.h"
#include "ui/views/paint.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

constexpr float k_edge = 4; ///< of a drawing, around the metal: it may lie in the row's gaps

float metal_height(const ui::Ui& ui) {
    return std::max(28.0F, ui::line_height(ui, ui::TextSize::small) + 10);
}

void paint_bar(Desk& desk,
               const ui::Rect& metal,
               const StockGroupReading& group,
               StockBarReading& bar,
               BarPlace at) {
    ui::Ui& ui = desk.ui;
    const ui::Rect box = metal.inset(-k_edge);
    const PictureRoom room{box.w, box.h, type_of(ui)};
    const Picture& picture = bar.picture.in(room, [&](sheet::PictureBox in) {
        return sheet::draw_bar_row(desk.stock.groups[at.group],
                                   desk.stock.plan.groups[at.group].bars[at.bar],
                                   desk.session.plan(),
                                   desk.style(),
                                   group.longest,
                                   in);
    });
    paint_silent(ui, box, picture);
}

template <sheet::BarStretch What>
sheet::Drawing sample(sheet::PictureBox box) {
    return sheet::draw_bar_sample(What, box);
}

} // namespace

float bar_row_height(const ui::Ui& ui) {
    return std::max(ui.size().target,
                    ui::line_height(ui, ui::TextSize::body) + metal_height(ui) + 4 +
                        2 * ui.size().gap);
}

bool bar_row(Desk& desk, const ui::Rect& rect, StockReading& reading, BarPlace at, bool open) {
    ui::Ui& ui = desk.ui;
    StockGroupReading& group = reading.groups[at.group];
    StockBarReading& bar = group.bars[at.bar];
    // Drawn edge to edge like the rows of a list, and like those with room for a finger between.
    ui::Node& node =
        ui.add_control("bar", ui::Role::row, rect.inset(0, ui.size().gap / 2), bar.spoken);
    node.on = open;
    const std::string full = node.id;
    if (ui.is_visible(rect)) {
        const ui::Touch touch = ui.touch(full);
        if (touch.pressed || touch.hovered)
            ui.fill(rect, ui::Ink::bench);
        ui::Rect rest = rect.inset(0, ui.size().gap);
        ui::Rect words = rest.cut_top(ui::line_height(ui, ui::TextSize::body), 4);
        const float used = ui::draw_text(ui, words, bar.title, {ui::TextSize::body, true});
        words.cut_left(used, 12);
        ui::draw_text(
            ui, words, bar.left, {ui::TextSize::body, false, ui::Ink::ink, ui::Align::right});
        paint_bar(desk, rest.cut_top(metal_height(ui)), group, bar, at);
        ui.draw_focus_ring(full, rect);
    }
    return ui.take_activation(full);
}

float bar_legend(Desk& desk, const ui::Rect& rect, StockReading& reading) {
    using sheet::BarStretch;
    constexpr std::array k_samples = {Sample{"piece", sample<BarStretch::piece>},
                                      Sample{"drop to keep", sample<BarStretch::kept>},
                                      Sample{"scrap", sample<BarStretch::scrap>},
                                      Sample{"kerf and trim", sample<BarStretch::lost>}};
    return legend(desk.ui, rect, k_samples, reading.samples);
}

} // namespace treadle::views
