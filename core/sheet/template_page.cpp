#include "sheet/template_page.h"

#include "base/text.h"
#include "sheet/text_room.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace treadle::sheet {

namespace {

constexpr double k_margin = 10.0; // of the paper, as @page has it
constexpr double k_slack = 1.0;   // so that no browser puts an empty page behind
constexpr double k_left = 15.0;   // upright bars
constexpr double k_head = 20.0;   // so that a plate of 8 in goes on Letter
constexpr double k_foot = 19.0;   // level bars
constexpr double k_right = 1.0;
constexpr double k_overlap = 12.0;
constexpr double k_number = 14.0; // "999/999"
constexpr double k_small = 3.2;
constexpr double k_inch = 25.4;

struct Frame { ///< of one page, millimetres from its upper left corner, inside the margins
    double wide = 0.0;
    double high = 0.0;
    [[nodiscard]] double area_wide() const { return wide - k_left - k_right; }
    [[nodiscard]] double area_high() const { return high - k_head - k_foot; }
    [[nodiscard]] double bottom() const { return high - k_foot; }
};

Frame frame_of(Paper paper) {
    const bool letter = paper == Paper::letter;
    return {(letter ? 8.5 * k_inch : 210.0) - 2.0 * k_margin,
            (letter ? 11.0 * k_inch : 297.0) - 2.0 * k_margin - k_slack};
}

int tiles(double length, double area) {
    if (length <= area)
        return 1;
    const double count = std::ceil((length - k_overlap) / (area - k_overlap) - 1e-9);
    return count > k_most_template_pages ? k_most_template_pages + 1 : static_cast<int>(count);
}

Tiling tiled(double wide, double high, const TemplateOptions& options, bool turned) {
    const Frame frame = frame_of(options.paper);
    Tiling made;
    made.turned = turned;
    made.area_x = frame.area_wide() / options.factors.x;
    made.area_y = frame.area_high() / options.factors.y;
    made.columns = tiles(turned ? high : wide, made.area_x);
    made.rows = tiles(turned ? wide : high, made.area_y);
    made.step_x = made.area_x - k_overlap;
    made.step_y = made.area_y - k_overlap;
    return made;
}

std::string number(double mm) { return base::write_short(mm, 3); }

const char* pen_look(FullPen pen) {
    switch (pen) {
    case FullPen::edge:
        return "\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.35\"/>";
    case FullPen::thin:
        return "\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.25\"/>";
    case FullPen::dashed:
        break;
    }
    return "\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.25\" stroke-dasharray=\"3 1.5\"/>";
}

class Page {
public:
    Page(const FullPicture& picture, const TemplateOptions& options, const Tiling& tiling)
        : picture_(picture),
          options_(options),
          tiling_(tiling),
          frame_(frame_of(options.paper)) {}

    std::string write(int column, int row, int first, int all, const std::string& job_name) {
        column_ = column;
        row_ = row;
        out_ = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" +
               number(frame_.wide) + "mm\" height=\"" + number(frame_.high) +
               "mm\" viewBox=\"0 0 " + number(frame_.wide) + ' ' + number(frame_.high) +
               "\" font-family=\"B612, Helvetica, Arial, sans-serif\">";
        const int page = first + row * tiling_.columns + column;
        out_ += "<title>" + base::escape_markup(picture_.title) + ", page " + std::to_string(page) +
                "</title>";
        write_head(page, all);
        write_bars();
        write_foot(page, all, job_name);
        write_area(page);
        out_ += "</svg>";
        return std::move(out_);
    }

private:
    /// A place of the picture as it lies: turned a quarter where the tiling says so.
    [[nodiscard]] Spot laid(Spot at) const {
        return tiling_.turned ? Spot{at.y, picture_.width - at.x} : at;
    }
    [[nodiscard]] Spot low() const {
        return {column_ * tiling_.step_x, (tiling_.rows - 1 - row_) * tiling_.step_y};
    }
    [[nodiscard]] Spot on_page(Spot laid_at) const {
        const Spot from = low();
        return {k_left + (laid_at.x - from.x) * options_.factors.x,
                frame_.bottom() - (laid_at.y - from.y) * options_.factors.y};
    }
    [[nodiscard]] bool is_seen(Spot least, Spot most) const {
        const Spot from = low();
        return most.x >= from.x && least.x <= from.x + tiling_.area_x && most.y >= from.y &&
               least.y <= from.y + tiling_.area_y;
    }

    void text(double x, double y, const std::string& words, double size, bool bold, Anchor anchor) {
        out_ += "<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" font-size=\"" +
                number(size) + '"';
        if (anchor != Anchor::start)
            out_ += anchor == Anchor::middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"";
        if (bold)
            out_ += " font-weight=\"bold\"";
        out_ += '>' + base::escape_markup(words) + "</text>";
    }

    /// A mark may be cut, but not what it is of: behind its last colon.
    void write_head(int page, int all) {
        constexpr double k_size = 4.4;
        const std::size_t colon = std::min(picture_.title.rfind(": "), picture_.title.size());
        std::string of = picture_.title.substr(colon);
        if (tiling_.pages() > 1)
            of += ", sheet " + std::to_string(row_ * tiling_.columns + column_ + 1) + " of " +
                  std::to_string(tiling_.pages());
        const double room = (frame_.wide - k_number) / k_size - em_count(of);
        const std::string mark = shortened(picture_.title.substr(0, colon), room);
        text(0, 4.6, mark + of, k_size, true, Anchor::start);
        text(frame_.wide,
             4.6,
             std::to_string(page) + "/" + std::to_string(all),
             3.6,
             false,
             Anchor::end);
        double y = 8.4;
        for (const std::string& note : picture_.notes) {
            text(0, y, note, 3.2, false, Anchor::start);
            y += 3.6;
        }
        text(0,
             19.2,
             "Print at 100 %, actual size. Measure all four bars: if one is wrong, do not use this "
             "page.",
             3.4,
             true,
             Anchor::start);
    }

    void bar(double x, double y, double wide, double high, const char* name) {
        out_ += std::string("<rect class=\"bar ") + name + "\" x=\"" + number(x) + "\" y=\"" +
                number(y) + "\" width=\"" + number(wide) + "\" height=\"" + number(high) +
                "\" fill=\"#000\"/>";
    }
    void upright_text(double x, double y, const std::string& words) {
        out_ += "<text transform=\"translate(" + number(x) + ' ' + number(y) +
                ") rotate(-90)\" font-size=\"3.2\">" + words + "</text>";
    }

    void write_bars() {
        constexpr double k_thick = 1.0;
        const double x = options_.factors.x;
        const double y = options_.factors.y;
        bar(k_left, frame_.high - 13.0, 100.0 * x, k_thick, "level-mm");
        text(k_left + 100.0 * x + 2.0, frame_.high - 11.4, "100 mm", 3.2, false, Anchor::start);
        bar(k_left, frame_.high - 8.0, 4.0 * k_inch * x, k_thick, "level-in");
        text(k_left + 4.0 * k_inch * x + 2.0, frame_.high - 6.4, "4 in", 3.2, false, Anchor::start);
        bar(2.0, k_head + 2.0, k_thick, 100.0 * y, "upright-mm");
        upright_text(6.2, k_head + 2.0 + 100.0 * y, "100 mm");
        bar(8.6, k_head + 2.0, k_thick, 4.0 * k_inch * y, "upright-in");
        upright_text(12.8, k_head + 2.0 + 4.0 * k_inch * y, "4 in");
    }

    void write_foot(int page, int all, const std::string& job_name) {
        std::string words = " · template " + std::to_string(page) + " of " + std::to_string(all);
        for (const std::string& more : {options_.date, options_.program})
            if (!more.empty())
                words += " · " + more;
        if (!options_.code.empty())
            words += " · job " + options_.code;
        const std::string name = shortened(job_name, frame_.wide / k_small - em_count(words));
        text(0, frame_.high - 0.8, name + words, k_small, false, Anchor::start);
        write_stretch();
    }

    /// Beside the level bars, where they end and their words.
    void write_stretch() {
        const PrinterFactors& factors = options_.factors;
        if (factors.x == 1.0 && factors.y == 1.0)
            return;
        const std::string begin = "Stretched for ";
        const double room = frame_.wide - k_left - 4.0 * k_inch * factors.x - k_number;
        const std::string printer =
            factors.printer.empty() ? "one printer"
                                    : shortened(factors.printer, room / k_small - em_count(begin));
        const std::string by = base::write_short(factors.x, 4) + " across, " +
                               base::write_short(factors.y, 4) + " along";
        text(frame_.wide, frame_.high - 11.4, begin + printer, k_small, false, Anchor::end);
        text(frame_.wide, frame_.high - 6.4, by, k_small, false, Anchor::end);
    }

    void write_path(const FullPath& path) {
        if (path.points.empty())
            return;
        std::vector<Spot> spots;
        Spot least = laid(path.points.front());
        Spot most = least;
        for (const Spot& at : path.points) {
            const Spot spot = laid(at);
            least = {std::min(least.x, spot.x), std::min(least.y, spot.y)};
            most = {std::max(most.x, spot.x), std::max(most.y, spot.y)};
            spots.push_back(spot);
        }
        if (!is_seen(least, most))
            return;
        out_ += std::string("<path class=\"") + path.name + "\" d=\"";
        for (std::size_t i = 0; i < spots.size(); ++i) {
            const Spot at = on_page(spots[i]);
            out_ += (i == 0 ? 'M' : 'L') + number(at.x) + ' ' + number(at.y);
        }
        if (path.closed)
            out_ += 'Z';
        out_ += pen_look(path.pen);
    }

    /// An ellipse where the two factors differ: on that printer's paper it is round.
    void write_circle(const FullCircle& circle) {
        const Spot centre = laid(circle.centre);
        const double r = circle.radius;
        if (!is_seen({centre.x - r, centre.y - r}, {centre.x + r, centre.y + r}))
            return;
        const Spot at = on_page(centre);
        out_ += std::string("<ellipse class=\"") + circle.name + "\" cx=\"" + number(at.x) +
                "\" cy=\"" + number(at.y) + "\" rx=\"" + number(r * options_.factors.x) +
                "\" ry=\"" + number(r * options_.factors.y) + pen_look(FullPen::edge);
    }

    void write_text(const FullText& label) {
        const Spot at = laid(label.at);
        if (!is_seen(at, at))
            return;
        const Spot place = on_page(at);
        const double x = place.x + label.beside.x;
        const double y = place.y - label.beside.y;
        if (label.upright)
            upright_text(x, y, base::escape_markup(label.text));
        else
            text(x, y, label.text, label.size, label.bold, label.anchor);
    }

    /// A cross in a circle on both pages of a seam, at the same place of the picture.
    void mark(Spot at, const std::string& name) {
        if (!is_seen(at, at))
            return;
        const Spot place = on_page(at);
        const std::string x = number(place.x);
        const std::string y = number(place.y);
        out_ += "<path class=\"register\" d=\"M" + number(place.x - 4) + ' ' + y + "H" +
                number(place.x + 4) + "M" + x + ' ' + number(place.y - 4) + "V" +
                number(place.y + 4) + pen_look(FullPen::thin);
        out_ += "<circle cx=\"" + x + "\" cy=\"" + y + "\" r=\"2" + pen_look(FullPen::thin);
        const bool at_right = place.x > frame_.wide - 22.0;
        text(place.x + (at_right ? -2.6 : 2.6),
             place.y - 2.2,
             name,
             3.2,
             false,
             at_right ? Anchor::end : Anchor::start);
    }
    void write_marks(int page) {
        constexpr std::array k_shares = {0.25, 0.75};
        const int first = page - (row_ * tiling_.columns + column_);
        const auto page_at = [&](int column, int row) {
            return std::to_string(first + row * tiling_.columns + column);
        };
        for (int row = 0; row < tiling_.rows; ++row)
            for (int seam = 1; seam < tiling_.columns; ++seam)
                for (std::size_t i = 0; i < k_shares.size(); ++i)
                    mark({seam * tiling_.step_x + k_overlap / 2.0,
                          (tiling_.rows - 1 - row) * tiling_.step_y + tiling_.area_y * k_shares[i]},
                         page_at(seam - 1, row) + "+" + page_at(seam, row) + " " +
                             std::to_string(i + 1));
        for (int column = 0; column < tiling_.columns; ++column)
            for (int seam = 1; seam < tiling_.rows; ++seam)
                for (std::size_t i = 0; i < k_shares.size(); ++i)
                    mark({column * tiling_.step_x + tiling_.area_x * k_shares[i],
                          seam * tiling_.step_y + k_overlap / 2.0},
                         page_at(column, tiling_.rows - 1 - seam) + "+" +
                             page_at(column, tiling_.rows - seam) + " " + std::to_string(i + 1));
    }

    void write_area(int page) {
        const std::string clip = "area-" + std::to_string(page);
        const std::string box = "x=\"" + number(k_left) + "\" y=\"" + number(k_head) +
                                "\" width=\"" + number(frame_.area_wide()) + "\" height=\"" +
                                number(frame_.area_high()) + '"';
        out_ += "<clipPath id=\"" + clip + "\"><rect " + box + "/></clipPath>";
        if (tiling_.pages() > 1)
            out_ += "<rect " + box + " class=\"trim" + pen_look(FullPen::dashed);
        out_ += "<g clip-path=\"url(#" + clip + ")\">";
        for (const FullPath& path : picture_.paths)
            write_path(path);
        for (const FullCircle& circle : picture_.circles)
            write_circle(circle);
        for (const FullText& label : picture_.texts)
            write_text(label);
        write_marks(page);
        out_ += "</g>";
    }

    const FullPicture& picture_;
    const TemplateOptions& options_;
    const Tiling& tiling_;
    Frame frame_;
    int column_ = 0;
    int row_ = 0;
    std::string out_;
};

} // namespace

Tiling tiling_of(const FullPicture& picture, const TemplateOptions& options) {
    const Tiling as_is = tiled(picture.width, picture.height, options, false);
    const Tiling turned = tiled(picture.width, picture.height, options, true);
    return turned.pages() < as_is.pages() ? turned : as_is;
}

void write_pages(Html& html,
                 const FullPicture& picture,
                 const TemplateOptions& options,
                 const std::string& job_name,
                 int first,
                 int all) {
    const Tiling tiling = tiling_of(picture, options);
    Page page(picture, options, tiling);
    for (int row = 0; row < tiling.rows; ++row)
        for (int column = 0; column < tiling.columns; ++column)
            html.open("section", "class=\"tile\"")
                .markup(page.write(column, row, first, all, job_name))
                .close();
}

} // namespace treadle::sheet
