// Bars to cut on paper, in the rows of the page and as JSON: drawing_bar.cpp, worksheet_stock.cpp,
// stock_json.cpp.

#include "plan/stock_bench.h"
#include "plan/stock_words.h"
#include "sheet/figures.h"
#include "sheet/sample.h"
#include "sheet/stock_sheet.h"
#include "sheet/worksheet.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

using namespace treadle;
using nlohmann::json;
using quantity::to_millimetres;
using test::StockBench;

namespace {

/// Two lengths on drops and bars, trimmed.
StockBench bench() {
    StockBench made;
    made.shop.rules.end_trim = inches(0.5);
    made.shop.rules.keep_drop = inches(12.0);
    made.add(inches(60.0), 7);
    made.add(inches(31.5), 5);
    made.bar(inches(240.0), 1);
    made.bar(inches(240.0)).price = 31.5;
    made.drop(inches(66.0));
    made.solve();
    return made;
}

std::string html_of(const StockBench& made) {
    return sheet::worksheet_html(made.plan, made.job, made.shop, made.catalog, {});
}

bool has(const std::string& text, const std::string& what) {
    return text.find(what) != std::string::npos;
}

/// Labels on one line that run into each other, a glyph counted 0.6 em.
bool labels_overlap(const sheet::Drawing& drawing, double width_mm) {
    const double scale = width_mm * 72.0 / 25.4 / to_millimetres(drawing.high.x - drawing.low.x);
    for (const sheet::Label& a : drawing.labels)
        for (const sheet::Label& b : drawing.labels) {
            if (&a == &b || a.at.y != b.at.y)
                continue;
            const double half = 0.3 * (a.points * static_cast<double>(a.text.size()) +
                                       b.points * static_cast<double>(b.text.size()));
            if (std::abs(to_millimetres(a.at.x - b.at.x)) * scale < half)
                return true;
        }
    return false;
}

/// Three pieces of 60 on a bar of 240 trimmed by a half at both ends: 59 in left at 180-1/2.
StockBench three_of_sixty(Length keep) {
    StockBench made;
    made.shop.rules.end_trim = inches(0.5);
    made.shop.rules.keep_drop = keep;
    made.add(inches(60.0), 3);
    made.bar(inches(240.0));
    made.solve();
    return made;
}

sheet::Drawing drawing_of(const StockBench& made) {
    return sheet::draw_bar(
        made.group(), made.stock.groups[0].bars.at(0), made.plan, made.job.style, inches(240.0));
}

constexpr sheet::PictureBox k_row{180.0, 7.0};
sheet::Drawing row_of(const StockBench& made) {
    return sheet::draw_bar_row(made.group(),
                               made.stock.groups[0].bars.at(0),
                               made.plan,
                               made.job.style,
                               inches(240.0),
                               k_row);
}

std::vector<std::string> marks_of(const sheet::Drawing& drawing) {
    std::vector<std::string> marks;
    for (const sheet::Label& label : drawing.labels)
        if (has(label.text, "P1"))
            marks.push_back(label.text);
    return marks;
}

/// Paths of an SVG with this fill.
int paths_filled(const std::string& svg, const std::string& fill) {
    int count = 0;
    const std::string what = "fill=\"" + fill + "\" stroke=";
    for (std::size_t at = svg.find(what); at != std::string::npos; at = svg.find(what, at + 1))
        ++count;
    return count;
}

} // namespace

TEST_CASE("a bar is drawn to scale, its pieces from stop to stop") {
    const StockBench made = bench();
    const plan::GroupPlan& planned = made.stock.groups[0];
    const Length longest = sheet::longest_bar(made.group(), planned);
    CHECK(longest == inches(240.0));
    for (const plan::BarPlan& bar : planned.bars) {
        const sheet::Drawing drawing =
            sheet::draw_bar(made.group(), bar, made.plan, made.job.style, longest);
        std::size_t pieces = 0;
        for (const sheet::Path& path : drawing.paths) {
            if (path.operation == plan::k_none || path.fill != sheet::Fill::steel)
                continue;
            ++pieces;
            const plan::PieceCut& cut = bar.cuts.at(static_cast<std::size_t>(path.operation));
            const auto [left, right] =
                std::minmax_element(path.points.begin(),
                                    path.points.end(),
                                    [](const auto& a, const auto& b) { return a.x < b.x; });
            CHECK(left->x == cut.from);
            CHECK(right->x == cut.stop);
        }
        CHECK(pieces == bar.cuts.size());
        const Length length = made.group().kinds[static_cast<std::size_t>(bar.kind)].length;
        CHECK(drawing.paths.front().points[1].x == length);
        CHECK(drawing.high.x > longest); // a drop beside a bar has the bar's scale
        CHECK_FALSE(labels_overlap(drawing, sheet::k_bar_box.width_mm));
        CHECK(has(drawing.description, plan::drop_words(made.group(), bar, made.job.style)));
    }
}

TEST_CASE("a stop's figure stands under its stop, however many have no room") {
    StockBench made;
    made.shop.rules.end_trim = inches(0.5);
    made.add(inches(6.0), 30);
    made.bar(inches(240.0));
    made.solve();
    const plan::BarPlan& bar = made.stock.groups[0].bars[0];
    const sheet::Drawing drawing =
        sheet::draw_bar(made.group(), bar, made.plan, made.job.style, inches(240.0));
    int figures = 0;
    for (const sheet::Label& label : drawing.labels) {
        if (label.at.y >= Length{})
            continue; // a mark
        ++figures;
        const auto& cut = bar.cuts[static_cast<std::size_t>(label.operation)];
        CHECK(to_millimetres(label.at.x) == doctest::Approx(to_millimetres(cut.stop)));
        CHECK(label.text == sheet::setting_text(cut.stop, made.job.style));
    }
    CHECK(figures > 3);
    CHECK(figures < 30);
    CHECK_FALSE(labels_overlap(drawing, sheet::k_bar_box.width_mm));
}

TEST_CASE("scrap is hatched from the last cut to the trim, and a drop to keep is plain") {
    for (const bool row : {false, true}) {
        const StockBench kept = three_of_sixty(inches(59.0));
        const StockBench scrap = three_of_sixty(inches(59.5));
        const sheet::Drawing plain = row ? row_of(kept) : drawing_of(kept);
        for (const sheet::Path& path : plain.paths)
            CHECK(path.hatch.empty());
        const sheet::Drawing hatched = row ? row_of(scrap) : drawing_of(scrap);
        double left = INFINITY;
        double right = 0;
        std::size_t strokes = 0;
        for (const sheet::Path& path : hatched.paths)
            for (const sheet::Stroke& stroke : path.hatch) {
                ++strokes;
                left = std::min(left, to_millimetres(stroke.from.x));
                right = std::max(right, to_millimetres(stroke.to.x));
            }
        CHECK(strokes > 20);
        CHECK(left == doctest::Approx(180.5 * 25.4));
        CHECK(right == doctest::Approx(239.5 * 25.4));
        // The same on paper: the strokes are one path more, and nothing else of it is dark but the
        // bar under all of it.
        const std::string with = sheet::to_svg(hatched, 180.0, 16.0);
        const std::string without = sheet::to_svg(plain, 180.0, 16.0);
        CHECK(has(with, "stroke-width=\"0.6\""));
        CHECK_FALSE(has(without, "stroke-width=\"0.6\""));
        CHECK(paths_filled(with, "#000") == 1);
        CHECK(paths_filled(with, "#e4e9ec") == 3);
    }
}

TEST_CASE("a legend's samples are told apart without colour, as in the bar") {
    using sheet::BarStretch;
    const sheet::PictureBox box{8.0, 6.0};
    const auto fill_of = [&](BarStretch what) {
        return sheet::draw_bar_sample(what, box).paths.at(0).fill;
    };
    const sheet::Drawing bar = drawing_of(three_of_sixty(inches(59.5)));
    CHECK(bar.paths[0].fill == fill_of(BarStretch::lost));
    CHECK(bar.paths[1].fill == fill_of(BarStretch::piece));
    CHECK(bar.paths[4].fill == fill_of(BarStretch::scrap));
    CHECK(drawing_of(three_of_sixty(inches(59.0))).paths[4].fill == fill_of(BarStretch::kept));
    CHECK(fill_of(BarStretch::lost) == sheet::Fill::dark);
    CHECK(fill_of(BarStretch::piece) == sheet::Fill::steel);
    CHECK(fill_of(BarStretch::kept) == sheet::Fill::paper);
    CHECK(sheet::draw_bar_sample(BarStretch::scrap, box).paths[0].hatch.size() > 1);
}

TEST_CASE("each piece has its mark, and pieces too short for it have one together") {
    CHECK(marks_of(drawing_of(three_of_sixty(inches(12.0)))) ==
          std::vector<std::string>{"P1", "P1", "P1"});
    CHECK(marks_of(row_of(three_of_sixty(inches(12.0)))) ==
          std::vector<std::string>{"P1", "P1", "P1"});
    // Four inches of 240 are 8 points of 180 mm: less than two letters of 9 points need.
    StockBench made;
    made.add(inches(4.0), 30);
    made.bar(inches(240.0));
    made.solve();
    CHECK(marks_of(row_of(made)) == std::vector<std::string>{"30 × P1"});
    // Three of them together are 24 points: too few for that, too.
    StockBench few;
    few.add(inches(4.0), 3);
    few.bar(inches(240.0));
    few.solve();
    CHECK(marks_of(row_of(few)).empty());
}

TEST_CASE("a row's bar fills its box, and a shorter bar has the longest one's scale") {
    const StockBench made = three_of_sixty(inches(12.0));
    const sheet::Drawing drawing = row_of(made);
    const double wide = to_millimetres(drawing.high.x - drawing.low.x);
    const double high = to_millimetres(drawing.high.y - drawing.low.y);
    CHECK(wide / high == doctest::Approx(k_row.width_mm / k_row.height_mm));
    const sheet::Drawing beside = sheet::draw_bar_row(made.group(),
                                                      made.stock.groups[0].bars.at(0),
                                                      made.plan,
                                                      made.job.style,
                                                      inches(480.0),
                                                      k_row);
    CHECK(to_millimetres(beside.high.x - beside.low.x) == doctest::Approx(2.0 * wide));
    for (const sheet::Drawing* one : {&drawing, &beside})
        CHECK_FALSE(labels_overlap(*one, k_row.width_mm));
}

TEST_CASE("shared mitres are drawn leaning, none over the next") {
    StockBench made;
    made.section.shape = section::Shape::flat;
    made.section.width = inches(1.5);
    made.section.thickness = inches(0.25);
    made.add(inches(15.0), 3, {job::Cut{job::CutSide::length, degrees(45.0), degrees(45.0)}});
    made.bar(inches(60.0));
    const plan::GroupPlan planned = made.solve();
    const sheet::Drawing drawing =
        sheet::draw_bar(made.group(), planned.bars[0], made.plan, made.job.style, inches(60.0));
    std::vector<sheet::Path> pieces;
    for (const sheet::Path& path : drawing.paths)
        if (path.fill == sheet::Fill::steel)
            pieces.push_back(path);
    REQUIRE(pieces.size() == 3);
    for (std::size_t i = 0; i + 1 < pieces.size(); ++i) {
        // Right edge of one is the left edge of the next: below and above.
        CHECK(to_millimetres(pieces[i].points[1].x - pieces[i + 1].points[0].x) ==
              doctest::Approx(0.0));
        CHECK(to_millimetres(pieces[i].points[2].x - pieces[i + 1].points[3].x) ==
              doctest::Approx(0.0));
    }
    // What is left begins with the slant of the last cut.
    const sheet::Path& last = pieces.back();
    const sheet::Path& left = drawing.paths.at(4);
    REQUIRE(left.fill == sheet::Fill::hatched);
    CHECK(to_millimetres(left.points[0].x - left.points[3].x) ==
          doctest::Approx(to_millimetres(last.points[1].x - last.points[2].x)));
}

TEST_CASE("the worksheet has every bar, what to pull and buy, and the proof") {
    const StockBench made = bench();
    const plan::GroupPlan& planned = made.stock.groups[0];
    const std::string html = html_of(made);
    CHECK(sheet_test::fault_in_markup(html) == "");
    CHECK(has(html, "Bars to cut"));
    CHECK(has(html, plan::proof_words(made.group(), planned, made.job.style)));
    for (const std::string& line : plan::use_words(made.group(), planned, made.job.style))
        CHECK_MESSAGE(has(html, line), line);
    for (const plan::BarPlan& bar : planned.bars)
        for (const sheet::StopRun& run :
             sheet::running_stops(made.group(), bar, made.plan, made.job.style)) {
            CHECK_MESSAGE(has(html, run.stops), run.stops);
            CHECK_MESSAGE(has(html, run.words), run.words);
        }
    CHECK(has(html, plan::sums_words(planned.sums, made.job.style)));
    CHECK(html_of(made) == html);
}

TEST_CASE("running stops count from the datum end, the trim in them") {
    StockBench made;
    made.shop.rules.end_trim = inches(0.5);
    made.add(inches(60.0), 3);
    made.add(inches(59.0), 1);
    made.bar(inches(240.0));
    made.solve();
    const auto runs =
        sheet::running_stops(made.group(), made.stock.groups[0].bars[0], made.plan, made.job.style);
    REQUIRE(runs.size() == 2);
    CHECK(runs[0].words == "3 × P1 60");
    CHECK(runs[0].stops == "60-1/2, 120-1/2, 180-1/2");
    CHECK(runs[1].words == "1 × P2 59");
    CHECK(runs[1].stops == "239-1/2 (end of the bar)");
}

TEST_CASE("a section that cannot be planned says why, and nothing of bars") {
    StockBench made;
    made.add(inches(60.0), 7, {});
    made.bar(inches(240.0));
    made.add(inches(8.0), 1).section.shape = section::Shape::plate;
    made.solve();
    const std::string html = html_of(made);
    CHECK(sheet_test::fault_in_markup(html) == "");
    CHECK(has(html, "P1 is sawn, and what a saw cut takes is not known."));
    CHECK(has(html, "Enter the saw kerf in the house rules."));
    CHECK(has(html, "not nested here: P2"));
    CHECK_FALSE(has(html, "Cutting list"));
    const std::string nothing = html_of(StockBench{});
    CHECK_FALSE(has(nothing, "Bars to cut"));
}

TEST_CASE("the JSON adds up without this program") {
    const StockBench made = bench();
    const json file = json::parse(sheet::stock_json(made.groups, made.stock, made.plan, made.job));
    CHECK(file["complete"] == true);
    CHECK(file["proven"] == true);
    const json& group = file["groups"][0];
    CHECK(group["proof"] == plan::proof_words(made.group(), made.stock.groups[0], made.job.style));
    CHECK(group["aim"] == "bars");
    CHECK(group["cost"] == group["bound"]);
    std::vector<int> cut(group["pieces"].size(), 0);
    int bars = 0;
    for (const json& bar : group["bars"]) {
        const int times = bar["times"];
        bars += times;
        double sum = 2.0 * group["end_trim_mm"].get<double>() + bar["drop_mm"].get<double>();
        for (const json& one : bar["cuts"]) {
            const std::size_t piece = one["piece"];
            cut[piece] += times;
            sum += group["pieces"][piece]["length_mm"].get<double>();
        }
        CHECK(sum == doctest::Approx(bar["length_mm"].get<double>()));
    }
    for (std::size_t i = 0; i < cut.size(); ++i)
        CHECK(cut[i] == group["pieces"][i]["count"]);
    CHECK(bars == group["whole_bars"].get<int>() + group["drops_used"].get<int>());
    int used = 0;
    for (const json& use : group["use"])
        used += use["pull"].get<int>() + use["buy"].get<int>();
    CHECK(used == bars);
    StockBench none = made;
    none.shop.rack.clear();
    none.solve();
    const json refused =
        json::parse(sheet::stock_json(none.groups, none.stock, none.plan, none.job));
    CHECK(refused["complete"] == false);
    CHECK(refused["groups"][0]["problem"]["field"] == "rack");
    CHECK_FALSE(refused["groups"][0].contains("bars"));
}
