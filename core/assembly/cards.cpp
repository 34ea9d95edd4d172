#include "assembly/cards.h"

namespace treadle::assembly {

std::span<const base::FormulaCard* const> cards() {
    static constexpr const base::FormulaCard* k_cards[] = {&k_raked_rail_card,
                                                           &k_gate_leaf_card,
                                                           &k_offset_leg_card,
                                                           &k_one_saddle_card,
                                                           &k_even_frame_across_card};
    return k_cards;
}

} // namespace treadle::assembly
