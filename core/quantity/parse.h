// Text to quantities, as fabricators write them.
//
// Lengths: 1-3/8, 1 3/8", 1.375 in, 3/8, ½, 1½, 4' 6-1/2", 4'-6 1/2", 5-3-1/2 (feet, inches,
// fraction), 35 mm, 3.5 cm, 1.2 m, 6 ft, 12,5 mm (decimal comma), typographic quotes and dashes.
// `5-3` alone is ambiguous and refused with both readings. A bare number takes the unit of the
// system given; with no system given it is refused.
// A bare fraction in a metric shop is refused: nobody writes sixteenths of a millimetre.
// All refuse: empty, trailing rubbish, not finite, hex, thousands separators that are ambiguous.
// Negative values are read (callers decide what is allowed). The field is copied into the refusal.

#pragma once

#include "base/result.h"
#include "quantity/electrical.h"
#include "quantity/print.h"
#include "quantity/quantity.h"

#include <optional>
#include <string_view>

namespace treadle::quantity {

using BareUnit = std::optional<UnitSystem>; ///< what a number without a unit means; none: refuse

[[nodiscard]] base::Result<Length>
parse_length(std::string_view text, BareUnit bare, std::string_view field);
/// kN, N, lbf, kip, ton (US short ton, also "US ton", "tons"), t or tonne (metric tonne-force).
/// Bare: US ton in inch, kN in metric.
[[nodiscard]] base::Result<Force>
parse_force(std::string_view text, BareUnit bare, std::string_view field);
/// ksi, psi, MPa, N/mm2, GPa. Bare: ksi in inch, MPa in metric.
[[nodiscard]] base::Result<Stress>
parse_stress(std::string_view text, BareUnit bare, std::string_view field);
/// deg, °, rad; bare is degrees always.
[[nodiscard]] base::Result<Angle> parse_angle(std::string_view text, std::string_view field);
/// kg, g, t?, lb. Bare: lb in inch, kg in metric.
[[nodiscard]] base::Result<Mass>
parse_mass(std::string_view text, BareUnit bare, std::string_view field);
/// kg/m3, lb/in3, lb/ft3. No bare numbers.
[[nodiscard]] base::Result<Density> parse_density(std::string_view text, std::string_view field);
/// V, kV. No bare numbers, here and in the next two.
[[nodiscard]] base::Result<Voltage> parse_voltage(std::string_view text, std::string_view field);
/// A.
[[nodiscard]] base::Result<Current> parse_current(std::string_view text, std::string_view field);
/// hp, W, kW.
[[nodiscard]] base::Result<Power> parse_power(std::string_view text, std::string_view field);
/// A plain number or a fraction: 0.42, 1/3, 15 % (-> 0.15).
[[nodiscard]] base::Result<double> parse_ratio(std::string_view text, std::string_view field);
/// A whole number up to a million either way: 12, -3.
[[nodiscard]] base::Result<int> parse_whole(std::string_view text, std::string_view field);

} // namespace treadle::quantity
