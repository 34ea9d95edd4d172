#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

using namespace treadle;
using test::ask;
using test::field_of;
using test::figure;

TEST_CASE("motor.current takes the highest usual letter when none is given") {
    const auto with =
        ask("motor.current", {{"power", "3 hp"}, {"voltage", "230 V"}, {"code", "K"}});
    const auto without = ask("motor.current", {{"power", "3 hp"}, {"voltage", "230 V"}});
    CHECK(figure(without, "locked_power") == figure(with, "locked_power"));
    CHECK(field_of(ask("motor.current",
                       {{"power", "3 hp"}, {"voltage", "230 V"}, {"code", "V"}})) == "code");
}

TEST_CASE("cord.drop counts two conductors in single phase and three in three phases") {
    const calc::Input::Object cord{
        {"voltage", "230 V"}, {"current", "10 A"}, {"length", "50 ft"}, {"wire", "12 AWG"}};
    CHECK(figure(ask("cord.drop", cord), "ampacity") == 25.0);
    calc::Input::Object three = cord;
    three.emplace_back("phase", "three");
    CHECK(figure(ask("cord.drop", three), "ampacity") == 20.0);
    three.emplace_back("conductors", "2");
    CHECK(field_of(ask("cord.drop", three)) == "conductors");
    calc::Input::Object neutral = cord;
    neutral.emplace_back("conductors", "3");
    CHECK(figure(ask("cord.drop", neutral), "ampacity") == 20.0);
}

TEST_CASE("cord.ampacity counts three conductors unless two are said") {
    CHECK(figure(ask("cord.ampacity", {{"wire", "12 AWG"}}), "ampacity") == 20.0);
    CHECK(field_of(ask("cord.ampacity", {{"wire", "4 mm2"}})) == "wire");
}

TEST_CASE("wire.resistance of a length, and no farther than a cord reaches") {
    // 500 ft of 1.98 ohm per 1000 ft
    CHECK(figure(ask("wire.resistance", {{"wire", "12 AWG"}, {"length", "500 ft"}}),
                 "resistance") == doctest::Approx(0.99));
    CHECK(field_of(ask("wire.resistance", {{"wire", "12 AWG"}, {"length", "1001 m"}})) == "length");
}

TEST_CASE("generator.size: the rule of thumb takes no code letter") {
    CHECK(field_of(
              ask("generator.size",
                  {{"power", "3 hp"}, {"voltage", "230 V"}, {"rule", "triple"}, {"code", "K"}})) ==
          "code");
}
