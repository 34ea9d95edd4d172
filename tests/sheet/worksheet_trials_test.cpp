// Trial strips and the spread of finished legs on the sheet and in the plan for other programs:
// worksheet_trials.cpp, plan_json_legs.cpp.

#include "plan/bend_bench.h"
#include "sheet/worksheet.h"

#include <nlohmann/json.hpp>

using namespace treadle;
using namespace treadle::test;

namespace {

/// An eighth of A36 over the bench's V of 1-1/4: deductions 0.255 and 0.265 in, invented.
struct Trials {
    Bench bench = with_sizes();
    plan::Plan plan;

    Trials() {
        equipment::TrialRecord record;
        record.grade = "A36";
        record.thickness = inches(0.125);
        record.opening = inches(1.25);
        record.radius = inches(0.2);
        record.angle = degrees(90.0);
        record.strips = {{inches(6.0), inches(3.1), inches(3.155)},
                         {inches(6.0), inches(3.1), inches(3.165)}};
        bench.shop.trials = {record};
        bench.shop.rules.stop_repeat = millimetres(0.3);
        bench.job.tolerance = job::ToleranceClass::coarse;
        bench.job.parts = {std::make_shared<const job::Part>(bent({3, 4}, {true}))};
        make();
    }
    void make() { plan = plan::make_plan(bench.job, bench.shop, bench.catalog); }
    [[nodiscard]] std::string sheet() const {
        return sheet::worksheet_html(plan, bench.job, bench.shop, bench.catalog, {});
    }
    [[nodiscard]] nlohmann::json part_json() const {
        return nlohmann::json::parse(sheet::plan_json(plan, bench.job, bench.shop))["parts"][0];
    }
};

bool has(const std::string& text, const char* what) { return text.find(what) != std::string::npos; }

} // namespace

TEST_CASE("the sheet says what the strips give and what they do to each blank") {
    Trials trials;
    const std::string sheet = trials.sheet();
    CHECK(has(sheet, "Trial strips 1: A36, 1/8 in thick, V 1-1/4 in"));
    CHECK(has(sheet, "P1: blank 6-3/4 in by trial strips, "));
    CHECK(has(sheet, "by DIN 6935"));
    CHECK(has(sheet, "K from trial strips."));
    trials.bench.shop.trials.clear();
    trials.make();
    CHECK_FALSE(has(trials.sheet(), "trial strips 1"));
    CHECK_FALSE(has(trials.sheet(), "<h2>Trial strips"));
}

TEST_CASE("each finished leg stands with its class, its spread and what is missing") {
    Trials trials;
    const std::string sheet = trials.sheet();
    CHECK(has(sheet, "Finished legs of P1, asked for: class c (coarse) of ISO 2768-1"));
    CHECK(has(sheet, "within, by the worst case"));
    CHECK(has(sheet, "Needs how true a blank is sheared (house rules)."));
    trials.bench.job.tolerance.reset();
    CHECK(has(trials.sheet(), "no tolerance class asked for"));
    trials.bench.shop.trials.clear();
    trials.make();
    CHECK_FALSE(has(trials.sheet(), "Finished legs"));
}

TEST_CASE("the plan's JSON gives source and spread, null for what is not known") {
    Trials trials;
    const nlohmann::json part = trials.part_json();
    const nlohmann::json& bend = part["operations"][1]["bend"];
    CHECK(bend["blank_source"] == "trial");
    CHECK(bend["trial"] == 0);
    const nlohmann::json& legs = part["leg_spreads"];
    REQUIRE(legs.size() == 2);
    CHECK(legs[0]["verdict"] == "cannot_be_said");
    CHECK(legs[0]["limit_mm"] == 0.8);
    CHECK(legs[0]["worst_mm"].is_null());
    CHECK(legs[0]["missing"] == "how true a blank is sheared (house rules)");
    CHECK(legs[1]["verdict"] == "within");
    CHECK(legs[1]["worst_mm"].get<double>() == doctest::Approx(0.681)); // 0.254 + 0.3 + 0.127
    CHECK(legs[1]["missing"] == "");
    trials.bench.shop.trials.clear();
    trials.bench.shop.rules.blank_k = 0.42;
    trials.make();
    const nlohmann::json house = trials.part_json();
    CHECK(house["operations"][1]["bend"]["blank_source"] == "house_k");
    CHECK(house["operations"][1]["bend"]["trial"].is_null());
}
