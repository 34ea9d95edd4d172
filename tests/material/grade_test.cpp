#include "material/grade.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace treadle;
using namespace treadle::material;

namespace {

Grade plain_grade() {
    Grade grade;
    grade.id = "X-50";
    grade.name = "X Gr 50";
    grade.bands = {{millimetres(16), megapascals(235), megapascals(360), megapascals(510)},
                   {millimetres(40), megapascals(225), megapascals(360), megapascals(510)}};
    grade.shear_ratio = 0.8;
    grade.elongation_pct = 26;
    grade.density = quantity::kilograms_per_cubic_metre(7850);
    grade.modulus = megapascals(200000);
    grade.air_bend_share = 0.16;
    return grade;
}

std::string fault_of(const Grade& grade) {
    const base::Result<Grade> result = checked(grade);
    return result ? std::string("none") : result.refusal().field;
}

} // namespace

TEST_CASE("a band reaches up to its limit and not past it") {
    const Grade grade = plain_grade();
    CHECK(band_for(grade, millimetres(16)).value().yield_minimum == megapascals(235));
    CHECK(band_for(grade, millimetres(16.001)).value().yield_minimum == megapascals(225));
    CHECK(band_for(grade, millimetres(40)).ok());
}

TEST_CASE("a thickness above the last band is refused, never guessed") {
    const Grade grade = plain_grade();
    const auto band = band_for(grade, millimetres(40.001));
    REQUIRE_FALSE(band.ok());
    CHECK(band.refusal().field == "thickness");
    CHECK(band.refusal().detail == "known up to 40 mm");
    CHECK_FALSE(upper_tensile(grade, millimetres(41)).ok());
    CHECK_FALSE(minimum_tensile(grade, millimetres(41)).ok());
}

TEST_CASE("a thickness that is none is refused") {
    const Grade grade = plain_grade();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinity = std::numeric_limits<double>::infinity();
    for (const double bad : {0.0, -1.0, nan, infinity}) {
        CAPTURE(bad);
        const auto band = band_for(grade, millimetres(bad));
        REQUIRE_FALSE(band.ok());
        CHECK(band.refusal().field == "thickness");
    }
}

TEST_CASE("a grade without strengths refuses with its own reason") {
    Grade grade = plain_grade();
    grade.bands.clear();
    grade.refusal = {true, true, "It shatters."};
    const auto upper = upper_tensile(grade, millimetres(5));
    REQUIRE_FALSE(upper.ok());
    CHECK(upper.refusal().field == "grade");
    CHECK(upper.refusal().reason == "It shatters.");
    grade.refusal = {};
    CHECK_FALSE(upper_tensile(grade, millimetres(5)).ok());
}

TEST_CASE("upper and least strength are not mixed up") {
    const Grade grade = plain_grade();
    CHECK(upper_tensile(grade, millimetres(10)).value().value == megapascals(510));
    CHECK(minimum_tensile(grade, millimetres(10)).value().value == megapascals(360));
}

// 0.8 x 58, 65 and 80 ksi: worked by hand.
TEST_CASE("worked: shear strength is tensile strength times the ratio") {
    const Grade grade = plain_grade();
    CHECK(std::abs(quantity::to_ksi(shear_strength(grade, ksi(58))) - 46.4) < 1e-9);
    CHECK(std::abs(quantity::to_ksi(shear_strength(grade, ksi(65))) - 52.0) < 1e-9);
    CHECK(std::abs(quantity::to_ksi(shear_strength(grade, ksi(80))) - 64.0) < 1e-9);
}

TEST_CASE("a grade is found without regard to case, spaces and dashes, id before name") {
    GradeTable table;
    table.rows = {plain_grade(), plain_grade()};
    table.rows[0].id = "other";
    table.rows[0].name = "X-50";
    CHECK(table.find("x50") == &table.rows[1]);
    CHECK(table.find("X 50") == &table.rows[1]);
    CHECK(table.find("x gr 50") == &table.rows[1]);
    CHECK(table.find("OTHER") == &table.rows[0]);
    CHECK(table.find("x-5") == nullptr);
    CHECK(table.find("") == nullptr);
    CHECK(table.find(" - ") == nullptr);
}

TEST_CASE("a sound grade passes, and each fault names its field") {
    CHECK(fault_of(plain_grade()) == "none");
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto with = [](auto change) {
        Grade grade = plain_grade();
        change(grade);
        return fault_of(grade);
    };
    CHECK(with([](Grade& g) { g.id = " "; }) == "id");
    CHECK(with([](Grade& g) { g.name.clear(); }) == "name");
    CHECK(with([](Grade& g) { g.bands.clear(); }) == "bands");
    CHECK(with([](Grade& g) { g.shear_ratio = 0.49; }) == "shear_ratio");
    CHECK(with([](Grade& g) { g.shear_ratio = 1.01; }) == "shear_ratio");
    CHECK(with([&](Grade& g) { g.shear_ratio = nan; }) == "shear_ratio");
    CHECK(with([](Grade& g) { g.elongation_pct = -1; }) == "elongation_pct");
    CHECK(with([](Grade& g) { g.density = {}; }) == "density");
    CHECK(with([&](Grade& g) { g.modulus = megapascals(nan); }) == "modulus");
    CHECK(with([](Grade& g) { g.air_bend_share = 0.26; }) == "air_bend_share");
    CHECK(with([](Grade& g) { g.refusal.cutting = true; }) == "refusal.reason");
    CHECK(with([](Grade& g) { g.bands[1].up_to = g.bands[0].up_to; }) == "bands[1].up_to");
    CHECK(with([&](Grade& g) { g.bands[0].up_to = millimetres(nan); }) == "bands[0].up_to");
    CHECK(with([](Grade& g) { g.bands[0].yield_minimum = {}; }) == "bands[0].yield_minimum");
    CHECK(with([](Grade& g) { g.bands[0].tensile_minimum = megapascals(200); }) ==
          "bands[0].tensile_minimum");
    CHECK(with([](Grade& g) { g.bands[1].tensile_upper = megapascals(359); }) ==
          "bands[1].tensile_upper");
}

TEST_CASE("only a grade refused for everything may leave its strengths out") {
    Grade grade = plain_grade();
    grade.bands.clear();
    grade.refusal = {true, false, "It shatters."};
    CHECK(fault_of(grade) == "bands");
    grade.refusal.bending = true;
    CHECK(fault_of(grade) == "none");
}
