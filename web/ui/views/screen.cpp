#include "ui/views/screen.h"

#include "ui/views/about_view.h"
#include "ui/views/at_machine.h"
#include "ui/views/at_machine_pause.h"
#include "ui/views/find_sheet.h"
#include "ui/views/help_view.h"
#include "ui/views/jobs_view.h"
#include "ui/views/lesson_view.h"
#include "ui/views/limits_view.h"
#include "ui/views/next_action.h"
#include "ui/views/order_view.h"
#include "ui/views/parts_edit.h"
#include "ui/views/parts_place.h"
#include "ui/views/sheets_view.h"
#include "ui/views/shop_view.h"
#include "ui/views/stock_view.h"
#include "ui/views/store_strip.h"
#include "ui/views/top_bar.h"
#include "ui/views/version_bar.h"

#include <utility>

namespace treadle::views {

namespace {

void keyboard(Desk& desk) {
    using Mod = ui::Ui::Mod;
    if (desk.ui.key("z", Mod::control))
        desk.ask(Wish::undo);
    if (desk.ui.key("z", Mod::control_shift) || desk.ui.key("Z", Mod::control_shift) ||
        desk.ui.key("y", Mod::control))
        desk.ask(Wish::redo);
    if (desk.ui.key("k", Mod::control))
        open_find(desk);
    move_by_keyboard(desk);
}

void place(Desk& desk, const ui::Rect& rect) {
    switch (desk.state.place) {
    case Place::jobs:
        return jobs_view(desk, rect);
    case Place::parts:
        return parts_place(desk, rect);
    case Place::order:
        return order_view(desk, rect);
    case Place::bars:
        return stock_view(desk, rect);
    case Place::limits:
        return limits_view(desk, rect);
    case Place::shop:
        return shop_view(desk, rect);
    case Place::sheets:
        return sheets_view(desk, rect);
    case Place::help:
        return help_view(desk, rect);
    case Place::at_machine:
        return at_machine(desk, rect);
    case Place::lessons:
        return lesson_view(desk, rect, nullptr);
    }
}

} // namespace

void screen(Desk& desk, Desk* shown) {
    ui::Rect rest = desk.ui.screen();
    desk.readings.refresh(desk.session);
    if (desk.state.place == Place::at_machine) { // the whole screen, and no tabs
        at_machine(desk, rest);
        return notice(desk);
    }
    if (desk.state.place == Place::lessons) { // the same
        rest.cut_top(messages(desk, rest));
        lesson_view(desk, rest, shown);
        return notice(desk);
    }
    keyboard(desk);
    if (!desk.state.focus_next.empty())
        desk.ui.move_focus(std::exchange(desk.state.focus_next, {}));
    top_bar(desk, rest.cut_top(top_bar_height(desk.ui)));
    rest.cut_top(store_strip(desk, rest));
    rest.cut_top(messages(desk, rest));
    rest.cut_top(version_bar(desk, rest));
    rest.cut_top(work_on_hold(desk, rest));
    rest.cut_top(first_hint(desk, rest));
    place(desk, rest);
    find_sheet(desk);
    notice(desk);
}

} // namespace treadle::views
