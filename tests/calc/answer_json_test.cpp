#include "calc/answer_json.h"
#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;

namespace {

bool has(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE("an answer is one line with figures, working and sources") {
    const auto answer = test::ask("shear.bar", test::good_input("shear.bar"));
    REQUIRE(answer.ok());
    const std::string json = calc::answer_json("shear.bar", *answer);
    CHECK(json.find('\n') == std::string::npos);
    // 1 in2 x 60 ksi = 30 US ton = 266.893 kN
    CHECK(has(json, R"({"calc":"shear.bar","out":{"force":{"value":266.893)"));
    CHECK(has(json, R"("unit":"kN"})"));
    CHECK(has(json, R"("working":[{"card":"shear-bar")"));
    CHECK(has(json, R"("sources":["derived-mechanics"]})"));
}

TEST_CASE("a source is named once however many workings rest on it") {
    const auto answer = test::ask("bend.blank", test::good_input("bend.blank"));
    REQUIRE(answer.ok());
    CHECK(has(calc::answer_json("bend.blank", *answer),
              R"("sources":["derived-geometry","tabellenbuch-metall"]})"));
}

TEST_CASE("a refusal names field and reason, and detail only when there is one") {
    CHECK(calc::refusal_json({"thickness", "Too thick.", ""}) ==
          R"({"error":{"field":"thickness","reason":"Too thick."}})");
    CHECK(calc::refusal_json({"thickness", "Too thick.", "up to 1 in"}) ==
          R"({"error":{"field":"thickness","reason":"Too thick.","detail":"up to 1 in"}})");
}

TEST_CASE("the list holds every calculation and every input") {
    const std::string list = calc::list_json();
    for (const calc::Calculation* calculation : calc::all()) {
        CAPTURE(calculation->name);
        CHECK(has(list, ("\"" + std::string(calculation->name) + "\"").c_str()));
        for (const calc::InputSpec& input : calculation->inputs)
            CHECK(has(list, ("\"" + std::string(input.name) + "\"").c_str()));
    }
}
