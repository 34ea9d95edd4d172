// The kinds of layout by name: texts in, parts and rules out.
//
// One rule binds all: what is made depends on the kind, its values and the tables, on nothing
// before. So a layout of a job can be made again at any time, on any device.

#pragma once

#include "base/result.h"
#include "calc/calculation.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "assembly/made.h"

namespace treadle::assembly {

using Values = std::vector<job::LayoutValue>;

/// What stands around a layout; all of it outlives the call.
struct Ground {
    const job::Catalog& catalog;
    const std::vector<Grade>& own_grades;
    UnitSystem units = UnitSystem::inch; ///< of the usual margins and steps, and of bare numbers
};

class Inputs;

struct Kind {
    const char* id;    ///< "guard-run"
    const char* title; ///< "Guard or railing, level"
    const char* words; ///< one sentence: what it makes
    std::span<const calc::InputSpec> inputs;
    base::Result<Made> (*make)(Inputs& in, const std::string& mark);
};

[[nodiscard]] std::span<const Kind* const> kinds();
[[nodiscard]] const Kind* find_kind(std::string_view id);

/// Refuses with the input's own name as the field: unknown, missing, twice given, without a unit
/// where none is meant, out of range. "kind" for an unknown kind, "mark" for one that is too long.
[[nodiscard]] base::Result<Made>
make(std::string_view kind, const std::string& mark, const Values& values, const Ground& ground);

/// The same values with a unit behind every bare length, so that they mean the same in a job of
/// other units; what cannot be read, and what is empty, is left out of it or as it is.
[[nodiscard]] Values with_units(const Kind& kind, const Values& values, UnitSystem units);

/// The examples of the required inputs, to start from.
[[nodiscard]] Values example_values(const Kind& kind);

} // namespace treadle::assembly
