// The punch itself, and what surrounds its stroke: stress, buckling, stroke, room beside a leg.
//
// Symbols   L  cut length   t  thickness   S  shear strength   A  area of the hole   d  diameter
//           sc  mean compressive stress   E  modulus   l  free length of the punch point
//           g  gap of the stripper over the stock   e  entry into the die   k  fillet, Rd  die
//           radius
// Formula   L by shape                              card k_hole_edge_card
//           sc = L t S / A                          card k_punch_stress_card
//           t = sc A / (L S)                        card k_punch_thickest_card
//           l = (pi d / 8) sqrt(E d / (S t))        card k_punch_free_length_card
//           l = (pi d / 16) sqrt(E d / (S t))       card k_punch_free_end_card
//           t = bolt + 1/8 in; or t = hole          cards k_bolt_hole_..._card
//           stroke = t + g + e                      card k_punch_stroke_card
//           x = k + Rd, or t + Rc                   card k_punch_heel_card
// Valid     flat-ended punch, load along its axis; d from 1.1 t for the free length
// Source    sources.json: derived-mechanics, jigs-fixtures-press-tools, structural-handbook-aisc,
//           en-1090-2, common-practice-shear, derived-geometry
// Rounding  none here; the caller rounds, against us

#pragma once

#include "base/result.h"
#include "process/punch.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <optional>

namespace treadle::process {

[[nodiscard]] base::Result<Working> hole_edge_working(const geometry::HoleOutline& hole);

/// Mean stress in the punch. Refuses a hole known only by its edge: it has no area.
[[nodiscard]] base::Result<Working> punch_stress_working(const PunchCut& cut);

/// Thickest metal that a punch stands, by the stress in it.
[[nodiscard]] base::Result<Working> punch_thickest_working(const geometry::HoleOutline& hole,
                                                           Stress shear_strength,
                                                           Stress punch_strength);

struct FreePunch {
    Length diameter;
    Length thickness;
    Stress shear_strength;
    Stress modulus;
};
/// The textbook's length. It is Euler's column with both ends kept in place: a guided punch.
[[nodiscard]] base::Result<Working> punch_free_length_working(const FreePunch& punch);
/// The careful one: an end that nothing guides halves the length.
[[nodiscard]] base::Result<Working> punch_free_end_working(const FreePunch& punch);

/// Thickest metal that a bolt hole is punched in full size: AISC.
[[nodiscard]] base::Result<Working> bolt_hole_aisc_working(Length bolt);
/// EN 1090-2: the diameter of the hole, or the smallest size of a slot.
[[nodiscard]] base::Result<Working> bolt_hole_en_working(Length hole);

struct PunchStroke {
    Length thickness;
    Length stripper_gap; ///< over the stock
    Length die_entry;
};
[[nodiscard]] base::Result<Working> punch_stroke_working(const PunchStroke& stroke);
inline constexpr Length k_usual_die_entry = inches(1.0 / 8.0); ///< common practice, no source
inline constexpr Length k_most_stripper_gap = inches(1.0 / 4.0);

struct BesideLeg {
    Length thickness; ///< of the standing leg
    Length fillet;
    Length die_radius; ///< outside of the die, or the clearance radius of a relieved one
    bool relieved = false;
};
/// Least distance of a hole centre from the heel of an angle or flange.
[[nodiscard]] base::Result<Working> punch_from_heel_working(const BesideLeg& leg);

} // namespace treadle::process
