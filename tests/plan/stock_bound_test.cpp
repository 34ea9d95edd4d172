// Bounds raised to what bars can add up to: stock_bound.cpp.

#include "plan/stock_bound.h"

#include <doctest/doctest.h>

#include <random>
#include <set>

using namespace treadle;
using cutting::CutList;

namespace {

CutList list_with(const std::vector<cutting::StockKind>& stock, std::int64_t unit) {
    CutList list;
    list.stock = stock;
    list.unit = unit;
    return list;
}

cutting::StockKind kind(std::int64_t cost, int available = cutting::k_no_limit) {
    cutting::StockKind made;
    made.cost = cost;
    made.available = available;
    return made;
}

} // namespace

TEST_CASE("between four long bars and four with a short one there is nothing") {
    const CutList list = list_with({kind(240), kind(144, 1), kind(0, 3)}, 48);
    CHECK(plan::raised_bound(list, 961, 1104) == 1104);
    CHECK(plan::raised_bound(list, 960, 1104) == 960);
    CHECK(plan::raised_bound(list, 1000, 1200) == 1104);
    CHECK(plan::raised_bound(list, 1105, 1200) == 1200);
    CHECK(plan::raised_bound(list, 1200, 1200) == 1200);
}

TEST_CASE("against every sum counted out") {
    std::mt19937 random(7);
    for (int round = 0; round < 100; ++round) {
        const auto pick = [&](int most) {
            return 1 + static_cast<int>(random() % static_cast<unsigned>(most));
        };
        const int a = pick(9);
        const int b = pick(9);
        const int c = pick(9);
        const int most_b = pick(4);
        const int most_c = pick(4);
        const CutList list = list_with({kind(a), kind(b, most_b), kind(c, most_c)}, 1);
        std::set<int> sums;
        for (int x = 0; x <= 60; ++x)
            for (int y = 0; y <= most_b; ++y)
                for (int z = 0; z <= most_c; ++z)
                    sums.insert(x * a + y * b + z * c);
        const int cost = *sums.lower_bound(40);
        for (int bound = 0; bound <= cost; ++bound)
            CHECK(plan::raised_bound(list, bound, cost) == *sums.lower_bound(bound));
    }
}
