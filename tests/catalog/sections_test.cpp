#include "section/section.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "catalog/rows.h"

using namespace treadle;
using catalog::Json;
using section::Section;
using section::Shape;

namespace {

const std::map<std::string, Shape> k_shapes{{"flat", Shape::flat},
                                            {"plate", Shape::plate},
                                            {"angle", Shape::angle},
                                            {"channel", Shape::channel},
                                            {"round", Shape::round},
                                            {"square", Shape::square},
                                            {"pipe", Shape::pipe},
                                            {"square_tube", Shape::square_tube}};

double size(const Json& row, const char* key) {
    return row.contains(key) ? row.at(key).get<double>() : 0.0;
}

Section section_of(const Json& row) {
    Section section;
    section.shape = k_shapes.at(row.at("shape").get<std::string>());
    section.designation = row.at("designation").get<std::string>();
    section.width = millimetres(size(row, "width_mm"));
    section.height = millimetres(size(row, "height_mm"));
    section.thickness = millimetres(size(row, "thickness_mm"));
    section.flange_thickness = millimetres(size(row, "flange_thickness_mm"));
    section.root_radius = millimetres(size(row, "root_radius_mm"));
    return section;
}

/// The sizes in the order in which tables print them for the shape.
std::vector<double> sizes_as_printed(const Section& s) {
    const auto mm = [](Length q) { return quantity::to_millimetres(q); };
    switch (s.shape) {
    case Shape::angle:
        if (s.root_radius > Length{})
            return {mm(s.width), mm(s.height), mm(s.thickness), mm(s.root_radius)};
        return {mm(s.width), mm(s.height), mm(s.thickness)};
    case Shape::channel:
        return {mm(s.height), mm(s.width), mm(s.thickness), mm(s.flange_thickness)};
    case Shape::square_tube:
        return {mm(s.width), mm(s.height), mm(s.thickness)};
    case Shape::round:
    case Shape::square:
        return {mm(s.width)};
    case Shape::flat:
    case Shape::plate:
    case Shape::pipe:
        return {mm(s.width), mm(s.thickness)};
    }
    return {};
}

} // namespace

TEST_CASE("every section row has its keys, a source and evidence, and makes its shape") {
    const Json rows = catalog::read("catalog/sections.json");
    const Json sources = catalog::read("sources.json");
    std::set<Shape> shapes;
    for (const Json& row : rows) {
        const std::string designation = row.at("designation").get<std::string>();
        CAPTURE(designation);
        catalog::check_source_and_evidence(row, sources);
        const Section section = section_of(row);
        CHECK(checked(section).ok());
        shapes.insert(section.shape);
    }
    CHECK(rows.size() >= 400);
    CHECK(shapes.size() == 8);
}

TEST_CASE("each designation finds its own row") {
    section::SectionTable table;
    for (const Json& row : catalog::read("catalog/sections.json"))
        table.rows.push_back({section_of(row), {}, "", base::Evidence::published});
    for (const section::CatalogSection& row : table.rows) {
        CAPTURE(row.section.designation);
        CHECK(table.find(row.section.designation) == &row);
    }
    CHECK(table.find("l3x3x1/4") != nullptr);
}

TEST_CASE("sizes used are the printed ones") {
    for (const Json& row : catalog::read("catalog/sections.json")) {
        const std::string designation = row.at("designation").get<std::string>();
        CAPTURE(designation);
        const auto printed = catalog::printed_lengths_mm(row.at("as_printed").get<std::string>());
        const auto used = sizes_as_printed(section_of(row));
        REQUIRE(printed.size() == used.size());
        for (std::size_t i = 0; i < used.size(); ++i)
            CHECK(std::abs(used[i] - printed[i]) < 1e-6);
    }
}

// 5 %: catches a swapped or mistyped size; the tables themselves are held to their own tolerance
// by tests/published_sections.
TEST_CASE("printed masses are converted as printed and belong to the sizes") {
    int compared = 0;
    for (const Json& row : catalog::read("catalog/sections.json")) {
        const std::string designation = row.at("designation").get<std::string>();
        CAPTURE(designation);
        CHECK(row.contains("printed_mass_kg_per_m") == row.contains("mass_as_printed"));
        if (!row.contains("printed_mass_kg_per_m"))
            continue;
        const double used = row.at("printed_mass_kg_per_m").get<double>();
        const double printed = catalog::printed_mass(row.at("mass_as_printed").get<std::string>());
        CHECK(std::abs(used - printed) < 1e-6);
        const auto ours =
            mass_per_length(section_of(row), quantity::kilograms_per_cubic_metre(7850));
        CHECK(std::abs(quantity::to_kilograms_per_metre(ours) - used) <= 0.05 * used);
        ++compared;
    }
    CHECK(compared >= 125);
}
