#include "process/cards.h"

#include <doctest/doctest.h>

#include <cstring>
#include <iterator>
#include <set>
#include <string>

using namespace treadle;

TEST_CASE("every card says what it is, where it holds and who says so") {
    CHECK(process::cards().size() == 100);
    std::set<std::string> ids;
    for (const base::FormulaCard* card : process::cards()) {
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
    for (const base::FormulaCard* card : process::cards()) {
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
        {&process::k_punch_force_card, "punch-force"},
        {&process::k_brake_opening_card, "brake-opening"},
        {&process::k_blade_opening_card, "blade-opening"},
        {&process::k_punch_stripping_card, "punch-stripping"},
        {&process::k_punch_work_card, "punch-work"},
        {&process::k_punch_smallest_card, "punch-smallest"},
        {&process::k_punch_largest_card, "punch-largest"},
        {&process::k_die_clearance_card, "die-clearance"},
        {&process::k_flat_shear_card, "shear-flat"},
        {&process::k_bar_shear_card, "shear-bar"},
        {&process::k_angle_shear_card, "shear-angle"},
        {&process::k_mitre_factor_card, "mitre-factor"},
        {&process::k_notch_force_card, "notch-force"},
        {&process::k_notch_bites_card, "notch-bites"},
        {&process::k_bend_force_card, "bend-force"},
        {&process::k_bend_force_given_card, "bend-force-given"},
        {&process::k_usual_opening_card, "bend-opening"},
        {&process::k_air_bend_radius_card, "bend-radius"},
        {&process::k_least_leg_card, "bend-least-leg"},
        {&process::k_least_radius_plate_card, "least-radius-plate"},
        {&process::k_least_radius_practice_card, "least-radius-practice"},
        {&process::k_least_radius_din_card, "least-radius-din"},
        {&process::k_least_radius_aluminium_card, "least-radius-aluminium"},
        {&process::k_least_radius_austenitic_card, "least-radius-austenitic"},
        {&process::k_punch_travel_card, "punch-travel"},
        {&process::k_bend_allowance_din_card, "bend-allowance-din"},
        {&process::k_bend_allowance_given_card, "bend-allowance-given"},
        {&process::k_bend_allowance_handbook_card, "bend-allowance-handbook"},
        {&process::k_bend_deduction_din_card, "bend-deduction-din"},
        {&process::k_bend_deduction_card, "bend-deduction"},
        {&process::k_outside_setback_card, "bend-setback"},
        {&process::k_outside_setback_apex_card, "bend-setback-apex"},
        {&process::k_blank_length_card, "blank-length"},
        {&process::k_hole_edge_card, "hole-edge"},
        {&process::k_punch_stress_card, "punch-stress"},
        {&process::k_punch_thickest_card, "punch-thickest"},
        {&process::k_punch_free_length_card, "punch-free-length"},
        {&process::k_punch_free_end_card, "punch-free-end"},
        {&process::k_bolt_hole_aisc_card, "bolt-hole-aisc"},
        {&process::k_bolt_hole_en_card, "bolt-hole-en"},
        {&process::k_punch_stroke_card, "punch-stroke"},
        {&process::k_punch_heel_card, "punch-from-heel"},
        {&process::k_ground_careful_card, "ground-careful"},
        {&process::k_ground_energy_card, "ground-energy"},
        {&process::k_ground_sum_card, "ground-sum"},
        {&process::k_stripping_constant_card, "stripping-constant"},
        {&process::k_punch_work_factor_card, "punch-work-factor"},
        {&process::k_penetration_card, "penetration"},
        {&process::k_clearance_formula_card, "clearance-formula"},
        {&process::k_clearance_groover_card, "clearance-groover"},
        {&process::k_clearance_handbook_card, "clearance-handbook"},
        {&process::k_clearance_pair_card, "clearance-pair"},
        {&process::k_mitre_cut_card, "mitre-cut"},
        {&process::k_mitred_angle_card, "shear-angle-mitred"},
        {&process::k_tube_shear_card, "shear-tube"},
        {&process::k_tube_flattening_card, "tube-flattening"},
        {&process::k_knife_gap_card, "knife-gap"},
        {&process::k_least_trim_card, "least-trim"},
        {&process::k_rating_thickness_card, "shear-rating-thickness"},
        {&process::k_rating_root_card, "shear-rating-root"},
        {&process::k_rating_width_card, "shear-rating-width"},
        {&process::k_first_bite_card, "notch-first-bite"},
        {&process::k_later_bite_card, "notch-later-bite"},
        {&process::k_vee_depth_card, "vee-depth"},
        {&process::k_vee_mouth_card, "vee-mouth"},
        {&process::k_vee_cut_card, "vee-cut"},
        {&process::k_slot_notch_card, "slot-notch"},
        {&process::k_shop_force_inch_card, "shop-force-inch"},
        {&process::k_shop_force_metric_card, "shop-force-metric"},
        {&process::k_bar_bend_card, "bar-bend-force"},
        {&process::k_bottoming_card, "bottoming-force"},
        {&process::k_bend_work_card, "bend-work"},
        {&process::k_opening_for_radius_card, "opening-for-radius"},
        {&process::k_ductility_reduction_card, "least-radius-reduction"},
        {&process::k_ductility_elongation_card, "least-radius-elongation"},
        {&process::k_hard_way_strain_card, "hard-way-strain"},
        {&process::k_hard_way_radius_card, "hard-way-radius"},
        {&process::k_relief_width_card, "bend-relief-width"},
        {&process::k_relief_depth_card, "bend-relief-depth"},
        {&process::k_hole_to_bend_card, "hole-to-bend"},
        {&process::k_hole_to_die_card, "hole-to-die"},
        {&process::k_springback_radius_card, "springback-radius"},
        {&process::k_springback_angle_card, "springback-angle"},
        {&process::k_springback_factor_radius_card, "springback-factor-radius"},
        {&process::k_springback_factor_angle_card, "springback-factor-angle"},
        {&process::k_allowance_faa_card, "bend-allowance-faa"},
        {&process::k_allowance_groover_card, "bend-allowance-groover"},
        {&process::k_deduction_school_card, "bend-deduction-school"},
        {&process::k_deduction_us_card, "bend-deduction-us"},
        {&process::k_trial_deduction_card, "trial-deduction"},
        {&process::k_trial_k_card, "trial-k"},
        {&process::k_trial_spread_card, "trial-spread"},
        {&process::k_leg_worst_card, "leg-worst"},
        {&process::k_leg_rss_card, "leg-rss"},
        {&process::k_ring_diameter_card, "ring-diameter"},
        {&process::k_ring_length_card, "ring-length"},
        {&process::k_hook_length_card, "hook-length"},
        {&process::k_guard_opening_card, "guard-opening"},
        {&process::k_tolerance_length_card, "tolerance-length"},
        {&process::k_tolerance_angle_card, "tolerance-angle"},
    };
    CHECK(std::size(k_named) == process::cards().size());
    for (const Named& named : k_named)
        CHECK(std::string(named.card->id) == named.id);
}
