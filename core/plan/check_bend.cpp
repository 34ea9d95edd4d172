#include "base/stable_sort.h"
#include "plan/checks.h"
#include "plan/trial_use.h"
#include "process/air_bend.h"

#include <algorithm>
#include <cmath>

namespace treadle::plan {

namespace {

using equipment::Attachment;
using equipment::AttachmentKind;

/// One V with one punch nose, and what comes of it.
struct VeeChoice {
    int vee = k_none;
    int punch = k_none;
    Length opening;
    Length nose;
    Length radius; ///< reached
};

/// Everything about a bend that does not depend on the tools.
struct BendCase {
    const Question& question;
    Angle angle;
    Length wanted;              ///< zero: as it comes
    Length length;              ///< along the bend line
    Length leg;                 ///< shorter neighbour, outside
    Length usual;               ///< opening for this thickness
    base::Result<Length> least; ///< radius
};

std::optional<VeeChoice> choice_of(const BendCase& bend, Length opening, Length nose) {
    const Question& q = bend.question;
    const auto radius =
        process::air_bend_radius({q.metal.thickness, opening, q.metal.grade->air_bend_share, nose});
    if (!radius)
        return std::nullopt;
    VeeChoice choice;
    choice.opening = opening;
    choice.nose = nose;
    choice.radius = *radius;
    return choice;
}

void check_opening(OperationPlan& plan, const BendCase& bend, const VeeChoice& choice) {
    const Length thickness = bend.question.metal.thickness;
    plan.checks.push_back(
        size_check(Rule::opening, thickness * process::k_least_opening_ratio, choice.opening));
    if (choice.opening > thickness * process::k_most_opening_ratio)
        plan.checks.push_back(
            warning_check(Rule::opening, "Wide V for this thickness: angle and radius wander."));
}

void check_radius(OperationPlan& plan, const BendCase& bend, const VeeChoice& choice) {
    if (!bend.least) {
        plan.checks.push_back(missing_check(Rule::least_radius, "grade.bend_group"));
        plan.checks.back().said = bend.least.refusal().reason;
    } else {
        plan.checks.push_back(size_check(Rule::least_radius, *bend.least, choice.radius));
    }
    const Length off =
        choice.radius > bend.wanted ? choice.radius - bend.wanted : bend.wanted - choice.radius;
    if (bend.wanted > Length{} && off > bend.wanted * 0.1)
        plan.checks.push_back(warning_check(
            Rule::wanted_radius,
            "These tools make another inside radius than asked for; the blank follows it."));
}

void check_lengths(OperationPlan& plan,
                   const BendCase& bend,
                   const VeeChoice& choice,
                   const Attachment& brake,
                   Mounting mounting) {
    plan.checks.push_back(size_check_or_missing(Rule::brake_length,
                                                bend.length,
                                                brake.length,
                                                attachment_path(mounting.attachment, "length")));
    const equipment::Crib& crib = bend.question.shop.crib;
    plan.checks.push_back(size_check(
        Rule::brake_length, bend.length, crib.vees[static_cast<std::size_t>(choice.vee)].length));
    if (choice.punch != k_none)
        plan.checks.push_back(
            size_check(Rule::brake_length,
                       bend.length,
                       crib.brake_punches[static_cast<std::size_t>(choice.punch)].length));
    plan.checks.push_back(
        size_check_or_missing(Rule::thickness_limit,
                              bend.question.metal.thickness,
                              brake.largest_thickness,
                              attachment_path(mounting.attachment, "largest_thickness")));
}

void check_leg(OperationPlan& plan, const BendCase& bend, const VeeChoice& choice) {
    const auto least = process::least_leg(
        {choice.opening, bend.question.metal.thickness, choice.radius, bend.angle});
    plan.checks.push_back(least ? size_check(Rule::least_leg, *least, bend.leg)
                                : refused_check(Rule::least_leg, least.refusal().reason));
}

void check_stroke(OperationPlan& plan,
                  const BendCase& bend,
                  const VeeChoice& choice,
                  const Attachment& brake,
                  Mounting mounting) {
    const Question& q = bend.question;
    const auto travel =
        process::punch_travel(choice.opening, choice.radius, q.metal.thickness, bend.angle);
    if (!travel) {
        plan.checks.push_back(refused_check(Rule::stroke, travel.refusal().reason));
        return;
    }
    // Shoulder radius and springback ask for more than the sharp figure: half the thickness. In
    // steep bends the figure falls with thickness; that help is not counted on.
    const double fall = 1.0 / std::cos(bend.angle.in_radians() / 2.0) - 1.0;
    const Length needed = *travel + q.metal.thickness * std::max(0.5, fall);
    plan.travel = *travel;
    plan.stroke_needed = needed;
    const auto& station = q.shop.machine.stations[static_cast<std::size_t>(mounting.station)];
    // The station drives the brake's ram: where both are known the shorter stroke counts.
    std::optional<Length> stroke = brake.stroke ? brake.stroke : station.stroke;
    if (stroke && station.stroke)
        stroke = smaller(*stroke, *station.stroke);
    plan.checks.push_back(size_check_or_missing(
        Rule::stroke, needed, stroke, attachment_path(mounting.attachment, "stroke")));
}

void note_needs(OperationPlan& plan, const BendCase& bend, const VeeChoice& choice) {
    if (choice.punch != k_none)
        return;
    plan.needs.push_back({Need::Kind::brake_punch, {}, choice.radius, {}, bend.length});
    plan.checks.push_back(warning_check(Rule::tool_in_crib, "The brake punch is not in the crib."));
}

/// Trial strips of this metal, thickness and V go before the house's K, that before the table.
void choose_blank_rule(OperationPlan& plan, const Question& q) {
    const BlankChoice choice = blank_choice(
        q.shop,
        {q.metal.grade->id, q.part.grade, q.metal.thickness, plan.tools.opening, q.part.grain});
    plan.blank_rule = choice.rule;
    plan.blank_source = choice.source;
    plan.trial = choice.trial;
    if (choice.left_aside != k_none)
        plan.checks.push_back(
            warning_check(Rule::trial_strip,
                          "Trial strips " + std::to_string(choice.left_aside + 1) +
                              " give no sound K and are left aside: re-measure their radius, then "
                              "the legs."));
}

OperationPlan with_tools(const BendCase& bend, const VeeChoice& choice, Mounting mounting) {
    const Question& q = bend.question;
    const Attachment& brake =
        q.shop.machine.attachments[static_cast<std::size_t>(mounting.attachment)];
    OperationPlan plan;
    plan.checks.reserve(k_usual_checks);
    plan.strokes = 1;
    plan.tools.station = mounting.station;
    plan.tools.attachment = mounting.attachment;
    plan.tools.vee = choice.vee;
    plan.tools.brake_punch = choice.punch;
    plan.tools.opening = choice.opening;
    plan.tools.nose = choice.nose;
    plan.bend = {q.metal.thickness, choice.radius, bend.angle};
    const auto force =
        process::bend_force({q.metal.thickness, bend.length, choice.opening, q.metal.high});
    plan.checks.push_back(force ? mounting_force_check(q, mounting, *force)
                                : refused_check(Rule::force, force.refusal().reason));
    check_opening(plan, bend, choice);
    check_radius(plan, bend, choice);
    check_lengths(plan, bend, choice, brake, mounting);
    check_leg(plan, bend, choice);
    check_stroke(plan, bend, choice, brake, mounting);
    note_needs(plan, bend, choice);
    choose_blank_rule(plan, q);
    const auto figures = process::bend_figures(plan.bend, plan.blank_rule);
    if (figures)
        plan.figures = *figures;
    else
        plan.checks.push_back(refused_check(Rule::least_radius, figures.refusal().reason));
    decide(plan, q.shop.rules.least_margin);
    return plan;
}

/// V and nose choices from the crib that are wide enough for the metal.
std::vector<VeeChoice> choices(const BendCase& bend) {
    const equipment::Crib& crib = bend.question.shop.crib;
    std::vector<VeeChoice> found;
    const auto add = [&](int vee, Length opening) {
        for (std::size_t p = 0; p < std::max<std::size_t>(crib.brake_punches.size(), 1); ++p) {
            const bool has = p < crib.brake_punches.size() && crib.brake_punches[p].count > 0;
            auto choice = choice_of(bend, opening, has ? crib.brake_punches[p].nose : Length{});
            if (!choice)
                continue;
            choice->vee = vee;
            choice->punch = has ? static_cast<int>(p) : k_none;
            found.push_back(*choice);
        }
    };
    for (std::size_t v = 0; v < crib.vees.size(); ++v)
        if (crib.vees[v].count > 0)
            add(static_cast<int>(v), crib.vees[v].opening);
    return found;
}

/// No V to bend in. Force, radius, leg and blank all hang on the opening, so nothing is promised
/// for one that would have to be bought first; its usual opening goes on the list.
OperationPlan without_vee(const BendCase& bend) {
    Length widest;
    for (const equipment::VBlock& vee : bend.question.shop.crib.vees)
        if (vee.count > 0)
            widest = larger(widest, vee.opening);
    OperationPlan plan;
    plan.strokes = 1;
    plan.bend = {bend.question.metal.thickness, Length{}, bend.angle};
    plan.needs.push_back({Need::Kind::vee_block, {}, bend.usual, {}, bend.length});
    if (widest > Length{})
        plan.checks.push_back(size_check(
            Rule::opening, bend.question.metal.thickness * process::k_least_opening_ratio, widest));
    else
        plan.checks.push_back(missing_check(Rule::opening, "crib.vees"));
    decide(plan, 0.0);
    return plan;
}

/// How far a choice is from what is wanted: first the radius, if one is, then the usual opening.
struct Distance {
    Length radius;
    Length opening;
};
Distance distance(const BendCase& bend, const VeeChoice& choice) {
    const auto apart = [](Length a, Length b) { return a > b ? a - b : b - a; };
    return {bend.wanted > Length{} ? apart(choice.radius, bend.wanted) : Length{},
            apart(choice.opening, bend.usual)};
}
bool nearer(const Distance& a, const Distance& b) {
    return a.radius < b.radius || (a.radius == b.radius && a.opening < b.opening);
}

} // namespace

OperationPlan plan_bend(const Question& question, const job::Bend& bend, std::size_t bend_number) {
    const section::Shape shape = question.part.section.shape;
    if (shape != section::Shape::flat && shape != section::Shape::plate)
        return refused_plan(Rule::no_station, "Only flats and plates are bent in a V.");
    if (bend_number + 1 >= question.part.legs.size())
        return refused_plan(Rule::no_station,
                            "This bend has no legs: the part needs one leg more.");
    if (!(question.metal.grade->air_bend_share > 0.0)) {
        OperationPlan plan;
        plan.checks.push_back(missing_check(Rule::least_radius, "grade.air_bend_share"));
        decide(plan, 0.0);
        return plan;
    }
    const auto usual = process::usual_opening(question.metal.thickness, question.metal.high);
    if (!usual)
        return refused_plan(Rule::opening, usual.refusal().reason);
    const Length leg =
        smaller(question.part.legs[bend_number], question.part.legs[bend_number + 1]);
    const BendCase bend_case{
        question,
        bend.angle,
        bend.radius,
        question.part.section.width,
        leg,
        *usual,
        process::least_radius(
            question.metal.thickness, *question.metal.grade, question.part.grain, bend.angle)};
    std::optional<OperationPlan> best;
    Distance best_off;
    std::vector<VeeChoice> tools = choices(bend_case);
    const std::vector<Mounting> places = mountings(question.shop.machine, AttachmentKind::brake);
    if (places.empty())
        return not_mounted(
            question.shop.machine, AttachmentKind::brake, "No brake fits this machine.");
    if (tools.empty())
        return without_vee(bend_case);
    base::stable_sort(tools, [&](const VeeChoice& a, const VeeChoice& b) {
        return nearer(distance(bend_case, a), distance(bend_case, b));
    });
    for (const Mounting mounting : places) {
        for (const VeeChoice& choice : tools) {
            const Distance off = distance(bend_case, choice);
            if (best && best->outcome == Outcome::fits && nearer(best_off, off))
                break; // nothing farther away replaces a fit
            OperationPlan plan = with_tools(bend_case, choice, mounting);
            const bool equal = best && !nearer(off, best_off) && !nearer(best_off, off);
            if (!best || plan.outcome < best->outcome ||
                (plan.outcome == best->outcome &&
                 (nearer(off, best_off) || (equal && better(plan, *best))))) {
                best = std::move(plan);
                best_off = off;
            }
        }
    }
    return std::move(*best);
}

} // namespace treadle::plan
