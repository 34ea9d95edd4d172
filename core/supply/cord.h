// Copper cords: resistance, what they may carry, and what voltage they lose.
//
// Symbols   R  resistance per length   c  circular mils   I  current   L  length one way
//           k  2 single phase, sqrt 3 three phase   V  voltage   p  share of the voltage
// Formula   R = table(wire)          card k_wire_table_card
//           R = 12.9/c per foot      card k_wire_formula_card
//           Ia = table(wire)         card k_cord_ampacity_card
//           Vd = k L I R             card k_cord_drop_card
//           L = p V/(k I R)          card k_cord_longest_card
// Valid     copper at 75 C in air of 30 C, unrolled: coiled on the drum count on half the ampacity.
//           Warn over 3 % lost, stop over 5 %; at the start warn over 15 %, stop over 30 %
// Source    sources.json: nec (chapter 9 table 8, 400.5(A)(1)), iec-60228, common-practice-supply
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/electrical.h"
#include "quantity/working.h"

#include <string>

#include "supply/motor.h"

namespace treadle::supply {

/// Sizes of cord; the mm2 ones have a resistance here, but no ampacity that we have read.
enum class Wire {
    awg18,
    awg16,
    awg14,
    awg12,
    awg10,
    awg8,
    awg6,
    awg4,
    awg2,
    mm1_5,
    mm2_5,
    mm4,
    mm6
};
/// In the order above: "18 AWG|16 AWG|…|2 AWG|1.5 mm2|…"
inline constexpr const char* k_wire_words =
    "18 AWG|16 AWG|14 AWG|12 AWG|10 AWG|8 AWG|6 AWG|4 AWG|2 AWG|1.5 mm2|2.5 mm2|4 mm2|6 mm2";
/// The AWG sizes of it.
inline constexpr const char* k_awg_words =
    "18 AWG|16 AWG|14 AWG|12 AWG|10 AWG|8 AWG|6 AWG|4 AWG|2 AWG";

enum class WireKind { stranded, solid, formula };
[[nodiscard]] base::Result<ResistancePerLength> wire_resistance(Wire wire, WireKind kind);
[[nodiscard]] base::Result<Working> wire_resistance_working(Wire wire, WireKind kind);

/// With `carrying` current-carrying conductors, 2 or 3; the earth wire never counts, a neutral that
/// carries load does.
[[nodiscard]] base::Result<Current> cord_ampacity(Wire wire, int carrying);
[[nodiscard]] base::Result<Working> cord_ampacity_working(Wire wire, int carrying);

struct Cord {
    Voltage voltage;
    Current current;
    Length length; ///< one way
    Wire wire = Wire::awg18;
    Phases phases = Phases::single;
    int carrying = 2;
};
/// Voltage lost. Refused on a cord that may not carry the current, whatever it would lose.
[[nodiscard]] base::Result<Voltage> cord_drop(const Cord& cord);
[[nodiscard]] base::Result<Working> cord_drop_working(const Cord& cord);
/// The same for the moment of the start, when the current may exceed the ampacity.
[[nodiscard]] base::Result<Working> cord_start_working(const Cord& cord, Current start);

inline constexpr Length k_longest_cord = quantity::metres(1000.0); ///< no cord is longer
inline constexpr double k_usual_drop = 0.03; ///< on a branch, by the code's informational notes
/// Longest one way for a share of the voltage; `cord.length` is not looked at.
[[nodiscard]] base::Result<Length> longest_cord(const Cord& cord, double share);
[[nodiscard]] base::Result<Working> longest_cord_working(const Cord& cord, double share);

/// Share of the voltage that is lost, in per cent with one decimal, rounded up: against us.
[[nodiscard]] std::string lost_per_cent(double share);

} // namespace treadle::supply
