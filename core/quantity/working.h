// A working: a formula's card with the values put in.
//
// Built on request only: planning ten thousand operations builds no text.

#pragma once

#include "base/formula_card.h"
#include "quantity/print.h"

#include <string>
#include <vector>

namespace treadle::quantity {

struct WorkingValue {
    std::string symbol; ///< a symbol of the card
    AnyQuantity value;
};

struct Working {
    const base::FormulaCard* card = nullptr;
    std::vector<WorkingValue> values;
    WorkingValue result;
    std::string
        note; ///< which rule was used where sources disagree, validity left, …; may be empty
};

} // namespace treadle::quantity

namespace treadle {
using quantity::Working;
} // namespace treadle
