#include "ui/views/at_machine_pause.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr float k_gap = 16;
constexpr float k_most_wide = 720;
constexpr float k_least_key = 56;
constexpr ui::TextStyle k_title{ui::TextSize::title, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_large{ui::TextSize::large, false, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_quiet{ui::TextSize::body, false, ui::Ink::quiet, ui::Align::left};

ui::Rect column(Desk& desk, const ui::Rect& content) {
    ui::Rect rest = content.inset(desk.ui.size().margin, 0);
    rest.w = std::min(rest.w, k_most_wide * desk.ui.size().text_scale);
    rest.y += k_gap;
    return rest;
}

float not_kept(Desk& desk, ui::Rect rest) {
    if (!desk.at_machine.not_kept.empty())
        rest.y +=
            ui::message_line(desk.ui, rest, ui::Verdict::does_not_fit, desk.at_machine.not_kept) +
            k_gap;
    return rest.y;
}

float note_field(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    ui::Field field;
    field.label = "Note for whoever goes on";
    field.value = desk.at_machine.note;
    const float height = ui::field_height(ui, false);
    if (const auto text = ui::text_field(ui, "note", rest.cut_top(height), field))
        desk.ask(AtMachine{AtMachine::Do::note, *text});
    return rest.y + k_gap;
}

float hand(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const float height = std::max(k_least_key, ui.size().target);
    ui::Rect line = rest.cut_top(height);
    line.w = std::min(line.w, 420 * ui.size().text_scale);
    const bool left = desk.state.screen.hand == Hand::left;
    if (ui::toggle(ui, "hand", line, "Keys for the left hand", left)) {
        ScreenWishes wishes = desk.state.screen;
        wishes.hand = left ? Hand::right : Hand::left;
        desk.ask(wishes);
    }
    return rest.y + k_gap;
}

} // namespace

void at_machine_pause(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    ui::ScrollArea area(ui, "pause", rect, "Work on hold");
    ui::Rect rest = column(desk, area.content());
    rest.y += ui::paragraph(ui,
                            rest,
                            board.is_held ? "On hold since " + board.when
                                          : std::string("The page was closed meanwhile"),
                            k_title) +
              k_gap;
    rest.y += ui::paragraph(ui, rest, board.resume, k_large) + k_gap;
    if (board.changed)
        rest.y +=
            ui::message_line(
                ui, rest, ui::Verdict::up_to, "This step has changed since: check from start.") +
            k_gap;
    rest.y = not_kept(desk, rest);
    rest.y += ui::paragraph(ui,
                            rest,
                            "Check from start goes through the set-up line by line again; counted "
                            "pieces stay counted.",
                            k_quiet) +
              k_gap;
    if (board.is_held)
        rest.y = note_field(desk, rest);
    rest.y = hand(desk, rest);
    area.finish(rest.y);
}

void at_machine_end(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    ui::ScrollArea area(ui, "end", rect, "End of the work");
    ui::Rect rest = column(desk, area.content());
    const bool none = board.run.list.steps.empty();
    rest.y += ui::paragraph(ui,
                            rest,
                            none                 ? "Nothing of this job can be made here yet"
                            : board.open.empty() ? "Every step is done"
                                                 : "The last step is behind you",
                            k_title) +
              k_gap;
    if (!board.open.empty())
        rest.y += ui::message_line(ui, rest, ui::Verdict::up_to, board.open) + k_gap;
    rest.y = not_kept(desk, rest);
    if (!board.not_here.empty())
        rest.y += ui::paragraph(ui, rest, "Not at this machine", k_large) + k_gap / 2;
    for (std::size_t i = 0; i < board.not_here.size(); ++i) {
        const bool unfit = board.run.list.not_here[i].outcome == plan::Outcome::does_not_fit;
        rest.y += ui::message_line(ui,
                                   rest,
                                   unfit ? ui::Verdict::does_not_fit : ui::Verdict::not_known,
                                   board.not_here[i]) +
                  8;
    }
    area.finish(rest.y + k_gap);
}

float work_on_hold(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    if (!board.is_made || !board.is_held)
        return 0;
    const ui::Scope scope(ui, "on-hold");
    ui::Button go_on;
    go_on.label = "To the machine";
    go_on.name = "To the machine, where the work is on hold";
    const std::string words = "On hold at the machine since " + board.when + ". " + board.resume;
    const float key = ui::button_width(ui, go_on);
    const float margin = ui.size().margin;
    const bool below = rect.w - key < 420 * ui.size().text_scale;
    const float width = rect.w - 2 * margin - (below ? 0 : key + k_gap);
    const float text = ui::paragraph_height(ui, width, words);
    const float target = ui.size().target;
    const ui::Rect strip{rect.x,
                         rect.y,
                         rect.w,
                         k_gap + (below ? text + target + k_gap / 2 : std::max(text, target))};
    ui.fill(strip, ui::Ink::steel);
    ui.rule(strip.x, strip.bottom() - 1, strip.right(), strip.bottom() - 1, ui::Ink::ink, 1);
    ui::Rect inner = strip.inset(margin, k_gap / 2);
    const ui::Rect row = below ? inner.cut_bottom(target) : inner.cut_right(key, k_gap);
    ui::paragraph(ui, inner.inset(0, below ? 0 : std::max(0.0F, (inner.h - text) / 2)), words);
    if (ui::button(ui, "go-on", {row.x, row.y + (row.h - target) / 2, key, target}, go_on))
        desk.ask(AtMachine{AtMachine::Do::enter, {}});
    return strip.h;
}

} // namespace treadle::views
