// What a place of the machine can do with a grade, as a picture: the envelope and the job in it.
//
// Every figure is an answer of the plan's own checks to a trial part with one operation. Thickness
// goes in steps and down, 1/16 in or 0.5 mm, so no point promises more than its check did; rated
// pairs of a plate are never interpolated. Two limits make three regions: up to `fits` any metal of
// the grade fits, up to `fits_up_to` only metal whose certificate says that it is weak enough,
// above it none. Between two points the smaller of both holds, never the line that joins them.

#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::plan {

/// What the picture's axis is.
enum class CapacityKind {
    hole,        ///< punch: diameter of a round hole
    width,       ///< flat shear: width of a square cut
    leg,         ///< angle shear: leg of an equal angle
    bar,         ///< bar shear: no axis, the greatest round and square
    notch_depth, ///< notcher: depth; a rectangle bites with the whole tool
    bend_length  ///< brake: length of a bend turned by 90 degrees, grain unknown
};
/// "hole diameter", "width cut", …
[[nodiscard]] const char* capacity_axis_words(CapacityKind kind);
[[nodiscard]] const char* capacity_key(CapacityKind kind); ///< for files: "hole", "width", …

struct CapacityLimit {
    Length fits; ///< greatest thickness (bar: size) with the strongest of the grade; zero: none
    Length fits_up_to;              ///< with the weakest the grade allows; never below `fits`
    std::optional<Rule> stopped_by; ///< the rule that stops the next step over `fits`
    Length opening;                 ///< brake: of the V that bends `fits`; zero: none
    Length
        least; ///< thinner than this folds or is not held: no fit either; zero: as thin as may be
};
struct CapacityPoint {
    Length x;
    CapacityLimit thickness;
};
struct CapacityBar {
    section::Shape shape = section::Shape::round;
    CapacityLimit size;  ///< diameter or side
    std::string missing; ///< as below, for this bar alone
};

/// An operation of the job that this kind of place does.
struct JobPoint {
    Length x;         ///< hole: diameter of the circle around it; bar: zero
    Length thickness; ///< bar: diameter or side
    section::Shape shape = section::Shape::plate; ///< of the part
    int part = 0;
    int operation = 0;
    Outcome outcome = Outcome::cannot_be_said; ///< at this place, and not better than in the plan
    bool same_grade = false;                   ///< false: the envelope is another metal's
};

struct Capacity {
    CapacityKind kind = CapacityKind::hole;
    /// Path of the datum without which nothing can be said, "machine.stations[0].force": no points
    /// and no bars then. Empty: the envelope stands.
    std::string missing;
    std::string said; ///< why nothing can be said or fits, where a reason was given; else empty
    std::vector<CapacityPoint> points; ///< rising x, at most k_most_columns
    std::vector<CapacityBar> bars;     ///< bar shear
    std::vector<JobPoint> job;
};
inline constexpr int k_most_columns = 60;
/// The picture ends here: more is not asked for.
inline constexpr Length k_thickest_inch = inches(4.0);
inline constexpr Length k_thickest_metric = quantity::millimetres(100.0);

/// Places that have a picture: punch and shears, notchers and brakes on each station they fit.
[[nodiscard]] std::vector<Mounting> capacity_places(const equipment::Machine& machine);
/// "Punch", "Short brake on Tool table".
[[nodiscard]] std::string place_words(Mounting place, const equipment::Machine& machine);

/// `plan` is that of the job on this shop. Refuses a place without a picture (field "station" or
/// "attachment") and a grade that is not known or refused for this work (field "grade").
[[nodiscard]] base::Result<Capacity> capacity(Mounting place,
                                              const std::string& grade,
                                              const Plan& plan,
                                              const job::Job& job,
                                              const equipment::Shop& shop,
                                              const job::Catalog& catalog);

} // namespace treadle::plan
