// Metal between a hole and what is cut away beside it: notches and mitred ends.

#include "plan/checks.h"
#include "plan/part_checks.h"

#include <array>
#include <cmath>

namespace treadle::plan {

namespace {

using job::NotchEdge;
using quantity::to_millimetres;
using section::Face;

struct Point {
    double x = 0.0;
    double y = 0.0;
};

/// A convex piece that is cut away, from the datum end and edge, in millimetres.
struct Away {
    Face face = Face::flat;
    std::array<Point, 4> corners;
    std::size_t count = 0;
};

Away triangle(Face face, Point a, Point b, Point c) { return {face, {a, b, c, c}, 3}; }
Away rectangle(Face face, Point low, Point high) {
    return {face, {low, {high.x, low.y}, high, {low.x, high.y}}, 4};
}

Away notch_away(const job::Notch& notch, double length, double width) {
    const double at = to_millimetres(notch.at);
    const double deep = to_millimetres(notch.depth);
    const bool vee = notch.shape == geometry::NotchShape::vee;
    const double along = to_millimetres(notch.along);
    const double half = vee ? deep * std::tan(notch.included.in_radians() / 2.0) : along / 2.0;
    const auto edge = [&](Point from, Point to, Point into) {
        const Point tip{(from.x + to.x) / 2.0 + into.x, (from.y + to.y) / 2.0 + into.y};
        if (vee)
            return triangle(notch.face, from, to, tip);
        return rectangle(notch.face,
                         {std::min(from.x, from.x + into.x), std::min(from.y, from.y + into.y)},
                         {std::max(to.x, to.x + into.x), std::max(to.y, to.y + into.y)});
    };
    switch (notch.edge) {
    case NotchEdge::near_edge:
        return edge({at - half, 0.0}, {at + half, 0.0}, {0.0, deep});
    case NotchEdge::far_edge:
        return edge({at - half, width}, {at + half, width}, {0.0, -deep});
    case NotchEdge::start_end:
        return edge({0.0, at - half}, {0.0, at + half}, {deep, 0.0});
    case NotchEdge::finish_end:
        return edge({length, at - half}, {length, at + half}, {-deep, 0.0});
    case NotchEdge::start_near:
        return rectangle(notch.face, {0.0, 0.0}, {along, deep});
    case NotchEdge::start_far:
        return rectangle(notch.face, {0.0, width - deep}, {along, width});
    case NotchEdge::finish_near:
        return rectangle(notch.face, {length - along, 0.0}, {length, deep});
    case NotchEdge::finish_far:
        return rectangle(notch.face, {length - along, width - deep}, {length, width});
    }
    return {};
}

/// A mitre takes the far corner of its end, a negative one the near corner.
void add_mitre(
    std::vector<Away>& list, Angle mitre, Face face, double end, double in, double width) {
    if (mitre == Angle{})
        return;
    const double run = in * width * std::abs(std::tan(mitre.in_radians()));
    const double high = mitre > Angle{} ? width : 0.0;
    list.push_back(triangle(face, {end, width - high}, {end, high}, {end + run, high}));
}

std::vector<Away> cut_away(const job::Part& part, Length blank) {
    std::vector<Away> list;
    const double length = to_millimetres(blank);
    for (const job::Operation& operation : part.operations) {
        if (const auto* notch = std::get_if<job::Notch>(&operation))
            list.push_back(notch_away(
                *notch, length, to_millimetres(section::width_of(part.section, notch->face))));
        const auto* cut = std::get_if<job::Cut>(&operation);
        if (cut == nullptr || cut->side != job::CutSide::length)
            continue;
        for (const Face face : {Face::flat, Face::leg_a, Face::web}) {
            const double width = to_millimetres(section::width_of(part.section, face));
            if (!(section::thickness_at(part.section, face) > Length{}))
                continue;
            add_mitre(list, cut->start_mitre, face, 0.0, 1.0, width);
            add_mitre(list, cut->finish_mitre, face, length, -1.0, width);
        }
    }
    return list;
}

/// How far apart they are seen along one direction; never more than they are.
double apart_along(const PlacedHole& hole, const Away& away, Point direction) {
    const double size = std::hypot(direction.x, direction.y);
    if (!(size > 0.0))
        return -1e9;
    const Point n{direction.x / size, direction.y / size};
    const double half_along = to_millimetres(hole.half_along);
    const double reach =
        hole.round ? half_along
                   : std::abs(n.x) * half_along + std::abs(n.y) * to_millimetres(hole.half_across);
    double farthest = -1e9;
    for (std::size_t i = 0; i < away.count; ++i)
        farthest = std::max(farthest, away.corners[i].x * n.x + away.corners[i].y * n.y);
    return to_millimetres(hole.x) * n.x + to_millimetres(hole.y) * n.y - reach - farthest;
}

/// The best of the directions that can part two convex outlines: sides of both, and from the
/// nearest corner to a round hole's centre.
double web_between(const PlacedHole& hole, const Away& away) {
    double web = -1e9;
    const auto try_both = [&](Point n) {
        web = std::max(web, apart_along(hole, away, n));
        web = std::max(web, apart_along(hole, away, {-n.x, -n.y}));
    };
    try_both({1.0, 0.0});
    try_both({0.0, 1.0});
    for (std::size_t i = 0; i < away.count; ++i) {
        const Point a = away.corners[i];
        const Point b = away.corners[(i + 1) % away.count];
        try_both({b.y - a.y, a.x - b.x});
        try_both({to_millimetres(hole.x) - a.x, to_millimetres(hole.y) - a.y});
    }
    return web;
}

} // namespace

void check_cut_webs(const Question& question,
                    PartPlan& plan,
                    const std::vector<PlacedHole>& holes) {
    const std::vector<Away> list = cut_away(question.part, plan.blank_exact);
    if (list.empty())
        return;
    for (const PlacedHole& hole : holes) {
        const Length thickness = section::thickness_at(question.part.section, hole.face);
        const Length needed = larger(thickness, smaller(hole.half_along, hole.half_across));
        OperationPlan& operation = plan.operations[static_cast<std::size_t>(hole.operation)];
        for (const Away& away : list) {
            if (away.face != hole.face)
                continue;
            const Length web = quantity::millimetres(web_between(hole, away));
            if (web < Length{})
                say_once(operation,
                         refused_check(Rule::cut_web,
                                       "The hole runs into a notch or a mitred end: a part hole "
                                       "pushes the punch aside. Move one of them."));
            else if (web < needed)
                say_once(operation,
                         web_warning(Rule::cut_web,
                                     needed,
                                     web,
                                     "Little metal to a notch or a mitred end: it bulges and "
                                     "pushes the punch sideways. Move one of them."));
        }
    }
}

} // namespace treadle::plan
