#include "lesson/figure.h"
#include "lesson/lessons.h"

using namespace treadle;
using namespace treadle::lesson;

namespace {

constexpr PrintStyle k_inch{UnitSystem::inch, 16};
constexpr PrintStyle k_metric{UnitSystem::metric, 16};

} // namespace

TEST_CASE("a length has to be typed with its unit, an angle need not") {
    CHECK_FALSE(read_like(inches(1.0), "1").ok());
    REQUIRE(read_like(inches(1.0), "25.4 mm").ok());
    CHECK(base_value(*read_like(inches(1.0), "25.4 mm")) == doctest::Approx(25.4));
    CHECK(base_value(*read_like(degrees(1.0), "45")) == doctest::Approx(45.0));
    CHECK_FALSE(read_like(inches(1.0), "45 ton").ok());
}

TEST_CASE("what is printed of any kind that can be asked reads back") {
    const AnyQuantity k_kinds[] = {inches(1.375),
                                   us_tons(40.84),
                                   ksi(64.0),
                                   quantity::pounds(29.36),
                                   degrees(34.5),
                                   quantity::Number{0.42, 3},
                                   quantity::Share{0.026},
                                   quantity::volts(3.72),
                                   quantity::amperes(12.0),
                                   quantity::horsepower(3.0)};
    for (const AnyQuantity& figure : k_kinds)
        for (const PrintStyle style : {k_inch, k_metric}) {
            const std::string text = figure_text(figure, style);
            CAPTURE(text);
            CHECK(can_be_asked(figure));
            const auto read = read_like(figure, text);
            REQUIRE(read.ok());
            CHECK(base_value(*read) == doctest::Approx(base_value(figure)).epsilon(0.003));
        }
}

TEST_CASE("an energy cannot be asked for") {
    CHECK_FALSE(can_be_asked(quantity::joules(100.0)));
    CHECK_FALSE(read_like(quantity::joules(100.0), "100 J").ok());
}

TEST_CASE("both systems are said where they differ") {
    CHECK(in_both_systems(inches(1.0), k_inch) == "1.0000 in (25.40 mm)");
    CHECK(in_both_systems(inches(1.0), k_metric) == "25.40 mm (1.0000 in)");
    CHECK(in_both_systems(degrees(45.0), k_inch) == "45 deg");
}
