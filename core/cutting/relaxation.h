// Bars in fractions: the least cost that no plan beats, and patterns to make a plan of.
//
// Symbols   d_i  pieces asked for    p_i  prices (whole numbers)    V_k  largest value of a fill of
//           stock k    c_k  its cost    a_k  how many there are, where limited
// Formula   with K >= V_k / c_k for every unlimited k, no plan costs less than
//           (sum p_i d_i - sum over limited k of a_k max(0, V_k - K c_k)) / K
// Method    columns are made by the knapsack as they are needed; prices are smoothed towards those
//           of the best bound so far; columns of no cost let a longer piece stand in for the next
//           shorter one, for prices then fall with length from the start
// Sources   Farley 1990 (bound); Wentges 1997 (smoothing); Valerio de Carvalho 2005 (dual cuts)

#pragma once

#include <vector>

#include "cutting/certificate.h"
#include "cutting/cut_list.h"
#include "cutting/knapsack.h"
#include "cutting/master.h"

namespace treadle::cutting {

class Relaxation {
public:
    /// Keeps a reference to the list.
    explicit Relaxation(const CutList& list);

    /// Begins with the patterns of a plan.
    void start(const Bars& bars);
    /// Of many equally good prices: any, or those that a very little more of every piece decides,
    /// which leaves fewer pieces without a price.
    enum class Prices { any, decided };
    /// What is still to be made of what is left; the columns made so far stay. False when the
    /// columns there are cannot do it.
    [[nodiscard]] bool
    set(const Counts& demand, const std::vector<int>& stock_left, Prices prices = Prices::any);
    enum class Stop { when_rounding_is_clear, when_best };
    /// One round of pricing. True when done: nothing helps, or the cost rounded up is known.
    bool round(Stop stop);

    [[nodiscard]] double bound() const { return best_bound_; }
    [[nodiscard]] double cost() const { return master_.objective(); }
    [[nodiscard]] const Certificate& certificate() const { return certificate_; }

    /// Patterns in use, with how often.
    struct Use {
        int pattern;
        double times;
    };
    [[nodiscard]] std::vector<Use> uses() const;
    [[nodiscard]] const Pattern& pattern(int index) const {
        return patterns_[static_cast<std::size_t>(index)];
    }
    /// Whole-number prices from the present duals, and their knapsack solved with every piece in.
    [[nodiscard]] std::vector<float> priced_fills();
    [[nodiscard]] Knapsack& fills() { return knapsack_; }
    [[nodiscard]] long long work() const { return knapsack_.work() + master_.work(); }

private:
    [[nodiscard]] std::vector<double> right_side(Prices prices) const;
    void whole_prices(const std::vector<double>& prices);
    void take_bound(const std::vector<double>& prices);
    [[nodiscard]] bool add_columns();
    int add(const Pattern& pattern);

    const CutList& list_;
    Knapsack knapsack_;
    Master master_;
    std::vector<Pattern> patterns_;
    int first_pattern_ = 0; ///< column of the first pattern
    Counts demand_;
    std::vector<int> stock_left_;
    std::vector<float> prices_;
    std::vector<double> center_; ///< prices of the best bound
    double best_bound_ = 0.0;
    Certificate certificate_;
};

/// A cost rounded up to one that bars can have.
[[nodiscard]] std::int64_t cost_at_least(double cost, std::int64_t unit);

} // namespace treadle::cutting
