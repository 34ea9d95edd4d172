#include "plan/explain.h"

#include <string_view>

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;

TEST_CASE("the working behind a punch gives the very force that the verdict used") {
    Bench bench;
    job::Part part = plate(inches(0.5), inches(8.0), inches(10.0));
    part.operations = {one_hole(inches(0.8125), inches(5.0), inches(4.0))};
    const auto planned = bench.plan(part);
    const auto workings = plan::explain_operation(planned, 0, bench.job, bench.shop, bench.catalog);
    REQUIRE_FALSE(workings.empty());
    const auto* shown = std::get_if<Force>(&workings[0].result.value);
    const auto* used =
        std::get_if<Force>(&find(planned.operations[0], plan::Rule::force)->demand_high);
    REQUIRE(shown != nullptr);
    REQUIRE(used != nullptr);
    CHECK(*shown == *used);
}

TEST_CASE("every working has a card with expression and source") {
    Bench bench;
    job::Part part = plate(inches(0.25), inches(4.0), Length{});
    part.legs = {inches(6.0), inches(6.0)};
    job::Bend bend;
    bend.angle = degrees(90.0);
    job::Notch notch;
    notch.along = notch.depth = inches(0.5);
    part.operations = {job::Cut{}, one_hole(inches(0.8125), inches(2.0), inches(2.0)), notch, bend};
    const auto planned = bench.plan(part);
    std::size_t seen = 0;
    for (std::size_t i = 0; i < part.operations.size(); ++i)
        for (const auto& working :
             plan::explain_operation(planned, i, bench.job, bench.shop, bench.catalog)) {
            ++seen;
            REQUIRE(working.card != nullptr);
            CHECK_FALSE(std::string_view(working.card->expression).empty());
            CHECK_FALSE(std::string_view(working.card->source).empty());
        }
    CHECK(seen >= 12);
    const auto blank = plan::explain_part(planned, bench.job, bench.shop, bench.catalog);
    REQUIRE(blank.size() == 2); // mass per length, then the blank
    const auto* length = std::get_if<Length>(&blank[1].result.value);
    REQUIRE(length != nullptr);
    CHECK(*length == planned.blank_exact);
}

TEST_CASE("the mass on the sheet has a working, for straight parts too") {
    Bench bench;
    const auto planned = bench.plan(plate(inches(0.5), inches(10.0), inches(12.0)));
    const auto workings = plan::explain_part(planned, bench.job, bench.shop, bench.catalog);
    REQUIRE(workings.size() == 1);
    const auto* per_length = std::get_if<MassPerLength>(&workings[0].result.value);
    REQUIRE(per_length != nullptr);
    CHECK(quantity::to_kilograms(*per_length * planned.blank_length) ==
          doctest::Approx(quantity::to_kilograms(planned.mass_each)));
}
