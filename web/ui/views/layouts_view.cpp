#include "ui/views/layouts_view.h"

#include "base/text.h"
#include "sheet/drawing_layout.h"

#include "ui/views/layouts_form.h"
#include "ui/views/paint.h"
#include "ui/views/working_view.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr float k_room_for_both = 900; ///< fields beside what they make
constexpr ui::TextStyle k_head{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};

void close(Desk& desk) {
    desk.state.layouts.open = false;
    desk.ui.want_frame();
}

float title(Desk& desk, const ui::Rect& rect, std::string_view words) {
    const float height = ui::line_height(desk.ui, ui::TextSize::body) + 6;
    ui::heading(desk.ui, {rect.x, rect.y, rect.w, height}, words, 2, k_head);
    return rect.y + height;
}

/// A key on a line of its own; true when it was pressed.
bool key_line(Desk& desk, ui::Rect& rest, std::string_view id, const ui::Button& key) {
    ui::Ui& ui = desk.ui;
    const ui::Rect place{
        rest.x, rest.y, std::min(rest.w, ui::button_width(ui, key)), ui.size().target};
    rest.y = place.bottom() + ui.size().danger_gap;
    return ui::button(ui, id, place, key);
}

/// The layouts of the job, one row each. Returns where it ended.
float rows(Desk& desk, const ui::Rect& rect, const std::vector<edit::LayoutRow>& list) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    if (list.empty())
        return rest.y;
    rest.y = title(desk, rest, "Layouts of this job");
    const float height = ui::row_height(ui, 56);
    std::string wanted;
    for (const edit::LayoutRow& row : list) {
        ui::ListRow entry;
        const std::string detail =
            std::to_string(row.parts) + " linked" +
            (row.detached > 0 ? ", " + std::to_string(row.detached) + " by hand" : "");
        const std::string spoken = "Layout " + row.mark + ", " + row.title + ", " + detail;
        entry.title = row.mark;
        entry.beside = row.title;
        entry.detail = detail;
        entry.spoken = spoken;
        entry.selected = row.id == desk.state.layouts.id;
        if (ui::list_row(ui, "layout-" + row.id, rest.cut_top(height), entry).pressed)
            wanted = row.id;
    }
    ui::Button fresh;
    fresh.label = "New layout";
    if (key_line(desk, rest, "new-layout", fresh))
        open_new_layout(desk);
    if (!wanted.empty())
        open_layout(desk, wanted);
    return rest.y;
}

/// What puts the layout into the job, or changes and removes it there. Returns where it ended.
float keys(Desk& desk, const ui::Rect& rect, bool can_make) {
    const LayoutBoard& board = desk.state.layouts;
    ui::Rect rest = rect;
    ui::Button make;
    make.look = ui::KeyLook::primary;
    make.label = board.id.empty() ? "Add to the job" : "Make its parts follow";
    make.enabled = can_make;
    make.why_not = "Nothing can be made of these values yet.";
    if (key_line(desk, rest, "make", make)) {
        if (board.id.empty()) {
            desk.ask(PlainEdit{edit::AddLayout{board.kind, board.mark, board.values}, "", true});
            close(desk);
        } else {
            desk.ask(PlainEdit{edit::ChangeLayout{board.id, board.mark, board.values}, "", false});
        }
    }
    if (board.id.empty())
        return rest.y;
    for (const bool with_parts : {false, true}) {
        ui::Button remove;
        remove.label = with_parts ? "Remove it with its parts" : "Remove it, keep the parts";
        remove.look = with_parts ? ui::KeyLook::danger : ui::KeyLook::normal;
        if (key_line(desk, rest, with_parts ? "remove-all" : "remove", remove)) {
            desk.ask(PlainEdit{edit::RemoveLayout{board.id, with_parts}, "", false});
            close(desk);
        }
    }
    return rest.y;
}

float rules(Desk& desk, const ui::Rect& rect, const LayoutsReading& reading) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    if (reading.made.rules.empty())
        return rest.y;
    rest.y = title(desk, rest, "Rules");
    for (const edit::LayoutRuleRow& rule : reading.made.rules) {
        const std::string words = base::capital(rule.words) + ": " + rule.answer + ".";
        // Words and not a message: a screen reader would announce all of them at each figure typed.
        const float line = ui::line_height(ui, ui::TextSize::body);
        ui::draw_verdict_shape(ui, verdict_of(rule.held), rest.x + line / 2, rest.y + line / 2, 16);
        ui::Rect body = rest;
        body.cut_left(line + 8);
        rest.y += ui::paragraph(
            ui, body, words, {ui::TextSize::body, false, ui::ink_of(verdict_of(rule.held))});
        const std::string source = rule.source + " (" + rule.evidence + ")" +
                                   (rule.remark.empty() ? "" : ". " + rule.remark);
        rest.y += ui::paragraph(ui, rest, source, k_quiet) + ui.size().gap / 2;
    }
    return rest.y + ui.size().gap;
}

float parts(Desk& desk, const ui::Rect& rect, const LayoutsReading& reading) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    rest.y = title(desk, rest, "Parts that it makes");
    for (const edit::LayoutPartRow& part : reading.made.parts) {
        rest.y += ui::paragraph(
            ui, rest, part.mark + " \xC3\x97 " + std::to_string(part.count) + ": " + part.words);
        rest.y += ui::paragraph(ui, rest, part.note, k_quiet) + ui.size().gap / 2;
    }
    for (const std::string& words : reading.made.templates)
        rest.y += ui::paragraph(ui, rest, words) + ui.size().gap / 2;
    for (const edit::LayoutFigureRow& figure : reading.made.figures)
        rest.y += ui::paragraph(ui, rest, base::capital(figure.words) + ": " + figure.value);
    for (const std::string& marks : reading.made.marks)
        rest.y += ui::paragraph(ui, rest, base::capital(marks)) + ui.size().gap / 2;
    return rest.y + ui.size().gap;
}

float workings(Desk& desk, const ui::Rect& rect, const LayoutsReading& reading) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    const float target = ui.size().target;
    LayoutBoard& board = desk.state.layouts;
    if (ui::toggle(ui, "workings", {rest.x, rest.y, rest.w, target}, "Workings", board.workings)) {
        board.workings = !board.workings;
        ui.want_frame();
    }
    rest.y += target + ui.size().gap;
    if (board.workings)
        for (const std::vector<std::string>& lines : reading.workings)
            rest.y = one_working(desk, rest, lines) + ui.size().gap;
    return rest.y;
}

/// Drawing, rules, parts and figures, or why there are none. Returns where it ended.
float outcome(Desk& desk, const ui::Rect& rect, LayoutsReading& reading) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    if (reading.made.refusal) {
        std::string field = reading.made.refusal->field;
        std::replace(field.begin(), field.end(), '_', ' ');
        const std::string words =
            base::capital(field) + ": " + reading.made.refusal->reason +
            (reading.made.refusal->detail.empty() ? "" : " (" + reading.made.refusal->detail + ")");
        return rest.y + ui::message_line(ui, rest, ui::Verdict::not_known, words) + ui.size().gap;
    }
    constexpr float k_figures = 110; ///< room of the figures over and under it
    const float most = std::max(220.0F, ui.screen().h * 0.42F);
    const float high = std::clamp(rest.w * reading.high_by_wide + k_figures, 160.0F, most);
    const ui::Rect place{rest.x, rest.y, rest.w, high};
    const Picture& picture =
        reading.picture.in({place.w, place.h, type_of(ui)}, [&](sheet::PictureBox box) {
            return sheet::draw_layout(reading.made.elevation, desk.style(), box);
        });
    ui.add_node("picture", ui::Role::picture, place, reading.made.elevation.description);
    paint_silent(ui, place, picture);
    rest.y = place.bottom() + ui.size().gap;
    rest.y = rules(desk, rest, reading);
    rest.y = parts(desk, rest, reading);
    for (const std::string& words : reading.made.cautions)
        rest.y += ui::paragraph(ui, rest, words) + ui.size().gap / 2;
    return workings(desk, rest, reading);
}

float head(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const float height = std::max(ui.size().target, ui::line_height(ui, ui::TextSize::title) + 6);
    ui::Rect line{rect.x, rect.y, rect.w, height};
    ui::Button back;
    back.label = "Back to the parts";
    back.look = ui::KeyLook::quiet;
    if (ui::button(ui, "back", line.cut_right(ui::button_width(ui, back), 8), back))
        close(desk);
    const LayoutBoard& board = desk.state.layouts;
    const std::string words = board.id.empty() ? "A new layout" : "Layout " + board.mark;
    ui::heading(ui, line, words, 1, {ui::TextSize::title, true, ui::Ink::ink, ui::Align::left});
    return rect.y + height + ui.size().gap;
}

} // namespace

void layouts_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "layouts");
    ui::ScrollArea area(ui, "view", rect, "Layouts");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    rest.w = std::min(rest.w, 1280 * ui.size().text_scale);
    rest.y = head(desk, rest.moved(0, ui.size().gap));
    LayoutBoard& board = desk.state.layouts;
    // Undo may have taken the layout back that is on the board.
    if (!board.id.empty() && job::find_layout(desk.session.job().layouts, board.id) == nullptr)
        board.id.clear();
    ui::Rect right = rest;
    const bool both = rest.w >= k_room_for_both * ui.size().text_scale;
    if (both)
        right = rest.cut_right(rest.w * 0.52F, 24);
    const auto reading = [&]() -> LayoutsReading& {
        return desk.readings.layouts.of(desk.session, board, desk.readings.source_title);
    };
    const std::vector<edit::LayoutRow> list = reading().rows;
    rest.y = rows(desk, rest, list);
    rest.y = layouts_form(desk, rest) + ui.size().gap;
    rest.y = keys(desk, rest, !reading().made.refusal.has_value());
    if (!both)
        right.y = rest.y + ui.size().gap;
    const float bottom = outcome(desk, right, reading());
    area.finish(std::max(rest.y, bottom) + ui.size().margin);
}

float origin_line(Desk& desk, const ui::Rect& rect, const std::string& part_id) {
    const edit::PartOrigin origin = edit::part_origin(desk.session.job(), part_id);
    if (origin.words.empty())
        return rect.y;
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    rest.y += ui::paragraph(ui, rest, "Made by " + origin.words, k_quiet);
    ui::Rect line{rest.x, rest.y, rest.w, ui.size().target};
    ui::Button open;
    open.label = "Open its layout";
    if (ui::button(ui, "open-layout", line.cut_left(ui::button_width(ui, open), 12), open))
        open_layout(desk, origin.layout);
    ui::Button detach;
    detach.label = "Detach";
    detach.name = "Detach from its layout";
    if (!origin.detached &&
        ui::button(ui, "detach", line.cut_left(ui::button_width(ui, detach), 12), detach))
        desk.ask(PlainEdit{edit::DetachPart{part_id}, part_id, false});
    return line.bottom() + ui.size().gap;
}

} // namespace treadle::views
