// What an induction motor draws: running by the code's tables, at the start by its code letter.
//
// Symbols   I  full-load current   P  rated power   V  voltage   s  locked-rotor kVA per hp
//           k  1 single phase, sqrt 3 three phase
// Formula   I = table(P, V)          card k_motor_full_load_card
//           Ic >= 1.25 I             card k_motor_conductor_card
//           Ib <= 2.5 I              card k_motor_breaker_card
//           S = s P                  card k_locked_power_card
//           Is = 1000 S/(k V)        card k_locked_current_card
// Valid     single phase to 10 hp, three phase to 20 hp; the nameplate governs overload settings
// Source    sources.json: nec (tables 430.248, 430.250; 430.7(B), 430.22, 430.52),
//           common-practice-supply for the letter when none is known
// Rounding  none; a power between two rows takes the larger row, a letter the top of its band

#pragma once

#include "base/result.h"
#include "quantity/electrical.h"
#include "quantity/working.h"

#include <optional>

namespace treadle::supply {

enum class Phases { single, three };

struct Motor {
    Power power;
    Voltage voltage;
    Phases phases = Phases::single;
};

[[nodiscard]] base::Result<Current> full_load_current(const Motor& motor);

/// Letters A to V without I, O and Q. V has no upper end and is refused.
struct LockedRotor {
    ApparentPower power;
    Current current;
    char letter = 'A';
    bool assumed = false; ///< the letter, for want of one
};
/// Without a letter: the highest that is usual for the power (common practice, no source).
[[nodiscard]] base::Result<LockedRotor> locked_rotor(const Motor& motor,
                                                     std::optional<char> letter);

[[nodiscard]] base::Result<Working> full_load_working(const Motor& motor);
[[nodiscard]] base::Result<Working> conductor_working(const Motor& motor);
[[nodiscard]] base::Result<Working> breaker_working(const Motor& motor);
[[nodiscard]] base::Result<Working> locked_power_working(const Motor& motor,
                                                         std::optional<char> letter);
[[nodiscard]] base::Result<Working> locked_current_working(const Motor& motor,
                                                           std::optional<char> letter);

/// 1 or the square root of 3.
[[nodiscard]] double phase_factor(Phases phases);

} // namespace treadle::supply
