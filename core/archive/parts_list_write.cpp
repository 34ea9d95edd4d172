// Writing parts lists: section_text of parts_list_section.h, and the writers of parts_list.h.

#include "archive/parts_list.h"
#include "archive/parts_list_section.h"
#include "quantity/print.h"

#include <initializer_list>

namespace treadle::archive {

using section::Shape;

std::string
section_text(const Section& section, UnitSystem units, const section::SectionTable& table) {
    const auto size = [units](Length value) { return quantity::write_exact(value, units); };
    const section::CatalogSection* row =
        section.designation.empty() ? nullptr : table.find(section.designation);
    const auto same = [&section](const Section& other) {
        return other.shape == section.shape && other.width == section.width &&
               other.height == section.height && other.thickness == section.thickness &&
               other.flange_thickness == section.flange_thickness &&
               other.root_radius == section.root_radius && other.designation == section.designation;
    };
    if (row != nullptr && section.shape != Shape::plate && same(row->section))
        return section.designation;
    std::string text;
    const auto sides = [&text, &size](const char* word, std::initializer_list<Length> values) {
        text = word;
        const char* between = " ";
        for (const Length value : values) {
            text += between + size(value);
            between = " x ";
        }
    };
    switch (section.shape) {
    case Shape::flat:
    case Shape::plate:
        sides(section.shape == Shape::flat ? "flat" : "plate", {section.width, section.thickness});
        break;
    case Shape::angle:
        sides("angle", {section.width, section.height, section.thickness});
        break;
    case Shape::channel:
        sides("channel",
              {section.height, section.width, section.thickness, section.flange_thickness});
        break;
    // "square 20 mm" is a name of the catalogue, "square bar 20 mm" is only that size.
    case Shape::round:
    case Shape::square:
        sides(section.shape == Shape::round ? "round bar" : "square bar", {section.width});
        break;
    case Shape::pipe:
        sides("round tube", {section.width, section.thickness});
        break;
    case Shape::square_tube:
        sides("tube", {section.width, section.height, section.thickness});
        break;
    }
    if (section.root_radius != Length{})
        text += " r " + size(section.root_radius);
    return section.designation.empty() ? text : text + " (" + section.designation + ")";
}

namespace {

/// "4 in + 6 in" for the legs of a bent part.
std::string length_text(const job::Part& part, UnitSystem units) {
    if (part.legs.empty())
        return quantity::write_exact(part.length, units);
    std::string text;
    for (const Length leg : part.legs)
        text += (text.empty() ? "" : " + ") + quantity::write_exact(leg, units);
    return text;
}

} // namespace

std::string write_parts_csv(const job::Job& job, const job::Catalog& catalog) {
    std::string out = "Mark,Count,Section,Length,Grade,Note\r\n";
    const UnitSystem units = job.style.system;
    for (const job::PartRef& part : job.parts) {
        add_cell(out, part->mark, false);
        add_cell(out, std::to_string(part->count), false);
        add_cell(out, section_text(part->section, units, catalog.sections), false);
        add_cell(out, length_text(*part, units), false);
        add_cell(out, part->grade, false);
        add_cell(out, part->note, true);
    }
    return out;
}

/// A full table has no column left for the reasons: the last one that means nothing makes room, so
/// that the list can be read again. -1: none has to.
static int column_for_reasons(const Table& table, const Mapping& mapping) {
    if (table.columns < k_most_columns)
        return -1;
    for (int column = table.columns - 1; column > 0; --column)
        if (mapping.columns[static_cast<std::size_t>(column)].holds == Column::nothing)
            return column;
    return -1;
}

std::string
write_refused_rows_csv(const Table& table, const Mapping& mapping, const ReadParts& read) {
    std::string out;
    const int left_out = column_for_reasons(table, mapping);
    const auto add_row = [&](int row, const std::string& reason) {
        for (int column = 0; column < table.columns; ++column)
            if (column != left_out)
                add_cell(out,
                         row < 0 ? mapping.columns[static_cast<std::size_t>(column)].heading
                                 : table.cell(row, column),
                         false);
        add_cell(out, reason, true);
    };
    add_row(mapping.heading_row, "Reason");
    for (const RefusedRow& refused : read.refused) {
        const base::Refusal& why = refused.refusal;
        const std::string column = refused.heading.empty() ? "" : refused.heading + ": ";
        add_row(refused.row - 1,
                column + why.reason + (why.detail.empty() ? "" : " " + why.detail));
    }
    return out;
}

} // namespace treadle::archive
