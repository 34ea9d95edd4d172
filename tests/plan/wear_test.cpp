// Strokes on cutting edges: core/plan/wear.cpp. The interval is a shop's own; the sums are by hand.

#include "plan/wear.h"

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::EdgeKind;
using plan::ToolWear;
using plan::WearState;

namespace {

/// `pieces` plates with two holes each.
void add(Bench& bench, const char* mark, Length hole, int pieces) {
    job::Part part = plate(inches(0.25), inches(4.0), inches(8.0));
    part.id = part.mark = mark;
    part.count = pieces;
    job::Punch punch = one_hole(hole, inches(2.0), inches(2.0));
    punch.at.columns = 2;
    punch.at.column_pitch = inches(4.0);
    part.operations = {job::Cut{}, punch};
    bench.job.parts.push_back(std::make_shared<const job::Part>(part));
}

plan::Plan plan_of(const Bench& bench) {
    return plan::make_plan(bench.job, bench.shop, bench.catalog);
}

/// Ten strokes on a punch that has made `before`.
ToolWear punch_wear(std::optional<int> before, std::optional<int> interval) {
    Bench bench;
    add(bench, "P1", inches(0.8125), 5);
    bench.shop.crib.punches[0].strokes_since_grind = before;
    bench.shop.crib.punches[0].regrind_after = interval;
    const auto list = plan::tool_wear(plan_of(bench), bench.shop);
    REQUIRE_FALSE(list.empty());
    REQUIRE(list[0].kind == EdgeKind::punch);
    CHECK(list[0].strokes == 10);
    return list[0];
}

} // namespace

TEST_CASE("an edge is within, reaches its interval, or is over it before the job") {
    CHECK(punch_wear(90, 101).state == WearState::within); // 100 of 101
    const ToolWear last = punch_wear(90, 100);             // with the very last stroke
    CHECK(last.state == WearState::reached);
    CHECK(last.into == 10);
    const ToolWear first = punch_wear(99, 100); // with the first
    CHECK(first.state == WearState::reached);
    CHECK(first.into == 1);
    CHECK(punch_wear(100, 100).state == WearState::over);
    CHECK(punch_wear(101, 100).state == WearState::over);
}

TEST_CASE("what is not known is not computed") {
    CHECK(punch_wear(std::nullopt, 100).state == WearState::not_computed);
    CHECK(punch_wear(90, std::nullopt).state == WearState::not_computed);
    CHECK(plan::wear_words(punch_wear(std::nullopt, 100)) ==
          "10 strokes in this job; not known how many since the last grinding");
    CHECK(plan::wear_words(punch_wear(90, std::nullopt)) ==
          "10 strokes in this job, 100 since grinding; no regrind interval is set");
}

TEST_CASE("the house's interval holds for tools without their own") {
    Bench bench;
    add(bench, "P1", inches(0.8125), 5);
    bench.shop.rules.regrind_after = 100;
    bench.shop.crib.punches[0].strokes_since_grind = 90;
    const auto state = [&] { return plan::tool_wear(plan_of(bench), bench.shop).at(0).state; };
    CHECK(state() == WearState::reached);
    bench.shop.crib.punches[0].regrind_after = 101;
    CHECK(state() == WearState::within);
}

TEST_CASE("punches and dies get every stroke of the set-ups that they are used in") {
    Bench bench;
    add(bench, "P1", inches(0.8125), 5);
    add(bench, "P2", inches(1.0625), 7);
    add(bench, "P3", inches(0.8125), 3);
    add(bench, "P4", inches(0.6875), 2); // not in the crib: has no count
    const plan::Plan planned = plan_of(bench);
    int with_punch = 0;
    int with_die = 0;
    int all = 0;
    for (const plan::SetUp& set_up : planned.order) {
        with_punch += set_up.tools.punch == plan::k_none ? 0 : set_up.strokes;
        with_die += set_up.tools.die == plan::k_none ? 0 : set_up.strokes;
        all += set_up.strokes;
    }
    CHECK(all == planned.strokes);
    int punches = 0;
    int dies = 0;
    for (const ToolWear& wear : plan::tool_wear(planned, bench.shop))
        (wear.kind == EdgeKind::punch ? punches : dies) += wear.strokes;
    CHECK(punches == with_punch);
    CHECK(dies == with_die);
    CHECK(punches == 2 * (5 + 7 + 3));             // two holes a piece
    CHECK(planned.strokes == 3 * (5 + 7 + 3 + 2)); // and a cut
}

TEST_CASE("the set-up in which an edge comes due is named from its strokes") {
    Bench bench;
    add(bench, "P1", inches(0.8125), 5);
    add(bench, "P2", inches(1.0625), 7);
    bench.shop.crib.punches[1].strokes_since_grind = 0;
    bench.shop.crib.punches[1].regrind_after = 13;
    const plan::Plan planned = plan_of(bench);
    for (const ToolWear& wear : plan::tool_wear(planned, bench.shop))
        if (wear.kind == EdgeKind::punch && wear.tool == 1) {
            REQUIRE(wear.state == WearState::reached);
            CHECK(planned.order.at(static_cast<std::size_t>(wear.set_up)).tools.punch == 1);
            CHECK(wear.into == 13);
            CHECK(plan::wear_words(wear) ==
                  "14 strokes in this job, 14 since grinding: due at 13, in set-up " +
                      std::to_string(wear.set_up + 1) + " after 13 strokes");
            return;
        }
    FAIL("the second punch is not used");
}

TEST_CASE("booked strokes are added to counts that are known, and to no others") {
    Bench bench;
    add(bench, "P1", inches(0.8125), 5);
    bench.shop.crib.punches[0].strokes_since_grind = 90;
    bench.shop.crib.punches[1].strokes_since_grind = 7; // not used
    const equipment::Crib after = plan::with_strokes(plan_of(bench), bench.shop);
    CHECK(after.punches[0].strokes_since_grind == 100);
    CHECK(after.punches[1].strokes_since_grind == 7);
    CHECK_FALSE(after.dies[0].strokes_since_grind.has_value());
}

TEST_CASE("a saddle die is an edge like a punch") {
    Bench bench;
    job::Part pipe = plate(inches(0.14), inches(1.66), inches(20.0));
    pipe.section.shape = section::Shape::pipe;
    pipe.count = 4;
    job::Saddle saddle;
    saddle.run_diameter = inches(1.9);
    saddle.end = job::End::start;
    pipe.operations = {saddle};
    bench.job.parts.push_back(std::make_shared<const job::Part>(pipe));
    bench.shop.crib.saddle_dies[0].strokes_since_grind = 0;
    bench.shop.crib.saddle_dies[0].regrind_after = 8;
    const auto list = plan::tool_wear(plan_of(bench), bench.shop);
    REQUIRE(list.size() == 1);
    CHECK(list[0].kind == EdgeKind::saddle_die);
    CHECK(list[0].strokes == 8); // two for an end
    CHECK(list[0].state == WearState::reached);
    CHECK(plan::edge_words(list[0].kind, 0, bench.shop, {}) == "Saddle die for 1.660 on 1.900");
}

TEST_CASE("more strokes never take an edge back from due to within") {
    for (int before = 80; before < 120; ++before) {
        const WearState now = punch_wear(before, 100).state;
        const WearState later = punch_wear(before + 1, 100).state;
        CHECK(now <= later);
    }
}
