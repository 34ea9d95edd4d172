// A bent flat with a hole near each end, and what all brackets of flat bar ask for: private.

#pragma once

#include <string>
#include <vector>

#include "assembly/bolted.h"
#include "assembly/inputs.h"
#include "assembly/pieces.h"

namespace treadle::assembly {

inline constexpr calc::InputSpec k_flat_inputs[] = {
    {"bar", calc::InputKind::section, true, "flat bar", "", "flat 2 x 1/4 in"},
    {"radius",
     calc::InputKind::length,
     false,
     "inside, of the bends; as it comes if not given",
     "",
     "1/4 in"},
    {"bolt", calc::InputKind::bolt, false, "a hole near each end; none if not given", "", "1/2 in"},
    {"end",
     calc::InputKind::length,
     false,
     "hole centre to the end; needed with a bolt",
     "",
     "1 in"},
    {"count", calc::InputKind::count, false, "of pieces; 1 if not given", "", "12"},
    {"grade", calc::InputKind::material, true, "of the bar", "", "A36"},
};

struct FlatBar {
    Section bar;
    Length radius;
    bool bolted = false;
    BoltChoice bolt;
    Length end;
    int count = 1;
    std::string grade;
    [[nodiscard]] Length thickness() const { return bar.thickness; }
};
[[nodiscard]] FlatBar read_flat(Inputs& in);

struct Turn {
    Angle angle;
    bool up = true;
};
/// The part, its figures and rules, and its profile as the elevation. Refuses `short_leg` when a
/// leg is used up by its bends or by its hole.
[[nodiscard]] base::Result<Made> bent_flat(const FlatBar& flat,
                                           const Piece& piece,
                                           const std::string& mark,
                                           const std::vector<Length>& legs,
                                           const std::vector<Turn>& turns,
                                           const char* short_leg);

} // namespace treadle::assembly
