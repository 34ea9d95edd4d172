#include "process/punch_rules.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

using namespace treadle;
using geometry::HoleShape;
using process::GroundRule;
using process::Temper;

namespace {

const process::PunchCut k_cut{
    {HoleShape::round, millimetres(20), {}}, millimetres(6), megapascals(350)};

double ground_kN(double height_mm, double penetration, GroundRule rule) {
    const auto working =
        process::ground_force_working(k_cut, millimetres(height_mm), penetration, rule);
    REQUIRE(working.ok());
    return quantity::to_kilonewtons(*std::get_if<Force>(&working->result.value));
}

double length_mm(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return quantity::to_millimetres(*std::get_if<Length>(&working->result.value));
}

} // namespace

TEST_CASE("the careful rule is never below the others, nor above the full force") {
    const double full = quantity::to_kilonewtons(*process::punch_force(k_cut));
    for (const double height : {0.1, 1.0, 2.0, 4.0, 12.0}) {
        for (const double p : {0.1, 0.4, 1.0}) {
            const double careful = ground_kN(height, p, GroundRule::careful);
            CHECK(careful >= ground_kN(height, p, GroundRule::energy));
            CHECK(ground_kN(height, p, GroundRule::energy) >=
                  ground_kN(height, p, GroundRule::sum));
            CHECK(careful <= full + 1e-9);
            CHECK(careful >= 0.6 * full - 1e-9);
        }
    }
}

TEST_CASE("ground punches refuse a slope or a penetration that is none") {
    const auto at = [](Length height, double p) {
        const auto working = process::ground_force_working(k_cut, height, p, GroundRule::careful);
        return working.ok() ? std::string() : working.refusal().field;
    };
    CHECK(at({}, 0.4) == "shear_depth");
    CHECK(at(millimetres(2), 0.0) == "penetration");
    CHECK(at(millimetres(2), 1.01) == "penetration");
}

TEST_CASE("the factor of the work keeps to what is printed") {
    CHECK(process::punch_work_factor_working(k_cut, 0.4, 0.5).ok());
    CHECK(process::punch_work_factor_working(k_cut, 0.4, 1.16).ok());
    CHECK_FALSE(process::punch_work_factor_working(k_cut, 0.4, 0.49).ok());
    CHECK_FALSE(process::punch_work_factor_working(k_cut, 0.4, 1.17).ok());
}

TEST_CASE("each metal stands once in the table of penetrations, up to the deepest") {
    std::set<std::string> metals;
    double deepest = 0.0;
    for (std::size_t i = 0; i < process::penetration_count(); ++i) {
        const process::Penetration& row = process::penetration_row(i);
        CHECK(metals.insert(row.metal).second);
        CHECK(row.share > 0.0);
        deepest = std::max(deepest, row.share);
    }
    CHECK(deepest == process::k_deepest_penetration);
    CHECK_FALSE(process::penetration_working(0, {}).ok());
}

TEST_CASE("harder metal takes more clearance, by each table") {
    const Length t = millimetres(10);
    CHECK(length_mm(process::clearance_groover_working(t, Temper::soft)) <
          length_mm(process::clearance_groover_working(t, Temper::medium)));
    CHECK(length_mm(process::clearance_groover_working(t, Temper::medium)) <
          length_mm(process::clearance_groover_working(t, Temper::hard)));
    CHECK(length_mm(process::clearance_handbook_working(t, Temper::soft)) <
          length_mm(process::clearance_handbook_working(t, Temper::hard)));
    CHECK(length_mm(process::clearance_formula_working(t, megapascals(300))) <
          length_mm(process::clearance_formula_working(t, megapascals(400))));
    CHECK_FALSE(process::clearance_formula_working(t, {}).ok());
}

TEST_CASE("a pair warns under 6 % and over 25 % of the thickness, not on the limits") {
    const auto note = [](double total_mm) {
        return process::clearance_pair_working(
                   millimetres(20), millimetres(20 + total_mm), millimetres(10))
            .value()
            .note;
    };
    CHECK(note(0.59).find("tight") != std::string::npos);
    CHECK(note(0.61).empty());
    CHECK(note(2.49).empty());
    CHECK(note(2.51).find("loose") != std::string::npos);
}

TEST_CASE("the stripping constant refuses a hole without size") {
    CHECK_FALSE(
        process::stripping_constant_working({HoleShape::round, {}, {}}, millimetres(5)).ok());
}
