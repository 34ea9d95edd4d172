// The first fault of several: what a formula of this room refuses before it looks at its inputs.

#pragma once

#include "quantity/input_limits.h"

#include <initializer_list>

namespace treadle::layout {

[[nodiscard]] inline quantity::Fault first_fault(std::initializer_list<quantity::Fault> faults) {
    for (const quantity::Fault& fault : faults)
        if (fault)
            return fault;
    return std::nullopt;
}

/// a < b by more than the rounding of a unit conversion.
[[nodiscard]] constexpr bool clearly_less(Length a, Length b) { return a < b - b * 1e-9; }

} // namespace treadle::layout
