// Warnings about tools and strokes: core/plan/strokes.cpp, standing_leg.cpp and the checks of each
// operation. Figures worked by hand.

#include "rule_limits.h"

namespace treadle::test {

using plan::PartPlan;
using plan::Rule;

namespace {

PartPlan punched(const Bench& bench, double thickness, double size) {
    return with(bench,
                plate(inches(thickness), inches(8.0), inches(10.0)),
                {one_hole(inches(size), inches(5.0), inches(4.0))});
}

PartPlan steps_of_clearance(double thickness) {
    Bench bench = strong();
    bench.shop.crib.dies.clear();
    return punched(bench, thickness, 0.8125);
}

/// A die with three quarters of the usual 1/32 in, 0.0234375 in.
PartPlan tight_die(double thickness) {
    Bench bench = strong();
    bench.shop.crib.dies = {{round_hole(inches(0.8359375)), 1}};
    return punched(bench, thickness, 0.8125);
}

PartPlan soft_metal(double thickness) {
    Bench bench = strong();
    bench.catalog.grades.rows[0].family = material::Family::aluminium;
    return punched(bench, thickness, 0.8125); // die 27/32: 1/32 in
}

PartPlan over_opening(double opening) {
    Bench bench;
    bench.shop.machine.stations[0].slug_opening = inches(opening);
    return punched(bench, 0.25, 0.8125);
}

/// 3 x 4 x 5: the diagonal of what falls.
PartPlan notch_over_opening(double opening) {
    Bench bench = strong();
    bench.shop.machine.stations[4].slug_opening = inches(opening);
    bench.shop.machine.attachments[2].length = inches(4.0);
    return with(
        bench, plate(inches(0.25), inches(8.0), inches(20.0)), {edge_notch(10.0, 4.0, 3.0)});
}

PartPlan saddle_over_opening(double opening) {
    Bench bench;
    bench.shop.machine.stations[4].slug_opening = inches(opening);
    job::Saddle saddle;
    saddle.run_diameter = inches(1.9);
    return with(bench, pipe_bar(0.14), {saddle});
}

/// 40.84 ton (rule_limits_cut_test.cpp) are 80 % of 51.05 ton.
PartPlan hard_metal(double tons) {
    Bench bench;
    bench.catalog.grades.rows[0].bands = {{inches(4.0), ksi(50.0), ksi(70.0), ksi(80.0)}};
    bench.shop.machine.stations[0].force = us_tons(tons);
    return punched(bench, 0.5, 0.8125);
}

PartPlan bites(double overlap) {
    Bench bench = strong();
    bench.shop.rules.notch_overlap = inches(overlap);
    return with(
        bench, plate(inches(0.25), inches(8.0), inches(20.0)), {edge_notch(10.0, 6.0, 1.0)});
}

PartPlan thin_pipe(double wall) {
    Bench bench;
    job::Saddle saddle;
    saddle.run_diameter = inches(1.9);
    return with(bench, pipe_bar(wall), {saddle});
}

PartPlan thin_sheet(double thickness) {
    return with(Bench{}, flat_bar(thickness, 4.0, 20.0), {job::Cut{}});
}

PartPlan wide_vee(double opening) {
    Bench bench;
    bench.shop.crib.vees = {{inches(opening), inches(10.0), 1}};
    return with(bench, two_legs(4.0, 4.0), {right_angle()});
}

/// V 3 in makes 0.48 in.
PartPlan asked_radius(double radius) {
    Bench bench;
    bench.shop.crib.vees = {{inches(3.0), inches(10.0), 1}};
    return with(bench, two_legs(4.0, 4.0), {right_angle(radius)});
}

/// K = ((2 (r + t) - BD) / (pi / 2) - r) / t is 0.25 at BD = 0.60784 in, with r 0.48 and t 0.25.
PartPlan measured(double deduction) {
    Bench bench;
    bench.shop.trials = {{"A36",
                          inches(0.25),
                          inches(3.0),
                          inches(0.48),
                          degrees(90.0),
                          material::Grain::unknown,
                          {{inches(8.0 - deduction), inches(4.0), inches(4.0)}}}};
    return with(bench, two_legs(4.0, 4.0), {right_angle()});
}

PartPlan least_wall(double least) {
    Bench bench;
    bench.shop.crib.saddle_dies[0].least_wall = inches(least);
    job::Saddle saddle;
    saddle.run_diameter = inches(1.9);
    return with(bench, pipe_bar(0.14), {saddle});
}

PartPlan thin_for_shear(double thickness) {
    Bench bench;
    for (equipment::Station& station : bench.shop.machine.stations)
        if (station.kind == equipment::StationKind::flat_shear)
            station.least_thickness = inches(0.06);
    return with(bench, flat_bar(thickness, 4.0, 20.0), {job::Cut{}});
}

} // namespace

std::vector<WarningLimit> tool_warnings() {
    return {
        {Rule::punch_stress, // 4 x 64 x 0.5 / 180 = 0.71111
         "180 ksi in the punch",
         0.7112,
         0.7111,
         [](double size) { return punched(Bench{}, 0.5, size); }},
        {Rule::tool_in_crib, // sizes within 0.005 mm print alike
         "punch of the size",
         0.8126,
         0.8128,
         [](double size) { return punched(Bench{}, 0.25, size); }},
        {Rule::die_clearance, "a quarter of the thickness", 0.0625, 0.0624, steps_of_clearance},
        {Rule::die_clearance, "6 % of the thickness", 0.390625, 0.3907, tight_die},
        {Rule::slug, "soft metal, a tenth of the thickness", 0.3125, 0.3126, soft_metal},
        {Rule::slug, "opening under the punch", 0.8125, 0.8124, over_opening},
        {Rule::slug, "opening under the notcher", 5.0, 4.999, notch_over_opening},
        {Rule::slug, "opening under the saddle notcher", 1.66, 1.659, saddle_over_opening},
        {Rule::slug,
         "thin sheet",
         0.0625,
         0.0624,
         [](double thickness) { return punched(Bench{}, thickness, 1.0625); }},
        {Rule::slug,
         "large slug of thin sheet",
         0.9999,
         1.0,
         [](double size) { return punched(Bench{}, 0.06, size); }},
        {Rule::snap_through, "80 % of the force", 51.06, 51.04, hard_metal},
        {Rule::notch_overlap, "a sixteenth between bites", 0.0625, 0.0624, bites},
        {Rule::tube_wall, "a twentieth of the diameter", 0.083, 0.0829, thin_pipe},
        {Rule::tube_wall, "die from a least wall", 0.14, 0.1401, least_wall},
        {Rule::thin_stock, "nothing said of the gap", 0.0625, 0.0624, thin_sheet},
        {Rule::thin_stock, "shear from 0.06 in", 0.06, 0.0599, thin_for_shear},
        {Rule::opening, "fourteen thicknesses", 3.5, 3.5001, wide_vee},
        {Rule::wanted_radius, "a tenth of the radius", 0.533, 0.534, asked_radius},
        {Rule::trial_strip, "least K that is sound", 0.6078, 0.6079, measured},
    };
}

} // namespace treadle::test
