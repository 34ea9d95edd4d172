// Errors of a leg put together: the cards "leg-worst" and "leg-rss".

#include "process/leg_error.h"

#include <doctest/doctest.h>

using namespace treadle;
using process::LegErrors;

namespace {

double worst_mm(const LegErrors& leg) {
    return quantity::to_millimetres(
        std::get<Length>(process::leg_worst_working(leg)->result.value));
}
double rss_mm(const LegErrors& leg) {
    return quantity::to_millimetres(std::get<Length>(process::leg_rss_working(leg)->result.value));
}

} // namespace

TEST_CASE("leg-worst adds up, leg-rss squares, and an offset counts whole in both") {
    // 3-4-5 and 2-3-6-7, worked by hand.
    CHECK(worst_mm({{}, {millimetres(0.3), millimetres(0.4)}}) == doctest::Approx(0.7));
    CHECK(rss_mm({{}, {millimetres(0.3), millimetres(0.4)}}) == doctest::Approx(0.5));
    const LegErrors more{millimetres(0.1), {millimetres(0.2), millimetres(0.3), millimetres(0.6)}};
    CHECK(worst_mm(more) == doctest::Approx(1.2));
    CHECK(rss_mm(more) == doctest::Approx(0.8));
    const LegErrors less{-millimetres(0.1), more.errors};
    CHECK(worst_mm(less) == doctest::Approx(1.2));
}

TEST_CASE("the worst case is never under the root sum of squares") {
    for (int i = 0; i < 50; ++i) {
        const LegErrors leg{millimetres(0.01 * i),
                            {millimetres(0.02 * (i % 7)), millimetres(0.5), millimetres(0.1 * i)}};
        CHECK(worst_mm(leg) >= rss_mm(leg));
    }
}

TEST_CASE("nothing to put together and errors below zero are refused") {
    CHECK(process::leg_worst_working({}).refusal().field == "errors");
    CHECK(process::leg_rss_working({{}, {-millimetres(0.1)}}).refusal().field == "errors");
    CHECK(process::leg_worst_working({quantity::metres(200.0), {Length{}}}).refusal().field ==
          "offset");
}
