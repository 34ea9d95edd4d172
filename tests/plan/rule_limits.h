// Both sides of a rule's limit: a case that just keeps it and one that just does not.

#pragma once

#include "plan/fixture.h"
#include "plan/words.h"

#include <functional>
#include <string>
#include <vector>

namespace treadle::test {

/// The work with one figure left open; `beyond` is the nearest to `inside` that prints otherwise,
/// or nearer.
using Made = std::function<plan::PartPlan(double)>;

struct Limit {
    plan::Rule rule = plan::Rule::force;
    const char* what = "";
    double inside = 0.0;
    double beyond = 0.0;
    Made made;
    plan::Outcome outcome = plan::Outcome::does_not_fit; ///< beyond it
    std::size_t operation = 0;                           ///< that is looked at
};
/// A rule that is said beside the verdict.
struct WarningLimit {
    plan::Rule rule = plan::Rule::force;
    const char* what = "";
    double inside = 0.0;
    double beyond = 0.0;
    Made made;
    std::size_t operation = 0;
};

std::vector<Limit> cut_limits();
std::vector<Limit> punch_limits();
std::vector<Limit> notch_limits();
std::vector<Limit> bend_limits();
std::vector<Limit> layout_limits();
std::vector<WarningLimit> tool_warnings();
std::vector<WarningLimit> layout_warnings();

inline plan::PartPlan with(const Bench& bench, job::Part part, std::vector<job::Operation> work) {
    part.operations = std::move(work);
    return bench.plan(part);
}

/// Force enough for anything, so that other limits show.
inline Bench strong() {
    Bench bench;
    for (equipment::Station& station : bench.shop.machine.stations)
        if (station.force)
            station.force = us_tons(900.0);
    for (equipment::Attachment& tool : bench.shop.machine.attachments)
        tool.force = us_tons(900.0);
    return bench;
}

inline job::Part flat_bar(double thickness, double width, double length) {
    job::Part part = plate(inches(thickness), inches(width), inches(length));
    part.section.shape = section::Shape::flat;
    return part;
}

inline job::Part angle_bar() {
    job::Part part = plate(inches(0.25), inches(3.0), inches(12.0));
    part.section.shape = section::Shape::angle;
    part.section.height = inches(3.0);
    return part;
}

inline job::Part pipe_bar(double wall) {
    job::Part part = plate(inches(wall), inches(1.66), inches(40.0));
    part.section.shape = section::Shape::pipe;
    return part;
}

inline job::Notch edge_notch(double at, double along, double depth) {
    job::Notch notch;
    notch.edge = job::NotchEdge::near_edge;
    notch.at = inches(at);
    notch.along = inches(along);
    notch.depth = inches(depth);
    return notch;
}

inline job::Bend right_angle(double radius = 0.0) { return {degrees(90.0), inches(radius), true}; }

inline job::Part two_legs(double width, double leg, double thickness = 0.25) {
    job::Part part = flat_bar(thickness, width, 0.0);
    part.legs = {inches(4.0), inches(leg)};
    return part;
}

} // namespace treadle::test
