#include "process/bend_room.h"

#include "process/cards.h"
#include "process/input_check.h"

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_relief_symbols[] = {
    {"w", "least width of the relief"},
    {"d", "least depth of the relief"},
    {"t", "thickness"},
    {"r", "inside radius"},
};
constexpr base::CardSymbol k_hole_symbols[] = {
    {"x", "least distance of the edge of the hole"},
    {"n", "times of the thickness"},
    {"t", "thickness"},
    {"r", "inside radius"},
    {"V", "opening of the die"},
};

constexpr Length k_least_relief = inches(1.0 / 32.0);
constexpr Length k_small_hole = inches(1.0);
constexpr double k_least_times = 1.5; // the lowest rule that is printed
constexpr double k_most_times = 10.0;

double careful_times(const HoleNearBend& hole) {
    if (hole.kind == NearHole::slot_along)
        return 4.0;
    return clearly_below(k_small_hole, hole.hole) ? 3.0 : 2.5;
}

} // namespace

const base::FormulaCard k_relief_width_card{"bend-relief-width",
                                            "Least width of a bend relief",
                                            "w = max(t, 1/32 in)",
                                            k_relief_symbols,
                                            "relief at the end of a bend inside an edge",
                                            "common-practice-bending",
                                            Evidence::common_practice,
                                            ""};
const base::FormulaCard k_relief_depth_card{"bend-relief-depth",
                                            "Least depth of a bend relief",
                                            "d = r + t",
                                            k_relief_symbols,
                                            "past the tangent of the bend; 1 mm more is usual",
                                            "common-practice-bending",
                                            Evidence::common_practice,
                                            ""};
const base::FormulaCard k_hole_to_bend_card{
    "hole-to-bend",
    "Least distance of a hole from a bend",
    "x = n t + r; n = 2.5 to 1 in, 3 larger, 4 slots along the bend",
    k_hole_symbols,
    "edge of the hole to the inside face of the other leg; printed rules run from 1.5 to 4",
    "common-practice-bending",
    Evidence::common_practice,
    ""};
const base::FormulaCard k_hole_to_die_card{"hole-to-die",
                                           "Least distance of a hole from the bend line",
                                           "x = V / 2",
                                           k_hole_symbols,
                                           "a hole over the open V is pulled oval",
                                           "derived-geometry",
                                           Evidence::derived,
                                           ""};

base::Result<Working> relief_width_working(Length thickness) {
    InputCheck check;
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    return Working{
        &k_relief_width_card, {{"t", thickness}}, {"w", larger(thickness, k_least_relief)}, ""};
}

base::Result<Working> relief_depth_working(Length thickness, Length radius) {
    InputCheck check;
    check.length(thickness, "thickness").length(radius, "radius");
    if (check.failed())
        return check.refusal();
    return Working{
        &k_relief_depth_card, {{"r", radius}, {"t", thickness}}, {"d", radius + thickness}, ""};
}

base::Result<Working> hole_to_bend_working(const HoleNearBend& hole) {
    InputCheck check;
    check.length(hole.thickness, "thickness")
        .length(hole.radius, "radius")
        .length(hole.hole, "hole");
    if (check.failed())
        return check.refusal();
    const double n = hole.times.value_or(careful_times(hole));
    if (!(n >= k_least_times && n <= k_most_times))
        return base::Refusal{"times", "No shop rule asks for this.", "1.5 to 10"};
    return Working{&k_hole_to_bend_card,
                   {{"n", quantity::Number{n, 2}}, {"t", hole.thickness}, {"r", hole.radius}},
                   {"x", n * hole.thickness + hole.radius},
                   hole.times ? "By the rule as given: shop rules disagree." : ""};
}

base::Result<Working> hole_to_die_working(Length opening) {
    InputCheck check;
    check.length(opening, "opening");
    if (check.failed())
        return check.refusal();
    return Working{&k_hole_to_die_card, {{"V", opening}}, {"x", opening / 2.0}, ""};
}

} // namespace treadle::process
