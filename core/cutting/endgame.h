// The end of a hard case: between the bound and the best plan lies one step of cost, and few
// patterns lose so little that a better plan could hold them.
//
// Symbols   K  prices per unit of cost    w_q  what pattern q loses: K c_q + m_k - value(q)
//           S  what a plan one step better may lose in all: K (cost) - sum p_i d_i + sum a_k m_k
// Method    all patterns with w_q <= S; depth first, the piece that the fewest of them hold next,
//           each of those patterns in turn and none of the earlier ones again; below every node the
//           linear program of the patterns that are left, which ends most of them
// Valid     finds a better plan, or proves by running dry that there is none

#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "cutting/cut_list.h"
#include "cutting/first_fit.h"
#include "cutting/master.h"

namespace treadle::cutting {

/// A pattern that a better plan could hold.
struct Candidate {
    Pattern pattern;
    double loss = 0.0;
};

class Endgame {
public:
    /// Looks for a plan of at most this cost; `budget` is what it may lose in all.
    Endgame(const CutList& list,
            std::vector<Candidate> candidates,
            const std::vector<float>& prices,
            double budget,
            std::int64_t most_cost);

    enum class State { looking, found, none };
    void run(long long work);
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] const Bars& plan() const { return plan_; }
    [[nodiscard]] long long work() const { return work_ + master_.work(); }

private:
    struct Held {
        std::size_t piece;
        int count;
    };
    struct Node {
        Rest rest;
        double budget = 0.0;
        std::int64_t cost = 0;
        std::vector<int> open; ///< candidates that may still be used
        std::vector<int> next; ///< those that hold the piece to be made, best last
        int chosen = -1;       ///< that led here
    };
    [[nodiscard]] std::span<const Held> held(int candidate) const;
    [[nodiscard]] bool enter(Node& node);
    [[nodiscard]] bool narrow(Node& node, std::vector<int>& holds);
    [[nodiscard]] bool odd(const Node& node);
    [[nodiscard]] bool probe(const Node& top);
    [[nodiscard]] bool relax(Node& node);
    [[nodiscard]] Node child_of(const Node& node, int candidate) const;
    void finish(const Node& node);

    const CutList& list_;
    std::vector<Candidate> candidates_;
    std::vector<Held> held_;         ///< of all candidates, one after the other
    std::vector<std::size_t> first_; ///< of each candidate in held_, and the end
    std::vector<double> prices_;
    std::int64_t most_cost_;
    Master master_;
    int first_column_ = 0;
    std::vector<Node> path_;
    State state_ = State::looking;
    Bars plan_;
    long long work_ = 0;
};

} // namespace treadle::cutting
