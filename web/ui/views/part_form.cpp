#include "ui/views/part_form.h"

#include "ui/views/form.h"
#include "ui/views/grade_form.h"
#include "ui/views/parts_edit.h"

#include <array>

namespace treadle::views {

namespace {

using section::Shape;

constexpr std::array k_shapes = {Shape::flat,
                                 Shape::plate,
                                 Shape::angle,
                                 Shape::channel,
                                 Shape::round,
                                 Shape::square,
                                 Shape::pipe,
                                 Shape::square_tube};

const std::array<std::string, 3> k_grains = {"Not known", "Across the bend", "Along the bend"};

std::string capital(const char* word) {
    std::string text(word);
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

void grade_choice(Desk& desk, Form& form, PartDraft& draft, const job::Part& part) {
    std::vector<std::string> names;
    std::vector<const Grade*> grades;
    int selected = -1;
    const auto add = [&](const Grade& grade) {
        if (grade.id == part.grade && selected < 0)
            selected = static_cast<int>(grades.size());
        names.push_back(grade.name);
        grades.push_back(&grade);
    };
    for (const Grade& grade : desk.session.job().own_grades)
        add(grade);
    for (const Grade& grade : desk.session.catalog().grades.rows)
        add(grade);
    if (const auto chosen = form.choice("Grade", "grade", names, selected))
        draft.change().grade = grades[static_cast<std::size_t>(*chosen)]->id;
}

void shape_choice(Desk& desk, Form& form, PartDraft& draft, const job::Part& part) {
    std::vector<std::string> names;
    int selected = -1;
    for (std::size_t i = 0; i < k_shapes.size(); ++i) {
        names.push_back(capital(section::shape_word(k_shapes[i])));
        if (k_shapes[i] == part.section.shape)
            selected = static_cast<int>(i);
    }
    if (const auto chosen = form.choice("Section", "section.shape", names, selected)) {
        const Shape shape = k_shapes[static_cast<std::size_t>(*chosen)];
        draft.change().section = starting_section(desk.style().system, shape);
    }
}

void catalogue_choice(Desk& desk, Form& form, PartDraft& draft, const job::Part& part) {
    std::vector<std::string> names = {"Sizes as typed"};
    std::vector<const Section*> sections = {nullptr};
    int selected = 0;
    for (const section::CatalogSection& row : desk.session.catalog().sections.rows) {
        if (row.section.shape != part.section.shape)
            continue;
        if (row.section.designation == part.section.designation)
            selected = static_cast<int>(sections.size());
        names.push_back(row.section.designation);
        sections.push_back(&row.section);
    }
    if (sections.size() == 1)
        return;
    const auto chosen = form.choice("From the catalogue", "section.designation", names, selected);
    if (!chosen)
        return;
    if (const Section* section = sections[static_cast<std::size_t>(*chosen)])
        draft.change().section = *section;
    else
        draft.change().section.designation.clear();
}

struct SizeField {
    const char* label;
    const char* key;
    Length Section::*member;
};

std::vector<SizeField> sizes_of(Shape shape) {
    const SizeField thickness{"Thickness", "section.thickness", &Section::thickness};
    const auto wide = [](const char* label) {
        return SizeField{label, "section.width", &Section::width};
    };
    const auto high = [](const char* label) {
        return SizeField{label, "section.height", &Section::height};
    };
    const auto radius = [](const char* label) {
        return SizeField{label, "section.root_radius", &Section::root_radius};
    };
    switch (shape) {
    case Shape::flat:
    case Shape::plate:
        return {thickness, wide("Width")};
    case Shape::angle:
        return {wide("Leg a"), high("Leg b"), thickness, radius("Root radius")};
    case Shape::channel:
        return {high("Depth"),
                wide("Flange width"),
                {"Web thickness", "section.thickness", &Section::thickness},
                {"Flange thickness", "section.flange_thickness", &Section::flange_thickness}};
    case Shape::round:
        return {wide("Diameter")};
    case Shape::square:
        return {wide("Side")};
    case Shape::pipe:
        return {wide("Outside diameter"),
                {"Wall thickness", "section.thickness", &Section::thickness}};
    case Shape::square_tube:
        return {wide("Width"),
                high("Height"),
                {"Wall thickness", "section.thickness", &Section::thickness},
                radius("Corner radius")};
    }
    return {};
}

void sizes(Form& form, PartDraft& draft, const job::Part& part) {
    for (const SizeField& size : sizes_of(part.section.shape)) {
        if (const auto typed = form.length(size.label, size.key, part.section.*size.member)) {
            draft.change().section.*size.member = *typed;
            draft.change().section.designation.clear();
        }
    }
}

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
    grade_choice(desk, form, draft, part);
    shape_choice(desk, form, draft, part);
    sizes(form, draft, part);
    lengths(form, draft, part);
    catalogue_choice(desk, form, draft, part);
    grain_and_certificate(form, draft, part);
    if (const auto typed = form.text("Note on the sheet", "note", part.note))
        draft.change().note = *typed;
    draft.send(form.field(), form.typed());

    form.new_line();
    if (form.key("Copy this part", "copy", "Copy " + part.mark))
        copy_part(desk, part);
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
