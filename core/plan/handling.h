// Who carries a piece, and what holds its far end up: warnings, they decide no verdict.
//
// The limit for one person is the shop's own. Two people together lift 2/3 of what they lift each
// for himself (supply's card lift-team), so over 4/3 of one person's limit it takes a hoist.

#pragma once

#include "plan/plan.h"

#include <string>

namespace treadle::plan {

enum class Carriers { one, two, hoist };
/// A limit of nothing is not asked for: the house rules refuse it.
[[nodiscard]] Carriers carriers(Mass piece, Mass one_person);
/// What two people may lift together.
[[nodiscard]] Mass limit_of_two(Mass one_person);

/// For the head of a sheet: "every piece within 50 lb, one person"; "BP2: two people or a hoist;
/// CL1: a hoist"; "not checked: the house rules have no lift limit".
[[nodiscard]] std::string
handling_words(const Plan& plan, const equipment::Shop& shop, PrintStyle style);

} // namespace treadle::plan
