// Notching by steps, and the V that lets a leg fold.
//
// Symbols   L  cut length   n  bites   b  tool   o  overlap   d  depth   v  angle of a V   w  width
// Formula   n = 1 + ceil((Ltot - b) / (b - o))         card k_notch_bites_card
//           L = b + 2 d, then (b - o) + d              cards k_first_bite_card, k_later_bite_card
//           d = leg - t                                card k_vee_depth_card
//           m = 2 d tan(v / 2), L = 2 d / cos(v / 2)   cards k_vee_mouth_card, k_vee_cut_card
//           L = 2 (d - w / 2) + pi w / 2               card k_slot_notch_card
// Valid     straight sides, sharp corners; overlap up to half of the tool
// Source    sources.json: derived-geometry
// Rounding  bites up

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::process {

struct NotchBites {
    Length along;
    Length tool;
    Length overlap;
};
[[nodiscard]] base::Result<Working> notch_bites_working(const NotchBites& notch);
/// Edge cut by the first bite, and by each later one, which has one end open.
[[nodiscard]] base::Result<Working> first_bite_working(const NotchBites& notch, Length depth);
[[nodiscard]] base::Result<Working> later_bite_working(const NotchBites& notch, Length depth);

/// V in one leg that lets the other one fold: down to the inside of the standing leg.
[[nodiscard]] base::Result<Working> vee_depth_working(Length leg, Length thickness);
[[nodiscard]] base::Result<Working> vee_mouth_working(Length depth, Angle included);
[[nodiscard]] base::Result<Working> vee_cut_working(Length depth, Angle included);

/// Cut edge of a slot from the edge with a round end.
[[nodiscard]] base::Result<Working> slot_notch_working(Length width, Length depth);

} // namespace treadle::process
