// A bar with its pieces, lengths to scale, height for the eye.

#include "plan/stock_words.h"
#include "sheet/drafting.h"
#include "sheet/figures.h"
#include "sheet/stock_sheet.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_points_per_mm = 72.0 / 25.4;
constexpr double k_high_points = 18.0;
constexpr double k_margin_points = 24.0; ///< a figure at either end
constexpr double k_text_gap_points = 4.0;

struct Bench {
    const plan::StockGroup& group;
    const plan::BarPlan& bar;
    Drafter draft;
    double high = 0.0;

    [[nodiscard]] double length() const {
        return to_millimetres(group.kinds[static_cast<std::size_t>(bar.kind)].length);
    }
};

void draw_text_if_room(Bench& bench, double from, double to, const std::string& text, int index) {
    const double room = to - from - bench.draft.points(k_text_gap_points);
    if (bench.draft.text_width(text) <= room)
        bench.draft.label(
            {(from + to) / 2.0, bench.high / 2.0}, text, Anchor::middle, false, index);
}

/// Slanting ends where mitres are shared: leaning in turn when every other piece is turned over.
void draw_piece(Bench& bench, std::size_t index, const std::string& mark) {
    const plan::PieceCut& cut = bench.bar.cuts[index];
    const double slant = to_millimetres(bench.group.shared_mitre);
    const double from = to_millimetres(cut.from);
    const double to = to_millimetres(cut.stop);
    const bool long_below = !bench.group.turned || index % 2 == 0;
    const bool apart = bench.group.turned;
    std::vector<Spot> shape;
    if (slant == 0.0)
        shape = {{from, 0.0}, {to, 0.0}, {to, bench.high}, {from, bench.high}};
    else if (!apart)
        shape = {{from, 0.0}, {to - slant, 0.0}, {to, bench.high}, {from + slant, bench.high}};
    else if (long_below)
        shape = {{from, 0.0}, {to, 0.0}, {to - slant, bench.high}, {from + slant, bench.high}};
    else
        shape = {{from + slant, 0.0}, {to - slant, 0.0}, {to, bench.high}, {from, bench.high}};
    const int at = static_cast<int>(index);
    bench.draft.shape(shape, Fill::steel, Pen::outline, at);
    draw_text_if_room(bench, from + slant, to - slant, mark, at);
}

void draw_trim(Bench& bench, double from, double to) {
    if (to > from)
        bench.draft.shape({{from, 0.0}, {to, 0.0}, {to, bench.high}, {from, bench.high}},
                          Fill::none,
                          Pen::hidden);
}

void draw_stops(Bench& bench, PrintStyle style, double wide) {
    Drafter& draft = bench.draft;
    std::vector<Figure> figures;
    for (std::size_t i = 0; i < bench.bar.cuts.size(); ++i) {
        const plan::PieceCut& cut = bench.bar.cuts[i];
        Figure figure;
        figure.at = to_millimetres(cut.stop);
        figure.text = setting_text(cut.stop, style);
        figure.room = draft.text_width(figure.text) + draft.points(k_text_gap_points);
        figure.operation = static_cast<int>(i);
        draft.path({{figure.at, -draft.points(2)}, {figure.at, -draft.points(7)}},
                   Pen::dimension,
                   figure.operation);
        figures.push_back(std::move(figure));
    }
    // Figures without room are in the running list.
    spread(figures, draft.points(wide), -draft.points(k_margin_points));
    for (const Figure& figure : figures)
        draft.label({figure.placed, -draft.points(14)},
                    figure.text,
                    Anchor::middle,
                    false,
                    figure.operation);
}

} // namespace

Length longest_bar(const plan::StockGroup& group, const plan::GroupPlan& plan) {
    Length longest;
    for (const plan::BarPlan& bar : plan.bars)
        longest = larger(longest, group.kinds[static_cast<std::size_t>(bar.kind)].length);
    return longest;
}

Drawing draw_bar(const plan::StockGroup& group,
                 const plan::BarPlan& bar,
                 const plan::Plan& plan,
                 PrintStyle style,
                 Length longest,
                 PictureBox box) {
    const double wide = box.width_mm * k_points_per_mm - 2.0 * k_margin_points;
    const double unit = std::max(to_millimetres(longest), 1.0) / std::max(wide, 72.0);
    Bench bench{group, bar, Drafter(unit), unit * k_high_points};
    const double trim = to_millimetres(group.trim);
    const double end = bench.length();
    bench.draft.shape(
        {{0.0, 0.0}, {end, 0.0}, {end, bench.high}, {0.0, bench.high}}, Fill::paper, Pen::outline);
    draw_trim(bench, 0.0, trim);
    draw_trim(bench, end - trim, end);
    for (std::size_t i = 0; i < bar.cuts.size(); ++i) {
        const plan::StockPiece& piece = group.pieces[static_cast<std::size_t>(bar.cuts[i].piece)];
        draw_piece(bench, i, plan.parts[static_cast<std::size_t>(piece.part)]->part->mark);
    }
    if (bar.drop > Length{})
        draw_text_if_room(bench,
                          end - trim - to_millimetres(bar.drop),
                          end - trim,
                          plan::drop_words(group, bar, style),
                          plan::k_none);
    bench.draft.path({{0.0, -bench.draft.points(4)}, {0.0, bench.high + bench.draft.points(4)}},
                     Pen::datum);
    // The whole width of the box, so that all bars of a group come out at one scale.
    bench.draft.include({-bench.draft.points(k_margin_points), 0.0});
    bench.draft.include({to_millimetres(longest) + bench.draft.points(k_margin_points), 0.0});
    draw_stops(bench, style, wide + k_margin_points);
    const plan::BarKind& kind = group.kinds[static_cast<std::size_t>(bar.kind)];
    return bench.draft.finish(plan::bar_words(kind, style) + ", " +
                              std::to_string(bar.cuts.size()) + " pieces, " +
                              plan::drop_words(group, bar, style) + ".");
}

std::vector<StopRun> running_stops(const plan::StockGroup& group,
                                   const plan::BarPlan& bar,
                                   const plan::Plan& plan,
                                   PrintStyle style) {
    std::vector<StopRun> runs;
    for (const plan::PieceCut& cut : bar.cuts) {
        if (runs.empty() || runs.back().piece != cut.piece)
            runs.push_back({cut.piece, 0, "", ""});
        StopRun& run = runs.back();
        ++run.count;
        run.stops += (run.stops.empty() ? "" : ", ") + setting_text(cut.stop, style) +
                     (cut.last_is_end ? " (end of the bar)" : "");
    }
    for (StopRun& run : runs)
        run.words =
            std::to_string(run.count) + " × " +
            plan::piece_words(group.pieces[static_cast<std::size_t>(run.piece)], plan, style);
    return runs;
}

} // namespace treadle::sheet
