// The pictures: drawing_flat.cpp, drawing_finished.cpp, drawing_alone.cpp, profile.cpp and svg.cpp.

#include "base/text.h"
#include "sheet/drawing.h"
#include "sheet/drawing_near.h"
#include "sheet/sample.h"

#include <algorithm>
#include <cmath>
#include <set>

using namespace treadle;
using quantity::to_millimetres;
using sheet_test::Sample;

namespace {

bool inside(const sheet::Drawing& drawing, sheet::Point p) {
    return p.x >= drawing.low.x && p.x <= drawing.high.x && p.y >= drawing.low.y &&
           p.y <= drawing.high.y;
}

void check_bounds(const sheet::Drawing& drawing) {
    CHECK(drawing.low.x < drawing.high.x);
    CHECK(drawing.low.y < drawing.high.y);
    for (const sheet::Path& path : drawing.paths)
        for (const sheet::Point point : path.points)
            CHECK(inside(drawing, point));
    for (const sheet::Circle& circle : drawing.circles) {
        CHECK(inside(drawing, {circle.centre.x - circle.radius, circle.centre.y - circle.radius}));
        CHECK(inside(drawing, {circle.centre.x + circle.radius, circle.centre.y + circle.radius}));
    }
    for (const sheet::Dimension& dimension : drawing.dimensions) {
        CHECK(inside(drawing, dimension.from));
        CHECK(inside(drawing, dimension.to));
        for (const sheet::Tick& tick : dimension.ticks)
            CHECK(inside(drawing, tick.from));
    }
    for (const sheet::Label& label : drawing.labels)
        CHECK(inside(drawing, label.at));
}

struct TextBox {
    double left, right, low, high;
    std::string text;
};

/// Boxes of all labels in points of a picture of the given size; a glyph counts 0.6 em.
std::vector<TextBox> text_boxes(const sheet::Drawing& drawing, double width_mm, double height_mm) {
    const double wide = to_millimetres(drawing.high.x - drawing.low.x);
    const double high = to_millimetres(drawing.high.y - drawing.low.y);
    const double scale = std::min(width_mm / wide, height_mm / high) * 72.0 / 25.4;
    std::vector<TextBox> boxes;
    for (const sheet::Label& label : drawing.labels) {
        const double width = 0.6 * label.points * static_cast<double>(label.text.size());
        const double x = to_millimetres(label.at.x) * scale;
        const double y = to_millimetres(label.at.y) * scale;
        const double left = label.anchor == sheet::Anchor::start ? x
                            : label.anchor == sheet::Anchor::end ? x - width
                                                                 : x - width / 2.0;
        boxes.push_back({left, left + width, y - 4.0, y + 4.0, label.text});
    }
    return boxes;
}

void check_no_overlap(const std::vector<TextBox>& boxes) {
    for (std::size_t i = 0; i < boxes.size(); ++i)
        for (std::size_t k = i + 1; k < boxes.size(); ++k) {
            CAPTURE(boxes[i].text);
            CAPTURE(boxes[k].text);
            const bool apart = boxes[i].right <= boxes[k].left || boxes[k].right <= boxes[i].left ||
                               boxes[i].high <= boxes[k].low || boxes[k].high <= boxes[i].low;
            CHECK(apart);
        }
}

std::set<std::string> texts(const sheet::Drawing& drawing) {
    std::set<std::string> all;
    for (const sheet::Label& label : drawing.labels)
        all.insert(label.text);
    return all;
}

} // namespace

TEST_CASE("a drawing's bounds contain everything drawn") {
    const Sample sample;
    for (const auto& part : sample.plan.parts) {
        CAPTURE(part->part->mark);
        check_bounds(sheet::draw_flat(*part, sample.job.style));
        check_bounds(sheet::draw_finished(*part, sample.job.style));
        check_bounds(sheet::draw_small(*part));
    }
}

TEST_CASE("text never lies on text, in inch and in metric") {
    Sample sample;
    for (const PrintStyle style : {PrintStyle{UnitSystem::inch, 16},
                                   PrintStyle{UnitSystem::inch, 64},
                                   PrintStyle{UnitSystem::metric, 16}})
        for (const auto& part : sample.plan.parts) {
            CAPTURE(part->part->mark);
            check_no_overlap(text_boxes(
                sheet::draw_flat(*part, style), sheet::k_flat_width_mm, sheet::k_flat_height_mm));
            check_no_overlap(text_boxes(sheet::draw_finished(*part, style),
                                        sheet::k_finished_width_mm,
                                        sheet::k_finished_height_mm));
        }
}

TEST_CASE("text does not collide however many holes there are") {
    Sample sample;
    sample.change(4, [](job::Part& part) {
        part.length = inches(200.0);
        std::get<job::Punch>(part.operations[0]).at.columns = 98;
    });
    const sheet::Drawing drawing = sheet::draw_flat(*sample.plan.parts[4], sample.job.style);
    check_no_overlap(text_boxes(drawing, sheet::k_flat_width_mm, sheet::k_flat_height_mm));
    CHECK(texts(drawing).count("200") == 1); // the ends are never dropped
    CHECK(texts(drawing).count("0") == 1);
}

TEST_CASE("running dimensions are the plan's marks") {
    const Sample sample;
    const plan::PartPlan& plate = *sample.plan.parts[0];
    REQUIRE(plate.marks.size() >= 5);
    const auto shown = texts(sheet::draw_flat(plate, sample.job.style));
    for (const plan::Mark& mark : plate.marks) {
        if (mark.kind != plan::Mark::Kind::hole)
            continue;
        CHECK(shown.count(quantity::print_bare(mark.x, sample.job.style)) == 1);
        CHECK(shown.count(quantity::print_bare(mark.y, sample.job.style)) == 1);
    }
    // Corner notch 1 x 3/4 at the far end of an 8 x 10 plate: its own edges.
    CHECK(shown.count("9") == 1);
    CHECK(shown.count("7-1/4") == 1);
}

TEST_CASE("a blank in thirty-seconds is not drawn as sixteenths") {
    Sample sample;
    sample.change(0, [](job::Part& part) { part.length = inches(9.0 + 31.0 / 32.0); });
    CHECK(texts(sheet::draw_flat(*sample.plan.parts[0], sample.job.style)).count("9-31/32") == 1);
}

TEST_CASE("stock sizes are as measured, not the nearest fraction") {
    const Sample sample; // pipe 1.660 with a wall of 0.140
    const auto shown = texts(sheet::draw_finished(*sample.plan.parts[3], sample.job.style));
    CHECK(shown.count("1.660") == 1);
    CHECK(shown.count("0.140 thick") == 1);
}

TEST_CASE("holes keep their shape, and turn") {
    const Sample sample;
    const sheet::Drawing drawing = sheet::draw_flat(*sample.plan.parts[0], sample.job.style);
    int round_holes = 0;
    for (const sheet::Circle& circle : drawing.circles)
        if (circle.operation == 1 &&
            std::abs(to_millimetres(circle.radius) - 0.8125 * 25.4 / 2.0) < 1e-9)
            ++round_holes;
    CHECK(round_holes == 4);
    bool found = false;
    for (const sheet::Path& path : drawing.paths) { // obround 1/2 x 7/8, turned across
        if (path.operation != 2 || !path.closed)
            continue;
        found = true;
        const auto points = sheet::straightened(path, millimetres(1e-6));
        const auto [low, high] = std::minmax_element(
            points.begin(), points.end(), [](sheet::Point a, sheet::Point b) { return a.y < b.y; });
        CHECK(to_millimetres(high->y - low->y) == doctest::Approx(0.875 * 25.4));
    }
    CHECK(found);
}

TEST_CASE("a bent profile has the outside lengths asked for") {
    // Z of legs 2-1/2, 3, 2-1/2 with 90 degrees up, then down: overall 5 - t wide and 3 high.
    // Geometry.
    const Sample sample;
    const sheet::Drawing drawing = sheet::draw_small(*sample.plan.parts[1]);
    REQUIRE(drawing.paths.size() == 1);
    const auto& points = drawing.paths[0].points;
    const auto [left, right] = std::minmax_element(
        points.begin(), points.end(), [](sheet::Point a, sheet::Point b) { return a.x < b.x; });
    const auto [low, high] = std::minmax_element(
        points.begin(), points.end(), [](sheet::Point a, sheet::Point b) { return a.y < b.y; });
    CHECK(quantity::to_inches(right->x - left->x) == doctest::Approx(2.5 + 2.5 - 0.125));
    CHECK(quantity::to_inches(high->y - low->y) == doctest::Approx(3.0));
}

TEST_CASE("a saddle is scooped by the run's circle") {
    // Pipe 1.66 on a run of 1.9: R - sqrt(R^2 - r^2) deep in the middle. Geometry.
    const Sample sample;
    const sheet::Drawing drawing = sheet::draw_flat(*sample.plan.parts[3], sample.job.style);
    const double scoop = 0.95 - std::sqrt(0.95 * 0.95 - 0.83 * 0.83);
    bool found = false;
    for (const sheet::Point point : sheet::straightened(drawing.paths.front(), millimetres(1e-6)))
        found = found || (std::abs(quantity::to_inches(point.x) - (20.0 - scoop)) < 1e-6 &&
                          std::abs(quantity::to_inches(point.y) - 0.83) < 1e-6);
    CHECK(found);
}

TEST_CASE("bend lines are drawn and labelled with angle and direction") {
    const Sample sample;
    const sheet::Drawing drawing = sheet::draw_flat(*sample.plan.parts[1], sample.job.style);
    const auto lines =
        std::count_if(drawing.paths.begin(), drawing.paths.end(), [](const sheet::Path& p) {
            return p.pen == sheet::Pen::bend_line;
        });
    CHECK(lines == 2);
    const auto shown = texts(drawing);
    CHECK(shown.count(quantity::print(degrees(90.0), sample.job.style) + " up") == 1);
    CHECK(shown.count(quantity::print(degrees(90.0), sample.job.style) + " down") == 1);
}

TEST_CASE("a part that cannot be planned gets its reason in place of a picture") {
    Sample sample;
    sample.change(1, [](job::Part& part) { part.grade = "unheard of"; });
    REQUIRE(sample.plan.parts[1]->problem.has_value());
    const sheet::Drawing drawing = sheet::draw_finished(*sample.plan.parts[1], sample.job.style);
    REQUIRE(drawing.labels.size() == 1);
    CHECK(drawing.labels[0].text.find(sample.plan.parts[1]->problem->reason) != std::string::npos);
}

TEST_CASE("SVG is well formed, fits its box and keeps lines and text readable") {
    Sample sample;
    sample.change(0, [](job::Part& part) { part.mark = "<script>\"&'"; });
    for (const auto& part : sample.plan.parts) {
        const std::string svg =
            sheet::to_svg(sheet::draw_flat(*part, sample.job.style), 120.0, 70.0);
        CHECK(sheet_test::fault_in_markup(svg) == "");
        CHECK(svg.find("<script") == std::string::npos);
        CHECK(svg.find("style=") == std::string::npos);
        const auto number_after = [&](const char* name) {
            const std::size_t at = svg.find(name) + std::string(name).size();
            const auto value = base::read_number(svg.substr(at, svg.find_first_of("m\"", at) - at));
            return value ? *value : -1.0;
        };
        CHECK(number_after(" width=\"") > 0.0);
        CHECK(number_after(" width=\"") <= 120.01);
        CHECK(number_after(" height=\"") <= 70.01);
        for (std::size_t at = svg.find("font-size=\""); at != std::string::npos;
             at = svg.find("font-size=\"", at + 1)) {
            const std::size_t begin = at + 11;
            const auto size = base::read_number(svg.substr(begin, svg.find('"', begin) - begin));
            REQUIRE(size.has_value());
            CHECK(*size >= 9.0);
        }
        for (std::size_t at = svg.find("stroke-width=\""); at != std::string::npos;
             at = svg.find("stroke-width=\"", at + 1)) {
            const std::size_t begin = at + 14;
            const auto width = base::read_number(svg.substr(begin, svg.find('"', begin) - begin));
            REQUIRE(width.has_value());
            CHECK(*width * 25.4 / 72.0 >= 0.25);
        }
    }
}

TEST_CASE("an operation by itself lies where the flat view has it") {
    const Sample sample;
    const plan::PartPlan& plan = *sample.plan.parts[2]; // holes in both legs of an angle
    const sheet::Drawing flat = sheet::draw_flat(plan, sample.job.style);
    REQUIRE(flat.faces.size() == 2);
    for (const int operation : {1, 2}) {
        const sheet::Drawing alone = sheet::draw_alone(plan, operation, flat.faces);
        std::size_t found = 0;
        for (const sheet::Circle& circle : alone.circles)
            found += static_cast<std::size_t>(
                std::count_if(flat.circles.begin(), flat.circles.end(), [&](const auto& there) {
                    return there.operation == operation && there.centre.x == circle.centre.x &&
                           there.centre.y == circle.centre.y;
                }));
        CHECK(alone.circles.size() == (operation == 1 ? 2 : 1));
        CHECK(found == alone.circles.size());
    }
}

TEST_CASE("looked at closely, metal stays where it is and text takes less of it") {
    const Sample sample;
    for (const auto& plan : sample.plan.parts) {
        const sheet::Drawing whole = sheet::draw_flat(*plan, sample.job.style);
        const sheet::Drawing close =
            sheet::draw_flat_near(*plan, sample.job.style, sheet::k_flat_box, 0.05);
        REQUIRE(whole.faces.size() == close.faces.size());
        for (std::size_t i = 0; i < whole.faces.size(); ++i)
            CHECK(whole.faces[i].datum.y == close.faces[i].datum.y);
        CHECK(close.labels.size() >= whole.labels.size());
        CHECK(close.low.x > whole.low.x);
        CHECK(close.high.y < whole.high.y);
        check_bounds(close);
        check_bounds(
            sheet::draw_finished_near(*plan, sample.job.style, sheet::k_finished_box, 0.05));
    }
}

TEST_CASE("in a narrow place the note about figures takes lines, and the metal stays large") {
    Sample sample;
    sample.change(4, [](job::Part& part) { // many holes along a channel
        auto& at = std::get<job::Punch>(part.operations[0]).at;
        at.columns = 30;
        at.column_pitch = inches(0.55);
    });
    const sheet::PictureBox narrow{60.0, 60.0};
    const sheet::Drawing drawing =
        sheet::draw_flat(*sample.plan.parts[4], sample.job.style, narrow);
    int lines = 0;
    for (const sheet::Label& label : drawing.labels)
        lines +=
            label.text.find("list.") != std::string::npos || label.text.rfind("Figures", 0) == 0
                ? 1
                : 0;
    CHECK(lines == 2);
    check_no_overlap(text_boxes(drawing, narrow.width_mm, narrow.height_mm));
    // Metal 20 long; at least half of the picture's width is metal.
    CHECK(drawing.high.x - drawing.low.x < inches(40.0));
}
