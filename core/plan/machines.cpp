#include "plan/machines.h"

#include "base/contracts.h"
#include "base/text.h"
#include "plan/words.h"

#include <cmath>

namespace treadle::plan {

namespace {

const Check* deciding(const OperationPlan& plan) {
    return plan.deciding == k_none ? nullptr
                                   : &plan.checks[static_cast<std::size_t>(plan.deciding)];
}

/// A part that could not be planned says so once, not at each of its operations.
bool said_by_part(const PartPlan& part, const Check* check) {
    return part.problem && check != nullptr && check->rule == Rule::grade &&
           check->missing == part.problem->field;
}

void add_part(MachineAnswer& answer, int index, const PartPlan& part) {
    const std::size_t before = answer.stops.size();
    for (std::size_t i = 0; i < part.operations.size(); ++i) {
        const OperationPlan& operation = part.operations[i];
        ++answer.counts[static_cast<std::size_t>(operation.outcome)];
        const Check* check = deciding(operation);
        if (operation.outcome == Outcome::fits) {
            if (check != nullptr && check->by_strength &&
                !(answer.least_margin && *answer.least_margin <= check->margin))
                answer.least_margin = check->margin;
            continue;
        }
        if (said_by_part(part, check))
            continue;
        answer.stops.push_back({index,
                                static_cast<int>(i),
                                operation.outcome,
                                check != nullptr ? std::optional(*check) : std::nullopt});
    }
    // A blank without its bends is no news once the bend has been named.
    if (part.problem && answer.stops.size() == before) {
        Check check;
        check.outcome = Outcome::cannot_be_said;
        check.missing = part.problem->field;
        check.said = part.problem->reason;
        answer.stops.push_back({index, k_none, Outcome::cannot_be_said, check});
    }
}

std::string counted(int count, int all) {
    return std::to_string(count) + " of " + std::to_string(all) +
           (all == 1 ? " operation" : " operations");
}

} // namespace

int machine_count(const equipment::Shop& shop) {
    return 1 + static_cast<int>(shop.other_machines.size());
}

const equipment::Machine& machine_at(const equipment::Shop& shop, int machine) {
    TREADLE_EXPECT(machine >= 0 && machine < machine_count(shop));
    return machine == 0 ? shop.machine : shop.other_machines[static_cast<std::size_t>(machine - 1)];
}

equipment::Shop shop_with(const equipment::Shop& shop, int machine) {
    equipment::Shop changed = shop;
    if (machine != 0)
        std::swap(changed.machine,
                  changed.other_machines.at(static_cast<std::size_t>(machine - 1)));
    return changed;
}

std::vector<MachineAnswer>
compare_machines(const job::Job& job, const equipment::Shop& shop, const job::Catalog& catalog) {
    std::vector<MachineAnswer> answers;
    for (int machine = 0; machine < machine_count(shop); ++machine) {
        const equipment::Shop used = shop_with(shop, machine);
        MachineAnswer answer;
        answer.machine = machine;
        for (std::size_t i = 0; i < job.parts.size(); ++i)
            add_part(answer, static_cast<int>(i), plan_part(job.parts[i], job, used, catalog));
        answer.does_whole_job = answer.stops.empty() && count_of(answer, Outcome::fits) > 0;
        answers.push_back(std::move(answer));
    }
    return answers;
}

std::string stop_words(const Stop& stop,
                       const MachineAnswer& answer,
                       const job::Job& job,
                       const equipment::Shop& shop) {
    const job::Part& part = *job.parts[static_cast<std::size_t>(stop.part)];
    OperationPlan alone; // the deciding check is the one with the least limit: it says it all
    alone.outcome = stop.outcome;
    if (stop.deciding)
        alone.checks = {*stop.deciding};
    std::string text = part.mark;
    if (stop.operation != k_none)
        text += ", " + operation_title(part, static_cast<std::size_t>(stop.operation), job.style);
    text += ": " + verdict_words(alone, job.style);
    if (stop.deciding)
        text += stop.operation == k_none ? ": " + sentence(*stop.deciding, job.style)
                                         : std::string(", ") + rule_words(stop.deciding->rule) +
                                               ": " + sentence(*stop.deciding, job.style);
    if (answer.machine == 0 || text.find("machine.") == std::string::npos)
        return with_names(std::move(text), shop);
    return with_names(std::move(text), shop_with(shop, answer.machine));
}

std::string
machine_words(const MachineAnswer& answer, const job::Job& job, const equipment::Shop& shop) {
    if (answer.does_whole_job)
        return answer.least_margin
                   ? "does the whole job, " +
                         base::write_fixed(std::floor(*answer.least_margin * 100.0 + 1e-9), 0) +
                         " % to spare where it is tightest"
                   : "does the whole job";
    int all = 0;
    for (const int count : answer.counts)
        all += count;
    const Stop* worst = nullptr;
    for (const Stop& stop : answer.stops)
        if (worst == nullptr || worst->outcome < stop.outcome)
            worst = &stop;
    if (worst == nullptr)
        return "no work here";
    const std::string count = counted(count_of(answer, worst->outcome), all);
    const std::string why = stop_words(*worst, answer, job, shop);
    switch (worst->outcome) {
    case Outcome::fits_up_to:
        return "does " + count + " only with a certificate. " + why;
    case Outcome::cannot_be_said:
        return "cannot be said for " + count + ". " + why;
    default:
        return "does not do " + count + ". " + why;
    }
}

} // namespace treadle::plan
