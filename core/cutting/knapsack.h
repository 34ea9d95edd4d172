// The most valuable fill of a bar, for bars of every length at once.
//
// Symbols  l_i, p_i, u_i  length, price and most of piece i    v[j]  value of the best fill
// Formula  v[j] = largest of v[j - c l_i] + c p_i over all pieces i and counts c up to u_i
// Method   a count is made of powers of two, one pass over the row for each. A fill is read back by
//          asking in which pass its value changed; rows that do not fit into memory are made again.
// Valid    prices whole numbers, no value over 2^24: float adds those without rounding, and the
//          plainest machine adds four of them at once

#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "cutting/cut_list.h"

namespace treadle::cutting {

inline constexpr float k_largest_exact = 16777216.0F;

/// A fill and what it is worth.
struct Fill {
    int length = 0;
    float value = 0.0F;
};

class Knapsack {
public:
    /// `exact`: v[j] is of fills of just j; needed where not every shorter fill will do.
    Knapsack(std::vector<int> lengths, int longest, bool exact);

    /// Pieces without a price are left out, unless `free_pieces`.
    void solve(const std::vector<float>& prices, const Counts& limits, bool free_pieces = false);
    /// The best that a bar of this kind can be filled with.
    [[nodiscard]] Fill best(const StockKind& kind) const;
    /// The pieces of a fill of just this length, or of at most it when not exact.
    void read(int length, Counts& counts);
    /// Fills for bars of this kind worth at least `least` to which no piece can be added; when
    /// exact, all of them. None when there are more than `most`, or too many to look at, or when
    /// rows had to be dropped.
    [[nodiscard]] std::optional<std::vector<Counts>>
    all(const StockKind& kind, float least, std::size_t most);

    [[nodiscard]] long long work() const { return work_; } ///< cells of all solves so far

private:
    struct Pass {
        int piece;
        int count;
    };
    [[nodiscard]] std::size_t row_size() const { return static_cast<std::size_t>(longest_) + 1; }
    [[nodiscard]] float value(int length) const { return last_[static_cast<std::size_t>(length)]; }
    void run(const Pass& pass, const float* from, float* to) const;

    std::vector<int> lengths_;
    int longest_;
    bool exact_;
    std::vector<float> prices_;
    std::vector<Pass> passes_;
    std::size_t stride_ = 1; ///< every so many rows one is kept
    std::vector<float> kept_;
    std::vector<float> between_; ///< rows from one kept to the next
    std::vector<float> last_;    ///< row after all passes
    long long work_ = 0;
};

} // namespace treadle::cutting
