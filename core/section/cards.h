// The formula cards of this room.

#pragma once

#include "base/formula_card.h"

#include <span>

namespace treadle::section {

[[nodiscard]] std::span<const base::FormulaCard* const> cards();

/// The card of mass_per_length(); its expression is the general one, the note of a working says
/// which area was used.
[[nodiscard]] const base::FormulaCard& mass_card();

} // namespace treadle::section
