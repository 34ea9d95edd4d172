// The working behind a planned figure, built on request from the same inputs.

#pragma once

#include "plan/plan.h"
#include "quantity/working.h"

#include <vector>

namespace treadle::plan {

/// Every formula that stands behind one operation's verdict, choice and figures, in order.
[[nodiscard]] std::vector<Working> explain_operation(const PartPlan& plan,
                                                     std::size_t operation,
                                                     const job::Job& job,
                                                     const equipment::Shop& shop,
                                                     const job::Catalog& catalog);
/// Blank length and mass of a part.
[[nodiscard]] std::vector<Working> explain_part(const PartPlan& plan,
                                                const job::Job& job,
                                                const equipment::Shop& shop,
                                                const job::Catalog& catalog);

} // namespace treadle::plan
