// Which inputs go together in the calculations of printed rules:
// bar_calculations.cpp, bend_room_calculations.cpp, bend_rule_calculations.cpp,
// cut_rule_calculations.cpp, die_calculations.cpp, notch_calculations.cpp,
// punch_rule_calculations.cpp, punch_tool_calculations.cpp, shop_rule_calculations.cpp,
// springback_calculations.cpp, trial_calculations.cpp.

#include "calc/common_inputs.h"
#include "calc/tables_for_tests.h"
#include "process/punch_rules.h"
#include "process/springback.h"

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <vector>

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

/// The choices of a word input, as they are listed.
std::vector<std::string> choices(const char* calculation, const char* input) {
    std::vector<std::string> words(1);
    for (const calc::Calculation* one : calc::all()) {
        if (std::string_view(one->name) != calculation)
            continue;
        for (const calc::InputSpec& spec : one->inputs)
            if (std::string_view(spec.name) == input)
                for (const char* c = spec.choices; *c != '\0'; ++c) {
                    if (*c == '|')
                        words.emplace_back();
                    else
                        words.back() += *c;
                }
    }
    return words;
}

const Input::Object k_hole{
    {"shape", "round"}, {"size", "20 mm"}, {"thickness", "10 mm"}, {"shear_strength", "400 MPa"}};

} // namespace

TEST_CASE("words of metals stand in the order of their tables") {
    for (const char* calculation : {"punch.penetration", "punch.work"}) {
        const auto words = choices(calculation, "metal");
        REQUIRE(words.size() == process::penetration_count());
        for (std::size_t i = 0; i < words.size(); ++i)
            CHECK(words[i] == process::penetration_row(i).metal);
    }
    const auto words = choices("bend.springback", "metal");
    REQUIRE(words.size() == process::springback_metal_count());
    for (std::size_t i = 0; i < words.size(); ++i)
        CHECK(words[i] == process::springback_metal(i));
}

TEST_CASE("shapes are in the order of the holes they name") {
    const auto words = choices("punch.edge", "shape");
    REQUIRE(words.size() == 6);
    for (std::size_t i = 0; i < words.size(); ++i)
        CHECK(words[i] == geometry::hole_shape_word(static_cast<geometry::HoleShape>(i)));
}

TEST_CASE("a ground punch without a rule is counted by the careful one") {
    const auto in = with(k_hole, "shear_depth", "20 mm");
    CHECK(figure(ask("punch.shear_ground", in), "force") ==
          figure(ask("punch.shear_ground", with(in, "rule", "careful")), "force"));
    // Nothing said of the metal: the deepest penetration, the least credit.
    CHECK(figure(ask("punch.shear_ground", with(in, "rule", "energy")), "force") >
          figure(ask("punch.shear_ground", with(with(in, "rule", "energy"), "penetration", "0.3")),
                 "force"));
}

TEST_CASE("rules that know no strength refuse one") {
    CHECK(field_of(ask("punch.stripping", with(k_hole, "rule", "constant"))) == "shear_strength");
    CHECK(field_of(ask("punch.work", with(with(k_hole, "metal", "lead"), "penetration", "0.5"))) ==
          "penetration");
}

TEST_CASE("a die's rule takes what it goes by, and nothing else") {
    const Input::Object die{{"size", "20 mm"}, {"thickness", "5 mm"}};
    CHECK(field_of(ask("punch.die", with(die, "temper", "hard"))) == "temper");
    CHECK(field_of(ask("punch.die", with(die, "shear_strength", "300 MPa"))) == "shear_strength");
    CHECK(field_of(ask("punch.die", with(die, "rule", "groover"))) == "temper");
    CHECK(field_of(ask("punch.die", with(die, "rule", "formula"))) == "material");
    CHECK(field_of(ask(
              "punch.die",
              with(with(with(die, "rule", "handbook"), "temper", "soft"), "material", "A36"))) ==
          "material");
    CHECK(field_of(ask("punch.die",
                       {{"size", "0.5 mm"}, {"thickness", "5 mm"}, {"wanted", "slug"}})) == "size");
    CHECK(field_of(ask("punch.die", with(die, "material", "wear-plate"))) == "material");
}

TEST_CASE("the size goes with the punch for a hole and with the die for a slug") {
    const Input::Object die{{"size", "1 in"}, {"thickness", "1/2 in"}};
    const auto hole = ask("punch.die", die);
    CHECK(figure(hole, "punch_size") == doctest::Approx(25.4));
    CHECK(figure(hole, "die_size") == doctest::Approx(26.9875));
    const auto slug = ask("punch.die", with(die, "wanted", "slug"));
    CHECK(figure(slug, "die_size") == doctest::Approx(25.4));
    CHECK(figure(slug, "punch_size") == doctest::Approx(23.8125));
}

TEST_CASE("bolts and holes: each rule by its own input") {
    CHECK(field_of(ask("punch.bolt_hole", {{"hole", "22 mm"}})) == "bolt");
    CHECK(field_of(ask("punch.bolt_hole", {{"bolt", "M20"}, {"rule", "en1090"}})) == "hole");
    CHECK(field_of(ask("punch.from_heel", {{"thickness", "6 mm"}, {"die_radius", "20 mm"}})) ==
          "fillet");
    CHECK(field_of(
              ask("punch.from_heel",
                  {{"thickness", "6 mm"}, {"fillet", "12 mm"}, {"clearance_radius", "15 mm"}})) ==
          "fillet");
}

TEST_CASE("shears: a rating refuses hard stock, a tube and an angle name their sizes") {
    const Input::Object pair{
        {"thickness", "1/2 in"}, {"width", "8 in"}, {"rated_strength", "65 ksi"}};
    CHECK(field_of(ask("shear.rating", with(pair, "material", "wear-plate"))) == "material");
    // A36 up to 80 ksi: 65 / 80 of the thickness.
    CHECK(figure(ask("shear.rating", with(pair, "material", "A36")), "thickness") ==
          doctest::Approx(12.7 * 65.0 / 80.0));
    CHECK(field_of(ask("shear.tube", {{"outside", "50 mm"}, {"wall", "2 mm"}})) == "material");
    const Input::Object angle{{"leg_a", "50 mm"},
                              {"leg_b", "50 mm"},
                              {"thickness", "5 mm"},
                              {"shear_strength", "300 MPa"}};
    CHECK(field_of(ask("shear.angle", with(angle, "mitre", "60"))) == "mitre");
}

TEST_CASE("a V is told by its depth or by the leg it folds") {
    CHECK(field_of(ask("notch.vee", {{"angle", "90"}})) == "depth");
    CHECK(field_of(ask("notch.vee", {{"leg", "50 mm"}})) == "thickness");
    CHECK(field_of(ask("notch.vee", {{"depth", "5 mm"}, {"thickness", "5 mm"}})) == "thickness");
    CHECK(field_of(ask("notch.vee",
                       {{"leg", "50 mm"}, {"thickness", "5 mm"}, {"depth", "45 mm"}})) == "depth");
}

TEST_CASE("bars: a flat has a thickness, a rod's grade goes by its diameter") {
    const Input::Object rod{{"shape", "round"}, {"size", "20 mm"}, {"span", "200 mm"}};
    CHECK(field_of(ask("bend.bar_force",
                       with(with(rod, "thickness", "5 mm"), "tensile_strength", "500 MPa"))) ==
          "thickness");
    CHECK(field_of(ask("bend.bar_force", with(rod, "material", "thin-only"))) == "size");
    CHECK(ask("bend.bar_force", with(rod, "material", "A36")).ok());
}

TEST_CASE("one of two inputs is asked for by name") {
    CHECK(field_of(ask("bend.radius_from_ductility", {{"thickness", "5 mm"}})) == "elongation");
    CHECK(field_of(ask("bend.hard_way", {{"width", "50 mm"}})) == "strain");
    CHECK(field_of(ask("bend.hard_way",
                       {{"width", "50 mm"}, {"radius", "300 mm"}, {"strain", "5 %"}})) == "strain");
    const Input::Object wanted{{"thickness", "5 mm"}, {"radius", "6 mm"}};
    CHECK(field_of(ask("bend.opening_for_radius", wanted)) == "material");
    CHECK(field_of(ask("bend.opening_for_radius", with(wanted, "material", "thin-only"))) ==
          "material");
    CHECK(figure(ask("bend.opening_for_radius", with(wanted, "material", "A36")), "opening") ==
          doctest::Approx(6.0 / 0.16));
}

TEST_CASE("springback: a material or its strengths, a formula or a row") {
    const Input::Object bend{{"thickness", "5 mm"}, {"radius", "20 mm"}, {"angle", "90"}};
    CHECK(field_of(ask("bend.springback", bend)) == "yield_strength");
    CHECK(field_of(ask("bend.springback", with(bend, "metal", "DC04"))) == "metal");
    CHECK(field_of(ask("bend.springback", with(bend, "method", "factor"))) == "metal");
    CHECK(field_of(ask("bend.springback",
                       with(with(bend, "material", "A36"), "modulus", "200 GPa"))) == "modulus");
    CHECK(field_of(ask("bend.springback", with(bend, "material", "wear-plate"))) == "material");
    const auto grade = ask("bend.springback", with(bend, "material", "A36"));
    REQUIRE(grade.ok());
    CHECK(grade->workings.front().note.find("Least yield strength of A36") == 0);
}

TEST_CASE("trials: legs in pairs, strips as many as pairs or one for all") {
    const Input::Object bend{{"thickness", "4 mm"}, {"radius", "6 mm"}, {"angle", "90"}};
    const Input::List pair{"104.1 mm", "104.2 mm"};
    CHECK(field_of(ask("bend.k_from_trial", bend)) == "blank");
    CHECK(field_of(ask("bend.k_from_trial",
                       with(with(bend, "blank", "200 mm"), "legs", Input::List{"104 mm"}))) ==
          "legs");
    const Input::List two_strips{"200 mm", "200 mm"};
    CHECK(field_of(ask("bend.k_from_trial", with(with(bend, "blank", two_strips), "legs", pair))) ==
          "blank");
    CHECK(field_of(ask("bend.k_from_trial",
                       with(with(bend, "blank", "200 mm"), "legs", Input::List{pair, "104 mm"}))) ==
          "legs");
    // One after the other or pair by pair: the same trials.
    const Input::List flat{"104.1 mm", "104.2 mm", "104.1 mm", "104.3 mm"};
    const Input::List pairs{pair, Input::List{"104.1 mm", "104.3 mm"}};
    CHECK(
        figure(ask("bend.k_from_trial", with(with(bend, "blank", "200 mm"), "legs", flat)), "k") ==
        figure(ask("bend.k_from_trial", with(with(bend, "blank", two_strips), "legs", pairs)),
               "k"));
    const Input::List deductions{"8.3 mm", "8.4 mm"};
    CHECK(figure(ask("bend.k_from_trial", with(bend, "deduction", deductions)), "deduction") ==
          doctest::Approx(8.35));
}

TEST_CASE("rings: a diameter to one face, sizes by the shape") {
    const Input::Object flat{
        {"shape", "flat"}, {"thickness", "5 mm"}, {"way", "easy"}, {"inside", "200 mm"}};
    CHECK(ask("bar.ring", flat).ok());
    CHECK(field_of(ask("bar.ring", with(flat, "outside", "210 mm"))) == "outside");
    CHECK(field_of(ask("bar.ring", {{"shape", "round"}, {"size", "10 mm"}})) == "outside");
    CHECK(field_of(ask("bar.ring", {{"shape", "round"}, {"inside", "100 mm"}})) == "size");
    CHECK(field_of(ask(
              "bar.ring",
              {{"shape", "flat"}, {"thickness", "5 mm"}, {"way", "hard"}, {"inside", "200 mm"}})) ==
          "size");
    CHECK(field_of(ask("bar.ring", {{"shape", "profile"}, {"inside", "900 mm"}})) == "centroid");
    // The hard way is longer: its middle lies farther out.
    CHECK(figure(ask("bar.ring",
                     {{"shape", "flat"},
                      {"size", "50 mm"},
                      {"thickness", "5 mm"},
                      {"way", "hard"},
                      {"inside", "200 mm"}}),
                 "blank") > figure(ask("bar.ring", flat), "blank"));
}

TEST_CASE("tolerances are coarse unless a class is named") {
    CHECK(figure(ask("tolerance.length", {{"size", "100 mm"}}), "tolerance") == 0.8);
    CHECK(figure(ask("tolerance.angle", {{"leg", "100 mm"}}), "tolerance") == 0.5);
}

TEST_CASE("a hole near a bend has a distance to the bend line with an opening only") {
    const Input::Object hole{{"thickness", "4 mm"}, {"radius", "6 mm"}, {"hole", "10 mm"}};
    CHECK(std::isnan(figure(ask("bend.hole_distance", hole), "from_bend_line")));
    CHECK(figure(ask("bend.hole_distance", with(hole, "opening", "32 mm")), "from_bend_line") ==
          16.0);
}
