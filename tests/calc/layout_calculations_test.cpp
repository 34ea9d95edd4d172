// What the calculations of layout add to the room's own formulas: hole_calculations.cpp,
// layout_calculations.cpp, railing_calculations.cpp, rake_calculations.cpp,
// saddle_calculations.cpp, frame_calculations.cpp. Their rows are in tests/published_layout.

#include "calc/answer_json.h"
#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using calc::Input;
using test::ask;
using test::field_of;
using test::figure;

TEST_CASE("a list is written with its values and one unit") {
    const auto answer =
        ask("running.places",
            {{"length", "100 mm"}, {"first", "10 mm"}, {"last", "10 mm"}, {"count", "3"}});
    REQUIRE(answer.ok());
    CHECK(calc::answer_json("running.places", *answer)
              .find(R"("positions":{"values":[10,50,90],"unit":"mm"})") != std::string::npos);
}

TEST_CASE("a slope is told one way") {
    const Input::Object rest{{"panel", "96 in"}};
    const auto with = [&](Input::Object in) {
        in.insert(in.end(), rest.begin(), rest.end());
        return field_of(ask("rake.panel", in));
    };
    CHECK(with({{"slope", "1/12"}}).empty());
    CHECK(with({{"riser", "7 in"}, {"tread", "11 in"}}).empty());
    CHECK(with({{"rise", "1 ft"}, {"run", "12 ft"}}).empty());
    CHECK(with({}) == "riser");
    CHECK(with({{"riser", "7 in"}}) == "tread");
    CHECK(with({{"run", "7 in"}}) == "rise");
    CHECK(with({{"slope", "1/12"}, {"riser", "7 in"}, {"tread", "11 in"}}) == "riser");
    CHECK(with({{"rise", "1 ft"}, {"run", "12 ft"}, {"tread", "11 in"}}) == "tread");
    CHECK(with({{"riser", "100 in"}, {"tread", "1 in"}}) == "riser");
    CHECK(with({{"slope", "40"}}) == "slope");
}

TEST_CASE("holes and edges: bolt or hole, and slots only where there are slots") {
    CHECK(field_of(ask("hole.edge", {{"edge", "rolled"}})) == "bolt");
    CHECK(field_of(ask("hole.edge", {{"edge", "rolled"}, {"bolt", "M20"}, {"hole", "22 mm"}})) ==
          "hole");
    CHECK(field_of(ask("hole.edge",
                       {{"edge", "rolled"}, {"hole", "22 mm"}, {"kind", "oversize"}})) == "kind");
    CHECK(field_of(
              ask("hole.edge", {{"edge", "rolled"}, {"bolt", "M20"}, {"slot_length", "26 mm"}})) ==
          "slot_length");
    CHECK(field_of(ask(
              "hole.edge",
              {{"edge", "rolled"}, {"bolt", "M20"}, {"rule", "en-1993"}, {"kind", "oversize"}})) ==
          "kind");
    const auto by_hole = ask("hole.edge", {{"edge", "sheared"}, {"hole", "13/16 in"}});
    const auto by_bolt = ask("hole.edge", {{"edge", "sheared"}, {"bolt", "3/4 in"}});
    CHECK(figure(by_hole, "least_edge") == figure(by_bolt, "least_edge"));
    CHECK(field_of(ask("hole.clear", {{"bolt", "M20"}})) == "spacing");
    CHECK(field_of(ask("hole.clear",
                       {{"bolt", "M20"}, {"spacing", "60 mm"}, {"edge_distance", "30 mm"}})) ==
          "edge_distance");
}

TEST_CASE("a sheared edge says which rule was careful") {
    const auto answer = ask("hole.edge", {{"edge", "sheared"}, {"bolt", "3/4 in"}});
    REQUIRE(answer.ok());
    CHECK(answer->workings.front().note.find("Careful") != std::string::npos);
}

TEST_CASE("frames ask for what their corner needs, and refuse what it cannot use") {
    const auto with = [](const char* kind, Input::Object more) {
        Input::Object in{{"kind", kind}, {"leg", "2 in"}};
        in.insert(in.end(), more.begin(), more.end());
        return field_of(ask("frame.cut", in));
    };
    const Input::Object sides{{"width", "24 in"}, {"height", "18 in"}};
    const Input::Object thick{{"width", "24 in"}, {"height", "18 in"}, {"thickness", "1/4 in"}};
    CHECK(with("mitre", sides).empty());
    CHECK(with("butt", sides) == "thickness");
    CHECK(with("notch-and-bend", sides) == "thickness");
    CHECK(with("notch-and-bend", thick).empty());
    CHECK(with("mitre", {{"width", "24 in"}}) == "height");
    CHECK(with("mitre", {{"width", "24 in"}, {"opening_width", "20 in"}, {"height", "18 in"}}) ==
          "opening_width");
    Input::Object k = thick;
    k.emplace_back("k", "0.4");
    CHECK(with("mitre", k) == "k");
    Input::Object wide = thick;
    wide.emplace_back("radius", "10 in");
    CHECK(with("notch-and-bend", wide) == "leg");
    Input::Object inside = thick;
    inside.emplace_back("heel", "inside");
    CHECK(with("notch-and-bend", inside) == "heel");
    CHECK(with("butt", inside) == "heel");
}

TEST_CASE("a bore is laid out with a wall") {
    const Input::Object in{{"branch_od", "1.9 in"}, {"run_od", "2.375 in"}, {"laid_out", "bore"}};
    CHECK(field_of(ask("saddle.template", in)) == "branch_wall");
}
