#include "sheet/outline.h"

#include "base/stable_sort.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

struct Ends { ///< where the ends run, as functions of the height above the datum edge
    double length = 0.0;
    double width = 0.0;
    double start_tan = 0.0;
    double finish_tan = 0.0;
    double start_run = 0.0; ///< radius of the run a saddle sits on, zero without one
    double finish_run = 0.0;

    [[nodiscard]] double mitre(double tangent, double y) const {
        return tangent >= 0.0 ? y * tangent : (width - y) * -tangent;
    }
    /// How far a saddle is scooped out at a height: nothing at the tips.
    [[nodiscard]] double scoop(double run, double y) const {
        if (run <= 0.0)
            return 0.0;
        const double r = std::min(width / 2.0, run);
        const double h = std::min(std::abs(y - width / 2.0), r);
        return std::sqrt(run * run - h * h) - std::sqrt(std::max(0.0, run * run - r * r));
    }
    [[nodiscard]] double start(double y) const { return mitre(start_tan, y) + scoop(start_run, y); }
    [[nodiscard]] double finish(double y) const {
        return length - mitre(finish_tan, y) - scoop(finish_run, y);
    }
};

bool carries_mitre(section::Face face) {
    return face == section::Face::flat || face == section::Face::leg_a ||
           face == section::Face::web;
}

Ends ends_of(const plan::PartPlan& plan, section::Face face, double length_mm) {
    Ends ends;
    ends.length = length_mm;
    ends.width = face_width_mm(plan, face);
    for (const job::Operation& operation : plan.part->operations) {
        if (const auto* cut = std::get_if<job::Cut>(&operation)) {
            if (cut->side != job::CutSide::length || !carries_mitre(face))
                continue;
            ends.start_tan = std::tan(cut->start_mitre.in_radians());
            ends.finish_tan = std::tan(cut->finish_mitre.in_radians());
        } else if (const auto* saddle = std::get_if<job::Saddle>(&operation)) {
            const double run = to_millimetres(saddle->run_diameter) / 2.0;
            if (saddle->end != job::End::finish)
                ends.start_run = run;
            if (saddle->end != job::End::start)
                ends.finish_run = run;
        }
    }
    return ends;
}

struct Bite { ///< a notch on one side of the walk round the blank
    double from = 0.0;
    std::vector<Spot> edges;
    int operation = 0;
};

double held(double value, double most) { return std::clamp(value, 0.0, std::max(0.0, most)); }

/// An edge notch as points along its edge: first mouth corner, bottom, second mouth corner.
/// `along` and `deep` run along the edge and into the metal.
std::vector<Spot> bite(const job::Notch& notch, double edge_length) {
    const double at = to_millimetres(notch.at);
    const double deep = to_millimetres(notch.depth);
    if (notch.shape == geometry::NotchShape::vee) {
        const double half = deep * std::tan(notch.included.in_radians() / 2.0);
        return {{held(at - half, edge_length), 0.0},
                {held(at, edge_length), deep},
                {held(at + half, edge_length), 0.0}};
    }
    const double half = to_millimetres(notch.along) / 2.0;
    const double from = held(at - half, edge_length);
    const double to = held(at + half, edge_length);
    return {{from, 0.0}, {from, deep}, {to, deep}, {to, 0.0}};
}

struct Sides { ///< bites in the order of the walk
    std::vector<Bite> near_edge, finish_end, far_edge, start_end;
};

void add_corner(Sides& sides, const job::Notch& notch, const Ends& ends, int operation) {
    using job::NotchEdge;
    const double along = held(to_millimetres(notch.along), ends.length);
    const double deep = held(to_millimetres(notch.depth), ends.width);
    const double w = ends.width;
    switch (notch.edge) {
    case NotchEdge::start_near:
        sides.start_end.push_back(
            {w, {{ends.start(deep), deep}, {along, deep}, {along, 0.0}}, operation});
        break;
    case NotchEdge::finish_near:
        sides.near_edge.push_back(
            {ends.length,
             {{ends.length - along, 0.0}, {ends.length - along, deep}, {ends.finish(deep), deep}},
             operation});
        break;
    case NotchEdge::finish_far:
        sides.finish_end.push_back({w,
                                    {{ends.finish(w - deep), w - deep},
                                     {ends.length - along, w - deep},
                                     {ends.length - along, w}},
                                    operation});
        break;
    default:
        sides.far_edge.push_back({ends.length,
                                  {{along, w}, {along, w - deep}, {ends.start(w - deep), w - deep}},
                                  operation});
        break;
    }
}

void add_notch(Sides& sides, const job::Notch& notch, const Ends& ends, int operation) {
    using job::NotchEdge;
    const double w = ends.width;
    const bool on_end = notch.edge == NotchEdge::start_end || notch.edge == NotchEdge::finish_end;
    const bool on_edge = notch.edge == NotchEdge::near_edge || notch.edge == NotchEdge::far_edge;
    if (!on_end && !on_edge)
        return add_corner(sides, notch, ends, operation);
    std::vector<Spot> edges = bite(notch, on_end ? w : ends.length);
    const double first = edges.front().x;
    for (Spot& spot : edges) {
        const Spot raw{spot.x, held(spot.y, on_end ? ends.length : w)};
        switch (notch.edge) {
        case NotchEdge::near_edge:
            spot = raw;
            break;
        case NotchEdge::far_edge:
            spot = {raw.x, w - raw.y};
            break;
        case NotchEdge::start_end:
            spot = {ends.start(raw.x) + raw.y, raw.x};
            break;
        default:
            spot = {ends.finish(raw.x) - raw.y, raw.x};
            break;
        }
    }
    // The walk goes back along the far edge and down the start end.
    if (notch.edge == NotchEdge::far_edge || notch.edge == NotchEdge::start_end)
        std::reverse(edges.begin(), edges.end());
    switch (notch.edge) {
    case NotchEdge::near_edge:
        sides.near_edge.push_back({first, edges, operation});
        break;
    case NotchEdge::far_edge:
        sides.far_edge.push_back({ends.length - first, edges, operation});
        break;
    case NotchEdge::start_end:
        sides.start_end.push_back({w - first, edges, operation});
        break;
    default:
        sides.finish_end.push_back({first, edges, operation});
        break;
    }
}

bool has_corner(const plan::PartPlan& plan, section::Face face, job::NotchEdge edge) {
    return std::any_of(plan.part->operations.begin(),
                       plan.part->operations.end(),
                       [&](const job::Operation& operation) {
                           const auto* notch = std::get_if<job::Notch>(&operation);
                           return notch != nullptr && notch->edge == edge && notch->face == face;
                       });
}

void append(FaceOutline& made, std::vector<Bite>& bites) {
    base::stable_sort(bites, [](const Bite& a, const Bite& b) { return a.from < b.from; });
    for (const Bite& one : bites) {
        made.outline.insert(made.outline.end(), one.edges.begin(), one.edges.end());
        made.notches.push_back({one.edges, one.operation});
    }
}

/// An end that a saddle shapes, from one corner, which is there already, to the other.
void append_scoop(FaceOutline& made, const Ends& ends, bool finish) {
    const double run = finish ? ends.finish_run : ends.start_run;
    const double half = ends.width / 2.0;
    if ((finish ? ends.finish_tan : ends.start_tan) == 0.0 && run >= half) {
        // Square to the pipe, and no narrower than it: one arc, with the metal to its left.
        made.outline.back().bulge = -ends.scoop(run, half) / half;
        return;
    }
    constexpr int k_steps = 24;
    for (int i = 1; i < k_steps; ++i) {
        const double share = static_cast<double>(i) / k_steps;
        const double y = ends.width * (finish ? share : 1.0 - share);
        made.outline.push_back({finish ? ends.finish(y) : ends.start(y), y});
    }
}

} // namespace

std::vector<section::Face> faces_shown(const job::Part& part) {
    const std::vector<section::Face> faces = section::faces_of(part.section.shape);
    std::vector<section::Face> shown;
    for (const section::Face face : faces) {
        const bool used = std::any_of(
            part.operations.begin(), part.operations.end(), [&](const job::Operation& operation) {
                const auto* punch = std::get_if<job::Punch>(&operation);
                const auto* notch = std::get_if<job::Notch>(&operation);
                return (punch != nullptr && punch->face == face) ||
                       (notch != nullptr && notch->face == face);
            });
        if (used)
            shown.push_back(face);
    }
    if (shown.empty())
        shown.push_back(faces.empty() ? section::Face::flat : faces.front());
    return shown;
}

double blank_length_mm(const plan::PartPlan& plan) {
    const double blank = to_millimetres(plan.blank_length);
    return blank > 0.0 ? blank : to_millimetres(plan.part->length);
}

double face_width_mm(const plan::PartPlan& plan, section::Face face) {
    const double blank = to_millimetres(plan.blank_width);
    if (face == section::Face::flat && blank > 0.0)
        return blank;
    return to_millimetres(section::width_of(plan.part->section, face));
}

FaceOutline face_outline(const plan::PartPlan& plan, section::Face face, double length_mm) {
    const Ends ends = ends_of(plan, face, length_mm);
    Sides sides;
    for (std::size_t i = 0; i < plan.part->operations.size(); ++i) {
        const auto* notch = std::get_if<job::Notch>(&plan.part->operations[i]);
        if (notch != nullptr && notch->face == face)
            add_notch(sides, *notch, ends, static_cast<int>(i));
    }
    using job::NotchEdge;
    const auto corner = [&](NotchEdge edge) { return has_corner(plan, face, edge); };
    FaceOutline made;
    if (!corner(NotchEdge::start_near))
        made.outline.push_back({ends.start(0.0), 0.0});
    append(made, sides.near_edge);
    if (!corner(NotchEdge::finish_near))
        made.outline.push_back({ends.finish(0.0), 0.0});
    append(made, sides.finish_end);
    if (ends.finish_run > 0.0)
        append_scoop(made, ends, true);
    if (!corner(NotchEdge::finish_far))
        made.outline.push_back({ends.finish(ends.width), ends.width});
    append(made, sides.far_edge);
    if (!corner(NotchEdge::start_far))
        made.outline.push_back({ends.start(ends.width), ends.width});
    if (ends.start_run > 0.0)
        append_scoop(made, ends, false);
    append(made, sides.start_end);
    return made;
}

EndPlaces
ends_at(const plan::PartPlan& plan, section::Face face, double length_mm, double height_mm) {
    const Ends ends = ends_of(plan, face, length_mm);
    return {ends.start(height_mm), ends.finish(height_mm)};
}

std::vector<Spot> hole_corners(const geometry::HoleOutline& hole, bool turned) {
    const auto half = geometry::half_extent(hole, turned);
    const double a = to_millimetres(half.along);
    const double c = to_millimetres(half.across);
    switch (hole.shape) {
    case geometry::HoleShape::square:
    case geometry::HoleShape::rectangle:
        return {{-a, -c}, {a, -c}, {a, c}, {-a, c}};
    case geometry::HoleShape::hexagon: {
        const double side = to_millimetres(hole.size) / std::numbers::sqrt3;
        std::vector<Spot> spots;
        for (int i = 0; i < 6; ++i) {
            const double angle = (i * 60.0 + (turned ? 90.0 : 0.0)) * std::numbers::pi / 180.0;
            spots.push_back({side * std::cos(angle), side * std::sin(angle)});
        }
        return spots;
    }
    case geometry::HoleShape::obround: {
        // Half a circle at either end.
        const double radius = std::min(a, c);
        const double x = std::max(a, c) - radius;
        std::vector<Spot> spots{{x, -radius, 1.0}, {x, radius}, {-x, radius, 1.0}, {-x, -radius}};
        if (turned)
            for (Spot& spot : spots)
                spot = {-spot.y, spot.x, spot.bulge};
        return spots;
    }
    default:
        return {};
    }
}

void draw_holes(
    Drafter& draft, const plan::PartPlan& plan, section::Face face, double low, int only) {
    for (const plan::Mark& mark : plan.marks) {
        if (mark.kind != plan::Mark::Kind::hole || mark.face != face ||
            (only != plan::k_none && mark.operation != only))
            continue;
        const auto index = static_cast<std::size_t>(mark.operation);
        const auto& punch = std::get<job::Punch>(plan.part->operations[index]);
        const Spot centre{to_millimetres(mark.x), low + to_millimetres(mark.y)};
        std::vector<Spot> corners = hole_corners(punch.hole, punch.turned);
        for (Spot& spot : corners)
            spot = {spot.x + centre.x, spot.y + centre.y, spot.bulge};
        const auto half = geometry::half_extent(punch.hole, punch.turned);
        const double a = to_millimetres(half.along);
        const double c = to_millimetres(half.across);
        // A `perimeter` hole has no known outline: the circle of that perimeter stands for it.
        if (corners.empty())
            draft.circle(centre, a, Fill::paper, mark.operation);
        else
            draft.shape(corners, Fill::paper, Pen::outline, mark.operation);
        draft.keep_free({{centre.x - a, centre.y - c}, {centre.x + a, centre.y + c}});
    }
}

Drawing no_drawing(const plan::PartPlan& plan) {
    Drafter draft(1.0);
    const std::string why = plan.problem ? plan.problem->reason : "sizes are missing";
    draft.label({}, "No drawing: " + why, Anchor::start);
    return draft.finish("No drawing of " + plan.part->mark + ": " + why);
}

bool is_bent(const job::Part& part) { return !part.legs.empty(); }

} // namespace treadle::sheet
