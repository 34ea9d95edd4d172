// Templates measured in their own SVG; see also template_page.cpp, template_holes.cpp,
// template_wrap.cpp, template_gauge.cpp.
//
// The formula is that of a branch cut by a run's cylinder, written here once more; beside it two
// cylinders are cut with each other by halving, which knows no formula. Bars: 100 mm, 4 in.

#include "sheet/sample.h"
#include "sheet/template.h"

#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <numbers>
#include <sstream>

using namespace treadle;
using sheet_test::count_of;
using sheet_test::Sample;

namespace {

constexpr double k_pi = std::numbers::pi;
constexpr double k_close_mm = 0.1;

struct At {
    double x = 0.0;
    double y = 0.0;
};

/// The text between two others, from a place on; empty at the end of it.
std::string between(const std::string& text,
                    const std::string& begin,
                    const std::string& end,
                    std::size_t& from) {
    const std::size_t start = text.find(begin, from);
    if (start == std::string::npos)
        return "";
    const std::size_t first = start + begin.size();
    const std::size_t last = text.find(end, first);
    from = last;
    return text.substr(first, last - first);
}

std::vector<std::string> pages_of(const std::string& html) {
    std::vector<std::string> pages;
    std::size_t at = 0;
    for (std::string page;
         !(page = between(html, "<section class=\"tile\">", "</section>", at)).empty();)
        pages.push_back(page);
    return pages;
}

/// "M1 2L3 4Z" as points.
std::vector<At> points_of(std::string path) {
    for (char& letter : path)
        if (letter == 'M' || letter == 'L' || letter == 'Z')
            letter = ' ';
    std::istringstream in(path);
    std::vector<At> points;
    for (At at; in >> at.x >> at.y;)
        points.push_back(at);
    return points;
}
std::vector<At> path_named(const std::string& page, const std::string& name) {
    std::size_t at = 0;
    return points_of(between(page, "<path class=\"" + name + "\" d=\"", "\"", at));
}

double attribute(const std::string& tag, const std::string& name) {
    std::size_t at = 0;
    const std::string value = between(tag, " " + name + "=\"", "\"", at);
    REQUIRE_MESSAGE(!value.empty(), name << " of " << tag);
    return std::stod(value);
}

std::vector<At> holes_of(const std::string& page) {
    std::vector<At> holes;
    std::size_t at = 0;
    for (std::string tag; !(tag = between(page, "<ellipse class=\"hole\"", "/>", at)).empty();)
        holes.push_back({attribute(tag, "cx"), attribute(tag, "cy")});
    return holes;
}

struct Bench {
    Sample sample;
    std::vector<sheet::SaddleWrap> wraps;
    sheet::TemplateOptions options;

    [[nodiscard]] sheet::TemplateInputs in() const {
        return {sample.plan, sample.job, wraps, options};
    }
    [[nodiscard]] std::string html(const std::string& key) const {
        const auto made = sheet::templates_html(in(), {key});
        if (!made.ok())
            FAIL(key << ": " << made.refusal().field << ": " << made.refusal().reason);
        return *made;
    }
    [[nodiscard]] sheet::TemplateInfo info(const std::string& key) const {
        for (const sheet::TemplateInfo& one : sheet::template_list(in()))
            if (one.key == key)
                return one;
        FAIL("no template " << key);
        return {};
    }
};

struct Joint {
    double run;    // radius
    double branch; // radius
    double angle;  // degrees
    double offset;
};
constexpr Joint k_joints[] = {
    {30.15, 24.15, 90.0, 0.0}, // NPS 1-1/2 on 2, square
    {24.15, 24.15, 90.0, 0.0}, // equal
    {24.15, 24.15, 60.0, 0.0},
    {30.15, 24.15, 45.0, 0.0},
    {30.15, 13.335, 90.0, 10.16}, // offset
    {44.45, 16.7, 50.0, 20.0},
};

double formula(const Joint& j, double p) {
    const double b = j.angle * k_pi / 180.0;
    const double across = j.offset + j.branch * std::sin(p);
    return (std::sqrt(j.run * j.run - across * across) + j.branch * std::cos(p) * std::cos(b)) /
           std::sin(b);
}

/// Where a line on the branch's surface comes out of the run: halved, from inside to far outside.
double cut_by_halving(const Joint& j, double p) {
    const double b = j.angle * k_pi / 180.0;
    const auto is_inside = [&](double t) {
        // Run along x. Branch along (cos b, 0, sin b), shifted sideways by the offset.
        const double y = j.offset + j.branch * std::sin(p);
        const double z = t * std::sin(b) - j.branch * std::cos(p) * std::cos(b);
        return y * y + z * z < j.run * j.run;
    };
    double low = j.branch * std::cos(p) * std::cos(b) / std::sin(b); // z = 0: on the axis' plane
    double high = low + 10.0 * j.run;
    for (int i = 0; i < 100; ++i) {
        const double middle = (low + high) / 2.0;
        (is_inside(middle) ? low : high) = middle;
    }
    return low;
}

sheet::SaddleWrap wrap_of(const Joint& joint) {
    sheet::SaddleWrap wrap{"wrap/test", "TR1", {}};
    wrap.joint.branch_od = millimetres(2.0 * joint.branch);
    wrap.joint.run_od = millimetres(2.0 * joint.run);
    wrap.joint.angle = degrees(joint.angle);
    wrap.joint.offset = millimetres(joint.offset);
    return wrap;
}

} // namespace

TEST_CASE("a wrap's edge is the formula, and two cylinders cut by halving") {
    for (const Joint& joint : k_joints) {
        CAPTURE(joint.branch);
        CAPTURE(joint.angle);
        Bench bench;
        bench.options.paper = sheet::Paper::a4;
        bench.wraps = {wrap_of(joint)};
        const std::vector<std::string> pages = pages_of(bench.html("wrap/test"));
        REQUIRE(pages.size() == 1);
        std::vector<At> edge = path_named(pages[0], "saddle");
        REQUIRE(edge.size() > 300);
        double highest = edge.front().y; // down on the page
        double deepest = highest;
        for (const At& at : edge) {
            highest = std::fmin(highest, at.y);
            deepest = std::fmax(deepest, at.y);
        }
        // A wrap longer than the page is wide lies turned: then its length runs along y.
        const bool turned = std::abs(edge.back().x - edge.front().x) < 1.0;
        if (turned)
            for (At& at : edge)
                at = {-at.y, -at.x};
        highest = 1e9;
        for (const At& at : edge)
            highest = std::fmin(highest, at.y);
        const double round = std::abs(edge.back().x - edge.front().x);
        CHECK(round == doctest::Approx(k_pi * (2.0 * joint.branch + 0.1)).epsilon(0.0002));
        double least = 1e9;
        double least_cut = 1e9;
        for (int i = 0; i < 7200; ++i) {
            least = std::fmin(least, formula(joint, i * 2.0 * k_pi / 7200.0));
            least_cut = std::fmin(least_cut, cut_by_halving(joint, i * 2.0 * k_pi / 7200.0));
        }
        double worst = 0.0;
        double worst_cut = 0.0;
        for (const At& at : edge) {
            const double p = std::abs(at.x - edge.front().x) / round * 2.0 * k_pi;
            const double drawn = at.y - highest;
            worst = std::fmax(worst, std::abs(drawn - (formula(joint, p) - least)));
            worst_cut =
                std::fmax(worst_cut, std::abs(drawn - (cut_by_halving(joint, p) - least_cut)));
        }
        CHECK(worst <= k_close_mm);
        CHECK(worst_cut <= k_close_mm);
    }
}

TEST_CASE("a plate's holes lie where the part says, from the datum corner") {
    Bench bench;
    const std::string key = "holes/BP1";
    const std::vector<std::string> pages = pages_of(bench.html(key));
    REQUIRE(static_cast<int>(pages.size()) == bench.info(key).pages);
    // 10 x 8 in lies turned on Letter: along runs down the page's height, across to the right.
    const double in = 25.4;
    std::vector<At> outline;
    std::vector<At> holes;
    for (const std::string& page : pages) {
        const std::vector<At> here = path_named(page, "outline");
        REQUIRE(here.size() >= 4);
        At corner = here.front(); // the datum corner is the outline's first
        const At along = here[1];
        for (const At& hole : holes_of(page)) {
            const double dx = hole.x - corner.x;
            const double dy = hole.y - corner.y;
            const double ax = along.x - corner.x;
            const double ay = along.y - corner.y;
            const double length = std::hypot(ax, ay);
            holes.push_back({(dx * ax + dy * ay) / length, std::abs(dx * ay - dy * ax) / length});
        }
    }
    REQUIRE(holes.size() >= 4);
    for (const At& want : {At{1.5, 1.5}, At{6.5, 1.5}, At{1.5, 6.5}, At{6.5, 6.5}}) {
        double nearest = 1e9;
        for (const At& hole : holes)
            nearest = std::fmin(nearest, std::hypot(hole.x - want.x * in, hole.y - want.y * in));
        CHECK(nearest <= k_close_mm);
    }
}

TEST_CASE("pages of one picture register on their marks") {
    Bench bench;
    bench.sample.change(0, [](job::Part& part) {
        part.length = inches(24.0);
        part.section.width = inches(18.0);
        part.operations = {job::Cut{}, sheet_test::holes(1.5, 1.5, 8, 6, 3.0)};
    });
    const std::vector<std::string> pages = pages_of(bench.html("holes/BP1"));
    REQUIRE(pages.size() >= 4);
    // Holes by the marks: a page's shift against the first page that has the same mark.
    std::map<std::string, std::vector<std::pair<std::size_t, At>>> marks;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        std::size_t at = 0;
        for (std::string path;
             !(path = between(pages[i], "<path class=\"register\" d=\"M", "\"", at)).empty();) {
            const double y = std::stod(path.substr(path.find(' ') + 1));
            const double x = std::stod(path.substr(0, path.find(' '))) + 4.0;
            const std::string name = between(pages[i], "font-size=\"3.2\"", "</text>", at);
            marks[name.substr(name.find('>') + 1)].push_back({i, {x, y}});
        }
    }
    REQUIRE(marks.size() >= 4);
    for (const auto& [name, both] : marks) {
        CAPTURE(name);
        REQUIRE(both.size() == 2);
        const At shift{both[0].second.x - both[1].second.x, both[0].second.y - both[1].second.y};
        // The outline's first point is the same point of steel on every page.
        const At first = path_named(pages[both[0].first], "outline").front();
        const At second = path_named(pages[both[1].first], "outline").front();
        CHECK(first.x - second.x == doctest::Approx(shift.x).epsilon(1e-6));
        CHECK(first.y - second.y == doctest::Approx(shift.y).epsilon(1e-6));
    }
}

TEST_CASE("every page has both bars both ways, stretched as the printer wants") {
    for (const double factor : {1.0, 1.01, 0.985}) {
        Bench bench;
        bench.options.factors = {"Office", factor, 1.0};
        const std::string html = bench.html("holes/BP1");
        CHECK(sheet_test::fault_in_markup(html) == "");
        for (const std::string& page : pages_of(html)) {
            const auto bar = [&](const char* name, const char* side) {
                std::size_t at = 0;
                return attribute(between(page, std::string("class=\"bar ") + name + "\"", "/>", at),
                                 side);
            };
            CHECK(bar("level-mm", "width") == doctest::Approx(100.0 * factor));
            CHECK(bar("level-in", "width") == doctest::Approx(101.6 * factor));
            CHECK(bar("upright-mm", "height") == doctest::Approx(100.0));
            CHECK(bar("upright-in", "height") == doctest::Approx(101.6));
        }
        CHECK((count_of(html, "Stretched for Office") > 0) == (factor != 1.0));
    }
}

TEST_CASE("a factor is wanted over measured, and one that no printer has is refused") {
    const auto office = sheet::print_factor(millimetres(100.0), millimetres(99.2));
    REQUIRE(office.ok());
    CHECK(*office == doctest::Approx(100.0 / 99.2));
    for (const double measured : {76.0, 112.0, 0.0}) {
        const auto wrong = sheet::print_factor(millimetres(100.0), millimetres(measured), "level");
        REQUIRE_FALSE(wrong.ok());
        CHECK(wrong.refusal().field == "level");
    }
    Bench bench;
    bench.options.factors.y = 1.2;
    CHECK_FALSE(sheet::templates_html(bench.in(), {"holes/BP1"}).ok());
}

TEST_CASE("a gauge has the angle that the bend leaves open") {
    Bench bench;
    for (const double turned : {45.0, 90.0, 120.0}) {
        bench.sample.change(1, [&](job::Part& part) {
            for (job::Operation& operation : part.operations)
                if (auto* bend = std::get_if<job::Bend>(&operation))
                    bend->angle = degrees(turned);
        });
        const std::string html = bench.html("gauge/HG1/2");
        const auto angle_of = [](At a, At b, At from) {
            const double first = std::atan2(a.y - from.y, a.x - from.x);
            const double second = std::atan2(b.y - from.y, b.x - from.x);
            const double open = std::abs(first - second) * 180.0 / k_pi;
            return open > 180.0 ? 360.0 - open : open;
        };
        const std::vector<At> over = path_named(html, "outside");
        REQUIRE(over.size() == 6);
        CHECK(angle_of(over[1], over[5], over[0]) ==
              doctest::Approx(180.0 - turned).epsilon(0.001));
        const std::vector<At> in = path_named(html, "inside");
        REQUIRE(in.size() == 4);
        // Its corner is cut off: the two legs run on to it.
        const At way{in[1].x - in[0].x, in[1].y - in[0].y};
        const At other{in[2].x - in[3].x, in[2].y - in[3].y};
        CHECK(angle_of(way, other, {}) == doctest::Approx(180.0 - turned).epsilon(0.001));
    }
}

TEST_CASE("what takes too many pages, cannot be made or is not there is refused with its reason") {
    Bench bench;
    bench.sample.change(0, [](job::Part& part) {
        part.length = inches(1200.0);
        part.section.width = inches(60.0);
        part.operations = {job::Cut{}, sheet_test::holes(1.5, 1.5, 2, 2, 5.0)};
    });
    CHECK(bench.info("holes/BP1").refusal.find("60 pages") != std::string::npos);
    CHECK_FALSE(sheet::templates_html(bench.in(), {"holes/BP1"}).ok());
    CHECK_FALSE(sheet::templates_html(bench.in(), {"holes/none"}).ok());
    CHECK_FALSE(sheet::templates_html(bench.in(), {}).ok());
    bench.wraps = {wrap_of({20.0, 16.7, 90.0, 10.0})}; // r + e over R: the branch misses the run
    CHECK(bench.info("wrap/test").pages == 0);
    CHECK_FALSE(bench.info("wrap/test").refusal.empty());
}

TEST_CASE("ordinates worked by hand are those of a layout's wrap") {
    // Pipe of 1.900 on runs of 2.375 and 1.900 in, every 22.5 degrees from the acute side, and a
    // pipe of 1.050 on 2.375 offset 0.400, every 90: worked from w = (sqrt(R^2 - (e + r sin p)^2) +
    // r cos p cos B) / sin B, checked against bisection on the run, printed to 0.0001 in (derived).
    struct Row {
        const char* branch;
        const char* run;
        const char* angle;
        const char* offset;
        std::vector<double> ordinates; // inches, equal steps round the branch
    };
    const Row rows[] = {
        {"pipe 1.9 x 0.145 in",
         "2.375 in",
         "45 deg",
         "",
         {1.9169, 1.7639, 1.3441, 0.7823, 0.2951, 0.0552}},
        {"pipe 1.9 x 0.145 in",
         "1.9 in",
         "60 deg",
         "",
         {1.6454, 1.5202, 1.1635, 0.6297, 0.0, 0.2099}},
        {"pipe 1.05 x 0.113 in", "2.375 in", "90 deg", "0.4 in", {0.3734, 0.0, 0.3734, 0.4362}}};
    for (const Row& row : rows) {
        CAPTURE(row.angle);
        Bench bench;
        job::Layout layout;
        layout.id = "l1";
        layout.kind = "pipe-branch";
        layout.mark = "J";
        layout.values = {{"branch", row.branch},
                         {"run", row.run},
                         {"angle", row.angle},
                         {"centres", "24 in"},
                         {"grade", "A36"}};
        if (*row.offset != '\0')
            layout.values.push_back({"offset", row.offset});
        bench.sample.job.layouts = {layout};
        bench.wraps = sheet::layout_wraps(bench.sample.job, bench.sample.catalog);
        REQUIRE_FALSE(bench.wraps.empty());
        const std::vector<std::string> pages = pages_of(bench.html("wrap/l1/0"));
        REQUIRE(pages.size() == 1);
        std::vector<At> edge = path_named(pages[0], "saddle");
        REQUIRE(edge.size() == 721);
        if (std::abs(edge.back().x - edge.front().x) < 1.0)
            for (At& at : edge)
                at = {-at.y, -at.x};
        double highest = 1e9;
        for (const At& at : edge)
            highest = std::fmin(highest, at.y);
        const std::size_t step = row.ordinates.size() == 4 ? 180 : 45;
        for (std::size_t i = 0; i < row.ordinates.size(); ++i)
            CHECK(std::abs(edge[i * step].y - highest - row.ordinates[i] * 25.4) <= k_close_mm);
    }
}

TEST_CASE("ordinates worked by hand are those of a part's saddle") {
    // Square joints of the same tables: 1.900 on 2.375 and on 1.900 in every 22.5 degrees, 48.3 on
    // 60.3 mm every 30 (derived, printed to 0.0001 in and 0.001 mm).
    struct Row {
        Length branch;
        Length run;
        std::size_t step; ///< of 720 points
        double unit_mm;
        std::vector<double> ordinates;
    };
    const Row rows[] = {
        {inches(1.9), inches(2.375), 45, 25.4, {0.4750, 0.4180, 0.2667, 0.0874, 0.0, 0.0874}},
        {inches(1.9), inches(1.9), 45, 25.4, {0.9500, 0.8777, 0.6718, 0.3635, 0.0, 0.3635}},
        {millimetres(48.3),
         millimetres(60.3),
         60,
         1.0,
         {12.100, 9.576, 3.667, 0.0, 3.667, 9.576, 12.100}}};
    for (const Row& row : rows) {
        Bench bench;
        bench.sample.change(3, [&](job::Part& part) {
            part.section.width = row.branch;
            std::get<job::Saddle>(part.operations[0]).run_diameter = row.run;
        });
        const std::vector<std::string> pages = pages_of(bench.html("wrap/RL1/0"));
        REQUIRE(pages.size() == 1);
        std::vector<At> edge = path_named(pages[0], "saddle");
        REQUIRE(edge.size() == 721);
        if (std::abs(edge.back().x - edge.front().x) < 1.0)
            for (At& at : edge)
                at = {-at.y, -at.x};
        double highest = 1e9;
        for (const At& at : edge)
            highest = std::fmin(highest, at.y);
        for (std::size_t i = 0; i < row.ordinates.size(); ++i)
            CHECK(std::abs(edge[i * row.step].y - highest - row.ordinates[i] * row.unit_mm) <=
                  k_close_mm);
    }
}

TEST_CASE("a layout's slanted joint has its wrap, by the name of its part") {
    Bench bench;
    job::Layout layout;
    layout.id = "l1";
    layout.kind = "pipe-branch";
    layout.mark = "J";
    layout.values = {{"branch", "pipe 48.3 x 3.7 mm"},
                     {"run", "60.3 mm"},
                     {"angle", "45 deg"},
                     {"centres", "1200 mm"},
                     {"grade", "A36"}};
    bench.sample.job.layouts = {layout};
    bench.wraps = sheet::layout_wraps(bench.sample.job, bench.sample.catalog);
    REQUIRE_FALSE(bench.wraps.empty());
    CHECK(bench.wraps[0].key == "wrap/l1/0");
    CHECK(bench.info("wrap/l1/0").pages >= 1);
    CHECK(bench.info("wrap/l1/0").title.find("wrap for the saddle") != std::string::npos);
    bench.sample.job.layouts[0].values.clear(); // cannot be made again: no wrap, no fault
    CHECK(sheet::layout_wraps(bench.sample.job, bench.sample.catalog).empty());
}

TEST_CASE("the list's pages are the pages that are written") {
    for (const sheet::Paper paper : {sheet::Paper::letter, sheet::Paper::a4}) {
        Bench bench;
        bench.options.paper = paper;
        std::vector<std::string> keys;
        int pages = 0;
        for (const sheet::TemplateInfo& one : sheet::template_list(bench.in())) {
            CHECK(one.refusal.empty());
            keys.push_back(one.key);
            pages += one.pages;
        }
        REQUIRE(keys.size() >= 6);
        const auto html = sheet::templates_html(bench.in(), keys);
        REQUIRE(html.ok());
        CHECK(static_cast<int>(pages_of(*html).size()) == pages);
    }
}
