#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

using namespace treadle;
using test::ask;
using test::figure;

TEST_CASE("flat, bar and angle") {
    // 4 x 1/2, rake 3, p 0.38: w' = 3.6254 in, 50 (3.6254 x 0.5 - 3.6254^2 x 0.052408 / 2) / 2
    CHECK(figure(ask("shear.flat", test::good_input("shear.flat")), "force") / 8.896443 ==
          doctest::Approx(36.71).epsilon(0.001));
    CHECK(figure(ask("shear.bar", test::good_input("shear.bar")), "force") / 8.896443 ==
          doctest::Approx(30.0));
    // 0.25 x (3 + 2 - 0.25) x 64 / 2 = 38.0
    CHECK(figure(ask("shear.angle", test::good_input("shear.angle")), "force") / 8.896443 ==
          doctest::Approx(38.0));
}

TEST_CASE("a notch counts as cut from the edge unless a corner is named") {
    // 2 wide, 1.5 deep, 1/4 in, 50 ksi: L 5 and 3.5 in.
    calc::Input::Object in{{"shape", "rectangle"},
                           {"width", "2 in"},
                           {"depth", "1.5 in"},
                           {"thickness", "1/4 in"},
                           {"shear_strength", "50 ksi"}};
    CHECK(figure(ask("notch.force", in), "force") / 8.896443 == doctest::Approx(31.25));
    in.emplace_back("place", "corner");
    CHECK(figure(ask("notch.force", in), "force") / 8.896443 == doctest::Approx(21.875));
    // 90 degree V, 1 in deep: L 2.8284
    CHECK(figure(ask("notch.force", test::good_input("notch.force")), "force") / 8.896443 ==
          doctest::Approx(17.678).epsilon(1e-4));
}
