// The example of an input: what a list of calculations shows, and what tests start from.
//
// Text      as it is typed: "1-1/8 in"
// List      items with a semicolon after each but the last: "50 mm; 100 mm"; one alone: "50 mm;"
// Object    "angle=90 deg, radius=6 mm"
// The example of a word is the first of its choices.

#pragma once

#include "calc/calculation.h"
#include "calc/value.h"

namespace treadle::calc {

[[nodiscard]] Input example_input(const InputSpec& spec);

} // namespace treadle::calc
