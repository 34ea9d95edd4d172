// Private to the room: the outlines that the flat, finished and small pictures share.

#pragma once

#include "job/job.h"
#include "plan/plan.h"
#include "sheet/drafting.h"

#include <optional>
#include <vector>

namespace treadle::sheet {

/// Faces that a flat view shows: those with work on them, at least the first.
[[nodiscard]] std::vector<section::Face> faces_shown(const job::Part& part);
[[nodiscard]] double blank_length_mm(const plan::PartPlan& plan);
[[nodiscard]] double face_width_mm(const plan::PartPlan& plan, section::Face face);

/// A notch's own edges on the blank, and where its number goes.
struct NotchEdges {
    std::vector<Spot> edges;
    int operation = 0;
};
struct FaceOutline {
    std::vector<Spot> outline; ///< closed, anticlockwise from the datum corner
    std::vector<NotchEdges> notches;
};
/// The face as it is cut: mitres, notches, saddles.
[[nodiscard]] FaceOutline
face_outline(const plan::PartPlan& plan, section::Face face, double length_mm);

/// Where the ends of a face are, at a height above its datum edge.
struct EndPlaces {
    double start = 0.0;
    double finish = 0.0;
};
[[nodiscard]] EndPlaces
ends_at(const plan::PartPlan& plan, section::Face face, double length_mm, double height_mm);

/// A shaped hole's corners about its centre; empty for a round one.
[[nodiscard]] std::vector<Spot> hole_corners(const geometry::HoleOutline& hole, bool turned);
/// A face's holes as they are, its datum edge at height `low`. Numbers keep clear of them.
void draw_holes(Drafter& draft,
                const plan::PartPlan& plan,
                section::Face face,
                double low,
                int only = plan::k_none);
[[nodiscard]] bool is_bent(const job::Part& part);

/// One straight leg of a bent profile: its lower face from tangent to tangent.
struct ProfileLeg {
    Spot from;
    Spot to;
    double setback_from = 0.0; ///< how far the outside dimension reaches beyond
    double setback_to = 0.0;
    double side = 0.0; ///< +1: the outside is left of the way along, -1: right
};
struct ProfileBend {
    Spot apex;   ///< on the inside surface
    Spot inward; ///< unit vector from there to the inside
    int operation = 0;
};
struct Profile {
    std::vector<Spot> outline;
    std::vector<ProfileLeg> legs;
    std::vector<ProfileBend> bends;
};
/// Seen along the bend lines. Nothing when the plan has no figures for some bend.
[[nodiscard]] std::optional<Profile> bent_profile(const plan::PartPlan& plan);
/// With only these operations' bends made, the others still flat.
[[nodiscard]] std::optional<Profile> bent_profile(const plan::PartPlan& plan,
                                                  const std::vector<int>& made);

/// The section across, outside and, for hollow ones, inside.
[[nodiscard]] std::vector<std::vector<Spot>> section_outlines(const Section& section);

/// A line of text in place of a picture, with the reason.
[[nodiscard]] Drawing no_drawing(const plan::PartPlan& plan);

} // namespace treadle::sheet
