// Quantities as text: in the shop's units, rounded as the trade does.
//
// Fractions: reduced, whole and fraction joined by a dash (1-3/8), feet only where asked for.
// Rounding names a direction; `against_us` is up for what the metal demands and for stock we need,
// down for what a machine offers: the caller says which by up or down.

#pragma once

#include "quantity/electrical.h"
#include "quantity/quantity.h"

#include <string>
#include <variant>

namespace treadle::quantity {

enum class UnitSystem { inch, metric };
enum class Rounding { nearest, up, down };

/// How a shop wants its figures.
struct PrintStyle {
    UnitSystem system = UnitSystem::inch;
    int denominator = 16; ///< finest fraction of an inch: 2, 4, 8, 16, 32 or 64
    bool both = false;    ///< on paper: the other system behind it, in brackets
    friend bool operator==(const PrintStyle& a, const PrintStyle& b) {
        return a.system == b.system && a.denominator == b.denominator && a.both == b.both;
    }
};
/// Each by itself: the style's own system, and the other one.
[[nodiscard]] PrintStyle one_system(PrintStyle style);
[[nodiscard]] PrintStyle other_system(PrintStyle style);

/// A ratio shown as a plain number, e.g. a K factor.
struct Number {
    double value = 0.0;
    int decimals = 3;
};
/// A share shown in per cent.
struct Share {
    double value = 0.0;
};

using AnyQuantity = std::variant<Length,
                                 Area,
                                 Force,
                                 Stress,
                                 Energy,
                                 Mass,
                                 MassPerLength,
                                 Angle,
                                 Number,
                                 Share,
                                 Voltage,
                                 Current,
                                 ApparentPower,
                                 Power,
                                 Resistance,
                                 ResistancePerLength>;

/// With unit: `1-3/8 in`, `35 mm`. Inch lengths as fractions of the style's denominator; the
/// rounding is exact at a value that already lies on a step (no creep from 1e-12).
[[nodiscard]] std::string
print(Length value, PrintStyle style, Rounding rounding = Rounding::nearest);
/// As above without the unit, for drawings and table cells.
[[nodiscard]] std::string
print_bare(Length value, PrintStyle style, Rounding rounding = Rounding::nearest);
/// Decimal whatever the system: `0.031 in`, `0.8 mm`; for clearances, radii and deductions.
[[nodiscard]] std::string
print_decimal(Length value, PrintStyle style, Rounding rounding = Rounding::nearest);
/// Feet and inches: `4'-6 1/2"`; metric prints as print().
[[nodiscard]] std::string
print_feet(Length value, PrintStyle style, Rounding rounding = Rounding::nearest);

[[nodiscard]] std::string print(Area value, PrintStyle style);
[[nodiscard]] std::string
print(Force value, PrintStyle style, Rounding rounding = Rounding::nearest);
[[nodiscard]] std::string
print(Stress value, PrintStyle style, Rounding rounding = Rounding::nearest);
[[nodiscard]] std::string print(Energy value, PrintStyle style);
[[nodiscard]] std::string
print(Mass value, PrintStyle style, Rounding rounding = Rounding::nearest);
[[nodiscard]] std::string print(MassPerLength value, PrintStyle style);
[[nodiscard]] std::string print(Angle value, PrintStyle style);
/// Any of them; lengths as decimals with four places in inch (a working shows what was computed).
[[nodiscard]] std::string print_working(const AnyQuantity& value, PrintStyle style);

/// Round a length to the style's step: fraction of an inch, or 0.1 mm (metric).
[[nodiscard]] Length round_to_step(Length value, PrintStyle style, Rounding rounding);

/// Canonical text for files: reads back to the identical value, in the preferred units where a
/// short form does that ("1-3/8 in", "35 mm"), else in the base unit with all digits.
[[nodiscard]] std::string write_exact(Length value, UnitSystem preferred);
[[nodiscard]] std::string write_exact(Force value, UnitSystem preferred);
[[nodiscard]] std::string write_exact(Stress value, UnitSystem preferred);
[[nodiscard]] std::string write_exact(Mass value, UnitSystem preferred);
[[nodiscard]] std::string write_exact(Density value);
[[nodiscard]] std::string write_exact(Angle value);

} // namespace treadle::quantity

namespace treadle {
using quantity::AnyQuantity;
using quantity::PrintStyle;
using quantity::Rounding;
using quantity::UnitSystem;
} // namespace treadle
