// One drawing on the canvas and as SVG: the same strokes at the same places, of parts, bars and
// limits. picture.cpp, svg.cpp.

#include "archive/archive.h"
#include "base/text.h"
#include "edit/session.h"
#include "plan/capacity.h"
#include "plan/stock_plan.h"
#include "sheet/drawing.h"
#include "sheet/drawing_limits.h"
#include "sheet/stock_sheet.h"

#include "assets/embedded.h"
#include "ui/views/picture.h"
#include "ui/views/reading.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <string>
#include <vector>

using namespace treadle;
using ui::PointMm;

namespace {

constexpr double k_points_per_mm = 72.0 / 25.4;
constexpr double k_width_mm = 122.0;
constexpr double k_height_mm = 62.0;
/// SVG is written with two decimals of a point; chords may be a little inside their arc.
constexpr double k_tolerance = 0.03;

/// A way of an SVG path: straight, or an arc of this radius.
struct Way {
    PointMm from;
    PointMm to;
    double radius = 0;
};

class PathReader {
public:
    explicit PathReader(const std::string& text) : at_(text.c_str()) {}

    std::vector<std::vector<Way>> read() {
        std::vector<std::vector<Way>> runs;
        PointMm pen;
        PointMm first;
        while (*at_ != 0) {
            const char what = *at_++;
            if (what == 'M') {
                pen = first = point();
                runs.emplace_back();
            } else if (what == 'L') {
                const PointMm to = point();
                runs.back().push_back({pen, to, 0});
                pen = to;
            } else if (what == 'A') {
                const double radius = number();
                for (int i = 0; i < 4; ++i)
                    number();
                const PointMm to = point();
                runs.back().push_back({pen, to, radius});
                pen = to;
            } else if (what == 'Z') {
                if (std::hypot(first.x - pen.x, first.y - pen.y) > 1e-9)
                    runs.back().push_back({pen, first, 0});
            }
        }
        return runs;
    }

private:
    double number() {
        char* end = nullptr;
        const double value = std::strtod(at_, &end);
        at_ = end;
        return value;
    }
    PointMm point() {
        const double x = number();
        return {x, number()};
    }
    const char* at_;
};

std::vector<std::vector<Way>> strokes_of(const std::string& svg) {
    std::vector<std::vector<Way>> all;
    const std::string begin = "<path d=\"";
    for (std::size_t at = svg.find(begin); at != std::string::npos; at = svg.find(begin, at + 1)) {
        const std::size_t from = at + begin.size();
        for (auto& run : PathReader(svg.substr(from, svg.find('"', from) - from)).read())
            all.push_back(std::move(run));
    }
    return all;
}

double far(PointMm a, PointMm b) { return std::hypot(a.x - b.x, a.y - b.y); }

/// Every corner of the one is on the other's ways, in order, and the ends agree.
void check_same(const std::vector<Way>& ways, std::vector<PointMm> line, bool closed) {
    if (closed)
        line.push_back(line.front());
    REQUIRE(line.size() >= 2);
    std::size_t i = 0;
    for (const Way& way : ways) {
        REQUIRE(i < line.size());
        CHECK(far(line[i], way.from) < k_tolerance);
        while (i + 1 < line.size() && far(line[i], line[i + 1]) < 1e-6)
            ++i; // a corner that is there twice
        double walked = 0;
        while (i + 1 < line.size() && far(line[i], way.to) > k_tolerance) {
            walked += far(line[i], line[i + 1]);
            ++i;
            if (way.radius == 0)
                break;
        }
        REQUIRE(i < line.size());
        CHECK(far(line[i], way.to) < k_tolerance);
        if (way.radius > 0) {
            // The chords are as long as the arc, short of what they cut off.
            const double half = std::asin(std::min(1.0, far(way.from, way.to) / 2 / way.radius));
            const double arc = 2 * half * way.radius;
            CHECK(walked == doctest::Approx(arc).epsilon(0.02));
        }
    }
    CHECK(i + 1 == line.size());
}

void check_drawing(const sheet::Drawing& drawing) {
    const views::Picture picture = views::to_picture(drawing, 0.01);
    ui::Surface surface;
    const double wide = picture.bounds.high.x - picture.bounds.low.x;
    const double high = picture.bounds.high.y - picture.bounds.low.y;
    const double scale = std::min(k_width_mm / wide, k_height_mm / high) * k_points_per_mm;
    surface.fit({0, 0, static_cast<float>(wide * scale), static_cast<float>(high * scale)},
                picture.bounds);
    const std::string svg = sheet::to_svg(drawing, k_width_mm, k_height_mm);
    const auto strokes = strokes_of(svg);
    REQUIRE(strokes.size() == picture.lines.size());
    for (std::size_t i = 0; i < strokes.size(); ++i) {
        std::vector<PointMm> line;
        for (const PointMm& point : picture.lines[i].points)
            line.push_back(surface.on_screen(point));
        CAPTURE(drawing.description);
        CAPTURE(i);
        check_same(strokes[i], line, picture.lines[i].closed);
    }
    std::size_t circles = 0;
    for (std::size_t at = svg.find("<circle"); at != std::string::npos;
         at = svg.find("<circle", at + 1))
        ++circles;
    CHECK(circles == picture.rounds.size() + picture.rings.size());
    std::size_t words = 0;
    for (std::size_t at = svg.find("<text"); at != std::string::npos;
         at = svg.find("<text", at + 1))
        ++words;
    CHECK(words == picture.words.size() + picture.rings.size());
}

struct Demo {
    archive::File file;
    job::Catalog catalog;
    plan::Plan plan;
};

std::vector<Demo> demos() {
    std::vector<Demo> all;
    for (const char* name : {"demo/demo-inch.json", "demo/demo-metric.json"}) {
        auto file = archive::read_file(*assets::embedded(name));
        REQUIRE(file.ok());
        auto catalog = archive::read_catalog();
        REQUIRE(catalog.ok());
        Demo demo{std::move(file).value(), std::move(catalog).value(), {}};
        demo.plan = plan::make_plan(demo.file.job, demo.file.shop, demo.catalog);
        all.push_back(std::move(demo));
    }
    return all;
}

} // namespace

TEST_CASE("canvas and paper show the same strokes of every part of the demo jobs") {
    int checked = 0;
    for (const Demo& demo : demos()) {
        const archive::File& read = demo.file;
        for (const auto& part : demo.plan.parts) {
            check_drawing(sheet::draw_flat(*part, read.job.style));
            check_drawing(sheet::draw_finished(*part, read.job.style));
            check_drawing(sheet::draw_small(*part));
            for (std::size_t i = 0; part->bends && i < part->bends->steps.size(); ++i)
                check_drawing(sheet::draw_bend_stage(*part, i));
            ++checked;
        }
    }
    CHECK(checked > 20);
}

TEST_CASE("canvas and paper show the same strokes of every bar of the demo jobs") {
    int checked = 0;
    for (const Demo& demo : demos()) {
        const job::Job& job = demo.file.job;
        const auto groups = plan::stock_groups(demo.plan, job, demo.file.shop, demo.catalog);
        const plan::StockPlan stock =
            plan::stock_plan(groups, plan::stock_answers(groups, plan::k_sheet_work));
        for (std::size_t i = 0; i < groups.size(); ++i) {
            const Length longest = sheet::longest_bar(groups[i], stock.groups[i]);
            for (const plan::BarPlan& bar : stock.groups[i].bars) {
                check_drawing(sheet::draw_bar(groups[i], bar, demo.plan, job.style, longest));
                check_drawing(sheet::draw_bar_row(
                    groups[i], bar, demo.plan, job.style, longest, {k_width_mm, 7.0}));
                ++checked;
            }
        }
    }
    CHECK(checked > 10);
}

TEST_CASE("canvas and paper show the same strokes of what every place of the demo shops can do") {
    int checked = 0;
    for (const Demo& demo : demos())
        for (const plan::Mounting& place : plan::capacity_places(demo.file.shop.machine)) {
            const auto capacity = plan::capacity(place,
                                                 demo.plan.parts.front()->part->grade,
                                                 demo.plan,
                                                 demo.file.job,
                                                 demo.file.shop,
                                                 demo.catalog);
            if (!capacity)
                continue;
            check_drawing(sheet::draw_limits(sheet::limits_chart(*capacity, demo.file.job.style),
                                             {k_width_mm, k_height_mm})
                              .drawing);
            ++checked;
        }
    CHECK(checked > 6);
}

TEST_CASE("a kept picture is made once for a room") {
    views::KeptPicture kept;
    std::vector<sheet::PictureBox> made;
    const auto make = [&](sheet::PictureBox box) {
        made.push_back(box);
        sheet::Drawing drawing;
        drawing.description = std::to_string(made.size());
        return drawing;
    };
    CHECK(kept.in({400, 30, 18}, make).description == "1");
    CHECK(kept.in({400, 30, 18}, make).description == "1");
    CHECK(kept.in({500, 30, 18}, make).description == "2");
    CHECK(kept.in({500, 30, 36}, make).description == "3");
    // Type of 18 px for 9 points: 400 px are 200 points, which are 72 to the inch.
    REQUIRE(made.size() == 3);
    CHECK(made[0].width_mm == doctest::Approx(200.0 / 72.0 * 25.4));
    CHECK(made[2].width_mm == doctest::Approx(125.0 / 72.0 * 25.4));
}
