// Settings, edges, batches and first pieces on paper and in the JSON: worksheet_tools.cpp,
// worksheet_setups.cpp and plan_json_setups.cpp.

#include "plan/batches.h"
#include "plan/wear.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

#include <nlohmann/json.hpp>

using namespace treadle;
using nlohmann::json;
using sheet_test::count_of;
using sheet_test::Sample;

namespace {

std::string html_of(const Sample& sample, bool workings = true) {
    sheet::SheetOptions options;
    options.kinds.workings = workings;
    return sheet::worksheet_html(sample.plan, sample.job, sample.shop, sample.catalog, options);
}

json json_of(const Sample& sample) {
    return json::parse(sheet::plan_json(sample.plan, sample.job, sample.shop));
}

bool has(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

/// A shop that splits, marks, measures and grinds; every part fifteen times.
Sample busy() {
    Sample sample;
    equipment::HouseRules& rules = sample.shop.rules;
    rules.batch_pieces = 6;
    rules.check_every = 5;
    rules.marking = "paint on the far end";
    rules.regrind_after = 100;
    sample.shop.crib.punches[0].strokes_since_grind = 99;
    for (std::size_t i = 0; i < sample.job.parts.size(); ++i)
        sample.change(i, [](job::Part& part) { part.count = 15; });
    return sample;
}

} // namespace

TEST_CASE("the ram's settings stand at their set-ups, with their working where it is wanted") {
    const Sample sample;
    const std::string html = html_of(sample);
    int lines = 0;
    for (const plan::SetUp& set_up : sample.plan.order)
        for (const std::string& line : plan::setting_lines(set_up, sample.shop, sample.job.style)) {
            ++lines;
            CHECK_MESSAGE(has(html, line), line);
        }
    CHECK(lines > 4);
    CHECK(has(html, "Working of the ram settings"));
    CHECK_FALSE(has(html_of(sample, false), "Working of the ram settings"));
}

TEST_CASE("first pieces, batches and marks are on the sheet of a shop that has rules for them") {
    const Sample sample = busy();
    const std::string html = html_of(sample);
    CHECK(sheet_test::fault_in_markup(html) == "");
    CHECK(has(html, "3 batches of 6, the last of 3"));
    CHECK(has(html, "First piece: measure before the rest, then 1 in 5<"));
    CHECK(has(html, "length <strong>10</strong>"));
    std::size_t steps = 0;
    int begun = 0;
    for (const plan::SetUp& set_up : sample.plan.order)
        for (const plan::Step& step : set_up.steps) {
            ++steps;
            begun += step.begins ? 1 : 0;
        }
    CHECK(count_of(html, "First piece: measure") == static_cast<int>(steps));
    CHECK(count_of(html, "Mark each piece ") == begun);
    CHECK(has(html, "Mark each piece BP1: paint on the far end"));
    const std::string plain = html_of(Sample{});
    CHECK_FALSE(has(plain, " batches of "));
    CHECK(has(plain, "Mark each piece BP1<"));
}

TEST_CASE("edges to grind stand out among the tools to fetch") {
    const Sample sample = busy();
    const std::string html = html_of(sample);
    const auto list = plan::tool_wear(sample.plan, sample.shop);
    REQUIRE_FALSE(list.empty());
    for (const plan::ToolWear& wear : list)
        CHECK(has(html, plan::edge_words(wear.kind, wear.tool, sample.shop, sample.job.style)));
    CHECK(list[0].state == plan::WearState::reached);
    CHECK(has(html, "<strong>" + plan::wear_words(list[0]) + "</strong>"));
}

TEST_CASE("the JSON says the same settings, steps and edges as the plan") {
    const Sample sample = busy();
    const json read = json_of(sample);
    for (std::size_t i = 0; i < sample.plan.order.size(); ++i) {
        const plan::SetUp& set_up = sample.plan.order[i];
        const json& said = read["set_ups"][i];
        if (set_up.settings.kind == plan::Settings::Kind::none) {
            CHECK(said["settings"].is_null());
        } else if (set_up.settings.stroke_up) {
            CHECK(said["settings"]["ram_up_mm"].get<double>() ==
                  doctest::Approx(quantity::to_millimetres(*set_up.settings.stroke_up)));
        } else {
            CHECK(said["settings"]["ram_up_mm"].is_null());
        }
        for (std::size_t k = 0; k < set_up.steps.size(); ++k) {
            const json& step = said["steps"][k];
            const json& batches = step["batches"];
            CHECK((batches["count"].get<int>() - 1) * batches["pieces"].get<int>() +
                      batches["last"].get<int>() ==
                  set_up.steps[k].pieces);
            CHECK(step["begins_part"] == set_up.steps[k].begins);
            CHECK(step["pieces_measured"] == 3); // 1, 6 and 11 of 15
            CHECK_FALSE(step["first_piece"].empty());
        }
    }
    const auto list = plan::tool_wear(sample.plan, sample.shop);
    REQUIRE(read["wear"].size() == list.size());
    CHECK(read["wear"][0]["state"] == "reached");
    CHECK(read["wear"][0]["due_after_strokes"] == 1);
    CHECK(read["wear"][0]["since_grind"] == 99);
}
