// Side view of a bent flat, and the outlines of sections.

#include "sheet/outline.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr int k_arc_steps = 12;

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
    void turn(double radius, double angle, bool up) {
        const double reach =
            up ? thickness + radius : -radius; // lower face to the centre, leftward
        const Spot centre = left(reach);
        const double step = (up ? angle : -angle) / k_arc_steps;
        for (int i = 0; i < k_arc_steps; ++i) {
            heading += step;
            at = {centre.x + std::sin(heading) * reach, centre.y - std::cos(heading) * reach};
            note();
        }
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
    std::vector<Spot> spots;
    for (int i = 0; i < 48; ++i) {
        const double angle = i * std::numbers::pi / 24.0;
        spots.push_back({centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
    }
    return spots;
}

std::vector<Spot> box(double x0, double y0, double x1, double y1) {
    return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
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
        walker.turn(after->radius, after->angle, after->up);
        const double turn = after->up ? 1.0 : -1.0;
        const std::size_t middle = walker.lower.size() - 1 - k_arc_steps / 2;
        made.bends.push_back({after->up ? walker.upper[middle] : walker.lower[middle],
                              {-std::sin(halfway) * turn, std::cos(halfway) * turn},
                              after->operation});
    }
    made.outline = walker.lower;
    made.outline.insert(made.outline.end(), walker.upper.rbegin(), walker.upper.rend());
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
        return {{{0, 0}, {w, 0}, {w, t}, {t, t}, {t, h}, {0, h}}};
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
        return {box(0, 0, w, tall), box(t, t, w - t, tall - t)};
    }
    default:
        return {box(0, 0, w, t)};
    }
}

} // namespace treadle::sheet
