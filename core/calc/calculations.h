// The list of calculations by the file that answers them; calculation.cpp puts them in order.

#pragma once

#include "calc/calculation.h"

namespace treadle::calc {

extern const Calculation k_punch_force;
extern const Calculation k_punch_smallest;
extern const Calculation k_punch_largest;
extern const Calculation k_punch_die;
extern const Calculation k_shear_flat;
extern const Calculation k_shear_bar;
extern const Calculation k_shear_angle;
extern const Calculation k_notch_force;
extern const Calculation k_bend_force;
extern const Calculation k_bend_opening;
extern const Calculation k_bend_radius;
extern const Calculation k_bend_least_leg;
extern const Calculation k_bend_least_radius;
extern const Calculation k_bend_allowance;
extern const Calculation k_bend_deduction;
extern const Calculation k_bend_setback;
extern const Calculation k_bend_blank;
extern const Calculation k_section_weight;
extern const Calculation k_punch_shear_ground;
extern const Calculation k_punch_stripping;
extern const Calculation k_punch_work;
extern const Calculation k_punch_penetration;
extern const Calculation k_punch_edge;
extern const Calculation k_punch_stress;
extern const Calculation k_punch_thickest;
extern const Calculation k_punch_free_length;
extern const Calculation k_punch_bolt_hole;
extern const Calculation k_punch_stroke;
extern const Calculation k_punch_from_heel;
extern const Calculation k_punch_clearance;
extern const Calculation k_shear_mitre;
extern const Calculation k_shear_tube;
extern const Calculation k_shear_tube_flattening;
extern const Calculation k_shear_knife_gap;
extern const Calculation k_shear_trim;
extern const Calculation k_shear_rating;
extern const Calculation k_notch_bites;
extern const Calculation k_notch_vee;
extern const Calculation k_notch_slot;
extern const Calculation k_bend_k_from_trial;
extern const Calculation k_bend_springback;
extern const Calculation k_bend_force_shop;
extern const Calculation k_bend_bar_force;
extern const Calculation k_bend_bottoming;
extern const Calculation k_bend_work;
extern const Calculation k_bend_travel;
extern const Calculation k_bend_opening_for_radius;
extern const Calculation k_bend_radius_from_ductility;
extern const Calculation k_bend_hard_way;
extern const Calculation k_bend_relief;
extern const Calculation k_bend_hole_distance;
extern const Calculation k_bar_ring;
extern const Calculation k_bar_hook;
extern const Calculation k_guard_opening;
extern const Calculation k_tolerance_length;
extern const Calculation k_tolerance_angle;
extern const Calculation k_hole_for_bolt;
extern const Calculation k_hole_edge;
extern const Calculation k_hole_greatest_pitch;
extern const Calculation k_hole_clear;
extern const Calculation k_bolt_room;
extern const Calculation k_angle_gage;
extern const Calculation k_angle_gage_between;
extern const Calculation k_gauge_thickness;
extern const Calculation k_running_places;
extern const Calculation k_bar_usable;
extern const Calculation k_bar_pieces;
extern const Calculation k_picket_spacing;
extern const Calculation k_picket_per_tread;
extern const Calculation k_post_spacing;
extern const Calculation k_rake_opening;
extern const Calculation k_rake_picket;
extern const Calculation k_rake_spacing;
extern const Calculation k_rake_panel;
extern const Calculation k_guard_limit;
extern const Calculation k_guard_midrail;
extern const Calculation k_saddle_template;
extern const Calculation k_saddle_blank;
extern const Calculation k_saddle_die;
extern const Calculation k_frame_cut;
extern const Calculation k_frame_mitre;
extern const Calculation k_frame_notch;
extern const Calculation k_gusset_cut;

} // namespace treadle::calc
