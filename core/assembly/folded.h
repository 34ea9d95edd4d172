// One bar of angle notched at its corners and folded to a frame: private to the room.
//
// Blank, bend lines and deduction are process/blank.h's, the notch is layout/frame.h's.

#pragma once

#include "base/result.h"
#include "process/blank.h"

#include <string>
#include <vector>

#include "assembly/made.h"
#include "layout/frame.h"

namespace treadle::assembly {

struct FoldedBar {
    Section bar;
    std::string grade;
    std::vector<Length> legs; ///< outside, in order; a corner between each two
    Angle turn;               ///< at every corner
    Angle closing;            ///< mitre of both ends; zero: square
    Length radius;            ///< inside
    double k = 0.5;
    int count = 1;
    [[nodiscard]] layout::CornerNotch notch() const { return {bar.width, bar.thickness, turn}; }
};
struct FoldedMade {
    std::vector<Length> middles; ///< of the notches, from the start
    layout::NotchSizes notch;
};
/// Adds the part and its workings. Refuses with the fields of the formulas.
[[nodiscard]] base::Result<FoldedMade>
add_folded(Made& made, const FoldedBar& asked, const std::string& mark);
/// "bar", "radius", or `side` for the fields of those formulas.
[[nodiscard]] base::Refusal renamed_for_frame(base::Refusal refusal, const char* side);

} // namespace treadle::assembly
