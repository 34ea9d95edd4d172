// Plans made bar by bar, over and over, each time with other worths for the pieces.
//
// Method   fills a bar with the most worth; a piece that came to lie in a bar with much waste is
//          worth more from there on, so that it is placed earlier the next time
// Sources  Mukhacheva, Belov, Kartak, Mukhacheva 2000 (sequential value correction; from memory)
// Valid    one kind of bar, as many as it takes, without ends to hold

#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "cutting/cut_list.h"
#include "cutting/first_fit.h"
#include "cutting/knapsack.h"

namespace treadle::cutting {

class WorthFill {
public:
    /// Keeps references to both; the knapsack is solved anew by every round.
    WorthFill(const CutList& list, Knapsack& knapsack);

    /// What is to be made from here on; worths begin with the lengths.
    void start(const Counts& demand);
    /// One plan of at most so many bars; none when this one comes to more.
    [[nodiscard]] std::optional<Bars> round(int most_bars);
    [[nodiscard]] long long work() const { return work_; } ///< that of the knapsack not in it
    [[nodiscard]] long long knapsack_work() const { return knapsack_work_; } ///< of these rounds

private:
    [[nodiscard]] double first_worth(std::size_t piece) const;
    void correct(const Counts& counts, const Counts& left);

    const CutList& list_;
    Knapsack& knapsack_;
    Counts demand_;
    std::vector<double> worth_;
    std::vector<float> whole_;
    std::uint64_t shuffle_ = 1;
    long long work_ = 0;
    long long knapsack_work_ = 0;
};

} // namespace treadle::cutting
