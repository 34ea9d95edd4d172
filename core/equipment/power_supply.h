// What feeds the machine where it stands: motor, cord, generator. What is not known stays empty.

#pragma once

#include "quantity/electrical.h"
#include "quantity/input_limits.h"
#include "quantity/quantity.h"

#include <optional>
#include <string>

namespace treadle::equipment {

struct PowerSupply {
    std::optional<Power> motor;     ///< rated, from its plate
    std::optional<Voltage> voltage; ///< the motor is wired for
    int phases = 1;                 ///< 1 or 3
    std::string code;               ///< letter of the locked rotor; empty: not known
    std::string cord;               ///< size of its wires, "10 AWG"; empty: not known
    std::optional<Length> cord_length;
    std::optional<ApparentPower> generator; ///< what it gives at a motor's start; none: mains
};

[[nodiscard]] quantity::Fault supply_fault(const PowerSupply& supply);

} // namespace treadle::equipment
