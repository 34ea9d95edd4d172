// The formula cards of this room, and the list that feeds workings, sheets and tests.
//
// Each card stands beside its formula in the .cpp of the same header; only the list is here.

#pragma once

#include "base/formula_card.h"

#include <span>

namespace treadle::supply {

extern const base::FormulaCard k_motor_full_load_card;
extern const base::FormulaCard k_motor_conductor_card;
extern const base::FormulaCard k_motor_breaker_card;
extern const base::FormulaCard k_locked_power_card;
extern const base::FormulaCard k_locked_current_card;
extern const base::FormulaCard k_wire_table_card;
extern const base::FormulaCard k_wire_metric_card;
extern const base::FormulaCard k_wire_formula_card;
extern const base::FormulaCard k_cord_ampacity_card;
extern const base::FormulaCard k_cord_drop_card;
extern const base::FormulaCard k_cord_longest_card;
extern const base::FormulaCard k_generator_running_card;
extern const base::FormulaCard k_generator_surge_card;
extern const base::FormulaCard k_generator_triple_card;
extern const base::FormulaCard k_generator_power_card;
extern const base::FormulaCard k_generator_derated_card;
extern const base::FormulaCard k_lift_limit_card;
extern const base::FormulaCard k_lift_index_card;
extern const base::FormulaCard k_lift_reach_card;
extern const base::FormulaCard k_lift_team_card;

/// Every card above, once.
[[nodiscard]] std::span<const base::FormulaCard* const> cards();

} // namespace treadle::supply
