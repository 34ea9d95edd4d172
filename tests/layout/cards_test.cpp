#include <doctest/doctest.h>

#include <cstring>
#include <iterator>
#include <set>
#include <string>

#include "layout/cards.h"

using namespace treadle;

TEST_CASE("every card says what it is, where it holds and who says so") {
    std::set<std::string> ids;
    for (const base::FormulaCard* card : layout::cards()) {
        CAPTURE(card->id);
        CHECK(ids.insert(card->id).second);
        CHECK(std::strlen(card->title) > 0);
        CHECK(std::strlen(card->expression) > 0);
        CHECK(std::strlen(card->validity) > 0);
        CHECK(std::strlen(card->source) > 0);
        CHECK(!card->symbols.empty());
    }
}

TEST_CASE("practice without a source does not call itself published") {
    for (const base::FormulaCard* card : layout::cards()) {
        CAPTURE(card->id);
        const bool practice = std::string(card->source).rfind("common-practice", 0) == 0;
        CHECK(practice == (card->evidence == base::Evidence::common_practice));
    }
}

TEST_CASE("ids stay as they are: printed sheets and answers carry them") {
    struct Named {
        const base::FormulaCard* card;
        const char* id;
    };
    const Named k_named[] = {
        {&layout::k_gauge_steel_card, "gauge-steel"},
        {&layout::k_gauge_galvanised_card, "gauge-galvanised"},
        {&layout::k_gauge_stainless_card, "gauge-stainless"},
        {&layout::k_gauge_aluminium_card, "gauge-aluminium"},
        {&layout::k_gauge_tube_card, "gauge-tube"},
        {&layout::k_bolt_hole_card, "bolt-hole"},
        {&layout::k_bolt_hole_normal_en_card, "bolt-hole-normal-en"},
        {&layout::k_edge_least_card, "edge-least"},
        {&layout::k_edge_least_sheared_card, "edge-least-sheared"},
        {&layout::k_edge_slot_addition_card, "edge-slot-addition"},
        {&layout::k_edge_least_en_card, "edge-least-en"},
        {&layout::k_edge_greatest_card, "edge-greatest"},
        {&layout::k_hole_spacing_card, "hole-spacing"},
        {&layout::k_hole_spacing_en_card, "hole-spacing-en"},
        {&layout::k_hole_greatest_pitch_card, "hole-greatest-pitch"},
        {&layout::k_hole_clear_card, "hole-clear"},
        {&layout::k_angle_gage_card, "angle-gage"},
        {&layout::k_angle_gage_between_card, "angle-gage-between"},
        {&layout::k_bolt_hex_card, "bolt-hex"},
        {&layout::k_bolt_washer_room_card, "bolt-washer-room"},
        {&layout::k_bolt_socket_room_card, "bolt-socket-room"},
        {&layout::k_running_card, "running-places"},
        {&layout::k_bar_usable_card, "bar-usable"},
        {&layout::k_bar_pieces_card, "bar-pieces"},
        {&layout::k_picket_gap_card, "picket-gap"},
        {&layout::k_picket_gap_closed_card, "picket-gap-closed"},
        {&layout::k_post_panels_card, "post-panels"},
        {&layout::k_picket_per_tread_card, "picket-per-tread"},
        {&layout::k_rake_angle_card, "rake-angle"},
        {&layout::k_rake_along_card, "rake-along"},
        {&layout::k_rake_picket_length_card, "rake-picket-length"},
        {&layout::k_rake_bevel_card, "rake-bevel"},
        {&layout::k_rake_blank_card, "rake-blank"},
        {&layout::k_rake_triangle_card, "rake-triangle"},
        {&layout::k_rake_rail_height_card, "rake-rail-height"},
        {&layout::k_rake_step_card, "rake-step"},
        {&layout::k_saddle_ordinate_card, "saddle-ordinate"},
        {&layout::k_saddle_throat_card, "saddle-throat"},
        {&layout::k_saddle_cut_back_card, "saddle-cut-back"},
        {&layout::k_saddle_spacing_card, "saddle-spacing"},
        {&layout::k_saddle_blank_card, "saddle-blank"},
        {&layout::k_saddle_throats_card, "saddle-throats"},
        {&layout::k_saddle_die_card, "saddle-die"},
        {&layout::k_frame_mitre_card, "frame-mitre"},
        {&layout::k_frame_butt_card, "frame-butt"},
        {&layout::k_frame_bar_card, "frame-bar"},
        {&layout::k_frame_setback_card, "frame-setback"},
        {&layout::k_frame_notch_card, "frame-notch"},
        {&layout::k_gusset_card, "gusset"},
        {&layout::k_guard_limit_irc_card, "guard-limit-irc"},
        {&layout::k_guard_limit_ibc_card, "guard-limit-ibc"},
        {&layout::k_guard_limit_osha_card, "guard-limit-osha"},
        {&layout::k_guard_limit_ada_card, "guard-limit-ada"},
        {&layout::k_guard_limit_pool_card, "guard-limit-pool"},
        {&layout::k_guard_limit_uk_card, "guard-limit-uk"},
        {&layout::k_guard_midrail_card, "guard-midrail"},
    };
    CHECK(std::size(k_named) == layout::cards().size());
    for (const Named& named : k_named)
        CHECK(std::string(named.card->id) == named.id);
}
