// write_exact of print.h: text for files that reads back to the identical value.
//
// Every short form is tried with the very arithmetic the reader uses and taken only when it comes
// back to the last bit, so a rounded value can never be saved by accident.

#include "base/text.h"
#include "quantity/print.h"

#include <array>
#include <cmath>
#include <optional>

namespace treadle::quantity {

namespace {

constexpr std::array<double, 5> k_powers{1.0, 10.0, 100.0, 1e3, 1e4};

/// At most four decimals in the unit that `make` makes, if that is the very same value.
template <class Q, class Make>
std::optional<std::string> short_form(Q value, double in_unit, Make make, const char* unit) {
    for (const double power : k_powers) {
        const double scaled = std::round(in_unit * power);
        if (!(std::fabs(scaled) < 1e12))
            return std::nullopt;
        if (make(scaled / power) == value)
            return base::write_number(scaled / power) + unit;
    }
    return std::nullopt;
}

std::optional<std::string> inch_fraction(Length value) {
    const double count = std::round(to_inches(value) * 64.0);
    if (!(std::fabs(count) < 1e12) || inches(count / 64.0) != value)
        return std::nullopt;
    return print(value, PrintStyle{UnitSystem::inch, 64});
}

} // namespace

std::string write_exact(Length value, UnitSystem preferred) {
    // 3/8 in is 9.524999999999999 mm to the last bit: the fraction is the readable form of it in a
    // metric file too.
    if (preferred == UnitSystem::metric)
        if (auto text = short_form(value, to_millimetres(value), millimetres, " mm"))
            return *text;
    if (auto text = inch_fraction(value))
        return *text;
    if (preferred == UnitSystem::inch)
        if (auto text = short_form(value, to_inches(value), inches, " in"))
            return *text;
    return base::write_number(to_millimetres(value)) + " mm";
}

std::string write_exact(Force value, UnitSystem preferred) {
    if (preferred == UnitSystem::inch) {
        if (auto text = short_form(value, to_us_tons(value), us_tons, " ton"))
            return *text;
        if (auto text = short_form(value, to_pounds_force(value), pounds_force, " lbf"))
            return *text;
    }
    if (auto text = short_form(value, to_kilonewtons(value), kilonewtons, " kN"))
        return *text;
    return base::write_number(to_newtons(value)) + " N";
}

std::string write_exact(Stress value, UnitSystem preferred) {
    if (preferred == UnitSystem::inch)
        if (auto text = short_form(value, to_ksi(value), ksi, " ksi"))
            return *text;
    return base::write_number(to_megapascals(value)) + " MPa";
}

std::string write_exact(Mass value, UnitSystem preferred) {
    if (preferred == UnitSystem::inch)
        if (auto text = short_form(value, to_pounds(value), pounds, " lb"))
            return *text;
    return base::write_number(to_kilograms(value)) + " kg";
}

std::string write_exact(Density value) {
    if (auto text = short_form(
            value, to_kilograms_per_cubic_metre(value), kilograms_per_cubic_metre, " kg/m3"))
        return *text;
    return base::write_number(value.in_base()) + " kg/mm3";
}

std::string write_exact(Angle value) { return base::write_number(to_degrees(value)) + " deg"; }

} // namespace treadle::quantity
