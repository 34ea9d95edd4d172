// Bolts, their holes, edges, spacing, room and gages: bolt.cpp, edge.cpp, spacing.cpp,
// bolt_room.cpp, angle_gage.cpp.

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "layout/angle_gage.h"
#include "layout/bolt.h"
#include "layout/bolt_room.h"
#include "layout/edge.h"
#include "layout/spacing.h"

using namespace treadle;
using layout::Bolt;
using layout::BoltSystem;
using layout::EdgeKind;
using layout::EdgeQuestion;
using layout::EdgeRule;
using layout::HoleEdition;
using layout::HoleKind;

namespace {

std::vector<Bolt> inch_bolts() {
    std::vector<Bolt> out;
    for (int eighths = 4; eighths <= 32; ++eighths)
        out.push_back({BoltSystem::inch, inches(eighths / 8.0)});
    return out;
}
std::vector<Bolt> metric_bolts() {
    std::vector<Bolt> out;
    for (const double d : {16.0, 20.0, 22.0, 24.0, 27.0, 30.0, 36.0, 42.0, 48.0, 64.0})
        out.push_back({BoltSystem::metric, millimetres(d)});
    return out;
}
constexpr HoleKind k_kinds[] = {
    HoleKind::standard, HoleKind::oversize, HoleKind::short_slot, HoleKind::long_slot};

std::string bolt_field(const char* text) {
    const auto bolt = layout::parse_bolt(text, "bolt");
    return bolt.ok() ? "" : bolt.refusal().field;
}

} // namespace

TEST_CASE("a bolt is an inch size with its unit, or M and a number") {
    const auto inch = layout::parse_bolt("3/4 in", "bolt");
    REQUIRE(inch.ok());
    CHECK(inch->system == BoltSystem::inch);
    CHECK(inch->diameter == inches(0.75));
    const auto metric = layout::parse_bolt(" m20 ", "bolt");
    REQUIRE(metric.ok());
    CHECK(metric->system == BoltSystem::metric);
    CHECK(metric->diameter == millimetres(20.0));
    for (const char* good : {"M14", "M12", "M36", "1-1/8 in", "4 in", "0.5 in"})
        CHECK(bolt_field(good).empty());
    for (const char* bad : {"",
                            "3/4",
                            "M",
                            "M0",
                            "M-20",
                            "M20.5",
                            "M33",
                            "M5",
                            "M1e9",
                            "20 mm",
                            "0.8 in",
                            "5 in",
                            "1/4 in",
                            "-3/4 in",
                            "Mx",
                            "10 km",
                            "nan"}) {
        CAPTURE(bad);
        CHECK(bolt_field(bad) == "bolt");
    }
}

TEST_CASE("larger bolts never ask for a smaller hole, edge or pitch") {
    for (const auto& bolts : {inch_bolts(), metric_bolts()}) {
        for (std::size_t i = 1; i < bolts.size(); ++i) {
            CAPTURE(quantity::to_millimetres(bolts[i].diameter));
            for (const HoleKind kind : k_kinds) {
                const auto smaller_hole = layout::bolt_hole(bolts[i - 1], kind);
                const auto hole = layout::bolt_hole(bolts[i], kind);
                REQUIRE(hole.ok());
                REQUIRE(smaller_hole.ok());
                CHECK(hole->width > smaller_hole->width);
                CHECK(hole->length > smaller_hole->length);
                CHECK(hole->width > bolts[i].diameter);
                CHECK(*layout::least_spacing(bolts[i], hole->length) >
                      *layout::least_spacing(bolts[i - 1], smaller_hole->length));
                for (const EdgeRule rule : {EdgeRule::careful, EdgeRule::aisc_2016}) {
                    EdgeQuestion q{bolts[i], {}, kind};
                    q.rule = rule;
                    EdgeQuestion less = q;
                    less.bolt = bolts[i - 1];
                    CHECK(*layout::least_edge(q) >= *layout::least_edge(less));
                }
            }
        }
    }
}

TEST_CASE("the careful rule never asks less than the rule by name, nor a slot less than a hole") {
    for (const auto& bolts : {inch_bolts(), metric_bolts()}) {
        for (const Bolt& bolt : bolts) {
            EdgeQuestion careful{bolt, {}, HoleKind::standard};
            EdgeQuestion named = careful;
            named.rule = EdgeRule::aisc_2016;
            EdgeQuestion rolled = careful;
            rolled.edge = EdgeKind::rolled;
            CHECK(*layout::least_edge(careful) > *layout::least_edge(named));
            CHECK(*layout::least_edge(rolled) == *layout::least_edge(named));
            CHECK(*layout::least_edge(named) >= bolt.diameter);
            EdgeQuestion slot = named;
            slot.kind = HoleKind::long_slot;
            CHECK(*layout::least_edge(slot) > *layout::least_edge(named));
            const auto hole = layout::bolt_hole(bolt, HoleKind::long_slot);
            REQUIRE(hole.ok());
            slot.slot_length = hole->length;
            EdgeQuestion shorter = slot;
            shorter.slot_length = hole->length - millimetres(2.0);
            CHECK(*layout::slot_addition(shorter) < *layout::slot_addition(slot));
        }
    }
}

TEST_CASE("a slot's length says its kind, and too long a slot is none") {
    const Bolt bolt{BoltSystem::inch, inches(0.75)};
    CHECK(*layout::slot_kind(bolt, inches(1.0)) == HoleKind::short_slot);
    CHECK(*layout::slot_kind(bolt, inches(1.001)) == HoleKind::long_slot);
    CHECK(*layout::slot_kind(bolt, inches(1.875)) == HoleKind::long_slot);
    CHECK(layout::slot_kind(bolt, inches(1.9)).refusal().field == "slot_length");
    CHECK(layout::slot_kind(bolt, inches(0.75)).refusal().field == "slot_length");
    CHECK(layout::slot_kind(bolt, Length{}).refusal().field == "slot_length");
}

TEST_CASE("a hole by its size is its bolt's; between two it is the larger bolt's") {
    CHECK(layout::bolt_of_hole(inches(0.8125))->diameter == inches(0.75));
    CHECK(layout::bolt_of_hole(millimetres(22.0))->diameter == millimetres(20.0));
    CHECK(layout::bolt_of_hole(millimetres(33.0))->diameter == millimetres(30.0));
    for (double mm = 6.0; mm < 90.0; mm += 0.37) {
        CAPTURE(mm);
        const auto bolt = layout::bolt_of_hole(millimetres(mm));
        REQUIRE(bolt.ok());
        const auto hole = layout::bolt_hole(*bolt, HoleKind::standard, HoleEdition::aisc_2022);
        if (hole.ok()) // sizes by the last row need not be bolts that are sold
            CHECK(hole->width > millimetres(mm - 0.001));
    }
    CHECK(layout::bolt_of_hole(inches(6.0)).refusal().field == "hole");
    CHECK(layout::bolt_of_hole(Length{}).refusal().field == "hole");
}

TEST_CASE("EN 1090-2 is for round holes of metric bolts") {
    const Bolt m20{BoltSystem::metric, millimetres(20.0)};
    const Bolt inch{BoltSystem::inch, inches(0.75)};
    CHECK(layout::bolt_hole(inch, HoleKind::standard, HoleEdition::en_1090).refusal().field ==
          "bolt");
    CHECK(layout::bolt_hole(m20, HoleKind::oversize, HoleEdition::en_1090).refusal().field ==
          "kind");
    EdgeQuestion q{m20, millimetres(22.0), HoleKind::short_slot};
    q.rule = EdgeRule::en_1993;
    CHECK(layout::least_edge(q).refusal().field == "kind");
    q.kind = HoleKind::standard;
    q.hole = Length{};
    CHECK(layout::least_edge(q).refusal().field == "hole");
}

TEST_CASE("greatest edge and pitch grow with the thickness up to their caps") {
    CHECK(*layout::greatest_edge(millimetres(10.0), BoltSystem::metric) == millimetres(120.0));
    CHECK(*layout::greatest_edge(millimetres(13.0), BoltSystem::metric) == millimetres(150.0));
    CHECK(layout::greatest_edge(Length{}, BoltSystem::inch).refusal().field == "thickness");
    using layout::Surface;
    CHECK(*layout::greatest_pitch(millimetres(10.0), Surface::painted, BoltSystem::metric) ==
          millimetres(240.0));
    CHECK(*layout::greatest_pitch(millimetres(13.0), Surface::painted, BoltSystem::metric) ==
          millimetres(300.0));
    CHECK(
        layout::greatest_pitch(-inches(1.0), Surface::painted, BoltSystem::inch).refusal().field ==
        "thickness");
}

TEST_CASE("metal between holes is refused when too little stays") {
    const Bolt bolt{BoltSystem::inch, inches(0.75)};
    // 0.8125 + 0.75 = 1.5625: there it just holds
    CHECK(layout::clear_between_working(bolt, inches(0.8125), inches(1.5625)).ok());
    CHECK(layout::clear_between_working(bolt, inches(0.8125), inches(1.56)).refusal().field ==
          "spacing");
    CHECK(layout::clear_to_edge_working(inches(0.8125), inches(0.4)).refusal().field ==
          "edge_distance");
}

TEST_CASE("gages and room are known for the sizes of their tables alone") {
    CHECK(layout::angle_gages(inches(4.0))->first == Length{});
    CHECK(layout::angle_gages(inches(4.25)).refusal().field == "leg");
    CHECK(layout::angle_gages(millimetres(50.0)).refusal().field == "leg");
    CHECK(layout::gage_between_working({inches(4), inches(4.1), inches(0.25)}).refusal().field ==
          "leg_b");
    CHECK(layout::gage_between_working({inches(1), inches(1), inches(0.7)}).refusal().field ==
          "thickness");
    CHECK(layout::washer_diameter({BoltSystem::inch, inches(1.25)}).refusal().field == "bolt");
    CHECK(layout::across_flats({BoltSystem::metric, millimetres(20)}).refusal().field == "bolt");
    CHECK(layout::across_flats({BoltSystem::inch, inches(2)}).refusal().field == "bolt");
    CHECK(layout::socket_room_working(Length{}).refusal().field == "socket");
}
