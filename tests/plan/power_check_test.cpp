// Cord and generator of a shop against its motor: core/plan/power_check.cpp.
//
// Currents by NEC table 430.248, locked rotor by 430.7(B), ampacity by 400.5(A)(1), resistance by
// chapter 9 table 8; the arithmetic stands beside each row. Limits: common practice, no source.

#include "plan/power_check.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace treadle;
using plan::Outcome;
using plan::PowerLine;
using quantity::feet;

namespace {

equipment::PowerSupply three_horsepower() {
    equipment::PowerSupply supply;
    supply.motor = quantity::horsepower(3.0);
    supply.voltage = quantity::volts(230.0);
    supply.code = "K";
    supply.cord = "10 AWG";
    supply.cord_length = feet(100.0);
    supply.generator = quantity::kilovolt_amperes(27.0);
    return supply;
}

std::vector<PowerLine> lines(const equipment::PowerSupply& supply) {
    auto found = plan::check_power(supply);
    REQUIRE(found.size() == 3);
    return found;
}

} // namespace

TEST_CASE("a good cord and a generator large enough fit, with their working") {
    // running 2 x 100 x 17 x 1.24/1000 = 4.22 V = 1.83 %; start 117.3 A: 29.1 V = 12.6 %
    const auto found = lines(three_horsepower());
    for (const PowerLine& line : found) {
        CAPTURE(line.words);
        CHECK(line.outcome == Outcome::fits);
        CHECK_FALSE(line.warning);
        CHECK(line.workings.size() == 2);
    }
    CHECK(found[0].words.find("1.9 %") != std::string::npos); // rounded against us
    const auto said_in = [](const PowerLine& line, const char* words) {
        return std::any_of(line.workings.begin(), line.workings.end(), [&](const Working& working) {
            return working.note.find(words) != std::string::npos;
        });
    };
    CHECK(said_in(found[0], "1.9 % of the voltage")); // and the same in its working
    CHECK(said_in(found[1], "At the start 12.7 % of the voltage"));
    CHECK(found[1].words.find("12.7 %") != std::string::npos);
    CHECK(found[2].words.find("27.0 kVA") != std::string::npos); // 8.99 x 3 = 26.97
}

TEST_CASE("running, three per cent warns and five does not fit") {
    auto supply = three_horsepower();
    supply.cord_length = feet(163.0); // 6.87 V = 2.988 %
    CHECK_FALSE(lines(supply)[0].warning);
    supply.cord_length = feet(165.0); // 6.96 V = 3.02 %
    CHECK(lines(supply)[0].warning);
    CHECK(lines(supply)[0].outcome == Outcome::fits);
    supply.cord_length = feet(272.0); // 11.47 V = 4.99 %
    CHECK(lines(supply)[0].outcome == Outcome::fits);
    supply.cord_length = feet(274.0); // 11.55 V = 5.02 %
    CHECK(lines(supply)[0].outcome == Outcome::does_not_fit);
}

TEST_CASE("at the start, fifteen per cent warns and thirty does not fit") {
    auto supply = three_horsepower(); // 12.65 % at 100 ft
    supply.cord_length = feet(118.0); // 14.93 %
    CHECK_FALSE(lines(supply)[1].warning);
    supply.cord_length = feet(120.0); // 15.18 %
    CHECK(lines(supply)[1].warning);
    supply.cord_length = feet(236.0); // 29.85 %
    CHECK(lines(supply)[1].outcome == Outcome::fits);
    supply.cord_length = feet(239.0); // 30.23 %
    CHECK(lines(supply)[1].outcome == Outcome::does_not_fit);
}

TEST_CASE("a cord that may not carry the current does not fit, whatever it loses") {
    auto supply = three_horsepower();
    supply.motor = quantity::horsepower(1.5);
    supply.voltage = quantity::volts(115.0); // 20 A
    supply.cord_length = feet(1.0);
    supply.cord = "14 AWG"; // 18 A
    CHECK(lines(supply)[0].outcome == Outcome::does_not_fit);
    supply.cord = "12 AWG"; // 25 A
    CHECK(lines(supply)[0].outcome == Outcome::fits);
}

TEST_CASE("a generator gives the locked-rotor power or does not fit") {
    auto supply = three_horsepower(); // 8.99 x 3 = 26.97 kVA
    supply.generator = quantity::kilovolt_amperes(26.98);
    CHECK(lines(supply)[2].outcome == Outcome::fits);
    supply.generator = quantity::kilovolt_amperes(26.96);
    CHECK(lines(supply)[2].outcome == Outcome::does_not_fit);
}

TEST_CASE("what is not known is named and never fits") {
    const auto first = [](auto forget) {
        auto supply = three_horsepower();
        forget(supply);
        const auto found = plan::check_power(supply);
        for (const PowerLine& line : found)
            if (line.outcome == Outcome::cannot_be_said)
                return line.words;
        return std::string("said");
    };
    using Supply = equipment::PowerSupply;
    CHECK(first([](Supply& s) { s = Supply{}; }) ==
          "Power at the machine: not known: power of the motor");
    CHECK(first([](Supply& s) { s.voltage.reset(); }) ==
          "Power at the machine: not known: voltage of the motor");
    CHECK(first([](Supply& s) { s.cord.clear(); }) ==
          "Cord: not known: size of its wires, such as 10 AWG");
    CHECK(first([](Supply& s) { s.cord = "11 AWG"; }) ==
          "Cord: not known: size of its wires, such as 10 AWG");
    CHECK(first([](Supply& s) { s.cord_length.reset(); }) == "Cord: not known: its length");
    CHECK(first([](Supply& s) { s.generator.reset(); }).find("not known: what the generator") !=
          std::string::npos);
    CHECK(first([](Supply& s) { s.code.clear(); }) == "said"); // the highest usual letter
    CHECK(first([](Supply& s) {
              s.motor = quantity::horsepower(400.0);
          }).rfind("Power at the machine: not known: ", 0) == 0);
}
