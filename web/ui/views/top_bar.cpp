#include "ui/views/top_bar.h"

#include "base/text.h"

#include "ui/views/find_commands.h"
#include "ui/views/find_sheet.h"
#include "ui/views/places.h"
#include "ui/views/version_bar.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>

namespace treadle::views {

namespace {

constexpr float k_least_name = 190; ///< of the job, or it goes on a line of its own

float line(const ui::Ui& ui) { return std::max(64.0F, ui.size().target + ui.size().gap); }

/// One line where name, places and keys fit side by side. Else the places stand below; on a phone
/// in two ranks, with undo and redo beside the second one, so that the name keeps its room.
struct Layout {
    bool one_line = false;
    int ranks = 1;
    float key = 0;
    float gap = 0; ///< between keys
    float find = 0;
    bool find_word = false;
    [[nodiscard]] float steps() const { return 2 * key + gap; } ///< undo and redo
    [[nodiscard]] float right() const {
        return find + gap + key + (ranks == 2 ? 0 : steps() + gap);
    }
};

ui::Button find_key(bool word) {
    ui::Button key;
    key.label = "Find";
    key.name = "Find";
    key.icon = ui::Icon::find;
    key.icon_only = !word;
    key.look = ui::KeyLook::quiet;
    return key;
}

Layout lay_out(const ui::Ui& ui) {
    Layout layout;
    const float scale = ui.size().text_scale;
    const float width = ui.screen().w;
    layout.key = std::max(ui.size().target, 48.0F);
    layout.gap = ui.size().gap;
    layout.find_word = width >= 600 * scale;
    layout.find = layout.find_word ? ui::button_width(ui, find_key(true)) : layout.key;
    const float places = ui::least_tabs_width(ui, place_names());
    const float name = width - 2 * ui.size().margin - layout.right() - places;
    layout.one_line = name >= k_least_name * scale;
    layout.ranks = !layout.one_line && (places > width || width < 480 * scale) ? 2 : 1;
    return layout;
}

std::string joined(std::initializer_list<std::string_view> words) {
    std::string line;
    for (const std::string_view word : words)
        if (!word.empty())
            line += (line.empty() ? "" : ", ") + std::string(word);
    return base::capital(line);
}

/// As much as there is room for; all of it stands under Help and Sheets.
std::string saved_words(const Desk& desk, float width, const ui::TextStyle& style) {
    const State& state = desk.state;
    const bool invented = desk.session.job().invented;
    const std::string offline = offline_words(desk.version);
    const std::string saved = state.saved == Saved::nothing_yet ? ""
                              : state.saved == Saved::saving    ? "Saving"
                                                                : state.saved_note;
    const char* const longest = invented ? "invented scenario" : "";
    const char* const mark = invented ? "invented" : "";
    for (std::string line : {joined({saved, longest, offline}), joined({saved, mark, offline})})
        if (ui::text_width(desk.ui, line, style) <= width)
            return line;
    return joined({saved, mark});
}

void name_and_saved(Desk& desk, ui::Rect rect) {
    const job::Job& job = desk.session.job();
    ui::Ui& ui = desk.ui;
    const std::string name = job.name.empty() ? "Job without a name" : job.name;
    if (ui::press_area(ui, "job-name", rect, "Name, due date and note of " + name))
        do_command(desk, Command::name_job);
    const float height =
        ui::line_height(ui, ui::TextSize::large) + ui::line_height(ui, ui::TextSize::small) + 4;
    rect = rect.inset(4, std::max(0.0F, (rect.h - height) / 2));
    ui::heading(ui,
                rect.cut_top(ui::line_height(ui, ui::TextSize::large) + 2),
                name,
                1,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    const bool failed = desk.state.saved == Saved::failed;
    const ui::TextStyle small{ui::TextSize::small,
                              failed,
                              failed ? ui::Ink::does_not_fit : ui::Ink::quiet,
                              ui::Align::left};
    ui::text(ui, rect, saved_words(desk, rect.w, small), small);
}

struct Step {
    const char* id;
    ui::Icon icon;
    const char* verb;
    const char* nothing; ///< why it cannot be pressed
    Wish wish;
};

void step(Desk& desk, const ui::Rect& rect, const Step& is, bool can, const std::string& words) {
    const std::string name =
        can && !words.empty() ? std::string(is.verb) + ": " + words : std::string(is.verb);
    ui::Button key;
    key.label = is.verb;
    key.name = name;
    key.icon = is.icon;
    key.icon_only = true;
    key.look = ui::KeyLook::quiet;
    key.enabled = can;
    key.why_not = is.nothing;
    if (ui::button(desk.ui, is.id, rect, key))
        desk.ask(is.wish);
}

void undo_and_redo(Desk& desk, ui::Rect rect, const Layout& layout) {
    const edit::Session& session = desk.session;
    step(desk,
         rect.cut_left(layout.key, layout.gap),
         {"undo", ui::Icon::undo, "Undo", "Nothing has been changed yet.", Wish::undo},
         session.can_undo(),
         session.undo_words());
    step(desk,
         rect,
         {"redo", ui::Icon::redo, "Redo", "Nothing was undone.", Wish::redo},
         session.can_redo(),
         session.redo_words());
}

void units(Desk& desk, const ui::Rect& rect) {
    const bool inch = desk.style().system == UnitSystem::inch;
    ui::Button key;
    key.label = inch ? "in" : "mm";
    key.name = inch ? "Units: inch. Change to millimetres" : "Units: mm. Change to inches";
    key.look = ui::KeyLook::quiet;
    if (ui::button(desk.ui, "units", rect, key))
        do_command(desk, Command::change_units);
}

/// Those from `from` up to `to`, not included.
void places(Desk& desk, const ui::Rect& rect, std::size_t from, std::size_t to) {
    const int first = static_cast<int>(from);
    const auto chosen = ui::tabs(desk.ui,
                                 from == 0 ? "places" : "more-places",
                                 rect,
                                 from == 0 ? "Places" : "More places",
                                 place_names().subspan(from, to - from),
                                 static_cast<int>(desk.state.place) - first);
    if (!chosen)
        return;
    desk.state.place = static_cast<Place>(*chosen + first);
    desk.ui.want_frame();
}

} // namespace

float top_bar_height(const ui::Ui& ui) {
    const Layout layout = lay_out(ui);
    return layout.one_line ? line(ui)
                           : line(ui) + static_cast<float>(layout.ranks) * ui::row_height(ui, 52);
}

void top_bar(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const Layout layout = lay_out(ui);
    ui.rule(
        rect.x, rect.bottom() - 1, rect.right(), rect.bottom() - 1, ui::Ink::ink, ui.size().stroke);
    ui::Rect rest = rect;
    ui::Rect first = rest.cut_top(line(ui)).inset(ui.size().margin / 2, ui.size().gap / 2);
    ui::Rect right = first.cut_right(layout.right(), ui.size().gap);
    ui::Rect middle;
    if (layout.one_line)
        middle = first.cut_right(std::min(first.w - k_least_name * ui.size().text_scale,
                                          ui::tabs_width(ui, place_names())),
                                 8);
    name_and_saved(desk, first);
    if (layout.one_line)
        places(desk, {middle.x, rect.y, middle.w, line(ui)}, 0, place_names().size());
    if (ui::button(ui, "find", right.cut_left(layout.find, layout.gap), find_key(layout.find_word)))
        open_find(desk);
    units(desk, right.cut_right(layout.key, layout.gap));
    if (layout.ranks == 1) {
        undo_and_redo(desk, right, layout);
        if (!layout.one_line)
            places(desk, rest, 0, place_names().size());
        return;
    }
    const std::size_t half = (place_names().size() + 1) / 2;
    places(desk, rest.cut_top(rest.h / 2), 0, half);
    undo_and_redo(desk, rest.cut_right(layout.steps(), layout.gap), layout);
    places(desk, rest, half, place_names().size());
}

} // namespace treadle::views
