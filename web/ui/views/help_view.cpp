#include "ui/views/help_view.h"

#include "ui/views/about_view.h"
#include "ui/views/places.h"
#include "ui/views/screen_form.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_name{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};

HelpSection shown(const State& state) {
    const int last = static_cast<int>(k_help_sections.size()) - 1;
    return k_help_sections[static_cast<std::size_t>(std::clamp(state.help_section, 0, last))];
}

void section_list(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = ui::side_ground(ui, rect);
    ui::ScrollArea area(ui, "sections", rest, "Help");
    ui::Rect content = area.content();
    const float height = ui::row_height(ui, 52);
    for (const HelpSection section : k_help_sections) {
        ui::ListRow row;
        row.title = section_name(section);
        row.spoken = row.title;
        row.selected = section == shown(desk.state);
        if (ui::list_row(ui, section_name(section), content.cut_top(height), row).pressed)
            open_help(desk, section);
    }
    area.finish(content.y);
}

void section_choice(Desk& desk, const ui::Rect& rect) {
    std::vector<std::string> names;
    for (const HelpSection section : k_help_sections)
        names.emplace_back(section_name(section));
    ui::Field field;
    field.label = "Shown";
    if (const auto chosen =
            ui::choice(desk.ui, "section", rect, field, names, desk.state.help_section))
        open_help(desk, k_help_sections[static_cast<std::size_t>(*chosen)]);
}

/// One topic; where something is done, a key leads there. Returns where it ended.
float topic_rows(Desk& desk, ui::Rect rest, const HelpTopic& topic) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, topic.id);
    const float height = ui::line_height(ui, ui::TextSize::body) + 4;
    if (desk.state.help_topic == topic.id) {
        ui.bring_to_top({rest.x, rest.y - ui.size().gap, rest.w, height});
        desk.state.help_topic.clear();
    }
    ui::heading(ui, {rest.x, rest.y, rest.w, height}, topic.title, 2, k_name);
    rest.y += height;
    rest.y += ui::paragraph(ui, rest, topic.words) + ui.size().gap / 2;
    if (topic.place) {
        ui::Button key;
        const std::string label = "Go to " + place_name(*topic.place);
        const std::string name = label + ": " + topic.title;
        key.label = label;
        key.name = name;
        key.look = ui::KeyLook::quiet;
        const ui::Rect at{rest.x, rest.y, ui::button_width(ui, key), ui.size().target};
        if (ui::button(ui, "go", at, key)) {
            desk.state.place = *topic.place;
            ui.want_frame();
        }
        rest.y = at.bottom();
    }
    return rest.y + ui.size().gap;
}

float topics(Desk& desk, ui::Rect rest, std::span<const HelpTopic> list) {
    for (const HelpTopic& topic : list)
        rest.y = topic_rows(desk, rest, topic);
    return rest.y;
}

/// The line of the first start, when it was dismissed.
float first_line(Desk& desk, const ui::Rect& rest) {
    if (desk.state.hint_open || !desk.session.job().invented)
        return rest.y;
    ui::Button key;
    key.label = "Show the first line again";
    const ui::Rect place{rest.x, rest.y, ui::button_width(desk.ui, key), desk.ui.size().target};
    if (ui::button(desk.ui, "first-line", place, key))
        desk.ask(Wish::show_hint);
    return place.bottom() + desk.ui.size().gap;
}

float hurt(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    rest.y += ui::paragraph(ui, rest, desk.notice, k_name) + ui.size().gap;
    for (const std::string& caution : desk.readings.cautions(desk.session))
        rest.y += ui::paragraph(ui, rest, caution) + ui.size().gap;
    return rest.y;
}

float section_words(Desk& desk, const ui::Rect& rest) {
    switch (shown(desk.state)) {
    case HelpSection::tasks:
        return first_line(desk, rest.moved(0, topics(desk, rest, help_tasks()) - rest.y));
    case HelpSection::terms:
        return topics(desk, rest, help_terms());
    case HelpSection::keys:
        return topics(desk, rest, help_keys());
    case HelpSection::screen:
        return screen_form(desk, rest);
    case HelpSection::hurt:
        return hurt(desk, rest);
    case HelpSection::about:
        return about_words(desk, rest);
    }
    return rest.y;
}

} // namespace

void open_help(Desk& desk, HelpSection section) {
    const auto at = std::find(k_help_sections.begin(), k_help_sections.end(), section);
    desk.state.place = Place::help;
    desk.state.help_section = static_cast<int>(at - k_help_sections.begin());
    desk.ui.want_frame();
}

void open_topic(Desk& desk, std::string_view id) {
    const HelpTopic* topic = find_topic(id);
    if (topic == nullptr)
        return;
    open_help(desk, topic->section);
    desk.state.help_topic = id;
}

void topic_key(Desk& desk, const ui::Rect& rect, const HelpTopic* topic) {
    if (topic == nullptr)
        return;
    ui::Button key;
    key.label = "?";
    const std::string name = std::string("What is this: ") + topic->title;
    key.name = name;
    key.look = ui::KeyLook::quiet;
    if (ui::button(desk.ui, desk.ui.next_id("what"), rect, key))
        open_topic(desk, topic->id);
}

void help_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "help");
    ui::Rect rest = rect;
    if (ui.is_narrow())
        section_choice(desk,
                       rest.cut_top(ui::field_height(ui, false) + 8).inset(ui.size().margin, 4));
    else
        section_list(desk, rest.cut_left(std::min(240 * ui.size().text_scale, rest.w * 0.38F)));
    const HelpSection section = shown(desk.state);
    const ui::Scope section_scope(ui, section_name(section));
    ui::ScrollArea area(ui, "words", rest, section_name(section));
    ui::Rect content = area.content().inset(ui.size().margin, 0);
    content.w = std::min(content.w, 760 * ui.size().text_scale);
    content.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::title) + 8;
    ui::heading(ui,
                {content.x, content.y, content.w, height},
                section == HelpSection::about ? "Treadle" : section_name(section),
                1,
                {ui::TextSize::title, true, ui::Ink::ink, ui::Align::left});
    content.y += height;
    area.finish(section_words(desk, content) + ui.size().margin);
}

} // namespace treadle::views
