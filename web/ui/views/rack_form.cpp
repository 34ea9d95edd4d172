#include "ui/views/rack_form.h"

#include "plan/words.h"

#include "ui/views/metal_fields.h"
#include "ui/views/parts_edit.h"
#include "ui/views/shop_draft.h"
#include "ui/widgets/controls.h"

#include <algorithm>

namespace treadle::views {

namespace {

using equipment::HouseRules;
using equipment::StockBar;

void rules(Form& form, ShopDraft& draft, const HouseRules& rules) {
    const auto maybe = [&](const char* label,
                           const char* key,
                           std::optional<Length> HouseRules::*member,
                           const char* empty) {
        const std::string path = std::string("rules.") + key;
        if (const auto typed = form.maybe(label, path, rules.*member, rules.*member ? "" : empty))
            draft.change().rules.*member = *typed;
    };
    form.heading("Cutting");
    maybe("A saw cut takes", "saw_kerf", &HouseRules::saw_kerf, "not known");
    maybe("Trimmed off each end", "end_trim", &HouseRules::end_trim, "Empty: nothing");
    maybe("Drops are kept from", "keep_drop", &HouseRules::keep_drop, "Empty: all are scrap");
}

/// One kind of bar while its form is drawn.
struct Editing {
    Desk& desk;
    Form& form;
    ShopDraft& draft;
    const StockBar& bar;
    std::size_t index;
    std::string path; ///< "rack[0]."

    StockBar& change() { return draft.change().rack[index]; }
};

void metal(Editing& editing) {
    const SectionFields section{
        editing.desk, editing.form, editing.path, editing.bar.section, [&]() -> Section& {
            return editing.change().section;
        }};
    section.shape();
    section.sizes();
    section.catalogue();
    if (const auto grade = grade_choice(
            editing.desk, editing.form, "Metal", editing.path + "grade", editing.bar.grade))
        editing.change().grade = *grade;
}

void supply(Editing& editing) {
    Form& form = editing.form;
    const StockBar& bar = editing.bar;
    form.new_line();
    if (const auto typed = form.length("Length", editing.path + "length", bar.length))
        editing.change().length = *typed;
    if (const auto typed =
            form.maybe("In the rack", editing.path + "count", bar.count, "Empty: can be bought"))
        editing.change().count = *typed;
    if (const auto typed = form.maybe("Price of one", editing.path + "price", bar.price))
        editing.change().price = *typed;
    if (form.toggle("Is a drop", editing.path + "drop", bar.drop)) {
        StockBar& changed = editing.change();
        changed.drop = !bar.drop;
        if (changed.drop && !changed.count)
            changed.count = 1; // a drop is one that is there
    }
}

std::string words_of(const Desk& desk, const StockBar& bar) {
    const PrintStyle style = desk.style();
    return plan::section_title(bar.section, style) + ", " + grade_name(desk, bar.grade);
}

std::string supply_words(const Desk& desk, const StockBar& bar) {
    const std::string length = quantity::print(bar.length, desk.style());
    const std::string count = bar.count ? std::to_string(*bar.count) + " in the rack" : "to buy";
    return (bar.drop ? "drop " : "") + length + ", " + count;
}

float one_bar(Desk& desk, const ui::Rect& rect, std::size_t index) {
    const StockBar& bar = desk.session.shop().rack[index];
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 150);
    Editing editing{desk, form, draft, bar, index, "rack[" + std::to_string(index) + "]."};
    supply(editing);
    form.new_line();
    metal(editing);
    form.new_line();
    if (form.key("Remove from the rack",
                 editing.path + "remove",
                 "Remove " + words_of(desk, bar) + ", " + supply_words(desk, bar),
                 true)) {
        auto& rack = draft.change().rack;
        rack.erase(rack.begin() + static_cast<int>(index));
    }
    draft.send(form);
    return form.bottom();
}

/// To be typed over: like the one that is open, else like the chosen part.
StockBar next_bar(const Desk& desk, bool drop) {
    const auto& rack = desk.session.shop().rack;
    const bool inch = desk.style().system == UnitSystem::inch;
    StockBar bar;
    if (!rack.empty()) {
        const auto open = static_cast<std::size_t>(
            std::clamp(desk.state.tool, 0, static_cast<int>(rack.size()) - 1));
        bar = rack[open];
    } else {
        bar.section = starting_section(desk.style().system, section::Shape::flat);
        bar.grade = first_grade(desk);
        bar.length = inch ? inches(240.0) : millimetres(6000.0);
    }
    bar.drop = drop;
    bar.count = drop ? std::optional(1) : std::nullopt;
    if (drop) {
        bar.price.reset();
        bar.length = inch ? inches(60.0) : millimetres(1500.0);
    }
    return bar;
}

float add_keys(Desk& desk, const ui::Rect& rect) {
    Form foot(desk, rect, "shop/rack");
    ShopDraft draft(desk);
    for (const bool drop : {false, true}) {
        const char* words = drop ? "Add a drop" : "Add a bar";
        if (!foot.key(words, drop ? "add-drop" : "add-bar", words))
            continue;
        auto& rack = draft.change().rack;
        rack.push_back(next_bar(desk, drop));
        desk.state.tool = static_cast<int>(rack.size()) - 1;
    }
    draft.send();
    return foot.bottom();
}

} // namespace

float rack_form(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    {
        ShopDraft draft(desk);
        Form head(desk, rest, "shop", 200);
        rules(head, draft, desk.session.shop().rules);
        draft.send(head);
        head.heading("Bars and drops");
        head.words("What is in the rack is used first, drops before bars. A bar without a number "
                   "can be bought. With a price at every length the cheapest bars are looked for.");
        if (desk.session.shop().rack.empty())
            head.words("Nothing is in the rack yet, so that no bar can be cut: add the first one.");
        rest.y = head.bottom();
    }
    const auto& rack = desk.session.shop().rack;
    const float height = ui::row_height(ui, 62);
    for (std::size_t i = 0; i < rack.size(); ++i) {
        const bool chosen = static_cast<int>(i) == desk.state.tool;
        const std::string title = words_of(desk, rack[i]);
        const std::string detail = supply_words(desk, rack[i]);
        ui::ListRow row;
        row.title = title;
        row.detail = detail;
        row.selected = chosen;
        if (ui::list_row(ui, "rack-" + std::to_string(i), rest.cut_top(height), row).pressed) {
            desk.state.tool = static_cast<int>(i);
            ui.want_frame();
        }
        if (chosen)
            rest.y = one_bar(desk, {rest.x + 16, rest.y + 4, rest.w - 16, rest.h}, i);
    }
    return add_keys(desk, rest);
}

} // namespace treadle::views
