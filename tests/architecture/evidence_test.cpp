// Nothing without evidence: each source file has its test, each formula its card, source and test.

#include "material/cards.h"
#include "process/cards.h"
#include "section/cards.h"

#include <doctest/doctest.h>

#include <map>
#include <regex>
#include <set>
#include <vector>

#include "architecture/tree.h"
#include "assembly/cards.h"
#include "layout/cards.h"
#include "supply/cards.h"

using namespace treadle;
using namespace treadle::architecture;

namespace {

/// Source files that no test names, each with its reason.
const std::map<std::string, std::string> k_without_own_test{
    {"core/base/contracts.cpp", "ends the program; tests/ would end with it"},
};

/// By its header, or by its own name when it has none: a test of a room says in its first lines
/// which files behind the public header it covers.
bool tested(const SourceFile& source) {
    const std::string room(room_of(source.path)->name);
    const std::string folder = joined({"tests/", room, "/"});
    const std::string own_test = joined({folder, source.stem(), "_test.cpp"});
    const std::string header = joined({room, "/", source.stem(), ".h"});
    const std::string name = joined({source.stem(), ".cpp"});
    for (const auto& [path, file] : tree()) {
        if (!begins_with(path, "tests/"))
            continue;
        const bool named = begins_with(path, folder) && file.text.find(name) != std::string::npos;
        if (path == own_test || named || file.text.find(header) != std::string::npos)
            return true;
    }
    return false;
}

std::vector<const base::FormulaCard*> all_cards() {
    std::vector<const base::FormulaCard*> all;
    for (const base::FormulaCard* card : process::cards())
        all.push_back(card);
    for (const base::FormulaCard* card : layout::cards())
        all.push_back(card);
    for (const base::FormulaCard* card : assembly::cards())
        all.push_back(card);
    for (const base::FormulaCard* card : material::cards())
        all.push_back(card);
    for (const base::FormulaCard* card : section::cards())
        all.push_back(card);
    for (const base::FormulaCard* card : supply::cards())
        all.push_back(card);
    return all;
}

} // namespace

TEST_CASE("each source file of the core has a test that names it") {
    int checked = 0;
    for (const auto& [path, file] : tree()) {
        const bool excused = k_without_own_test.count(path) != 0;
        if (!begins_with(path, "core/") || file.header() || room_of(path) == nullptr)
            continue;
        ++checked;
        if (!excused && !tested(file))
            FAIL_CHECK(path << ": no test names it");
    }
    CHECK(checked > 30);
    for (const auto& [path, reason] : k_without_own_test)
        if (tree().count(path) == 0)
            FAIL_CHECK(path << " is excused but not there");
}

TEST_CASE("a card is whole: id, title, expression, symbols, validity, source") {
    std::set<std::string> ids;
    for (const base::FormulaCard* card : all_cards()) {
        CAPTURE(card->id);
        CHECK(ids.insert(card->id).second);
        CHECK_FALSE(std::string(card->title).empty());
        CHECK_FALSE(std::string(card->expression).empty());
        CHECK_FALSE(card->symbols.empty());
        CHECK_FALSE(std::string(card->validity).empty());
    }
    CHECK(ids.size() > 15);
}

TEST_CASE("a card's source stands in assets/sources.json") {
    const std::string sources = read_text("assets/sources.json");
    REQUIRE(sources.size() > 100);
    for (const base::FormulaCard* card : all_cards()) {
        const std::regex key(joined({"\"", card->source, "\"\\s*:\\s*\\{"}));
        CHECK_MESSAGE(
            std::regex_search(sources, key), card->id, " names the source ", card->source);
    }
}

TEST_CASE("a test names each card") {
    std::string tests;
    for (const auto& [path, file] : tree()) {
        if (begins_with(path, "tests/") && !begins_with(path, "tests/architecture/"))
            tests += file.text;
    }
    for (const base::FormulaCard* card : all_cards()) {
        // Between quotes, or as the word before the colon of a test's title.
        const std::regex named(joined({"\"", card->id, "[\":]"}));
        if (!std::regex_search(tests, named))
            FAIL_CHECK("no test names the card " << std::string(card->id));
    }
}

TEST_CASE("rooms with cards are looked at here") {
    std::set<std::string> rooms;
    for (const auto& [path, file] : tree()) {
        if (begins_with(path, "core/") && file.stem() == "cards" && file.header())
            rooms.insert(std::string(room_of(path)->name));
    }
    CHECK(rooms ==
          std::set<std::string>{"assembly", "layout", "material", "process", "section", "supply"});
}

TEST_CASE("DEVELOPERS.md shows the table of rooms as it is enforced") {
    const std::string developers = read_text("DEVELOPERS.md");
    for (const Room& room : k_rooms) {
        const std::string allowed = room.may_include.empty() ? "-" : std::string(room.may_include);
        const std::string line = joined({"| `", room.folder, "` | ", allowed, " |"});
        if (developers.find(line) == std::string::npos)
            FAIL_CHECK("DEVELOPERS.md lacks: " << line);
    }
}

TEST_CASE("at least sixty rows of print or hand arithmetic are compared") {
    // A table says its length in its test: CHECK(k_rows.size() == 24) or std::size(k_rows) == 24.
    static const std::regex said(R"((?:std::size\(k_\w+\)|k_\w+\.size\(\)) == (\d+)\))");
    int rows = 0;
    for (const auto& [path, file] : tree()) {
        if (!begins_with(path, "tests/published") && !begins_with(path, "tests/worked/"))
            continue;
        for (std::sregex_iterator at(file.text.begin(), file.text.end(), said), end; at != end;
             ++at)
            rows += std::stoi((*at)[1].str());
    }
    CHECK(rows >= 60);
    MESSAGE("published or worked rows: " << rows);
}
