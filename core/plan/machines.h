// Of the machines described in the shop: which does the whole job, and what stops the others.
//
// Each is planned for by the same code as the one in use, with the shop's own crib and rules.

#pragma once

#include "plan/plan.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace treadle::plan {

/// The machine in use, then the shop's others.
[[nodiscard]] int machine_count(const equipment::Shop& shop);
/// 0: the one in use, n: other_machines[n - 1].
[[nodiscard]] const equipment::Machine& machine_at(const equipment::Shop& shop, int machine);
/// The shop with machine n put in the place of the one in use.
[[nodiscard]] equipment::Shop shop_with(const equipment::Shop& shop, int machine);

/// Work that a machine does not do for sure.
struct Stop {
    int part = 0;           ///< of the job
    int operation = k_none; ///< k_none: the part's own problem, none of it could be planned
    Outcome outcome = Outcome::does_not_fit;
    /// Decides the outcome; paths in it begin with "machine.", whichever machine was looked at.
    std::optional<Check> deciding;
};

struct MachineAnswer {
    int machine = 0;
    /// Every operation of the job fits with the strongest metal of its grade, and there is work.
    bool does_whole_job = false;
    std::array<int, 4> counts{};        ///< operations by Outcome
    std::optional<double> least_margin; ///< least share of a force or strength left over by a fit
    std::vector<Stop> stops;            ///< in the job's order
};

/// One answer for each machine, the one in use first.
[[nodiscard]] std::vector<MachineAnswer>
compare_machines(const job::Job& job, const equipment::Shop& shop, const job::Catalog& catalog);

/// How many operations came out so.
[[nodiscard]] inline int count_of(const MachineAnswer& answer, Outcome outcome) {
    return answer.counts[static_cast<std::size_t>(outcome)];
}

/// "BP1, Punch 13/16 round: does not fit, force: The strongest of the grade needs …", in the names
/// of the machine that was looked at.
[[nodiscard]] std::string stop_words(const Stop& stop,
                                     const MachineAnswer& answer,
                                     const job::Job& job,
                                     const equipment::Shop& shop);
/// One line: "does the whole job, 12 % to spare where it is tightest", "does not do 3 of 40
/// operations: …" with the worst of its stops.
[[nodiscard]] std::string
machine_words(const MachineAnswer& answer, const job::Job& job, const equipment::Shop& shop);

} // namespace treadle::plan
