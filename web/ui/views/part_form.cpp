#include "ui/views/part_form.h"

#include "ui/views/form.h"
#include "ui/views/grade_form.h"
#include "ui/views/metal_fields.h"
#include "ui/views/parts_edit.h"

#include <array>

namespace treadle::views {

namespace {

const std::array<std::string, 3> k_grains = {"Not known", "Across the bend", "Along the bend"};

void lengths(Form& form, PartDraft& draft, const job::Part& part) {
    if (part.legs.empty()) {
        if (const auto typed = form.length("Length", "length", part.length))
            draft.change().length = *typed;
        return;
    }
    for (std::size_t i = 0; i < part.legs.size(); ++i) {
        const std::string label = "Leg " + std::to_string(i + 1) + ", outside";
        const std::string key = "legs[" + std::to_string(i) + "]";
        if (const auto typed = form.length(label, key, part.legs[i]))
            draft.change().legs[i] = *typed;
    }
}

void grain_and_certificate(Form& form, PartDraft& draft, const job::Part& part) {
    if (const auto chosen = form.choice("Grain", "grain", k_grains, static_cast<int>(part.grain)))
        draft.change().grain = static_cast<material::Grain>(*chosen);
    std::optional<Stress> read;
    if (part.certified_tensile > Stress{})
        read = part.certified_tensile;
    if (const auto typed =
            form.maybe("Certified strength", "certified_tensile", read, "Empty: none read"))
        draft.change().certified_tensile = typed->value_or(Stress{});
}

} // namespace

float part_form(Desk& desk, const ui::Rect& rect, int index) {
    const job::Part& part = *desk.session.job().parts[static_cast<std::size_t>(index)];
    PartDraft draft(desk, part);
    Form form(desk, rect, "part/" + part.id, 150);
    if (const auto typed = form.text("Mark", "mark", part.mark))
        draft.change().mark = *typed;
    if (const auto typed = form.whole("Pieces", "count", part.count))
        draft.change().count = *typed;
    if (const auto grade = grade_choice(desk, form, "Grade", "grade", part.grade))
        draft.change().grade = *grade;
    const SectionFields section{
        desk, form, "", part.section, [&]() -> Section& { return draft.change().section; }};
    section.shape();
    section.sizes();
    lengths(form, draft, part);
    section.catalogue();
    grain_and_certificate(form, draft, part);
    if (const auto typed = form.text("Note on the sheet", "note", part.note))
        draft.change().note = *typed;
    draft.send(form.field(), form.typed());

    form.new_line();
    if (form.key("Copy this part", "copy", "Copy " + part.mark))
        copy_part(desk, part);
    for (const int by : {-1, 1}) {
        const char* label = by < 0 ? "Move up" : "Move down";
        if (can_move_part(desk, index, by) &&
            form.key(label, label, std::string(label) + " in the list: " + part.mark))
            move_part(desk, index, by);
    }
    if (form.key("Own grade", "own-grade", "Type in a grade of your own"))
        desk.state.own_grade_open = !desk.state.own_grade_open;
    form.new_line();
    if (form.key("Remove this part", "remove", "Remove part " + part.mark, true))
        remove_part(desk, index);
    float bottom = form.bottom();
    if (desk.state.own_grade_open)
        bottom = grade_form(desk, {rect.x, bottom, rect.w, rect.h}, part);
    return bottom;
}

} // namespace treadle::views
