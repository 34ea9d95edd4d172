#include "ui/views/sheets_view.h"

#include "plan/leg_spread.h"

#include "ui/views/form.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>
#include <span>

namespace treadle::views {

namespace {

const std::array<std::string, 2> k_papers = {"Letter", "A4"};

/// In the order of the enumeration.
constexpr std::array k_classes = {job::ToleranceClass::fine,
                                  job::ToleranceClass::medium,
                                  job::ToleranceClass::coarse,
                                  job::ToleranceClass::very_coarse};

struct Key {
    const char* label;
    const char* name;
    Wish wish;
    ui::Icon icon = ui::Icon::none;
    ui::KeyLook look = ui::KeyLook::normal;
};

float title(ui::Ui& ui, ui::Rect rest, const char* words, const char* more) {
    rest.y += ui.size().margin;
    const float height = ui::line_height(ui, ui::TextSize::large) + 6;
    ui::heading(ui,
                {rest.x, rest.y, rest.w, height},
                words,
                2,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    rest.y += height;
    if (*more != '\0')
        rest.y += ui::paragraph(
            ui, rest, more, {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left});
    return rest.y + ui.size().gap;
}

/// Keys side by side, on as many lines as they need. Returns where they ended.
float keys(Desk& desk, const ui::Rect& rect, std::span<const Key> keys) {
    ui::Ui& ui = desk.ui;
    const float gap = std::max(12.0F, ui.size().gap);
    float x = rect.x;
    float y = rect.y;
    for (const Key& one : keys) {
        ui::Button key;
        key.label = one.label;
        key.name = one.name;
        key.icon = one.icon;
        key.look = one.look;
        const float width = std::min(rect.w, ui::button_width(ui, key));
        if (x > rect.x && x + width > rect.right()) {
            x = rect.x;
            y += ui.size().primary + gap;
        }
        if (ui::button(ui, one.label, {x, y, width, ui.size().primary}, key))
            desk.ask(one.wish);
        x += width + gap;
    }
    return y + ui.size().primary + gap;
}

float worksheet(Desk& desk, ui::Rect rest) {
    rest.y =
        title(desk.ui,
              rest,
              "Worksheet",
              "Every part with its drawing, set-up by set-up, with the working of each figure.");
    Form form(desk, rest, "sheets");
    if (const auto chosen = form.choice("Paper", "paper", k_papers, desk.state.letter ? 0 : 1)) {
        desk.state.letter = *chosen == 0;
        desk.ui.want_frame();
    }
    form.new_line();
    rest.y = form.bottom();
    constexpr std::array k_keys = {
        Key{"Look at the worksheet", "Look at the worksheet", Wish::preview_sheet},
        Key{"Print",
            "Print the worksheet",
            Wish::print_sheet,
            ui::Icon::print,
            ui::KeyLook::primary}};
    return keys(desk, rest, k_keys);
}

float files(Desk& desk, ui::Rect rest) {
    rest.y = title(desk.ui, rest, "To take along", "");
    constexpr std::array k_out = {
        Key{"Save as web page", "Save the worksheet as a web page", Wish::save_html},
        Key{"Save as table (CSV)", "Save the operations as a table", Wish::save_csv},
        Key{"Save plan (JSON)", "Save the plan as JSON", Wish::save_json}};
    rest.y = keys(desk, rest, k_out);
    rest.y = title(desk.ui,
                   rest,
                   "Job file",
                   "Job and shop in one file. Opening one replaces what is here; undo brings it "
                   "back.");
    constexpr std::array k_files = {
        Key{"Save file", "Save file of this job", Wish::export_file, ui::Icon::save},
        Key{"Open file", "Open file", Wish::import_file, ui::Icon::open}};
    rest.y = keys(desk, rest, k_files);
    rest.y = title(desk.ui, rest, "Start again", "Undo brings the present job back.");
    constexpr std::array k_again = {
        Key{"Demo job in inches", "Start again with the demo job in inches", Wish::demo_inch},
        Key{"Demo job in millimetres",
            "Start again with the demo job in millimetres",
            Wish::demo_metric},
        Key{"New empty job", "New empty job", Wish::new_job}};
    return keys(desk, rest, k_again);
}

float names(Desk& desk, ui::Rect rest) {
    const job::Job& job = desk.session.job();
    rest.y = title(desk.ui, rest, "Job", job.invented ? "An invented scenario." : "");
    Form form(desk, rest, "job", 220);
    std::optional<edit::SetJobNames> names;
    const auto field = [&](const char* label,
                           const char* key,
                           const std::string& value,
                           std::string edit::SetJobNames::*member) {
        const auto typed = form.text(label, key, value);
        if (!typed)
            return;
        names = edit::SetJobNames{job.name, job.note, job.due};
        (*names).*member = *typed;
    };
    field("Name of the job", "name", job.name, &edit::SetJobNames::name);
    field("Due", "due", job.due, &edit::SetJobNames::due);
    field("Note", "note", job.note, &edit::SetJobNames::note);
    if (names)
        desk.ask(FieldEdit{form.field(), form.typed(), std::move(*names)});
    std::vector<std::string> classes = {"None asked for"};
    for (const job::ToleranceClass one : k_classes)
        classes.emplace_back(plan::tolerance_words(one));
    const int now = job.tolerance ? static_cast<int>(*job.tolerance) + 1 : 0;
    if (const auto chosen = form.choice("Legs after ISO 2768-1", "tolerance", classes, now)) {
        edit::SetTolerance next;
        if (*chosen > 0)
            next.tolerance = k_classes[static_cast<std::size_t>(*chosen - 1)];
        desk.ask(FieldEdit{form.field(), form.typed(), next});
    }
    return form.bottom();
}

} // namespace

void sheets_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "sheets");
    ui::ScrollArea area(ui, "view", rect, "Sheets");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    rest.w = std::min(rest.w, 900 * ui.size().text_scale);
    rest.y = worksheet(desk, rest);
    rest.y = names(desk, rest);
    rest.y = files(desk, rest);
    area.finish(rest.y);
}

} // namespace treadle::views
