// How an operation is checked: demand (process) meets offer (equipment) here and nowhere else.
//
// One function per operation kind tries every place of the machine that could do it and keeps the
// best. Geometry of the whole part (hole to hole, hole to edge, hole to bend) is looked at once all
// operations have their tools.

#pragma once

#include "plan/plan.h"

#include <string>
#include <vector>

namespace treadle::plan {

/// The metal of a part as verdicts see it.
struct Metal {
    const Grade* grade = nullptr;
    Length thickness; ///< governing thickness of the section
    Stress low;       ///< weakest the grade allows
    Stress high;      ///< strongest the grade allows, or what the certificate says
};

/// All that a check looks at.
struct Question {
    const job::Part& part;
    const equipment::Shop& shop;
    Metal metal;
};

/// Refuses when the grade is unknown, not covered at this thickness, or the certificate is under
/// the grade's minimum.
[[nodiscard]] base::Result<Metal>
metal_of(const job::Part& part, const job::Job& job, const job::Catalog& catalog);

[[nodiscard]] OperationPlan plan_cut(const Question& question, const job::Cut& cut);
[[nodiscard]] OperationPlan plan_punch(const Question& question, const job::Punch& punch);
[[nodiscard]] OperationPlan plan_notch(const Question& question, const job::Notch& notch);
[[nodiscard]] OperationPlan
plan_bend(const Question& question, const job::Bend& bend, std::size_t bend_number);
[[nodiscard]] OperationPlan plan_saddle(const Question& question, const job::Saddle& saddle);

/// Adds the checks that need the whole flat part, and the marks in running order.
void check_layout(const Question& question, PartPlan& plan);

/// Warns at the first operation of what is too heavy or too long for one person (handling.cpp).
void check_handling(const Question& question, PartPlan& plan);

/// The order of the part's bends; a check beside each bend that no order can make.
void check_bend_order(const Question& question, BendOrders& orders, PartPlan& plan);

/// Stages and set-ups of the part's own work, once its verdict stands.
void list_work(PartPlan& plan);
/// Set-ups in working order for the parts that can be made, and how many are needed at least.
void put_in_order(Plan& plan);

// ── made by candidates.cpp, used by every check ──

/// Demand proportional to strength: compares, and finds the strength it fits up to.
[[nodiscard]] Check force_check(const Metal& metal, Force at_high, Force offer);
/// Demand is the strength itself: what the rated size allows, `limit`, against low and high.
[[nodiscard]] Check strength_check(const Metal& metal, Stress limit);
/// demand <= offer, both lengths, no strength in it.
[[nodiscard]] Check size_check(Rule rule, Length demand, Length offer);
[[nodiscard]] Check angle_check(Rule rule, Angle demand, Angle offer);
[[nodiscard]] Check missing_check(Rule rule, std::string path);
[[nodiscard]] Check refused_check(Rule rule, std::string said);
/// Said beside the verdict, decides nothing.
[[nodiscard]] Check warning_check(Rule rule, std::string said);
/// Warns when there is less than what is needed.
void warn_if_under(OperationPlan& plan, Rule rule, Length needed, Length there);
/// Where a datum of the machine stands. Put into words only when it is missing: most are there.
struct DatumPath {
    const char* list; ///< of the machine
    int index;
    const char* datum;

    operator std::string() const; // NOLINT(google-explicit-constructor): it is the path
};
[[nodiscard]] constexpr DatumPath station_path(int station, const char* datum) {
    return {"stations", station, datum};
}
[[nodiscard]] constexpr DatumPath attachment_path(int attachment, const char* datum) {
    return {"attachments", attachment, datum};
}

/// Compares when the datum is there, names it when it is not.
[[nodiscard]] Check size_check_or_missing(Rule rule,
                                          Length demand,
                                          const std::optional<Length>& offer,
                                          const DatumPath& path);
[[nodiscard]] Check force_check_or_missing(const Metal& metal,
                                           Force at_high,
                                           const std::optional<Force>& offer,
                                           const DatumPath& path);
/// Checks of one operation at one place, at most but for the rarest: room is made once.
inline constexpr std::size_t k_usual_checks = 8;

/// Outcome, deciding check and tightness from the checks.
void decide(OperationPlan& plan, double least_margin);
/// True when `a` is the better place: better outcome, then more to spare.
[[nodiscard]] bool better(const OperationPlan& a, const OperationPlan& b);
/// Nothing of the kind can be mounted: says so, or which attachment does not say where it fits.
[[nodiscard]] OperationPlan
not_mounted(const equipment::Machine& machine, equipment::AttachmentKind kind, std::string said);
/// Metal and fillet of the leg or flange that stands up at a face's datum edge, from that edge;
/// zero when nothing stands there (standing_leg.cpp).
[[nodiscard]] Length standing_metal(const Section& section, section::Face face);
/// A channel's web has a flange at both edges.
[[nodiscard]] constexpr bool stands_at_both(const Section& section, section::Face face) {
    return section.shape == section::Shape::channel && face == section::Face::web;
}
/// Attachments of a kind with every station they fit that exists.
[[nodiscard]] std::vector<Mounting> mountings(const equipment::Machine& machine,
                                              equipment::AttachmentKind kind);
/// Force of a mounting: smaller of station's and attachment's; a missing one is named.
[[nodiscard]] Check
mounting_force_check(const Question& question, Mounting mounting, Force at_high);
/// One refusing check and nothing else.
[[nodiscard]] OperationPlan refused_plan(Rule rule, std::string said);

/// Positions of an operation's holes on the flat, with their half extents.
struct PlacedHole {
    int operation = 0;
    section::Face face = section::Face::flat;
    int leg = 0;
    Length x;
    Length y;
    Length half_along;
    Length half_across;
    bool round = false;
};
[[nodiscard]] std::vector<PlacedHole> placed_holes(const job::Part& part,
                                                   const process::Blank& blank);

/// Tool body against a standing leg, stripper against the stroke: allowances that are common
/// practice, no source.
inline constexpr Length k_throat_clearance = inches(0.25);
inline constexpr Length k_default_stripper_gap = inches(0.25);
inline constexpr Length k_die_entry = inches(0.125);

} // namespace treadle::plan
