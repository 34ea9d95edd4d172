#include "calc/example.h"

#include <doctest/doctest.h>

using namespace treadle;
using calc::InputKind;

namespace {

calc::Input example(InputKind kind, const char* choices, const char* text) {
    return calc::example_input({"x", kind, true, "", choices, text});
}

} // namespace

TEST_CASE("a text stays as it is typed") {
    CHECK(*example(InputKind::length, "", "1-1/8 in").text() == "1-1/8 in");
}

TEST_CASE("a word's example is its first choice, unless another is given") {
    CHECK(*example(InputKind::word, "round|square", "").text() == "round");
    CHECK(*example(InputKind::word, "round", "").text() == "round");
    CHECK(*example(InputKind::word, "round|square", "square").text() == "square");
}

TEST_CASE("semicolons make a list, one at the end a list of one") {
    const calc::Input three = example(InputKind::length_list, "", "50 mm; 100 mm; 50 mm");
    REQUIRE(three.list() != nullptr);
    REQUIRE(three.list()->size() == 3);
    CHECK(*three.list()->at(1).text() == "100 mm");
    const calc::Input one = example(InputKind::length_list, "", "50 mm;");
    REQUIRE(one.list() != nullptr);
    CHECK(one.list()->size() == 1);
}

TEST_CASE("names and values make an object, alone or in a list") {
    const calc::Input bends = example(InputKind::bends, "", "angle=90 deg, radius=6 mm;");
    REQUIRE(bends.list() != nullptr);
    REQUIRE(bends.list()->size() == 1);
    const calc::Input::Object* bend = bends.list()->front().object();
    REQUIRE(bend != nullptr);
    REQUIRE(bend->size() == 2);
    CHECK((*bend)[1].first == "radius");
    CHECK(*(*bend)[1].second.text() == "6 mm");
    const calc::Input section = example(InputKind::section, "", "shape=round, width=1 in");
    REQUIRE(section.object() != nullptr);
    CHECK(section.object()->size() == 2);
}
