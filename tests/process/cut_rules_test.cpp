#include "process/cut_rules.h"
#include "process/notch_rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;

namespace {

std::string field(const base::Result<Working>& working) {
    return working.ok() ? "" : working.refusal().field;
}

double length_mm(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return quantity::to_millimetres(*std::get_if<Length>(&working->result.value));
}

} // namespace

TEST_CASE("a mitre stays below 60 degrees from square") {
    CHECK(process::mitre_cut_working(millimetres(100), degrees(59.9)).ok());
    CHECK(field(process::mitre_cut_working(millimetres(100), degrees(60))) == "angle");
    const process::AngleShear angle{
        millimetres(50), millimetres(50), millimetres(5), megapascals(300)};
    CHECK(field(process::mitred_angle_working(angle, degrees(60))) == "mitre");
}

TEST_CASE("a mitred angle is never easier than a square cut") {
    const process::AngleShear angle{
        millimetres(50), millimetres(50), millimetres(5), megapascals(300)};
    for (const double theta : {0.0, 10.0, 45.0}) {
        const auto working = process::mitred_angle_working(angle, degrees(theta));
        REQUIRE(working.ok());
        CHECK(*std::get_if<Force>(&working->result.value) >= *process::angle_shear_force(angle));
    }
}

TEST_CASE("a tube keeps a bore, and its cut always warns") {
    const auto tube = [](double wall) {
        return process::tube_shear_working({millimetres(20), millimetres(wall), megapascals(300)});
    };
    CHECK(field(tube(10.0)) == "wall");
    REQUIRE(tube(9.9).ok());
    CHECK(tube(9.9)->note.find("Warning") == 0);
    CHECK(field(process::tube_flattening_working({millimetres(20), millimetres(2), {}})) ==
          "yield_strength");
}

TEST_CASE("stronger stock takes thickness and width away, weaker gives none back") {
    double last = 1e9;
    for (const double stock : {40.0, 65.0, 70.0, 100.0}) {
        const process::ShearRating pair{inches(0.5), inches(8.0), ksi(65.0), ksi(stock)};
        const double t = length_mm(process::rating_thickness_working(pair));
        CHECK(t <= last);
        CHECK(t <= 12.7);
        CHECK(t <= length_mm(process::rating_root_working(pair)));
        CHECK(length_mm(process::rating_width_working(pair)) <= 8.0 * 25.4);
        last = t;
    }
    CHECK(field(process::rating_thickness_working({inches(0.5), inches(8.0), {}, ksi(60.0)})) ==
          "rated_strength");
}

TEST_CASE("the knife gap and the trim refuse no thickness") {
    CHECK(field(process::knife_gap_working({}, process::KnifeGap::tight)) == "thickness");
    CHECK(field(process::least_trim_working({})) == "thickness");
}

TEST_CASE("a notch no longer than the tool is one bite, and has no later one") {
    const process::NotchBites notch{millimetres(30), millimetres(32), {}};
    CHECK(length_mm(process::first_bite_working(notch, millimetres(10))) == 50.0);
    CHECK(length_mm(process::later_bite_working(notch, millimetres(10))) == 0.0);
    CHECK(field(process::first_bite_working(notch, {})) == "depth");
    CHECK(field(process::notch_bites_working(
              {millimetres(100), millimetres(32), millimetres(17)})) == "overlap");
}

TEST_CASE("bites side by side are said to leave a fin") {
    const auto none = process::notch_bites_working({millimetres(100), millimetres(32), {}});
    REQUIRE(none.ok());
    CHECK(none->note.find("fin") != std::string::npos);
    const auto lapped =
        process::notch_bites_working({millimetres(100), millimetres(32), millimetres(3)});
    REQUIRE(lapped.ok());
    CHECK(lapped->note.empty());
}

TEST_CASE("a V wants a leg longer than the metal, and an angle below 180") {
    CHECK(field(process::vee_depth_working(millimetres(5), millimetres(5))) == "thickness");
    CHECK(field(process::vee_mouth_working(millimetres(5), degrees(180))) == "angle");
    CHECK(field(process::vee_cut_working({}, degrees(90))) == "depth");
}

TEST_CASE("a slot is at least as deep as its round end") {
    CHECK(process::slot_notch_working(millimetres(20), millimetres(10)).ok());
    CHECK(field(process::slot_notch_working(millimetres(20), millimetres(9.9))) == "depth");
}
