#include "base/json_writer.h"

#include <doctest/doctest.h>

#include <limits>

using treadle::base::JsonWriter;

TEST_CASE("values come out in the order they were told") {
    JsonWriter json;
    json.begin_object().field("b", 1).field("a", "x").field("yes", true).field("k", 0.42);
    json.key("list").begin_array().integer(-3).null().begin_object().end_object().end_array();
    json.end_object();
    CHECK(json.str() == R"({"b":1,"a":"x","yes":true,"k":0.42,"list":[-3,null,{}]})");
}

TEST_CASE("indented text puts one item on a line and leaves empty ones closed") {
    JsonWriter json(2);
    json.begin_object().field("a", 1).key("none").begin_array().end_array();
    json.key("some").begin_array().boolean(false).end_array().end_object();
    CHECK(json.take() == "{\n  \"a\": 1,\n  \"none\": [],\n  \"some\": [\n    false\n  ]\n}");
}

TEST_CASE("text is escaped, other languages stay readable") {
    JsonWriter json;
    json.text("a\"b\\c\nd\te\x01 1½");
    CHECK(json.str() == "\"a\\\"b\\\\c\\nd\\te\\u0001 1½\"");
}

TEST_CASE("what is not finite is null, never a word that JSON has not") {
    JsonWriter json;
    json.begin_array()
        .number(std::numeric_limits<double>::infinity())
        .number(std::numeric_limits<double>::quiet_NaN())
        .end_array();
    CHECK(json.str() == "[null,null]");
}
