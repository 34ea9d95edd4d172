// The operations of one part as work: in which stage, and what has to be set up for each.
//
// Precedence inside a part: cut, notch and punch in the flat before bends (a bent leg is in the way
// of every stop), bends in their order, ends shaped last.

#include "base/stable_sort.h"
#include "plan/checks.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace treadle::plan {

namespace {

constexpr int k_bend_kind = 3;

/// Cut 0, notch 1, punch 2, bend 3, saddle 4.
int kind_of(const job::Operation& operation) {
    if (std::holds_alternative<job::Cut>(operation))
        return 0;
    if (std::holds_alternative<job::Notch>(operation))
        return 1;
    if (std::holds_alternative<job::Punch>(operation))
        return 2;
    if (std::holds_alternative<job::Bend>(operation))
        return k_bend_kind;
    return 4;
}

std::int64_t micrometres(Length length) {
    return std::llround(quantity::to_millimetres(length) * 1000.0);
}

/// Sizes stand beside the indices so that a tool still to be bought counts as one too.
SetUpKey key_of(int kind, const Tooling& t) {
    return {kind,
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

/// FNV-1a over whole numbers instead of bytes; only for a table in memory.
std::uint64_t hash_of(const SetUpKey& key) {
    std::uint64_t hash = 14695981039346656037ull;
    for (const std::int64_t value : key) {
        hash = (hash ^ static_cast<std::uint64_t>(value)) * 1099511628211ull;
        hash ^= hash >> 29;
    }
    return hash;
}

/// By operation: when a bend's turn comes, where an order was found; else as they stand.
std::vector<int> bend_turns(const PartPlan& plan) {
    std::vector<int> turn(plan.operations.size());
    if (plan.bends)
        for (std::size_t i = 0; i < plan.bends->steps.size(); ++i)
            turn[static_cast<std::size_t>(plan.bends->steps[i].bend)] = static_cast<int>(i);
    return turn;
}

} // namespace

void list_work(PartPlan& plan) {
    plan.work.clear();
    if (plan.outcome > Outcome::fits_up_to)
        return;
    plan.work.reserve(plan.operations.size());
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        const int kind = kind_of(plan.part->operations[i]);
        const SetUpKey key = key_of(kind, plan.operations[i].tools);
        plan.work.push_back({static_cast<int>(i), 0, kind, key, hash_of(key)});
    }
    const std::vector<int> turn = bend_turns(plan);
    const auto rank = [&](const WorkItem& item) {
        return std::pair{item.kind, turn[static_cast<std::size_t>(item.operation)]};
    };
    base::stable_sort(plan.work,
                      [&](const WorkItem& a, const WorkItem& b) { return rank(a) < rank(b); });
    for (std::size_t i = 1; i < plan.work.size(); ++i) {
        const WorkItem& before = plan.work[i - 1];
        const bool same = before.kind == plan.work[i].kind && before.kind != k_bend_kind;
        plan.work[i].stage = before.stage + (same ? 0 : 1);
    }
}

} // namespace treadle::plan
