#include "layout/cards.h"

namespace treadle::layout {

namespace {

constexpr const base::FormulaCard* k_cards[] = {
    &k_gauge_steel_card,
    &k_gauge_galvanised_card,
    &k_gauge_stainless_card,
    &k_gauge_aluminium_card,
    &k_gauge_tube_card,
    &k_bolt_hole_card,
    &k_bolt_hole_normal_en_card,
    &k_edge_least_card,
    &k_edge_least_sheared_card,
    &k_edge_slot_addition_card,
    &k_edge_least_en_card,
    &k_edge_greatest_card,
    &k_hole_spacing_card,
    &k_hole_spacing_en_card,
    &k_hole_greatest_pitch_card,
    &k_hole_clear_card,
    &k_angle_gage_card,
    &k_angle_gage_between_card,
    &k_bolt_hex_card,
    &k_bolt_washer_room_card,
    &k_bolt_socket_room_card,
    &k_running_card,
    &k_bar_usable_card,
    &k_bar_pieces_card,
    &k_picket_gap_card,
    &k_picket_gap_closed_card,
    &k_post_panels_card,
    &k_picket_per_tread_card,
    &k_rake_angle_card,
    &k_rake_along_card,
    &k_rake_picket_length_card,
    &k_rake_bevel_card,
    &k_rake_blank_card,
    &k_rake_triangle_card,
    &k_rake_rail_height_card,
    &k_rake_step_card,
    &k_saddle_ordinate_card,
    &k_saddle_throat_card,
    &k_saddle_cut_back_card,
    &k_saddle_spacing_card,
    &k_saddle_blank_card,
    &k_saddle_throats_card,
    &k_saddle_die_card,
    &k_frame_mitre_card,
    &k_frame_butt_card,
    &k_frame_bar_card,
    &k_frame_setback_card,
    &k_frame_notch_card,
    &k_gusset_card,
    &k_guard_limit_irc_card,
    &k_guard_limit_ibc_card,
    &k_guard_limit_osha_card,
    &k_guard_limit_ada_card,
    &k_guard_limit_pool_card,
    &k_guard_limit_uk_card,
    &k_guard_midrail_card,
};

} // namespace

std::span<const base::FormulaCard* const> cards() { return k_cards; }

} // namespace treadle::layout
