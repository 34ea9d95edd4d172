// In which order, which side up and which end to the stop a part's bends can be made.
//
// Method  Seen along the bend lines the folded part is a thick line; punch, ram, die and bed are
//         outlines. For every set of bends already made and every next bend both flanks are swept
//         from flat to the full angle, and the stop needs an edge behind the die. A table over all
//         sets of made bends finds the order with the fewest turns of the part, or shows that no
//         order exists.
// Valid   air bending over a V, up to 12 bends; all bend lines square to the part. The legs of one
//         flank against those of the other are not looked at, nor springback.
// Source  sources.json: derived-geometry; clearance is common practice, no source

#pragma once

#include "quantity/quantity.h"

#include <cstddef>
#include <string>
#include <unordered_map>
#include <vector>

namespace treadle::plan {

inline constexpr std::size_t k_most_ordered_bends = 12;
/// Kept between every bent leg and the tools. Common practice, no source.
inline constexpr Length k_bend_clearance = millimetres(2.0);

enum class BendObstacle { punch, ram, die, bed, stop, open_height };

/// The tools in cross-section.
struct BrakeOutline {
    Length opening;
    Length die_width;
    Length die_height;
    Length punch_width;
    Length punch_height; ///< nose to ram
    Angle punch_included;
    Length nose;
    Length bed_width;
    Length ram_width;
    Length open_height; ///< bed to ram, ram up
    Length least_gauge; ///< nearest that the stop comes to the punch line
};

struct OrderedBend {
    Length line;           ///< on the flat, from the start end
    Length allowance;      ///< length of the arc on the flat
    Length half_deduction; ///< from the line to the outside of the leg beyond
    Length radius;         ///< inside
    Angle angle;           ///< turned through
    bool up = true;
    BrakeOutline tools;
};
struct BendProblem {
    Length thickness;
    Length blank_length;
    std::vector<OrderedBend> bends; ///< along the part
};

/// What stands in the way of a bend; leg counts from the start end.
struct BendBlock {
    int bend = 0;
    int leg = -1; ///< none for the stop and for the open height
    BendObstacle obstacle = BendObstacle::punch;
};

struct BendStep {
    int bend = 0;
    bool datum_up = true;     ///< the face that faces the operator in the flat view
    bool start_gauged = true; ///< the start end points to the stop
    bool turned = false;      ///< turned over or end for end since the bend before
    int against = -1;         ///< leg whose outside meets the stop; -1: the free end
    Length stop;              ///< punch line to the gauged edge
};

/// An order, or the proof that there is none, or what is missing to say.
struct BendSequence {
    std::vector<BendStep> steps;    ///< empty when blocked or not computed
    int turns = 0;                  ///< of the part between bends: the fewest there are
    std::vector<BendBlock> blocked; ///< what stops the bends left when the farthest order ends
    std::string missing;            ///< path of the datum without which nothing is computed
    bool too_many = false;          ///< more bends than are searched
};

/// Exact: the fewest turns over all orders, and either end to the stop. Up to 12 bends.
[[nodiscard]] BendSequence order_bends(const BendProblem& problem);

/// Searches once for all parts that are bent alike with the same tools.
class BendOrders {
public:
    [[nodiscard]] const BendSequence& of(const BendProblem& problem);

private:
    std::unordered_map<std::string, BendSequence> found_; ///< by every number of the problem
    std::string key_;
};

} // namespace treadle::plan
