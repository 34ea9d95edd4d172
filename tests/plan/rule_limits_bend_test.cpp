// Limits of the brake. Figures worked by hand: r = 0.16 V, and 1.5 t is the least of A36 (ASTM A6
// appendix X4) across the grain.

#include "bend_bench.h"
#include "rule_limits.h"

namespace treadle::test {

using plan::PartPlan;
using plan::Rule;

namespace {

/// A 1/2 in nose: the radius is reached in any V.
PartPlan in_vee(double opening, double nose) {
    Bench bench = strong();
    bench.shop.crib.vees = {{inches(opening), inches(10.0), 1}};
    bench.shop.crib.brake_punches = {{inches(nose), inches(10.0), 1}};
    return with(bench, two_legs(4.0, 4.0), {right_angle()});
}

PartPlan long_bend(double width) { return with(strong(), two_legs(width, 4.0), {right_angle()}); }

PartPlan short_leg(double leg) { return with(Bench{}, two_legs(4.0, leg), {right_angle()}); }

/// Travel to 90 deg in V 3 in with r 0.48: 1.5 - (sqrt 2 - 1)(0.48 + 0.25) = 1.19762, and half the
/// thickness more.
PartPlan brake_stroke(double brake, double station) {
    Bench bench;
    bench.shop.machine.attachments[0].stroke = inches(brake);
    bench.shop.machine.stations[4].stroke = inches(station);
    return with(bench, two_legs(4.0, 4.0), {right_angle()});
}

PartPlan channel_of(double bottom) {
    const Bench bench = with_sizes();
    return bench.plan(bent({3.0, bottom, 3.0}, {true, true}));
}

/// No figure of a book: the narrowest U that its tools still make, to a sixty-fourth.
double narrowest_channel() {
    double closed = 1.3;
    double open = 6.0;
    REQUIRE(channel_of(closed).outcome == plan::Outcome::does_not_fit);
    REQUIRE(channel_of(open).outcome == plan::Outcome::fits);
    while (open - closed > 1.0 / 64.0) {
        const double middle = (open + closed) / 2.0;
        (channel_of(middle).outcome == plan::Outcome::fits ? open : closed) = middle;
    }
    return open;
}

/// The operation that the sweep blames: the last bend of the U.
std::size_t blamed(double bottom) {
    const PartPlan plan = channel_of(bottom);
    for (std::size_t i = 0; i < plan.operations.size(); ++i)
        if (find(plan.operations[i], Rule::bend_order) != nullptr)
            return i;
    return 0;
}

} // namespace

std::vector<Limit> bend_limits() {
    const double open = narrowest_channel();
    const double closed = open - 1.0 / 64.0;
    return {
        {Rule::opening, // 6 t
         "six thicknesses",
         1.5,
         1.4999,
         [](double opening) { return in_vee(opening, 0.5); }},
        {Rule::least_radius, // 0.375 / 0.16 = 2.34375
         "grade's least radius",
         2.3438,
         2.3437,
         [](double opening) { return in_vee(opening, 0.125); }},
        {Rule::brake_length, "brake, V and punch of 10 in", 10.0, 10.001, long_bend},
        {Rule::least_leg, "three quarters of the V", 2.25, 2.249, short_leg},
        {Rule::stroke,
         "stroke of the brake",
         1.3227,
         1.322,
         [](double stroke) { return brake_stroke(stroke, 3.0); }},
        {Rule::stroke,
         "stroke of the station that drives the brake",
         1.3227,
         1.322,
         [](double stroke) { return brake_stroke(3.0, stroke); }},
        {Rule::bend_order,
         "narrowest U",
         open,
         closed,
         channel_of,
         plan::Outcome::does_not_fit,
         blamed(closed)},
    };
}

} // namespace treadle::test
