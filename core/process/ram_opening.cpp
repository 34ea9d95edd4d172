#include "process/ram_opening.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <cmath>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_brake_symbols[] = {{"h", "punch nose over the V"},
                                                {"t", "thickness"},
                                                {"L", "leg that stands up, outside"},
                                                {"A", "angle turned, at most 90 degrees"},
                                                {"g", "clearance"}};
constexpr base::CardSymbol k_blade_symbols[] = {
    {"h", "upper blade over the lower one"}, {"t", "thickness"}, {"g", "clearance"}};

} // namespace

const base::FormulaCard k_brake_opening_card{
    "brake-opening",
    "Opening of a brake that lets the piece out",
    "h = max(t, L sin(A)) + g",
    k_brake_symbols,
    "one bend, its other leg laid flat on the V; L = 0 where the piece comes out along the bend "
    "line",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_blade_opening_card{"blade-opening",
                                             "Opening of blades for the stock",
                                             "h = t + g",
                                             k_blade_symbols,
                                             "straight blades; no more than the stock needs, so "
                                             "that no finger fits in",
                                             "common-practice-shear",
                                             Evidence::common_practice,
                                             ""};

base::Result<Length> brake_opening(const BrakeOpening& bend) {
    InputCheck check;
    check.length(bend.thickness, "thickness")
        .length_or_zero(bend.leg, "leg")
        .angle_within(bend.angle, 0.0, 180.0, "angle")
        .length(bend.clearance, "clearance");
    if (check.failed())
        return check.refusal();
    // Turned farther, the leg leans over: no part of it is higher than the leg is long.
    const double turned = std::fmin(bend.angle.in_degrees(), 90.0);
    const double rise = turned < 90.0 ? std::sin(bend.angle.in_radians()) : 1.0;
    return larger(bend.thickness, bend.leg * rise) + bend.clearance;
}

base::Result<Working> brake_opening_working(const BrakeOpening& bend) {
    const auto opening = brake_opening(bend);
    if (!opening)
        return opening.refusal();
    return Working{&k_brake_opening_card,
                   {{"t", bend.thickness},
                    {"L", bend.leg},
                    {"A", bend.angle.in_degrees() < 90.0 ? bend.angle : degrees(90.0)},
                    {"g", bend.clearance}},
                   {"h", *opening},
                   bend.leg > Length{} ? "" : "The piece comes out along the bend line."};
}

base::Result<Length> blade_opening(Length thickness, Length clearance) {
    InputCheck check;
    check.length(thickness, "thickness").length(clearance, "clearance");
    if (check.failed())
        return check.refusal();
    return thickness + clearance;
}

base::Result<Working> blade_opening_working(Length thickness, Length clearance) {
    const auto opening = blade_opening(thickness, clearance);
    if (!opening)
        return opening.refusal();
    return Working{
        &k_blade_opening_card, {{"t", thickness}, {"g", clearance}}, {"h", *opening}, ""};
}

} // namespace treadle::process
