#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

using namespace treadle;
using test::ask;
using test::figure;

namespace {

calc::Input::Object lift(std::initializer_list<calc::Input::Member> more) {
    calc::Input::Object in{
        {"horizontal", "12 in"}, {"vertical", "40 in"}, {"travel", "20 in"}, {"frequency", "1"}};
    in.insert(in.end(), more);
    return in;
}

double limit(std::initializer_list<calc::Input::Member> more) {
    return figure(ask("lift.limit", lift(more)), "limit");
}

} // namespace

TEST_CASE("lift.limit takes the worst of what is not said") {
    CHECK(limit({}) == limit({{"duration", "long"}, {"coupling", "poor"}, {"asymmetry", "0"}}));
    CHECK(limit({}) < limit({{"duration", "moderate"}}));
    CHECK(limit({}) < limit({{"coupling", "fair"}}));
}

TEST_CASE("lift.limit reads the frequency where the lift began") {
    CHECK(limit({{"origin_vertical", "40 in"}}) == limit({}));
    // 9 lifts a minute all day: nothing from below 30 in
    calc::Input::Object often = lift({{"origin_vertical", "29 in"}});
    often[3].second = calc::Input("9");
    CHECK(figure(ask("lift.limit", often), "limit") == 0.0);
    often.back().second = calc::Input("30 in");
    CHECK(figure(ask("lift.limit", often), "limit") > 0.0);
}

TEST_CASE("lift.reach and lift.team answer in base units") {
    // 8 + 12/2 = 14 in; 2/3 of 2 x 30 kg
    CHECK(figure(ask("lift.reach", {{"depth", "12 in"}, {"vertical", "30 in"}}), "horizontal") ==
          doctest::Approx(355.6));
    CHECK(figure(ask("lift.team", {{"limit", "30 kg"}, {"people", "2"}}), "together") ==
          doctest::Approx(40.0));
}
