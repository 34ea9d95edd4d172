#include "ui/views/shop_view.h"

#include "ui/views/attachment_form.h"
#include "ui/views/crib_form.h"
#include "ui/views/machine_form.h"
#include "ui/views/power_form.h"
#include "ui/views/rack_form.h"
#include "ui/views/shop_draft.h"
#include "ui/views/shop_pages.h"
#include "ui/views/station_form.h"
#include "ui/views/times_form.h"
#include "ui/views/trials_form.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

void open_page(Desk& desk, int index) {
    desk.state.shop_page = index;
    desk.state.tool = 0;
    desk.ui.want_frame();
}

void page_list(Desk& desk, const ui::Rect& rect, const std::vector<ShopPage>& pages) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = ui::side_ground(ui, rect);
    ui::ScrollArea area(ui, "pages", rest, "Shop");
    ui::Rect content = area.content();
    const float height = ui::row_height(ui, 62);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        ui::ListRow row;
        row.title = pages[i].title;
        row.detail = pages[i].detail;
        const std::string spoken = pages[i].title + ", " + pages[i].detail;
        row.spoken = spoken;
        row.selected = static_cast<int>(i) == desk.state.shop_page;
        if (ui::list_row(ui, "page-" + std::to_string(i), content.cut_top(height), row).pressed)
            open_page(desk, static_cast<int>(i));
    }
    area.finish(content.y);
}

void page_choice(Desk& desk, const ui::Rect& rect, const std::vector<ShopPage>& pages) {
    std::vector<std::string> names;
    for (const ShopPage& page : pages)
        names.push_back(page.title + " (" + page.detail + ")");
    ui::Field field;
    field.label = "Shown";
    if (const auto chosen = ui::choice(desk.ui, "page", rect, field, names, desk.state.shop_page))
        open_page(desk, *chosen);
}

float page_form(Desk& desk, const ui::Rect& rect, const ShopPage& page) {
    switch (page.kind) {
    case ShopPage::Kind::machine:
        return machine_form(desk, rect);
    case ShopPage::Kind::station:
        return station_form(desk, rect, page.index);
    case ShopPage::Kind::attachment:
        return attachment_form(desk, rect, page.index);
    case ShopPage::Kind::crib:
        return crib_form(desk, rect, static_cast<CribPage>(page.index));
    case ShopPage::Kind::rack:
        return rack_form(desk, rect);
    case ShopPage::Kind::rules:
        return rules_form(desk, rect);
    case ShopPage::Kind::times:
        return times_form(desk, rect);
    case ShopPage::Kind::power:
        return power_form(desk, rect);
    case ShopPage::Kind::trials:
        return trials_form(desk, rect);
    }
    return rect.y;
}

} // namespace

void shop_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "shop");
    const std::vector<ShopPage> pages = shop_pages(desk.session.shop());
    desk.state.shop_page = std::clamp(desk.state.shop_page, 0, static_cast<int>(pages.size()) - 1);
    ui::Rect rest = rect;
    if (ui.is_narrow())
        page_choice(
            desk, rest.cut_top(ui::field_height(ui, false) + 8).inset(ui.size().margin, 4), pages);
    else
        page_list(desk, rest.cut_left(std::min(300 * ui.size().text_scale, rest.w * 0.38F)), pages);
    const ShopPage& page = pages[static_cast<std::size_t>(desk.state.shop_page)];
    const ui::Scope page_scope(ui, std::to_string(desk.state.shop_page));
    ui::ScrollArea area(ui, "form", rest, page.title);
    ui::Rect content = area.content().inset(ui.size().margin, 0);
    content.w = std::min(content.w, 900 * ui.size().text_scale);
    content.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::title) + 6;
    ui::heading(ui,
                {content.x, content.y, content.w, height},
                page.title,
                1,
                {ui::TextSize::title, true, ui::Ink::ink, ui::Align::left});
    content.y += height;
    content.y += ui::paragraph(ui,
                               content,
                               page.detail,
                               {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left}) +
                 ui.size().gap;
    area.finish(page_form(desk, content, page) + ui.size().margin);
}

} // namespace treadle::views
