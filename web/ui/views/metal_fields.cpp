#include "ui/views/metal_fields.h"

#include "base/text.h"

#include "ui/views/parts_edit.h"

#include <array>
#include <vector>

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

struct SizeField {
    const char* label;
    const char* key;
    Length Section::*member;
};

std::vector<SizeField> sizes_of(Shape shape) {
    const SizeField thickness{"Thickness", "thickness", &Section::thickness};
    const auto wide = [](const char* label) { return SizeField{label, "width", &Section::width}; };
    const auto high = [](const char* label) {
        return SizeField{label, "height", &Section::height};
    };
    const auto radius = [](const char* label) {
        return SizeField{label, "root_radius", &Section::root_radius};
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
                {"Web thickness", "thickness", &Section::thickness},
                {"Flange thickness", "flange_thickness", &Section::flange_thickness}};
    case Shape::round:
        return {wide("Diameter")};
    case Shape::square:
        return {wide("Side")};
    case Shape::pipe:
        return {wide("Outside diameter"), {"Wall thickness", "thickness", &Section::thickness}};
    case Shape::square_tube:
        return {wide("Width"),
                high("Height"),
                {"Wall thickness", "thickness", &Section::thickness},
                radius("Corner radius")};
    }
    return {};
}

std::vector<const Grade*> grades_of(const Desk& desk) {
    std::vector<const Grade*> grades;
    for (const Grade& grade : desk.session.job().own_grades)
        grades.push_back(&grade);
    for (const Grade& grade : desk.session.catalog().grades.rows)
        grades.push_back(&grade);
    return grades;
}

} // namespace

void SectionFields::shape() const {
    std::vector<std::string> names;
    int selected = -1;
    for (std::size_t i = 0; i < k_shapes.size(); ++i) {
        names.push_back(base::capital(section::shape_word(k_shapes[i])));
        if (k_shapes[i] == section.shape)
            selected = static_cast<int>(i);
    }
    if (const auto chosen = form.choice("Section", path + "section.shape", names, selected)) {
        const section::Shape other = k_shapes[static_cast<std::size_t>(*chosen)];
        change() = starting_section(desk.style().system, other);
    }
}

void SectionFields::sizes() const {
    for (const SizeField& size : sizes_of(section.shape)) {
        const std::string key = path + "section." + size.key;
        if (const auto typed = form.length(size.label, key, section.*size.member)) {
            Section& changed = change();
            changed.*size.member = *typed;
            changed.designation.clear();
        }
    }
}

void SectionFields::catalogue() const {
    std::vector<std::string> names = {"Sizes as typed"};
    std::vector<const Section*> sections = {nullptr};
    int selected = 0;
    for (const section::CatalogSection& row : desk.session.catalog().sections.rows) {
        if (row.section.shape != section.shape)
            continue;
        if (row.section.designation == section.designation)
            selected = static_cast<int>(sections.size());
        names.push_back(row.section.designation);
        sections.push_back(&row.section);
    }
    if (sections.size() == 1)
        return;
    const auto chosen =
        form.choice("From the catalogue", path + "section.designation", names, selected);
    if (!chosen)
        return;
    if (const Section* row = sections[static_cast<std::size_t>(*chosen)])
        change() = *row;
    else
        change().designation.clear();
}

std::optional<std::string> grade_choice(const Desk& desk,
                                        Form& form,
                                        const char* label,
                                        const std::string& key,
                                        const std::string& grade) {
    const std::vector<const Grade*> grades = grades_of(desk);
    std::vector<std::string> names;
    int selected = -1;
    for (const Grade* one : grades) {
        if (one->id == grade && selected < 0)
            selected = static_cast<int>(names.size());
        names.push_back(one->name);
    }
    const auto chosen = form.choice(label, key, names, selected);
    if (!chosen)
        return std::nullopt;
    return grades[static_cast<std::size_t>(*chosen)]->id;
}

std::string grade_name(const Desk& desk, const std::string& id) {
    const Grade* grade = job::find_grade(desk.session.job(), desk.session.catalog(), id);
    return grade != nullptr ? grade->name : id;
}

} // namespace treadle::views
