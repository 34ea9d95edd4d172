// The formula cards of this room, and the list that feeds workings, sheets and tests.
//
// Each card stands beside its formula in the .cpp of the same header; only the list is here.

#pragma once

#include "base/formula_card.h"

#include <span>

namespace treadle::process {

extern const base::FormulaCard k_punch_force_card;
extern const base::FormulaCard k_punch_stripping_card;
extern const base::FormulaCard k_punch_work_card;
extern const base::FormulaCard k_punch_smallest_card;
extern const base::FormulaCard k_punch_largest_card;
extern const base::FormulaCard k_die_clearance_card;
extern const base::FormulaCard k_flat_shear_card;
extern const base::FormulaCard k_bar_shear_card;
extern const base::FormulaCard k_angle_shear_card;
extern const base::FormulaCard k_mitre_factor_card;
extern const base::FormulaCard k_notch_force_card;
extern const base::FormulaCard k_notch_bites_card;
extern const base::FormulaCard k_bend_force_card;
extern const base::FormulaCard k_bend_force_given_card;
extern const base::FormulaCard k_usual_opening_card;
extern const base::FormulaCard k_air_bend_radius_card;
extern const base::FormulaCard k_least_leg_card;
extern const base::FormulaCard k_least_radius_plate_card;
extern const base::FormulaCard k_least_radius_practice_card;
extern const base::FormulaCard k_least_radius_din_card;
extern const base::FormulaCard k_least_radius_aluminium_card;
extern const base::FormulaCard k_least_radius_austenitic_card;
extern const base::FormulaCard k_punch_travel_card;
extern const base::FormulaCard k_bend_allowance_din_card;
extern const base::FormulaCard k_bend_allowance_given_card;
extern const base::FormulaCard k_bend_allowance_handbook_card;
extern const base::FormulaCard k_bend_deduction_din_card;
extern const base::FormulaCard k_bend_deduction_card;
extern const base::FormulaCard k_outside_setback_card;
extern const base::FormulaCard k_outside_setback_apex_card;
extern const base::FormulaCard k_blank_length_card;

/// Every card above, once.
[[nodiscard]] std::span<const base::FormulaCard* const> cards();

} // namespace treadle::process
