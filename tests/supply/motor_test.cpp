#include <doctest/doctest.h>

#include <string>

#include "supply/cards.h"
#include "supply/motor.h"

using namespace treadle;
using namespace treadle::supply;
using quantity::horsepower;
using quantity::volts;

namespace {

Motor single(double hp, double v) { return {horsepower(hp), volts(v), Phases::single}; }
Motor three(double hp, double v) { return {horsepower(hp), volts(v), Phases::three}; }

double amperes(const base::Result<Current>& current) {
    REQUIRE(current.ok());
    return quantity::to_amperes(*current);
}

} // namespace

TEST_CASE("a column serves its system's voltages and no other") {
    CHECK(amperes(full_load_current(single(3.0, 110.0))) == 34.0);
    CHECK(amperes(full_load_current(single(3.0, 120.0))) == 34.0);
    CHECK(amperes(full_load_current(single(3.0, 240.0))) == 17.0);
    for (const double v : {109.0, 121.0, 199.0, 204.0, 219.0, 241.0, 400.0, 480.0})
        CHECK(full_load_current(single(3.0, v)).refusal().field == "voltage");
    CHECK(amperes(full_load_current(three(3.0, 480.0))) == 4.8);
    for (const double v : {115.0, 208.0, 400.0, 439.0, 481.0})
        CHECK(full_load_current(three(3.0, v)).refusal().field == "voltage");
}

TEST_CASE("a power between two rows takes the larger row, and says so") {
    CHECK(amperes(full_load_current(single(2.5, 230.0))) == 17.0);
    const auto working = full_load_working(single(2.5, 230.0));
    REQUIRE(working.ok());
    CHECK(std::string(working->card->id) == "motor-full-load");
    CHECK(working->note.find("next larger one, 3 hp") != std::string::npos);
    CHECK(full_load_working(single(3.0, 230.0))->note.find("larger") == std::string::npos);
    // 1.5 kW is 2.01 hp: over the 2 hp row
    CHECK(amperes(full_load_current({quantity::watts(1500.0), volts(230.0)})) == 17.0);
}

TEST_CASE("over the table's end there is no current") {
    CHECK(full_load_current(single(10.1, 230.0)).refusal().field == "power");
    CHECK(full_load_current(three(20.1, 230.0)).refusal().field == "power");
    // 1/6 hp stands for 115 and 230 V only: the next row that has 208 V is 1/2 hp
    CHECK(amperes(full_load_current(single(1.0 / 6.0, 208.0))) == 5.4);
}

TEST_CASE("a stronger motor never draws less") {
    for (const double v : {115.0, 200.0, 208.0, 230.0}) {
        double last = 0.0;
        for (double hp = 0.1; hp < 10.0; hp += 0.1) {
            const double now = amperes(full_load_current(single(hp, v)));
            CHECK(now >= last);
            last = now;
        }
    }
}

TEST_CASE("code letters: unknown ones, V, and the usual one when none is given") {
    for (const char c : {'I', 'O', 'Q', 'W', 'a', '1'})
        CHECK(locked_rotor(single(3.0, 230.0), c).refusal().field == "code");
    CHECK(locked_rotor(single(3.0, 230.0), 'V').refusal().field == "code");
    const auto assumed = [](double hp) { return locked_rotor(single(hp, 230.0), {})->letter; };
    CHECK(assumed(0.5) == 'M');
    CHECK(assumed(1.0) == 'M');
    CHECK(assumed(1.5) == 'L');
    CHECK(assumed(2.0) == 'L');
    CHECK(assumed(3.0) == 'K');
    CHECK(assumed(5.0) == 'J');
    CHECK(assumed(7.5) == 'H');
    CHECK(assumed(10.0) == 'H');
    CHECK(locked_rotor(three(15.0, 230.0), {}).refusal().field == "code");
    CHECK(locked_power_working(single(3.0, 230.0), {})->note.find("Assumed") != std::string::npos);
    CHECK(locked_power_working(single(3.0, 230.0), 'K')->note.find("Assumed") == std::string::npos);
}

TEST_CASE("conductor, breaker and standstill: motor-conductor, motor-breaker, motor-locked") {
    const Motor motor = single(3.0, 230.0);
    const auto card = [](const base::Result<Working>& w) { return std::string(w->card->id); };
    CHECK(card(conductor_working(motor)) == "motor-conductor");
    CHECK(card(breaker_working(motor)) == "motor-breaker");
    CHECK(card(locked_power_working(motor, 'K')) == "motor-locked-power");
    CHECK(card(locked_current_working(motor, 'K')) == "motor-locked-current");
    // 1.25 x 17 and 2.5 x 17
    CHECK(std::get<Current>(conductor_working(motor)->result.value) == quantity::amperes(21.25));
    CHECK(std::get<Current>(breaker_working(motor)->result.value) == quantity::amperes(42.5));
    CHECK(conductor_working(single(30.0, 230.0)).refusal().field == "power");
    CHECK(breaker_working(single(3.0, 100.0)).refusal().field == "voltage");
    CHECK(locked_current_working(single(3.0, 230.0), 'Q').refusal().field == "code");
}
