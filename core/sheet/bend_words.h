// The order of a part's bends in words, the same on paper and on the page.

#pragma once

#include "plan/plan.h"

#include <string>

namespace treadle::sheet {

/// "turn it: datum face down, far end to the stop".
[[nodiscard]] std::string lies_words(const plan::BendStep& step);
/// "stop 2-3/16 to the outside of leg 2".
[[nodiscard]] std::string stop_words(const plan::BendStep& step, PrintStyle style);
/// Why there is no order; empty when there is one.
[[nodiscard]] std::string no_order_words(const plan::BendSequence& bends,
                                         const equipment::Shop& shop);

} // namespace treadle::sheet
