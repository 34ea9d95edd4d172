#include "ui/widgets/polygon.h"

#include <algorithm>
#include <numeric>

namespace treadle::ui {

namespace {

double turn(const PlanePoint& a, const PlanePoint& b, const PlanePoint& c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool same(const PlanePoint& a, const PlanePoint& b) { return a.x == b.x && a.y == b.y; }

/// The corner at `b` can be cut off: it turns outwards and no other corner lies in it.
bool is_ear(std::span<const PlanePoint> points,
            const std::vector<int>& left,
            const PlanePoint& a,
            const PlanePoint& b,
            const PlanePoint& c) {
    if (turn(a, b, c) <= 0)
        return false;
    return std::none_of(left.begin(), left.end(), [&](int index) {
        const PlanePoint& p = points[static_cast<std::size_t>(index)];
        if (same(p, a) || same(p, b) || same(p, c))
            return false;
        return turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0;
    });
}

} // namespace

std::vector<std::array<int, 3>> triangles_of(std::span<const PlanePoint> outline) {
    std::vector<std::array<int, 3>> triangles;
    const std::size_t count = outline.size();
    if (count < 3)
        return triangles;
    std::vector<int> left(count);
    std::iota(left.begin(), left.end(), 0);
    double area = 0;
    for (std::size_t i = 0; i < count; ++i)
        area += turn({}, outline[i], outline[(i + 1) % count]);
    if (area < 0)
        std::reverse(left.begin(), left.end());

    std::size_t tried = 0;
    std::size_t at = 0;
    while (left.size() > 2 && tried < left.size()) {
        const std::size_t n = left.size();
        const int a = left[(at + n - 1) % n];
        const int b = left[at % n];
        const int c = left[(at + 1) % n];
        const PlanePoint& pa = outline[static_cast<std::size_t>(a)];
        const PlanePoint& pb = outline[static_cast<std::size_t>(b)];
        const PlanePoint& pc = outline[static_cast<std::size_t>(c)];
        const bool flat = turn(pa, pb, pc) == 0;
        if (flat || is_ear(outline, left, pa, pb, pc)) {
            if (!flat)
                triangles.push_back({a, b, c});
            left.erase(left.begin() + static_cast<std::ptrdiff_t>(at % n));
            tried = 0;
            at = at % n == 0 ? 0 : at % n - 1;
        } else {
            ++at;
            ++tried;
        }
    }
    return triangles;
}

} // namespace treadle::ui
