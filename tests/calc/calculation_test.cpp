#include "calc/calculation.h"
#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace treadle;
using calc::Input;
using calc::InputKind;
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

TEST_CASE("each calculation gives the figures it lists, and every figure its working") {
    std::set<std::string> names;
    for (const calc::Calculation* calculation : calc::all()) {
        CAPTURE(calculation->name);
        CHECK(names.insert(calculation->name).second);
        const auto answer = ask(calculation->name, test::good_input(calculation->name));
        REQUIRE(answer.ok());
        REQUIRE(answer->figures.size() == calculation->outputs.size());
        for (std::size_t i = 0; i < answer->figures.size(); ++i)
            CHECK(answer->figures[i].name == calculation->outputs[i].name);
        CHECK_FALSE(answer->workings.empty());
        for (const Working& working : answer->workings) {
            bool listed = false;
            for (const base::FormulaCard* card : calculation->cards)
                listed = listed || card == working.card;
            CHECK(listed);
        }
    }
    CHECK(names.size() == 18);
}

TEST_CASE("every input refuses nonsense by its own name") {
    int tried = 0;
    for (const calc::Calculation* calculation : calc::all()) {
        for (const auto& [name, value] : test::good_input(calculation->name)) {
            if (value.text() == nullptr)
                continue;
            for (const char* bad : {"",
                                    "nan",
                                    "inf",
                                    "1e999 mm",
                                    "-1 mm",
                                    "-5",
                                    "ten",
                                    "0x10 mm",
                                    "12 apples",
                                    "10 km"}) {
                Input::Object in = test::good_input(calculation->name);
                for (auto& member : in)
                    if (member.first == name)
                        member.second = Input(bad);
                CAPTURE(calculation->name);
                CAPTURE(name);
                CAPTURE(bad);
                CHECK(field_of(ask(calculation->name, in)) == name);
                ++tried;
            }
        }
    }
    CHECK(tried > 400);
}

TEST_CASE("every required input is missed by its own name, and unknown ones are refused") {
    for (const calc::Calculation* calculation : calc::all()) {
        CAPTURE(calculation->name);
        const Input::Object good = test::good_input(calculation->name);
        for (const calc::InputSpec& spec : calculation->inputs) {
            if (!spec.required)
                continue;
            Input::Object in;
            for (const auto& member : good)
                if (member.first != spec.name)
                    in.push_back(member);
            CHECK(field_of(ask(calculation->name, in)) == spec.name);
        }
        Input::Object more = good;
        more.emplace_back("colour", "red");
        CHECK(field_of(ask(calculation->name, more)) == "colour");
        Input::Object twice = good;
        twice.push_back(good.front());
        CHECK(field_of(ask(calculation->name, twice)) == good.front().first);
    }
}

TEST_CASE("a length, force or stress without its unit is refused") {
    int tried = 0;
    for (const calc::Calculation* calculation : calc::all()) {
        for (const calc::InputSpec& spec : calculation->inputs) {
            if (spec.kind != InputKind::length && spec.kind != InputKind::force &&
                spec.kind != InputKind::stress)
                continue;
            Input::Object in = test::good_input(calculation->name);
            for (auto& member : in) {
                if (member.first != spec.name)
                    continue;
                member.second = Input("12");
                CAPTURE(calculation->name);
                CHECK(field_of(ask(calculation->name, in)) == spec.name);
                ++tried;
            }
        }
    }
    CHECK(tried > 30);
}

TEST_CASE("unknown calculations and inputs that are no object") {
    CHECK(field_of(ask("punch.everything", {})) == "calc");
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
