// The trial parts behind the picture of what a place can do: one operation, as easy as its size
// allows, so that what stops it is the place and not the part.

#pragma once

#include "plan/capacity.h"

#include <vector>

namespace treadle::plan {

/// What a place's picture needs to know of it.
struct CapacityCase {
    CapacityKind kind = CapacityKind::hole;
    Mounting place;
    std::string grade;
    section::Shape bar = section::Shape::round; ///< bar shear: the bar looked at
    const equipment::Shop& shop;                ///< with no other place that does the same work
    UnitSystem units = UnitSystem::inch;
};

/// The shop with every other place that does the same work taken out of use; indices stay.
[[nodiscard]] equipment::Shop with_only(const equipment::Shop& shop, Mounting place);
/// False when there is nothing to take out.
[[nodiscard]] bool has_rivals(const equipment::Machine& machine, Mounting place);

/// The picture's axis: even steps up to the largest size that the place is described for, and the
/// widths of its rated pairs.
[[nodiscard]] std::vector<Length> capacity_columns(const CapacityCase& c);
/// The n-th step of thickness, exactly the size that its print reads as.
[[nodiscard]] Length capacity_step(const CapacityCase& c, int n);
[[nodiscard]] int capacity_steps(const CapacityCase& c, Length x);

[[nodiscard]] job::Part trial_part(const CapacityCase& c, Length x, Length thickness);

/// The job's operations of this kind; `shop` is the whole one that `plan` was made with.
[[nodiscard]] std::vector<JobPoint> job_points(const CapacityCase& c,
                                               const Plan& plan,
                                               const job::Job& job,
                                               const equipment::Shop& shop,
                                               const job::Catalog& catalog);

} // namespace treadle::plan
