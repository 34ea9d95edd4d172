#include "process/cards.h"

#include <doctest/doctest.h>

#include <cstring>
#include <iterator>
#include <set>
#include <string>

using namespace treadle;

TEST_CASE("every card says what it is, where it holds and who says so") {
    CHECK(process::cards().size() == 31);
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
    };
    CHECK(std::size(k_named) == process::cards().size());
    for (const Named& named : k_named)
        CHECK(std::string(named.card->id) == named.id);
}
