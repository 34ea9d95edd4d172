#include "base/stable_sort.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <memory>
#include <random>
#include <utility>
#include <vector>

using namespace treadle;

TEST_CASE("random lists come out as the standard library sorts them") {
    std::mt19937 random(20);
    for (unsigned count = 0; count < 200; ++count) {
        CAPTURE(count);
        std::vector<std::pair<unsigned, unsigned>> list; // a key of few values, and its place
        for (unsigned i = 0; i < count; ++i)
            list.emplace_back(random() % (1 + count / 3), i);
        const auto less = [](const auto& a, const auto& b) { return a.first < b.first; };
        auto expected = list;
        std::stable_sort(expected.begin(), expected.end(), less);
        base::stable_sort(list, less);
        CHECK(list == expected);
    }
}

TEST_CASE("values that can only be moved are sorted too") {
    std::vector<std::unique_ptr<int>> list;
    for (int i = 0; i < 40; ++i)
        list.push_back(std::make_unique<int>((i * 7) % 40)); // each once: 7 and 40 share no factor
    base::stable_sort(list, [](const auto& a, const auto& b) { return *a < *b; });
    for (int i = 0; i < 40; ++i)
        CHECK(*list[static_cast<std::size_t>(i)] == i);
}
