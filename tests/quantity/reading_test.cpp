#include "quantity/reading.h"

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace treadle;
using namespace treadle::quantity;

namespace {

// Worked by hand: 1 in = 25.4 mm, 1 US ton = 8.896443 kN, 1 ksi = 6.894757 MPa, 1 lb = 0.45359237
// kg.
struct Said {
    const char* typed;
    const char* words;
};

const std::array<Said, 30> k_inch{{
    {"5' 3 1/2\"", "5'-3 1/2\" = 1612.9 mm"},
    {"5-3-1/2", "5'-3 1/2\" = 1612.9 mm"},
    {"5'3.5\"", "5'-3 1/2\" = 1612.9 mm"},
    {"5 ft 3 1/2 in", "5'-3 1/2\" = 1612.9 mm"},
    {"63 1/2", "5'-3 1/2\" = 1612.9 mm"},
    {"63.5", "5'-3 1/2\" = 1612.9 mm"},
    {"1612.9mm", "5'-3 1/2\" = 1612.9 mm"},
    {"161.29 cm", "5'-3 1/2\" = 1612.9 mm"},
    {"1.6129 m", "5'-3 1/2\" = 1612.9 mm"},
    {"5’ 3½”", "5'-3 1/2\" = 1612.9 mm"},
    {"5′-3½″", "5'-3 1/2\" = 1612.9 mm"},
    {"5' 3½", "5'-3 1/2\" = 1612.9 mm"},
    {"4' 0 1/8\"", "4'-0 1/8\" = 1222.375 mm"},
    {"4'", "4'-0\" = 1219.2 mm"},
    {"4 ft", "4'-0\" = 1219.2 mm"},
    {"3/8", "3/8 in = 9.525 mm"},
    {"0.375", "3/8 in = 9.525 mm"},
    {".375 in", "3/8 in = 9.525 mm"},
    {"⅜", "3/8 in = 9.525 mm"},
    {"1-3/8", "1-3/8 in = 34.925 mm"},
    {"1 3/8", "1-3/8 in = 34.925 mm"},
    {"1⅜\"", "1-3/8 in = 34.925 mm"},
    {"1,5", "1-1/2 in = 38.1 mm"},
    {"12", "1'-0\" = 304.8 mm"},
    {"35 mm", "1.378 in = 35 mm"},
    {"12,5 mm", "0.4921 in = 12.5 mm"},
    {"1/64", "1/64 in = 0.397 mm"},
    {"0", "0 in = 0 mm"},
    {"-1/4", "-1/4 in = -6.35 mm"},
    {"1613mm", "63.5039 in = 1613 mm"},
}};

} // namespace

TEST_CASE("what was typed is said in both systems, whichever way it was spelled") {
    for (const Said& row : k_inch) {
        CAPTURE(std::string(row.typed));
        const Reading reading = reading_of_length(row.typed, UnitSystem::inch);
        CHECK(reading.words == row.words);
        CHECK(reading.trouble.empty());
        CHECK(reading.choices.empty());
    }
    CHECK(reading_of_length("35", UnitSystem::metric).words == "35 mm = 1.378 in");
    CHECK(reading_of_length("25.4", UnitSystem::metric).words == "25.4 mm = 1 in");
}

TEST_CASE("5-3 asks: feet and inches, or a fraction that is not finished") {
    for (const char* text : {"5-3", "5 3", "5 - 3", "5-3\""}) {
        CAPTURE(std::string(text));
        const Reading reading = reading_of_length(text, UnitSystem::inch);
        CHECK(reading.words.empty());
        CHECK_FALSE(reading.trouble.empty());
        REQUIRE(reading.choices.size() == 2);
        CHECK(reading.choices[0].typed == "5' 3\"");
        CHECK(reading.choices[0].words == "5'-3\" = 1600.2 mm");
        CHECK(reading.choices[1].typed == "5-3/");
        CHECK(reading_of_length(reading.choices[1].typed + "16", UnitSystem::inch).words ==
              "5-3/16 in = 131.763 mm");
    }
}

TEST_CASE("a comma that may be thousands asks") {
    const Reading reading = reading_of_length("1,250 mm", UnitSystem::metric);
    REQUIRE(reading.choices.size() == 2);
    CHECK(reading.choices[0].words == "1250 mm = 49.2126 in");
    CHECK(reading.choices[1].words == "1.25 mm = 0.0492 in");
}

TEST_CASE("a bare fraction in a metric shop asks") {
    const Reading reading = reading_of_length("3/8", UnitSystem::metric);
    CHECK(reading.words.empty());
    REQUIRE(reading.choices.size() == 2);
    CHECK(reading.choices[0].typed == "3/8 in");
    CHECK(reading.choices[1].words == "0.375 mm = 0.0148 in");
}

TEST_CASE("what is typed for a choice is read as that choice") {
    for (const char* text : {"5-3", "12 1", "1,250", "1,500 mm"}) {
        for (const UnitSystem system : {UnitSystem::inch, UnitSystem::metric}) {
            for (const Meaning& meaning : reading_of_length(text, system).choices) {
                CAPTURE(meaning.typed);
                if (meaning.typed.back() != '/')
                    CHECK(reading_of_length(meaning.typed, system).words == meaning.words);
            }
        }
    }
}

TEST_CASE("what cannot be read says why and how it is written") {
    for (const char* text : {"", "abc", "1/0", "5 kg", "5' 13\"", "35 mmm", "1-9/8", "5-"}) {
        CAPTURE(std::string(text));
        const Reading reading = reading_of_length(text, UnitSystem::inch);
        CHECK(reading.words.empty());
        CHECK_FALSE(reading.trouble.empty());
        CHECK(reading.choices.empty());
    }
    CHECK_FALSE(reading_of_length("abc", UnitSystem::inch).allowed.empty());
}

TEST_CASE("other quantities are said in their own units") {
    const auto inch = UnitSystem::inch;
    CHECK(reading_of(parse_force("55 ton", inch, ""), inch).words == "55 ton = 489.3 kN");
    CHECK(reading_of(parse_force("100", UnitSystem::metric, ""), UnitSystem::metric).words ==
          "100 kN = 11.24 ton");
    CHECK(reading_of(parse_stress("36", inch, ""), inch).words == "36 ksi = 248.2 MPa");
    CHECK(reading_of(parse_mass("10", inch, ""), inch).words == "10 lb = 4.54 kg");
    CHECK(reading_of(parse_density("7850 kg/m3", ""), inch).words == "0.2836 lb/in3 = 7850 kg/m3");
    CHECK(reading_of(parse_angle("90", ""), inch).words == "90°");
    CHECK(reading_of(parse_ratio("0.42", ""), inch).words == "0.42");
    CHECK_FALSE(reading_of(parse_force("5 mm", inch, ""), inch).trouble.empty());
}

TEST_CASE("every sixty-fourth up to 40 ft is typed back from what is said") {
    int wrong = 0;
    for (int n = 0; n <= 40 * 12 * 64; ++n) {
        const Length length = inches(n / 64.0);
        const std::string said = in_both(length, UnitSystem::inch);
        const auto read =
            parse_length(said.substr(0, said.find(" = ")), UnitSystem::inch, "length");
        const auto fraction =
            parse_length(print(length, {UnitSystem::inch, 64}), UnitSystem::metric, "length");
        const auto feet = parse_length(print_feet(length, {UnitSystem::inch, 64}), {}, "length");
        wrong += !read || *read != length || !fraction || *fraction != length || !feet ||
                 *feet != length;
    }
    CHECK(wrong == 0);
}

TEST_CASE("a step is a sixteenth or half a millimetre and keeps the form") {
    const auto inch = UnitSystem::inch;
    CHECK(step_length("1-3/8", inch, 1) == "1-7/16 in");
    CHECK(step_length("1-3/8", inch, -1) == "1-5/16 in");
    CHECK(step_length("", inch, 1) == "1/16 in");
    CHECK(step_length("5' 3\"", inch, 1) == "5'-3 1/16\"");
    CHECK(step_length("1/16", inch, -1) == "0 in");
    CHECK_FALSE(step_length("0", inch, -1));
    CHECK_FALSE(step_length("5-3", inch, 1));
    CHECK(step_length("35", UnitSystem::metric, 1) == "35.5 mm");
    CHECK(step_length("35", UnitSystem::metric, -2) == "34 mm");
    // 16 x 12 steps and back: nothing creeps.
    std::string text = "0 in";
    for (int i = 0; i < 192; ++i)
        text = step_length(text, inch, 1).value_or("lost");
    CHECK(text == "12 in");
}
