// Batches, first pieces and marks: core/plan/batches.cpp. Limits are a shop's own.

#include "plan/batches.h"

#include <set>

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using quantity::kilograms;

namespace {

plan::Batches batches(int pieces, int batch) {
    auto part = std::make_shared<plan::PartPlan>();
    part->batch = batch;
    plan::Plan planned;
    planned.parts = {part};
    plan::Step step;
    step.pieces = pieces;
    return plan::batches_of(planned, step);
}

equipment::HouseRules rules(std::optional<int> pieces, std::optional<double> mass_kg) {
    equipment::HouseRules house;
    house.batch_pieces = pieces;
    if (mass_kg)
        house.batch_mass = kilograms(*mass_kg);
    return house;
}

std::string measured(const plan::PartPlan& part, int operation) {
    std::string words;
    for (const plan::Measure& measure : plan::first_piece(part, operation)) {
        const auto* length = std::get_if<Length>(&measure.value);
        words +=
            std::string(measure.what) + " " +
            quantity::print_working(length != nullptr ? AnyQuantity{*length} : measure.value, {}) +
            "; ";
    }
    return words;
}

} // namespace

TEST_CASE("batches add up to the pieces, and only the last is smaller") {
    for (int pieces = 1; pieces <= 120; ++pieces)
        for (int batch = 1; batch <= 40; ++batch) {
            const plan::Batches split = batches(pieces, batch);
            CHECK((split.count - 1) * split.pieces + split.last == pieces);
            CHECK(split.last >= 1);
            CHECK(split.last <= split.pieces);
            CHECK(split.pieces <= batch);
        }
    CHECK(batches(50, 25).count == 2);
    CHECK(batches(51, 25).count == 3);
    CHECK(batches(51, 25).last == 1);
    CHECK(plan::batch_words(batches(25, 25)) == "");
    CHECK(plan::batch_words(batches(50, 25)) == "2 batches of 25");
    CHECK(plan::batch_words(batches(60, 25)) == "3 batches of 25, the last of 10");
    CHECK(batches(60, 0).count == 1); // a house that does not split
}

TEST_CASE("a batch is what the cart takes, by pieces and by weight, and at least one piece") {
    CHECK(plan::batch_of(rules(25, std::nullopt), kilograms(10.0)) == 25);
    CHECK(plan::batch_of(rules(std::nullopt, 40.0), kilograms(10.0)) == 4);
    CHECK(plan::batch_of(rules(std::nullopt, 39.9), kilograms(10.0)) == 3);
    CHECK(plan::batch_of(rules(std::nullopt, 9.9), kilograms(10.0)) == 1);
    CHECK(plan::batch_of(rules(3, 40.0), kilograms(10.0)) == 3);
    CHECK(plan::batch_of(rules(5, 40.0), kilograms(10.0)) == 4);
    CHECK(plan::batch_of(rules(std::nullopt, std::nullopt), kilograms(10.0)) == 0);
    CHECK(plan::batch_of(rules(std::nullopt, 40.0), Mass{}) == 0); // weight not known
}

TEST_CASE("the first piece is measured, then one in so many") {
    equipment::HouseRules house;
    CHECK(plan::pieces_measured(100, house) == 1);
    house.check_every = 10;
    CHECK(plan::pieces_measured(0, house) == 0);
    CHECK(plan::pieces_measured(1, house) == 1);
    CHECK(plan::pieces_measured(10, house) == 1);
    CHECK(plan::pieces_measured(11, house) == 2);
    CHECK(plan::pieces_measured(20, house) == 2);
    CHECK(plan::pieces_measured(21, house) == 3);
    plan::Step step;
    step.pieces = 11;
    CHECK(plan::check_words(step, house) == "First piece: measure before the rest, then 1 in 10");
    step.pieces = 10;
    CHECK(plan::check_words(step, house) == "First piece: measure before the rest");
    step.pieces = 1;
    CHECK(plan::check_words(step, house) == "Measure the piece");
}

TEST_CASE("what is measured is what the step makes") {
    Bench bench;
    job::Part part = plate(inches(0.25), inches(4.0), inches(8.0));
    job::Punch punch = one_hole(inches(0.8125), inches(1.5), inches(2.0));
    punch.at.columns = 3;
    punch.at.column_pitch = inches(2.5);
    part.operations = {job::Cut{}, punch, one_hole(inches(0.8125), inches(4.0), inches(3.0))};
    const plan::PartPlan planned = bench.plan(part);
    const auto cut = plan::first_piece(planned, 0);
    REQUIRE(cut.size() == 1);
    CHECK(std::get<Length>(cut[0].value) == inches(8.0));
    const auto row = plan::first_piece(planned, 1);
    REQUIRE(row.size() == 5); // size, first hole, last hole
    CHECK(std::get<Length>(row[0].value) == inches(0.8125));
    CHECK(quantity::to_inches(std::get<Length>(row[1].value)) == doctest::Approx(1.5));
    CHECK(quantity::to_inches(std::get<Length>(row[3].value)) == doctest::Approx(6.5));
    CHECK(plan::first_piece(planned, 2).size() == 3); // one hole is first and last

    job::Part bent = plate(inches(0.25), inches(4.0), Length{});
    bent.legs = {inches(3.0), inches(2.0), inches(4.0)};
    job::Bend bend;
    bend.angle = degrees(90.0);
    bent.operations = {bend, bend};
    const plan::PartPlan legs = bench.plan(bent);
    const auto second = plan::first_piece(legs, 1);
    REQUIRE(second.size() == 3);
    CHECK(std::get<Angle>(second[0].value) == degrees(90.0));
    CHECK(std::get<Length>(second[1].value) == inches(2.0));
    CHECK(std::get<Length>(second[2].value) == inches(4.0));
    CHECK(measured(legs, 0).rfind("angle 90", 0) == 0);
}

TEST_CASE("every piece is marked at the first work on its part, and only there") {
    Bench bench;
    for (const char* mark : {"A", "B"}) {
        job::Part part = plate(inches(0.25), inches(4.0), inches(8.0));
        part.id = part.mark = mark;
        part.operations = {one_hole(inches(0.8125), inches(2.0), inches(2.0)),
                           one_hole(inches(1.0625), inches(6.0), inches(2.0)),
                           job::Cut{}};
        bench.job.parts.push_back(std::make_shared<const job::Part>(part));
    }
    bench.shop.rules.marking = "paint on the far end";
    const plan::Plan planned = plan::make_plan(bench.job, bench.shop, bench.catalog);
    std::set<int> begun;
    for (const plan::SetUp& set_up : planned.order)
        for (const plan::Step& step : set_up.steps) {
            CHECK(step.begins == begun.insert(step.part).second);
            CHECK(step.begins == (step.operation == 2)); // the cut comes first
            const std::string words = plan::mark_words(planned, step, bench.shop.rules);
            CHECK(words == (!step.begins     ? ""
                            : step.part == 0 ? "Mark each piece A: paint on the far end"
                                             : "Mark each piece B: paint on the far end"));
        }
    CHECK(begun.size() == 2);
}
