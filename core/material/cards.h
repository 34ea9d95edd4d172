// The formula cards of this room, and the list that feeds workings, sheets and tests.

#pragma once

#include "base/formula_card.h"

#include <span>

namespace treadle::material {

extern const base::FormulaCard k_shear_strength_card;

/// Every card above, once.
[[nodiscard]] std::span<const base::FormulaCard* const> cards();

} // namespace treadle::material
