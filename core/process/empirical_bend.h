// Bend allowances and deductions by rules of thumb, each by its name.
//
// Symbols   BA  allowance   v  deduction   A  angle turned   r  inside radius   t  thickness
//           K  neutral line from the inside over thickness
// Formula   BA = (0.01743 r + 0.0078 t) A                       card k_allowance_faa_card
//           BA = (pi / 180) A (r + K t), K = 0.33, 0.50         card k_allowance_groover_card
//           v = 0.43 r + 1.48 t, at 90 degrees                  card k_deduction_school_card
//           v = 0.43 r + 1.37 t, at 90 degrees                  card k_deduction_us_card
// Valid     the last two for 90 degrees only; K by Groover steps at r = 2 t
// Source    sources.json: faa-43-13, groover, school-sheet-bending, common-practice-bending
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "process/blank.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

enum class EmpiricalRule { faa, groover, school_sheet, us_shop };

/// Legs to the apex, or to the tangent planes beyond 90 degrees where `legs_to` says so. K is what
/// the rule comes to.
[[nodiscard]] base::Result<BendFigures>
empirical_figures(const SharpBend& bend, EmpiricalRule rule, LegsTo legs_to);
[[nodiscard]] base::Result<Working>
empirical_allowance_working(const SharpBend& bend, EmpiricalRule rule, LegsTo legs_to);
[[nodiscard]] base::Result<Working>
empirical_deduction_working(const SharpBend& bend, EmpiricalRule rule, LegsTo legs_to);

} // namespace treadle::process
