#include "sheet/arc.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadle::sheet {

namespace {

constexpr double k_right_angle = std::numbers::pi / 2.0;
constexpr int k_most_chords = 256;

void stretch(Box& box, Spot spot) {
    box.low = {std::min(box.low.x, spot.x), std::min(box.low.y, spot.y)};
    box.high = {std::max(box.high.x, spot.x), std::max(box.high.y, spot.y)};
}

bool is_arc(Spot from, Spot to) {
    return from.bulge != 0.0 && std::hypot(to.x - from.x, to.y - from.y) > 0.0;
}

/// Calls `each` with the two ends of every way.
template <class Each>
void each_way(const std::vector<Spot>& spots, bool closed, const Each& each) {
    for (std::size_t i = 0; i + 1 < spots.size(); ++i)
        each(spots[i], spots[i + 1]);
    if (closed && spots.size() > 1)
        each(spots.back(), spots.front());
}

} // namespace

Spot Arc::at(double share) const {
    const double angle = start + sweep * share;
    return {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)};
}

Arc arc_between(Spot from, Spot to) {
    const double b = from.bulge;
    const double dx = to.x - from.x;
    const double dy = to.y - from.y;
    // From the middle of the chord to the centre, in chords, to the left.
    const double off = (1.0 - b * b) / (4.0 * b);
    Arc arc;
    arc.centre = {(from.x + to.x) / 2.0 - dy * off, (from.y + to.y) / 2.0 + dx * off};
    arc.radius = std::hypot(dx, dy) * (1.0 + b * b) / (4.0 * std::abs(b));
    arc.start = std::atan2(from.y - arc.centre.y, from.x - arc.centre.x);
    arc.sweep = 4.0 * std::atan(b);
    return arc;
}

void bend(Spot& spot, double sweep) { spot.bulge = std::tan(sweep / 4.0); }

Box bounds_of(const std::vector<Spot>& spots, bool closed) {
    Box box{spots.front(), spots.front()};
    for (const Spot spot : spots)
        stretch(box, spot);
    each_way(spots, closed, [&](Spot from, Spot to) {
        if (!is_arc(from, to))
            return;
        const Arc arc = arc_between(from, to);
        const double low = std::min(arc.start, arc.start + arc.sweep);
        const double high = std::max(arc.start, arc.start + arc.sweep);
        for (double angle = std::ceil(low / k_right_angle) * k_right_angle; angle <= high;
             angle += k_right_angle)
            stretch(box, arc.at((angle - arc.start) / arc.sweep));
    });
    return box;
}

std::vector<Spot> straightened(const std::vector<Spot>& spots, bool closed, double within) {
    std::vector<Spot> straight;
    straight.reserve(spots.size());
    const auto add = [&](Spot from, Spot to) {
        straight.push_back({from.x, from.y});
        if (!is_arc(from, to))
            return;
        const Arc arc = arc_between(from, to);
        const double step = 2.0 * std::acos(std::max(0.0, 1.0 - within / arc.radius));
        const int chords =
            std::clamp(static_cast<int>(std::ceil(std::abs(arc.sweep) / std::max(step, 1e-6))),
                       2,
                       k_most_chords);
        for (int i = 1; i < chords; ++i)
            straight.push_back(arc.at(static_cast<double>(i) / chords));
    };
    each_way(spots, closed, add);
    if (!closed && !spots.empty())
        straight.push_back({spots.back().x, spots.back().y});
    if (closed && spots.size() == 1)
        straight.push_back({spots.front().x, spots.front().y});
    return straight;
}

} // namespace treadle::sheet
