// Fewest bars: against printed examples, against known answers, and against what must hold.

#include <doctest/doctest.h>

#include "cutting/lists.h"

using namespace treadle;
using namespace treadle::test;

namespace {

struct Answer {
    std::int64_t cost = 0;
    bool proven = false;
};

Answer solve(const CutProblem& problem, long long work = k_second) {
    Search search(list_of(problem));
    search.run(work);
    REQUIRE(search.has_plan());
    CHECK(fault_of(problem, search) == "");
    CHECK(search.bound() <= search.cost());
    return {search.cost(), search.proven()};
}

CutProblem bars_of(std::int64_t stock, std::vector<CutPiece> pieces, std::int64_t kerf = 0) {
    CutProblem problem;
    problem.stock.push_back({stock, 1, std::nullopt});
    problem.pieces = std::move(pieces);
    problem.kerf = kerf;
    return problem;
}

} // namespace

TEST_CASE("a kerf or a slug takes a bar more") {
    // Worked by hand, in eighths and quarters of an inch: four of 60 fill 240, with a kerf three.
    CHECK(solve(bars_of(240 * 8, {{60 * 8, 8}})).cost == 2);
    CHECK(solve(bars_of(240 * 8, {{60 * 8, 8}}, 1)).cost == 3);
    // 8 of 29-1/2 make 236; with 3/4 lost each time only 7 go in.
    CHECK(solve(bars_of(240 * 4, {{118, 16}})).cost == 2);
    CHECK(solve(bars_of(240 * 4, {{118, 16}}, 3)).cost == 3);
    // 21 ft, saw of 0.063: six of 36 and not seven; without loss seven, to the end.
    CHECK(solve(bars_of(252'000, {{36'000, 7}}, 63)).cost == 2);
    CHECK(solve(bars_of(252'000, {{36'000, 7}})).cost == 1);
}

TEST_CASE("an end that cannot be held takes a bar more") {
    // Five of 47-1/2 leave 2-1/2 of 240: with 4 to hold, the fifth goes to another bar.
    CutProblem problem = bars_of(480, {{95, 5}});
    CHECK(solve(problem).cost == 1);
    problem.least_end = 5; // 2-1/2
    CHECK(solve(problem).cost == 1);
    problem.least_end = 8; // 4
    CHECK(solve(problem).cost == 2);
    // Nothing left is nothing to hold.
    problem = bars_of(480, {{96, 5}});
    problem.least_end = 8;
    CHECK(solve(problem).cost == 1);
}

TEST_CASE("longest first is not the fewest") {
    // Worked by trying all: first fit decreasing takes 5 and 4 bars.
    const Answer four = solve(bars_of(480, {{135, 4}, {105, 4}, {195, 4}}));
    CHECK(four.cost == 4);
    CHECK(four.proven);
    const Answer three = solve(bars_of(480, {{105, 4}, {63, 3}, {168, 3}, {99, 3}}));
    CHECK(three.cost == 3);
    CHECK(three.proven);
}

TEST_CASE("printed examples") {
    // Chvatal, Linear Programming (1983), chapter 13; from memory. LP value 452.25.
    const Answer chvatal = solve(bars_of(100, {{45, 97}, {36, 610}, {31, 395}, {14, 211}}));
    CHECK(chvatal.cost == 453);
    CHECK(chvatal.proven);
    // Open encyclopedia, "Cutting stock problem", paper rolls of 5600 mm; from memory.
    const Answer paper = solve(bars_of(5600,
                                       {{1380, 22},
                                        {1520, 25},
                                        {1560, 12},
                                        {1710, 14},
                                        {1820, 18},
                                        {1880, 18},
                                        {1930, 20},
                                        {2000, 10},
                                        {2050, 12},
                                        {2100, 14},
                                        {2140, 16},
                                        {2150, 18},
                                        {2200, 20}}));
    CHECK(paper.cost == 73);
    CHECK(paper.proven);
}

TEST_CASE("triplets take a third as many bars as there are pieces") {
    for (std::uint32_t seed = 1; seed <= 30; ++seed) {
        const int bars = 8 + static_cast<int>(seed % 12);
        CAPTURE(seed);
        const Answer answer = solve(triplets(seed, bars));
        CHECK(answer.cost == bars);
        CHECK(answer.proven);
    }
}

TEST_CASE("large triplets are proven in a fraction of a second") {
    for (const int bars : {83, 167})
        for (std::uint32_t seed = 1; seed <= 3; ++seed) {
            CAPTURE(bars);
            CAPTURE(seed);
            const Answer answer = solve(triplets(seed, bars), k_second / 4);
            CHECK(answer.cost == bars);
            CHECK(answer.proven);
        }
}

TEST_CASE("shop lists are proven") {
    for (std::uint32_t seed = 1; seed <= 24; ++seed) {
        CAPTURE(seed);
        const auto size = seed % 3;
        const Answer answer = solve(shop_list(seed,
                                              seed % 2 == 0,
                                              size == 0   ? 8
                                              : size == 1 ? 20
                                                          : 40,
                                              40 << (2 * size)));
        CHECK(answer.proven);
    }
}

TEST_CASE("one piece more never takes fewer bars, one drop more never costs more") {
    for (std::uint32_t seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        std::mt19937 random(seed);
        CutProblem problem = shop_list(seed, true, 8, 24);
        const Answer before = solve(problem);
        REQUIRE(before.proven);
        CutProblem more = problem;
        ++more.pieces[random() % more.pieces.size()].count;
        CHECK(solve(more).cost >= before.cost);
        CutProblem drop = problem;
        drop.stock.push_back({static_cast<std::int64_t>(600 + random() % 2000), 0, 1});
        const Answer with_drop = solve(drop);
        CHECK(with_drop.cost <= before.cost);
        drop.stock.push_back({static_cast<std::int64_t>(600 + random() % 2000), 0, 1});
        CHECK(solve(drop).cost <= with_drop.cost);
    }
}

TEST_CASE("the same bar named twice is the same bar") {
    for (std::uint32_t seed = 1; seed <= 10; ++seed) {
        CutProblem problem = shop_list(seed, false, 10, 40);
        const Answer once = solve(problem);
        problem.stock.push_back(problem.stock[0]);
        CHECK(solve(problem).cost == once.cost);
    }
}

TEST_CASE("too little stock: no plan, and nothing promised") {
    CutProblem problem = bars_of(480, {{300, 3}});
    problem.stock[0].available = 2;
    Search search(list_of(problem));
    search.run(k_second / 10);
    CHECK(!search.has_plan());
    CHECK(!search.proven());
}

TEST_CASE("in slices or at once: the same plan") {
    for (std::uint32_t seed = 1; seed <= 8; ++seed) {
        const CutProblem problem = shop_list(seed, true, 20, 150);
        Search whole(list_of(problem));
        whole.run(k_second);
        Search slices(list_of(problem));
        std::int64_t bound = 0;
        std::int64_t cost = INT64_MAX;
        for (int n = 0; n < 100'000 && !slices.done(); ++n) {
            slices.run(50'000);
            if (slices.has_plan()) {
                CHECK(slices.cost() <= cost);
                cost = slices.cost();
            }
            CHECK(slices.bound() >= bound);
            bound = slices.bound();
        }
        CHECK(slices.cost() == whole.cost());
        REQUIRE(slices.best().size() == whole.best().size());
        for (std::size_t b = 0; b < whole.best().size(); ++b) {
            CHECK(slices.best()[b].times == whole.best()[b].times);
            CHECK(slices.best()[b].pattern.counts == whole.best()[b].pattern.counts);
        }
    }
}
