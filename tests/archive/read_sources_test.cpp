// The list of sources: what is said of each, and what is refused.

#include "archive/archive.h"

#include "assets/embedded.h"

#include <doctest/doctest.h>

using namespace treadle;

TEST_CASE("the program's own list of sources reads, each with a title") {
    const auto sources = archive::read_sources(assets::embedded("sources.json").value_or(""));
    REQUIRE(sources.ok());
    CHECK(sources->size() > 20);
    for (const archive::Source& source : *sources) {
        CAPTURE(source.key);
        CHECK(!source.title.empty());
        CHECK(!source.how_read.empty());
    }
}

TEST_CASE("edition and year are said once") {
    const auto sources = archive::read_sources(
        R"({"a": {"title": "A", "edition": "1975-10", "year": "1975", "how_read": "read"},
            "b": {"title": "B", "edition": "2nd", "year": "2001", "how_read": "read"}})");
    REQUIRE(sources.ok());
    REQUIRE(sources->size() == 2);
    CHECK((*sources).at(0).title == "A, 1975-10");
    CHECK((*sources).at(1).title == "B, 2nd, 2001");
}

TEST_CASE("a source without a title is refused by its key") {
    const auto sources = archive::read_sources(R"({"nameless": {"year": "1999"}})");
    REQUIRE(!sources.ok());
    CHECK(sources.refusal().field == "nameless.title");
    CHECK(!archive::read_sources("[]").ok());
    CHECK(!archive::read_sources("").ok());
}
