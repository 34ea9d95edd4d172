#include "process/air_bend.h"

#include "process/blank.h"
#include "process/cards.h"
#include "process/input_check.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_force_symbols[] = {
    {"F", "bending force"},
    {"k", "factor for friction and the width of the V"},
    {"Rm", "tensile strength, upper bound of the metal"},
    {"L", "length along the bend"},
    {"t", "thickness"},
    {"V", "opening of the die"},
};
constexpr base::CardSymbol k_opening_symbols[] = {
    {"V", "opening of the die"},
    {"t", "thickness"},
    {"Rm", "tensile strength, upper bound of the metal"},
};
constexpr base::CardSymbol k_radius_symbols[] = {
    {"r", "inside radius of the bend"},
    {"share", "of the opening, by metal"},
    {"V", "opening of the die"},
    {"nose", "radius of the punch nose"},
};
constexpr base::CardSymbol k_leg_symbols[] = {
    {"leg", "shortest outside leg"},
    {"V", "opening of the die"},
    {"A", "angle turned through"},
    {"r", "inside radius"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_travel_symbols[] = {
    {"y", "punch travel"},
    {"V", "opening of the die"},
    {"A", "angle turned through"},
    {"r", "inside radius"},
    {"t", "thickness"},
};

// Groover's and the die handbooks' factor for a V die.
constexpr double k_least_factor = 1.33;
// Shop rule 0.75 V at 90 degrees: 6 % over the bare geometry, for the shoulder radius and overbend.
constexpr double k_leg_at_90 = 0.75;
constexpr Stress k_strong_from = ksi(70.0);
// No printed factor for any kind of bending, coining with its tenfold too, comes near it.
constexpr double k_most_factor = 20.0;

/// Sound sizes and a V that air-bends at all.
InputCheck checked_die(Length opening, Length thickness) {
    InputCheck check;
    check.length(thickness, "thickness").length(opening, "opening");
    return check;
}

base::Refusal too_narrow() {
    return {"opening",
            "The V is narrower than six times the thickness: the force grows beyond the formula "
            "and the metal may crack.",
            "at least 6 times the thickness"};
}

bool is_too_narrow(Length opening, Length thickness) {
    return clearly_below(opening, k_least_opening_ratio * thickness);
}

double careful_factor(const AirBend& bend) {
    return std::max(k_least_factor, 1.0 + 4.0 * (bend.thickness / bend.opening));
}

Working force_working(const base::FormulaCard& card,
                      const AirBend& bend,
                      double factor,
                      Force force,
                      const char* note) {
    return Working{&card,
                   {{"k", quantity::Number{factor, 3}},
                    {"Rm", bend.tensile_strength},
                    {"L", bend.length},
                    {"t", bend.thickness},
                    {"V", bend.opening}},
                   {"F", force},
                   note};
}

} // namespace

const base::FormulaCard k_bend_force_card{
    "bend-force",
    "Force to bend in a V",
    "F = k Rm L t^2 / V; k = max(1.33, 1 + 4 t / V)",
    k_force_symbols,
    "air bending, V from 6 t; bottoming asks for 3-5 times as much, coining for 5-10 times",
    "lange-oehler",
    Evidence::published,
    ""};
const base::FormulaCard k_bend_force_given_card{"bend-force-given",
                                                "Force to bend in a V with a factor as given",
                                                "F = k Rm L t^2 / V",
                                                k_force_symbols,
                                                "for comparison with a textbook or a maker's rule",
                                                "derived-mechanics",
                                                Evidence::derived,
                                                ""};
const base::FormulaCard k_usual_opening_card{
    "bend-opening",
    "Usual opening of the V",
    "V = 8 t; 10 t over 3/8 in; 12 t over 1/2 in; one step more from Rm = 70 ksi",
    k_opening_symbols,
    "air bending; under 6 t the metal may crack, over 14 t the bend is imprecise",
    "common-practice-bending",
    Evidence::common_practice,
    ""};
const base::FormulaCard k_air_bend_radius_card{"bend-radius",
                                               "Inside radius that air bending makes",
                                               "r = max(share V, nose)",
                                               k_radius_symbols,
                                               "air bending, V from 6 t; a trial strip decides",
                                               "common-practice-bending",
                                               Evidence::common_practice,
                                               ""};
const base::FormulaCard k_least_leg_card{"bend-least-leg",
                                         "Shortest outside leg that bridges the V",
                                         "leg = 0.75 V cos(45) / cos(A / 2), not under (r + t) "
                                         "tan(A / 2), beyond 90 degrees not under r + t",
                                         k_leg_symbols,
                                         "air bending up to 150 degrees turned; 0.75 V at 90 "
                                         "degrees is 6 % over the bare geometry V / (2 cos(A / 2))",
                                         "common-practice-bending",
                                         Evidence::common_practice,
                                         ""};
const base::FormulaCard k_punch_travel_card{
    "punch-travel",
    "Punch travel from first touch",
    "y = (V / 2) tan(A / 2) - (r + t) (1 / cos(A / 2) - 1)",
    k_travel_symbols,
    "sharp die shoulders, no springback; add t / 2 for a stroke check",
    "derived-geometry",
    Evidence::derived,
    ""};

base::Result<Force> bend_force_with_factor(const AirBend& bend, double factor) {
    InputCheck check = checked_die(bend.opening, bend.thickness);
    check.length(bend.length, "length")
        .stress(bend.tensile_strength, "tensile_strength")
        .ratio(factor, k_most_factor, "k");
    if (check.failed())
        return check.refusal();
    if (!(bend.opening > bend.thickness))
        return base::Refusal{"opening", "The V is not wider than the metal is thick.", ""};
    const Area metal = bend.thickness * bend.thickness;
    return bend.tensile_strength * metal * (factor * (bend.length / bend.opening));
}

base::Result<Force> bend_force(const AirBend& bend) {
    const auto force = bend_force_with_factor(bend, k_least_factor); // sound inputs first
    if (!force.ok())
        return force.refusal();
    if (is_too_narrow(bend.opening, bend.thickness))
        return too_narrow();
    return bend_force_with_factor(bend, careful_factor(bend));
}

base::Result<Working> bend_force_working(const AirBend& bend) {
    const auto force = bend_force(bend);
    if (!force.ok())
        return force.refusal();
    return force_working(
        k_bend_force_card,
        bend,
        careful_factor(bend),
        *force,
        "The larger of the two printed factors 1.33 (Groover) and 1 + 4 t / V (Oehler).");
}

base::Result<Working> bend_force_with_factor_working(const AirBend& bend, double factor) {
    const auto force = bend_force_with_factor(bend, factor);
    if (!force.ok())
        return force.refusal();
    return force_working(k_bend_force_given_card,
                         bend,
                         factor,
                         *force,
                         "With a factor as given, for comparison: not the careful choice.");
}

base::Result<Length> usual_opening(Length thickness, Stress upper_tensile) {
    InputCheck check;
    check.length(thickness, "thickness").stress(upper_tensile, "tensile_strength");
    if (check.failed())
        return check.refusal();
    int step = thickness > inches(0.5) ? 2 : thickness > inches(3.0 / 8.0) ? 1 : 0;
    if (upper_tensile >= k_strong_from)
        step = std::min(step + 1, 2);
    return (8.0 + 2.0 * step) * thickness;
}

base::Result<Working> usual_opening_working(Length thickness, Stress upper_tensile) {
    const auto opening = usual_opening(thickness, upper_tensile);
    if (!opening.ok())
        return opening.refusal();
    return Working{&k_usual_opening_card,
                   {{"t", thickness}, {"Rm", upper_tensile}},
                   {"V", *opening},
                   upper_tensile >= k_strong_from ? "Strong metal: one step larger, up to 12 t."
                                                  : ""};
}

base::Result<Length> air_bend_radius(const AirBendRadius& bend) {
    InputCheck check = checked_die(bend.opening, bend.thickness);
    check.ratio(bend.share, 0.5, "share").length_or_zero(bend.nose, "nose");
    if (check.failed())
        return check.refusal();
    if (is_too_narrow(bend.opening, bend.thickness))
        return too_narrow();
    return larger(bend.share * bend.opening, bend.nose);
}

base::Result<Working> air_bend_radius_working(const AirBendRadius& bend) {
    const auto radius = air_bend_radius(bend);
    if (!radius.ok())
        return radius.refusal();
    const bool nose_decides = bend.nose > bend.share * bend.opening;
    return Working{
        &k_air_bend_radius_card,
        {{"share", quantity::Share{bend.share}}, {"V", bend.opening}, {"nose", bend.nose}},
        {"r", *radius},
        nose_decides ? "The punch nose is the larger and decides."
                     : "The opening decides: a sharper punch does not make it smaller."};
}

base::Result<Length> least_leg(const LeastLeg& bend) {
    InputCheck check = checked_die(bend.opening, bend.thickness);
    check.length_or_zero(bend.radius, "radius");
    if (check.failed())
        return check.refusal();
    if (!(bend.angle > Angle{} && bend.angle <= k_most_air_bend))
        return base::Refusal{
            "angle", "No V closes so far in air bending.", "over 0 and up to 150 degrees turned"};
    if (is_too_narrow(bend.opening, bend.thickness))
        return too_narrow();
    const auto setback = outside_setback({bend.thickness, bend.radius, bend.angle});
    if (!setback.ok())
        return setback.refusal();
    const double half_cosine = std::cos(bend.angle.in_radians() / 2.0);
    const Length bridge = bend.opening * (k_leg_at_90 * std::sqrt(0.5) / half_cosine);
    return larger(bridge, *setback);
}

base::Result<Working> least_leg_working(const LeastLeg& bend) {
    const auto leg = least_leg(bend);
    if (!leg.ok())
        return leg.refusal();
    return Working{
        &k_least_leg_card,
        {{"V", bend.opening}, {"A", bend.angle}, {"r", bend.radius}, {"t", bend.thickness}},
        {"leg", *leg},
        "The printed 0.67-0.70 V lies under the geometry of the die and is not used."};
}

base::Result<Length> punch_travel(Length opening, Length radius, Length thickness, Angle angle) {
    InputCheck check = checked_die(opening, thickness);
    check.length_or_zero(radius, "radius");
    if (check.failed())
        return check.refusal();
    if (!(angle > Angle{} && angle <= k_most_air_bend))
        return base::Refusal{
            "angle", "No V closes so far in air bending.", "over 0 and up to 150 degrees turned"};
    const double f = angle.in_radians() / 2.0;
    const Length travel =
        opening * (std::tan(f) / 2.0) - (radius + thickness) * (1.0 / std::cos(f) - 1.0);
    if (!(travel > Length{}))
        return base::Refusal{"radius", "The radius is too large for this V and angle.", ""};
    return travel;
}

} // namespace treadle::process
