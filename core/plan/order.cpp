// Order of work: all that can be done in one set-up is done, then the next is chosen.
//
// Precedence inside a part: cut, notch and punch in the flat before bends (a bent leg is in the way
// of every stop), bends in their own order, ends shaped last.
// Choice of the next set-up, greedy: one whose every stroke of the job is ready comes first (it
// never has to come back), then the earlier kind of work, then the larger.

#include "plan/checks.h"

#include <cmath>
#include <map>
#include <tuple>

namespace treadle::plan {

namespace {

/// Cut 0, notch 1, punch 2, bend 3, saddle 4.
int phase_of(const job::Operation& operation) {
    if (std::holds_alternative<job::Cut>(operation))
        return 0;
    if (std::holds_alternative<job::Notch>(operation))
        return 1;
    if (std::holds_alternative<job::Punch>(operation))
        return 2;
    if (std::holds_alternative<job::Bend>(operation))
        return 3;
    return 4;
}

long long micrometres(Length length) {
    return std::llround(quantity::to_millimetres(length) * 1000.0);
}

using Key = std::tuple<int,
                       int,
                       int,
                       int,
                       int,
                       int,
                       int,
                       int,
                       int,
                       long long,
                       long long,
                       long long,
                       long long,
                       long long>;

/// Two operations with the same key need no change between them. Sizes stand beside the indices so
/// that a tool still to be bought counts as one too.
Key key_of(int phase, const Tooling& t) {
    return {phase,
            t.station,
            t.attachment,
            t.holder,
            t.punch,
            t.die,
            t.vee,
            t.brake_punch,
            static_cast<int>(t.punch_size.shape),
            micrometres(t.punch_size.size),
            micrometres(t.punch_size.size2),
            micrometres(t.opening),
            micrometres(t.saddle_run),
            std::llround(t.mitre.in_degrees() * 1000.0)};
}

struct Node {
    int part = 0;
    int operation = 0;
    std::size_t group = 0;
};

struct Group {
    Tooling tools;
    int phase = 0;
    std::size_t left = 0;    ///< nodes not yet done
    std::vector<Node> ready; ///< nodes that may be done now
};

/// The operations of one part that may be done at the same stage.
using Stage = std::vector<Node>;

struct PartQueue {
    std::vector<Stage> stages;
    std::size_t at = 0;
    std::size_t open = 0; ///< nodes of the current stage not yet done
};

class Orderer {
public:
    explicit Orderer(const Plan& plan) : plan_(plan) {
        queues_.resize(plan.parts.size());
        for (std::size_t p = 0; p < plan.parts.size(); ++p)
            if (plan.parts[p]->outcome <= Outcome::fits_up_to)
                queue(static_cast<int>(p));
        for (std::size_t p = 0; p < queues_.size(); ++p)
            release(queues_[p]);
    }

    std::vector<SetUp> run() {
        std::vector<SetUp> order;
        for (std::size_t group = next(); group != k_no_group; group = next()) {
            SetUp set_up;
            set_up.tools = groups_[group].tools;
            while (!groups_[group].ready.empty()) { // doing a bend may make the next one ready
                std::vector<Node> now;
                now.swap(groups_[group].ready);
                for (const Node& node : now)
                    do_one(node, set_up);
            }
            order.push_back(std::move(set_up));
        }
        return order;
    }

private:
    static constexpr std::size_t k_no_group = static_cast<std::size_t>(-1);

    void queue(int part) {
        const PartPlan& planned = *plan_.parts[static_cast<std::size_t>(part)];
        std::map<int, Stage> by_phase;
        std::vector<Stage> bends;
        for (std::size_t i = 0; i < planned.operations.size(); ++i) {
            const int phase = phase_of(planned.part->operations[i]);
            const Key key = key_of(phase, planned.operations[i].tools);
            const auto [known, fresh] = index_.try_emplace(key, groups_.size());
            if (fresh)
                groups_.push_back({planned.operations[i].tools, phase, 0, {}});
            ++groups_[known->second].left;
            const Node node{part, static_cast<int>(i), known->second};
            if (phase == 3)
                bends.push_back({node});
            else
                by_phase[phase].push_back(node);
        }
        sort_bends(planned, bends);
        PartQueue& queue = queues_[static_cast<std::size_t>(part)];
        for (auto& [phase, stage] : by_phase) {
            if (phase > 3)
                queue.stages.insert(queue.stages.end(), bends.begin(), bends.end());
            queue.stages.push_back(std::move(stage));
        }
        if (by_phase.empty() || by_phase.rbegin()->first < 3)
            queue.stages.insert(queue.stages.end(), bends.begin(), bends.end());
    }

    /// As the part's own order of bends says, where there is one.
    static void sort_bends(const PartPlan& part, std::vector<Stage>& bends) {
        if (!part.bends || part.bends->steps.size() != bends.size())
            return;
        const std::vector<Stage> along = std::move(bends);
        bends.clear();
        for (const BendStep& step : part.bends->steps)
            for (const Stage& stage : along)
                if (stage.front().operation == step.bend)
                    bends.push_back(stage);
    }

    void release(PartQueue& queue) {
        if (queue.at >= queue.stages.size())
            return;
        const Stage& stage = queue.stages[queue.at];
        queue.open = stage.size();
        for (const Node& node : stage)
            groups_[node.group].ready.push_back(node);
    }

    void do_one(const Node& node, SetUp& set_up) {
        const PartPlan& planned = *plan_.parts[static_cast<std::size_t>(node.part)];
        const int pieces = planned.part->count;
        const int strokes =
            pieces * planned.operations[static_cast<std::size_t>(node.operation)].strokes;
        set_up.steps.push_back({node.part, node.operation, pieces, strokes});
        set_up.strokes += strokes;
        --groups_[node.group].left;
        PartQueue& queue = queues_[static_cast<std::size_t>(node.part)];
        if (--queue.open == 0) {
            ++queue.at;
            release(queue);
        }
    }

    [[nodiscard]] std::size_t next() const {
        std::size_t best = k_no_group;
        const auto rank = [&](std::size_t i) {
            const Group& group = groups_[i];
            const bool whole = group.ready.size() == group.left;
            return std::tuple{
                whole ? 0 : 1, group.phase, -static_cast<long long>(group.ready.size())};
        };
        for (std::size_t i = 0; i < groups_.size(); ++i)
            if (!groups_[i].ready.empty() && (best == k_no_group || rank(i) < rank(best)))
                best = i;
        return best;
    }

    const Plan& plan_;
    std::map<Key, std::size_t> index_;
    std::vector<Group> groups_;
    std::vector<PartQueue> queues_;
};

} // namespace

std::vector<SetUp> work_order(const Plan& plan) { return Orderer(plan).run(); }

} // namespace treadle::plan
