// Openings of brake and blades, worked by hand from the geometry.

#include "process/ram_opening.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;

namespace {

double in(const base::Result<Length>& length) {
    REQUIRE(length.ok());
    return quantity::to_inches(*length);
}

double opening(double t, double leg, double angle, double gap) {
    return in(process::brake_opening({inches(t), inches(leg), degrees(angle), inches(gap)}));
}

} // namespace

TEST_CASE("brake-opening: the standing leg decides, and lies flat at no angle") {
    CHECK(opening(0.25, 2.0, 90.0, 0.125) == doctest::Approx(2.125)); // 2 sin 90 + 1/8
    CHECK(opening(0.25, 2.0, 30.0, 0.125) == doctest::Approx(1.125)); // 2 sin 30 = 1
    CHECK(opening(0.25, 0.5, 30.0, 0.125) == doctest::Approx(0.375)); // 0.5 sin 30 = t
    CHECK(opening(0.25, 0.4, 30.0, 0.125) == doctest::Approx(0.375)); // 0.2 is under t
    CHECK(opening(0.25, 0.0, 90.0, 0.125) == doctest::Approx(0.375)); // along the bend line
}

TEST_CASE("a bend beyond 90 degrees never needs less than one of 90") {
    CHECK(opening(0.25, 2.0, 89.999, 0.125) == doctest::Approx(2.125));
    CHECK(opening(0.25, 2.0, 120.0, 0.125) == doctest::Approx(2.125));
    CHECK(opening(0.25, 2.0, 150.0, 0.125) == doctest::Approx(2.125));
}

TEST_CASE("blade-opening: stock and clearance") {
    CHECK(in(process::blade_opening(inches(0.5), inches(0.25))) == doctest::Approx(0.75));
}

TEST_CASE("openings of nothing are refused at their field, and the working says what was used") {
    const auto field = [](const auto& answer) {
        REQUIRE_FALSE(answer.ok());
        return answer.refusal().field;
    };
    CHECK(field(process::blade_opening(Length{}, inches(0.25))) == "thickness");
    CHECK(field(process::blade_opening(inches(0.5), Length{})) == "clearance");
    CHECK(field(process::brake_opening({inches(0.5), inches(-1.0), degrees(90.0), inches(0.1)})) ==
          "leg");
    CHECK(field(process::brake_opening({inches(0.5), inches(1.0), degrees(180.0), inches(0.1)})) ==
          "angle");
    const auto working =
        process::brake_opening_working({inches(0.25), Length{}, degrees(90.0), inches(0.125)});
    REQUIRE(working.ok());
    CHECK(std::string(working->card->id) == "brake-opening");
    CHECK(working->note == "The piece comes out along the bend line.");
    const auto blades = process::blade_opening_working(inches(0.5), inches(0.25));
    REQUIRE(blades.ok());
    CHECK(std::string(blades->card->id) == "blade-opening");
}
