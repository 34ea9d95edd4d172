#include "process/bend_room.h"
#include "process/bend_rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using process::BentBar;

namespace {

std::string field(const base::Result<Working>& working) {
    return working.ok() ? "" : working.refusal().field;
}

bool warned(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return working->note.find("Warning") == 0;
}

double kN(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return quantity::to_kilonewtons(*std::get_if<Force>(&working->result.value));
}

process::BarBend bar(BentBar shape, double size, double span) {
    return {shape, millimetres(size), millimetres(10), millimetres(span), megapascals(500), {}};
}

} // namespace

TEST_CASE("shop rules keep to a V of six times the thickness") {
    using process::ShopForce;
    const process::ShopBend at_limit{millimetres(5), millimetres(500), millimetres(30)};
    CHECK(process::shop_force_working(at_limit, ShopForce::tons_per_foot).ok());
    const process::ShopBend narrow{millimetres(5), millimetres(500), millimetres(29.9)};
    CHECK(field(process::shop_force_working(narrow, ShopForce::tons_per_foot)) == "opening");
    // 1.6 at 60 ksi and 1.44 at 450 MPa: the inch rule asks for a little more.
    CHECK(kN(process::shop_force_working(at_limit, ShopForce::tons_per_foot)) >
          kN(process::shop_force_working(at_limit, ShopForce::kilonewtons_per_metre)));
}

TEST_CASE("a bar asks for more the thicker it is and the shorter the span") {
    for (const BentBar shape : {BentBar::round, BentBar::square, BentBar::flat_hard_way}) {
        CHECK(kN(process::bar_bend_working(bar(shape, 21, 200))) >
              kN(process::bar_bend_working(bar(shape, 20, 200))));
        CHECK(kN(process::bar_bend_working(bar(shape, 20, 190))) >
              kN(process::bar_bend_working(bar(shape, 20, 200))));
    }
    CHECK(field(process::bar_bend_working(bar(BentBar::round, 20, 20))) == "span");
    process::BarBend odd = bar(BentBar::round, 20, 200);
    odd.factor = 21.0;
    CHECK(field(process::bar_bend_working(odd)) == "k");
}

TEST_CASE("bottoming and coining keep to what is said of them") {
    using process::Press;
    const Force force = kilonewtons(100);
    CHECK(field(process::bottoming_working(force, Press::bottoming, 2.9)) == "times");
    CHECK(field(process::bottoming_working(force, Press::bottoming, 5.1)) == "times");
    CHECK(field(process::bottoming_working(force, Press::coining, 4.9)) == "times");
    CHECK(kN(process::bottoming_working(force, Press::bottoming, {})) == 500.0);
    CHECK(field(process::bottoming_working({}, Press::coining, {})) == "force");
}

TEST_CASE("work and travel refuse what they cannot use") {
    CHECK(field(process::bend_work_working(kilonewtons(10), {}, 1.0)) == "stroke");
    CHECK(field(process::bend_work_working(kilonewtons(10), millimetres(5), 1.1)) == "share");
    CHECK(field(process::punch_travel_working(
              millimetres(50), millimetres(8), millimetres(6), degrees(151))) == "angle");
}

TEST_CASE("an opening for a radius warns under 6 t and over 14 t") {
    const auto at = [](double radius) {
        return process::opening_for_radius_working({millimetres(5), millimetres(radius), 0.1});
    };
    CHECK(warned(at(2.9)));
    CHECK_FALSE(warned(at(3.0)));
    CHECK_FALSE(warned(at(7.0)));
    CHECK(warned(at(7.1)));
}

TEST_CASE("less ductile metal never gets the smaller radius") {
    Length last = millimetres(1e6);
    for (const double e : {0.05, 0.10, 0.20, 0.40, 1.0}) {
        const auto by_e = process::radius_by_elongation_working(millimetres(10), e);
        REQUIRE(by_e.ok());
        const Length radius = *std::get_if<Length>(&by_e->result.value);
        CHECK(radius <= last);
        CHECK(radius >= Length{});
        last = radius;
    }
    const auto soft = process::radius_by_reduction_working(millimetres(10), 0.6);
    REQUIRE(soft.ok());
    CHECK(*std::get_if<Length>(&soft->result.value) == Length{});
    CHECK(soft->note.find("half the thickness") != std::string::npos);
    CHECK(field(process::radius_by_reduction_working(millimetres(10), 1.1)) == "reduction");
}

TEST_CASE("the hard way warns over 5 %") {
    // b / (2 R + b) = 5 % at R = 9.5 b.
    CHECK(warned(process::hard_way_strain_working(millimetres(50), millimetres(470))));
    CHECK_FALSE(warned(process::hard_way_strain_working(millimetres(50), millimetres(480))));
    CHECK(warned(process::hard_way_radius_working(millimetres(50), 0.06)));
    CHECK_FALSE(warned(process::hard_way_radius_working(millimetres(50), 0.05)));
    CHECK(field(process::hard_way_radius_working(millimetres(50), 1.0)) == "strain");
}

TEST_CASE("holes near a bend: slots ask for most, the rule given keeps to what is printed") {
    using process::NearHole;
    const auto x = [](NearHole kind, double size) {
        const auto working = process::hole_to_bend_working(
            {millimetres(4), millimetres(6), kind, millimetres(size), {}});
        REQUIRE(working.ok());
        return quantity::to_millimetres(*std::get_if<Length>(&working->result.value));
    };
    CHECK(x(NearHole::round, 25.4) == 16.0);
    CHECK(x(NearHole::round, 25.5) == 18.0);
    CHECK(x(NearHole::slot_along, 10.0) == 22.0);
    CHECK(field(process::hole_to_bend_working(
              {millimetres(4), millimetres(6), NearHole::round, millimetres(10), 1.4})) == "times");
    CHECK(field(process::hole_to_die_working({})) == "opening");
    CHECK(field(process::relief_width_working({})) == "thickness");
    CHECK(field(process::relief_depth_working(millimetres(3), {})) == "radius");
}
