#include "cutting/worth_fill.h"

#include <algorithm>
#include <cmath>

namespace treadle::cutting {

namespace {

constexpr double k_longer_is_worth = 0.07; // more, for each part of a bar's length
constexpr double k_most_worth = 4'000'000.0;

} // namespace

WorthFill::WorthFill(const CutList& list, Knapsack& knapsack)
    : list_(list),
      knapsack_(knapsack),
      worth_(list.size()),
      whole_(list.size()) {}

/// A little more than its length; no power of it, which two machines may round differently.
double WorthFill::first_worth(std::size_t piece) const {
    const double length = list_.length[piece];
    return length * (1.0 + k_longer_is_worth * length / list_.longest_fill());
}

void WorthFill::start(const Counts& demand) {
    demand_ = demand;
    for (std::size_t i = 0; i < list_.size(); ++i)
        worth_[i] = first_worth(i);
}

/// The worths of the pieces of a bar move towards what they had to pay for it.
void WorthFill::correct(const Counts& counts, const Counts& left) {
    const double length = list_.longest_fill();
    const double dear = length / std::max<double>(1.0, static_cast<double>(fill_of(list_, counts)));
    for (std::size_t i = 0; i < list_.size(); ++i) {
        if (counts[i] == 0)
            continue;
        shuffle_ = shuffle_ * 6364136223846793005ULL + 1442695040888963407ULL;
        const double uneven = 1.0 + static_cast<double>(shuffle_ >> 40) / 16777216.0;
        const double old_share = uneven * (demand_[i] + left[i]) / counts[i];
        worth_[i] = (old_share * worth_[i] + dear * first_worth(i)) / (old_share + 1.0);
    }
}

std::optional<Bars> WorthFill::round(int most_bars) {
    Bars bars;
    Counts left = demand_;
    Counts counts;
    int used = 0;
    long long metal = 0;
    for (std::size_t i = 0; i < list_.size(); ++i)
        metal += static_cast<long long>(left[i]) * list_.length[i];
    while (metal > 0) {
        // No hope: the rest fills more bars than may be used.
        if (metal > static_cast<long long>(most_bars - used) * list_.longest_fill())
            return std::nullopt;
        double steepest = 0.0;
        for (std::size_t i = 0; i < list_.size(); ++i)
            if (left[i] > 0)
                steepest = std::max(steepest, worth_[i] / list_.length[i]);
        const double scale = k_most_worth / (steepest * list_.longest_fill());
        for (std::size_t i = 0; i < list_.size(); ++i)
            whole_[i] = left[i] > 0 ? static_cast<float>(std::ceil(worth_[i] * scale)) : 0.0F;
        const long long before = knapsack_.work();
        knapsack_.solve(whole_, left);
        knapsack_.read(knapsack_.best(list_.stock.front()).length, counts);
        knapsack_work_ += knapsack_.work() - before;
        work_ += static_cast<long long>(list_.size()) * 16;
        for (std::size_t i = 0; i < list_.size(); ++i)
            left[i] -= counts[i];
        metal -= fill_of(list_, counts);
        ++used;
        correct(counts, left);
        bars.push_back({{0, counts}, 1});
    }
    return bars;
}

} // namespace treadle::cutting
