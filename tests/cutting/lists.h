// Cutting lists for tests, made from a seed; and answers got without the search.

#pragma once

#include <algorithm>
#include <cstdint>
#include <functional>
#include <map>
#include <random>

#include "cutting/problem.h"
#include "cutting/search.h"

namespace treadle::test {

using cutting::Bars;
using cutting::Counts;
using cutting::CutBars;
using cutting::CutList;
using cutting::CutPiece;
using cutting::CutProblem;
using cutting::CutStock;
using cutting::Search;

inline constexpr long long k_second = 1'000'000'000; // of counted work

inline CutList list_of(const CutProblem& problem) {
    auto list = cutting::cut_list(problem);
    return std::move(list).value();
}

/// A shop's list: bars of 20 ft in sixteenths of an inch with a saw's 1/8, or of 6 m in millimetres
/// with 3 mm; our own invention.
inline CutProblem shop_list(std::uint32_t seed, bool inch, std::size_t sizes, int pieces) {
    std::mt19937 random(seed);
    CutProblem problem;
    problem.stock.push_back({inch ? 3840 : 6000, 1, std::nullopt});
    problem.kerf = inch ? 2 : 3;
    std::map<std::int64_t, std::int64_t> counts;
    while (counts.size() < sizes)
        counts[static_cast<std::int64_t>(random() % (inch ? 1800 : 2900)) + 60] = 1;
    for (int left = pieces - static_cast<int>(sizes); left > 0; --left)
        ++std::next(counts.begin(), static_cast<std::ptrdiff_t>(random() % sizes))->second;
    for (const auto& [length, count] : counts)
        problem.pieces.push_back({length, count});
    return problem;
}

/// Threes that fill a bar of 1000 exactly: the least number of bars is known. Falkenauer, A hybrid
/// grouping genetic algorithm for bin packing, J. Heuristics 2(1), 1996.
inline CutProblem triplets(std::uint32_t seed, int bars) {
    std::mt19937 random(seed);
    CutProblem problem;
    problem.stock.push_back({1000, 1, std::nullopt});
    for (int b = 0; b < bars; ++b) {
        const std::int64_t first = 380 + static_cast<std::int64_t>(random() % 110);
        const std::int64_t rest = 1000 - first;
        const std::int64_t second =
            250 + static_cast<std::int64_t>(random() % static_cast<std::uint32_t>(rest / 2 - 250));
        for (const std::int64_t length : {first, second, rest - second})
            problem.pieces.push_back({length, 1});
    }
    return problem;
}

/// Lengths and numbers of a plan in the problem's own unit, bar by bar, checked against it: every
/// piece made, kerfs and ends kept, no bar used twice. Empty when all is well.
inline std::string fault_of(const CutProblem& problem, const Search& search) {
    std::map<std::int64_t, std::int64_t> made;
    std::vector<std::int64_t> used(problem.stock.size(), 0);
    for (const CutBars& bar : search.best()) {
        const auto kind = static_cast<std::size_t>(bar.pattern.stock);
        used[kind] += bar.times;
        std::int64_t pieces = 0;
        std::int64_t metal = 0;
        for (std::size_t i = 0; i < search.list().size(); ++i) {
            const std::int64_t count = bar.pattern.counts[i];
            made[cutting::own_length(search.list(), i)] += count * bar.times;
            pieces += count;
            metal += count * cutting::own_length(search.list(), i);
        }
        const std::int64_t left = problem.stock[kind].length - metal;
        const bool no_end = left >= (pieces - 1) * problem.kerf && left <= pieces * problem.kerf;
        const bool held = left - pieces * problem.kerf >= problem.least_end;
        if (!no_end && !held)
            return "a bar is too full, or its end cannot be held";
    }
    for (std::size_t k = 0; k < used.size(); ++k)
        if (problem.stock[k].available && used[k] > *problem.stock[k].available)
            return "more bars than there are";
    std::map<std::int64_t, std::int64_t> asked;
    for (const CutPiece& piece : problem.pieces)
        asked[piece.length] += piece.count;
    for (const auto& [length, count] : made)
        if (count != 0 && asked[length] != count)
            return "not as many pieces as asked for";
    for (const auto& [length, count] : asked)
        if (made[length] != count)
            return "a piece is missing";
    return "";
}

} // namespace treadle::test
