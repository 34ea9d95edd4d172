#include "lesson/figure.h"
#include "lesson/lessons.h"
#include "lesson/units.h"

using namespace treadle;
using namespace treadle::lesson;

namespace {

std::optional<MixedUnits> typed(const AnyQuantity& answer, const char* text) {
    const auto read = read_like(answer, text);
    REQUIRE(read.ok());
    return mixed_units(answer, base_value(*read), base_value(answer) * 0.01, text);
}

} // namespace

TEST_CASE("the right number in another unit is told, with both units") {
    const auto kn = typed(us_tons(40.0), "40 kN");
    REQUIRE(kn.has_value());
    CHECK(kn->meant == "US tons");
    CHECK(kn->written == "kilonewtons");
    const auto tons = typed(kilonewtons(350.0), "350 ton");
    REQUIRE(tons.has_value());
    CHECK(tons->meant == "kilonewtons");
    CHECK(typed(inches(2.0), "2 mm")->meant == "inches");
    CHECK(typed(millimetres(12.0), "12 in")->meant == "millimetres");
    CHECK(typed(ksi(64.0), "64 MPa")->meant == "ksi");
    CHECK(typed(quantity::pounds(30.0), "30 kg")->meant == "pounds");
    CHECK(typed(us_tons(40.0), "80000 kN")->meant == "pounds");
}

TEST_CASE("another number is no mix-up, and kinds without units have none") {
    CHECK_FALSE(typed(us_tons(40.0), "37 kN").has_value());
    CHECK_FALSE(typed(degrees(45.0), "40 deg").has_value());
    CHECK_FALSE(typed(quantity::Number{3.0, 0}, "4").has_value());
}
