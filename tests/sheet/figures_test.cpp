#include "sheet/figures.h"

#include <doctest/doctest.h>

using namespace treadle;
using sheet::setting_text;
using sheet::stock_text;

namespace {

constexpr PrintStyle k_sixteenths{UnitSystem::inch, 16};
constexpr PrintStyle k_metric{UnitSystem::metric, 16};

} // namespace

TEST_CASE("a place that the job gives in a finer fraction is not rounded") {
    CHECK(setting_text(inches(1.5), k_sixteenths) == "1-1/2");
    CHECK(setting_text(inches(1.0 + 1.0 / 32.0), k_sixteenths) == "1-1/32");
    CHECK(setting_text(inches(1.0 + 1.0 / 64.0), k_sixteenths) == "1-1/64");
    CHECK(setting_text(Length{}, k_sixteenths) == "0");
}

TEST_CASE("a computed place is given to the nearest thirty-second or finer") {
    CHECK(setting_text(inches(3.2214), k_sixteenths) == "3-7/32");
    CHECK(setting_text(inches(3.2214), {UnitSystem::inch, 64}) == "3-7/32");
    CHECK(setting_text(inches(3.2071), {UnitSystem::inch, 64}) == "3-13/64");
    CHECK(setting_text(millimetres(81.83), k_metric) == "81.8");
}

TEST_CASE("stock is called what it measures") {
    CHECK(stock_text(inches(0.25), k_sixteenths) == "1/4");
    CHECK(stock_text(inches(0.140), k_sixteenths) == "0.140");
    CHECK(stock_text(inches(1.660), k_sixteenths) == "1.660");
    CHECK(stock_text(millimetres(33.7), k_metric) == "33.7");
}
