// Covers text_room.cpp.

#include "sheet/text_room.h"

#include <doctest/doctest.h>

using namespace treadle;
using sheet::em_count;
using sheet::letters_of;
using sheet::parting;
using sheet::shortened;

namespace {

const std::string k_umlauts = "\u00c4\u00c4\u00c4\u00c4\u00c4"; // two bytes each
const std::string k_joined = "\u0634\u0628\u0643\u0629\u0634";
const std::string k_accent = "abe\u0301def"; // an accent that stands on the e

} // namespace

TEST_CASE("letters are counted, not bytes") {
    CHECK(letters_of("") == 0);
    CHECK(letters_of("HB1") == 3);
    CHECK(letters_of(k_umlauts) == 5);
    CHECK(letters_of("\u9244\u5de5") == 2);
}

TEST_CASE("a word is parted behind whole letters that stand alone") {
    CHECK(parting("ABCDEF", 4) == 4);
    CHECK(parting("ABCD", 4) == 0); // nothing comes behind
    CHECK(parting("", 4) == 0);
    CHECK(parting(k_umlauts, 3) == 6);
    CHECK(parting(k_joined, 3) == 0);
    CHECK(parting(k_accent, 3) == 0); // not between a letter and its accent
    CHECK(parting(k_accent, 2) == 2);
}

// Widths of Helvetica Bold, from memory of Adobe's metrics: W 0.944, M 0.833, A 0.722, O 0.778,
// a 0.556, b 0.611, m 0.889, w 0.778, i 0.278, 0 0.556, % 0.889, @ 0.975, - 0.333.
TEST_CASE("no text is wider than it is taken for") {
    struct Row {
        const char* text;
        double ems;
    };
    for (const Row& row : {Row{"W", 0.944},
                           Row{"M", 0.833},
                           Row{"A", 0.722},
                           Row{"O", 0.778},
                           Row{"a", 0.556},
                           Row{"b", 0.611},
                           Row{"m", 0.889},
                           Row{"w", 0.778},
                           Row{"i", 0.278},
                           Row{"0", 0.556},
                           Row{"%", 0.889},
                           Row{"@", 0.975},
                           Row{"-", 0.333},
                           Row{"\u9244", 1.0}}) {
        CAPTURE(std::string(row.text));
        CHECK(em_count(row.text) >= row.ems);
    }
    CHECK(em_count("Wa") == doctest::Approx(em_count("W") + em_count("a")));
}

TEST_CASE("a text that could be too wide ends with an ellipsis and fits") {
    CHECK(shortened("HB1", 10.0) == "HB1");
    CHECK(shortened("", 0.0) == "");
    const std::string cut = shortened(std::string(60, 'W'), 10.0);
    CHECK(cut == "WWWWWWWWW\u2026");
    CHECK(em_count(cut) <= 10.0);
    CHECK(shortened(k_umlauts, 3.0) == "\u00c4\u00c4\u2026"); // never half a letter
    CHECK(shortened("HB1", 0.0) == "\u2026");
}
