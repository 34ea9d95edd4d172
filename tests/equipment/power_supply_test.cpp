// What a shop may enter about its power: core/equipment/power_supply.cpp.

#include "equipment/power_supply.h"

#include <doctest/doctest.h>

using namespace treadle;
using namespace treadle::equipment;

namespace {

template <class Change>
std::string fault(Change change) {
    PowerSupply supply;
    change(supply);
    const auto found = supply_fault(supply);
    return found ? found->field : "none";
}

} // namespace

TEST_CASE("power that is not known is sound, power out of range is not") {
    CHECK(fault([](PowerSupply&) {}) == "none");
    CHECK(fault([](PowerSupply& s) { s.motor = quantity::horsepower(0.0); }) == "motor");
    CHECK(fault([](PowerSupply& s) { s.motor = quantity::horsepower(3.0); }) == "none");
    CHECK(fault([](PowerSupply& s) { s.voltage = quantity::volts(1000.0); }) == "none");
    CHECK(fault([](PowerSupply& s) { s.voltage = quantity::volts(1001.0); }) == "voltage");
    CHECK(fault([](PowerSupply& s) { s.phases = 2; }) == "phases");
    CHECK(fault([](PowerSupply& s) { s.phases = 3; }) == "none");
    CHECK(fault([](PowerSupply& s) { s.code = "K"; }) == "none");
    CHECK(fault([](PowerSupply& s) { s.code = "k"; }) == "code");
    CHECK(fault([](PowerSupply& s) { s.code = "KL"; }) == "code");
    CHECK(fault([](PowerSupply& s) { s.cord_length = Length{}; }) == "cord_length");
    CHECK(fault([](PowerSupply& s) { s.generator = ApparentPower{}; }) == "generator_VA");
}
