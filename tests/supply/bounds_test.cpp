#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <string>

#include "supply/bounds.h"
#include "supply/cards.h"

using namespace treadle;
using supply::Bounds;

TEST_CASE("the first fault is kept, with its field") {
    Bounds bounds;
    bounds.voltage(quantity::volts(230.0), "voltage")
        .current(Current{}, "current")
        .mass(Mass{}, "load");
    REQUIRE(bounds.failed());
    CHECK(bounds.refusal().field == "current");
    CHECK_FALSE(bounds.refusal().reason.empty());
}

TEST_CASE("both sides of every bound") {
    const auto failed = [](auto ask) {
        Bounds bounds;
        ask(bounds);
        return bounds.failed();
    };
    CHECK_FALSE(failed([](Bounds& b) { b.voltage(quantity::volts(1000.0), "v"); }));
    CHECK(failed([](Bounds& b) { b.voltage(quantity::volts(1001.0), "v"); }));
    CHECK_FALSE(failed([](Bounds& b) { b.current(quantity::amperes(2000.0), "i"); }));
    CHECK(failed([](Bounds& b) { b.current(quantity::amperes(2001.0), "i"); }));
    CHECK_FALSE(failed([](Bounds& b) { b.power(quantity::watts(1e6), "p"); }));
    CHECK(failed([](Bounds& b) { b.power(quantity::watts(1.001e6), "p"); }));
    CHECK_FALSE(failed([](Bounds& b) { b.mass(quantity::kilograms(10'000.0), "m"); }));
    CHECK(failed([](Bounds& b) { b.mass(quantity::kilograms(10'001.0), "m"); }));
    CHECK(failed([](Bounds& b) { b.length(Length{}, inches(9.0), "l"); }));
    CHECK_FALSE(failed([](Bounds& b) { b.length_or_zero(Length{}, inches(9.0), "l"); }));
    CHECK(failed([](Bounds& b) { b.length_or_zero(inches(-1.0), inches(9.0), "l"); }));
    CHECK(failed([](Bounds& b) { b.length(inches(10.0), inches(9.0), "l"); }));
    CHECK_FALSE(failed([](Bounds& b) { b.angle_or_zero(Angle{}, 180.0, "a"); }));
    CHECK(failed([](Bounds& b) { b.angle_or_zero(degrees(180.5), 180.0, "a"); }));
    CHECK(failed([](Bounds& b) { b.number(0.0, 1.0, "n"); }));
    CHECK_FALSE(failed([](Bounds& b) { b.number_or_zero(0.0, 1.0, "n"); }));
    CHECK(failed([](Bounds& b) { b.number(NAN, 1.0, "n"); }));
    CHECK(failed([](Bounds& b) { b.number(INFINITY, 1.0, "n"); }));
}

TEST_CASE("every card of the room is listed once") {
    std::set<std::string> ids;
    for (const base::FormulaCard* card : supply::cards())
        CHECK(ids.insert(card->id).second);
    CHECK(ids.size() == 20);
}
