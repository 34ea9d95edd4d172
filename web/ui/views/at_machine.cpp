#include "ui/views/at_machine.h"

#include "ui/views/at_machine_pause.h"
#include "ui/views/at_machine_step.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

using Do = AtMachine::Do;

// Gloves and thumbs: the sizes of the shop, whatever the page has elsewhere.
constexpr float k_least_key = 56;
constexpr float k_least_primary = 80;
constexpr float k_bar_key = 104;
constexpr float k_key_gap = 12;
constexpr float k_wide_count = 132;
constexpr float k_least_next = 150;

float key_height(const ui::Ui& ui) { return std::max(k_least_key, ui.size().target); }

/// A phone held upright: name and number of the step stand below the keys.
bool is_slim(const ui::Ui& ui) { return ui.screen().w < 360; }

bool is_paused(const AtMachineBoard& board) { return board.is_held || board.came_back; }
bool is_working(const AtMachineBoard& board) {
    return !is_paused(board) && !board.at_end && !board.run.list.steps.empty();
}

void ask(Desk& desk, Do what) {
    desk.ask(AtMachine{what, {}});
    desk.ui.want_frame();
}

void press(Desk& desk, const char* id, const ui::Rect& rect, const ui::Button& button, Do what) {
    if (ui::button(desk.ui, id, rect, button))
        ask(desk, what);
}

void top(Desk& desk, ui::Rect rect) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    ui.rule(rect.x, rect.bottom(), rect.right(), rect.bottom(), ui::Ink::ink, ui.size().stroke);
    rect = {rect.x + ui.size().margin,
            rect.y + k_key_gap / 2,
            rect.w - 2 * ui.size().margin,
            key_height(ui)};
    ui::Button leave;
    leave.label = ui.is_narrow() ? "Leave" : "Leave the machine";
    leave.name = "Leave the machine";
    press(desk,
          "leave",
          rect.cut_right(ui::button_width(ui, leave), ui.size().danger_gap),
          leave,
          Do::leave);
    if (is_working(board)) {
        ui::Button hold;
        hold.label = "Hold";
        hold.name = "Hold the work here";
        press(desk, "hold", rect.cut_right(ui::button_width(ui, hold), k_key_gap), hold, Do::hold);
    }
    const bool has_step = !board.run.list.steps.empty() && !board.at_end;
    const std::string mark = has_step ? board.words.mark : desk.session.job().name;
    const ui::TextStyle bold{ui::TextSize::title, true, ui::Ink::ink, ui::Align::left};
    if (ui.is_narrow()) {
        const ui::TextStyle smaller{ui::TextSize::large, true, ui::Ink::ink, ui::Align::left};
        if (is_slim(ui)) // no room beside the keys
            rect = {ui.size().margin,
                    rect.bottom() + k_key_gap / 2,
                    ui.screen().w - 2 * ui.size().margin,
                    k_least_key};
        ui::heading(ui, rect.cut_top(rect.h * 0.56F), mark, 1, smaller);
        ui::text(ui, rect, has_step ? board.words.place : std::string(), {ui::TextSize::small});
        return;
    }
    const float wide = std::min(rect.w, ui::text_width(ui, mark, bold) + 16);
    ui::heading(ui, rect.cut_left(wide), mark, 1, bold);
    if (has_step)
        ui::text(ui, rect, board.words.place, {ui::TextSize::large});
}

void counter(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    ui.add_node(
        "count", ui::Role::words, rect, board.count + " " + board.of + " " + board.count_of);
    const ui::TextStyle large{ui::TextSize::figure, true, ui::Ink::ink, ui::Align::left};
    const ui::TextStyle beside{ui::TextSize::large, false, ui::Ink::ink, ui::Align::left};
    ui::Rect rest = rect;
    const ui::Rect below = rest.cut_bottom(ui::line_height(ui, ui::TextSize::small));
    const float number = ui::text_width(ui, board.count, large);
    const float of = ui::text_width(ui, board.of, beside);
    const bool together = number + 8 + of <= rect.w;
    if (together) {
        const float x = rest.x + (rest.w - number - 8 - of) / 2;
        ui::draw_text(ui, {x, rest.y, number, rest.h}, board.count, large);
        ui::draw_text(ui, {x + number + 8, rest.y + 12, of, rest.h - 12}, board.of, beside);
    } else { // a count of hundreds
        const ui::TextStyle smaller{ui::TextSize::title, true, ui::Ink::ink, ui::Align::centre};
        ui::draw_text(ui, rest.cut_top(rest.h / 2), board.count, smaller);
        ui::draw_text(
            ui, rest, board.of, {ui::TextSize::body, false, ui::Ink::ink, ui::Align::centre});
    }
    ui::draw_text(
        ui, below, board.count_of, {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::centre});
}

ui::Button sign(ui::Icon icon, const std::string& name, bool enabled, const char* why_not) {
    ui::Button button;
    button.label = name;
    button.name = name;
    button.icon = icon;
    button.icon_only = true;
    button.size = ui::TextSize::figure;
    button.enabled = enabled;
    button.why_not = why_not;
    return button;
}

void working_keys(Desk& desk, const AtMachineKeys& keys) {
    const AtMachineBoard& board = desk.at_machine;
    const bool ticks = plan::next_tick(board.run, board.run.at) != plan::k_none;
    press(desk,
          "minus",
          keys.minus,
          sign(ui::Icon::minus, board.minus_name, board.can_take_back, "Nothing is done here yet"),
          Do::take_back);
    press(desk,
          "plus",
          keys.plus,
          sign(ticks ? ui::Icon::tick : ui::Icon::plus,
               board.plus_name,
               board.can_add,
               "All of this step is done"),
          Do::one_more);
    counter(desk, keys.count);
    ui::Button next;
    const bool last = board.run.at + 1 == static_cast<int>(board.run.list.steps.size());
    next.label = last ? "Done" : "Next";
    next.name = last ? "Done: to the end" : "Next step";
    next.look = ui::KeyLook::primary;
    next.size = ui::TextSize::title;
    press(desk, "next", keys.next, next, Do::next);
}

void back_key(Desk& desk, const AtMachineKeys& keys, bool enabled) {
    ui::Button back;
    back.label = "Back";
    back.name = "Back one step";
    back.size = ui::TextSize::large;
    back.enabled = enabled;
    back.why_not = "This is the first step";
    press(desk, "back", keys.back, back, Do::back);
}

/// The main key stands where Next stands, so that the thumb stays.
void paused_keys(Desk& desk, const AtMachineKeys& keys) {
    ui::Button go_on;
    go_on.label = "Go on";
    go_on.look = ui::KeyLook::primary;
    go_on.size = ui::TextSize::title;
    press(desk, "next", keys.next, go_on, Do::go_on);
    ui::Button check;
    check.label = "Check from start";
    // Over the keys that rest: Back and minus in one row, the whole upper row of two.
    const bool one_row = keys.minus.y == keys.back.y;
    const ui::Rect& other = one_row ? keys.back : keys.plus;
    const float left = std::min(other.x, keys.minus.x);
    const float right = std::max(other.right(), keys.minus.right());
    const ui::Rect wide{left, keys.minus.y, right - left, keys.minus.h};
    press(desk, "back", wide, check, Do::check_from_start);
}

void end_keys(Desk& desk, const AtMachineKeys& keys) {
    ui::Button done;
    done.label = "Done";
    done.name = "Done: leave the machine";
    done.look = ui::KeyLook::primary;
    done.size = ui::TextSize::title;
    press(desk, "next", keys.next, done, Do::leave);
    if (!desk.at_machine.run.list.steps.empty())
        back_key(desk, keys, true);
}

void keyboard(Desk& desk) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    const auto on = [&](const char* key, Do what, bool may) {
        if (ui.key(key) && may)
            ask(desk, what);
    };
    const bool working = is_working(board);
    for (const char* key : {" ", "Enter"})
        on(key, working ? Do::one_more : Do::go_on, working ? board.can_add : is_paused(board));
    on("Backspace", Do::take_back, working && board.can_take_back);
    on("ArrowRight", Do::next, working);
    on("ArrowLeft", Do::back, working || board.at_end);
    on("Escape", Do::hold, working);
}

} // namespace

AtMachineKeys at_machine_keys(const ui::Ui& ui, const ui::Rect& screen, bool left_handed) {
    AtMachineKeys keys;
    const float margin = ui.is_narrow() ? k_key_gap / 2 : ui.size().margin;
    const bool two_rows = ui.is_narrow();
    const float row = std::max(k_least_primary, two_rows ? k_least_primary : k_bar_key);
    ui::Rect rest = screen;
    keys.bar = rest.cut_bottom(two_rows ? 2 * row + 3 * k_key_gap : row + 2 * k_key_gap);
    ui::Rect inner = keys.bar.inset(margin, k_key_gap);
    const auto from_thumb = [&](ui::Rect& of, float width, float gap) {
        return left_handed ? of.cut_left(width, gap) : of.cut_right(width, gap);
    };
    if (two_rows) {
        ui::Rect upper = inner.cut_top(row, k_key_gap);
        keys.plus = from_thumb(upper, std::min(k_bar_key, upper.w * 0.33F), k_key_gap);
        keys.minus = left_handed ? upper.cut_right(keys.plus.w, k_key_gap)
                                 : upper.cut_left(keys.plus.w, k_key_gap);
        keys.count = upper;
        keys.next = from_thumb(inner, inner.w * 0.58F, k_key_gap);
        keys.back = inner;
        return keys;
    }
    keys.next = from_thumb(inner, std::max(k_least_next, inner.w * 0.26F), ui.size().danger_gap);
    keys.plus = from_thumb(inner, k_bar_key, k_key_gap);
    keys.count = from_thumb(inner, k_wide_count, k_key_gap);
    keys.minus = from_thumb(inner, k_bar_key, k_key_gap);
    // Back keeps to the far edge, away from what is tapped often.
    keys.back = left_handed ? inner.cut_right(std::min(inner.w, k_least_next))
                            : inner.cut_left(std::min(inner.w, k_least_next));
    return keys;
}

void at_machine(Desk& desk, const ui::Rect& screen) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    const ui::Scope scope(ui, "at-machine");
    keyboard(desk);
    const AtMachineKeys keys = at_machine_keys(ui, screen, desk.state.screen.hand == Hand::left);
    ui::Rect rest = screen;
    rest.cut_bottom(keys.bar.h);
    top(desk, rest.cut_top(key_height(ui) + k_key_gap + (is_slim(ui) ? k_least_key : 0)));
    ui.rule(keys.bar.x, keys.bar.y, keys.bar.right(), keys.bar.y, ui::Ink::ink, ui.size().stroke);
    if (is_working(board)) {
        at_machine_step(desk, rest);
        back_key(desk, keys, board.run.at > 0);
        working_keys(desk, keys);
    } else if (is_paused(board)) {
        at_machine_pause(desk, rest);
        paused_keys(desk, keys);
    } else {
        at_machine_end(desk, rest);
        end_keys(desk, keys);
    }
}

} // namespace treadle::views
