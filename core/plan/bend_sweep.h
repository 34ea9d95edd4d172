// One bend of a part that is bent as far as some set of others: what it hits, what meets the stop.
//
// Both flanks rise by half the angle while the punch goes down. A flank is hit or clear on its own,
// whatever is bent on the other, so only the made bends on its side are looked up.

#pragma once

#include "geometry/profile.h"
#include "plan/bend_order.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace treadle::plan {

/// Which bends are made, bit by bit.
using MadeBends = std::uint32_t;

/// What meets the stop behind the die.
struct BendGauge {
    int against = -1; ///< leg whose outside meets it; -1: the free end
    Length stop;
};

/// Keeps what it has found; `problem` must outlive it.
class BendSweep {
public:
    explicit BendSweep(const BendProblem& problem);

    /// The first thing hit, or nothing when both flanks clear all tools.
    [[nodiscard]] const std::optional<BendBlock>& hit(std::size_t bend, MadeBends made);
    /// Nothing when the flank behind the die offers no straight edge far enough out.
    [[nodiscard]] std::optional<BendGauge>
    gauge(std::size_t bend, MadeBends made, bool start_gauged) const;

private:
    /// Where the flank is at one step of the stroke.
    struct Pose {
        double cosine = 1.0;
        double sine = 0.0;
        double shift_mm = 0.0; ///< along the flank
        double apex_mm = 0.0;  ///< height of the outer apex
        double nose_mm = 0.0;  ///< height of the punch nose
    };
    struct Tools {
        geometry::ConvexOutline punch; ///< from its nose up
        geometry::ConvexOutline ram;
        geometry::ConvexOutline die;
        geometry::ConvexOutline bed;
        std::vector<Pose> poses;
        double radians_per_step = 0.0;
        double drift_mm = 0.0; ///< most that a flank and the punch move apart per radian
    };
    struct Found {
        bool known = false;
        std::optional<BendBlock> block;
    };

    void set_up(std::size_t bend);
    [[nodiscard]] Tools tools_of(const OrderedBend& bend) const;
    /// In the way whatever is made.
    [[nodiscard]] std::optional<BendBlock> always_hit(std::size_t bend) const;
    [[nodiscard]] const std::optional<BendBlock>&
    flank(std::size_t bend, MadeBends made, bool forward);
    [[nodiscard]] std::optional<BendBlock>
    sweep(std::size_t bend, const std::vector<std::size_t>& outwards, bool forward);
    [[nodiscard]] std::optional<BendObstacle>
    sweep_line(const Tools& tools, const geometry::ProfileLine& line, bool in_run) const;

    const BendProblem& problem_;
    std::vector<Tools> tools_;                     ///< of the bends that differ
    std::vector<std::size_t> place_;               ///< of each bend's tools in these
    std::vector<std::optional<BendBlock>> always_; ///< by bend
    std::vector<std::size_t> outwards_;
    std::vector<std::vector<Found>> forward_; ///< by bend and the bends made after it
    std::vector<std::vector<Found>> backward_;
    geometry::FoldedStrip strip_;
    std::vector<geometry::Fold> folds_;
};

} // namespace treadle::plan
