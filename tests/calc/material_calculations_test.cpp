#include "calc/tables_for_tests.h"
#include "material/cards.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using test::ask;
using test::field_of;
using test::figure;

TEST_CASE("material.strength tells the strongest metal from the promised one") {
    const auto answer = ask("material.strength", {{"material", "A36"}, {"thickness", "1/2 in"}});
    CHECK(quantity::to_ksi(megapascals(figure(answer, "tensile_upper"))) == doctest::Approx(80.0));
    CHECK(quantity::to_ksi(megapascals(figure(answer, "tensile_minimum"))) ==
          doctest::Approx(58.0));
    // 0.8 x 80
    CHECK(quantity::to_ksi(megapascals(figure(answer, "shear_strength"))) == doctest::Approx(64.0));
    REQUIRE(answer.ok());
    CHECK(std::string(answer->workings.front().card->id) == "shear-strength");
    CHECK(material::cards().size() == 1);
}

TEST_CASE("material.strength ends where the grade's row ends") {
    CHECK(field_of(ask("material.strength", {{"material", "thin-only"}, {"thickness", "1 in"}})) ==
          "thickness");
    CHECK(field_of(ask("material.strength", {{"material", "tin"}, {"thickness", "1 in"}})) ==
          "material");
}
