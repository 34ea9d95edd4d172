// Limits of the punch station. Figures worked by hand.

#include "rule_limits.h"

namespace treadle::test {

using plan::PartPlan;
using plan::Rule;

namespace {

PartPlan centre_hole(const Bench& bench, double thickness, const geometry::HoleOutline& hole) {
    job::Punch punch = one_hole(hole.size, inches(5.0), inches(4.0));
    punch.hole = hole;
    return with(bench, plate(inches(thickness), inches(8.0), inches(10.0)), {punch});
}

PartPlan square(double side) {
    return centre_hole(strong(), 0.125, {geometry::HoleShape::square, inches(side), Length{}});
}

PartPlan deep_in(double y) {
    return with(Bench{},
                plate(inches(0.25), inches(40.0), inches(60.0)),
                {one_hole(inches(0.8125), inches(30.0), inches(y))});
}

PartPlan stroke_of(double stroke) {
    Bench bench;
    bench.shop.machine.stations[0].stroke = inches(stroke);
    return centre_hole(bench, 0.5, round_hole(inches(0.8125)));
}

PartPlan under_leg(double daylight) {
    Bench bench;
    bench.shop.machine.stations[0].daylight = inches(daylight);
    job::Punch hole = one_hole(inches(0.8125), inches(6.0), inches(1.75));
    hole.face = section::Face::leg_a;
    return with(bench, angle_bar(), {hole});
}

/// From the heel: leg 1/4 in, its fillet, and 3/4 in for the tool.
PartPlan from_heel(double y, double root_radius) {
    job::Part part = angle_bar();
    part.section.root_radius = inches(root_radius);
    job::Punch hole = one_hole(inches(0.8125), inches(6.0), inches(y));
    hole.face = section::Face::leg_a;
    return with(Bench{}, part, {hole});
}

/// A channel's web, 6 in deep with 1/4 in flanges: the hole from its far flange.
PartPlan from_far_flange(double clear) {
    job::Part part = plate(inches(0.25), inches(2.0), inches(12.0));
    part.section.shape = section::Shape::channel;
    part.section.height = inches(6.0);
    part.section.flange_thickness = inches(0.25);
    job::Punch hole = one_hole(inches(0.8125), inches(6.0), inches(6.0 - clear));
    hole.face = section::Face::web;
    return with(Bench{}, part, {hole});
}

} // namespace

std::vector<Limit> punch_limits() {
    const auto hole = [](double size) {
        return centre_hole(strong(), 0.5, round_hole(inches(size)));
    };
    const auto large = [](double size) {
        return centre_hole(strong(), 0.125, round_hole(inches(size)));
    };
    return {
        {Rule::hole_thickness, "as wide as thick", 0.5, 0.4999, hole},
        {Rule::holder, "holder to 2-1/2 in", 2.5, 2.5001, large},
        {Rule::alignment, "keyed holder to 1 in across corners", 0.7071, 0.7072, square},
        {Rule::throat, "8 in less 1/4", 7.75, 7.751, deep_in},
        {Rule::stroke, "metal, gap and entry", 0.875, 0.8749, stroke_of},
        {Rule::daylight, "standing leg of 3 in", 3.0, 2.999, under_leg},
        {Rule::flange_clearance,
         "sharp heel",
         1.0,
         0.999,
         [](double y) { return from_heel(y, 0.0); }},
        {Rule::flange_clearance,
         "heel with a fillet",
         1.3126,
         1.312,
         [](double y) { return from_heel(y, 0.3125); }},
        {Rule::flange_clearance, "far flange of a channel", 1.0, 0.999, from_far_flange},
    };
}

} // namespace treadle::test
