#include "plan/checks.h"

namespace treadle::plan {

namespace {

using equipment::SaddleDie;

constexpr Length k_same_pipe = quantity::millimetres(0.5); // inch and metric names of one pipe

bool same_pipe(Length a, Length b) { return a - b <= k_same_pipe && b - a <= k_same_pipe; }

Check wall_check(const Question& question, const SaddleDie& die, Mounting mounting) {
    const auto& tool =
        question.shop.machine.attachments[static_cast<std::size_t>(mounting.attachment)];
    if (!tool.base)
        return missing_check(Rule::rated_size, attachment_path(mounting.attachment, "base"));
    const Length wall = question.part.section.thickness;
    if (wall > die.largest_wall)
        return size_check(Rule::thickness_limit, wall, die.largest_wall);
    // As for a rated size: stronger metal takes the wall down in proportion, weaker never up.
    return strength_check(question.metal, tool.base->value * (die.largest_wall / wall));
}

/// A ring gives way under about 55 Mp sqrt(D/t), Mp = Fy t^2 / 4 (TU Delft 2338, plain jaws); for
/// pipe steel that falls under the force that cuts half the section from D = 23 t on. The warning
/// comes earlier; as a limit it is common practice, no source.
constexpr double k_most_diameter_by_wall = 20.0;

void check_collapse(OperationPlan& plan, const Question& question, const SaddleDie& die) {
    const Length wall = question.part.section.thickness;
    if (die.least_wall)
        warn_if_under(plan, Rule::tube_wall, *die.least_wall, wall);
    if (question.part.section.width > wall * k_most_diameter_by_wall)
        plan.checks.push_back(
            warning_check(Rule::tube_wall,
                          "Thin wall for this diameter: the pipe may collapse before it is cut. "
                          "Plug it with a close mandrel and try a scrap end, or use a hole saw."));
}

OperationPlan on_mounting(const Question& question, const job::Saddle& saddle, Mounting mounting) {
    OperationPlan plan;
    plan.tools.station = mounting.station;
    plan.tools.attachment = mounting.attachment;
    plan.tools.saddle_run = saddle.run_diameter;
    // Half the section a stroke, the pipe turned between (common practice, no source).
    plan.strokes = saddle.end == job::End::both ? 4 : 2;
    const Length branch = question.part.section.width;
    const auto& dies = question.shop.crib.saddle_dies;
    for (std::size_t i = 0; i < dies.size() && plan.tools.saddle_die == k_none; ++i)
        if (same_pipe(dies[i].run_diameter, saddle.run_diameter) &&
            same_pipe(dies[i].branch_diameter, branch))
            plan.tools.saddle_die = static_cast<int>(i);
    if (plan.tools.saddle_die == k_none) {
        plan.needs.push_back({Need::Kind::saddle_die, {}, saddle.run_diameter, branch});
        // A die that is not there has no wall limit to check against.
        plan.checks.push_back(missing_check(Rule::saddle_die, "crib.saddle_dies"));
    } else {
        const SaddleDie& die = dies[static_cast<std::size_t>(plan.tools.saddle_die)];
        plan.checks.push_back(wall_check(question, die, mounting));
        check_collapse(plan, question, die);
    }
    decide(plan, question.shop.rules.least_margin);
    return plan;
}

} // namespace

OperationPlan plan_saddle(const Question& question, const job::Saddle& saddle) {
    if (question.part.section.shape != section::Shape::pipe)
        return refused_plan(Rule::no_station, "Only pipe is saddled.");
    if (!(saddle.run_diameter >= question.part.section.width))
        return refused_plan(Rule::saddle_die,
                            "The run is thinner than this pipe: no saddle of it covers the end.");
    std::optional<OperationPlan> best;
    for (const Mounting mounting :
         mountings(question.shop.machine, equipment::AttachmentKind::saddle_notcher)) {
        OperationPlan plan = on_mounting(question, saddle, mounting);
        if (!best || better(plan, *best))
            best = std::move(plan);
    }
    if (!best)
        return not_mounted(question.shop.machine,
                           equipment::AttachmentKind::saddle_notcher,
                           "No saddle notcher fits this machine.");
    return std::move(*best);
}

} // namespace treadle::plan
