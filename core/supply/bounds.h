// What every formula of this room refuses, said once: nothing, less than nothing, not a number,
// absurd. The most allowed is far over anything that stands beside a portable machine, so a larger
// value is a slip in the unit (program rule, no source).

#pragma once

#include "base/result.h"
#include "quantity/electrical.h"
#include "quantity/quantity.h"

#include <optional>

namespace treadle::supply {

/// Keeps the first fault found; later questions on failed bounds are not asked.
class Bounds {
public:
    Bounds& voltage(Voltage value, const char* field); ///< up to 1000 V
    Bounds& current(Current value, const char* field); ///< up to 2000 A
    Bounds& power(Power value, const char* field);     ///< up to 1000 kW
    Bounds& mass(Mass value, const char* field);       ///< up to 10 t
    /// Above zero and up to `most`.
    Bounds& length(Length value, Length most, const char* field);
    Bounds& length_or_zero(Length value, Length most, const char* field);
    /// From zero to `most` degrees, both allowed.
    Bounds& angle_or_zero(Angle value, double most, const char* field);
    /// Above zero and up to `most`.
    Bounds& number(double value, double most, const char* field);
    Bounds& number_or_zero(double value, double most, const char* field);

    [[nodiscard]] bool failed() const { return fault_.has_value(); }
    [[nodiscard]] const base::Refusal& refusal() const {
        TREADLE_EXPECT(failed());
        return *fault_;
    }

private:
    enum class Zero { refused, allowed };
    Bounds& check(double value, Zero zero, double most, const char* field, const char* unit);

    std::optional<base::Refusal> fault_;
};

} // namespace treadle::supply
