#include "supply/cards.h"

namespace treadle::supply {

namespace {

constexpr const base::FormulaCard* k_cards[] = {
    &k_motor_full_load_card,   &k_motor_conductor_card,  &k_motor_breaker_card,
    &k_locked_power_card,      &k_locked_current_card,   &k_wire_table_card,
    &k_wire_metric_card,       &k_wire_formula_card,     &k_cord_ampacity_card,
    &k_cord_drop_card,         &k_cord_longest_card,     &k_generator_running_card,
    &k_generator_surge_card,   &k_generator_triple_card, &k_generator_power_card,
    &k_generator_derated_card, &k_lift_limit_card,       &k_lift_index_card,
    &k_lift_reach_card,        &k_lift_team_card,
};

} // namespace

std::span<const base::FormulaCard* const> cards() { return k_cards; }

} // namespace treadle::supply
