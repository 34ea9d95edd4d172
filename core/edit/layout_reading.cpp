#include "edit/layout_reading.h"

#include "plan/words.h"
#include "quantity/parse.h"

#include <algorithm>

#include "assembly/kind.h"
#include "assembly/words.h"
#include "layout/running.h"

namespace treadle::edit {

namespace {

using assembly::Held;
using calc::InputKind;

FieldKind field_kind(InputKind kind) {
    switch (kind) {
    case InputKind::angle:
        return FieldKind::angle;
    case InputKind::ratio:
        return FieldKind::ratio;
    case InputKind::count:
        return FieldKind::count;
    case InputKind::bolt:
        return FieldKind::bolt;
    case InputKind::section:
        return FieldKind::section;
    case InputKind::material:
        return FieldKind::grade;
    case InputKind::word:
        return FieldKind::choice;
    default:
        return FieldKind::length;
    }
}

std::string spaced(std::string name) {
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

std::vector<std::string> split(std::string_view choices) {
    std::vector<std::string> out;
    while (!choices.empty()) {
        const std::size_t bar = choices.find('|');
        out.emplace_back(choices.substr(0, bar));
        choices = bar == std::string_view::npos ? std::string_view{} : choices.substr(bar + 1);
    }
    return out;
}

/// A round size near the example's, where the job is metric.
std::string metric_example(const std::string& text) {
    const auto length = quantity::parse_length(text, {}, "example");
    if (!length.ok())
        return text;
    const Length step = millimetres(*length > millimetres(60.0) ? 5.0 : 1.0);
    return quantity::write_exact(layout::to_step(*length, step), UnitSystem::metric);
}

LayoutRuleRow rule_row(const assembly::RuleLine& line, PrintStyle style) {
    return {line.held,
            assembly::rule_words(line, style),
            assembly::answer_words(line),
            line.source,
            base::evidence_words(line.evidence),
            line.remark};
}

} // namespace

std::vector<LayoutKindRow> layout_kinds() {
    std::vector<LayoutKindRow> out;
    for (const assembly::Kind* kind : assembly::kinds())
        out.push_back({kind->id, kind->title, kind->words});
    return out;
}

std::vector<LayoutField> layout_fields(std::string_view id) {
    std::vector<LayoutField> out;
    const assembly::Kind* kind = assembly::find_kind(id);
    if (kind == nullptr)
        return out;
    for (const calc::InputSpec& spec : kind->inputs) {
        LayoutField field{spec.name,
                          spaced(spec.name),
                          spec.meaning,
                          spec.example,
                          field_kind(spec.kind),
                          split(spec.choices),
                          {},
                          spec.required};
        for (const std::string& choice : field.choices)
            field.choice_words.push_back(assembly::choice_words(choice));
        out.push_back(std::move(field));
    }
    return out;
}

std::vector<job::LayoutValue> layout_example(std::string_view id, UnitSystem units) {
    const assembly::Kind* kind = assembly::find_kind(id);
    if (kind == nullptr)
        return {};
    std::vector<job::LayoutValue> values = assembly::example_values(*kind);
    if (units == UnitSystem::inch)
        return values;
    for (job::LayoutValue& value : values)
        for (const calc::InputSpec& spec : kind->inputs)
            if (value.name == spec.name && spec.kind == InputKind::length)
                value.text = metric_example(value.text);
    return values;
}

LayoutReading
read_layout(const job::Job& job, const AddLayout& asked, const job::Catalog& catalog) {
    LayoutReading out;
    const auto made = assembly::make(
        asked.kind, asked.mark, asked.values, {catalog, job.own_grades, job.style.system});
    if (!made.ok()) {
        out.refusal = made.refusal();
        return out;
    }
    for (const assembly::RolePart& part : made->parts)
        out.parts.push_back({part.role,
                             part.part.mark,
                             part.part.count,
                             plan::part_title(part.part, job.style),
                             part.part.note});
    for (const assembly::RuleLine& line : made->rules)
        out.rules.push_back(rule_row(line, job.style));
    for (const assembly::Figure& figure : made->figures)
        out.figures.push_back({figure.words, assembly::figure_words(figure, job.style)});
    for (const assembly::Marks& marks : made->marks)
        out.marks.push_back(assembly::marks_words(marks, job.style));
    for (const assembly::WrapTemplate& wrap : made->templates)
        out.templates.push_back(assembly::template_words(wrap, job.style));
    out.workings = made->workings;
    out.cautions = made->cautions;
    out.elevation = made->elevation;
    out.worst = assembly::worst(made->rules);
    return out;
}

std::vector<LayoutRow> layouts_of(const job::Job& job) {
    std::vector<LayoutRow> out;
    for (const job::Layout& layout : job.layouts) {
        const assembly::Kind* kind = assembly::find_kind(layout.kind);
        LayoutRow row{layout.id, layout.mark, kind != nullptr ? kind->title : layout.kind, 0, 0};
        for (const job::MadePart& made : layout.made)
            ++(made.detached ? row.detached : row.parts);
        out.push_back(std::move(row));
    }
    return out;
}

PartOrigin part_origin(const job::Job& job, std::string_view part_id) {
    const job::Origin origin = job::origin_of(job.layouts, part_id);
    if (origin.layout == nullptr)
        return {};
    const assembly::Kind* kind = assembly::find_kind(origin.layout->kind);
    std::string role = origin.made->role;
    std::replace(role.begin(), role.end(), '-', ' ');
    std::string words = std::string(kind != nullptr ? kind->title : origin.layout->kind) + " " +
                        origin.layout->mark + ": " + role;
    if (origin.made->detached)
        words += ", no longer linked";
    return {origin.layout->id, std::move(words), origin.made->detached};
}

} // namespace treadle::edit
