#include "ui/views/trials_form.h"

#include "ui/views/metal_fields.h"
#include "ui/views/parts_edit.h"
#include "ui/views/shop_draft.h"
#include "ui/widgets/controls.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

using equipment::TrialRecord;
using equipment::TrialStrip;

const std::array<std::string, 3> k_grains = {"Any", "Across the bend", "Along the bend"};

/// One record while its form is drawn.
struct Editing {
    Form& form;
    ShopDraft& draft;
    const TrialRecord& record;
    std::size_t index;
    std::string path; ///< "trials[0]."

    TrialRecord& change() { return draft.change().trials[index]; }
    void length(const char* label, const char* name, Length TrialRecord::*member) {
        if (const auto typed = form.length(label, path + name, record.*member))
            change().*member = *typed;
    }
};

void bend_fields(Desk& desk, Editing& editing) {
    if (const auto grade =
            grade_choice(desk, editing.form, "Metal", editing.path + "grade", editing.record.grade))
        editing.change().grade = *grade;
    editing.length("Thickness", "thickness", &TrialRecord::thickness);
    editing.length("V opening", "opening", &TrialRecord::opening);
    editing.length("Inside radius", "radius", &TrialRecord::radius);
    if (const auto typed =
            editing.form.angle("Bent by", editing.path + "angle", editing.record.angle))
        editing.change().angle = *typed;
    if (const auto chosen = editing.form.choice(
            "Grain", editing.path + "grain", k_grains, static_cast<int>(editing.record.grain)))
        editing.change().grain = static_cast<material::Grain>(*chosen);
}

void strips(Editing& editing) {
    Form& form = editing.form;
    form.heading("Strips, measured outside");
    form.columns_of(110);
    const auto size =
        [&](std::size_t i, const char* label, const char* name, Length TrialStrip::*m) {
            const std::string key = editing.path + "strips[" + std::to_string(i) + "]." + name;
            if (const auto typed = form.length(label, key, editing.record.strips[i].*m))
                editing.change().strips[i].*m = *typed;
        };
    for (std::size_t i = 0; i < editing.record.strips.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        size(i, "Cut to", "blank", &TrialStrip::blank);
        size(i, "One leg", "leg_a", &TrialStrip::leg_a);
        size(i, "Other leg", "leg_b", &TrialStrip::leg_b);
        if (editing.record.strips.size() > 1 &&
            form.key("Remove", editing.path + "remove-" + number, "Remove strip " + number, true))
            editing.change().strips.erase(editing.change().strips.begin() + static_cast<int>(i));
        form.new_line();
    }
    if (form.key("Add a strip", editing.path + "add-strip", "Add a strip"))
        editing.change().strips.push_back(editing.record.strips.back());
}

void result(Desk& desk, Form& form, int record) {
    const TrialReading& reading = desk.readings.work.trial(desk.session, record);
    form.heading(reading.sound ? "What they give" : "Not used");
    form.words(reading.figures);
    if (!reading.sound)
        return;
    form.words(reading.blanks.empty() ? "No blank of this job goes by them."
                                      : "Blanks of this job that go by them:");
    for (const std::string& blank : reading.blanks)
        form.words(blank);
}

std::string words_of(const Desk& desk, const TrialRecord& record) {
    const PrintStyle style = desk.style();
    return grade_name(desk, record.grade) + ", " +
           quantity::print_decimal(record.thickness, style) + " over V " +
           quantity::print(record.opening, style);
}

/// A strip like one that the shop may have lying there: to be typed over.
TrialRecord first_record(const Desk& desk) {
    TrialRecord record;
    record.grade = first_grade(desk);
    record.angle = degrees(90.0);
    const bool inch = desk.style().system == UnitSystem::inch;
    record.thickness = inch ? inches(0.25) : millimetres(6.0);
    record.opening = inch ? inches(2.0) : millimetres(50.0);
    record.radius = inch ? inches(0.3125) : millimetres(8.0);
    record.strips.push_back(
        inch ? TrialStrip{inches(4.0), inches(2.2), inches(2.2)}
             : TrialStrip{millimetres(100.0), millimetres(55.0), millimetres(55.0)});
    return record;
}

float one_record(Desk& desk, const ui::Rect& rect, std::size_t index) {
    const TrialRecord& record = desk.session.shop().trials[index];
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 150);
    Editing editing{form, draft, record, index, "trials[" + std::to_string(index) + "]."};
    bend_fields(desk, editing);
    strips(editing);
    if (form.key("Remove this trial",
                 editing.path + "remove",
                 "Remove the trial " + words_of(desk, record),
                 true)) {
        auto& trials = draft.change().trials;
        trials.erase(trials.begin() + static_cast<int>(index));
    }
    result(desk, form, static_cast<int>(index));
    draft.send(form);
    return form.bottom();
}

} // namespace

float trials_form(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const auto& trials = desk.session.shop().trials;
    ui::Rect rest = rect;
    {
        Form head(desk, rect, "shop/trials");
        head.words("Cut strips of one metal to a measured length, bend each once over the same V, "
                   "measure both legs outside. Bends of that metal, thickness and V then go by "
                   "them, before the house's K and DIN 6935.");
        rest.y = head.bottom();
    }
    const float height = ui::row_height(ui, 44);
    for (std::size_t i = 0; i < trials.size(); ++i) {
        const bool chosen = static_cast<int>(i) == desk.state.tool;
        const std::string words = words_of(desk, trials[i]);
        ui::ListRow row;
        row.title = words;
        row.spoken = words;
        row.selected = chosen;
        if (ui::list_row(ui, "trial-" + std::to_string(i), rest.cut_top(height), row).pressed) {
            desk.state.tool = static_cast<int>(i);
            ui.want_frame();
        }
        if (chosen)
            rest.y = one_record(desk, {rest.x + 16, rest.y + 4, rest.w - 16, rest.h}, i);
    }
    rest.y += desk.ui.size().gap;
    Form foot(desk, rest, "shop/trials");
    ShopDraft draft(desk);
    if (foot.key("Add a trial", "add", "Add a trial")) {
        auto& list = draft.change().trials;
        list.push_back(list.empty() ? first_record(desk) : list.back());
        desk.state.tool = static_cast<int>(list.size()) - 1;
    }
    draft.send();
    return foot.bottom();
}

} // namespace treadle::views
