// The input of a calculation: read_calc.cpp.

#include "archive/archive.h"

#include <doctest/doctest.h>

using namespace treadle;

TEST_CASE("an input keeps names, order and text, and numbers as text") {
    const auto in = archive::read_calc_input(
        R"({"material": "A36", "angle": 90, "k": 0.42, "legs": ["1 in", "2 in"],
            "section": {"shape": "flat"}, "turned": true})");
    REQUIRE(in.ok());
    const calc::Input::Object* object = in->object();
    REQUIRE(object != nullptr);
    REQUIRE(object->size() == 6);
    CHECK((*object)[0].first == "material");
    CHECK(*(*object)[0].second.text() == "A36");
    CHECK(*(*object)[1].second.text() == "90");
    CHECK(*(*object)[2].second.text() == "0.42");
    REQUIRE((*object)[3].second.list() != nullptr);
    CHECK(*(*object)[3].second.list()->at(1).text() == "2 in");
    REQUIRE((*object)[4].second.object() != nullptr);
    CHECK(*(*object)[5].second.text() == "true");
}

TEST_CASE("a line names its calculation") {
    const auto line = archive::read_calc_line(R"({"calc": "punch.force", "in": {"a": "1 in"}})");
    REQUIRE(line.ok());
    CHECK(line->name == "punch.force");
    CHECK(line->input.object()->size() == 1);
}

TEST_CASE("what is no input is refused with a field of its own") {
    const auto field = [](std::string_view bytes) {
        const auto in = archive::read_calc_input(bytes);
        return in.ok() ? std::string("was read") : in.refusal().field;
    };
    CHECK(field("") == "in");
    CHECK(field("[1]") == "in");
    CHECK(field("{") == "in");
    CHECK(field(R"({"a": 1, "a": 2})") == "a");
    CHECK(field(R"({"a": null})") == "a");
    CHECK(field(R"({"a": {"b": [null]}})") == "a.b[0]");
    CHECK(field(R"({"a": NaN})") == "in");
}

TEST_CASE("what is no line is refused with a field of its own") {
    const auto field = [](std::string_view bytes) {
        const auto line = archive::read_calc_line(bytes);
        return line.ok() ? std::string("was read") : line.refusal().field;
    };
    CHECK(field("") == "line");
    CHECK(field("not json") == "line");
    CHECK(field("{}") == "calc");
    CHECK(field(R"({"calc": "x"})") == "in");
    CHECK(field(R"({"calc": "x", "in": []})") == "in");
    CHECK(field(R"({"calc": "x", "in": "1 in"})") == "in");
    CHECK(field(R"({"calc": "x", "in": {}, "out": 1})") == "out");
}
