// What a place can do as a picture: limits_chart.cpp, drawing_limits.cpp. Shares worked by hand
// from the capacities that are made up here.

#include "sheet/drawing_limits.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace treadle;
using quantity::to_millimetres;
using sheet::Fill;
using sheet::LimitsChart;

namespace {

constexpr PrintStyle k_inch{UnitSystem::inch, 16};
const PrintStyle k_metric{UnitSystem::metric, 16};
constexpr sheet::PictureBox k_box{150.0, 90.0};

plan::CapacityPoint point(double x, double fits, double up_to, double least = 0.0) {
    plan::CapacityPoint made;
    made.x = inches(x);
    made.thickness.fits = inches(fits);
    made.thickness.fits_up_to = inches(up_to);
    made.thickness.least = inches(least);
    return made;
}

plan::JobPoint asked(double x, double thickness) {
    plan::JobPoint made;
    made.x = inches(x);
    made.thickness = inches(thickness);
    return made;
}

/// Up to 2 in any metal to 1/4 fits and some to 1/2; from there to 4 in only some to 1/4.
plan::Capacity punch() {
    plan::Capacity made;
    made.points = {point(1, 0.5, 0.75), point(2, 0.25, 0.5), point(4, 0, 0.25)};
    return made;
}

struct Extent {
    double left = std::numeric_limits<double>::infinity();
    double low = left;
    double right = -left;
    double high = -left;
    void add(const sheet::Point& at) {
        left = std::min(left, to_millimetres(at.x));
        right = std::max(right, to_millimetres(at.x));
        low = std::min(low, to_millimetres(at.y));
        high = std::max(high, to_millimetres(at.y));
    }
};

Extent extent_of(const sheet::Path& path) {
    Extent extent;
    for (const sheet::Point& at : path.points)
        extent.add(at);
    return extent;
}

std::vector<sheet::Path> filled(const sheet::Drawing& drawing, Fill fill) {
    std::vector<sheet::Path> found;
    for (const sheet::Path& path : drawing.paths)
        if (path.fill == fill)
            found.push_back(path);
    return found;
}

/// Against shares of the axes.
void check_box(const sheet::LimitsDrawing& made,
               const sheet::Path& path,
               double from,
               double to,
               double low,
               double high) {
    const Extent extent = extent_of(path);
    const double x = to_millimetres(made.low.x);
    const double y = to_millimetres(made.low.y);
    const double wide = to_millimetres(made.high.x) - x;
    const double tall = to_millimetres(made.high.y) - y;
    CHECK(extent.left == doctest::Approx(x + wide * from));
    CHECK(extent.right == doctest::Approx(x + wide * to));
    CHECK(extent.low == doctest::Approx(y + tall * low));
    CHECK(extent.high == doctest::Approx(y + tall * high));
}

std::vector<std::string> words_of(const std::vector<sheet::LimitTick>& ticks) {
    std::vector<std::string> words;
    for (const sheet::LimitTick& tick : ticks)
        words.push_back(tick.words);
    return words;
}

/// Labels that run into each other or out of the picture; a glyph counted 0.6 em.
int labels_in_trouble(const sheet::Drawing& drawing) {
    constexpr double k_mm_per_point = 25.4 / 72.0;
    const auto box_of = [](const sheet::Label& label) {
        const double wide =
            0.6 * label.points * k_mm_per_point * static_cast<double>(label.text.size());
        const double half = 0.5 * label.points * k_mm_per_point;
        const double x = to_millimetres(label.at.x);
        const double y = to_millimetres(label.at.y);
        const double left = label.anchor == sheet::Anchor::start ? x
                            : label.anchor == sheet::Anchor::end ? x - wide
                                                                 : x - wide / 2.0;
        return Extent{left, y - half, left + wide, y + half};
    };
    int trouble = 0;
    for (std::size_t i = 0; i < drawing.labels.size(); ++i) {
        const Extent a = box_of(drawing.labels[i]);
        if (a.left < to_millimetres(drawing.low.x) || a.right > to_millimetres(drawing.high.x) ||
            a.low < to_millimetres(drawing.low.y) || a.high > to_millimetres(drawing.high.y))
            ++trouble;
        for (std::size_t j = 0; j < i; ++j) {
            const Extent b = box_of(drawing.labels[j]);
            if (a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high)
                ++trouble;
        }
    }
    return trouble;
}

} // namespace

TEST_CASE("between two points the smaller limit holds, and a far point does not flatten the rest") {
    plan::Capacity capacity = punch();
    capacity.job = {asked(3, 0.3), asked(100, 100)};
    const LimitsChart chart = sheet::limits_chart(capacity, k_inch);
    // A point stretches an axis to one and a half of 4 in and 1/2 in; a tenth is head room.
    const double wide = 4 * 1.5 * 1.1;
    const double high = 0.5 * 1.5 * 1.1;
    REQUIRE(chart.steps.size() == 2);
    CHECK(chart.steps[0].from == doctest::Approx(1 / wide));
    CHECK(chart.steps[0].to == doctest::Approx(2 / wide));
    CHECK(chart.steps[0].fits == doctest::Approx(0.25 / high));
    CHECK(chart.steps[0].fits_up_to == doctest::Approx(0.5 / high));
    CHECK(chart.steps[1].to == doctest::Approx(4 / wide));
    CHECK(chart.steps[1].fits == 0.0);
    CHECK(chart.steps[1].fits_up_to == doctest::Approx(0.25 / high));
    REQUIRE(chart.job.size() == 2);
    CHECK(chart.job[0].along == doctest::Approx(3 / wide));
    CHECK(chart.job[0].up == doctest::Approx(0.3 / high));
    CHECK(chart.job[1].along == 1.0);
    CHECK(chart.job[1].up == 1.0);
    CHECK(chart.description == "Greatest thickness, in over hole diameter");
}

TEST_CASE("the greater least thickness holds, and points with one limit are one stretch") {
    plan::Capacity capacity;
    capacity.points = {point(1, 1, 1, 0.25), point(2, 1, 1, 0.5), point(3, 1, 1, 0.5)};
    const LimitsChart chart = sheet::limits_chart(capacity, k_inch);
    REQUIRE(chart.steps.size() == 1);
    CHECK(chart.steps[0].least == doctest::Approx(0.5 / 1.1));
    CHECK(chart.steps[0].from == doctest::Approx(1 / 3.3));
    CHECK(chart.steps[0].to == doctest::Approx(3 / 3.3));
    const sheet::LimitsDrawing made = sheet::draw_limits(chart, k_box);
    const auto steel = filled(made.drawing, Fill::steel);
    REQUIRE(steel.size() == 1);
    check_box(made, steel[0], 1 / 3.3, 3 / 3.3, 0.5 / 1.1, 1 / 1.1);
    CHECK(filled(made.drawing, Fill::hatched).empty());
}

TEST_CASE("axes are divided in steps of the shop's own scale") {
    const LimitsChart inch = sheet::limits_chart(punch(), k_inch);
    // 4.4 in and 0.55 in: at most seven steps, each twice the one before from 1/16 on.
    CHECK(words_of(inch.x_ticks) == std::vector<std::string>{"0", "1", "2", "3", "4"});
    CHECK(words_of(inch.y_ticks) == std::vector<std::string>{"0", "1/8", "1/4", "3/8", "1/2"});
    CHECK(inch.x_ticks[2].at == doctest::Approx(2 / 4.4));
    CHECK(inch.x_title == "hole diameter, in");
    const LimitsChart metric = sheet::limits_chart(punch(), k_metric);
    // 111.8 mm and 14.0 mm: steps of 1, 2, 5.
    CHECK(words_of(metric.x_ticks) == std::vector<std::string>{"0", "20", "40", "60", "80", "100"});
    CHECK(words_of(metric.y_ticks) ==
          std::vector<std::string>{"0", "2", "4", "6", "8", "10", "12"});
    CHECK(metric.y_title == "thickness, mm");
}

TEST_CASE("any metal is steel from the axis up, and what needs a certificate is hatched over it") {
    const sheet::LimitsDrawing made =
        sheet::draw_limits(sheet::limits_chart(punch(), k_inch), k_box);
    const auto steel = filled(made.drawing, Fill::steel);
    REQUIRE(steel.size() == 1);
    check_box(made, steel[0], 1 / 4.4, 2 / 4.4, 0.0, 0.25 / 0.55);
    const auto hatched = filled(made.drawing, Fill::hatched);
    REQUIRE(hatched.size() == 2);
    check_box(made, hatched[0], 1 / 4.4, 2 / 4.4, 0.25 / 0.55, 0.5 / 0.55);
    check_box(made, hatched[1], 2 / 4.4, 4 / 4.4, 0.0, 0.25 / 0.55);
    for (const sheet::Path& path : hatched) {
        const Extent shape = extent_of(path);
        Extent strokes;
        for (const sheet::Stroke& stroke : path.hatch) {
            strokes.add(stroke.from);
            strokes.add(stroke.to);
        }
        CHECK(path.hatch.size() > 5);
        CHECK(strokes.left == doctest::Approx(shape.left));
        CHECK(strokes.right == doctest::Approx(shape.right));
        CHECK(strokes.low == doctest::Approx(shape.low));
        CHECK(strokes.high == doctest::Approx(shape.high));
    }
    const std::string svg = sheet::to_svg(made.drawing, k_box.width_mm, k_box.height_mm);
    CHECK(svg.find("style=") == std::string::npos);
    CHECK(svg.find("id=") == std::string::npos);
    CHECK(svg.find(">hole diameter, in</text>") != std::string::npos);
}

TEST_CASE("the line along the limit has no corner twice and stands on the axis at both ends") {
    plan::Capacity capacity;
    // The second stretch differs from the first in what a certificate allows, not in what fits.
    capacity.points = {
        point(1, 0.5, 1), point(2, 0.5, 1), point(3, 0.5, 0.75), point(4, 0.25, 0.75)};
    const sheet::LimitsDrawing made =
        sheet::draw_limits(sheet::limits_chart(capacity, k_inch), k_box);
    int lines = 0;
    for (const sheet::Path& path : made.drawing.paths) {
        if (path.fill != Fill::none)
            continue;
        ++lines;
        CHECK(path.points.front().y == made.low.y);
        CHECK(path.points.back().y == made.low.y);
        for (std::size_t i = 1; i < path.points.size(); ++i)
            CHECK((path.points[i].x == path.points[i - 1].x) !=
                  (path.points[i].y == path.points[i - 1].y));
    }
    CHECK(lines == 2);
}

TEST_CASE("the picture has the size of its box, its labels apart and inside, figures or not") {
    for (const PrintStyle style : {k_inch, k_metric})
        for (const sheet::PictureBox box :
             {k_box, sheet::PictureBox{60.0, 30.0}, sheet::PictureBox{40.0, 25.0}}) {
            const sheet::LimitsDrawing made =
                sheet::draw_limits(sheet::limits_chart(punch(), style), box);
            const sheet::Drawing& drawing = made.drawing;
            CHECK(to_millimetres(drawing.high.x - drawing.low.x) == doctest::Approx(box.width_mm));
            CHECK(to_millimetres(drawing.high.y - drawing.low.y) == doctest::Approx(box.height_mm));
            CHECK(labels_in_trouble(drawing) == 0);
            CHECK(made.low.x < made.high.x);
            CHECK(made.low.y < made.high.y);
        }
}

TEST_CASE("bars stand in columns by name, and one that is not known has its name alone") {
    plan::Capacity capacity;
    capacity.kind = plan::CapacityKind::bar;
    capacity.bars.resize(2);
    capacity.bars[0].size.fits = capacity.bars[0].size.fits_up_to = inches(1.0);
    capacity.bars[1].shape = section::Shape::square;
    capacity.bars[1].missing = "machine.stations[0].force";
    capacity.job = {asked(0, 0.5)};
    capacity.job[0].shape = section::Shape::square;
    const LimitsChart chart = sheet::limits_chart(capacity, k_inch);
    CHECK(words_of(chart.x_ticks) == std::vector<std::string>{"Round", "Square"});
    CHECK(chart.x_title == "");
    CHECK(chart.job[0].along == doctest::Approx(0.75)); // the middle of the second column
    const sheet::LimitsDrawing made = sheet::draw_limits(chart, k_box);
    const auto steel = filled(made.drawing, Fill::steel);
    REQUIRE(steel.size() == 1);
    check_box(made, steel[0], 0.125, 0.375, 0.0, 1 / 1.1);
    CHECK(labels_in_trouble(made.drawing) == 0);
}

TEST_CASE("where nothing fits there is an inch of empty axes") {
    const LimitsChart chart = sheet::limits_chart({}, k_inch);
    CHECK(chart.steps.empty());
    const sheet::LimitsDrawing made = sheet::draw_limits(chart, k_box);
    CHECK(made.drawing.paths.empty());
    CHECK(made.drawing.dimensions.size() == 2);
    CHECK(chart.x_ticks.back().at <= 1.0);
    CHECK(std::isfinite(to_millimetres(made.high.x)));
}

TEST_CASE("the legend's samples have the fills of the picture") {
    const sheet::PictureBox box{8.0, 6.0};
    const sheet::Drawing any = sheet::draw_limits_sample(true, box);
    CHECK(filled(any, Fill::steel).size() == 1);
    CHECK(filled(any, Fill::hatched).empty());
    const sheet::Drawing some = sheet::draw_limits_sample(false, box);
    CHECK(filled(some, Fill::steel).empty());
    REQUIRE(filled(some, Fill::hatched).size() == 1);
    CHECK(filled(some, Fill::hatched)[0].hatch.size() > 1);
}
