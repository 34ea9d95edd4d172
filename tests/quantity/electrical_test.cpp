#include "quantity/electrical.h"
#include "quantity/parse.h"
#include "quantity/print.h"

#include <doctest/doctest.h>

using namespace treadle;
using namespace treadle::quantity;

TEST_CASE("a horsepower is 550 foot-pounds a second") {
    // 550 x 4.4482216152605 x 0.3048 = 745.69987 W, NIST SP 811
    CHECK(to_kilowatts(horsepower(1.0)) == doctest::Approx(0.74569987).epsilon(1e-8));
    CHECK(to_horsepower(horsepower(7.5)) == doctest::Approx(7.5));
}

TEST_CASE("volts, amperes and ohms go together") {
    CHECK(to_kilovolt_amperes(volts(230.0) * amperes(17.0)) == doctest::Approx(3.91));
    CHECK(to_amperes(kilovolt_amperes(2.3) / volts(230.0)) == doctest::Approx(10.0));
    const Resistance r = metres(250.0) * ohms_per_kilometre(4.0);
    CHECK(to_ohms(r) == doctest::Approx(1.0));
    CHECK(to_volts(amperes(3.0) * r) == doctest::Approx(3.0));
    CHECK(to_ohms(volts(6.0) / amperes(3.0)) == doctest::Approx(2.0));
    CHECK(to_millimetres(r / ohms_per_kilometre(4.0)) == doctest::Approx(250'000.0));
    CHECK(to_ohms_per_kilometre(ohms_per_thousand_feet(1.0)) == doctest::Approx(1.0 / 0.3048));
    CHECK(to_ohms_per_thousand_feet(ohms_per_kilometre(1.0)) == doctest::Approx(0.3048));
}

TEST_CASE("electrical quantities are read with their unit and never without") {
    CHECK(parse_voltage("230 V", "v").value() == volts(230.0));
    CHECK(parse_voltage("0.48 kV", "v").value() == volts(480.0));
    CHECK(parse_current("17A", "i").value() == amperes(17.0));
    CHECK(parse_current("9.8 amps", "i").value() == amperes(9.8));
    CHECK(parse_power("1-1/2 hp", "p").value() == horsepower(1.5));
    CHECK(parse_power("1.5 kW", "p").value() == watts(1500.0));
    CHECK(parse_power("900 W", "p").value() == watts(900.0));
    CHECK(parse_voltage("230", "v").refusal().field == "v");
    CHECK(parse_voltage("230 A", "v").refusal().field == "v");
    CHECK(parse_current("17", "i").refusal().field == "i");
    CHECK(parse_current("17 V", "i").refusal().field == "i");
    CHECK(parse_power("3", "p").refusal().field == "p");
    CHECK(parse_power("3 kVA", "p").refusal().field == "p");
    CHECK(parse_power("", "p").refusal().field == "p");
    CHECK(parse_voltage("1e308 kV", "v").refusal().field == "v");
}

TEST_CASE("electrical quantities in a working") {
    const PrintStyle inch{UnitSystem::inch, 16};
    const PrintStyle metric{UnitSystem::metric, 16};
    CHECK(print_working(volts(6.732), inch) == "6.73 V");
    CHECK(print_working(amperes(117.26), metric) == "117.26 A");
    CHECK(print_working(kilovolt_amperes(26.97), inch) == "26.97 kVA");
    CHECK(print_working(horsepower(3.0), inch) == "3.00 hp");
    CHECK(print_working(watts(1500.0), metric) == "1.50 kW");
    CHECK(print_working(metres(50.0) * ohms_per_kilometre(2.0), inch) == "0.1000 ohm");
    CHECK(print_working(ohms_per_thousand_feet(1.98), inch) == "1.980 ohm/1000 ft");
    CHECK(print_working(ohms_per_kilometre(4.95), metric) == "4.950 ohm/km");
}
