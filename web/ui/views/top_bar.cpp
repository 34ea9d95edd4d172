#include "ui/views/top_bar.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

const std::array<std::string, 7> k_places = {
    "Parts", "Order", "Bars", "Limits", "Shop", "Sheets", "About"};

/// Two lines when name, places and keys do not fit side by side.
bool has_two_lines(const ui::Ui& ui) {
    return ui.screen().w < 900 * std::max(1.0F, ui.size().text_scale);
}

float line(const ui::Ui& ui) { return std::max(64.0F, ui.size().target + 8); }

std::string_view saved_words(const State& state) {
    switch (state.saved) {
    case Saved::nothing_yet:
        return "";
    case Saved::saving:
        return "Saving";
    default:
        return state.saved_note;
    }
}

void name_and_saved(Desk& desk, ui::Rect rect) {
    const job::Job& job = desk.session.job();
    ui::Ui& ui = desk.ui;
    const float height =
        ui::line_height(ui, ui::TextSize::large) + ui::line_height(ui, ui::TextSize::small) + 4;
    rect = rect.inset(0, std::max(0.0F, (rect.h - height) / 2));
    ui::heading(ui,
                rect.cut_top(ui::line_height(ui, ui::TextSize::large) + 2),
                job.name.empty() ? std::string_view("Job without a name") : job.name,
                1,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    const bool failed = desk.state.saved == Saved::failed;
    std::string words(saved_words(desk.state));
    if (job.invented)
        words = words.empty() ? "Invented scenario" : "Invented scenario, " + words;
    ui::text(ui,
             rect,
             words,
             {ui::TextSize::small,
              failed,
              failed ? ui::Ink::does_not_fit : ui::Ink::quiet,
              ui::Align::left});
}

void undo_and_units(Desk& desk, ui::Rect rect) {
    ui::Ui& ui = desk.ui;
    const auto step = [&](std::string_view id,
                          ui::Icon icon,
                          bool can,
                          const std::string& words,
                          const char* verb,
                          const char* nothing,
                          Wish wish,
                          const ui::Rect& at) {
        const std::string name = can && !words.empty() ? std::string(verb) + ": " + words : verb;
        ui::Button key;
        key.label = verb;
        key.name = name;
        key.icon = icon;
        key.icon_only = true;
        key.look = ui::KeyLook::quiet;
        key.enabled = can;
        key.why_not = nothing;
        if (ui::button(ui, id, at, key))
            desk.ask(wish);
    };
    const edit::Session& session = desk.session;
    const bool inch = desk.style().system == UnitSystem::inch;
    const ui::Rect units = rect.cut_right(64);
    const float key = std::min(72.0F, rect.w / 2);
    step("redo",
         ui::Icon::redo,
         session.can_redo(),
         session.redo_words(),
         "Redo",
         "Nothing was undone.",
         Wish::redo,
         rect.cut_right(key));
    step("undo",
         ui::Icon::undo,
         session.can_undo(),
         session.undo_words(),
         "Undo",
         "Nothing has been changed yet.",
         Wish::undo,
         rect.cut_right(key));
    ui::Button unit;
    unit.label = inch ? "in" : "mm";
    unit.name = inch ? "Units: inch. Change to millimetres" : "Units: mm. Change to inches";
    unit.look = ui::KeyLook::quiet;
    if (ui::button(ui, "units", units.inset(2, 4), unit)) {
        PrintStyle style = desk.style();
        style.system = inch ? UnitSystem::metric : UnitSystem::inch;
        desk.ask(PlainEdit{edit::SetStyle{style}, "", false});
    }
}

void places(Desk& desk, const ui::Rect& rect) {
    const auto chosen =
        ui::tabs(desk.ui, "places", rect, "Places", k_places, static_cast<int>(desk.state.place));
    if (chosen) {
        desk.state.place = static_cast<Place>(*chosen);
        desk.ui.want_frame();
    }
}

} // namespace

float top_bar_height(const ui::Ui& ui) { return has_two_lines(ui) ? 2 * line(ui) : line(ui); }

void top_bar(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    ui.fill(rect, ui::Ink::paper);
    ui.rule(
        rect.x, rect.bottom() - 1, rect.right(), rect.bottom() - 1, ui::Ink::ink, ui.size().stroke);
    ui::Rect rest = rect;
    if (has_two_lines(ui)) {
        ui::Rect first = rest.cut_top(line(ui)).inset(ui.size().margin / 2, 0);
        undo_and_units(desk, first.cut_right(64 + 2 * 72, 8));
        name_and_saved(desk, first);
        places(desk, rest);
        return;
    }
    rest = rest.inset(ui.size().margin, 0);
    undo_and_units(desk, rest.cut_right(64 + 2 * 60, 4));
    places(desk, rest.cut_right(std::min(rest.w - 160, ui::tabs_width(ui, k_places)), 8));
    name_and_saved(desk, rest);
}

} // namespace treadle::views
