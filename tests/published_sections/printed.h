// A printed weight beside ours. Rows are keyed by hand from the publication, never from assets.

#pragma once

#include "section/section.h"

namespace treadle::published {

using section::Section;
using section::Shape;

/// ASTM A6 and the inch tables weigh steel at 490 lb/ft3.
constexpr Density k_inch_steel =
    quantity::kilograms_per_cubic_metre(490.0 * 0.45359237 / (0.3048 * 0.3048 * 0.3048));
/// The inch angle tables round that to 3.4 lb/ft per square inch before they round the weight up.
constexpr Density k_inch_angle_steel = k_inch_steel * (3.4 * 144.0 / 490.0);
/// EN 10056-1, EN 10058 and EN 10219-2 weigh it at 7850 kg/m3.
constexpr Density k_metric_steel = quantity::kilograms_per_cubic_metre(7850.0);

/// "from memory" rows are marked; all others were read in the publication named in the file.
enum class Read { seen, from_memory };

inline double pounds_per_foot_of(const Section& section, Density steel = k_inch_steel) {
    return quantity::to_pounds_per_foot(mass_per_length(section, steel));
}
inline double kilograms_per_metre_of(const Section& section) {
    return quantity::to_kilograms_per_metre(mass_per_length(section, k_metric_steel));
}

/// How far ours lies above the print, as a share of the print.
inline double over_print(double ours, double printed) { return (ours - printed) / printed; }

} // namespace treadle::published
