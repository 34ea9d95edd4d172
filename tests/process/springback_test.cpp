#include "process/springback.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace treadle;

namespace {

process::SpringBend bend(double t, double r, double angle, double y = 355.0, double e = 210e3) {
    return {millimetres(t), millimetres(r), degrees(angle), megapascals(y), megapascals(e)};
}

double radius_mm(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return quantity::to_millimetres(*std::get_if<Length>(&working->result.value));
}

std::string field(const base::Result<Working>& working) {
    return working.ok() ? "" : working.refusal().field;
}

} // namespace

TEST_CASE("stronger, thinner and wider bends spring back further") {
    CHECK(radius_mm(process::springback_radius_working(bend(3, 30, 90, 500))) <
          radius_mm(process::springback_radius_working(bend(3, 30, 90, 355))));
    CHECK(radius_mm(process::springback_radius_working(bend(2, 30, 90))) <
          radius_mm(process::springback_radius_working(bend(3, 30, 90))));
    // X tells how far: it stays below its limit whatever is asked.
    const auto huge = process::springback_radius_working(bend(1, 90'000, 1));
    REQUIRE(huge.ok());
    CHECK(std::get_if<quantity::Number>(&huge->values.back().value)->value < 0.5);
}

TEST_CASE("a bend that would have to close beyond 180 degrees is refused") {
    CHECK(field(process::springback_angle_working(bend(3, 3000, 90))) == "angle");
    CHECK(process::springback_angle_working(bend(3, 3000, 10)).ok());
    CHECK(field(process::springback_factor_angle_working(bend(1, 100, 170), 0)) == "angle");
}

TEST_CASE("springback refuses sizes and strengths by name") {
    CHECK(field(process::springback_radius_working(bend(0, 3, 90))) == "thickness");
    CHECK(field(process::springback_radius_working(bend(3, 0, 90))) == "radius");
    CHECK(field(process::springback_radius_working(bend(3, 3, 180))) == "angle");
    CHECK(field(process::springback_radius_working(bend(3, 3, 90, 0))) == "yield_strength");
    CHECK(field(process::springback_radius_working(bend(3, 3, 90, 300, 0))) == "modulus");
}

TEST_CASE("between two columns the factor lies between theirs") {
    // DC04: .97 at 10, .96 at 16; 13 is half way.
    const auto between = process::springback_factor_angle_working(bend(1, 13, 90), 0);
    REQUIRE(between.ok());
    CHECK(quantity::to_degrees(*std::get_if<Angle>(&between->result.value)) ==
          doctest::Approx(90.0 / 0.965));
}

TEST_CASE("metals of the factor table stand once each") {
    std::set<std::string> metals;
    for (std::size_t i = 0; i < process::springback_metal_count(); ++i)
        CHECK(metals.insert(process::springback_metal(i)).second);
    CHECK(metals.size() == 8);
}
