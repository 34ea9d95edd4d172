// A drawing as inline SVG: presentation attributes only, black on white.

#include "base/text.h"
#include "sheet/arc.h"
#include "sheet/drawing.h"

#include <algorithm>
#include <cmath>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_points_per_mm = 72.0 / 25.4;
constexpr double k_least_text_points = 9.0;

struct PenLook {
    const char* width; ///< points; 0.71 pt is 0.25 mm
    const char* dashes;
};
PenLook look_of(Pen pen) {
    switch (pen) {
    case Pen::outline:
        return {"1.1", nullptr};
    case Pen::hidden:
        return {"0.8", "4 2"};
    case Pen::dimension:
        return {"0.72", nullptr};
    case Pen::bend_line:
        return {"1", "7 2.5 1.5 2.5"};
    case Pen::datum:
        return {"2.8", nullptr};
    case Pen::highlight:
        return {"2.2", nullptr};
    case Pen::hatch:
        return {"0.6", nullptr};
    case Pen::none:
        break;
    }
    return {"1", nullptr};
}

const char* fill_of(Fill fill) {
    switch (fill) {
    case Fill::none:
        return "none";
    case Fill::steel:
        return "#e4e9ec";
    case Fill::paper:
    case Fill::hatched:
        return "#fff";
    case Fill::dark:
        return "#000";
    }
    return "none";
}

class Writer {
public:
    Writer(const Drawing& drawing, double width_mm, double height_mm) : drawing_(drawing) {
        const double wide = std::max(1e-9, to_millimetres(drawing.high.x - drawing.low.x));
        const double high = std::max(1e-9, to_millimetres(drawing.high.y - drawing.low.y));
        scale_ = std::min(width_mm / wide, height_mm / high) * k_points_per_mm;
        width_ = wide * scale_;
        height_ = high * scale_;
    }

    std::string write() {
        const std::string wide_mm = base::write_short(width_ / k_points_per_mm, 2);
        const std::string high_mm = base::write_short(height_ / k_points_per_mm, 2);
        out_ = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" + wide_mm +
               "mm\" height=\"" + high_mm + "mm\" viewBox=\"0 0 " + number(width_) + ' ' +
               number(height_) + "\" font-family=\"B612, Helvetica, Arial, sans-serif\">";
        out_ += "<title>" + base::escape_markup(drawing_.description) + "</title>";
        for (const Path& path : drawing_.paths)
            write_path(path);
        for (const Circle& circle : drawing_.circles)
            write_circle(circle);
        for (const Dimension& dimension : drawing_.dimensions)
            write_dimension(dimension);
        for (const Label& label : drawing_.labels)
            write_label(label);
        out_ += "</svg>";
        return std::move(out_);
    }

private:
    static std::string number(double points) { return base::write_short(points, 2); }
    [[nodiscard]] std::string x(Length at) const {
        return number(to_millimetres(at - drawing_.low.x) * scale_);
    }
    [[nodiscard]] double y_points(Length at) const {
        return to_millimetres(drawing_.high.y - at) * scale_;
    }

    void write_pen(Pen pen) {
        if (pen == Pen::none)
            return; // SVG strokes nothing of itself
        const PenLook look = look_of(pen);
        out_ += " stroke=\"#000\" stroke-width=\"";
        out_ += look.width;
        out_ += '"';
        if (look.dashes != nullptr) {
            out_ += " stroke-dasharray=\"";
            out_ += look.dashes;
            out_ += '"';
        }
    }

    [[nodiscard]] std::string place(Point point) const {
        return x(point.x) + ' ' + number(y_points(point.y));
    }

    void write_way(const Path& path, std::size_t from, std::size_t to) {
        const double bulge = path.bulges.empty() ? 0.0 : path.bulges[from];
        if (bulge == 0.0) {
            out_ += 'L' + place(path.points[to]);
            return;
        }
        const auto spot = [&](std::size_t i) {
            return Spot{to_millimetres(path.points[i].x), to_millimetres(path.points[i].y), bulge};
        };
        const std::string radius = number(arc_between(spot(from), spot(to)).radius * scale_);
        // Anticlockwise with y up is anticlockwise on the paper: no positive sweep there.
        out_ += 'A' + radius + ' ' + radius + " 0 " + (std::abs(bulge) > 1.0 ? '1' : '0') + ' ' +
                (bulge > 0.0 ? '0' : '1') + ' ' + place(path.points[to]);
    }

    /// The line and its strokes as one path.
    void write_dimension(const Dimension& dimension) {
        out_ += "<path d=\"M" + place(dimension.from) + 'L' + place(dimension.to);
        for (const Tick& tick : dimension.ticks)
            out_ += 'M' + place(tick.from) + 'L' + place(tick.to);
        out_ += "\" fill=\"none\"";
        write_pen(Pen::dimension);
        out_ += "/>";
    }

    void write_path(const Path& path) {
        out_ += "<path d=\"";
        for (std::size_t i = 0; i < path.points.size(); ++i) {
            if (i == 0)
                out_ += 'M' + place(path.points[0]);
            else
                write_way(path, i - 1, i);
        }
        if (path.closed && !path.bulges.empty() && path.bulges.back() != 0.0)
            write_way(path, path.points.size() - 1, 0);
        if (path.closed)
            out_ += 'Z';
        out_ += "\" fill=\"";
        out_ += fill_of(path.fill);
        out_ += '"';
        write_pen(path.pen);
        out_ += "/>";
        if (!path.hatch.empty())
            write_hatch(path.hatch);
    }

    void write_hatch(const std::vector<Stroke>& strokes) {
        out_ += "<path d=\"";
        for (const Stroke& stroke : strokes)
            out_ += 'M' + place(stroke.from) + 'L' + place(stroke.to);
        out_ += "\" fill=\"none\"";
        write_pen(Pen::hatch);
        out_ += "/>";
    }

    void write_circle(const Circle& circle) {
        out_ += "<circle cx=\"" + x(circle.centre.x) + "\" cy=\"" +
                number(y_points(circle.centre.y)) + "\" r=\"" +
                number(to_millimetres(circle.radius) * scale_) + "\" fill=\"";
        out_ += fill_of(circle.fill);
        out_ += '"';
        write_pen(circle.pen);
        out_ += "/>";
    }

    void write_label(const Label& label) {
        const double size = std::max(k_least_text_points, label.points);
        out_ += "<text x=\"" + x(label.at.x) + "\" y=\"" +
                number(y_points(label.at.y) + size * 0.35) + "\" font-size=\"" + number(size) + '"';
        if (label.anchor != Anchor::start)
            out_ +=
                label.anchor == Anchor::middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"";
        if (label.bold)
            out_ += " font-weight=\"bold\"";
        out_ += '>' + base::escape_markup(label.text) + "</text>";
    }

    const Drawing& drawing_;
    double scale_ = 1.0; ///< points of the picture for a millimetre of the part
    double width_ = 0.0;
    double height_ = 0.0;
    std::string out_;
};

} // namespace

std::string to_svg(const Drawing& drawing, double width_mm, double height_mm) {
    return Writer(drawing, width_mm, height_mm).write();
}

} // namespace treadle::sheet
