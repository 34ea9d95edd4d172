#include "sheet/hatch.h"

#include <algorithm>
#include <cmath>

namespace treadle::sheet {

namespace {

/// More than a picture can show: a pitch too fine for its shape.
constexpr double k_most_strokes = 5000.0;
/// Of the pitch: what is cut off shorter than that is no more than a speck in a corner.
constexpr double k_least_share = 0.02;

/// Which stroke a spot is on, in millimetres along x.
double line_of(Spot spot) { return spot.x - spot.y; }

/// Where the sides of the shape meet one stroke's line, from left to right.
std::vector<Spot> crossings(const std::vector<Spot>& outline, double line) {
    std::vector<Spot> met;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Spot a = outline[i];
        const Spot b = outline[(i + 1) % outline.size()];
        const double before = line_of(a) - line;
        const double after = line_of(b) - line;
        // A corner on the line belongs to one of its two sides, so that the ends come in pairs.
        if ((before < 0.0) == (after < 0.0))
            continue;
        const double share = before / (before - after);
        met.push_back({a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share});
    }
    std::sort(met.begin(), met.end(), [](Spot a, Spot b) { return a.x < b.x; });
    return met;
}

} // namespace

std::vector<Stroke> hatch_of(const std::vector<Spot>& outline, double pitch) {
    std::vector<Stroke> strokes;
    if (outline.size() < 3 || !(pitch > 0.0))
        return strokes;
    const auto [low, high] = std::minmax_element(
        outline.begin(), outline.end(), [](Spot a, Spot b) { return line_of(a) < line_of(b); });
    const double first = std::ceil(line_of(*low) / pitch);
    const double last = std::floor(line_of(*high) / pitch);
    if (!(last - first < k_most_strokes))
        return strokes;
    for (double i = first; i <= last; i += 1.0) {
        const std::vector<Spot> met = crossings(outline, i * pitch);
        for (std::size_t at = 0; at + 1 < met.size(); at += 2)
            if (met[at + 1].x - met[at].x > pitch * k_least_share)
                strokes.push_back({to_point(met[at]), to_point(met[at + 1])});
    }
    return strokes;
}

} // namespace treadle::sheet
