// The formula cards of this room, and the list that feeds workings, sheets and tests.
//
// Most figures of a layout are core/layout's; here stand the few that only a whole layout asks for.

#pragma once

#include "base/formula_card.h"

#include <span>

namespace treadle::assembly {

extern const base::FormulaCard k_raked_rail_card;
extern const base::FormulaCard k_gate_leaf_card;
extern const base::FormulaCard k_offset_leg_card;
extern const base::FormulaCard k_one_saddle_card;
extern const base::FormulaCard k_even_frame_across_card;

/// Every card above, once.
[[nodiscard]] std::span<const base::FormulaCard* const> cards();

} // namespace treadle::assembly
