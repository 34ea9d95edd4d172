#include <doctest/doctest.h>

#include <string>

#include "supply/cards.h"
#include "supply/cord.h"

using namespace treadle;
using namespace treadle::supply;
using quantity::amperes;
using quantity::feet;
using quantity::volts;

namespace {

Cord cord(double v, double i, double length_ft, Wire wire) {
    return {volts(v), amperes(i), feet(length_ft), wire};
}

bool says(const base::Result<Working>& working, const char* words) {
    REQUIRE(working.ok());
    return working->note.find(words) != std::string::npos;
}

std::string card(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return working->card->id;
}

} // namespace

TEST_CASE("a thicker wire never has more resistance nor carries less") {
    for (int i = 1; i <= static_cast<int>(Wire::awg2); ++i) {
        const Wire thin = static_cast<Wire>(i - 1);
        const Wire thick = static_cast<Wire>(i);
        for (const WireKind kind : {WireKind::stranded, WireKind::formula})
            CHECK(*wire_resistance(thick, kind) < *wire_resistance(thin, kind));
        for (const int carrying : {2, 3})
            CHECK(*cord_ampacity(thick, carrying) > *cord_ampacity(thin, carrying));
        CHECK(*cord_ampacity(thick, 2) > *cord_ampacity(thick, 3));
    }
}

TEST_CASE("what no table says is refused") {
    CHECK(wire_resistance(Wire::awg6, WireKind::solid).refusal().field == "kind");
    CHECK(wire_resistance(Wire::mm4, WireKind::formula).refusal().field == "kind");
    CHECK(cord_ampacity(Wire::mm4, 2).refusal().field == "wire");
    CHECK(cord_ampacity(Wire::awg12, 4).refusal().field == "conductors");
}

TEST_CASE("the cards wire-resistance, wire-resistance-metric, wire-resistance-formula") {
    CHECK(card(wire_resistance_working(Wire::awg12, WireKind::stranded)) == "wire-resistance");
    CHECK(card(wire_resistance_working(Wire::mm4, WireKind::stranded)) == "wire-resistance-metric");
    CHECK(card(wire_resistance_working(Wire::awg12, WireKind::formula)) ==
          "wire-resistance-formula");
    CHECK(says(wire_resistance_working(Wire::awg12, WireKind::stranded), "from memory"));
    CHECK_FALSE(says(wire_resistance_working(Wire::awg6, WireKind::stranded), "from memory"));
    CHECK(card(cord_ampacity_working(Wire::awg12, 2)) == "cord-ampacity");
    CHECK_FALSE(says(cord_ampacity_working(Wire::awg12, 2), "From memory"));
    CHECK(says(cord_ampacity_working(Wire::awg12, 3), "From memory"));
}

TEST_CASE("the current is held against the ampacity before any drop") {
    // 12 AWG carries 25 A with two conductors
    CHECK(cord_drop(cord(230, 25.0, 10, Wire::awg12)).ok());
    CHECK(cord_drop(cord(230, 25.1, 10, Wire::awg12)).refusal().field == "wire");
    CHECK(longest_cord(cord(230, 25.1, 0, Wire::awg12), 0.03).refusal().field == "wire");
    CHECK(cord_drop_working(cord(230, 20.0, 10, Wire::awg12))->note.find("too thin") ==
          std::string::npos); // 1.25 x 20 = 25
    CHECK(says(cord_drop_working(cord(230, 20.1, 10, Wire::awg12)), "too thin"));
}

TEST_CASE("a drop warns over 3 %, stops over 5 %, and is refused when nothing is left") {
    // 10 A over 12 AWG loses 2 x 10 x 1.98 / 1000 = 0.0396 V for each foot
    CHECK(card(cord_drop_working(cord(100, 10, 50, Wire::awg12))) == "cord-drop");
    CHECK_FALSE(says(cord_drop_working(cord(100, 10, 75, Wire::awg12)), "Over"));
    CHECK(says(cord_drop_working(cord(100, 10, 76, Wire::awg12)), "Over 3 %"));
    CHECK(says(cord_drop_working(cord(100, 10, 127, Wire::awg12)), "Over 5 %"));
    CHECK(cord_drop(cord(100, 10, 2526, Wire::awg12)).refusal().field == "length");
}

TEST_CASE("the start: warned over 15 %, stopped over 30 %") {
    const Cord at = cord(100, 10, 50, Wire::awg12); // 0.198 V for each ampere
    CHECK_FALSE(says(cord_start_working(at, amperes(75)), "Over"));
    CHECK(says(cord_start_working(at, amperes(76)), "Over 15 %"));
    CHECK(says(cord_start_working(at, amperes(152)), "Over 30 %"));
    CHECK(cord_start_working(at, amperes(506)).refusal().field == "start_current");
    CHECK(cord_start_working(at, amperes(9)).refusal().field == "start_current");
}

TEST_CASE("cord-longest: a cord of the longest length loses just the share") {
    Cord at = cord(230, 17, 0, Wire::awg10);
    at.length = *longest_cord(at, 0.03);
    CHECK(*cord_drop(at) / at.voltage == doctest::Approx(0.03));
    CHECK(card(longest_cord_working(at, 0.03)) == "cord-longest");
    CHECK(longest_cord(at, 0.0).refusal().field == "limit");
    CHECK(longest_cord(at, 0.21).refusal().field == "limit");
}

TEST_CASE("three phases lose the square root of three, not twice") {
    Cord at = cord(480, 10, 100, Wire::awg12);
    const Voltage single = *cord_drop(at);
    at.phases = Phases::three;
    at.carrying = 3;
    CHECK(single / *cord_drop(at) == doctest::Approx(2.0 / 1.7320508));
}

TEST_CASE("more current or more length never loses less") {
    Voltage last{};
    for (double i = 1.0; i <= 25.0; i += 1.0) {
        const Voltage now = *cord_drop(cord(230, i, 100, Wire::awg12));
        CHECK(now > last);
        last = now;
    }
}
