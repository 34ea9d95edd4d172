// Die clearance: how much larger the die is than the punch.
//
// Symbols   t  thickness   C  die opening less punch   c  clearance per side
// Formula   C by steps of t, c = C/2       card k_die_clearance_card
// Valid     up to 1-1/2 in: the steps reach no further. The punch carries the size of the hole
// Source    sources.json: common-practice-clearance
// Rounding  none: the steps are sizes that dies are made to

#pragma once

#include "base/result.h"
#include "material/grade.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

struct DieClearance {
    Length total;     ///< die opening less punch size
    Length per_side;  ///< half of it
    double share = 0; ///< total over thickness
};

/// Fixed steps used at ironworkers (common practice, no source): 1/64 in under 3/16, 1/32 from
/// 3/16 up, 1/16 from 1/2 up, 3/32 over 1 in. Harder metal, stainless or any with 70 ksi or more
/// as its minimum tensile strength, takes 1/16 from 3/8 in up. Without a grade: not harder.
[[nodiscard]] base::Result<DieClearance> die_clearance(Length thickness, const Grade* grade);

/// Stainless, or any grade with 70 ksi or more as its minimum tensile strength from 3/8 in up.
[[nodiscard]] bool is_harder(const Grade& grade);
/// A given pair: refuses a die not larger than its punch, always.
[[nodiscard]] base::Result<DieClearance>
clearance_of_pair(Length punch, Length die, Length thickness);
inline constexpr double k_least_clearance_share = 0.06; ///< program rule, of thickness, total
inline constexpr double k_most_clearance_share = 0.25;  ///< program rule

[[nodiscard]] base::Result<Working> die_clearance_working(Length thickness, const Grade* grade);

} // namespace treadle::process
