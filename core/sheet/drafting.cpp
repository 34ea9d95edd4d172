#include "sheet/drafting.h"

#include "base/stable_sort.h"
#include "sheet/arc.h"
#include "sheet/hatch.h"
#include "sheet/text_room.h"

#include <algorithm>
#include <cmath>

namespace treadle::sheet {

namespace {

/// Widest usual digit plus a little, so that any sans-serif face fits.
constexpr double k_em_share = 0.66;
constexpr double k_balloon_points = 7.0;
constexpr double k_hatch_points = 4.5; ///< from stroke to stroke, along the picture
/// More figures than this on one line are thinned by a stride first: nobody could read them.
constexpr std::size_t k_most_figures = 200;

double total_room(const std::vector<Figure>& figures) {
    double sum = 0.0;
    for (const Figure& figure : figures)
        sum += figure.room;
    return sum;
}

/// The figure that is missed least: inside equal pitches, else the one closest to its neighbours.
std::size_t least_missed(const std::vector<Figure>& figures) {
    std::size_t best = 1;
    double best_score = INFINITY;
    for (std::size_t i = 1; i + 1 < figures.size(); ++i) {
        const double left = figures[i].at - figures[i - 1].at;
        const double right = figures[i + 1].at - figures[i].at;
        const bool equal = std::abs(left - right) < 1e-6 * (left + right);
        const double score = equal ? (left + right) * 1e-3 : left + right;
        if (score < best_score) {
            best_score = score;
            best = i;
        }
    }
    return best;
}

void thin_by_stride(std::vector<Figure>& figures) {
    if (figures.size() <= k_most_figures)
        return;
    const std::size_t stride = figures.size() / k_most_figures + 1;
    std::vector<Figure> kept;
    for (std::size_t i = 0; i + 1 < figures.size(); i += stride)
        kept.push_back(figures[i]);
    kept.push_back(figures.back());
    figures = std::move(kept);
}

struct Cluster {
    std::size_t first = 0;
    std::size_t count = 0;
    double room = 0.0;
    double wish = 0.0; ///< sum of where each would have its cluster begin
    double lowest = 0.0;
    [[nodiscard]] double begin() const {
        return std::max(lowest, wish / static_cast<double>(count));
    }
};

} // namespace

bool overlap(const Box& a, const Box& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

int spread(std::vector<Figure>& figures, double most, double lowest) {
    const std::size_t before = figures.size();
    base::stable_sort(figures, [](const Figure& a, const Figure& b) { return a.at < b.at; });
    thin_by_stride(figures);
    while (figures.size() > 2 && total_room(figures) > most)
        figures.erase(figures.begin() + static_cast<std::ptrdiff_t>(least_missed(figures)));

    std::vector<Cluster> clusters;
    for (std::size_t i = 0; i < figures.size(); ++i) {
        clusters.push_back({i, 1, figures[i].room, figures[i].at - figures[i].room / 2.0, lowest});
        while (clusters.size() > 1) {
            const Cluster& last = clusters.back();
            Cluster& left = clusters[clusters.size() - 2];
            if (left.begin() + left.room <= last.begin())
                break;
            left.wish += last.wish - left.room * static_cast<double>(last.count);
            left.room += last.room;
            left.count += last.count;
            clusters.pop_back();
        }
    }
    for (const Cluster& cluster : clusters) {
        double begin = cluster.begin();
        for (std::size_t i = cluster.first; i < cluster.first + cluster.count; ++i) {
            figures[i].placed = begin + figures[i].room / 2.0;
            begin += figures[i].room;
        }
    }
    return static_cast<int>(before - figures.size());
}

std::vector<Point> straightened(const Path& path, Length within) {
    if (path.bulges.empty())
        return path.points;
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < path.points.size(); ++i)
        spots.push_back({quantity::to_millimetres(path.points[i].x),
                         quantity::to_millimetres(path.points[i].y),
                         path.bulges[i]});
    std::vector<Point> made;
    for (const Spot spot : straightened(spots, path.closed, quantity::to_millimetres(within)))
        made.push_back(to_point(spot));
    return made;
}

Point to_point(Spot spot) { return {millimetres(spot.x), millimetres(spot.y)}; }

double Drafter::text_width(const std::string& text, double size) const {
    return points(size * k_em_share * static_cast<double>(letters_of(text)));
}

void Drafter::include(Spot spot) {
    if (!any_)
        bounds_ = {spot, spot};
    any_ = true;
    bounds_.low = {std::min(bounds_.low.x, spot.x), std::min(bounds_.low.y, spot.y)};
    bounds_.high = {std::max(bounds_.high.x, spot.x), std::max(bounds_.high.y, spot.y)};
}

Path& Drafter::path(const std::vector<Spot>& spots, Pen pen, int operation) {
    Path path;
    path.pen = pen;
    path.operation = operation;
    bool bent = false;
    for (const Spot spot : spots) {
        path.points.push_back(to_point(spot));
        bent = bent || spot.bulge != 0.0;
    }
    if (bent)
        for (const Spot spot : spots)
            path.bulges.push_back(spot.bulge);
    // An open path's last bulge leads nowhere; as a bound it does no harm.
    const Box box = bounds_of(spots, bent);
    include(box.low);
    include(box.high);
    drawing_.paths.push_back(std::move(path));
    return drawing_.paths.back();
}

Path& Drafter::shape(const std::vector<Spot>& spots, Fill fill, Pen pen, int operation) {
    Path& made = path(spots, pen, operation);
    made.closed = true;
    made.fill = fill;
    if (fill == Fill::hatched)
        made.hatch = hatch_of(spots, points(k_hatch_points));
    return made;
}

Dimension& Drafter::dimension(Spot from, Spot to) {
    include(from);
    include(to);
    drawing_.dimensions.push_back({to_point(from), to_point(to), {}});
    return drawing_.dimensions.back();
}

void Drafter::measure(Spot from, Spot to, Spot out, double foot, double line, double head) {
    const auto off = [&](Spot spot, double count) {
        return Spot{spot.x + out.x * points(count), spot.y + out.y * points(count)};
    };
    Dimension& made = dimension(off(from, line), off(to, line));
    for (const Spot end : {from, to}) {
        include(off(end, foot));
        include(off(end, head));
        made.ticks.push_back({to_point(off(end, foot)), to_point(off(end, head))});
    }
}

void Drafter::circle(Spot centre, double radius, Fill fill, int operation) {
    include({centre.x - radius, centre.y - radius});
    include({centre.x + radius, centre.y + radius});
    drawing_.circles.push_back(
        {to_point(centre), millimetres(radius), Pen::outline, fill, operation});
}

Box Drafter::text_box(Spot at, const std::string& text, Anchor anchor, double size) const {
    const double width = text_width(text, size);
    const double half = points(size * 0.6);
    const double left = anchor == Anchor::start ? at.x
                        : anchor == Anchor::end ? at.x - width
                                                : at.x - width / 2.0;
    return {{left, at.y - half}, {left + width, at.y + half}};
}

bool Drafter::is_free(const Box& box) const {
    return std::none_of(
        taken_.begin(), taken_.end(), [&](const Box& other) { return overlap(box, other); });
}

void Drafter::label(
    Spot at, const std::string& text, Anchor anchor, bool bold, int operation, double size) {
    const Box box = text_box(at, text, anchor, size);
    include(box.low);
    include(box.high);
    keep_free(box);
    drawing_.labels.push_back({to_point(at), text, anchor, size, bold, operation});
}

bool Drafter::label_where_free(const std::vector<Spot>& spots,
                               const std::string& text,
                               int operation) {
    for (const Spot spot : spots) {
        if (!is_free(text_box(spot, text, Anchor::middle, 9.0)))
            continue;
        label(spot, text, Anchor::middle, false, operation);
        return true;
    }
    return false;
}

void Drafter::balloon(Spot feature, double half, int operation) {
    const double radius = points(k_balloon_points);
    const double diagonal = half + radius;
    for (const double far : {1.0, 1.5, 2.2, 3.0}) {
        for (const Spot way : {Spot{1, 1},
                               Spot{-1, 1},
                               Spot{1, -1},
                               Spot{-1, -1},
                               Spot{0, 1.3},
                               Spot{1.3, 0},
                               Spot{0, -1.3},
                               Spot{-1.3, 0}}) {
            const Spot at{feature.x + way.x * diagonal * far, feature.y + way.y * diagonal * far};
            const Box box{{at.x - radius, at.y - radius}, {at.x + radius, at.y + radius}};
            if (!is_free(box))
                continue;
            circle(at, radius, Fill::paper, operation);
            label(at, std::to_string(operation + 1), Anchor::middle, true, operation);
            keep_free(box);
            return;
        }
    }
}

Drawing Drafter::finish(std::string description) {
    const double edge = points(2.0);
    drawing_.low = to_point({bounds_.low.x - edge, bounds_.low.y - edge});
    drawing_.high = to_point({bounds_.high.x + edge, bounds_.high.y + edge});
    drawing_.description = std::move(description);
    return std::move(drawing_);
}

} // namespace treadle::sheet
