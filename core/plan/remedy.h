// What would make an operation fit: each answer a changed part, planned by the same code.
//
// Nothing here is promised from a rule of thumb. A change is offered only when plan_part, run on
// the changed part, gives this operation a better verdict and leaves no other operation of the part
// worse: no worse outcome, no new warning, not newly tight. Built on request, so that planning a
// long job costs no more for it.

#pragma once

#include "plan/plan.h"

#include <string>
#include <vector>

namespace treadle::plan {

struct Remedy {
    /// From the least change to the largest.
    enum class Kind {
        certificate, ///< the strength to read on it
        place,       ///< hole moved
        grain,       ///< bend line laid across the rolling direction
        hole,        ///< another punch of the crib
        leg,         ///< bent leg made longer
        square_cut,  ///< mitre left to the saw
        thickness,   ///< thinner stock of the same kind
        grade,       ///< weaker metal of the same family
        elsewhere    ///< drilled or sawn: the operation leaves this machine
    };
    Kind kind = Kind::certificate;
    std::string words; ///< "Punch 15/16 round instead of 1-1/16 round"
    job::Part part;    ///< the changed part, same id
    /// The operation in the changed part; without checks when it has left the machine.
    OperationPlan planned;
    Length blank_length;    ///< of the changed part
    bool new_blank = false; ///< it differs from the one before
    std::string why;        ///< the rule that stood in the way, as it is with the change
};

inline constexpr std::size_t k_most_remedies = 6;

/// Least change first, at most k_most_remedies. None for an operation that fits, and none for one
/// of which nothing can be said: there the missing datum is the answer. `plan` must be the plan of
/// its part with this job, shop and catalogue.
[[nodiscard]] std::vector<Remedy> remedies(const PartPlan& plan,
                                           std::size_t operation,
                                           const job::Job& job,
                                           const equipment::Shop& shop,
                                           const job::Catalog& catalog);

/// "fits, 18 % to spare, blank 7-3/32 in"; "off this machine".
[[nodiscard]] std::string
remedy_result_words(const Remedy& remedy, const equipment::Shop& shop, PrintStyle style);

} // namespace treadle::plan
