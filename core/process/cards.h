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
extern const base::FormulaCard k_hole_edge_card;
extern const base::FormulaCard k_punch_stress_card;
extern const base::FormulaCard k_punch_thickest_card;
extern const base::FormulaCard k_punch_free_length_card;
extern const base::FormulaCard k_punch_free_end_card;
extern const base::FormulaCard k_bolt_hole_aisc_card;
extern const base::FormulaCard k_bolt_hole_en_card;
extern const base::FormulaCard k_punch_stroke_card;
extern const base::FormulaCard k_punch_heel_card;
extern const base::FormulaCard k_brake_opening_card;
extern const base::FormulaCard k_blade_opening_card;
extern const base::FormulaCard k_ground_careful_card;
extern const base::FormulaCard k_ground_energy_card;
extern const base::FormulaCard k_ground_sum_card;
extern const base::FormulaCard k_stripping_constant_card;
extern const base::FormulaCard k_punch_work_factor_card;
extern const base::FormulaCard k_penetration_card;
extern const base::FormulaCard k_clearance_formula_card;
extern const base::FormulaCard k_clearance_groover_card;
extern const base::FormulaCard k_clearance_handbook_card;
extern const base::FormulaCard k_clearance_pair_card;
extern const base::FormulaCard k_mitre_cut_card;
extern const base::FormulaCard k_mitred_angle_card;
extern const base::FormulaCard k_tube_shear_card;
extern const base::FormulaCard k_tube_flattening_card;
extern const base::FormulaCard k_knife_gap_card;
extern const base::FormulaCard k_least_trim_card;
extern const base::FormulaCard k_rating_thickness_card;
extern const base::FormulaCard k_rating_root_card;
extern const base::FormulaCard k_rating_width_card;
extern const base::FormulaCard k_first_bite_card;
extern const base::FormulaCard k_later_bite_card;
extern const base::FormulaCard k_vee_depth_card;
extern const base::FormulaCard k_vee_mouth_card;
extern const base::FormulaCard k_vee_cut_card;
extern const base::FormulaCard k_slot_notch_card;
extern const base::FormulaCard k_shop_force_inch_card;
extern const base::FormulaCard k_shop_force_metric_card;
extern const base::FormulaCard k_bar_bend_card;
extern const base::FormulaCard k_bottoming_card;
extern const base::FormulaCard k_bend_work_card;
extern const base::FormulaCard k_opening_for_radius_card;
extern const base::FormulaCard k_ductility_reduction_card;
extern const base::FormulaCard k_ductility_elongation_card;
extern const base::FormulaCard k_hard_way_strain_card;
extern const base::FormulaCard k_hard_way_radius_card;
extern const base::FormulaCard k_relief_width_card;
extern const base::FormulaCard k_relief_depth_card;
extern const base::FormulaCard k_hole_to_bend_card;
extern const base::FormulaCard k_hole_to_die_card;
extern const base::FormulaCard k_springback_radius_card;
extern const base::FormulaCard k_springback_angle_card;
extern const base::FormulaCard k_springback_factor_radius_card;
extern const base::FormulaCard k_springback_factor_angle_card;
extern const base::FormulaCard k_allowance_faa_card;
extern const base::FormulaCard k_allowance_groover_card;
extern const base::FormulaCard k_deduction_school_card;
extern const base::FormulaCard k_deduction_us_card;
extern const base::FormulaCard k_trial_deduction_card;
extern const base::FormulaCard k_trial_k_card;
extern const base::FormulaCard k_trial_spread_card;
extern const base::FormulaCard k_leg_worst_card;
extern const base::FormulaCard k_leg_rss_card;
extern const base::FormulaCard k_ring_diameter_card;
extern const base::FormulaCard k_ring_length_card;
extern const base::FormulaCard k_hook_length_card;
extern const base::FormulaCard k_guard_opening_card;
extern const base::FormulaCard k_tolerance_length_card;
extern const base::FormulaCard k_tolerance_angle_card;

/// Every card above, once.
[[nodiscard]] std::span<const base::FormulaCard* const> cards();

} // namespace treadle::process
