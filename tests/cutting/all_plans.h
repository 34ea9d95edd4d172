// The least cost of a small list by trying every plan: nothing of the search is used.

#pragma once

#include <map>
#include <optional>

#include "cutting/lists.h"

namespace treadle::test {

class AllPlans {
public:
    explicit AllPlans(const CutList& list) : list_(list) {}

    /// None: the stock does not reach.
    std::optional<std::int64_t> least_cost() { return least(list_.demand, list_.whole_stock()); }

private:
    using Left = std::pair<cutting::Counts, std::vector<int>>;

    std::optional<std::int64_t> least(const cutting::Counts& demand,
                                      const std::vector<int>& stock) {
        std::size_t first = 0; // is in the next bar: some bar must hold it
        while (first < demand.size() && demand[first] == 0)
            ++first;
        if (first == demand.size())
            return 0;
        const Left left{demand, stock};
        if (const auto known = known_.find(left); known != known_.end())
            return known->second;
        std::optional<std::int64_t> best;
        for (std::size_t k = 0; k < stock.size(); ++k) {
            if (stock[k] == 0)
                continue;
            std::vector<int> fewer = stock;
            if (list_.stock[k].limited())
                --fewer[k];
            cutting::Counts rest = demand;
            --rest[first];
            const int room = list_.stock[k].closed - list_.length[first];
            if (room >= 0)
                with(k, first, room, rest, fewer, best);
        }
        known_[left] = best;
        return best;
    }

    /// Every content of this bar with the pieces from `piece` on.
    void with(std::size_t kind,
              std::size_t piece,
              int room,
              cutting::Counts& rest,
              const std::vector<int>& stock,
              std::optional<std::int64_t>& best) {
        if (piece == rest.size()) {
            if (!list_.stock[kind].takes(list_.stock[kind].closed - room))
                return;
            const auto after = least(rest, stock);
            if (after && (!best || *after + list_.stock[kind].cost < *best))
                best = *after + list_.stock[kind].cost;
            return;
        }
        with(kind, piece + 1, room, rest, stock, best);
        if (rest[piece] > 0 && list_.length[piece] <= room) {
            --rest[piece];
            with(kind, piece, room - list_.length[piece], rest, stock, best);
            ++rest[piece];
        }
    }

    const CutList& list_;
    std::map<Left, std::optional<std::int64_t>> known_;
};

/// A few lengths of a few pieces each. Bars of one kind at cost 1, or several at their length with
/// few of some; with ends to hold, or without.
inline CutProblem few_pieces(std::mt19937& random, bool several, bool ends) {
    const auto below = [&](std::uint32_t n) { return static_cast<std::int64_t>(random() % n); };
    CutProblem problem;
    problem.stock.push_back({60 + below(40), 1, std::nullopt});
    if (several) {
        problem.stock[0].cost = problem.stock[0].length;
        for (int k = 0; k < 2; ++k) {
            CutStock stock{30 + below(60), 0, std::nullopt};
            stock.cost = stock.length * below(2) + k;
            if (below(2) == 0 || stock.cost == 0)
                stock.available = 1 + below(2);
            problem.stock.push_back(stock);
        }
    }
    problem.least_end = ends ? 3 + below(5) : 0;
    problem.kerf = below(3);
    const auto lengths = 2 + below(4);
    for (std::int64_t i = 0; i < lengths; ++i)
        problem.pieces.push_back({12 + below(38), 1 + below(3)});
    return problem;
}

} // namespace treadle::test
