// Bend allowance, bend deduction, outside setback, and the length of a blank.
//
// Symbols   A  angle turned through   b  opening angle, 180 - A   r  inside radius   t  thickness
//           K  neutral line from the inside over thickness   k  DIN's factor, twice K
// Formula   BA = (pi/180) A (r + K t)                     cards k_bend_allowance_..._card
//           v = 2 setback - BA; DIN: 0 for b over 165     cards k_bend_deduction_..._card
//           setback = (r + t) tan(A/2); r + t for A > 90  cards k_outside_setback_..._card
//           L = sum of outside legs - sum of v            card k_blank_length_card
//           DIN 6935: k = 0.65 + 0.5 log10(r/t) up to r/t = 5, then 1
// Valid     A over 0 and below 180. DIN's k comes to 0 near r/t = 0.05: refused. Below 0.5: measure
// Legs      to the apex of the outer faces up to A = 90, to the outer tangent planes beyond; to the
//           apex at every angle when the rule says so
// Source    sources.json: tabellenbuch-metall (DIN 6935), machinerys-handbook, derived-geometry
// Rounding  none here; the caller rounds the blank up

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <vector>

namespace treadle::process {

enum class BlankMethod {
    din6935,         ///< k = 0.65 + 0.5 log10(r/s), its three branches
    k_factor,        ///< a K given (trial strip or habit)
    handbook_soft,   ///< straight stock 0.55 t + 1.57 r at 90 degrees
    handbook_medium, ///< 0.64 t + 1.57 r
    handbook_hard    ///< 0.71 t + 1.57 r
};
/// As files and commands write it: "din6935", "k-factor", "handbook-soft", …
[[nodiscard]] const char* blank_method_word(BlankMethod method);

/// Where outside legs are measured to when a bend turns more than 90 degrees. Jobs always use the
/// tangent planes (the apex runs away towards 180); the apex is for comparing with K tables.
enum class LegsTo { tangent_planes, apex };

struct BlankRule {
    BlankMethod method = BlankMethod::din6935;
    double k_factor = 0.0; ///< for k_factor only: neutral line from the inside over t, 0 < K <= 0.5
    LegsTo legs_to = LegsTo::tangent_planes;
};

struct SharpBend {
    Length thickness;
    Length radius; ///< inside
    Angle angle;   ///< turned through, over 0 and below 180
};

struct BendFigures {
    Length allowance; ///< arc of the neutral line
    Length deduction; ///< from the sum of outside legs; may be negative for very acute bends
    Length setback;   ///< outside, to where the rule measures legs
    double k = 0.0;   ///< neutral line from the inside over thickness
};
[[nodiscard]] base::Result<BendFigures> bend_figures(const SharpBend& bend, const BlankRule& rule);
/// The setback alone: no rule of the neutral line takes part in it.
[[nodiscard]] base::Result<Length> outside_setback(const SharpBend& bend,
                                                   LegsTo legs_to = LegsTo::tangent_planes);

[[nodiscard]] base::Result<Working> allowance_working(const SharpBend& bend, const BlankRule& rule);
[[nodiscard]] base::Result<Working> deduction_working(const SharpBend& bend, const BlankRule& rule);
[[nodiscard]] base::Result<Working> setback_working(const SharpBend& bend, const BlankRule& rule);

/// One leg more than bends. Unrounded: the caller rounds, against us (up).
struct BentPart {
    std::vector<Length> outside_legs;
    std::vector<SharpBend> bends;
};
struct Blank {
    Length length;
    std::vector<BendFigures> bends;
    std::vector<Length> bend_lines; ///< from the starting end, on the flat
    std::vector<Length>
        leg_origins; ///< flat position that each leg's outside dimensions count from
};
/// Refuses "legs[i]" that its own bends use up, "bends[i]…" for a bend at fault.
[[nodiscard]] base::Result<Blank> blank_length(const BentPart& part, const BlankRule& rule);
[[nodiscard]] base::Result<Working> blank_working(const BentPart& part, const BlankRule& rule);
/// The same with a rule for each bend.
[[nodiscard]] base::Result<Blank> blank_length_by_bend(const BentPart& part,
                                                       const std::vector<BlankRule>& rules);
[[nodiscard]] base::Result<Working> blank_working_by_bend(const BentPart& part,
                                                          const std::vector<BlankRule>& rules);

} // namespace treadle::process
