#include "process/cards.h"

#include <doctest/doctest.h>

#include <cstring>
#include <set>
#include <string>

using namespace treadle;

TEST_CASE("every card says what it is, where it holds and who says so") {
    CHECK(process::cards().size() == 30);
    std::set<std::string> ids;
    for (const base::FormulaCard* card : process::cards()) {
        CAPTURE(card->id);
        CHECK(ids.insert(card->id).second);
        CHECK(std::strlen(card->title) > 0);
        CHECK(std::strlen(card->expression) > 0);
        CHECK(std::strlen(card->validity) > 0);
        CHECK(std::strlen(card->source) > 0);
        CHECK(!card->symbols.empty());
    }
}

TEST_CASE("practice without a source does not call itself published") {
    for (const base::FormulaCard* card : process::cards()) {
        CAPTURE(card->id);
        const bool practice = std::string(card->source).rfind("common-practice", 0) == 0;
        CHECK(practice == (card->evidence == base::Evidence::common_practice));
    }
}
