// Cards, kept states and counted days that came from elsewhere or were damaged: job_card.cpp.

#include "archive/job_card.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive::JobCard;

namespace {

JobCard some_card() {
    JobCard card;
    card.name = "Walkway, \"north\" end";
    card.edited = "26 Nov, 10:41";
    card.parts = 12;
    card.since_copy = 3;
    card.invented = true;
    card.is_damaged = true;
    card.trash = 7;
    return card;
}

} // namespace

TEST_CASE("a card comes back as it was written") {
    CHECK(archive::read_card(archive::write_card(some_card())).value() == some_card());
    CHECK(archive::read_card(archive::write_card({})).value() == JobCard{});
}

TEST_CASE("a name with line ends stays on one line, and a long one is cut between two letters") {
    JobCard card;
    card.name = "one\ntwo\r\nthree";
    CHECK(archive::read_card(archive::write_card(card))->name == "one two  three");
    card.name.clear();
    for (int i = 0; i < 3000; ++i)
        card.name += "\xC3\xA9"; // two bytes each
    const auto back = archive::read_card(archive::write_card(card));
    REQUIRE(back.ok());
    CHECK(back->name.size() == 4000);
    card.name.insert(0, "x");
    const auto odd = archive::read_card(archive::write_card(card));
    REQUIRE(odd.ok());
    CHECK(odd->name.size() == 3999);
}

TEST_CASE("a card from elsewhere is refused with its field") {
    const auto field_of = [](const std::string& bytes) {
        const auto card = archive::read_card(bytes);
        return card.ok() ? "read" : card.refusal().field;
    };
    const std::string good = archive::write_card(some_card());
    REQUIRE(field_of(good) == "read");
    CHECK(field_of("") == "format");
    CHECK(field_of("treadle-job 1\n") == "format");
    CHECK(field_of("treadle-card 2\nname x\n") == "version");
    CHECK(field_of(good + "unknown 1\n") == "card");
    CHECK(field_of(good + "parts -1\n") == "card");
    CHECK(field_of(good + "parts 99999999999\n") == "card");
    CHECK(field_of(good + "parts\n") == "card");
    CHECK(field_of(good + std::string("name \0x\n", 8)) == "card");
    CHECK(field_of(good + "name " + std::string(20'000, 'x')) == "card");
}

TEST_CASE("a kept state comes back with its job untouched") {
    const std::string file = "{\n \"any\": \"bytes\" }\n";
    for (const bool is_pinned : {false, true}) {
        const std::string bytes =
            archive::write_point({"Before a\nshop file", "26 Nov", is_pinned}, file);
        const auto back = archive::read_point(bytes);
        REQUIRE(back.ok());
        CHECK(back->point.why == "Before a shop file");
        CHECK(back->point.when == "26 Nov");
        CHECK(back->point.is_pinned == is_pinned);
        CHECK(back->file == file);
    }
    CHECK(archive::read_point("").refusal().field == "format");
    CHECK(archive::read_point("treadle-point 2\na\nb\n\nx").refusal().field == "version");
    CHECK(archive::read_point("treadle-point 1\na\nb\npinnd\nx").refusal().field == "point");
    CHECK(archive::read_point("treadle-point 1\na\nb\n\n").refusal().field == "point");
}

TEST_CASE("days that cannot be read are none") {
    const archive::SeenDays days{17, "26 Nov"};
    CHECK(archive::read_days(archive::write_days(days)).count == 17);
    CHECK(archive::read_days(archive::write_days(days)).last == "26 Nov");
    for (const char* bad : {"", "17", "x 26 Nov", "-3 26 Nov", "99999999999 26 Nov"})
        CHECK(archive::read_days(bad).count == 0);
}
