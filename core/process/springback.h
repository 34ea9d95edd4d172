// Springback: to which radius and angle a bend is made, so that it opens to the wanted ones.
//
// Symbols   Ri, Rf  inside radius before and after   Ai, Af  angle turned before and after
//           t  thickness   Y  yield strength   E  modulus   kR  angle after over angle before
// Formula   Ri / Rf = 4 X^3 - 3 X + 1, X = Ri Y / (E t)       card k_springback_radius_card
//           Ai (Ri + t / 2) = Af (Rf + t / 2)                 card k_springback_angle_card
//           Ri = kR (Rf + t / 2) - t / 2, Ai = Af / kR        cards k_springback_factor_..._card
// Valid     pure bending, X below 0.5; at small Ri / t the formula gives almost none, which is not
//           the whole story. Never a number to hold: a trial strip decides
// Source    sources.json: kalpakjian-schmid, tabellenbuch-metall
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <cstddef>

namespace treadle::process {

/// The bend as it has to come out, and the metal.
struct SpringBend {
    Length thickness;
    Length radius; ///< inside, after
    Angle angle;   ///< turned through, after
    Stress yield_strength;
    Stress modulus;
};
[[nodiscard]] base::Result<Working> springback_radius_working(const SpringBend& bend);
[[nodiscard]] base::Result<Working> springback_angle_working(const SpringBend& bend);

/// Rows of the factor table, by metal.
[[nodiscard]] std::size_t springback_metal_count();
[[nodiscard]] const char* springback_metal(std::size_t index);
/// Of `bend` the strengths are not used. Refuses a radius outside the row.
[[nodiscard]] base::Result<Working> springback_factor_radius_working(const SpringBend& bend,
                                                                     std::size_t metal);
[[nodiscard]] base::Result<Working> springback_factor_angle_working(const SpringBend& bend,
                                                                    std::size_t metal);

} // namespace treadle::process
