// What a layout makes: parts by role, the rules it was held against, workings, and an elevation.
//
// All of it is data. A rule that is broken is no refusal: it is said beside what was asked for, and
// the adopted local code decides. What cannot be made at all is refused at its input.

#pragma once

#include "job/job.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <string>
#include <vector>

#include "layout/saddle.h"

namespace treadle::assembly {

struct RolePart {
    std::string role; ///< stays the same when sizes change: "post", "top-rail-2"
    job::Part part;   ///< without an id
};

enum class Held { meets, at_limit, breaks };
[[nodiscard]] const char* held_word(Held held); ///< "meets", "is at the limit of", "breaks"

/// One bound of one rule, and what this layout has there.
struct RuleLine {
    std::string rule;  ///< by its name in the table of rules
    std::string words; ///< "opening between pickets"
    Length value;
    Length limit;
    bool at_most = true; ///< the limit is a greatest; else a least
    bool sphere = false; ///< has to stay under it, not reach it
    Held held = Held::meets;
    std::string source; ///< key of assets/sources.json
    base::Evidence evidence = base::Evidence::published;
    std::string remark;
};

struct Figure {
    std::string words; ///< "clear gap between pickets"
    AnyQuantity value;
};

/// Places to be marked on a bar or along a run, all from one face.
struct Marks {
    std::string words; ///< "near faces of pickets, from the post's face along the rail"
    std::vector<Length> places;
};

/// A paper template to be wrapped round the branch where no tool of the crib makes the joint.
struct WrapTemplate {
    std::string mark;
    std::string end; ///< "start", "finish"
    layout::SaddleJoint joint;
};

struct Spot {
    Length x;
    Length y;
};
enum class Shade { steel, bar, open };
/// A piece in the elevation, or a line of the surface (open, two points and more).
struct Outline {
    std::vector<Spot> spots;
    Shade shade = Shade::steel;
    std::string mark; ///< of the part; empty: not one
};
struct Round {
    Spot centre;
    Length radius;
    bool hole = false;
};
/// A length to be written beside its line.
struct Span {
    Spot from;
    Spot to;
    std::string words; ///< before the figure; may be empty
};
struct Elevation {
    std::vector<Outline> outlines;
    std::vector<Round> rounds;
    std::vector<Span> spans;
    std::string description; ///< for somebody who does not see it
};

struct Made {
    std::vector<RolePart> parts;
    std::vector<RuleLine> rules;
    std::vector<Figure> figures;
    std::vector<Marks> marks;
    std::vector<Working> workings;
    std::vector<WrapTemplate> templates;
    std::vector<std::string> cautions;
    Elevation elevation;
};

/// The worst of all its rules; meets when there is none.
[[nodiscard]] Held worst(const std::vector<RuleLine>& rules);

} // namespace treadle::assembly
