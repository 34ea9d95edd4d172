#include "ui/views/find_sheet.h"

#include "ui/views/find_commands.h"
#include "ui/views/help_view.h"
#include "ui/views/parts_edit.h"
#include "ui/views/shop_pages.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};
constexpr const char* k_field = "find/typed";

void close(Desk& desk) {
    desk.state.find_open = false;
    desk.state.find_typed.clear();
    desk.ui.want_frame();
}

std::string row_id(std::size_t number) { return "found-" + std::to_string(number); }

/// Arrows walk from the field down the lines and back; the keyboard's place is the mark.
void walk(Desk& desk, std::size_t count) {
    const bool down = desk.ui.key("ArrowDown");
    const bool up = desk.ui.key("ArrowUp");
    if ((!down && !up) || count == 0)
        return;
    std::size_t at = count; // in the field
    for (std::size_t i = 0; i < count; ++i)
        if (desk.ui.touch("find/" + row_id(i)).focused)
            at = i;
    if (down)
        at = at == count ? 0 : std::min(at + 1, count - 1);
    else
        at = at == count || at == 0 ? count : at - 1;
    desk.ui.move_focus(at == count ? k_field : "find/" + row_id(at));
}

ui::Rect paper_of(const ui::Ui& ui) {
    const ui::Rect& all = ui.screen();
    const float width = std::min(all.w - 16, 720 * ui.size().text_scale);
    const float top = all.h > 600 ? 40.0F : 8.0F;
    return {(all.w - width) / 2, top, width, all.h - 2 * top};
}

void field_and_close(Desk& desk, ui::Rect rect) {
    ui::Ui& ui = desk.ui;
    ui::Button key;
    key.label = "Close";
    key.name = "Close the search";
    ui::Rect right = rect.cut_right(ui::button_width(ui, key), ui.size().gap);
    ui::Field field;
    field.label = "Mark, size, figure or word";
    field.value = desk.state.find_typed;
    field.live = true;
    if (auto typed = ui::text_field(ui, "typed", rect, field))
        desk.state.find_typed = std::move(*typed);
    right.cut_top(right.h - std::max(44.0F, ui.size().target));
    if (ui::button(ui, "close", right, key))
        close(desk);
}

float no_words(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    rest.y +=
        ui::paragraph(
            ui, rest, "A mark, a size, a tool, a figure or a word of the trade. For example:") +
        ui.size().gap;
    constexpr std::array k_examples = {"tonnage", "13/16", "bend deduction", "print"};
    ui::Rect keys{rest.x, rest.y, rest.w, ui.size().target};
    for (const char* example : k_examples) {
        ui::Button key;
        key.label = example;
        const std::string name = std::string("Find ") + example;
        key.name = name;
        const float width = ui::button_width(ui, key);
        if (keys.w < width) {
            keys = {rest.x, keys.bottom() + ui.size().gap, rest.w, ui.size().target};
        }
        if (ui::button(ui, example, keys.cut_left(width, ui.size().gap), key)) {
            desk.state.find_typed = example;
            ui.want_frame();
        }
    }
    return keys.bottom() + ui.size().gap;
}

float nothing_found(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    rest.y += ui::paragraph(ui,
                            rest,
                            "Nothing here is called \"" + desk.state.find_typed +
                                "\". Try fewer letters, a size as on the tape (13/16, 20 mm), or "
                                "look among the terms.") +
              ui.size().gap;
    ui::Button key;
    key.label = "Open the terms";
    const ui::Rect place{rest.x, rest.y, ui::button_width(ui, key), ui.size().target};
    if (ui::button(ui, "terms", place, key)) {
        open_help(desk, HelpSection::terms);
        close(desk);
    }
    return place.bottom() + ui.size().gap;
}

// What is found is said in full, on as many lines as it needs.
constexpr ui::TextStyle k_found{ui::TextSize::large, true, ui::Ink::ink, ui::Align::left};
constexpr float k_row_inset = 14;

float found_height(const ui::Ui& ui, float width, const Found& found) {
    const float inner = width - 2 * k_row_inset;
    return ui::row_height(ui,
                          ui::paragraph_height(ui, inner, found.title, k_found) +
                              ui::paragraph_height(ui, inner, found.where, k_quiet) + 10);
}

bool found_row(ui::Ui& ui, const std::string& id, const ui::Rect& rect, const Found& found) {
    ui::ListRow row;
    const std::string spoken = found.title + ". " + found.where;
    row.spoken = spoken;
    const bool pressed = ui::list_row(ui, id, rect, row).pressed;
    if (!ui.is_visible(rect))
        return pressed;
    ui::Rect words = rect.inset(k_row_inset, 0);
    const float title = ui::paragraph_height(ui, words.w, found.title, k_found);
    const float where = ui::paragraph_height(ui, words.w, found.where, k_quiet);
    words.cut_top((rect.h - title - where) / 2);
    ui::draw_paragraph(ui, words.cut_top(title), found.title, k_found);
    ui::draw_paragraph(ui, words, found.where, k_quiet);
    return pressed;
}

float group_rows(
    Desk& desk, ui::Rect rest, const FoundGroup& group, std::size_t& number, const Found*& opened) {
    ui::Ui& ui = desk.ui;
    rest.y += ui.size().gap / 2;
    const float heading = ui::line_height(ui, ui::TextSize::small) + 6;
    ui::heading(ui,
                {rest.x, rest.y, rest.w, heading},
                group.name,
                2,
                {ui::TextSize::small, true, ui::Ink::quiet, ui::Align::left});
    rest.y += heading;
    for (const Found& found : group.found) {
        const ui::Rect place{rest.x, rest.y, rest.w, found_height(ui, rest.w, found)};
        if (found_row(ui, row_id(number++), place, found))
            opened = &found;
        rest.y += place.h;
    }
    if (group.more > 0)
        rest.y += ui::paragraph(
            ui, rest, "And " + std::to_string(group.more) + " more: type more letters.", k_quiet);
    return rest.y;
}

} // namespace

void open_find(Desk& desk) {
    desk.state.find_open = true;
    desk.state.find_typed.clear();
    desk.ui.want_frame();
}

void find_sheet(Desk& desk) {
    ui::Ui& ui = desk.ui;
    if (!desk.state.find_open || desk.state.notice_open)
        return;
    desk.readings.find.refresh(desk.session, desk.readings.parts());
    const ui::Rect paper = paper_of(ui);
    const ui::Dialog dialog(ui, "find-sheet", paper, "Find");
    const ui::Scope scope(ui, "find");
    // On a phone the words need the width more than the margin does.
    const float margin = ui.screen().w < 400 ? ui.size().margin / 2 : ui.size().margin;
    ui::Rect rest = paper.inset(margin, ui.size().gap);
    field_and_close(desk, rest.cut_top(ui::field_height(ui, false), ui.size().gap));
    const std::vector<FoundGroup>& groups =
        desk.readings.find.found(desk.state.find_typed, desk.chosen_part());
    std::size_t count = 0;
    for (const FoundGroup& group : groups)
        count += group.found.size();
    walk(desk, count);
    const Found* opened = ui.key("Enter") && count > 0 ? &groups.front().found.front() : nullptr;
    {
        ui::ScrollArea area(ui, "results", rest, "Found");
        ui::Rect content = area.content();
        content.w -= 6;
        std::size_t number = 0;
        if (desk.state.find_typed.empty())
            content.y = no_words(desk, content);
        else if (groups.empty())
            content.y = nothing_found(desk, content);
        for (const FoundGroup& group : groups)
            content.y = group_rows(desk, content, group, number, opened);
        area.finish(content.y + ui.size().gap);
    }
    if (ui.key("Escape"))
        close(desk);
    if (opened != nullptr) {
        const FoundAt at = opened->at;
        close(desk);
        open_found(desk, at);
    }
}

void open_found(Desk& desk, const FoundAt& at) {
    State& state = desk.state;
    desk.ui.want_frame();
    switch (at.kind) {
    case FoundKind::place:
        if (at.command != Command::none)
            return do_command(desk, at.command);
        state.place = at.place;
        return;
    case FoundKind::part: {
        const std::string& id = desk.session.job().parts[static_cast<std::size_t>(at.part)]->id;
        choose_part(desk, id);
        state.place = Place::parts;
        state.part_to_show = id;
        return;
    }
    case FoundKind::operation:
    case FoundKind::figure:
        show_operation(desk, at.part, at.operation);
        state.part_to_show = state.part;
        state.panel = *at.working == '\0' ? Panel::checks : Panel::working;
        state.working_to_show = at.working;
        state.focus_next = operation_row_id(at.operation);
        return;
    case FoundKind::shop:
        state.place = Place::shop;
        state.shop_page = at.shop_page;
        state.tool = std::max(0, at.tool);
        if (at.tool != plan::k_none)
            state.focus_next = tool_row_id(desk.session.shop(), at.shop_page, at.tool);
        return;
    case FoundKind::help:
        return open_topic(desk, at.topic);
    }
}

} // namespace treadle::views
