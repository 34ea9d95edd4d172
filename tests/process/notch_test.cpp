#include "process/cards.h"
#include "process/notch.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace treadle;
using geometry::NotchPlace;
using geometry::NotchShape;

namespace {

process::NotchCut edge() {
    return {{NotchShape::rectangle, NotchPlace::edge, inches(2.0), inches(1.5), {}},
            inches(0.25),
            ksi(50.0)};
}

} // namespace

TEST_CASE("notching refuses by field") {
    auto cut = edge();
    cut.notch.width = {};
    CHECK(process::notch_force(cut).refusal().field == "width");
    cut = edge();
    cut.notch.depth = millimetres(std::nan(""));
    CHECK(process::notch_force(cut).refusal().field == "depth");
    cut = edge();
    cut.thickness = {};
    CHECK(process::notch_force(cut).refusal().field == "thickness");
    CHECK_FALSE(process::notch_force_working(cut).ok());
    cut = edge();
    cut.notch.shape = NotchShape::vee;
    cut.notch.included = degrees(180.0);
    CHECK(process::notch_force(cut).refusal().field == "angle");
}

TEST_CASE("an edge notch never needs less than the same notch at a corner") {
    auto corner = edge();
    corner.notch.place = NotchPlace::corner;
    CHECK(*process::notch_force(edge()) > *process::notch_force(corner));
    CHECK(process::notch_force_working(edge())->card == &process::k_notch_force_card);
}

TEST_CASE("bites cover the notch, and no more of them than needed") {
    const Length tool = millimetres(32.0);
    const Length overlap = millimetres(6.0);
    for (int tenths = 10; tenths < 5000; tenths += 7) {
        const Length along = millimetres(tenths / 10.0);
        const auto bites = process::notch_bites(along, tool, overlap);
        REQUIRE(bites.ok());
        CHECK(tool + (*bites - 1.0) * (tool - overlap) >= along * (1.0 - 1e-9));
        if (*bites > 1)
            CHECK(tool + (*bites - 2.0) * (tool - overlap) < along);
    }
    CHECK(*process::notch_bites(tool, tool, {}) == 1);
}

TEST_CASE("an overlap of more than half the tool is refused") {
    CHECK(process::notch_bites(inches(6.0), inches(2.0), inches(1.0)).ok());
    CHECK(process::notch_bites(inches(6.0), inches(2.0), inches(1.01)).refusal().field ==
          "overlap");
    CHECK(process::notch_bites(inches(6.0), inches(2.0), inches(-0.1)).refusal().field ==
          "overlap");
    CHECK(process::notch_bites(inches(600.0), inches(0.1), {}).refusal().field == "tool");
    CHECK(process::notch_bites({}, inches(2.0), {}).refusal().field == "along");
}
