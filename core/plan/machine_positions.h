// Private to the room: where the stops of an operation stand, one position after the other.

#pragma once

#include "plan/machine_steps.h"

#include <vector>

namespace treadle::plan {

struct Position {
    std::vector<SetFigure> figures;
    std::vector<Measure> measures; ///< on the first piece; none: nothing is measured here
    section::Face face = section::Face::flat;
    int strokes = 1;
};

/// In running order, at least one. Their strokes are those of the operation's plan.
[[nodiscard]] std::vector<Position> positions_of(const PartPlan& part, int operation);

/// What the ram is set to for the whole set-up, where it is known.
[[nodiscard]] std::vector<SetFigure> ram_figures(const Settings& settings);

} // namespace treadle::plan
