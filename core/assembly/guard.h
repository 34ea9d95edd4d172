// A guard, level or up a stair: what both kinds ask, and what is made of it. Private to the room.
//
// Height     surface (level) or nosing line (stair), upright, to the top edge
// Between    v = height - bottom gap - rails, each upright; square to the slope v cos A
// Rail       level: between the posts; raked, with square ends      card raked-rail
// Cap        over the posts, as long as the run; mitred at corners
// Post       height - cap - base plate + what stands below the surface

#pragma once

#include <string>
#include <vector>

#include "assembly/infill.h"
#include "assembly/inputs.h"
#include "assembly/pieces.h"

namespace treadle::assembly {

/// Rules by name; null where the code has none of the kind.
struct GuardRules {
    const char* opening;
    const char* height;
    const char* bottom;
    const char* triangle;
};

/// Pieces of one stretch: of the run or flight itself, or of a landing that goes on from it.
struct GuardPieces {
    Piece post;
    Piece top;
    Piece bottom;
    Piece mid;
    Piece cap;
    Piece picket;
    const char* where; ///< behind the words of its rules and figures
};
enum class Landing { lower, upper };

enum class Fill { pickets, midrail };
enum class Joint { welded, punched };

struct Guard {
    GuardRules rules{};
    bool pool = false;
    std::vector<Length> runs; ///< level, over all; a shared post at each corner
    const GuardPieces* pieces = nullptr;
    GuardRules landing_rules{};
    Length landings[2]; ///< by Landing; from the flight's last post, which they share; zero: none
    Length landing_height;
    layout::Slope steps{}; ///< riser and tread of a stair
    Rake rake;
    Length height;
    Length bottom_gap;
    Length spacing;
    Section post;
    Section top;
    Section bottom;
    Section cap; ///< no width: none
    Section picket;
    Length picket_width;
    int per_tread = 0; ///< stair: zero by the limit
    Fill fill = Fill::pickets;
    Joint joint = Joint::welded;
    Length margin;
    Length step;
    Length clearance;
    Length below;
    Length base;
    Length fit_up;
    Length wall_gap;
    std::string grade;
    std::string post_grade;
};

[[nodiscard]] Guard read_guard(Inputs& in, bool stair);
[[nodiscard]] base::Result<Made>
make_guard(Inputs& in, const Guard& guard, const std::string& mark);

/// One side as it was laid out.
struct GuardSide {
    Length run;
    int panels = 0;
    Length clear;
    InfillMade infill;
};
/// Upright sizes that parts and drawing share.
struct GuardHeights {
    Length cap; ///< upright depth; zero without one
    Length top;
    Length bottom;
    Length between; ///< from the bottom rail to the top rail
};
[[nodiscard]] GuardHeights guard_heights(const Guard& guard);
[[nodiscard]] Elevation
draw_guard(const Guard& guard, const std::vector<GuardSide>& sides, const std::string& mark);
/// Adds a landing, level, to the drawing of its flight.
void draw_landing(Elevation& out,
                  const Guard& flight,
                  const Guard& landing,
                  const GuardSide& side,
                  Landing which,
                  const std::string& mark);

} // namespace treadle::assembly
