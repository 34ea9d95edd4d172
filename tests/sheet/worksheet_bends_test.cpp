// The order of bends on the sheet, in its drawings and in the plan for other programs.

#include "plan/bend_bench.h"
#include "sheet/outline.h"
#include "sheet/worksheet.h"

#include <nlohmann/json.hpp>

#include <algorithm>

using namespace treadle;
using namespace treadle::test;

namespace {

plan::Plan plan_of(Bench& bench, const job::Part& part) {
    bench.job.parts = {std::make_shared<const job::Part>(part)};
    return plan::make_plan(bench.job, bench.shop, bench.catalog);
}

std::string sheet_of(const plan::Plan& plan, const Bench& bench) {
    return sheet::worksheet_html(plan, bench.job, bench.shop, bench.catalog, {});
}

bool has(const std::string& text, const char* what) { return text.find(what) != std::string::npos; }

double width_mm(const sheet::Profile& profile) {
    const auto [low, high] =
        std::minmax_element(profile.outline.begin(),
                            profile.outline.end(),
                            [](sheet::Spot a, sheet::Spot b) { return a.x < b.x; });
    return high->x - low->x;
}

} // namespace

TEST_CASE("a stage is flat where its bends are still to come") {
    Bench bench = with_sizes();
    const auto plan = plan_of(bench, bent({3, 9, 3}, {true, true}));
    const plan::PartPlan& part = *plan.parts[0];
    const auto flat = sheet::bent_profile(part, {});
    const auto first = sheet::bent_profile(part, {1});
    const auto both = sheet::bent_profile(part, {1, 2});
    REQUIRE(flat);
    REQUIRE(first);
    REQUIRE(both);
    CHECK(width_mm(*flat) == doctest::Approx(quantity::to_millimetres(part.blank_exact)));
    CHECK(width_mm(*both) == doctest::Approx(3.0 * 25.4)); // lies on its side: the outside leg
    CHECK(width_mm(*first) < width_mm(*flat));
    REQUIRE(part.bends);
    CHECK(sheet::draw_bend_stage(part, 0).paths.size() == 1);
    CHECK(has(sheet::draw_bend_stage(part, 1).description, "after 2 of its bends"));
}

TEST_CASE("steps say how the part lies and what the stop is set to") {
    Bench bench = with_sizes();
    const auto plan = plan_of(bench, bent({3, 5, 3}, {true, false}));
    const plan::PartPlan& part = *plan.parts[0];
    REQUIRE(part.bends);
    REQUIRE(part.bends->steps.size() == 2);
    const std::string html = sheet_of(plan, bench);
    CHECK(has(html, "Order of the bends of P1"));
    CHECK(has(html, "datum face up, "));
    CHECK(has(html, "turn it: datum face down, "));
    CHECK(has(html, "to the stop"));
    CHECK(has(html, "1. after operation "));
}

TEST_CASE("what is missing for the order is said by name") {
    Bench bench = with_sizes();
    bench.shop.crib.vees[0].height.reset();
    const std::string html = sheet_of(plan_of(bench, bent({3, 5}, {true})), bench);
    CHECK(has(html, "not computed. Not known: height of V block 1."));
    CHECK_FALSE(has(html, "Order of the bends of P1"));
    bench.shop.machine.attachments[0].bed_width.reset();
    bench.shop.crib.vees[0].height = inches(2.5);
    CHECK(has(sheet_of(plan_of(bench, bent({3, 5}, {true})), bench),
              "Not known: bed width of brake."));
}

TEST_CASE("a part that no order can bend names leg and tool") {
    Bench bench = with_sizes();
    const auto plan = plan_of(bench, bent({3, 1.3, 3}, {true, true}));
    CHECK(has(sheet_of(plan, bench), "leg 1 meets the punch"));
    const auto json = nlohmann::json::parse(sheet::plan_json(plan, bench.job, bench.shop));
    const auto& order = json.at("parts").at(0).at("bend_order");
    CHECK(order.at("steps").empty());
    CHECK(order.at("blocked").at(0).at("obstacle") == "punch");
    CHECK(order.at("blocked").at(0).at("leg") == 0);
    CHECK(order.at("blocked").at(0).at("operation") == 2);
}

TEST_CASE("other programs read the same stops") {
    Bench bench = with_sizes();
    const auto plan = plan_of(bench, bent({3, 9, 4}, {true, true}));
    const plan::PartPlan& part = *plan.parts[0];
    const auto json = nlohmann::json::parse(sheet::plan_json(plan, bench.job, bench.shop));
    const auto& steps = json.at("parts").at(0).at("bend_order").at("steps");
    REQUIRE(part.bends);
    REQUIRE(steps.size() == part.bends->steps.size());
    for (std::size_t i = 0; i < steps.size(); ++i) {
        CHECK(steps[i].at("operation") == part.bends->steps[i].bend);
        CHECK(steps[i].at("stop_mm").get<double>() ==
              doctest::Approx(quantity::to_millimetres(part.bends->steps[i].stop)));
        CHECK(steps[i].at("datum_end_gauged") == part.bends->steps[i].start_gauged);
    }
}
