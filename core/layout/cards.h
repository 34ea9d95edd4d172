// The formula cards of this room, and the list that feeds workings, sheets and tests.
//
// Each card stands beside its formula in the .cpp of the same header; only the list is here.

#pragma once

#include "base/formula_card.h"

#include <span>

namespace treadle::layout {

extern const base::FormulaCard k_gauge_steel_card;
extern const base::FormulaCard k_gauge_galvanised_card;
extern const base::FormulaCard k_gauge_stainless_card;
extern const base::FormulaCard k_gauge_aluminium_card;
extern const base::FormulaCard k_gauge_tube_card;
extern const base::FormulaCard k_bolt_hole_card;
extern const base::FormulaCard k_bolt_hole_normal_en_card;
extern const base::FormulaCard k_edge_least_card;
extern const base::FormulaCard k_edge_least_sheared_card;
extern const base::FormulaCard k_edge_slot_addition_card;
extern const base::FormulaCard k_edge_least_en_card;
extern const base::FormulaCard k_edge_greatest_card;
extern const base::FormulaCard k_hole_spacing_card;
extern const base::FormulaCard k_hole_spacing_en_card;
extern const base::FormulaCard k_hole_greatest_pitch_card;
extern const base::FormulaCard k_hole_clear_card;
extern const base::FormulaCard k_angle_gage_card;
extern const base::FormulaCard k_angle_gage_between_card;
extern const base::FormulaCard k_bolt_hex_card;
extern const base::FormulaCard k_bolt_washer_room_card;
extern const base::FormulaCard k_bolt_socket_room_card;
extern const base::FormulaCard k_running_card;
extern const base::FormulaCard k_bar_usable_card;
extern const base::FormulaCard k_bar_pieces_card;
extern const base::FormulaCard k_picket_gap_card;
extern const base::FormulaCard k_picket_gap_closed_card;
extern const base::FormulaCard k_post_panels_card;
extern const base::FormulaCard k_picket_per_tread_card;
extern const base::FormulaCard k_rake_angle_card;
extern const base::FormulaCard k_rake_along_card;
extern const base::FormulaCard k_rake_picket_length_card;
extern const base::FormulaCard k_rake_bevel_card;
extern const base::FormulaCard k_rake_blank_card;
extern const base::FormulaCard k_rake_triangle_card;
extern const base::FormulaCard k_rake_rail_height_card;
extern const base::FormulaCard k_rake_step_card;
extern const base::FormulaCard k_saddle_ordinate_card;
extern const base::FormulaCard k_saddle_throat_card;
extern const base::FormulaCard k_saddle_cut_back_card;
extern const base::FormulaCard k_saddle_spacing_card;
extern const base::FormulaCard k_saddle_blank_card;
extern const base::FormulaCard k_saddle_throats_card;
extern const base::FormulaCard k_saddle_die_card;
extern const base::FormulaCard k_frame_mitre_card;
extern const base::FormulaCard k_frame_butt_card;
extern const base::FormulaCard k_frame_bar_card;
extern const base::FormulaCard k_frame_setback_card;
extern const base::FormulaCard k_frame_notch_card;
extern const base::FormulaCard k_gusset_card;
extern const base::FormulaCard k_guard_limit_irc_card;
extern const base::FormulaCard k_guard_limit_ibc_card;
extern const base::FormulaCard k_guard_limit_osha_card;
extern const base::FormulaCard k_guard_limit_ada_card;
extern const base::FormulaCard k_guard_limit_pool_card;
extern const base::FormulaCard k_guard_limit_uk_card;
extern const base::FormulaCard k_guard_midrail_card;

/// Every card above, once.
[[nodiscard]] std::span<const base::FormulaCard* const> cards();

} // namespace treadle::layout
