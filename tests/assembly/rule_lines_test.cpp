// Covers rule_lines.cpp, bolted.cpp and the elevation of guard_draw.cpp.

#include <algorithm>
#include <cmath>

#include "assembly/ground.h"
#include "assembly/rule_lines.h"

using namespace treadle;
using assembly::Held;
using assembly::RuleLine;

TEST_CASE("a sphere's limit is not reached, any other bound may be") {
    std::vector<RuleLine> lines;
    for (const double gap : {3.999, 4.0, 4.001})
        assembly::hold(lines, "irc-opening", "gap", inches(gap));
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].held == Held::meets);
    CHECK(lines[1].held == Held::at_limit);
    CHECK(lines[2].held == Held::breaks);
    lines.clear();
    for (const double height : {35.999, 36.0, 36.001})
        assembly::hold(lines, "irc-guard-height", "height", inches(height));
    CHECK(lines[0].held == Held::breaks);
    CHECK(lines[1].held == Held::meets);
    CHECK(lines[2].held == Held::meets);
    CHECK(assembly::worst(lines) == Held::breaks);
    CHECK(assembly::worst({}) == Held::meets);
    CHECK(std::string(assembly::held_word(Held::breaks)) == "breaks");
}

TEST_CASE("a line names its source and how good it is") {
    std::vector<RuleLine> lines;
    assembly::hold(lines, "uk-opening", "gap", millimetres(99));
    CHECK(lines[0].source == "uk-document-k");
    CHECK(lines[0].evidence == base::Evidence::from_memory);
    CHECK(to_millimetres(lines[0].limit) == doctest::Approx(100.0));
    assembly::hold(lines, {"picket-gap", inches(4), true, true}, "gap", inches(4));
    CHECK(lines[1].source == "common-practice-layout");
    CHECK(lines[1].evidence == base::Evidence::common_practice);
    CHECK(lines[1].held == Held::at_limit);
    CHECK(to_inches(assembly::opening_limit("irc-stair-opening")) == doctest::Approx(4.375));
}

TEST_CASE("every line of every example has words, a value and a source that stands in the list") {
    const auto sources = archive::read_sources(*assets::embedded("sources.json"));
    REQUIRE(sources.ok());
    int lines = 0;
    for (const assembly::Kind* kind : assembly::kinds())
        for (const RuleLine& line : test::made(kind->id, assembly::example_values(*kind)).rules) {
            CAPTURE(line.rule);
            const bool known =
                std::any_of(sources->begin(), sources->end(), [&](const auto& source) {
                    return source.key == line.source;
                });
            CHECK(known);
            CHECK_FALSE(line.words.empty());
            CHECK(line.limit > Length{});
            ++lines;
        }
    CHECK(lines > 25);
}

TEST_CASE("the elevation of a guard shows each post and picket where its figures say") {
    assembly::Values values = assembly::example_values(*assembly::find_kind("guard-run"));
    const auto guard = test::made("guard-run", values);
    int posts = 0;
    int pickets = 0;
    double right = 0.0;
    for (const assembly::Outline& outline : guard.elevation.outlines) {
        posts += outline.mark == "L1-P" ? 1 : 0;
        pickets += outline.mark == "L1-K" ? 1 : 0;
        for (const assembly::Spot& spot : outline.spots)
            right = std::max(right, to_inches(spot.x));
    }
    CHECK(posts == test::part(guard, "post").count);
    CHECK(pickets == test::part(guard, "picket").count);
    CHECK(right == doctest::Approx(16.0 * 12.0)); // the run of the example
}

// ISPSC 305: with tops of rails less than 45 in apart, at most 1-3/4 in between pickets.
TEST_CASE("rails of a pool guard under 45 in apart narrow the gaps between its pickets") {
    const auto gaps = [](const char* bottom_gap, const char* fill) {
        assembly::Values values = assembly::example_values(*assembly::find_kind("guard-run"));
        test::set(values, "rule", "pool");
        test::set(values, "height", "48 in");
        test::set(values, "bottom_gap", bottom_gap);
        test::set(values, "fill", fill);
        std::vector<RuleLine> out;
        for (const RuleLine& line : test::made("guard-run", values).rules)
            if (std::string_view(line.rule) == "pool-picket-gap")
                out.push_back(line);
        return out;
    };
    // The bottom rail is a flat of 3/8 in: its top stands 45 in under 48 in at a gap of 2-5/8 in.
    CHECK(gaps("2-9/16 in", "pickets").empty());
    CHECK(gaps("2-5/8 in", "pickets").empty());
    REQUIRE(gaps("2-11/16 in", "pickets").size() == 1);
    CHECK(gaps("2-11/16 in", "pickets").front().held == Held::breaks);
    CHECK(gaps("2-11/16 in", "midrail").empty());
}
