// The last bars of a plan, of which nearly all must be filled to the end: no prices, only the fills
// that waste next to nothing, tried one after the other.
//
// Symbols  S  what may be wasted in all: bars times length less the pieces
// Method   all fills that waste at most S; depth first, the piece that the fewest of them hold
// next,
//          each of those fills in turn and none of the earlier ones again
// Valid    one kind of bar, as many as it takes, without ends to hold; S under the shortest piece,
//          so that a fill to which a piece can be added wastes too much. Gives up after so much
//          work: no plan proves nothing

#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "cutting/cut_list.h"
#include "cutting/knapsack.h"

namespace treadle::cutting {

class LastBars {
public:
    /// Keeps references to both; the knapsack is solved anew.
    LastBars(const CutList& list, Knapsack& knapsack);

    /// A plan of at most so many bars.
    [[nodiscard]] std::optional<Bars>
    plan(const Counts& demand, int most_bars, long long most_work);
    [[nodiscard]] long long work() const { return work_; } ///< that of the knapsack not in it
    [[nodiscard]] long long knapsack_work() const { return knapsack_work_; } ///< of these plans

private:
    struct Held {
        std::size_t piece;
        int count;
    };
    struct Level {
        std::vector<int> open; ///< fills that may still be used
        std::vector<int> next; ///< those that hold the piece to be made, best last
        int chosen = -1;
    };
    [[nodiscard]] std::span<const Held> held(int fill) const;
    [[nodiscard]] bool gather(const Counts& demand, long long slack);
    [[nodiscard]] bool search(int most_bars, long long most_work);
    [[nodiscard]] bool narrow(const std::vector<int>& open, Level& level);
    void use(int fill, int times);

    const CutList& list_;
    Knapsack& knapsack_;
    std::vector<Counts> fills_;
    std::vector<int> waste_;
    std::vector<Held> held_;         ///< of all fills, one after the other
    std::vector<std::size_t> first_; ///< of each fill in held_, and the end
    Counts left_;
    long long pieces_left_ = 0;
    long long slack_ = 0;
    std::vector<int> holders_; ///< fills that hold each piece
    std::vector<Level> path_;
    long long work_ = 0;
    long long knapsack_work_ = 0;
};

} // namespace treadle::cutting
