// Punching by the other printed rules: each by its name, beside the careful one.
//
// Symbols   Fmax  full force   p  penetration, share of t   t  thickness   h  height of the ground
//           slope   L  cut length   S  shear strength   E  work   f  factor   c  clearance per side
// Formula   F = Fmax min(1, p t / h), not under 0.6 Fmax   card k_ground_careful_card
//           F = Fmax min(1, p t / h)                       card k_ground_energy_card
//           F = Fmax p t / (p t + h)                       card k_ground_sum_card
//           Fs = 3500 L t (lbf, in)                        card k_stripping_constant_card
//           E = F p t f                                    card k_punch_work_factor_card
//           c = 0.0032 t sqrt(S), Ac t, t/20 t/16 t/14     cards k_clearance_..._card
//           C = die - punch                                card k_clearance_pair_card
// Valid     ground slopes credited only for a tool known to be ground so
// Source    sources.json: entrance-papers, die-design-handbook, groover, press-tool-texts,
//           machinerys-handbook, program-rule, derived-geometry
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "process/punch.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <cstddef>

namespace treadle::process {

enum class GroundRule { careful, energy, sum };
/// Force of a punch with a ground slope of `height` over the cut.
[[nodiscard]] base::Result<Working>
ground_force_working(const PunchCut& cut, Length height, double penetration, GroundRule rule);

/// The die handbooks' 3500 L t, blind to the metal's strength: about 7 % of the cut.
[[nodiscard]] base::Result<Working> stripping_constant_working(const geometry::HoleOutline& hole,
                                                               Length thickness);

/// 1 for the upper estimate; die handbooks allow up to 1.16, a triangle of force gives 0.5.
[[nodiscard]] base::Result<Working>
punch_work_factor_working(const PunchCut& cut, double penetration, double factor);

/// A row of the die handbooks' table.
struct Penetration {
    const char* metal;
    double share;
    const char* how; ///< "from memory", …
};
[[nodiscard]] std::size_t penetration_count();
[[nodiscard]] const Penetration& penetration_row(std::size_t index);
[[nodiscard]] base::Result<Working> penetration_working(std::size_t index, Length thickness);

enum class Temper { soft, medium, hard };
[[nodiscard]] base::Result<Working> clearance_formula_working(Length thickness,
                                                              Stress shear_strength);
[[nodiscard]] base::Result<Working> clearance_groover_working(Length thickness, Temper temper);
[[nodiscard]] base::Result<Working> clearance_handbook_working(Length thickness, Temper temper);
/// Refuses a die not larger than its punch.
[[nodiscard]] base::Result<Working>
clearance_pair_working(Length punch, Length die, Length thickness);

} // namespace treadle::process
