#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

#include <cmath>
#include <utility>

using namespace treadle;
using calc::Input;
using test::ask;
using test::field_of;
using test::figure;

namespace {

Input::Object with(Input::Object in, const char* name, Input value) {
    in.emplace_back(name, std::move(value));
    return in;
}

} // namespace

TEST_CASE("section.weight by sizes, and what it can say without a material") {
    // 2 x 1/4 in: 0.5 in2 = 322.58 mm2; x 7850 kg/m3 = 2.5323 kg/m; 10 ft = 3.048 m.
    const Input::Object flat{
        {"section", Input::Object{{"shape", "flat"}, {"width", "2 in"}, {"thickness", "1/4 in"}}}};
    const auto bare = ask("section.weight", flat);
    CHECK(figure(bare, "area") == doctest::Approx(322.58));
    CHECK(std::isnan(figure(bare, "mass")));
    const auto full = ask("section.weight", with(with(flat, "material", "A36"), "length", "10 ft"));
    CHECK(figure(full, "mass_per_length") == doctest::Approx(2.532253));
    CHECK(figure(full, "mass") == doctest::Approx(7.718307));
    CHECK(field_of(ask("section.weight", with(flat, "length", "10 ft"))) == "material");
}

TEST_CASE("a designation is looked up without regard to case") {
    // Sharp outline of L3x3x1/4: 0.25 x 5.75 = 1.4375 in2 = 927.42 mm2.
    const auto angle = ask("section.weight", test::good_input("section.weight"));
    CHECK(figure(angle, "area") == doctest::Approx(927.42).epsilon(1e-5));
}
