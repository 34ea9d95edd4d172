// The named calculations: one formula each, asked for by name with text inputs.
//
// One rule binds all: an answer depends on its name, its input and the tables, on nothing before.
// Inputs carry their unit in the text; only ratios and angles (degrees) may be bare.

#pragma once

#include "base/formula_card.h"
#include "base/result.h"
#include "calc/value.h"
#include "material/grade.h"
#include "quantity/print.h"
#include "quantity/working.h"
#include "section/section.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::calc {

enum class InputKind {
    length,
    length_list,
    force,
    stress,
    angle,
    ratio,
    word,
    material,
    section,
    bends,
    count,
    bolt,
    voltage,
    current,
    power,
    mass
};
/// What the text must carry: "length with unit", "degrees", …
[[nodiscard]] const char* kind_hint(InputKind kind);

struct InputSpec {
    const char* name;
    InputKind kind;
    bool required;
    const char* meaning;
    const char* choices = ""; ///< for words: "round|square|…"
    /// One that works, to copy; each choice is one for a word. Lists and objects as example.h says.
    const char* example = "";
};

struct OutputSpec {
    const char* name;
    const char* unit;
    const char* meaning;
};

/// One value, or a list of lengths: ordinates, places along a part.
struct Figure {
    std::string name;
    AnyQuantity value; ///< nothing to be read when there is a list
    std::optional<std::vector<Length>> list{};
};

struct Answer {
    std::vector<Figure> figures;
    std::vector<Working> workings;
};

/// What is looked up by name; both outlive the call.
struct Tables {
    const material::GradeTable& grades;
    const section::SectionTable& sections;
};

class Reader;

struct Calculation {
    const char* name; ///< "punch.force"
    const char* title;
    std::span<const InputSpec> inputs;
    std::span<const OutputSpec> outputs;
    std::span<const base::FormulaCard* const> cards; ///< every one that its workings may show
    base::Result<Answer> (*answer)(Reader& in);
};

[[nodiscard]] std::span<const Calculation* const> all();

/// Refuses, with the input's own name as the field: unknown, missing, twice given, of the wrong
/// kind or unit, out of range. An unknown calculation is field "calc".
[[nodiscard]] base::Result<Answer>
run(std::string_view name, const Input& in, const Tables& tables);

} // namespace treadle::calc
