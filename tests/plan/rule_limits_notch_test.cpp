// Limits of the notchers and the saddle notcher. Figures worked by hand.

#include "rule_limits.h"

namespace treadle::test {

using plan::Outcome;
using plan::PartPlan;
using plan::Rule;

namespace {

constexpr std::size_t k_rectangular = 2; // of the bench's attachments

PartPlan corner(double depth, double thickness) {
    job::Notch notch = edge_notch(0.0, 1.0, depth);
    notch.edge = job::NotchEdge::start_far;
    return with(strong(), plate(inches(thickness), inches(8.0), inches(20.0)), {notch});
}

PartPlan vee(double included) {
    job::Notch notch = edge_notch(10.0, 0.0, 1.0);
    notch.shape = geometry::NotchShape::vee;
    notch.included = degrees(included);
    return with(Bench{}, plate(inches(0.25), inches(8.0), inches(20.0)), {notch});
}

/// Leg 3 in wide and 1/4 in thick, 3/4 in for the tool.
PartPlan coped(double depth, job::NotchEdge edge) {
    Bench bench = strong();
    bench.shop.machine.attachments[k_rectangular].flange_clearance = inches(0.75);
    job::Notch notch = edge_notch(6.0, 1.0, depth);
    notch.edge = edge;
    notch.face = section::Face::leg_a;
    return with(bench, angle_bar(), {notch});
}

/// From an end: the notch's side nearest to the heel.
PartPlan end_coped(double from_heel) {
    Bench bench = strong();
    bench.shop.machine.attachments[k_rectangular].flange_clearance = inches(0.75);
    job::Notch notch = edge_notch(from_heel + 0.5, 1.0, 1.0);
    notch.edge = job::NotchEdge::start_end;
    notch.face = section::Face::leg_a;
    return with(bench, angle_bar(), {notch});
}

PartPlan saddled(double run, double wall) {
    const Bench bench;
    job::Saddle saddle;
    saddle.run_diameter = inches(run);
    return with(bench, pipe_bar(wall), {saddle});
}

} // namespace

std::vector<Limit> notch_limits() {
    return {
        {Rule::notch_tool,
         "bite of 3 in",
         3.0,
         3.001,
         [](double depth) { return corner(depth, 0.25); }},
        {Rule::notch_tool, "blades of 90 deg, half a degree either way", 90.5, 90.51, vee},
        {Rule::thickness_limit,
         "notcher to 1/2 in",
         0.5,
         0.5001,
         [](double thickness) { return corner(1.0, thickness); }},
        {Rule::flange_clearance,
         "cope from the toe",
         2.0,
         2.001,
         [](double depth) { return coped(depth, job::NotchEdge::far_edge); }},
        {Rule::flange_clearance, "cope from an end", 1.0, 0.999, end_coped},
        {Rule::flange_clearance,
         "cope at the heel",
         0.0,
         1.0,
         [](double heel) {
             return coped(1.0, heel > 0.0 ? job::NotchEdge::start_near : job::NotchEdge::start_far);
         }},
        {Rule::saddle_die, // half a millimetre is 0.0197 in
         "die of the run",
         1.9196,
         1.9198,
         [](double run) { return saddled(run, 0.14); },
         Outcome::cannot_be_said},
        {Rule::thickness_limit,
         "die to 1/4 in",
         0.25,
         0.2501,
         [](double wall) { return saddled(1.9, wall); }},
    };
}

} // namespace treadle::test
