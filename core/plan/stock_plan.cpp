#include "plan/stock_plan.h"

#include "base/stable_sort.h"
#include "plan/stock_bound.h"
#include "plan/stock_leftover.h"
#include "plan/stock_list.h"

#include <algorithm>
#include <tuple>

#include "cutting/problem.h"

namespace treadle::plan {

namespace {

using cutting::Bars;
using cutting::CutAnswer;

/// Ends shorter than this are arithmetic, not metal.
constexpr Length k_no_end = quantity::millimetres(1e-6);

LeftoverRule rule_of(const StockGroup& group) {
    LeftoverRule rule;
    for (const BarKind& kind : group.kinds)
        rule.bar.push_back(usable_steps(group, kind));
    if (group.keep_drop)
        rule.keep = steps_up(*group.keep_drop, group.step);
    return rule;
}

/// Hands the group's pieces out to the lengths of the list, in the order of the plan.
class Pieces {
public:
    explicit Pieces(const StockGroup& group) : of_length_(group.list.size()) {
        for (std::size_t i = 0; i < group.pieces.size(); ++i) {
            const std::int64_t steps = steps_up(group.pieces[i].counted, group.step);
            for (std::size_t l = 0; l < of_length_.size(); ++l)
                if (cutting::own_length(group.list, l) == steps)
                    of_length_[l].push_back({static_cast<int>(i), group.pieces[i].count});
        }
    }

    /// The pieces of as many bars as can be cut alike, `most` at most.
    int take(const cutting::Counts& counts, int most, std::vector<int>& pieces) {
        int alike = most;
        std::vector<std::tuple<std::size_t, std::size_t, int>> taken;
        for (std::size_t l = 0; l < counts.size(); ++l) {
            int open = counts[l];
            for (std::size_t k = 0; open > 0; ++k) {
                const Stack& stack = of_length_[l][k];
                const int here = std::min(open, stack.left);
                if (here == 0)
                    continue;
                pieces.insert(pieces.end(), static_cast<std::size_t>(here), stack.piece);
                taken.emplace_back(l, k, here);
                alike = std::min(alike, stack.left / here);
                open -= here;
            }
        }
        for (const auto& [l, k, here] : taken)
            of_length_[l][k].left -= here * alike;
        return alike;
    }

private:
    struct Stack {
        int piece = 0;
        int left = 0;
    };
    std::vector<std::vector<Stack>> of_length_;
};

/// Running stops: the pieces' own lengths, not those rounded up for the search.
void set_stops(const StockGroup& group, const std::vector<int>& pieces, BarPlan& bar) {
    const BarKind& kind = group.kinds[static_cast<std::size_t>(bar.kind)];
    Length stop = group.trim + group.shared_mitre;
    for (const int index : pieces) {
        const StockPiece& piece = group.pieces[static_cast<std::size_t>(index)];
        if (!bar.cuts.empty())
            stop += group.kerf;
        stop += piece.counted;
        bar.cuts.push_back({index, stop - piece.length, stop, false});
    }
    const Length rest = kind.length - group.trim - stop;
    // Without a kerf, what rounding saved is too little to be cut off.
    const Length saved = group.step * (static_cast<double>(pieces.size()) + 1.0);
    const bool sliver = group.kerf == Length{} && group.least_end > saved && rest < saved;
    bar.cuts.back().last_is_end = rest <= k_no_end || sliver;
    bar.drop =
        bar.cuts.back().last_is_end ? larger(rest, Length{}) : larger(rest - group.kerf, Length{});
    if (bar.drop <= k_no_end)
        bar.drop = Length{};
    bar.kept = group.keep_drop && bar.drop >= *group.keep_drop && !bar.cuts.back().last_is_end;
}

/// Drops first, then long bars, then those with the least left.
void put_in_order(const StockGroup& group, const LeftoverRule& rule, Bars& bars) {
    const auto key = [&](const cutting::CutBars& bar) {
        const auto kind = static_cast<std::size_t>(bar.pattern.stock);
        return std::tuple{
            !group.kinds[kind].drop, bar.pattern.stock, end_of(group.list, rule, bar.pattern)};
    };
    std::sort(bars.begin(), bars.end(), [&](const auto& a, const auto& b) {
        const auto of_a = key(a);
        const auto of_b = key(b);
        return of_a != of_b ? of_a < of_b : a.pattern.counts > b.pattern.counts;
    });
}

void list_bars(const StockGroup& group, const Bars& bars, GroupPlan& plan) {
    Pieces pieces(group);
    std::vector<int> owned;
    for (const BarKind& kind : group.kinds)
        owned.push_back(kind.owned);
    std::vector<KindUse> use(group.kinds.size());
    for (const cutting::CutBars& bar : bars)
        for (int left = bar.times; left > 0;) {
            BarPlan made;
            made.kind = bar.pattern.stock;
            std::vector<int> cut;
            made.times = pieces.take(bar.pattern.counts, left, cut);
            left -= made.times;
            set_stops(group, cut, made);
            const auto kind = static_cast<std::size_t>(made.kind);
            made.pulled = std::min(owned[kind], made.times);
            owned[kind] -= made.pulled;
            use[kind].pull += made.pulled;
            use[kind].buy += made.times - made.pulled;
            (group.kinds[kind].drop ? plan.drops_used : plan.whole_bars) += made.times;
            if (made.kept)
                plan.kept.push_back({made.drop, made.times});
            plan.bars.push_back(std::move(made));
        }
    for (std::size_t k = 0; k < use.size(); ++k) {
        use[k].kind = static_cast<int>(k);
        if (use[k].pull + use[k].buy > 0)
            plan.use.push_back(use[k]);
    }
    base::stable_sort(plan.kept, [](const auto& a, const auto& b) { return a.length > b.length; });
}

StockSums sums_of(const StockGroup& group, const GroupPlan& plan) {
    StockSums sums;
    Length taken;
    Length bought;
    Length kept;
    Length parts; // pieces with shared mitres have their mean length: so they weigh
    sums.price = 0.0;
    for (const KindUse& use : plan.use) {
        const BarKind& kind = group.kinds[static_cast<std::size_t>(use.kind)];
        taken += kind.length * (use.pull + use.buy);
        bought += kind.length * use.buy;
        if (use.buy > 0 && !kind.price)
            sums.price.reset();
        else if (use.buy > 0 && sums.price)
            *sums.price += *kind.price * use.buy;
    }
    for (const KeptDrop& drop : plan.kept)
        kept += drop.length * drop.count;
    for (const StockPiece& piece : group.pieces)
        parts += piece.counted * piece.count;
    if (!group.weight)
        return sums;
    sums.taken = *group.weight * taken;
    sums.bought = *group.weight * bought;
    sums.kept = *group.weight * kept;
    sums.parts = *group.weight * parts;
    sums.scrap = *group.weight * (taken - kept - parts);
    return sums;
}

template <class T>
void add(std::optional<T>& sum, const std::optional<T>& more) {
    if (sum && more)
        sum = *sum + *more;
    else
        sum.reset();
}

bool is_proven(const StockGroup& group, const CutAnswer& answer) {
    return answer.has_plan && raised_bound(group.list, answer.bound, answer.cost) >= answer.cost;
}

CutAnswer answer_for(const StockGroup& group, long long work) {
    constexpr long long k_slice = 5'000'000; // so that a rack that does not reach is soon known
    cutting::Search search(group.list);
    CutAnswer answer;
    do {
        search.run(std::min(k_slice, work - answer.work));
        answer = cutting::answer_of(search);
    } while (!answer.done && !falls_short(group, answer) && !is_proven(group, answer) &&
             answer.work < work);
    return answer;
}

} // namespace

GroupPlan group_plan(const StockGroup& group, const CutAnswer& answer) {
    GroupPlan plan;
    plan.work = answer.work;
    plan.bound = answer.bound;
    if (group.problem)
        return plan;
    plan.has_plan = answer.has_plan && cutting::is_plan(group.list, answer.bars);
    plan.falls_short = !plan.has_plan && falls_short(group, answer);
    plan.done = answer.done || plan.falls_short;
    if (!plan.has_plan)
        return plan;
    const LeftoverRule rule = rule_of(group);
    Bars bars = tidied(group.list, rule, answer.bars);
    TREADLE_EXPECT(cutting::is_plan(group.list, bars));
    put_in_order(group, rule, bars);
    list_bars(group, bars, plan);
    plan.cost = cutting::cost_of(group.list, bars);
    plan.bound = raised_bound(group.list, plan.bound, plan.cost);
    plan.proven = plan.bound >= plan.cost;
    plan.done = plan.done || plan.proven;
    plan.sums = sums_of(group, plan);
    return plan;
}

StockPlan sum_up(std::vector<GroupPlan> groups) {
    StockPlan plan;
    plan.complete = plan.proven = true;
    plan.sums = {Mass{}, Mass{}, Mass{}, Mass{}, Mass{}, 0.0};
    plan.groups = std::move(groups);
    for (const GroupPlan& group : plan.groups) {
        plan.complete = plan.complete && group.has_plan;
        plan.proven = plan.proven && group.proven;
        if (!group.has_plan)
            continue;
        add(plan.sums.taken, group.sums.taken);
        add(plan.sums.bought, group.sums.bought);
        add(plan.sums.parts, group.sums.parts);
        add(plan.sums.kept, group.sums.kept);
        add(plan.sums.scrap, group.sums.scrap);
        add(plan.sums.price, group.sums.price);
    }
    return plan;
}

StockPlan stock_plan(const std::vector<StockGroup>& groups, const std::vector<CutAnswer>& answers) {
    TREADLE_EXPECT(groups.size() == answers.size());
    std::vector<GroupPlan> plans;
    for (std::size_t i = 0; i < groups.size(); ++i)
        plans.push_back(group_plan(groups[i], answers[i]));
    return sum_up(std::move(plans));
}

bool falls_short(const StockGroup& group, const CutAnswer& answer) {
    if (answer.has_plan)
        return false;
    if (answer.done)
        return true;
    std::int64_t all = 0;
    for (const cutting::StockKind& kind : group.list.stock) {
        if (!kind.limited())
            return false;
        all += kind.cost * kind.available;
    }
    return answer.bound > all;
}

std::vector<CutAnswer> stock_answers(const std::vector<StockGroup>& groups, long long work) {
    std::vector<CutAnswer> answers;
    for (const StockGroup& group : groups)
        answers.push_back(group.problem ? CutAnswer{} : answer_for(group, work));
    return answers;
}

} // namespace treadle::plan
