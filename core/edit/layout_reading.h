// What a front end shows of layouts: the kinds and their fields, and what given values would make.
//
// All in words of the job's units, so that page and command say the same and neither computes.

#pragma once

#include "base/result.h"
#include "edit/layouts.h"
#include "job/job.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "assembly/made.h"

namespace treadle::edit {

enum class FieldKind { length, angle, ratio, count, bolt, section, grade, choice };
struct LayoutField {
    std::string name;
    std::string title; ///< "bottom gap"
    std::string meaning;
    std::string example;
    FieldKind kind = FieldKind::length;
    std::vector<std::string> choices;
    std::vector<std::string> choice_words; ///< the same, as they are read
    bool required = false;
};
struct LayoutKindRow {
    std::string id;
    std::string title;
    std::string words;
};
[[nodiscard]] std::vector<LayoutKindRow> layout_kinds();
/// Empty for an unknown kind.
[[nodiscard]] std::vector<LayoutField> layout_fields(std::string_view kind);
/// To start from: the examples, in the units of the job.
[[nodiscard]] std::vector<job::LayoutValue> layout_example(std::string_view kind, UnitSystem units);

struct LayoutPartRow {
    std::string role;
    std::string mark;
    int count = 0;
    std::string words; ///< "20 of Square 3/4, 35-1/4 in"
    std::string note;
};
struct LayoutRuleRow {
    assembly::Held held = assembly::Held::meets;
    std::string words;  ///< "opening between pickets: 3-13/16 in, under 4 in"
    std::string answer; ///< "meets IRC, opening"
    std::string source; ///< key of assets/sources.json
    std::string evidence;
    std::string remark;
};
struct LayoutFigureRow {
    std::string words;
    std::string value;
};
struct LayoutReading {
    std::optional<base::Refusal> refusal; ///< then nothing else
    std::vector<LayoutPartRow> parts;
    std::vector<LayoutRuleRow> rules;
    std::vector<LayoutFigureRow> figures;
    std::vector<std::string> marks; ///< rows of places to be marked, in words
    std::vector<Working> workings;
    std::vector<std::string> templates; ///< paper templates that go with the parts, in words
    std::vector<std::string> cautions;
    assembly::Elevation elevation;
    assembly::Held worst = assembly::Held::meets;
};
[[nodiscard]] LayoutReading
read_layout(const job::Job& job, const AddLayout& asked, const job::Catalog& catalog);

/// A layout of the job in a list.
struct LayoutRow {
    std::string id;
    std::string mark;
    std::string title;
    int parts = 0;    ///< linked
    int detached = 0; ///< changed or removed by hand
};
[[nodiscard]] std::vector<LayoutRow> layouts_of(const job::Job& job);

/// Where a part comes from, in words: "Guard or railing, level, G1: top rail"; empty for a typed
/// one.
struct PartOrigin {
    std::string layout; ///< id
    std::string words;
    bool detached = false;
};
[[nodiscard]] PartOrigin part_origin(const job::Job& job, std::string_view part_id);

} // namespace treadle::edit
