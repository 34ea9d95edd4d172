#include "calc/calculation.h"
#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using calc::Input;
using test::ask;
using test::field_of;
using test::figure;

TEST_CASE("punch.force answers in base units whatever the input's") {
    const auto inch = ask("punch.force",
                          {{"shape", "round"},
                           {"size", "1-1/8 in"},
                           {"thickness", "1/2 in"},
                           {"shear_strength", "50 ksi"}});
    // pi x 1.125 x 0.5 x 50 / 2 = 44.18 US ton
    CHECK(figure(inch, "force") / 8.896443 == doctest::Approx(44.18).epsilon(0.0002));
    const auto metric = ask("punch.force",
                            {{"shape", "round"},
                             {"size", "28.575 mm"},
                             {"thickness", "12.7 mm"},
                             {"shear_strength", "344.7379 MPa"}});
    CHECK(figure(metric, "force") == doctest::Approx(figure(inch, "force")).epsilon(1e-6));
}

TEST_CASE("a material counts with its strongest metal, and says so") {
    // A36: 80 ksi x 0.8 = 64 ksi against the 50 ksi of the case above: 44.18 x 64 / 50 = 56.55.
    const auto answer = ask(
        "punch.force",
        {{"shape", "round"}, {"size", "1-1/8 in"}, {"thickness", "1/2 in"}, {"material", "a36"}});
    CHECK(figure(answer, "force") / 8.896443 == doctest::Approx(56.55).epsilon(0.0002));
    REQUIRE(answer.ok());
    CHECK(answer->workings.front().note.find("Strongest A36") != std::string::npos);
}

TEST_CASE("unknown calculations and inputs that are no object") {
    CHECK(field_of(ask("punch.everything", {})) == "calc");
    CHECK(field_of(ask("punch.die", {{"", "1 in"}})) == "in"); // a field nobody could read
    const auto tables = test::tables();
    CHECK(calc::run("punch.die", Input("1 in"), tables.view()).refusal().field == "in");
}

TEST_CASE("an answer never depends on the ones before it") {
    const auto first = ask("bend.blank", test::good_input("bend.blank"));
    (void)ask("bend.blank", {});
    (void)ask("punch.force", test::good_input("punch.force"));
    const auto again = ask("bend.blank", test::good_input("bend.blank"));
    CHECK(figure(first, "blank") == figure(again, "blank"));
}
