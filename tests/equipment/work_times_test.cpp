// What a shop may enter as its own times: core/equipment/work_times.cpp.

#include "equipment/work_times.h"

#include <doctest/doctest.h>

#include <limits>

using namespace treadle;
using namespace treadle::equipment;
using quantity::minutes;
using quantity::pounds;
using quantity::seconds;

namespace {

template <class Change>
std::string fault(Change change) {
    WorkTimes times;
    times.handling = {{pounds(10.0), seconds(10.0)}, {pounds(50.0), seconds(25.0)}};
    change(times);
    const auto found = times_fault(times);
    return found ? found->field : "none";
}

} // namespace

TEST_CASE("a shop that knows none of its times is sound") {
    CHECK_FALSE(times_fault(WorkTimes{}).has_value());
}

TEST_CASE("a time lies between nothing and a day") {
    CHECK(fault([](WorkTimes& t) { t.new_station = Duration{}; }) == "none");
    CHECK(fault([](WorkTimes& t) { t.new_station = minutes(24.0 * 60.0); }) == "none");
    CHECK(fault([](WorkTimes& t) { t.new_station = minutes(24.0 * 60.0 + 1.0); }) ==
          "new_station_s");
    CHECK(fault([](WorkTimes& t) { t.new_tool = seconds(-1.0); }) == "new_tool_s");
    CHECK(fault([](WorkTimes& t) { t.stroke = seconds(-1.0); }) == "stroke_s");
    CHECK(fault([](WorkTimes& t) {
              t.position = seconds(std::numeric_limits<double>::quiet_NaN());
          }) == "position_s");
    CHECK(fault([](WorkTimes& t) {
              t.first_piece = seconds(std::numeric_limits<double>::infinity());
          }) == "first_piece_s");
}

TEST_CASE("weights of the handling bands rise") {
    CHECK(fault([](WorkTimes&) {}) == "none");
    CHECK(fault([](WorkTimes& t) { t.handling[0].up_to = Mass{}; }) == "handling[0].up_to");
    CHECK(fault([](WorkTimes& t) { t.handling[1].up_to = pounds(10.0); }) == "handling[1].up_to");
    CHECK(fault([](WorkTimes& t) { t.handling[1].up_to = quantity::kilograms(10001.0); }) ==
          "handling[1].up_to");
    CHECK(fault([](WorkTimes& t) { t.handling[1].each = seconds(-1.0); }) == "handling[1].each_s");
}

TEST_CASE("an hour of labour costs something") {
    CHECK(fault([](WorkTimes& t) { t.labour_per_hour = 0.0; }) == "labour_per_hour");
    CHECK(fault([](WorkTimes& t) { t.labour_per_hour = 0.01; }) == "none");
    CHECK(fault([](WorkTimes& t) { t.labour_per_hour = 2e6; }) == "labour_per_hour");
}
