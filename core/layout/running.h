// Places along a part from one datum, so that no rounding adds up.
//
// Symbols   L  length   e1, e2  ends   n  holes   p  pitch   x  place from the datum
// Formula   p = (L - e1 - e2) / (n - 1), x = e1 + (i - 1) p    card running-places
// Source    sources.json: common-practice-layout, derived-geometry
// Rounding  each place once, to the nearest step, when a step is given; the pitch never

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <vector>

namespace treadle::layout {

struct RunningQuestion {
    Length length;
    Length first; ///< datum to the first
    Length last;  ///< the last to the other end
    int count = 0;
    Length step; ///< zero: not rounded
};
struct RunningPlaces {
    Length pitch;
    std::vector<Length> places;
};
[[nodiscard]] base::Result<RunningPlaces> running_places(const RunningQuestion& question);
[[nodiscard]] base::Result<Working> running_working(const RunningQuestion& question);

/// To the nearest step, halves up; as it is when the step is zero.
[[nodiscard]] Length to_step(Length place, Length step);

} // namespace treadle::layout
