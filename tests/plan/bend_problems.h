// Parts for the order of bends: legs and bends in millimetres and degrees, one set of tools.

#pragma once

#include "plan/bend_order.h"
#include "process/blank.h"

#include <doctest/doctest.h>

#include <vector>

namespace treadle::test {

/// V 16, block 40 x 60, punch 20 x 100 with an 85 degree wedge, bed 80, ram 60. Invented.
inline plan::BrakeOutline brake_outline() {
    plan::BrakeOutline tools;
    tools.opening = millimetres(16.0);
    tools.die_width = millimetres(40.0);
    tools.die_height = millimetres(60.0);
    tools.punch_width = millimetres(20.0);
    tools.punch_height = millimetres(100.0);
    tools.punch_included = degrees(85.0);
    tools.nose = millimetres(1.0);
    tools.bed_width = millimetres(80.0);
    tools.ram_width = millimetres(60.0);
    tools.open_height = millimetres(200.0);
    tools.least_gauge = millimetres(15.0);
    return tools;
}

struct TurnedBend {
    double angle_deg = 90.0;
    bool up = true;
};

/// Thickness 2, inside radius 2.5; flat places after DIN 6935.
inline plan::BendProblem bend_problem(const std::vector<double>& legs_mm,
                                      const std::vector<TurnedBend>& bends,
                                      const plan::BrakeOutline& tools = brake_outline()) {
    process::BentPart part;
    for (const double leg : legs_mm)
        part.outside_legs.push_back(millimetres(leg));
    for (const TurnedBend& bend : bends)
        part.bends.push_back({millimetres(2.0), millimetres(2.5), degrees(bend.angle_deg)});
    const auto blank = process::blank_length(part, {});
    REQUIRE(blank.ok());
    plan::BendProblem problem;
    problem.thickness = millimetres(2.0);
    problem.blank_length = blank->length;
    for (std::size_t i = 0; i < bends.size(); ++i)
        problem.bends.push_back({blank->bend_lines[i],
                                 blank->bends[i].allowance,
                                 blank->bends[i].deduction / 2.0,
                                 part.bends[i].radius,
                                 part.bends[i].angle,
                                 bends[i].up,
                                 tools});
    return problem;
}

} // namespace treadle::test
