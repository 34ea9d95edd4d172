#include <doctest/doctest.h>

#include "layout/gauge.h"

using namespace treadle;
using layout::GaugeMetal;

TEST_CASE("a larger gauge number is thinner metal, in each metal") {
    for (const GaugeMetal metal : {GaugeMetal::steel,
                                   GaugeMetal::galvanised,
                                   GaugeMetal::stainless,
                                   GaugeMetal::aluminium}) {
        const int first = metal == GaugeMetal::galvanised ? 8 : 3;
        for (int gauge = first + 1; gauge <= 28; ++gauge) {
            CAPTURE(gauge);
            CHECK(*layout::gauge_thickness(gauge, metal) <
                  *layout::gauge_thickness(gauge - 1, metal));
        }
        CHECK(layout::gauge_thickness(first - 1, metal).refusal().field == "gauge");
        CHECK(layout::gauge_thickness(29, metal).refusal().field == "gauge");
    }
}

TEST_CASE("tube walls are those of the table") {
    CHECK(layout::gauge_thickness(7, GaugeMetal::tube).ok());
    for (const int missing : {0, 8, 9, 15, 17, 19, 21})
        CHECK(layout::gauge_thickness(missing, GaugeMetal::tube).refusal().field == "gauge");
}

TEST_CASE("the working shows what the thickness is made of") {
    const auto working = layout::gauge_working(16, GaugeMetal::steel);
    REQUIRE(working.ok());
    CHECK(working->values.size() == 2);
    CHECK(working->note.find("decimal thickness") != std::string::npos);
    CHECK(layout::gauge_working(16, GaugeMetal::aluminium)->values.size() == 1);
}
