// The plan for other programs: worksheet_csv.cpp, plan_json.cpp and plan_json_at_once.cpp.

#include "plan/words.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

#include <nlohmann/json.hpp>

#include <set>

using namespace treadle;
using nlohmann::json;
using sheet_test::Sample;

namespace {

/// A reader of RFC 4180 of our own, so that the writer is not checked by itself.
std::vector<std::vector<std::string>> read_csv(const std::string& text) {
    std::vector<std::vector<std::string>> rows(1, std::vector<std::string>(1));
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (quoted) {
            if (c == '"' && i + 1 < text.size() && text[i + 1] == '"')
                rows.back().back() += text[++i];
            else if (c == '"')
                quoted = false;
            else
                rows.back().back() += c;
        } else if (c == '"') {
            quoted = true;
        } else if (c == ',') {
            rows.back().emplace_back();
        } else if (c == '\n') {
            rows.emplace_back(1);
        } else if (c != '\r') {
            rows.back().back() += c;
        }
    }
    rows.pop_back(); // after the last line's end
    return rows;
}

std::string csv_of(const Sample& sample) {
    return sheet::worksheet_csv(sample.plan, sample.job, sample.shop);
}
std::string json_of(const Sample& sample) {
    return sheet::plan_json(sample.plan, sample.job, sample.shop);
}

} // namespace

TEST_CASE("the table has a row for every operation, all equally long") {
    const Sample sample;
    const auto rows = read_csv(csv_of(sample));
    std::size_t operations = 0;
    for (const auto& part : sample.plan.parts)
        operations += part->operations.size();
    CHECK(rows.size() == operations + 1);
    for (const auto& row : rows)
        CHECK(row.size() == rows.front().size());
    CHECK(rows.at(1).at(0) == "BP1");
}

TEST_CASE("no cell of the table is a formula") {
    for (const char* evil : {"=cmd()", "+1", "-1", "@x"}) {
        Sample sample;
        sample.change(0, [&](job::Part& part) { part.mark = evil; });
        const auto rows = read_csv(csv_of(sample));
        CHECK(rows.at(1).at(0) == std::string("'") + evil);
    }
}

TEST_CASE("commas, quotes and line ends survive the table") {
    Sample sample;
    sample.change(0, [](job::Part& part) { part.mark = "a,\"b\"\nc"; });
    CHECK(read_csv(csv_of(sample)).at(1).at(0) == "a,\"b\"\nc");
}

TEST_CASE("the plan as JSON says what the plan says") {
    const Sample sample;
    const json read = json::parse(json_of(sample));
    CHECK(read["job"] == "Test job");
    CHECK(read["outcome"] == plan::outcome_key(sample.plan.outcome));
    REQUIRE(read["parts"].size() == sample.plan.parts.size());
    for (std::size_t p = 0; p < sample.plan.parts.size(); ++p) {
        const plan::PartPlan& part = *sample.plan.parts[p];
        const json& said = read["parts"][p];
        CHECK(said["mark"] == part.part->mark);
        CHECK(said["count"] == part.part->count);
        CHECK(said["outcome"] == plan::outcome_key(part.outcome));
        CHECK(said["blank_length_mm"].get<double>() ==
              doctest::Approx(quantity::to_millimetres(part.blank_length)));
        CHECK(said["marks"].size() == part.marks.size());
        REQUIRE(said["operations"].size() == part.operations.size());
        for (std::size_t i = 0; i < part.operations.size(); ++i) {
            const json& operation = said["operations"][i];
            CHECK(operation["outcome"] == plan::outcome_key(part.operations[i].outcome));
            CHECK(operation["checks"].size() == part.operations[i].checks.size());
            CHECK(operation["strokes"] == part.operations[i].strokes);
            for (const char* key : {"index",
                                    "operation",
                                    "title",
                                    "words",
                                    "margin_pct",
                                    "deciding_rule",
                                    "station",
                                    "attachment",
                                    "tools"})
                CHECK_MESSAGE(operation.contains(key), key);
        }
    }
    CHECK(read["set_ups"].size() == sample.plan.order.size());
    CHECK(read["shopping"].size() == sample.plan.shopping.size());
    CHECK(read["totals"]["pieces"] == sample.plan.pieces);
}

TEST_CASE("bends carry their figures, and a force check is in kilonewtons") {
    const Sample sample;
    const json read = json::parse(json_of(sample));
    const json& bend = read["parts"][1]["operations"][2]["bend"];
    const plan::OperationPlan& planned = sample.plan.parts[1]->operations[2];
    CHECK(bend["angle_deg"].get<double>() == 90.0);
    CHECK(bend["deduction_mm"].get<double>() ==
          doctest::Approx(quantity::to_millimetres(planned.figures.deduction)));
    int forces = 0;
    for (const json& check : read["parts"][0]["operations"][1]["checks"])
        if (check["rule"] == "force") {
            ++forces;
            CHECK(check["offer_kN"].get<double>() ==
                  doctest::Approx(quantity::to_kilonewtons(us_tons(50.0))));
        }
    CHECK(forces == 1);
}

TEST_CASE("names in the JSON are data, whatever is in them") {
    Sample sample;
    sample.job.name = "\"}],\\ \t é <b>";
    CHECK(json::parse(json_of(sample))["job"] == sample.job.name);
}

TEST_CASE("the same plan writes the same bytes") {
    const Sample a;
    const Sample b;
    CHECK(json_of(a) == json_of(b));
    CHECK(csv_of(a) == csv_of(b));
}

TEST_CASE("who does what is in the JSON for two people, in strokes where no times are known") {
    Sample sample;
    CHECK(json::parse(json_of(sample)).at("at_once").is_null());
    sample.shop.machine.operators = 2;
    const json shared = json::parse(json_of(sample)).at("at_once");
    CHECK(shared.at("people") == 2);
    CHECK(shared.at("alone_strokes") == sample.plan.strokes);
    CHECK(shared.at("least_strokes") <= shared.at("longest_strokes"));
    CHECK(shared.at("longest_strokes") <= shared.at("alone_strokes"));
    std::set<int> seen;
    for (const json& lane : shared.at("lanes"))
        for (const json& run : lane)
            CHECK(seen.insert(run.at("set_up").get<int>()).second);
    CHECK(seen.size() == sample.plan.order.size());
}

TEST_CASE("the time is in minutes, with the labour, or it is null and said why") {
    Sample sample;
    const json without = json::parse(json_of(sample));
    CHECK(without["totals"]["time_min"].is_null());
    CHECK(without["totals"]["labour_cost"].is_null());
    CHECK(without["set_ups"][0]["time_min"].is_null());
    CHECK(without["totals"]["time_words"].get<std::string>().rfind("not computed: ", 0) == 0);
    equipment::WorkTimes& times = sample.shop.rules.times;
    times.new_station = times.new_tool = quantity::minutes(7.0);
    times.stroke = times.position = times.first_piece = Duration{};
    times.handling = {{quantity::kilograms(10000.0), Duration{}}};
    times.labour_per_hour = 30.0;
    const json read = json::parse(json_of(sample));
    REQUIRE(read["set_ups"].size() == sample.plan.order.size());
    for (const json& set_up : read["set_ups"])
        CHECK(set_up["time_min"] == 7.0);
    const auto set_ups = static_cast<double>(sample.plan.order.size());
    CHECK(read["totals"]["time_min"] == 7.0 * set_ups);
    CHECK(read["totals"]["labour_cost"] == 3.5 * set_ups); // 7 min of 30 an hour
}
