// Limits that only show on the whole part: cut_webs.cpp, doubled.cpp and resting.cpp of core/plan,
// with geometry_checks.cpp and handling.cpp. Figures worked by hand.

#include <cmath>
#include <numbers>

#include "rule_limits.h"

namespace treadle::test {

using plan::Outcome;
using plan::PartPlan;
using plan::Rule;

namespace {

constexpr double k_hole = 0.8125; // its half: 0.40625

job::Operation hole_at(double x, double y) {
    return one_hole(inches(k_hole), inches(x), inches(y));
}
job::Part sheet() { return plate(inches(0.25), inches(8.0), inches(10.0)); }

PartPlan near_edge(double y) { return with(Bench{}, sheet(), {hole_at(5.0, y)}); }
PartPlan two_holes(double dx, double dy) {
    return with(Bench{}, sheet(), {hole_at(3.0, 3.0), hole_at(3.0 + dx, 3.0 + dy)});
}
PartPlan slanted(double apart) { return two_holes(apart * std::sqrt(0.5), apart * std::sqrt(0.5)); }

PartPlan over_notch(double y) {
    return with(Bench{}, sheet(), {hole_at(5.0, y), edge_notch(5.0, 1.0, 1.0)});
}
/// Diagonally off the notch's inner corner at (4.5, 1).
PartPlan off_corner(double web) {
    const double step = (web + k_hole / 2.0) * std::sqrt(0.5);
    return with(Bench{}, sheet(), {hole_at(4.5 - step, 1.0 + step), edge_notch(5.0, 1.0, 1.0)});
}
/// Square to the flank of a 90 deg V, 2 in deep at x = 5: through (4, 1).
PartPlan beside_vee(double web) {
    job::Notch vee = edge_notch(5.0, 0.0, 2.0);
    vee.shape = geometry::NotchShape::vee;
    vee.included = degrees(90.0);
    const double step = (web + k_hole / 2.0) * std::sqrt(0.5);
    return with(Bench{}, sheet(), {hole_at(4.0 - step, 1.0 + step), vee});
}
/// A 30 deg mitre takes the far corner: at height y it reaches y tan 30 into the part.
PartPlan beside_mitre(double web) {
    job::Cut mitre;
    mitre.start_mitre = degrees(30.0);
    const double along = (web + k_hole / 2.0) / std::cos(std::numbers::pi / 6.0);
    return with(
        Bench{}, sheet(), {hole_at(4.0 * std::tan(std::numbers::pi / 6.0) + along, 4.0), mitre});
}

PartPlan notch_at(double at, double depth) {
    return with(Bench{}, sheet(), {edge_notch(at, 1.0, depth)});
}
PartPlan end_notch(double at) {
    job::Notch notch = edge_notch(at, 1.0, 1.0);
    notch.edge = job::NotchEdge::finish_end;
    return with(Bench{}, sheet(), {notch});
}

PartPlan twice_cut(double same) {
    job::Cut other;
    other.start_mitre = degrees(same > 0.0 ? 0.0 : 20.0);
    return with(Bench{}, sheet(), {job::Cut{}, other});
}
PartPlan twice_notched(double apart) {
    return with(Bench{}, sheet(), {edge_notch(3.0, 1.0, 1.0), edge_notch(3.0 + apart, 1.0, 1.0)});
}
PartPlan twice_saddled(double same) {
    job::Saddle start;
    start.run_diameter = inches(1.9);
    start.end = job::End::start;
    job::Saddle other = start;
    other.end = same > 0.0 ? job::End::both : job::End::finish;
    return with(Bench{}, pipe_bar(0.14), {start, other});
}

/// From the bend line: half the curve and 2.5 t, less than half the V is no help.
PartPlan hole_before_bend(double more, double long_side) {
    Bench bench;
    const job::Part part = two_legs(4.0, 4.0);
    const PartPlan bare = with(bench, part, {right_angle()});
    const bool slot = long_side > 0.0;
    const double half_curve = quantity::to_inches(bare.operations[0].figures.allowance) / 2.0;
    const double half_vee = quantity::to_inches(bare.operations[0].tools.opening) / 2.0;
    const double needed = std::max(half_curve + 0.25 * (slot ? 4.0 : 2.5), half_vee);
    const double line = quantity::to_inches(bare.blank.bend_lines[0]);
    job::Punch punch = one_hole(inches(0.5), inches(line - needed - 0.25 - more), inches(2.0));
    if (slot)
        punch.hole = {geometry::HoleShape::obround, inches(0.5), inches(long_side)};
    punch.turned = slot;
    return with(bench, part, {punch, right_angle()});
}

PartPlan notch_before_bend(double more) {
    Bench bench;
    const job::Part part = two_legs(4.0, 4.0);
    const PartPlan bare = with(bench, part, {right_angle()});
    const double edge = quantity::to_inches(bare.blank.bend_lines[0]) - 1.5 - more; // half of V 3
    return with(bench, part, {edge_notch(edge - 0.5, 1.0, 1.0), right_angle()});
}

/// Nine pieces of 10 in from a bar of 90 in and the end.
PartPlan bar_with_end(double end) {
    Bench bench;
    job::Part part = flat_bar(0.25, 2.0, 10.0);
    part.count = 100;
    bench.shop.rack = {{part.section, part.grade, inches(90.0 + end), 1}};
    return with(bench, part, {job::Cut{}});
}

PartPlan on_table(double table) { // the hole is 18 in from the middle
    Bench bench;
    bench.shop.machine.stations[0].table_length = inches(table);
    return with(bench, plate(inches(0.25), inches(8.0), inches(40.0)), {hole_at(2.0, 2.0)});
}

/// Lift limit as a share of what the piece weighs.
PartPlan carried(double share) {
    Bench bench;
    const job::Part part = plate(inches(0.5), inches(8.0), inches(40.0));
    const Mass mass = with(bench, part, {job::Cut{}}).mass_each;
    bench.shop.rules.lift_limit = mass * share;
    return with(bench, part, {job::Cut{}});
}
PartPlan supported(double length) {
    Bench bench;
    bench.shop.rules.support_length = inches(length);
    return with(bench, plate(inches(0.25), inches(8.0), inches(40.0)), {job::Cut{}});
}

} // namespace

std::vector<Limit> layout_limits() {
    return {
        {Rule::on_metal, "whole hole on the metal", 0.4063, 0.406, near_edge},
        {Rule::on_metal,
         "notch inside the ends",
         0.5,
         0.498,
         [](double at) { return notch_at(at, 1.0); }},
        {Rule::on_metal, "notch inside the edges of an end", 0.5, 0.498, end_notch},
        {Rule::hole_web,
         "round holes side by side",
         0.8126,
         0.8124,
         [](double pitch) { return two_holes(pitch, 0.0); },
         Outcome::does_not_fit,
         1},
        {Rule::hole_web,
         "round holes on a slant",
         0.8126,
         0.8124,
         slanted,
         Outcome::does_not_fit,
         1},
        {Rule::cut_web, "hole over a notch", 1.4063, 1.406, over_notch},
        {Rule::cut_web, "hole off a notch's corner", 0.0001, -0.001, off_corner},
        {Rule::cut_web, "hole beside a V", 0.0001, -0.001, beside_vee},
        {Rule::cut_web, "hole beside a mitre", 0.0001, -0.001, beside_mitre},
        {Rule::doubled_stroke,
         "hole",
         0.8126,
         0.0,
         [](double pitch) { return two_holes(pitch, 0.0); },
         Outcome::does_not_fit,
         1},
        {Rule::doubled_stroke, "cut", 0.0, 1.0, twice_cut, Outcome::does_not_fit, 1},
        {Rule::doubled_stroke, "notch", 1.0, 0.0, twice_notched, Outcome::does_not_fit, 1},
        {Rule::doubled_stroke, "saddle", 0.0, 1.0, twice_saddled, Outcome::does_not_fit, 1},
    };
}

std::vector<WarningLimit> layout_warnings() {
    return {
        {Rule::edge_web, "half the hole to the edge", 0.8126, 0.8124, near_edge},
        {Rule::hole_web,
         "a thickness between holes",
         1.0626,
         1.0624,
         [](double pitch) { return two_holes(pitch, 0.0); },
         1},
        {Rule::hole_web, "a thickness on a slant", 1.0626, 1.0624, slanted, 1},
        {Rule::cut_web, "half the hole to a notch", 1.8126, 1.8124, over_notch},
        {Rule::cut_web, "half the hole to a mitre", 0.4064, 0.4062, beside_mitre},
        {Rule::hole_to_bend,
         "2.5 t past the curve",
         0.001,
         -0.001,
         [](double more) { return hole_before_bend(more, 0.0); }},
        {Rule::hole_to_bend,
         "slot along the bend, 4 t",
         0.001,
         -0.001,
         [](double more) { return hole_before_bend(more, 1.5); }},
        {Rule::notch_at_bend, "notch over the V", 0.001, -0.001, notch_before_bend},
        {Rule::bar_end, "last cut of a bar", 2.0, 1.999, bar_with_end},
        {Rule::tipping, "table of twice the overhang", 36.0, 35.99, on_table},
        {Rule::handling, "weight of one lift", 1.0001, 0.9999, carried},
        {Rule::hoist, "four thirds of a lift", 0.7501, 0.7499, carried},
        {Rule::support, "length that the machine holds", 40.0, 39.99, supported},
    };
}

} // namespace treadle::test
