// Checks that look at a whole part, once all its operations have their tools.
//
// check_layout calls them; each adds to the operations' checks and decides nothing by itself.

#pragma once

#include "plan/checks.h"

#include <vector>

namespace treadle::plan {

/// One check of a rule per operation: the worst place speaks for the row.
void say_once(OperationPlan& operation, Check check);
/// Said beside the verdict, with what there should be and what there is.
[[nodiscard]] Check web_warning(Rule rule, Length needed, Length web, const char* said);

/// Holes against notches and mitred ends (cut_webs.cpp).
void check_cut_webs(const Question& question, PartPlan& plan, const std::vector<PlacedHole>& holes);

/// The same stroke asked for twice, other than holes (doubled.cpp).
void check_doubled(const Question& question, PartPlan& plan);

/// Slugs that do not fall, clearances out of the usual, the bang of hard metal (strokes.cpp).
void check_strokes(const Question& question, PartPlan& plan);

/// What lies where during a stroke: ends that the shear holds, pieces that tip (resting.cpp).
void check_resting(const Question& question, PartPlan& plan);

} // namespace treadle::plan
