// Whether the cord and the generator that a shop describes carry its machine: one answer for all of
// the job, because the motor is the same in every set-up.
//
// Running: over 3 % of the voltage lost warns, over 5 % does not fit. At the start: over 15 %
// warns, over 30 % does not fit, before a generator's own dip. A generator gives the locked-rotor
// power. The limits are those of supply/cord.h and supply/generator.h.

#pragma once

#include "equipment/shop.h"
#include "plan/verdict.h"
#include "quantity/working.h"

#include <string>
#include <vector>

namespace treadle::plan {

struct PowerLine {
    Outcome outcome = Outcome::cannot_be_said;
    bool warning = false; ///< fits, but says so
    std::string words;
    std::vector<Working> workings;
};

/// Cord running, cord at the start, generator. What a line lacks is named: "not known: …".
[[nodiscard]] std::vector<PowerLine> check_power(const equipment::PowerSupply& supply);

} // namespace treadle::plan
