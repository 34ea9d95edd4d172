#include "ui/views/sheets_view.h"

#include "plan/leg_spread.h"

#include "ui/views/form.h"
#include "ui/views/sections.h"
#include "ui/views/template_section.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace treadle::views {

namespace {

const std::array<std::string, 2> k_papers = {"Letter", "A4"};
/// In the order of sheet::SheetUnits.
const std::array<std::string, 4> k_units = {"As in the job", "Inch", "Metric", "Both"};
/// In the order of SheetKind.
constexpr std::array<std::pair<const char*, const char*>, k_sheet_kinds> k_kinds{{
    {"Parts and verdicts", "summary"},
    {"Tools to fetch and to buy", "tools"},
    {"Set-ups and first pieces", "set-ups"},
    {"Cutting list", "cutting"},
    {"Part drawings", "parts"},
    {"Working sheets", "workings"},
}};

/// In the order of the enumeration.
constexpr std::array k_classes = {job::ToleranceClass::fine,
                                  job::ToleranceClass::medium,
                                  job::ToleranceClass::coarse,
                                  job::ToleranceClass::very_coarse};

float worksheet(Desk& desk, ui::Rect rest) {
    rest.y = section_title(
        desk.ui,
        rest,
        "Worksheet",
        "What is ticked below, in this order. The boxes of the sheet on the screen can be ticked "
        "and are kept with the job.");
    const PaperWishes& now = desk.state.paper;
    Form form(desk, rest, "sheets");
    if (const auto chosen = form.choice("Paper", "paper", k_papers, now.letter ? 0 : 1)) {
        PaperWishes next = now;
        next.letter = *chosen == 0;
        next.chosen_paper = true;
        desk.ask(std::move(next));
    }
    if (const auto chosen = form.choice("Units on paper", "units", k_units, now.units)) {
        PaperWishes next = now;
        next.units = *chosen;
        desk.ask(std::move(next));
    }
    form.new_line();
    for (unsigned kind = 0; kind < k_kinds.size(); ++kind)
        if (form.toggle(k_kinds[kind].first,
                        k_kinds[kind].second,
                        wants(now, static_cast<SheetKind>(kind)))) {
            PaperWishes next = now;
            next.kinds ^= 1U << kind;
            desk.ask(std::move(next));
        }
    form.new_line();
    rest.y = form.bottom();
    const std::array keys = {
        SectionKey{"Look at the worksheet", "Look at the worksheet", Wish::preview_sheet},
        SectionKey{"Print",
                   "Print the worksheet",
                   Wish::print_sheet,
                   ui::Icon::print,
                   ui::KeyLook::primary}};
    return section_keys(desk, rest, keys);
}

float files(Desk& desk, ui::Rect rest) {
    rest.y = section_title(desk.ui, rest, "To take along", "");
    const std::array keys = {
        SectionKey{"Save as web page", "Save the worksheet as a web page", Wish::save_html},
        SectionKey{"Save as table (CSV)", "Save the operations as a table", Wish::save_csv},
        SectionKey{"Save plan (JSON)", "Save the plan as JSON", Wish::save_json}};
    rest.y = section_keys(desk, rest, keys);
    rest.y =
        section_title(desk.ui,
                      rest,
                      "Job file",
                      "Job and shop in one file. Opening one puts it beside the other jobs and "
                      "replaces none; all of them are under Jobs.");
    const std::array both = {
        SectionKey{"Save file", "Save file of this job", Wish::export_file, ui::Icon::save},
        SectionKey{"Open file", "Open file", Wish::import_file, ui::Icon::open}};
    return section_keys(desk, rest, both);
}

float names(Desk& desk, ui::Rect rest) {
    const job::Job& job = desk.session.job();
    rest.y = section_title(desk.ui, rest, "Job", job.invented ? "An invented scenario." : "");
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
    rest.y = template_section(desk, rest);
    rest.y = names(desk, rest);
    rest.y = files(desk, rest);
    area.finish(rest.y);
}

} // namespace treadle::views
