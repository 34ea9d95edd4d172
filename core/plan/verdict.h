// A verdict: demand against offer, with the rule and the margin. Never a bare yes or no.

#pragma once

#include "quantity/print.h"
#include "quantity/quantity.h"

#include <string>
#include <vector>

namespace treadle::plan {

/// From best to worst; an operation's outcome is the worst of its checks.
enum class Outcome {
    fits,           ///< with the strongest metal of the grade
    fits_up_to,     ///< only up to a stated strength: a certificate is needed
    cannot_be_said, ///< something is missing, and it is named
    does_not_fit
};

enum class Rule {
    grade,            ///< the grade is refused for this work
    no_station,       ///< the machine has nothing for this operation
    force,            ///< peak force against the station's or attachment's
    rated_size,       ///< published sizes of the plate, dominance only
    blade,            ///< length of cut against the blade
    mitre,            ///< angle against the shear's largest
    least_piece,      ///< shortest end that the hold-down can grip
    bar_end,          ///< what the last cut leaves of a bar of the rack (warns)
    thin_stock,       ///< metal that folds into the gap between the blades
    hole_thickness,   ///< hole not smaller than the metal is thick
    punch_stress,     ///< mean stress in the punch (warns)
    holder,           ///< what passes the holder
    alignment,        ///< a shaped punch needs a keyed holder
    throat,           ///< reach from some edge
    daylight,         ///< standing leg under the ram
    stroke,           ///< travel needed against travel there is
    flange_clearance, ///< tool body against a standing leg
    on_metal,         ///< whole hole on the metal
    edge_web,         ///< metal left to the edge (warns)
    hole_web,         ///< metal left between holes; overlapping holes do not fit
    cut_web,          ///< metal left to a notch or mitre (warns); a hole into one does not fit
    doubled_stroke,   ///< the same stroke twice
    die_clearance,    ///< die opening over punch, out of the usual (warns)
    slug,             ///< a slug that does not fall by itself (warns)
    snap_through,     ///< hard metal near the limit (warns)
    hole_to_bend,     ///< hole near a bend (warns)
    notch_tool,       ///< notch against the tool's depth, thickness and angle
    notch_overlap,    ///< bites of a notch that leave a fin (warns)
    notch_at_bend,    ///< notch across a bend line or over its V (warns)
    opening,          ///< V opening over thickness
    brake_length,     ///< bend line against brake, V block and punch
    thickness_limit,  ///< attachment's largest thickness
    least_leg,        ///< leg that still bridges the die
    least_radius,     ///< inside radius against the grade's least
    wanted_radius,    ///< radius reached is not the one asked for (warns)
    trial_strip,      ///< strips of this metal and V give no sound K (warns)
    bend_order,       ///< no order of the part's bends keeps clear of the tools
    saddle_die,       ///< die for this pipe on that run
    tube_wall,        ///< wall too thin for its diameter: the pipe collapses
    tool_in_crib,     ///< the tool is not in the crib (warns: shopping list)
    handling,         ///< heavier than one person lifts here (warns)
    hoist,            ///< heavier than two lift together (warns)
    support,          ///< longer than the machine holds by itself (warns)
    tipping           ///< more of the piece hangs over than rests on the table (warns)
};

struct Check {
    Rule rule = Rule::force;
    Outcome outcome = Outcome::fits;
    bool warning = false;     ///< said beside the verdict, does not decide it
    bool by_strength = false; ///< demand depends on the metal's strength
    AnyQuantity
        demand_low; ///< with the weakest metal of the grade (same as high if not by strength)
    AnyQuantity demand_high; ///< with the strongest
    AnyQuantity offer;
    double margin = 0.0; ///< share of the offer left over at demand_high; negative: over
    Stress limit;        ///< fits_up_to: the strength it fits up to
    std::string missing; ///< cannot_be_said: path of the missing datum, "machine.stations[0].force"
    std::string said;    ///< reason in words where numbers do not say it; may be empty
};

/// The worse of two outcomes.
[[nodiscard]] constexpr Outcome worse(Outcome a, Outcome b) { return a < b ? b : a; }

} // namespace treadle::plan
