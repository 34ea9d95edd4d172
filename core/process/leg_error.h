// How far a finished leg may come out from its size: several small errors put together.
//
// Symbols   d  known offset   e  an error, either way   w  worst case   s  root sum of squares
// Formula   w = |d| + sum of e               card k_leg_worst_card
//           s = |d| + sqrt(sum of e^2)       card k_leg_rss_card
// Valid     errors that do not hang together; the worst case holds even when they do
// Source    sources.json: derived-geometry, common-practice-bending
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <vector>

namespace treadle::process {

struct LegErrors {
    Length offset;              ///< known beforehand: what the blank was rounded up by
    std::vector<Length> errors; ///< each either way, as often as it enters
};
/// Refuses "errors" when there is none, or one below zero.
[[nodiscard]] base::Result<Working> leg_worst_working(const LegErrors& leg);
[[nodiscard]] base::Result<Working> leg_rss_working(const LegErrors& leg);

} // namespace treadle::process
