// Where bolt lines lie on the leg of an angle, from its heel.
//
// Formula   the usual gages by table                              card angle-gage
//           g = ga + gb - t between holes in both legs            card angle-gage-between
// Valid     legs from 1 to 8 in of the table; other gages are allowed where bolt, wrench and edge
// fit Source    sources.json: aisc-manual-1-7a (from memory), aisc-360-b43 Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::layout {

struct AngleGages {
    Length single; ///< heel to the only line
    Length first;  ///< heel to the first of two lines; zero when the leg takes one line
    Length first_to_second;
};
[[nodiscard]] base::Result<AngleGages> angle_gages(Length leg, const char* field = "leg");
/// Zero lines: the single gage; 1: heel to the first; 2: first to second.
[[nodiscard]] base::Result<Working> angle_gage_working(Length leg, int line);

struct BothLegs {
    Length leg_a;
    Length leg_b;
    Length thickness;
};
[[nodiscard]] base::Result<Working> gage_between_working(const BothLegs& legs);

} // namespace treadle::layout
