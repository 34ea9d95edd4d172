#include "ui/views/find_text.h"

#include <doctest/doctest.h>

using treadle::UnitSystem;
using treadle::views::find_fold;
using treadle::views::find_query;
using treadle::views::find_rank;
using treadle::views::find_text;

namespace {

int rank(const char* typed, const char* line, UnitSystem system = UnitSystem::inch) {
    return find_rank(find_query(typed, system), find_text(line, system));
}
bool finds(const char* typed, const char* line, UnitSystem system = UnitSystem::inch) {
    return rank(typed, line, system) > 0;
}

} // namespace

TEST_CASE("case and accents do not count") {
    CHECK(find_fold("\xC3\x89tage GR\xC3\x96SSE \xC5\x81\xC3\xB3"
                    "d\xC5\xBA") == "etage grosse lodz");
    CHECK(find_fold("gro\xC3\x9F") == "gross");
    CHECK(find_fold("e\xCC\x81t\xC3\xA9") == "ete");
    CHECK(finds("bp2", "BP2 Plate"));
    CHECK(finds("Etrier", "\xC3\xA9trier"));
}

TEST_CASE("a size is found however it is written") {
    const char* line = "Punch 13/16 round";
    for (const char* typed : {"13/16",
                              "13/16\"",
                              "13/16\xE2\x80\xB3",
                              "0.8125",
                              ".8125",
                              "13/16 in",
                              "20.6375 mm",
                              "20.64mm",
                              "0.8125 inch",
                              "20,64 mm"}) {
        CAPTURE(typed);
        CHECK(finds(typed, line));
    }
    for (const char* typed : {"13/32", "0.8", "21 mm", "1-13/16", "15/16"}) {
        CAPTURE(typed);
        CHECK_FALSE(finds(typed, line));
    }
    for (const char* typed : {"1-1/8", "1 1/8", "1\xE2\x85\x9B", "1.125", "1 1/8\"", "28.575 mm"}) {
        CAPTURE(typed);
        CHECK(finds(typed, "Punch 1-1/8 round"));
    }
}

TEST_CASE("inches find a size in millimetres, and the other way round") {
    CHECK(finds("13/16", "Punch 20.6 round", UnitSystem::metric));
    CHECK(finds("20.6", "Punch 20.6 round", UnitSystem::metric));
    CHECK(finds("22 mm", "Punch 22 round", UnitSystem::metric));
    CHECK(finds("12.7", "Plate 1/2 \xC3\x97 8 \xC3\x97 10"));
    CHECK_FALSE(finds("22 in", "Punch 22 round", UnitSystem::metric));
}

TEST_CASE("all words must be there, in any order, the beginning of each is enough") {
    CHECK(finds("round pun", "Punch 13/16 round"));
    CHECK_FALSE(finds("round notch", "Punch 13/16 round"));
    CHECK(finds("8 plate", "Plate 1/2 \xC3\x97 8 \xC3\x97 10"));
    CHECK_FALSE(finds("9 plate", "Plate 1/2 \xC3\x97 8 \xC3\x97 10"));
}

TEST_CASE("nothing typed finds nothing") {
    CHECK(rank("", "Punch") == 0);
    CHECK(rank("  , -", "Punch") == 0);
    CHECK(rank("\"", "Punch") == 0);
    CHECK(rank("\xFF\xFE", "Punch") == 0);
}

TEST_CASE("the closer match stands first") {
    CHECK(rank("BP2", "BP2 Plate") > rank("BP2", "BP20 Plate"));
    CHECK(rank("punch", "Punch 13/16") > rank("punch", "Force of a punch"));
    CHECK(rank("plate", "Plate") > rank("plate", "Baseplates"));
    CHECK(finds("late", "Baseplates"));
    CHECK(finds("duct", "Bend deduction"));
    CHECK_FALSE(finds("du", "Bend deduction"));
}
