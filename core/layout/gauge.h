// Thickness of sheet and tube wall by gauge number. One number means five thicknesses, so the metal
// is always named.
//
// Formula   steel       t = oz / (16 x 41.82) in, oz the ounces on a square foot  card gauge-steel
//           galvanised  2.5 oz more                                              card
//           gauge-galvanised stainless   t = oz / 640 in card gauge-stainless aluminium   t = 0.005
//           x 92^((36 - n) / 39) in                        card gauge-aluminium tube wall   a
//           table, the Birmingham wire gauge                       card gauge-tube
// Valid     gauges 3 to 28; galvanised 8 to 28; tube the rows of its table
// Source    sources.json: manufacturers-standard-gauge, american-wire-gauge, birmingham-wire-gauge
// Rounding  none: printed tables round these to 0.0001 in. A mill may be 5 to 8 per cent off them

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::layout {

/// In the order of the words "steel|galvanised|stainless|aluminium|tube".
enum class GaugeMetal { steel, galvanised, stainless, aluminium, tube };

/// Refuses "gauge" outside the metal's table.
[[nodiscard]] base::Result<Length> gauge_thickness(int gauge, GaugeMetal metal);
[[nodiscard]] base::Result<Working> gauge_working(int gauge, GaugeMetal metal);

} // namespace treadle::layout
