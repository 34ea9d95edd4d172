// shelf.cpp: what the host offers, and where its names may lead.

#include "archive/shelf.h"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>

using namespace treadle;
using archive::Shelf;
using archive::ShelfKind;

namespace {

std::string shelf_of(const std::string& entries) {
    return R"({"format":"treadle-shelf","version":1,"entries":[)" + entries + "]}";
}

std::string entry(const std::string& file) {
    return R"({"kind":"job","title":"A job","file":")" + file + "\"}";
}

Shelf read(const std::string& bytes) {
    auto made = archive::read_shelf(bytes);
    REQUIRE_MESSAGE(made.ok(), (made.ok() ? "" : made.refusal().reason));
    return std::move(made).value();
}

void check_refused(const std::string& bytes, const char* field) {
    const auto made = archive::read_shelf(bytes);
    REQUIRE_FALSE(made.ok());
    CHECK(made.refusal().field == field);
}

} // namespace

TEST_CASE("a shelf names jobs, shops and lessons") {
    const Shelf shelf = read(shelf_of(
        R"({"kind":"lesson","title":"First","note":"An angle","file":"lessons/first.json"},)"
        R"({"kind":"shop","title":"Shop","file":"shop-2_a.v1.json"},)" +
        entry("a/b/c.json")));
    CHECK(shelf.refused.empty());
    REQUIRE(shelf.entries.size() == 3);
    CHECK(shelf.entries[0].kind == ShelfKind::lesson);
    CHECK(shelf.entries[0].title == "First");
    CHECK(shelf.entries[0].note == "An angle");
    CHECK(shelf.entries[0].file == "lessons/first.json");
    CHECK(shelf.entries[1].kind == ShelfKind::shop);
    CHECK(std::string(archive::shelf_kind_word(shelf.entries[2].kind)) == "job");
    // The example that the schema is judged with.
    std::ifstream example(TREADLE_SOURCE_DIR "/tests/schema/examples/shelf.json");
    const Shelf published = read({std::istreambuf_iterator<char>(example), {}});
    CHECK(published.entries.size() == 3);
    CHECK(published.refused.empty());
}

TEST_CASE("no name leads anywhere but beside the page, and the good ones stay") {
    for (const char* file : {"/etc/passwd.json",
                             "../up.json",
                             "a/../b.json",
                             "./a.json",
                             "a/./b.json",
                             "a//b.json",
                             "a/",
                             "/",
                             "..",
                             "..json/../x.json",
                             "a\\\\b.json",
                             "http://host/a.json",
                             "//host/a.json",
                             "javascript:a.json",
                             "data:a.json",
                             "a%2e%2e/b.json",
                             "a b.json",
                             "a?b.json",
                             "a#b.json",
                             "a.html",
                             ".json",
                             "a.json.",
                             "a.JSON",
                             "\u00E4.json",
                             "a\\u0000.json",
                             "a\\n.json",
                             "",
                             "a.json/",
                             "C:a.json",
                             "~/a.json"}) {
        CAPTURE(file);
        const Shelf shelf = read(shelf_of(entry(file) + "," + entry("good.json")));
        CHECK(shelf.entries.size() == 1);
        REQUIRE(shelf.refused.size() == 1);
        CHECK(shelf.refused[0].field == "entries[0].file");
        CHECK_FALSE(shelf.refused[0].reason.empty());
    }
    CHECK(read(shelf_of(entry(std::string(195, 'a') + ".json"))).entries.size() == 1);
    CHECK(read(shelf_of(entry(std::string(196, 'a') + ".json"))).entries.empty());
    CHECK(read(shelf_of(entry("..a/b...json"))).entries.size() == 1); // dots alone are no danger
}

TEST_CASE("a bad entry is told with its place") {
    const Shelf shelf =
        read(shelf_of(entry("a.json") + "," + entry("a.json") +
                      R"(,{"kind":"tool","title":"x","file":"b.json"})"
                      R"(,{"kind":"job","file":"c.json"})"
                      R"(,{"kind":"job","title":" ","file":"d.json"})"
                      R"(,{"kind":"job","title":"x","file":"e.json","href":"x"},7)"));
    CHECK(shelf.entries.size() == 1);
    REQUIRE(shelf.refused.size() == 6);
    CHECK(shelf.refused[0].field == "entries[1].file");
    CHECK(shelf.refused[1].field == "entries[2].kind");
    CHECK(shelf.refused[2].field == "entries[3].title");
    CHECK(shelf.refused[3].field == "entries[4].title");
    CHECK(shelf.refused[4].field == "entries[5].href");
    CHECK(shelf.refused[5].field == "entries[6]");
}

TEST_CASE("what is no shelf is refused as a whole") {
    check_refused("", "file");
    check_refused("[]", "file");
    check_refused(R"({"format":"treadle-job","version":1,"entries":[]})", "format");
    check_refused(R"({"format":"treadle-shelf","version":2,"entries":[]})", "version");
    check_refused(R"({"format":"treadle-shelf","version":1})", "entries");
    check_refused(R"({"format":"treadle-shelf","version":1,"entries":{}})", "entries");
    check_refused(R"({"format":"treadle-shelf","version":1,"entries":[],"more":1})", "more");
    check_refused(R"({"format":"treadle-shelf","version":1,"entries":[],"entries":[]})", "entries");
    std::string many;
    for (int i = 0; i < 201; ++i)
        many += (i == 0 ? "" : ",") + entry("f" + std::to_string(i) + ".json");
    check_refused(shelf_of(many), "entries");
    check_refused(std::string(archive::k_largest_shelf + 1, ' '), "file");
}
