#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

using namespace treadle;
using test::ask;
using test::field_of;
using test::figure;

TEST_CASE("force, stripping and work of a rectangle") {
    // 2 (1 + 2) x 0.25 x 50 / 2 = 37.5 US ton = 333.617 kN; 20 % of it; x 6.35 mm x 0.4.
    const auto answer = ask("punch.force", test::good_input("punch.force"));
    CHECK(figure(answer, "force") == doctest::Approx(333.6166).epsilon(1e-6));
    CHECK(figure(answer, "stripping") == doctest::Approx(66.7233).epsilon(1e-6));
    CHECK(figure(answer, "work") == doctest::Approx(847.386).epsilon(1e-5));
}

TEST_CASE("the punch's stress limit is the cautious one unless given") {
    // 4 x 64 x 0.5 / 180 = 0.7111 in and, with 240 ksi, 0.5333 in.
    calc::Input::Object in{{"thickness", "1/2 in"}, {"material", "A36"}};
    CHECK(figure(ask("punch.smallest", in), "size") / 25.4 ==
          doctest::Approx(0.71111).epsilon(1e-5));
    in.emplace_back("punch_strength", "240 ksi");
    CHECK(figure(ask("punch.smallest", in), "size") / 25.4 ==
          doctest::Approx(0.53333).epsilon(1e-5));
}

TEST_CASE("the largest hole counts with the strongest metal") {
    // 50 x 2 / (pi x 0.25 x 64) = 1.98944 in
    CHECK(figure(ask("punch.largest", test::good_input("punch.largest")), "size") / 25.4 ==
          doctest::Approx(1.98944).epsilon(1e-5));
}

TEST_CASE("the die of a 13/16 punch in 3/8 in is 27/32") {
    // Common practice, no source.
    const auto answer = ask("punch.die", test::good_input("punch.die"));
    CHECK(figure(answer, "die_size") / 25.4 == doctest::Approx(27.0 / 32.0));
    CHECK(figure(answer, "clearance_total") / 25.4 == doctest::Approx(1.0 / 32.0));
    CHECK(figure(answer, "clearance_per_side") / 25.4 == doctest::Approx(1.0 / 64.0));
    CHECK(field_of(ask("punch.die", {{"size", "1 in"}, {"thickness", "2 in"}})) == "thickness");
}
