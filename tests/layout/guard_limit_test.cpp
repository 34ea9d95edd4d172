#include <doctest/doctest.h>

#include <set>
#include <string>

#include "layout/guard_limit.h"

using namespace treadle;

TEST_CASE("the words of the rules are the table's, in its order") {
    std::string words;
    std::set<std::string> seen;
    for (const layout::GuardLimit& limit : layout::guard_limits()) {
        words += (words.empty() ? "" : "|") + std::string(limit.rule);
        CHECK(seen.insert(limit.rule).second);
        CHECK(layout::find_guard_limit(limit.rule) == &limit);
        CHECK((layout::least_of(limit) || layout::greatest_of(limit)));
    }
    CHECK(words == layout::k_guard_rules);
    CHECK(layout::find_guard_limit("unheard-of") == nullptr);
}

TEST_CASE("just outside a bound is refused, just inside is answered") {
    const Length little = millimetres(0.5);
    for (const layout::GuardLimit& limit : layout::guard_limits()) {
        CAPTURE(limit.rule);
        const auto least = layout::least_of(limit);
        const auto most = layout::greatest_of(limit);
        if (least) {
            CHECK(layout::least_limit_working(limit, *least).ok());
            CHECK(layout::least_limit_working(limit, *least - little).refusal().field == "value");
        } else {
            CHECK(layout::least_limit_working(limit, {}).refusal().field == "rule");
        }
        if (most) {
            CHECK(layout::greatest_limit_working(limit, *most - little).ok());
            CHECK(layout::greatest_limit_working(limit, *most).ok() != limit.sphere);
            CHECK(layout::greatest_limit_working(limit, *most + little).ok() == limit.may_exceed);
        }
    }
}

TEST_CASE("a midrail stands under an allowed top edge") {
    CHECK(layout::midrail_working(inches(38)).refusal().field == "top_edge");
    CHECK(layout::midrail_working(Length{}).refusal().field == "top_edge");
    CHECK(layout::midrail_working(inches(46)).ok());
}
