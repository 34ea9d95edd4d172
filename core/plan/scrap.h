// What falls in a set-up: slugs under the die, trimmings of a notch, ends of a cut.
//
// Formula   slugs = strokes of the step; one a stroke. A hole larger than its punch is nibbled and
//           its slugs are as many pieces as strokes
// Source    derived from the plan's strokes; what becomes of it is common practice, no source

#pragma once

#include "plan/plan.h"

#include <string>
#include <vector>

namespace treadle::plan {

/// "96 slugs of 13/16 round: clear them with the machine at rest."; empty where nothing falls.
[[nodiscard]] std::vector<std::string>
scrap_words(const Plan& plan, const SetUp& set_up, PrintStyle style);

} // namespace treadle::plan
