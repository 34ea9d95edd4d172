#include "ui/views/reading.h"

namespace treadle::views {

namespace {

ui::PointMm to_point(const sheet::Point& point) {
    return {quantity::to_millimetres(point.x), quantity::to_millimetres(point.y)};
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
    for (const sheet::Circle& circle : drawing.circles) {
        picture.rounds.push_back({to_point(circle.centre),
                                  quantity::to_millimetres(circle.radius),
                                  circle.pen,
                                  circle.fill,
                                  circle.operation});
    }
    for (const sheet::Label& label : drawing.labels)
        picture.words.push_back(
            {to_point(label.at), label.text, label.anchor, label.bold, label.operation});
    return picture;
}

const Picture& picture_of(PartReading& reading, bool finished_shape, PrintStyle style) {
    std::optional<Picture>& kept = finished_shape ? reading.finished : reading.flat;
    if (!kept) {
        kept = to_picture(finished_shape ? sheet::draw_finished(*reading.plan, style)
                                         : sheet::draw_flat(*reading.plan, style));
    }
    return *kept;
}

} // namespace treadle::views
