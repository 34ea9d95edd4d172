// Answers and the list of calculations as JSON text. Values are written unrounded, in kN, mm, mm2,
// MPa, deg, kg, kg/m, J, and "" for plain numbers. A list has "values" in place of "value".

#pragma once

#include "base/result.h"
#include "calc/calculation.h"
#include "calc/value.h"

#include <string>
#include <string_view>

namespace treadle::calc {

/// One line: {"calc":…,"out":{…},"working":[…],"sources":[…]}
[[nodiscard]] std::string answer_json(std::string_view name, const Answer& answer);
/// One line: {"error":{"field":…,"reason":…}}, with "detail" when there is one.
[[nodiscard]] std::string refusal_json(const base::Refusal& refusal);
/// The line that asks for it: {"calc":…,"in":{…}}
[[nodiscard]] std::string request_json(std::string_view name, const Input& in);
/// Every calculation with inputs, units, outputs and sources.
[[nodiscard]] std::string list_json();

} // namespace treadle::calc
