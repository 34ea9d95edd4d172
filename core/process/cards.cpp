#include "process/cards.h"

namespace treadle::process {

namespace {

constexpr const base::FormulaCard* k_cards[] = {
    &k_punch_force_card,
    &k_punch_stripping_card,
    &k_punch_work_card,
    &k_punch_smallest_card,
    &k_punch_largest_card,
    &k_die_clearance_card,
    &k_flat_shear_card,
    &k_bar_shear_card,
    &k_angle_shear_card,
    &k_mitre_factor_card,
    &k_notch_force_card,
    &k_notch_bites_card,
    &k_bend_force_card,
    &k_bend_force_given_card,
    &k_usual_opening_card,
    &k_air_bend_radius_card,
    &k_least_leg_card,
    &k_least_radius_plate_card,
    &k_least_radius_practice_card,
    &k_least_radius_din_card,
    &k_least_radius_aluminium_card,
    &k_least_radius_austenitic_card,
    &k_punch_travel_card,
    &k_bend_allowance_din_card,
    &k_bend_allowance_given_card,
    &k_bend_allowance_handbook_card,
    &k_bend_deduction_din_card,
    &k_bend_deduction_card,
    &k_outside_setback_card,
    &k_outside_setback_apex_card,
    &k_blank_length_card,
};

} // namespace

std::span<const base::FormulaCard* const> cards() { return k_cards; }

} // namespace treadle::process
