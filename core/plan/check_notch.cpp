#include "plan/checks.h"
#include "process/notch.h"

#include <cmath>

namespace treadle::plan {

namespace {

using equipment::Attachment;
using equipment::AttachmentKind;
using geometry::NotchOutline;
using geometry::NotchPlace;
using geometry::NotchShape;
using job::NotchEdge;

constexpr Angle k_same_angle = quantity::degrees(0.5); // a trade angle is not held closer

constexpr Length k_least_overlap = inches(1.0 / 16.0); // common practice, no source

bool is_corner(NotchEdge edge) {
    return edge == NotchEdge::start_near || edge == NotchEdge::start_far ||
           edge == NotchEdge::finish_near || edge == NotchEdge::finish_far;
}

NotchOutline outline_of(const job::Notch& notch) {
    NotchOutline outline;
    outline.shape = notch.shape;
    outline.place = notch.shape == NotchShape::rectangle && is_corner(notch.edge)
                        ? NotchPlace::corner
                        : NotchPlace::edge;
    outline.width = notch.along;
    outline.depth = notch.depth;
    outline.included = notch.included;
    return outline;
}

void check_vee(OperationPlan& plan, const Attachment& tool, int index, const job::Notch& notch) {
    if (!tool.vee_included) {
        plan.checks.push_back(
            missing_check(Rule::notch_tool, attachment_path(index, "vee_included")));
        return;
    }
    const double off = notch.included.in_degrees() - tool.vee_included->in_degrees();
    if (std::abs(off) > k_same_angle.in_degrees())
        plan.checks.push_back(
            refused_check(Rule::notch_tool, "The V notcher's blades stand at another angle."));
}

/// Bites along the edge; the force of the largest bite decides.
int bites_along(OperationPlan& plan,
                const Question& question,
                const Attachment& tool,
                int index,
                Length along) {
    if (!tool.length) {
        plan.checks.push_back(missing_check(Rule::notch_tool, attachment_path(index, "length")));
        return 1;
    }
    if (along <= *tool.length)
        return 1;
    const auto bites = process::notch_bites(along, *tool.length, question.shop.rules.notch_overlap);
    if (bites) {
        if (question.shop.rules.notch_overlap < k_least_overlap)
            plan.checks.push_back(
                warning_check(Rule::notch_overlap,
                              "Bites that hardly overlap leave a fin: let each take 1/8 in (3 mm) "
                              "of the one before."));
        return *bites;
    }
    plan.checks.push_back(refused_check(Rule::notch_tool, bites.refusal().reason));
    return 1;
}

/// Room that a notch leaves to the legs that stand on its face; less than none when it cuts there.
Length room_to_legs(const Question& question, const job::Notch& notch) {
    const Length width = section::width_of(question.part.section, notch.face);
    const bool both = stands_at_both(question.part.section, notch.face);
    const Length half = geometry::mouth(outline_of(notch)) * 0.5;
    switch (notch.edge) {
    case NotchEdge::start_end:
    case NotchEdge::finish_end:
        return both ? smaller(notch.at - half, width - notch.at - half) : notch.at - half;
    case NotchEdge::far_edge:
    case NotchEdge::start_far:
    case NotchEdge::finish_far:
        return both ? Length{} : width - notch.depth;
    default:
        return Length{};
    }
}

void check_standing_leg(OperationPlan& plan,
                        const Question& question,
                        const job::Notch& notch,
                        int index,
                        const Attachment& tool) {
    const Length metal = standing_metal(question.part.section, notch.face);
    if (!(metal > Length{}))
        return;
    const Length room = room_to_legs(question, notch);
    if (room < metal)
        plan.checks.push_back(refused_check(
            Rule::flange_clearance, "The other leg stands there: cope from the toe, or saw it."));
    else if (tool.flange_clearance)
        plan.checks.push_back(
            size_check(Rule::flange_clearance, metal + *tool.flange_clearance, room));
    else
        plan.checks.push_back(
            missing_check(Rule::flange_clearance, attachment_path(index, "flange_clearance")));
}

OperationPlan on_mounting(const Question& question,
                          const job::Notch& notch,
                          Mounting mounting,
                          Length thickness) {
    const Attachment& tool =
        question.shop.machine.attachments[static_cast<std::size_t>(mounting.attachment)];
    OperationPlan plan;
    plan.tools.station = mounting.station;
    plan.tools.attachment = mounting.attachment;
    plan.strokes = 1;
    NotchOutline bite = outline_of(notch);
    if (notch.shape == NotchShape::vee) {
        check_vee(plan, tool, mounting.attachment, notch);
    } else {
        plan.strokes = bites_along(plan, question, tool, mounting.attachment, notch.along);
        if (tool.length)
            bite.width = smaller(bite.width, *tool.length);
    }
    plan.checks.push_back(size_check_or_missing(
        Rule::notch_tool, notch.depth, tool.depth, attachment_path(mounting.attachment, "depth")));
    plan.checks.push_back(
        size_check_or_missing(Rule::thickness_limit,
                              thickness,
                              tool.largest_thickness,
                              attachment_path(mounting.attachment, "largest_thickness")));
    check_standing_leg(plan, question, notch, mounting.attachment, tool);
    const Stress strength = material::shear_strength(*question.metal.grade, question.metal.high);
    const auto force = process::notch_force({bite, thickness, strength});
    plan.checks.push_back(force ? mounting_force_check(question, mounting, *force)
                                : refused_check(Rule::force, force.refusal().reason));
    decide(plan, question.shop.rules.least_margin);
    return plan;
}

} // namespace

OperationPlan plan_notch(const Question& question, const job::Notch& notch) {
    const Length thickness = section::thickness_at(question.part.section, notch.face);
    if (!(thickness > Length{}))
        return refused_plan(Rule::no_station, "This shape has no flat face to notch there.");
    const section::Shape shape = question.part.section.shape;
    if (shape == section::Shape::pipe || shape == section::Shape::square_tube)
        return refused_plan(Rule::no_station, "A notcher crushes tube: cope it with tube tooling.");
    const auto kind = notch.shape == NotchShape::vee ? AttachmentKind::vee_notcher
                                                     : AttachmentKind::rectangular_notcher;
    std::optional<OperationPlan> best;
    for (const Mounting mounting : mountings(question.shop.machine, kind)) {
        OperationPlan plan = on_mounting(question, notch, mounting, thickness);
        if (!best || better(plan, *best))
            best = std::move(plan);
    }
    if (!best)
        return not_mounted(
            question.shop.machine, kind, "No notcher of this kind fits this machine.");
    return std::move(*best);
}

} // namespace treadle::plan
