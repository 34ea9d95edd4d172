// How large a generator has to be for one motor, and what is left of it in thin or hot air.
//
// Symbols   Sr  running kVA   Ss  surge kVA   Pr  running power   I  full-load current   V  voltage
//           k  1 single phase, sqrt 3 three phase   P  rated power   n  efficiency of the motor
//           G  rating   h  height over the rated one   d  share lost per 1000 ft   T  degrees over
// Formula   Sr = k V I/1000              card k_generator_running_card
//           Ss >= locked-rotor kVA       card k_generator_surge_card
//           Ss = 3 Sr, by name only      card k_generator_triple_card
//           Pr = P/n                     card k_generator_power_card
//           Ga = G (1 - d h/1000 ft - 0.01 T/10)  card k_generator_derated_card
// Valid     surge at a dip of 30 %; a pump that starts unloaded is brought up sooner, yet draws the
//           same locked-rotor kVA. Three times the running load is too low for codes K and L
// Source    sources.json#common-practice-supply
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/electrical.h"
#include "quantity/working.h"

#include <optional>

#include "supply/motor.h"

namespace treadle::supply {

[[nodiscard]] base::Result<Working> generator_running_working(const Motor& motor);
[[nodiscard]] base::Result<Working> generator_surge_working(const Motor& motor,
                                                            std::optional<char> letter);
/// The rule of thumb, for comparison.
[[nodiscard]] base::Result<Working> generator_triple_working(const Motor& motor);

/// Of small single-phase motors 0.70 to 0.85; a guess of this program, not from any table.
inline constexpr double k_assumed_efficiency = 0.75;
[[nodiscard]] base::Result<Working> generator_power_working(const Motor& motor, double efficiency);

inline constexpr double k_careful_derating = 0.035; ///< per 1000 ft; rules run from 3 to 3.5 %
struct Derating {
    Power rating;
    Length altitude; ///< over the rated one
    double per_thousand_feet = k_careful_derating;
    double fahrenheit_over = 0.0; ///< over the rated temperature
};
[[nodiscard]] base::Result<Power> derated(const Derating& question);
[[nodiscard]] base::Result<Working> derated_working(const Derating& question);

} // namespace treadle::supply
