#include "process/shop_rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using process::ToleranceClass;

namespace {

std::string field(const base::Result<Working>& working) {
    return working.ok() ? "" : working.refusal().field;
}

} // namespace

TEST_CASE("a guard farther away may be opened wider, never narrower") {
    Length last;
    for (double x = 0.5; x <= 31.5; x += 0.25) {
        const auto working = process::guard_opening_working(inches(x));
        REQUIRE(working.ok());
        const Length opening = *std::get_if<Length>(&working->result.value);
        CHECK(opening >= last);
        CHECK(opening < inches(x));
        last = opening;
    }
    CHECK(field(process::guard_opening_working(inches(0.49))) == "distance");
    CHECK(field(process::guard_opening_working(inches(31.6))) == "distance");
}

TEST_CASE("the coarse class is never the tighter one, for lengths and for angles") {
    for (const double n : {0.5, 3.0, 3.1, 29.0, 130.0, 999.0, 4000.0}) {
        const auto medium =
            process::tolerance_length_working(millimetres(n), ToleranceClass::medium);
        const auto coarse =
            process::tolerance_length_working(millimetres(n), ToleranceClass::coarse);
        REQUIRE(medium.ok());
        REQUIRE(coarse.ok());
        CHECK(*std::get_if<Length>(&coarse->result.value) >
              *std::get_if<Length>(&medium->result.value));
        const auto fine = process::tolerance_angle_working(millimetres(n), ToleranceClass::medium);
        const auto rough = process::tolerance_angle_working(millimetres(n), ToleranceClass::coarse);
        CHECK(*std::get_if<Angle>(&rough->result.value) > *std::get_if<Angle>(&fine->result.value));
    }
    CHECK(field(process::tolerance_length_working({}, ToleranceClass::medium)) == "size");
    CHECK(field(process::tolerance_angle_working({}, ToleranceClass::medium)) == "leg");
}
