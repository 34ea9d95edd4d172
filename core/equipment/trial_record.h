// Trial strips as the shop measured them: which metal, which V, and the legs that came out.
//
// Kept as measured. What they give (K, deduction, spread) is worked out by process/trial_bend and
// never stored, so that nobody has to trust a figure whose strips are gone.

#pragma once

#include "material/grade.h"
#include "quantity/input_limits.h"
#include "quantity/quantity.h"

#include <string>
#include <vector>

namespace treadle::equipment {

inline constexpr std::size_t k_most_trial_strips = 50;

/// Cut to a known length, bent once, both outside legs measured.
struct TrialStrip {
    Length blank;
    Length leg_a;
    Length leg_b;
};

/// Strips of one metal bent over one V to one angle.
struct TrialRecord {
    std::string grade; ///< id, as parts name it
    Length thickness;
    Length opening;                                   ///< of the V block
    Length radius;                                    ///< inside, measured with a radius gauge
    Angle angle;                                      ///< turned through
    material::Grain grain = material::Grain::unknown; ///< unknown: holds for any
    std::vector<TrialStrip> strips;
};

/// A grade, sizes above zero, an angle over 0 and below 180, one strip at least, legs shorter than
/// their strip.
[[nodiscard]] quantity::Fault trial_record_fault(const TrialRecord& record);

} // namespace treadle::equipment
