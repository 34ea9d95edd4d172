// assets/catalog/*.json: tables of the trade. Their numbers stand in one unit each, named by the
// key; what the publication printed stands beside them and is compared by the tests.

#include "archive/archive.h"
#include "archive/readers.h"
#include "quantity/quantity.h"

#include "assets/embedded.h"

namespace treadle::archive {

namespace {

struct GradeRow {
    Grade grade;
};
struct BandRow {
    material::StrengthBand band;
};

} // namespace

static void read_value(const Place& at, BandRow& out) {
    double up_to_mm = 0.0;
    double yield_MPa = 0.0;
    double tensile_MPa = 0.0;
    double upper_MPa = 0.0;
    Members members(at);
    members.need("up_to_mm", up_to_mm).need("yield_minimum_MPa", yield_MPa);
    members.need("tensile_minimum_MPa", tensile_MPa).need("tensile_upper_MPa", upper_MPa);
    members.pass_over("up_to_as_printed");
    members.pass_over("as_printed");
    members.finish();
    out.band = {millimetres(up_to_mm),
                megapascals(yield_MPa),
                megapascals(tensile_MPa),
                megapascals(upper_MPa)};
}

static void read_value(const Place& at, GradeRow& out) {
    Grade& grade = out.grade;
    std::vector<BandRow> bands;
    double density_kg_per_m3 = 0.0;
    double modulus_GPa = 0.0;
    Members members(at);
    members.need("id", grade.id).need("name", grade.name).need("standard", grade.standard);
    members.need("family", grade.family).need("bands", bands);
    members.need("shear_ratio", grade.shear_ratio).need("elongation_pct", grade.elongation_pct);
    members.need("density_kg_per_m3", density_kg_per_m3).need("modulus_GPa", modulus_GPa);
    members.need("bend_group", grade.bend_group).need("air_bend_share", grade.air_bend_share);
    members.may("refusal", grade.refusal).need("source", grade.source);
    members.need("evidence", grade.evidence).may("note", grade.note);
    members.finish();
    for (const BandRow& row : bands)
        grade.bands.push_back(row.band);
    grade.density = quantity::kilograms_per_cubic_metre(density_kg_per_m3);
    grade.modulus = megapascals(modulus_GPa * 1000.0);
    if (at.failed())
        return;
    if (const auto made = material::checked(grade); !made.ok())
        at.refuse(made.refusal());
}

static void read_value(const Place& at, equipment::Caution& out) {
    Members members(at);
    members.need("id", out.id).need("words", out.words);
    members.may("anchor", out.anchor).may("evidence", out.evidence);
    members.may("general", out.general).may("least_operators", out.least_operators);
    members.may("works", out.works).may("metals", out.metals);
    members.may("stations", out.stations).may("attachments", out.attachments);
    members.finish();
}

static void read_value(const Place& at, section::CatalogSection& out) {
    double width_mm = 0.0;
    double height_mm = 0.0;
    double thickness_mm = 0.0;
    double flange_thickness_mm = 0.0;
    double root_radius_mm = 0.0;
    double mass_kg_per_m = 0.0;
    Members members(at);
    members.need("designation", out.section.designation).need("shape", out.section.shape);
    members.need("width_mm", width_mm).may("height_mm", height_mm);
    members.may("thickness_mm", thickness_mm).may("flange_thickness_mm", flange_thickness_mm);
    members.may("root_radius_mm", root_radius_mm).may("printed_mass_kg_per_m", mass_kg_per_m);
    members.need("source", out.source).need("evidence", out.evidence);
    members.pass_over("as_printed");
    members.pass_over("mass_as_printed");
    members.finish();
    out.section.width = millimetres(width_mm);
    out.section.height = millimetres(height_mm);
    out.section.thickness = millimetres(thickness_mm);
    out.section.flange_thickness = millimetres(flange_thickness_mm);
    out.section.root_radius = millimetres(root_radius_mm);
    out.printed_mass = quantity::kilograms_per_metre(mass_kg_per_m);
    if (at.failed())
        return;
    if (const auto made = section::checked(out.section); !made.ok())
        at.refuse(made.refusal());
}

namespace {

template <class Row>
base::Result<std::vector<Row>> read_rows(std::string_view bytes) {
    const base::Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    std::vector<Row> rows;
    read_value(Place(reading, 0), rows);
    if (reading.refusal)
        return std::move(*reading.refusal);
    return rows;
}

} // namespace

base::Result<material::GradeTable> read_grades(std::string_view bytes) {
    auto rows = read_rows<GradeRow>(bytes);
    if (!rows.ok())
        return rows.refusal();
    material::GradeTable table;
    for (GradeRow& row : std::move(rows).value())
        table.rows.push_back(std::move(row.grade));
    return table;
}

base::Result<section::SectionTable> read_sections(std::string_view bytes) {
    auto rows = read_rows<section::CatalogSection>(bytes);
    if (!rows.ok())
        return rows.refusal();
    return section::SectionTable{std::move(rows).value()};
}

base::Result<equipment::CautionTable> read_cautions(std::string_view bytes) {
    const auto tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    const Place root(reading, 0);
    Members members(root);
    std::string format;
    int version = 0;
    equipment::CautionTable table;
    members.need("format", format).need("version", version).pass_over("note");
    members.need("cautions", table);
    members.finish();
    if (!root.failed() && (format != "treadle-cautions" || version != 1))
        root.refuse("This is not the table of cautions.", "", "format");
    if (reading.refusal)
        return std::move(*reading.refusal);
    if (auto fault = equipment::fault_in(table))
        return std::move(*fault);
    return table;
}

base::Result<job::Catalog> read_catalog() {
    const auto grades_file = assets::embedded("catalog/grades.json");
    const auto sections_file = assets::embedded("catalog/sections.json");
    if (!grades_file || !sections_file)
        return base::Refusal{"catalog", "This program was built without its catalogue.", ""};
    auto grades = read_grades(*grades_file);
    if (!grades.ok())
        return grades.refusal();
    auto sections = read_sections(*sections_file);
    if (!sections.ok())
        return sections.refusal();
    const auto cautions_file = assets::embedded("cautions.json");
    auto cautions = read_cautions(cautions_file.value_or(""));
    if (!cautions.ok())
        return cautions.refusal();
    return job::Catalog{
        std::move(grades).value(), std::move(sections).value(), std::move(cautions).value()};
}

} // namespace treadle::archive
