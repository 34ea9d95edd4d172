// A job: the parts to be made, and what is done to each.
//
// Values only. Parts are shared, never changed in place: an edit makes a new part and a new job
// that shares the rest, so undo is cheap and a plan knows what did not change.
//
// One datum for everything: x runs from the part's start end, y from the datum edge of the face
// (heel of an angle, back of a channel's web, guide edge of a flat).

#pragma once

#include "equipment/caution.h"
#include "geometry/hole.h"
#include "geometry/notch.h"
#include "job/layout_record.h"
#include "material/grade.h"
#include "quantity/print.h"
#include "quantity/quantity.h"
#include "section/section.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace treadle::job {

using section::Face;

/// Equal pitch in rows and columns; one hole is 1 x 1 with no pitch.
struct HolePattern {
    Length x; ///< first hole centre from the start of its leg (outside corner) or of the part
    Length y; ///< first hole centre from the datum edge
    int columns = 1;
    int rows = 1;
    Length column_pitch;
    Length row_pitch;
};

struct Punch {
    geometry::HoleOutline hole;
    bool turned = false; ///< long side across the part instead of along
    HolePattern at;
    Face face = Face::flat;
    int leg = 0; ///< of a bent part: which leg the dimensions count from
};

enum class CutSide { length, width }; ///< width: slitting a plate or flat to its width
struct Cut {
    CutSide side = CutSide::length;
    Angle start_mitre;  ///< from square, at the start end; 0 is square
    Angle finish_mitre; ///< at the finish end
};

enum class NotchEdge {
    near_edge, ///< datum edge, y = 0
    far_edge,
    start_end,
    finish_end,
    start_near, ///< corners
    start_far,
    finish_near,
    finish_far
};
struct Notch {
    geometry::NotchShape shape = geometry::NotchShape::rectangle;
    NotchEdge edge = NotchEdge::start_far;
    Length at;    ///< centre of an edge notch along that edge; corners ignore it
    Length along; ///< rectangle: along x (near and far edges, corners) or along y (ends)
    Length depth;
    Angle included; ///< V only
    Face face = Face::flat;
};

/// The bend after leg `index` of Part::legs, in order.
struct Bend {
    Angle angle;    ///< turned through
    Length radius;  ///< inside radius wanted; zero: as it comes from the V
    bool up = true; ///< the next leg rises on the side that faces the operator in the flat view
};

enum class End { start, finish, both };
/// The end of a pipe or tube shaped to sit on a run of pipe, square to it.
struct Saddle {
    End end = End::finish;
    Length run_diameter; ///< outside diameter of the pipe it sits on
};

using Operation = std::variant<Cut, Punch, Notch, Bend, Saddle>;

struct Part {
    std::string id;   ///< stable, unique in the job; made by edit
    std::string mark; ///< as painted on the piece
    std::string note;
    std::string grade; ///< id in the catalogue or among the job's own grades
    Section section;
    Length length; ///< finished overall length; ignored for a bent part, whose legs say it
    std::vector<Length>
        legs; ///< outside lengths of a bent part, one more than its bends; else empty
    int count = 1;
    material::Grain grain = material::Grain::unknown;
    /// Strength on this part's mill certificate; zero when none has been read.
    Stress certified_tensile;
    std::vector<Operation> operations; ///< bends in order along the part
};

using PartRef = std::shared_ptr<const Part>;

/// Classes of general tolerances for linear sizes, ISO 2768-1: f, m, c, v.
enum class ToleranceClass { fine, medium, coarse, very_coarse };

struct Job {
    std::string name;
    std::string note;
    std::string due;
    bool invented = false; ///< a scenario of our own, shown as such
    PrintStyle style;
    std::optional<ToleranceClass> tolerance; ///< of finished legs; none: nobody asked for one
    std::vector<PartRef> parts;
    std::vector<Grade> own_grades; ///< typed in by the user
    std::vector<Layout> layouts;   ///< what makes parts here, and stays linked with them
};

/// All hole centres of a pattern, row by row.
struct HoleCentre {
    Length x;
    Length y;
};
[[nodiscard]] std::vector<HoleCentre> centres(const HolePattern& pattern);
[[nodiscard]] int hole_count(const HolePattern& pattern);

/// Structure of a part: marks present, counts 1 to 100000, sizes positive and below 100 m, at most
/// 500 operations and 10000 holes, legs one more than bends. Fields like "operations[2].hole.size".
[[nodiscard]] base::Result<Part> checked(Part part);
[[nodiscard]] base::Result<Job> checked(Job job);

[[nodiscard]] const char*
operation_word(const Operation& operation); ///< "punch", "shear to length"

/// The grades a job can use: the catalogue's and its own (its own win); shapes, and cautions.
struct Catalog {
    material::GradeTable grades;
    section::SectionTable sections;
    equipment::CautionTable cautions;
};
[[nodiscard]] const Grade* find_grade(const Job& job, const Catalog& catalog, std::string_view id);

} // namespace treadle::job
