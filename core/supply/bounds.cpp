#include "supply/bounds.h"

#include "base/text.h"

#include <cmath>

namespace treadle::supply {

Bounds& Bounds::check(double value, Zero zero, double most, const char* field, const char* unit) {
    if (failed())
        return *this;
    const bool enough = zero == Zero::allowed ? value >= 0.0 : value > 0.0;
    if (!std::isfinite(value))
        fault_ = base::Refusal{field, "This is not a number.", ""};
    else if (!enough)
        fault_ = base::Refusal{field,
                               zero == Zero::allowed ? "This cannot be below zero."
                                                     : "This has to be above zero.",
                               ""};
    else if (value > most)
        fault_ = base::Refusal{field,
                               "This is too large to be meant: check its unit.",
                               "at most " + base::write_short(most, 3) + unit};
    return *this;
}

Bounds& Bounds::voltage(Voltage value, const char* field) {
    return check(quantity::to_volts(value), Zero::refused, 1000.0, field, " V");
}

Bounds& Bounds::current(Current value, const char* field) {
    return check(quantity::to_amperes(value), Zero::refused, 2000.0, field, " A");
}

Bounds& Bounds::power(Power value, const char* field) {
    return check(quantity::to_kilowatts(value), Zero::refused, 1000.0, field, " kW");
}

Bounds& Bounds::mass(Mass value, const char* field) {
    return check(quantity::to_kilograms(value), Zero::refused, 10'000.0, field, " kg");
}

Bounds& Bounds::length(Length value, Length most, const char* field) {
    return check(quantity::to_millimetres(value) / 1000.0,
                 Zero::refused,
                 quantity::to_millimetres(most) / 1000.0,
                 field,
                 " m");
}

Bounds& Bounds::length_or_zero(Length value, Length most, const char* field) {
    return check(quantity::to_millimetres(value) / 1000.0,
                 Zero::allowed,
                 quantity::to_millimetres(most) / 1000.0,
                 field,
                 " m");
}

Bounds& Bounds::angle_or_zero(Angle value, double most, const char* field) {
    return check(quantity::to_degrees(value), Zero::allowed, most, field, " degrees");
}

Bounds& Bounds::number(double value, double most, const char* field) {
    return check(value, Zero::refused, most, field, "");
}

Bounds& Bounds::number_or_zero(double value, double most, const char* field) {
    return check(value, Zero::allowed, most, field, "");
}

} // namespace treadle::supply
