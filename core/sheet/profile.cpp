// Side view of a bent flat, and the outlines of sections.

#include "sheet/arc.h"
#include "sheet/outline.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_square_turn = std::numbers::sqrt2 - 1.0; ///< bulge of a quarter of a circle

struct Walker { ///< along the lower face; the metal lies to the left
    Spot at;
    double heading = 0.0;
    double thickness = 0.0;
    std::vector<Spot> lower;
    std::vector<Spot> upper;

    [[nodiscard]] Spot left(double by) const {
        return {at.x - std::sin(heading) * by, at.y + std::cos(heading) * by};
    }
    void note() {
        lower.push_back(at);
        upper.push_back(left(thickness));
    }
    void straight(double length) {
        at.x += std::cos(heading) * length;
        at.y += std::sin(heading) * length;
        note();
    }
    /// Gives the place on the inside, half way round.
    Spot turn(double radius, double angle, bool up) {
        const double reach =
            up ? thickness + radius : -radius; // lower face to the centre, leftward
        const Spot centre = left(reach);
        const double sweep = up ? angle : -angle;
        bend(lower.back(), sweep);
        bend(upper.back(), sweep);
        const auto go = [&](double by) {
            heading += by;
            at = {centre.x + std::sin(heading) * reach, centre.y - std::cos(heading) * reach};
        };
        go(sweep / 2.0);
        const Spot inside = up ? left(thickness) : at;
        go(sweep / 2.0);
        note();
        return inside;
    }
};

struct BendInPlan {
    double radius = 0.0;
    double angle = 0.0; ///< radians
    double setback = 0.0;
    bool up = true;
    int operation = 0;
    double allowance = 0.0;
    bool made = true;
};

std::optional<std::vector<BendInPlan>> bends_of(const plan::PartPlan& plan) {
    std::vector<BendInPlan> bends;
    for (std::size_t i = 0; i < plan.part->operations.size(); ++i) {
        const auto* bend = std::get_if<job::Bend>(&plan.part->operations[i]);
        if (bend == nullptr)
            continue;
        if (i >= plan.operations.size() || !(plan.operations[i].bend.thickness > Length{}))
            return std::nullopt;
        const plan::OperationPlan& planned = plan.operations[i];
        bends.push_back({to_millimetres(planned.bend.radius),
                         planned.bend.angle.in_radians(),
                         to_millimetres(planned.figures.setback),
                         bend->up,
                         static_cast<int>(i),
                         to_millimetres(planned.figures.allowance)});
    }
    if (bends.size() + 1 != plan.part->legs.size())
        return std::nullopt;
    return bends;
}

std::vector<Spot> ring(double radius, Spot centre) {
    return {{centre.x + radius, centre.y, 1.0}, {centre.x - radius, centre.y, 1.0}};
}

/// Corners rounded by `r`, sharp without it.
std::vector<Spot> box(double x0, double y0, double x1, double y1, double r = 0.0) {
    if (!(r > 0.0))
        return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
    const double turn = k_square_turn;
    return {{x0 + r, y0},
            {x1 - r, y0, turn},
            {x1, y0 + r},
            {x1, y1 - r, turn},
            {x1 - r, y1},
            {x0 + r, y1, turn},
            {x0, y1 - r},
            {x0, y0 + r, turn}};
}

/// An angle with its fillet in the corner and round toes of half of it, sharp without one.
std::vector<Spot> angle_of(double w, double h, double t, double r) {
    const double toe = std::min(r / 2.0, t);
    if (!(r > 0.0) || t + r > std::min(w, h) - toe)
        return {{0, 0}, {w, 0}, {w, t}, {t, t}, {t, h}, {0, h}};
    const double turn = k_square_turn;
    return {{0, 0},
            {w, 0},
            {w, t - toe, turn},
            {w - toe, t},
            {t + r, t, -turn},
            {t, t + r},
            {t, h - toe, turn},
            {t - toe, h},
            {0, h}};
}

std::optional<Profile> profile_of(const plan::PartPlan& plan,
                                  const std::optional<std::vector<BendInPlan>>& bends) {
    if (!bends)
        return std::nullopt;
    Walker walker;
    walker.thickness = to_millimetres(plan.part->section.thickness);
    Profile made;
    walker.note();
    for (std::size_t i = 0; i < plan.part->legs.size(); ++i) {
        const BendInPlan* before = i > 0 ? &(*bends)[i - 1] : nullptr;
        const BendInPlan* after = i < bends->size() ? &(*bends)[i] : nullptr;
        ProfileLeg leg;
        leg.from = walker.at;
        leg.setback_from = before != nullptr ? before->setback : 0.0;
        leg.setback_to = after != nullptr ? after->setback : 0.0;
        leg.side = (after != nullptr ? after : before) != nullptr &&
                           (after != nullptr ? after : before)->up
                       ? -1.0
                       : 1.0;
        walker.straight(
            std::max(0.0, to_millimetres(plan.part->legs[i]) - leg.setback_from - leg.setback_to));
        leg.to = walker.at;
        made.legs.push_back(leg);
        if (after == nullptr)
            break;
        if (!after->made) {
            walker.straight(after->allowance);
            continue;
        }
        const double halfway = walker.heading + (after->up ? 1.0 : -1.0) * after->angle / 2.0;
        const Spot inside = walker.turn(after->radius, after->angle, after->up);
        const double turn = after->up ? 1.0 : -1.0;
        made.bends.push_back(
            {inside, {-std::sin(halfway) * turn, std::cos(halfway) * turn}, after->operation});
    }
    made.outline = walker.lower;
    // Back along the upper face: each way begins where it ended and bends the other way.
    for (std::size_t i = walker.upper.size(); i-- > 0;)
        made.outline.push_back(
            {walker.upper[i].x, walker.upper[i].y, i > 0 ? -walker.upper[i - 1].bulge : 0.0});
    return made;
}

} // namespace

std::optional<Profile> bent_profile(const plan::PartPlan& plan) {
    return profile_of(plan, bends_of(plan));
}

std::optional<Profile> bent_profile(const plan::PartPlan& plan, const std::vector<int>& made) {
    auto bends = bends_of(plan);
    if (bends)
        for (BendInPlan& bend : *bends)
            bend.made = std::find(made.begin(), made.end(), bend.operation) != made.end();
    return profile_of(plan, bends);
}

std::vector<std::vector<Spot>> section_outlines(const Section& section) {
    const double w = to_millimetres(section.width);
    const double h = to_millimetres(section.height);
    const double t = to_millimetres(section.thickness);
    const double f = to_millimetres(section.flange_thickness);
    switch (section.shape) {
    case section::Shape::angle:
        return {angle_of(w, h, t, to_millimetres(section.root_radius))};
    case section::Shape::channel:
        return {{{0, 0}, {w, 0}, {w, f}, {t, f}, {t, h - f}, {w, h - f}, {w, h}, {0, h}}};
    case section::Shape::round:
        return {ring(w / 2.0, {w / 2.0, w / 2.0})};
    case section::Shape::square:
        return {box(0, 0, w, w)};
    case section::Shape::pipe:
        return {ring(w / 2.0, {w / 2.0, w / 2.0}), ring(w / 2.0 - t, {w / 2.0, w / 2.0})};
    case section::Shape::square_tube: {
        const double tall = h > 0.0 ? h : w;
        const double r = std::min(to_millimetres(section.root_radius), std::min(w, tall) / 2.0);
        return {box(0, 0, w, tall, r), box(t, t, w - t, tall - t, r - t)};
    }
    default:
        return {box(0, 0, w, t)};
    }
}

} // namespace treadle::sheet
