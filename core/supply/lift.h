// What one person may lift, after the revised equation of NIOSH 94-110.
//
// Symbols   RWL  recommended weight limit   LC  load constant   HM VM DM AM FM CM  multipliers
//           H  hands out from the ankles   V  hands over the floor   D  travel up or down
//           A  turned from straight ahead   LI  lifting index   W  depth of the load
// Formula   RWL = LC HM VM DM AM FM CM   card k_lift_limit_card
//           LI = load/RWL                card k_lift_index_card
//           H = 8 + W/2, low 10 + W/2    card k_lift_reach_card
//           team = 2/3 or 1/2 of all     card k_lift_team_card
// Valid     two hands, standing, smooth lifts by one person on a good floor; not for hot, sharp or
//           unsteady loads, nor for a long limp bar: over 10 ft it takes a second hand or a stand
// Source    sources.json: niosh-94-110, hse-l23
// Rounding  none; the manual multiplies rounded multipliers, so its last digit may differ

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <array>

namespace treadle::supply {

enum class LiftUnits { inch, metric }; ///< the equation is printed twice, not quite equal
enum class LiftDuration { short_, moderate, long_ }; ///< up to 1 h, 1 to 2 h, 2 to 8 h a day
enum class Coupling { good, fair, poor };

struct Lift {
    Length horizontal;
    Length vertical; ///< of the hands at the point looked at
    Length travel;
    Angle asymmetry;
    double per_minute = 0.0;
    LiftDuration duration = LiftDuration::long_;
    Coupling coupling = Coupling::poor;
    Length origin_vertical; ///< of the hands where the lift begins: decides the frequency's row
    LiftUnits units = LiftUnits::inch;
};

struct LiftFactors {
    Mass load_constant;
    double horizontal, vertical, distance, asymmetry, frequency, coupling;
    [[nodiscard]] Mass limit() const {
        return load_constant *
               (horizontal * vertical * distance * asymmetry * frequency * coupling);
    }
};

/// A multiplier of zero is an answer: nothing may be lifted so.
[[nodiscard]] base::Result<LiftFactors> lift_factors(const Lift& lift);
[[nodiscard]] base::Result<Working> lift_limit_working(const Lift& lift);
/// Refused, at the input that makes it so, when nothing may be lifted.
[[nodiscard]] base::Result<Working> lift_index_working(const Lift& lift, Mass load);

/// From the ankles to the hands when it was not measured, for a load of this depth.
[[nodiscard]] base::Result<Length> lift_reach(Length depth, Length vertical);
[[nodiscard]] base::Result<Working> lift_reach_working(Length depth, Length vertical);

/// Together two people lift 2/3, three people 1/2 of what they could lift each for himself.
[[nodiscard]] base::Result<Working> lift_team_working(Mass single, int people);

} // namespace treadle::supply
