#include "ui/views/reading.h"

namespace treadle::views {

namespace {

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

/// A box of as many lines of the drawing's type as the room has lines of the page's.
sheet::PictureBox box_of(PictureRoom room) {
    constexpr double k_drawing_type_points = 9.0;
    constexpr double k_mm_per_point = 25.4 / 72.0;
    const double mm_per_px =
        k_drawing_type_points * k_mm_per_point / static_cast<double>(room.type);
    return {static_cast<double>(room.wide) * mm_per_px, static_cast<double>(room.high) * mm_per_px};
}

} // namespace

Picture to_picture(const sheet::Drawing& drawing) {
    Picture picture;
    picture.bounds = {to_point(drawing.low), to_point(drawing.high)};
    picture.description = drawing.description;
    picture.lines.reserve(drawing.paths.size());
    for (const sheet::Path& path : drawing.paths) {
        Picture::Line line{{}, path.closed, path.pen, path.fill, path.operation};
        line.points.reserve(path.points.size());
        for (const sheet::Point& point : path.points)
            line.points.push_back(to_point(point));
        picture.lines.push_back(std::move(line));
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
    return picture;
}

const Picture&
picture_of(PartReading& reading, bool finished_shape, PrintStyle style, PictureRoom room) {
    std::optional<PartReading::Kept>& kept = finished_shape ? reading.finished : reading.flat;
    if (!kept || !(kept->room == room)) {
        kept = PartReading::Kept{
            room,
            to_picture(finished_shape ? sheet::draw_finished(*reading.plan, style, box_of(room))
                                      : sheet::draw_flat(*reading.plan, style, box_of(room)))};
    }
    return kept->picture;
}

} // namespace treadle::views
