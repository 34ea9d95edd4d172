// Order of work: all that can be done in one set-up is done, then the next is chosen.
//
// Choice of the next set-up, greedy: one whose every stroke of the job is ready comes first (it
// never has to come back), then the earlier kind of work, then the larger. Where that needs more
// than one set-up for each group of work, a shorter order is searched for (order_groups.h).

#include "plan/checks.h"
#include "plan/order_groups.h"

#include <algorithm>
#include <functional>
#include <queue>
#include <tuple>

namespace treadle::plan {

namespace {

struct Node {
    int part = 0;
    int operation = 0;
    int group = 0;
};

struct Group {
    const WorkItem* like = nullptr;
    const Tooling* tools = nullptr;
    std::size_t left = 0;    ///< nodes not yet done
    std::vector<Node> ready; ///< nodes that may be done now
};

/// Finds the group of a key: open addressing, sized once.
class Index {
public:
    explicit Index(std::size_t most) {
        while (slots_.size() < 2 * most)
            slots_.resize(slots_.size() * 2);
        std::fill(slots_.begin(), slots_.end(), -1);
    }
    int find_or_add(const WorkItem& item, const Tooling& tools, std::vector<Group>& groups) {
        for (std::size_t at = item.hash & (slots_.size() - 1);;
             at = (at + 1) & (slots_.size() - 1)) {
            if (slots_[at] < 0) {
                slots_[at] = static_cast<int>(groups.size());
                groups.push_back({&item, &tools, 0, {}});
            }
            const Group& group = groups[static_cast<std::size_t>(slots_[at])];
            if (group.like->hash == item.hash && group.like->key == item.key)
                return slots_[at];
        }
    }

private:
    std::vector<int> slots_ = std::vector<int>(16);
};

class Orderer {
public:
    explicit Orderer(const Plan& plan) : plan_(plan), first_(plan.parts.size() + 1) {
        std::size_t all = 0;
        for (const auto& part : plan.parts)
            all += part->work.size();
        Index index(all);
        nodes_.reserve(all);
        for (std::size_t p = 0; p < plan.parts.size(); ++p) {
            const PartPlan& part = *plan.parts[p];
            first_[p] = nodes_.size();
            for (const WorkItem& item : part.work) {
                const auto operation = static_cast<std::size_t>(item.operation);
                const int group =
                    index.find_or_add(item, part.operations[operation].tools, groups_);
                nodes_.push_back({static_cast<int>(p), item.operation, group});
            }
        }
        first_.back() = nodes_.size();
        start();
    }

    [[nodiscard]] std::size_t group_count() const { return groups_.size(); }

    std::vector<SetUp> greedy() {
        std::vector<SetUp> order;
        for (std::size_t g = 0; g < groups_.size(); ++g)
            offer(static_cast<int>(g));
        while (!offers_.empty()) {
            const Offer best = offers_.top();
            offers_.pop();
            const Group& group = groups_[static_cast<std::size_t>(std::get<3>(best))];
            if (!group.ready.empty() && best == offer_of(std::get<3>(best)))
                order.push_back(visit(std::get<3>(best), true));
        }
        return order;
    }

    /// The visits as they are told.
    std::vector<SetUp> follow(const std::vector<int>& visits) {
        start();
        std::vector<SetUp> order;
        order.reserve(visits.size());
        for (const int group : visits)
            order.push_back(visit(group, false));
        return order;
    }

    [[nodiscard]] std::vector<WorkGroup> traits() const {
        std::vector<WorkGroup> traits;
        for (const Group& group : groups_)
            traits.push_back({group.like->kind, group.tools->station});
        return traits;
    }
    [[nodiscard]] std::vector<int> visits() const { return visits_; }
    /// Groups that each part runs through.
    [[nodiscard]] std::vector<Route> routes() const {
        std::vector<Route> routes;
        for (std::size_t p = 0; p < plan_.parts.size(); ++p) {
            const std::vector<WorkItem>& work = plan_.parts[p]->work;
            Route route;
            for (std::size_t i = 0; i < work.size(); ++i) {
                if (i == 0 || work[i].stage != work[i - 1].stage)
                    route.emplace_back();
                const int group = nodes_[first_[p] + i].group;
                if (std::find(route.back().begin(), route.back().end(), group) ==
                    route.back().end())
                    route.back().push_back(group);
            }
            if (!route.empty())
                routes.push_back(std::move(route));
        }
        std::sort(routes.begin(), routes.end());
        routes.erase(std::unique(routes.begin(), routes.end()), routes.end());
        return routes;
    }

private:
    /// Smallest first: comes back or not, kind, how much is ready, group.
    using Offer = std::tuple<int, int, long long, int>;

    [[nodiscard]] Offer offer_of(int index) const {
        const Group& group = groups_[static_cast<std::size_t>(index)];
        return {group.ready.size() == group.left ? 0 : 1,
                group.like->kind,
                -static_cast<long long>(group.ready.size()),
                index};
    }
    /// Offers are not taken back: one that no longer holds is passed over.
    void offer(int index) {
        if (!groups_[static_cast<std::size_t>(index)].ready.empty())
            offers_.push(offer_of(index));
    }

    void start() {
        at_.assign(first_.begin(), first_.end() - 1);
        open_.assign(plan_.parts.size(), 0);
        begun_.assign(plan_.parts.size(), false);
        visits_.clear();
        for (Group& group : groups_)
            group = {group.like, group.tools, 0, {}};
        for (const Node& node : nodes_)
            ++groups_[static_cast<std::size_t>(node.group)].left;
        for (std::size_t p = 0; p < plan_.parts.size(); ++p)
            release(p, false);
    }

    void release(std::size_t part, bool offered) {
        const std::vector<WorkItem>& work = plan_.parts[part]->work;
        const std::size_t first = at_[part];
        std::size_t i = first;
        for (; i < first_[part + 1]; ++i) {
            if (work[i - first_[part]].stage != work[first - first_[part]].stage)
                break;
            groups_[static_cast<std::size_t>(nodes_[i].group)].ready.push_back(nodes_[i]);
            if (offered)
                changed_.push_back(nodes_[i].group);
        }
        open_[part] = i - first;
    }

    SetUp visit(int index, bool offered) {
        Group& group = groups_[static_cast<std::size_t>(index)];
        SetUp set_up;
        set_up.tools = *group.tools;
        set_up.steps.reserve(group.ready.size());
        visits_.push_back(index);
        while (!group.ready.empty()) { // doing a bend may make the next one ready
            now_.clear();
            now_.swap(group.ready);
            for (const Node& node : now_)
                do_one(node, set_up, offered);
        }
        std::sort(changed_.begin(), changed_.end());
        changed_.erase(std::unique(changed_.begin(), changed_.end()), changed_.end());
        for (const int other : changed_)
            offer(other);
        changed_.clear();
        return set_up;
    }

    void do_one(const Node& node, SetUp& set_up, bool offered) {
        const auto part = static_cast<std::size_t>(node.part);
        const PartPlan& planned = *plan_.parts[part];
        const int pieces = planned.part->count;
        const int strokes =
            pieces * planned.operations[static_cast<std::size_t>(node.operation)].strokes;
        const bool begins = !begun_[part];
        begun_[part] = true;
        set_up.steps.push_back({node.part, node.operation, pieces, strokes, begins});
        set_up.strokes += strokes;
        --groups_[static_cast<std::size_t>(node.group)].left;
        if (--open_[part] != 0)
            return;
        const std::vector<WorkItem>& work = plan_.parts[part]->work;
        const int stage = work[at_[part] - first_[part]].stage;
        while (at_[part] < first_[part + 1] && work[at_[part] - first_[part]].stage == stage)
            ++at_[part];
        release(part, offered);
    }

    const Plan& plan_;
    std::vector<std::size_t> first_; ///< first node of every part, and the end
    std::vector<Node> nodes_;        ///< part after part, stage after stage
    std::vector<Group> groups_;
    std::vector<std::size_t> at_; ///< by part: first node of the stage at hand
    std::vector<std::size_t> open_;
    std::vector<bool> begun_;
    std::vector<int> visits_;
    std::vector<Node> now_;
    std::vector<int> changed_; ///< groups with something more ready
    std::priority_queue<Offer, std::vector<Offer>, std::greater<>> offers_;
};

} // namespace

void put_in_order(Plan& plan) {
    Orderer orderer(plan);
    plan.order = orderer.greedy();
    plan.least_set_ups = static_cast<int>(orderer.group_count()); // each group is set up once
    if (plan.order.size() > orderer.group_count()) {
        const Visits fewest = fewest_visits(orderer.traits(), orderer.routes(), orderer.visits());
        plan.least_set_ups = fewest.least;
        if (fewest.order.size() < plan.order.size())
            plan.order = orderer.follow(fewest.order);
    }
    plan.order_proven = static_cast<int>(plan.order.size()) == plan.least_set_ups;
}

} // namespace treadle::plan
