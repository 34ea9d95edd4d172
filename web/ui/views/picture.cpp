#include "ui/views/picture.h"

#include "sheet/drawing_near.h"

#include "ui/views/near_picture.h"
#include "ui/widgets/polygon.h"

#include <algorithm>
#include <cmath>

namespace treadle::views {

namespace {

constexpr double k_drawing_type_points = 9.0;
constexpr double k_within_px = 0.15; ///< chords of an arc, from it
constexpr double k_fine = 3000;      ///< of a drawing's size: what nobody sees

ui::PointMm to_point(const sheet::Point& point) {
    return {quantity::to_millimetres(point.x), quantity::to_millimetres(point.y)};
}

/// A number in a circle: the page has a ring of its own for it, of a size to be read and pressed.
bool is_number(const sheet::Drawing& drawing, const sheet::Label& label) {
    if (label.operation == plan::k_none || label.text != std::to_string(label.operation + 1))
        return false;
    for (const sheet::Circle& circle : drawing.circles) {
        if (circle.operation == label.operation && circle.centre.x == label.at.x &&
            circle.centre.y == label.at.y)
            return true;
    }
    return false;
}

bool is_ring(const Picture& picture, const Picture::Round& round) {
    for (const Picture::Ring& ring : picture.rings) {
        if (ring.operation == round.operation && ring.at.x == round.centre.x &&
            ring.at.y == round.centre.y)
            return true;
    }
    return false;
}

std::vector<std::array<int, 3>> filling_of(const std::vector<ui::PointMm>& points) {
    std::vector<ui::PlanePoint> corners;
    corners.reserve(points.size());
    for (const ui::PointMm& point : points)
        corners.push_back({point.x, point.y});
    return ui::triangles_of(corners);
}

/// A number stands for its operation; without one, the first thing that was drawn for it.
void find_targets(Picture& picture) {
    picture.targets = picture.rings;
    const auto add = [&](ui::PointMm at, int operation) {
        const bool known =
            operation == plan::k_none ||
            std::any_of(picture.targets.begin(),
                        picture.targets.end(),
                        [&](const Picture::Ring& target) { return target.operation == operation; });
        if (!known)
            picture.targets.push_back({at, operation});
    };
    for (const Picture::Round& round : picture.rounds)
        add(round.centre, round.operation);
    for (const Picture::Line& line : picture.lines)
        if (line.pen != sheet::Pen::dimension && line.points.size() > 1)
            add({(line.points[0].x + line.points[1].x) / 2,
                 (line.points[0].y + line.points[1].y) / 2},
                line.operation);
    for (const Picture::Word& word : picture.words)
        add(word.at, word.operation);
    std::sort(
        picture.targets.begin(),
        picture.targets.end(),
        [](const Picture::Ring& a, const Picture::Ring& b) { return a.operation < b.operation; });
}

double to_segment(ui::PointMm p, ui::PointMm a, ui::PointMm b) {
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double square = dx * dx + dy * dy;
    const double share =
        square > 0 ? std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / square, 0.0, 1.0) : 0.0;
    return std::hypot(p.x - a.x - dx * share, p.y - a.y - dy * share);
}

} // namespace

int nearest_operation(const Picture& picture,
                      const ui::Surface& surface,
                      ui::PointMm px,
                      double most) {
    int nearest = plan::k_none;
    const auto offer = [&](double far, int operation) {
        if (operation == plan::k_none || far > most)
            return;
        most = far;
        nearest = operation;
    };
    const auto on = [&](ui::PointMm point) { return surface.on_screen(point); };
    const auto far = [&](ui::PointMm point) {
        const ui::PointMm at = on(point);
        return std::hypot(px.x - at.x, px.y - at.y);
    };
    for (const Picture::Line& line : picture.lines) {
        if (line.pen == sheet::Pen::dimension || line.operation == plan::k_none)
            continue;
        for (std::size_t i = line.closed ? 0 : 1; i < line.points.size(); ++i) {
            const std::size_t before = i == 0 ? line.points.size() - 1 : i - 1;
            offer(to_segment(px, on(line.points[before]), on(line.points[i])), line.operation);
        }
    }
    for (const Picture::Round& round : picture.rounds)
        offer(std::max(0.0, far(round.centre) - round.radius_mm * surface.scale()),
              round.operation);
    for (const Picture::Word& word : picture.words)
        offer(far(word.at), word.operation);
    // A number lies on top: it wins where a finger is on both.
    for (const Picture::Ring& ring : picture.rings)
        offer(std::max(0.0, far(ring.at) - 13.0), ring.operation);
    return nearest;
}

Picture to_picture(const sheet::Drawing& drawing, double within) {
    Picture picture;
    picture.bounds = {to_point(drawing.low), to_point(drawing.high)};
    picture.description = drawing.description;
    if (!(within > 0))
        within = std::hypot(picture.bounds.high.x - picture.bounds.low.x,
                            picture.bounds.high.y - picture.bounds.low.y) /
                 k_fine;
    picture.lines.reserve(drawing.paths.size());
    const auto stroke =
        [&](const sheet::Point& from, const sheet::Point& to, sheet::Pen pen, int operation) {
            picture.lines.push_back(
                {{to_point(from), to_point(to)}, {}, false, pen, sheet::Fill::none, operation});
        };
    for (const sheet::Path& path : drawing.paths) {
        Picture::Line line{{}, {}, path.closed, path.pen, path.fill, path.operation};
        for (const sheet::Point& point : sheet::straightened(path, quantity::millimetres(within)))
            line.points.push_back(to_point(point));
        if (line.fill != sheet::Fill::none)
            line.triangles = filling_of(line.points);
        picture.lines.push_back(std::move(line));
        for (const sheet::Stroke& one : path.hatch)
            stroke(one.from, one.to, sheet::Pen::hatch, plan::k_none);
    }
    for (const sheet::Dimension& dimension : drawing.dimensions) {
        stroke(dimension.from, dimension.to, sheet::Pen::dimension, plan::k_none);
        for (const sheet::Tick& tick : dimension.ticks)
            stroke(tick.from, tick.to, sheet::Pen::dimension, tick.operation);
    }
    for (const sheet::Label& label : drawing.labels) {
        if (is_number(drawing, label))
            picture.rings.push_back({to_point(label.at), label.operation});
        else
            picture.words.push_back(
                {to_point(label.at), label.text, label.anchor, label.bold, label.operation});
    }
    for (const sheet::Circle& circle : drawing.circles) {
        const Picture::Round round{to_point(circle.centre),
                                   quantity::to_millimetres(circle.radius),
                                   circle.pen,
                                   circle.fill,
                                   circle.operation};
        if (!is_ring(picture, round))
            picture.rounds.push_back(round);
    }
    picture.faces = drawing.faces;
    find_targets(picture);
    return picture;
}

sheet::PictureBox box_of(PictureRoom room) {
    constexpr double k_mm_per_point = 25.4 / 72.0;
    const double mm_per_px =
        k_drawing_type_points * k_mm_per_point / static_cast<double>(room.type);
    return {static_cast<double>(room.wide) * mm_per_px, static_cast<double>(room.high) * mm_per_px};
}

PartReading::Kept& near_picture(
    PartReading& reading, bool finished_shape, PrintStyle style, PictureRoom room, float zoom) {
    std::optional<PartReading::Kept>& kept = finished_shape ? reading.finished : reading.flat;
    const PictureRoom key{room.wide, room.high, room.type / zoom};
    if (kept && kept->room == key)
        return *kept;
    const sheet::PictureBox box = box_of(room);
    sheet::Drawing drawing = finished_shape ? sheet::draw_finished(*reading.plan, style, box)
                                            : sheet::draw_flat(*reading.plan, style, box);
    const sheet::Point low = drawing.low;
    const sheet::Point high = drawing.high;
    const double mm_per_px = std::max(quantity::to_millimetres(high.x - low.x) /
                                          std::max(1.0, static_cast<double>(room.wide)),
                                      quantity::to_millimetres(high.y - low.y) /
                                          std::max(1.0, static_cast<double>(room.high))) /
                             static_cast<double>(zoom);
    if (zoom > 1) {
        const double mm_per_point =
            mm_per_px * static_cast<double>(room.type) / k_drawing_type_points;
        drawing = finished_shape
                      ? sheet::draw_finished_near(*reading.plan, style, box, mm_per_point)
                      : sheet::draw_flat_near(*reading.plan, style, box, mm_per_point);
        drawing.low = low;
        drawing.high = high;
    }
    kept = PartReading::Kept{key, to_picture(drawing, mm_per_px * k_within_px), {}, {}};
    return *kept;
}

} // namespace treadle::views
