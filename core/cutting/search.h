// The fewest bars, and the proof that there are no fewer.
//
// Method   longest first and best fit; the linear program (relaxation.h) for the bound; plans from
//          it by cutting what it cuts whole, then what it cuts most, and solving again, the last
//          bars by the worth of pieces (worth_fill.h) or, where nearly all must be full, by trying
//          (last_bars.h); the end of a hard case among the few patterns left (endgame.h)
// Valid    any list that cut_list() gives. Work is counted, not timed: the same list and the same
//          work make the same plan on any machine. Can be stopped after any slice and run on.

#pragma once

#include <cstdint>
#include <memory>
#include <optional>

#include "cutting/certificate.h"
#include "cutting/cut_list.h"
#include "cutting/endgame.h"
#include "cutting/first_fit.h"
#include "cutting/last_bars.h"
#include "cutting/relaxation.h"
#include "cutting/worth_fill.h"

namespace treadle::cutting {

class Search {
public:
    explicit Search(CutList list);
    Search(const Search&) = delete;
    Search& operator=(const Search&) = delete;

    /// Works on for about this much: one unit is about a nanosecond on a desk machine of 2020.
    void run(long long work);

    [[nodiscard]] bool done() const { return phase_ == Phase::done; }
    /// A plan is there. None: the stock does not reach, or nothing was run yet.
    [[nodiscard]] bool has_plan() const { return has_plan_; }
    /// No plan costs less than the best one.
    [[nodiscard]] bool proven() const { return has_plan_ && bound_ >= cost_; }
    [[nodiscard]] const CutList& list() const { return list_; }
    [[nodiscard]] const Bars& best() const { return best_; }
    [[nodiscard]] std::int64_t cost() const { return cost_; }
    [[nodiscard]] std::int64_t bound() const { return bound_; }
    /// Prices that prove certificate_bound(); the rest of the bound comes from the endgame.
    [[nodiscard]] const Certificate& certificate() const { return certificate_; }
    [[nodiscard]] std::int64_t certificate_bound() const { return certificate_bound_; }
    [[nodiscard]] long long work() const;

private:
    enum class Phase { quick, columns, dive, prices, endgame, done };
    struct Node {
        Rest rest;
        Bars bars;
    };
    void step();
    void quick();
    void columns();
    void dive();
    void fill_by_worth();
    void try_last_bars();
    void prices();
    void endgame();
    void offer(const Bars& bars);
    void offer_with_rest(const Node& node);
    void take_certificate(const Certificate& certificate);
    [[nodiscard]] Node root() const;
    [[nodiscard]] std::vector<Candidate> candidates(const std::vector<float>& prices,
                                                    double& budget);
    void fix(Node& node);

    CutList list_;
    Relaxation relaxation_;
    WorthFill worth_fill_;
    LastBars last_bars_;
    Phase phase_ = Phase::quick;
    Bars best_;
    bool has_plan_ = false;
    std::int64_t cost_ = 0;
    std::int64_t bound_ = 0;
    Certificate certificate_;
    std::int64_t certificate_bound_ = 0;
    std::optional<Node> node_; ///< where the dive is
    bool node_is_set_ = false; ///< in the relaxation
    int dives_ = 0;
    std::uint64_t shuffle_ = 1; ///< of the later dives
    std::unique_ptr<Endgame> endgame_;
    long long endgame_work_ = 0; ///< of endgames that are over
    long long endgame_most_ = 0;
    std::int64_t endgame_of_ = -1; ///< cost that one was tried for
    long long other_work_ = 0;
};

} // namespace treadle::cutting
