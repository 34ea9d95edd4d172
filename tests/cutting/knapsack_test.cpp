// Fills of a bar against trying all, rows kept or made again.

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <random>

#include "cutting/knapsack.h"

using namespace treadle::cutting;

namespace {

struct Case {
    std::vector<int> lengths;
    std::vector<float> prices;
    Counts limits;
    int longest = 0;
};

Case random_case(std::mt19937& random) {
    Case c;
    c.longest = 40 + static_cast<int>(random() % 60);
    for (int length = 30; length > 2; length -= 1 + static_cast<int>(random() % 9)) {
        c.lengths.push_back(length);
        c.prices.push_back(static_cast<float>(random() % 50));
        c.limits.push_back(1 + static_cast<int>(random() % 4));
    }
    return c;
}

/// Best value by fill, by trying all.
std::map<int, float> by_hand(const Case& c) {
    std::map<int, float> best{{0, 0.0F}};
    for (std::size_t i = 0; i < c.lengths.size(); ++i) {
        const std::map<int, float> before = best;
        for (const auto& [fill, value] : before)
            for (int count = 1; count <= c.limits[i]; ++count) {
                const int longer = fill + count * c.lengths[i];
                if (longer > c.longest)
                    break;
                const float worth = value + static_cast<float>(count) * c.prices[i];
                const auto known = best.find(longer);
                if (known == best.end() || known->second < worth)
                    best[longer] = worth;
            }
    }
    return best;
}

void check_counts(const Case& c, const Counts& counts, const Fill& fill, bool exact) {
    int length = 0;
    float value = 0.0F;
    for (std::size_t i = 0; i < c.lengths.size(); ++i) {
        CHECK(counts[i] <= c.limits[i]);
        length += counts[i] * c.lengths[i];
        value += static_cast<float>(counts[i]) * c.prices[i];
    }
    CHECK(value == fill.value);
    CHECK((exact ? length == fill.length : length <= fill.length));
}

} // namespace

TEST_CASE("the best fill is the best of all") {
    std::mt19937 random(7);
    for (int n = 0; n < 200; ++n) {
        const Case c = random_case(random);
        const auto best = by_hand(c);
        float most = 0.0F;
        for (const auto& [fill, value] : best)
            most = std::max(most, value);
        Knapsack knapsack(c.lengths, c.longest, false);
        knapsack.solve(c.prices, c.limits);
        const Fill fill = knapsack.best({c.longest, 0, c.longest, 1, k_no_limit});
        CHECK(fill.value == most);
        Counts counts;
        knapsack.read(fill.length, counts);
        check_counts(c, counts, fill, false);
    }
}

TEST_CASE("with ends to hold, only fills that leave one or none") {
    std::mt19937 random(8);
    for (int n = 0; n < 200; ++n) {
        const Case c = random_case(random);
        const StockKind kind{c.longest - 8, c.longest - 1, c.longest, 1, k_no_limit};
        float most = 0.0F;
        for (const auto& [fill, value] : by_hand(c))
            if (kind.takes(fill))
                most = std::max(most, value);
        Knapsack knapsack(c.lengths, c.longest, true);
        knapsack.solve(c.prices, c.limits, true);
        const Fill fill = knapsack.best(kind);
        CHECK(fill.value == most);
        CHECK(kind.takes(fill.length));
        Counts counts;
        knapsack.read(fill.length, counts);
        check_counts(c, counts, fill, true);
    }
}

TEST_CASE("rows that do not fit into memory are made again") {
    // 60 pieces of up to 300,000 long: 18 million cells, more than are kept.
    Case c;
    c.longest = 300'000;
    std::mt19937 random(9);
    for (int i = 0; i < 60; ++i) {
        c.lengths.push_back(20'000 + static_cast<int>(random() % 60'000));
        c.prices.push_back(
            static_cast<float>(c.lengths.back() / 100 + static_cast<int>(random() % 9)));
        c.limits.push_back(1);
    }
    Knapsack knapsack(c.lengths, c.longest, false);
    knapsack.solve(c.prices, c.limits);
    const Fill fill = knapsack.best({c.longest, 0, c.longest, 1, k_no_limit});
    Counts counts;
    knapsack.read(fill.length, counts);
    check_counts(c, counts, fill, false);
    knapsack.read(fill.length, counts); // reading changes nothing
    check_counts(c, counts, fill, false);
    CHECK(knapsack.best({c.longest, 0, c.longest, 1, k_no_limit}).value == fill.value);
}

TEST_CASE("all fills above a value, and no more") {
    std::mt19937 random(10);
    for (int n = 0; n < 60; ++n) {
        const Case c = random_case(random);
        Knapsack knapsack(c.lengths, c.longest, false);
        knapsack.solve(c.prices, c.limits, true);
        const StockKind kind{c.longest, 0, c.longest, 1, k_no_limit};
        const float least = knapsack.best(kind).value * 0.9F;
        const auto found = knapsack.all(kind, least, 1'000'000);
        REQUIRE(found.has_value());
        std::size_t expected = 0;
        Counts counts(c.lengths.size(), 0);
        // Every fill there is, counted by hand: worth enough, and no piece goes in any more.
        const auto walk = [&](const auto& self, std::size_t i, int room, float value) -> void {
            if (i == c.lengths.size()) {
                bool full = true;
                for (std::size_t k = 0; k < counts.size(); ++k)
                    full = full && (counts[k] == c.limits[k] || c.lengths[k] > room);
                expected += full && value >= least ? 1 : 0;
                return;
            }
            for (int count = 0; count <= c.limits[i] && count * c.lengths[i] <= room; ++count) {
                counts[i] = count;
                self(self,
                     i + 1,
                     room - count * c.lengths[i],
                     value + static_cast<float>(count) * c.prices[i]);
            }
            counts[i] = 0;
        };
        walk(walk, 0, c.longest, 0.0F);
        CHECK(found->size() == expected);
        CHECK(!knapsack.all(kind, 0.0F, 3).has_value());
    }
}
