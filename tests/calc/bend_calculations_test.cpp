#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

using namespace treadle;
using test::ask;
using test::figure;

TEST_CASE("grain and angle words reach the table") {
    // A36, 1/2 in: 1.5 t across, x 1.5 along or unknown (ASTM A6 X4).
    const auto radius = [](const char* grain) {
        return figure(ask("bend.least_radius",
                          {{"thickness", "1/2 in"}, {"material", "A36"}, {"grain", grain}}),
                      "radius") /
               25.4;
    };
    CHECK(radius("across") == doctest::Approx(0.75));
    CHECK(radius("along") == doctest::Approx(1.125));
    CHECK(radius("unknown") == doctest::Approx(1.125));
}

TEST_CASE("the careful factor is the default, the textbook's is asked for") {
    // 12 x 1/4 in, V 2 in, 60 ksi: 1.5 x 11.25 and 1.33 x 11.25 US ton.
    calc::Input::Object in = test::good_input("bend.force");
    CHECK(figure(ask("bend.force", in), "force") / 8.896443 == doctest::Approx(14.9625));
    in.resize(4); // without method and k
    CHECK(figure(ask("bend.force", in), "force") / 8.896443 == doctest::Approx(16.875));
}

TEST_CASE("opening, radius and leg for 1/4 in of a strong mild steel") {
    // A36 may reach 80 ksi: 10 t; 16 % of 2 in; 0.75 V.
    CHECK(figure(ask("bend.opening", test::good_input("bend.opening")), "opening") ==
          doctest::Approx(63.5));
    CHECK(figure(ask("bend.radius", test::good_input("bend.radius")), "radius") ==
          doctest::Approx(0.32 * 25.4));
    CHECK(figure(ask("bend.least_leg", test::good_input("bend.least_leg")), "leg") ==
          doctest::Approx(1.5 * 25.4));
}
