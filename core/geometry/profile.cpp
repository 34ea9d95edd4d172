#include "geometry/profile.h"

#include <algorithm>
#include <cmath>

namespace treadle::geometry {

namespace {

/// Chords leave their arc by no more than this, and never span more than 60 degrees.
constexpr double k_most_sag_mm = 0.5;
constexpr double k_least_cosine = 0.8660254037844386;

int chords_of(const Fold& fold) {
    const double cosine = fold.radius_mm > 0.0 ? 1.0 - k_most_sag_mm / fold.radius_mm : 0.0;
    const double step = 2.0 * std::acos(std::max(cosine, k_least_cosine));
    return std::max(1, static_cast<int>(std::ceil(std::abs(fold.turn_rad) / step)));
}

double cross(ProfilePoint a, ProfilePoint b, ProfilePoint p) {
    return (b.x_mm - a.x_mm) * (p.y_mm - a.y_mm) - (b.y_mm - a.y_mm) * (p.x_mm - a.x_mm);
}

double point_to_line(ProfilePoint p, ProfilePoint a, ProfilePoint b) {
    const double dx = b.x_mm - a.x_mm;
    const double dy = b.y_mm - a.y_mm;
    const double length2 = dx * dx + dy * dy;
    double share = 0.0;
    if (length2 > 0.0)
        share = std::clamp(((p.x_mm - a.x_mm) * dx + (p.y_mm - a.y_mm) * dy) / length2, 0.0, 1.0);
    const double x = a.x_mm + share * dx - p.x_mm;
    const double y = a.y_mm + share * dy - p.y_mm;
    return std::sqrt(x * x + y * y);
}

/// Clips the line by every edge's half plane: what is left of it lies inside.
bool reaches_inside(const ProfileLine& line, const ConvexOutline& outline) {
    double enter = 0.0;
    double leave = 1.0;
    const std::size_t count = outline.corners.size();
    for (std::size_t i = 0; i < count; ++i) {
        const ProfilePoint a = outline.corners[i];
        const ProfilePoint b = outline.corners[i + 1 < count ? i + 1 : 0];
        const double from = cross(a, b, line.from); // inside: zero or above
        const double to = cross(a, b, line.to);
        if (from < 0.0 && to < 0.0)
            return false;
        if (from < 0.0)
            enter = std::max(enter, from / (from - to));
        else if (to < 0.0)
            leave = std::min(leave, from / (from - to));
    }
    return enter <= leave;
}

} // namespace

ConvexOutline convex_outline(std::vector<ProfilePoint> corners) {
    ConvexOutline outline;
    outline.corners = std::move(corners);
    outline.low = outline.high = outline.corners.front();
    for (const ProfilePoint corner : outline.corners) {
        outline.low.x_mm = std::min(outline.low.x_mm, corner.x_mm);
        outline.low.y_mm = std::min(outline.low.y_mm, corner.y_mm);
        outline.high.x_mm = std::max(outline.high.x_mm, corner.x_mm);
        outline.high.y_mm = std::max(outline.high.y_mm, corner.y_mm);
    }
    return outline;
}

double least_gap_mm(const ProfileLine& line, const ConvexOutline& outline) {
    const double x = std::max({0.0,
                               outline.low.x_mm - std::max(line.from.x_mm, line.to.x_mm),
                               std::min(line.from.x_mm, line.to.x_mm) - outline.high.x_mm});
    const double y = std::max({0.0,
                               outline.low.y_mm - std::max(line.from.y_mm, line.to.y_mm),
                               std::min(line.from.y_mm, line.to.y_mm) - outline.high.y_mm});
    return x > y ? x : y;
}

double distance_mm(const ProfileLine& line, const ConvexOutline& outline) {
    if (reaches_inside(line, outline))
        return 0.0;
    double least = HUGE_VAL;
    const std::size_t count = outline.corners.size();
    for (std::size_t i = 0; i < count; ++i) {
        const ProfilePoint a = outline.corners[i];
        const ProfilePoint b = outline.corners[i + 1 < count ? i + 1 : 0];
        least = std::min({least,
                          point_to_line(line.from, a, b),
                          point_to_line(line.to, a, b),
                          point_to_line(a, line.from, line.to)});
    }
    return least;
}

void fold_strip(const std::vector<Fold>& folds, double end_mm, double y_mm, FoldedStrip& strip) {
    strip.lines.clear();
    strip.folds.clear();
    ProfilePoint at{0.0, y_mm};
    double heading = 0.0;
    double along = 0.0;
    int passed = 0;
    const auto go = [&](double length) {
        const ProfilePoint next{at.x_mm + std::cos(heading) * length,
                                at.y_mm + std::sin(heading) * length};
        strip.lines.push_back({at, next});
        strip.folds.push_back(passed);
        at = next;
    };
    for (const Fold& fold : folds) {
        go(std::max(0.0, fold.from_mm - along));
        ++passed;
        const int chords = chords_of(fold);
        const double step = fold.turn_rad / chords;
        const double chord = 2.0 * fold.radius_mm * std::sin(std::abs(step) / 2.0);
        for (int i = 0; i < chords; ++i) {
            heading += step / 2.0;
            go(chord);
            heading += step / 2.0;
        }
        along = fold.to_mm;
    }
    go(std::max(0.0, end_mm - along));
}

} // namespace treadle::geometry
