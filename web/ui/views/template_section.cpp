#include "ui/views/template_section.h"

#include "sheet/template.h"

#include "ui/views/form.h"
#include "ui/views/sections.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>
#include <set>

namespace treadle::views {

namespace {

constexpr std::size_t k_most_shown = 60;
constexpr const char* k_scope = "templates";

using Keys = std::set<std::string>;

void flip(State& state, const std::string& key) {
    const auto found = std::find(state.templates.begin(), state.templates.end(), key);
    if (found != state.templates.end())
        state.templates.erase(found);
    else
        state.templates.push_back(key);
}

std::string pages_words(int pages) {
    return std::to_string(pages) + (pages == 1 ? " page" : " pages");
}

void choose_printer(Desk& desk, Form& form) {
    const PaperWishes& now = desk.state.paper;
    std::vector<std::string> names = {"None measured"};
    for (const MeasuredPrinter& printer : now.printers)
        names.push_back(printer.name);
    if (const auto chosen = form.choice("Printer", "printer", names, now.printer + 1)) {
        PaperWishes next = now;
        next.printer = *chosen - 1;
        desk.ask(std::move(next));
    }
}

/// Name and both bars as they came out; kept under the name, so that measuring again replaces it.
void measure_printer(Desk& desk, Form& form) {
    State& state = desk.state;
    if (const auto name = form.text("Name of the printer", "name", state.printer_name))
        state.printer_name = *name;
    if (const auto across =
            form.length("100 mm bar across, as printed", "across", state.bar_across))
        state.bar_across = *across;
    if (const auto along = form.length("100 mm bar along, as printed", "along", state.bar_along))
        state.bar_along = *along;
    if (!form.key("Keep for this printer", "keep", "Keep what was measured for this printer"))
        return;
    const auto refuse = [&](const char* field, const base::Refusal& why) {
        set_fault(state, {std::string(k_scope) + "/" + field, "", why.reason + " " + why.detail});
        desk.ui.want_frame();
    };
    if (state.printer_name.empty())
        return refuse("name", {"name", "A printer needs a name.", "as you call it"});
    const auto x = sheet::print_factor(millimetres(100.0), state.bar_across, "across");
    if (!x.ok())
        return refuse("across", x.refusal());
    const auto y = sheet::print_factor(millimetres(100.0), state.bar_along, "along");
    if (!y.ok())
        return refuse("along", y.refusal());
    PaperWishes next = state.paper;
    const auto known =
        std::find_if(next.printers.begin(), next.printers.end(), [&](const MeasuredPrinter& one) {
            return one.name == state.printer_name;
        });
    if (known == next.printers.end() && next.printers.size() >= k_most_printers)
        return refuse("name", {"name", "Twelve printers are kept.", "use the name of one of them"});
    next.printer = static_cast<int>(known - next.printers.begin());
    if (known == next.printers.end())
        next.printers.push_back({state.printer_name, *x, *y});
    else
        *known = {state.printer_name, *x, *y};
    desk.ask(std::move(next));
}

float list(Desk& desk,
           const ui::Rect& rest,
           const std::vector<TemplateReading>& all,
           const Keys& chosen) {
    Form form(desk, rest, k_scope, 300);
    std::size_t shown = 0;
    for (const TemplateReading& one : all) {
        if (!one.refusal.empty())
            continue;
        if (++shown > k_most_shown)
            break;
        const std::string label = one.title + " (" + pages_words(one.pages) + ")";
        if (form.toggle(label, one.key, chosen.count(one.key) > 0)) {
            flip(desk.state, one.key);
            desk.ui.want_frame();
        }
    }
    form.new_line();
    for (const TemplateReading& one : all)
        if (!one.refusal.empty())
            form.words(one.title + ": " + one.refusal);
    if (shown > k_most_shown)
        form.words("The first " + std::to_string(k_most_shown) +
                   " are listed; all of them are printed with All of them.");
    return form.bottom();
}

float choose_all(Desk& desk, ui::Rect rest, const std::vector<TemplateReading>& all) {
    Form form(desk, rest, k_scope);
    if (form.key("All of them", "all", "Choose all templates")) {
        desk.state.templates.clear();
        for (const TemplateReading& one : all)
            if (one.refusal.empty())
                desk.state.templates.push_back(one.key);
        desk.ui.want_frame();
    }
    if (form.key("None", "none", "Choose no template")) {
        desk.state.templates.clear();
        desk.ui.want_frame();
    }
    form.new_line();
    return form.bottom();
}

} // namespace

float template_section(Desk& desk, ui::Rect rest) {
    rest.y = section_title(
        desk.ui,
        rest,
        "At full size",
        "Holes to lay on the steel, wraps for saddles, gauges for bends. Print at 100 %, actual "
        "size, and measure the bars on every page before one is used.");
    const std::vector<TemplateReading>& all =
        desk.readings.templates(desk.session, desk.state.paper);
    if (all.empty()) {
        rest.y += ui::paragraph(desk.ui, rest, "No part of this job has holes, bends or saddles.") +
                  desk.ui.size().gap;
        return rest.y;
    }
    const Keys chosen(desk.state.templates.begin(), desk.state.templates.end());
    Form printers(desk, rest, k_scope);
    choose_printer(desk, printers);
    measure_printer(desk, printers);
    printers.new_line();
    rest.y = printers.bottom();
    rest.y = choose_all(desk, rest, all);
    rest.y = list(desk, rest, all, chosen);
    int pages = 0;
    for (const TemplateReading& one : all)
        if (chosen.count(one.key) > 0)
            pages += one.pages;
    rest.y += ui::paragraph(desk.ui,
                            rest,
                            pages == 0 ? std::string("Nothing is chosen.")
                                       : "Chosen: " + pages_words(pages) + ".") +
              desk.ui.size().gap;
    const std::array keys = {SectionKey{"Look at the templates",
                                        "Look at the templates",
                                        Wish::preview_templates,
                                        ui::Icon::none,
                                        ui::KeyLook::normal,
                                        pages > 0,
                                        "Choose one above first."},
                             SectionKey{"Print at full size",
                                        "Print the templates",
                                        Wish::print_templates,
                                        ui::Icon::print,
                                        ui::KeyLook::normal,
                                        pages > 0,
                                        "Choose one above first."}};
    return section_keys(desk, rest, keys);
}

} // namespace treadle::views
