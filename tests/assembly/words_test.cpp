#include <doctest/doctest.h>

#include <string>

#include "assembly/words.h"

using namespace treadle;

TEST_CASE("a value that only a decimal tells from its bound is said as one") {
    const PrintStyle style{UnitSystem::inch, 16};
    assembly::RuleLine line;
    line.rule = "irc-opening";
    line.words = "opening";
    line.value = inches(3.999);
    line.limit = inches(4);
    line.sphere = true;
    CHECK(assembly::rule_words(line, style) == "opening: 3.999 in, under 4 in");
    line.value = inches(3.75);
    CHECK(assembly::rule_words(line, style) == "opening: 3-3/4 in, under 4 in");
    line.at_most = line.sphere = false;
    line.held = assembly::Held::breaks;
    CHECK(assembly::rule_words(line, style) == "opening: 3-3/4 in, at least 4 in");
    CHECK(assembly::answer_words(line) == "breaks IRC, opening");
    line.rule = "hole-to-post";
    CHECK(assembly::answer_words(line) == "breaks hole to post");
    line.rule = "osha-midrail";
    CHECK(assembly::answer_words(line) == "breaks OSHA, midrail");
    CHECK(assembly::choice_words("osha") == "OSHA 1910.29, workplaces");
    CHECK(assembly::choice_words("notch-and-fold") == "notch and fold");
}

TEST_CASE("figures and templates are in the units of the job") {
    const PrintStyle metric{UnitSystem::metric, 16};
    CHECK(assembly::figure_words({"gap", millimetres(99)}, metric) == "99 mm");
    CHECK(assembly::figure_words({"panels", quantity::Number{4, 0}}, metric) == "4");
    CHECK(assembly::marks_words({"near faces", {millimetres(95), millimetres(209)}}, metric) ==
          "near faces: 95 mm, 209 mm");
    const assembly::WrapTemplate wrap{
        "B1-B", "start", {millimetres(48.3), millimetres(3.2), millimetres(60.3), degrees(45)}};
    const std::string words = assembly::template_words(wrap, metric);
    CHECK(words.find("start of B1-B") != std::string::npos);
    CHECK(words.find("48.3 mm") != std::string::npos);
}
