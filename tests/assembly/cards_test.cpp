#include <doctest/doctest.h>

#include <cstring>
#include <set>
#include <string>

#include "assembly/cards.h"

using namespace treadle;

TEST_CASE("every card of a layout says what it is, where it holds and who says so") {
    std::set<std::string> ids;
    for (const base::FormulaCard* card : assembly::cards()) {
        CAPTURE(card->id);
        CHECK(ids.insert(card->id).second);
        CHECK(std::strlen(card->validity) > 0);
        CHECK(!card->symbols.empty());
        CHECK(card->evidence == base::Evidence::derived);
    }
    CHECK(ids == std::set<std::string>{
                     "raked-rail", "gate-leaf", "offset-leg", "one-saddle", "even-frame-across"});
}
