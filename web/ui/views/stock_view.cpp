#include "ui/views/stock_view.h"

#include "ui/views/bar_row.h"
#include "ui/views/next_action.h"
#include "ui/views/parts_edit.h"
#include "ui/views/shop_paths.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_title{ui::TextSize::large, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_bold{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};
constexpr float k_indent = 12;
/// Up to so many bars a screen reader hears all of them at once, not only those about in sight.
constexpr std::size_t k_whole_list = 20;

/// The pieces of an open bar in cutting order, each with its running stop.
float cuts(Desk& desk, const ui::Rect& rect, const StockBarReading& bar) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect.inset(k_indent, 0);
    const float row = ui::row_height(ui, 44);
    for (std::size_t i = 0; i < bar.cuts.size(); ++i) {
        const StockCutReading& cut = bar.cuts[i];
        ui::ListRow entry;
        entry.title = cut.title;
        entry.beside = cut.stop;
        const std::string spoken = "Cut " + std::to_string(i + 1) + ": " + cut.spoken;
        entry.spoken = spoken;
        const ui::Rect place{rest.x, rest.y, rest.w, row};
        rest.y += row;
        if (ui::list_row(ui, "cut-" + std::to_string(i), place, entry).pressed)
            show_operation(desk, cut.part, plan::k_none);
    }
    return rest.y + ui::paragraph(ui, rest, bar.left, k_bold) + ui.size().gap;
}

/// Bars far out of sight keep their place undrawn, unless the list is short.
float bars(Desk& desk, const ui::Rect& rect, StockReading& reading, std::size_t number) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    const StockGroupReading& group = reading.groups[number];
    const float height = bar_row_height(ui);
    const std::string prefix = std::to_string(number) + "/bar-";
    const bool holds_open = desk.state.open_bar.compare(0, prefix.size(), prefix) == 0;
    for (std::size_t i = 0; i < group.bars.size(); ++i) {
        const StockBarReading& bar = group.bars[i];
        const ui::Rect place{rest.x, rest.y, rest.w, height};
        const bool near = group.bars.size() <= k_whole_list || ui.is_near(place);
        if (!near && !holds_open) {
            rest.y += height;
            continue;
        }
        const std::string id = prefix + std::to_string(i);
        const ui::Scope scope(ui, "bar-" + std::to_string(i));
        const bool open = desk.state.open_bar == id;
        rest.y += height;
        if (!near && !open)
            continue;
        if (bar_row(desk, place, reading, {number, i}, open)) {
            desk.state.open_bar = open ? "" : id;
            ui.want_frame();
        }
        if (open)
            rest.y = cuts(desk, rest, bar);
    }
    return rest.y;
}

/// How far the search is, while it runs.
float progress(Desk& desk, const ui::Rect& rect, const StockGroupReading& group) {
    ui::Ui& ui = desk.ui;
    const float line = ui::line_height(ui, ui::TextSize::small);
    ui::Rect place{rect.x, rect.y, std::min(rect.w, 320 * ui.size().text_scale), line};
    ui::text(ui, place.cut_right(64 * ui.size().text_scale, 8), group.percent, k_quiet);
    place = place.inset(0, line / 4);
    ui.outline(place, ui::Ink::quiet, 1);
    place.w *= static_cast<float>(group.share);
    ui.fill(place, ui::Ink::quiet);
    return rect.y + line + ui.size().gap;
}

float mend(Desk& desk, const ui::Rect& rect, const StockGroupReading& group) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, group.problem) + ui.size().gap;
    if (!group.shop_page && !group.part)
        return rest.y;
    ui::Button key;
    key.label = group.shop_page ? "Fill in under Shop" : "Open the part";
    const std::string name = std::string(key.label) + ": " + group.title;
    key.name = name;
    const ui::Rect place{rest.x, rest.y, ui::button_width(ui, key), ui.size().target};
    if (ui::button(ui, "mend", place, key)) {
        if (group.shop_page) {
            desk.state.place = Place::shop;
            desk.state.shop_page = *group.shop_page;
        } else {
            show_operation(desk, *group.part, plan::k_none);
        }
        ui.want_frame();
    }
    return place.bottom() + ui.size().gap;
}

/// The cutting list of one section, as it is read on the screen.
std::string as_text(const StockGroupReading& group) {
    std::string text = group.title + "\n" + group.parting + "\n" + group.proof + "\n";
    for (const std::string& line : group.use)
        text += line + "\n";
    text += group.sums + "\n";
    for (const StockBarReading& bar : group.bars) {
        text += "\n" + bar.title + ": " + bar.left + "\n";
        for (const StockCutReading& cut : bar.cuts)
            text += "  " + cut.title + (cut.stop.empty() ? "" : ", " + cut.stop) + "\n";
    }
    return text;
}

float copy_key(Desk& desk, const ui::Rect& rect, const StockGroupReading& group) {
    ui::Ui& ui = desk.ui;
    const std::string name = "Copy the list of " + group.title;
    ui::Button key;
    key.label = "Copy the list";
    key.name = name;
    key.size = ui::TextSize::small;
    const ui::Rect place{rect.x, rect.y, ui::button_width(ui, key), ui.size().target};
    if (ui::button(ui, "copy", place, key)) {
        desk.ask(CopyText{"The cutting list", as_text(group)});
        ui.want_frame();
    }
    return place.bottom() + ui.size().gap;
}

float one_group(Desk& desk, const ui::Rect& rect, StockReading& reading, std::size_t i) {
    ui::Ui& ui = desk.ui;
    const StockGroupReading& group = reading.groups[i];
    const ui::Scope scope(ui, "group-" + std::to_string(i));
    ui::Rect rest = rect;
    ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::ink, ui.size().stroke);
    rest.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::large) + 6;
    ui::heading(ui, {rest.x, rest.y, rest.w, height}, group.title, 2, k_title);
    rest.y += height;
    if (!group.problem.empty())
        return mend(desk, rest, group) + ui.size().margin;
    rest.y += ui::paragraph(ui, rest, group.parting, k_quiet);
    if (group.proven)
        rest.y += ui::message_line(ui, rest, ui::Verdict::fits, group.proof);
    else
        rest.y += ui::paragraph(ui, rest, group.proof, k_bold);
    rest.y += 4;
    if (group.looking)
        rest.y = progress(desk, rest, group);
    for (const std::string& caution : group.cautions)
        rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, caution);
    for (const std::string& line : group.use)
        rest.y += ui::paragraph(ui, rest, line);
    if (!group.sums.empty())
        rest.y += ui::paragraph(ui, rest, group.sums, k_quiet);
    rest.y = bars(desk, rest, reading, i) + ui.size().gap;
    return copy_key(desk, rest, group) + ui.size().margin;
}

float to_the_rack(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    ui::Button key;
    key.label = "Bars in the rack";
    key.name = "Bars in the rack and prices, under Shop";
    const ui::Rect place{rect.x, rect.y, ui::button_width(ui, key), ui.size().target};
    if (ui::button(ui, "rack", place, key)) {
        desk.state.place = Place::shop;
        desk.state.shop_page = shop_page_of("rack", desk.session.shop()).value_or(0);
        ui.want_frame();
    }
    return place.bottom() + ui.size().gap;
}

} // namespace

void stock_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "stock");
    StockReading& reading = desk.readings.stock.of(desk.session, desk.stock);
    ui::ScrollArea area(ui, "view", rect, "Bars");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    rest.w = std::min(rest.w, 1200 * ui.size().text_scale);
    rest.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::title) + 6;
    ui::heading(ui,
                {rest.x, rest.y, rest.w, height},
                "Bars",
                1,
                {ui::TextSize::title, true, ui::Ink::ink, ui::Align::left});
    rest.y += height;
    rest.y += ui::paragraph(ui, rest, reading.total, k_bold);
    if (!reading.sums.empty())
        rest.y += ui::paragraph(ui, rest, reading.sums, k_quiet);
    if (!reading.not_from_bars.empty())
        rest.y += ui::paragraph(ui, rest, reading.not_from_bars, k_quiet);
    rest.y += ui.size().gap;
    if (desk.session.job().parts.empty())
        return area.finish(
            no_parts_yet(desk, rest, "Bars are cut for the pieces of the parts; none is there."));
    rest.y = to_the_rack(desk, rest);
    rest.y += bar_legend(desk, rest, reading) + ui.size().gap;
    for (std::size_t i = 0; i < reading.groups.size(); ++i)
        rest.y = one_group(desk, rest, reading, i);
    area.finish(rest.y);
}

} // namespace treadle::views
