// Pickets between two uprights, level or on a slope, and the holes that a punched rail gets for
// them: private to the room. The gap is always the level one; places are along the rail.

#pragma once

#include <optional>
#include <vector>

#include "assembly/inputs.h"
#include "assembly/made.h"
#include "layout/picket.h"
#include "layout/rake.h"

namespace treadle::assembly {

struct Rake {
    std::optional<layout::Slope> slope; ///< none: level
    Angle angle;
    double tangent = 0.0;
    /// What is `level` long as seen from above, along the slope; and an upright of a depth square
    /// to it.
    [[nodiscard]] Length along(Length level) const;
    [[nodiscard]] Length upright(Length depth) const { return along(depth); }
};
[[nodiscard]] base::Result<Rake> rake_of(const layout::Slope& slope);

struct Infill {
    Length clear; ///< level, face to face
    Length picket;
    Length planned; ///< the limit less the shop's margin
    Length step;    ///< places are rounded to it; zero: the pitch is exact
    Rake rake{};
    Length tread{};    ///< level, of one step; with a count: so many on each, whatever the limit
    int per_tread = 0; ///< zero: as few as the planned limit allows
};
struct InfillMade {
    layout::PicketQuestion question; ///< what was answered in the end
    int count = 0;
    Length gap;                ///< level, exact
    Length pitch;              ///< level, exact
    Length largest_gap;        ///< level, after the rounding of the places
    std::vector<Length> marks; ///< centres along the rail, from the face of the first upright
    std::vector<Length> faces; ///< near faces, likewise
};
/// Refuses "picket", "opening", "per_tread" or "step".
[[nodiscard]] base::Result<InfillMade> infill(const Infill& question);

/// Least width in the direction of the gap. Refuses what is no picket here.
[[nodiscard]] Length picket_width(Inputs& in, const char* name, const Section& picket);
/// The hole of a punched rail; on a slope it is a slot along the rail.
[[nodiscard]] geometry::HoleOutline
picket_hole(const Section& picket, Length clearance, const Rake& rake);

struct RailHoles {
    const InfillMade& infill;
    geometry::HoleOutline hole;
    Length start; ///< where the rail begins, from the face of the upright along the rail
    bool exact = true;
};
void punch_rail(job::Part& rail, const RailHoles& holes);

} // namespace treadle::assembly
