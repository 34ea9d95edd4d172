// What every formula of this room refuses, said once: nothing, less than nothing, not a number,
// absurd.
//
// Bounds    lengths 100 m, stresses 5000 MPa, moduli 1000 GPa, forces 1 000 000 kN: far over any
//           metal or machine, so a larger value is a slip in the unit (program rule, no source)
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"

#include <optional>

namespace treadle::process {

/// Keeps the first fault found; later questions on a failed check are not asked.
class InputCheck {
public:
    InputCheck& length(Length value, const char* field);
    InputCheck& length_or_zero(Length value, const char* field);
    InputCheck& stress(Stress value, const char* field);
    /// An elastic modulus: up to 1000 GPa.
    InputCheck& modulus(Stress value, const char* field);
    InputCheck& force(Force value, const char* field);
    /// Over `low` and below `high` degrees.
    InputCheck& angle_within(Angle value, double low, double high, const char* field);
    /// Over zero, up to and with `most`.
    InputCheck& ratio(double value, double most, const char* field);

    [[nodiscard]] bool failed() const { return fault_.has_value(); }
    [[nodiscard]] const base::Refusal& refusal() const {
        TREADLE_EXPECT(failed());
        return *fault_;
    }

private:
    void
    bounded(double value, bool zero_allowed, double most, const char* field, const char* bound);

    std::optional<base::Refusal> fault_;
};

/// a < b by more than the rounding of a unit conversion (1e-9 of b): 1-1/2 in is not below 6 x 1/4.
[[nodiscard]] bool clearly_below(Length a, Length b);

} // namespace treadle::process
