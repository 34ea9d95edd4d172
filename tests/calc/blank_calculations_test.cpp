#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

using namespace treadle;
using test::ask;
using test::figure;

TEST_CASE("method words choose the rule") {
    // Straight stock at 90 degrees, t = r = 0.125 in: 0.55, 0.64, 0.71 t + 1.5708 r.
    const auto allowance = [](const char* method) {
        return figure(ask("bend.allowance",
                          {{"thickness", "0.125 in"},
                           {"radius", "0.125 in"},
                           {"angle", "90"},
                           {"method", method}}),
                      "allowance") /
               25.4;
    };
    CHECK(allowance("handbook-soft") == doctest::Approx(0.2651).epsilon(0.0005));
    CHECK(allowance("handbook-medium") == doctest::Approx(0.2763).epsilon(0.0005));
    CHECK(allowance("handbook-hard") == doctest::Approx(0.2851).epsilon(0.0005));
    // DIN 6935 at r = s: K 0.325; 1.5708 x 1.325 x 0.125.
    CHECK(allowance("din6935") == doctest::Approx(0.2602).epsilon(0.0005));
}

TEST_CASE("a U is its legs less what its bends take off") {
    // DIN 6935, r 6, s 4: v = 8.257 mm; 200 - 2 x 8.257.
    CHECK(figure(ask("bend.blank", test::good_input("bend.blank")), "blank") ==
          doctest::Approx(183.487).epsilon(1e-5));
}

TEST_CASE("allowance, deduction and setback answer with the same four figures") {
    // t = r = 6 mm, 45 degrees, K 0.42: 0.7854 x 8.52; 12 tan 22.5; twice that less the first.
    for (const char* name : {"bend.allowance", "bend.deduction", "bend.setback"}) {
        const auto answer = ask(name, test::good_input(name));
        CHECK(figure(answer, "allowance") == doctest::Approx(6.6916).epsilon(1e-5));
        CHECK(figure(answer, "setback") == doctest::Approx(4.9706).epsilon(1e-5));
        CHECK(figure(answer, "deduction") == doctest::Approx(3.2495).epsilon(5e-5));
        CHECK(figure(answer, "k") == 0.42);
    }
}

TEST_CASE("bend lines lie in the middle of their bends, from the starting end") {
    // U 50, 100, 50, s 4, r 6: v 8.257; 50 - v / 2 and 150 - 1.5 v.
    const auto answer =
        ask("bend.blank",
            {{"thickness", "4 mm"},
             {"legs", calc::Input::List{"50 mm", "100 mm", "50 mm"}},
             {"bends",
              calc::Input::List{calc::Input::Object{{"angle", "90"}, {"radius", "6 mm"}},
                                calc::Input::Object{{"angle", "90"}, {"radius", "6 mm"}}}}});
    REQUIRE(answer.ok());
    REQUIRE(answer->figures.size() == 2);
    REQUIRE(answer->figures[1].list.has_value());
    const std::vector<Length>& lines = *answer->figures[1].list;
    REQUIRE(lines.size() == 2);
    CHECK(quantity::to_millimetres(lines[0]) == doctest::Approx(45.872).epsilon(1e-5));
    CHECK(quantity::to_millimetres(lines[1]) == doctest::Approx(137.615).epsilon(1e-5));
}
