#include "ui/views/grade_form.h"

#include "ui/views/form.h"

namespace treadle::views {

namespace {

std::string free_id(const job::Job& job) {
    for (std::size_t number = 1;; ++number) {
        const std::string id = "own-" + std::to_string(number);
        bool taken = false;
        for (const Grade& grade : job.own_grades)
            taken = taken || grade.id == id;
        if (!taken)
            return id;
    }
}

const Grade* own_grade(const job::Job& job, const std::string& id) {
    for (const Grade& grade : job.own_grades) {
        if (grade.id == id)
            return &grade;
    }
    return nullptr;
}

/// Strengths typed by hand hold up to a thickness typed by hand: one band.
void one_band(Form& form, const Grade& grade, Grade& draft, bool& changed) {
    const material::StrengthBand band =
        grade.bands.empty() ? material::StrengthBand{} : grade.bands.back();
    material::StrengthBand next = band;
    const auto stress = [&](const char* label,
                            const char* key,
                            Stress material::StrengthBand::*of,
                            const char* note) {
        std::optional<Stress> shown;
        if (band.*of > Stress{})
            shown = band.*of;
        if (const auto typed = form.maybe(label, key, shown, note)) {
            next.*of = typed->value_or(Stress{});
            changed = true;
        }
    };
    stress(
        "Least tensile strength", "tensile_minimum", &material::StrengthBand::tensile_minimum, "");
    stress("Greatest tensile strength",
           "tensile_upper",
           &material::StrengthBand::tensile_upper,
           "decides every verdict");
    stress("Least yield strength", "yield_minimum", &material::StrengthBand::yield_minimum, "");
    if (const auto typed = form.length("Up to a thickness of", "up_to", band.up_to)) {
        next.up_to = *typed;
        changed = true;
    }
    if (changed)
        draft.bands = {next};
}

} // namespace

float grade_form(Desk& desk, const ui::Rect& rect, const job::Part& part) {
    const job::Job& job = desk.session.job();
    Form form(desk, rect, "grade/" + part.grade);
    form.heading("Own grade");
    const Grade* grade = own_grade(job, part.grade);
    if (!grade) {
        const Grade* like = job::find_grade(job, desk.session.catalog(), part.grade);
        form.words("A grade of your own starts as a copy of the one chosen above. Type in what its "
                   "certificate or standard says, then choose it for the part.");
        if (like && form.key("Copy " + like->name, "new", "Own grade from " + like->name)) {
            Grade own = *like;
            own.id = free_id(job);
            own.name = like->name + ", own";
            own.standard.clear();
            own.evidence = base::Evidence::from_memory;
            desk.ask(PlainEdit{edit::SetOwnGrade{own}, "", false});
            job::Part changed = part;
            changed.grade = own.id;
            desk.ask(PlainEdit{edit::ReplacePart{std::move(changed)}, "", false});
        }
        return form.bottom();
    }
    Grade draft = *grade;
    bool changed = false;
    if (const auto typed = form.text("Name of the grade", "name", grade->name)) {
        draft.name = *typed;
        changed = true;
    }
    bool band_changed = false;
    one_band(form, *grade, draft, band_changed);
    if (const auto typed = form.ratio("Shear over tensile", "shear_ratio", grade->shear_ratio)) {
        draft.shear_ratio = *typed;
        changed = true;
    }
    if (const auto typed = form.density("Density", "density", grade->density)) {
        draft.density = *typed;
        changed = true;
    }
    if (changed || band_changed)
        desk.ask(FieldEdit{form.field(), form.typed(), edit::SetOwnGrade{std::move(draft)}});
    return form.bottom();
}

} // namespace treadle::views
