#include "base/formula_card.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace treadle::base;

TEST_CASE("every grade of evidence has its own word") {
    std::set<std::string> words;
    for (const Evidence e : {Evidence::published,
                             Evidence::common_practice,
                             Evidence::from_memory,
                             Evidence::derived,
                             Evidence::invented})
        words.insert(evidence_words(e));
    CHECK(words.size() == 5);
    CHECK(words.count("") == 0);
    CHECK(std::string(evidence_words(Evidence::common_practice)) == "common practice, no source");
}
