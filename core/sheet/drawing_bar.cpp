// A bar with its pieces, lengths to scale, height for the eye.

#include "plan/stock_words.h"
#include "quantity/print.h"
#include "sheet/drafting.h"
#include "sheet/figures.h"
#include "sheet/stock_sheet.h"

#include <algorithm>
#include <utility>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_points_per_mm = 72.0 / 25.4;
constexpr double k_high_points = 18.0;
constexpr double k_margin_points = 24.0; ///< a figure at either end
constexpr double k_text_gap_points = 4.0;
constexpr double k_ground_points = 11.0; ///< under a line of type
constexpr double k_edges_points = 4.0;   ///< that a finished drawing has around it, both together
constexpr double k_least_points = 72.0;

struct Bench {
    const plan::StockGroup& group;
    const plan::BarPlan& bar;
    const plan::Plan& plan;
    PrintStyle style;
    Drafter draft;
    double high = 0.0;

    [[nodiscard]] double length() const {
        return to_millimetres(group.kinds[static_cast<std::size_t>(bar.kind)].length);
    }
    [[nodiscard]] double slant() const { return to_millimetres(group.shared_mitre); }
    [[nodiscard]] const std::string& mark(const plan::PieceCut& cut) const {
        const int part = group.pieces[static_cast<std::size_t>(cut.piece)].part;
        return plan.parts[static_cast<std::size_t>(part)]->part->mark;
    }
};

Fill fill_of(BarStretch what) {
    switch (what) {
    case BarStretch::piece:
        return Fill::steel;
    case BarStretch::kept:
        return Fill::paper;
    case BarStretch::scrap:
        return Fill::hatched;
    case BarStretch::lost:
        break;
    }
    return Fill::dark;
}

void draw_stretch(Drafter& draft,
                  const std::vector<Spot>& shape,
                  BarStretch what,
                  int piece = plan::k_none) {
    draft.shape(shape, fill_of(what), Pen::outline, piece);
}

bool has_room(const Bench& bench, double room, const std::string& text) {
    return bench.draft.text_width(text) + bench.draft.points(k_text_gap_points) <= room;
}

void draw_text(Bench& bench, double middle, const std::string& text, int piece) {
    bench.draft.label({middle, bench.high / 2.0}, text, Anchor::middle, false, piece);
}

/// On a ground of its own, for there are joints or a hatch under it.
void draw_text_over(
    Bench& bench, double middle, const std::string& text, BarStretch ground, int piece) {
    Drafter& draft = bench.draft;
    const double half = (draft.text_width(text) + draft.points(k_text_gap_points)) / 2.0;
    const double low = bench.high / 2.0 - draft.points(k_ground_points) / 2.0;
    const double top = bench.high - low;
    draft.shape(
        {{middle - half, low}, {middle + half, low}, {middle + half, top}, {middle - half, top}},
        ground == BarStretch::piece ? Fill::steel : Fill::paper,
        Pen::none,
        piece);
    draw_text(bench, middle, text, piece);
}

/// Slanting ends where mitres are shared: leaning in turn when every other piece is turned over.
void draw_piece(Bench& bench, std::size_t index) {
    const plan::PieceCut& cut = bench.bar.cuts[index];
    const double slant = bench.slant();
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
    draw_stretch(bench.draft, shape, BarStretch::piece, static_cast<int>(index));
}

/// Its mark in every piece of a run of pieces alike, or where they are too short once over all of
/// them.
void draw_marks(Bench& bench, std::size_t first, std::size_t end) {
    const std::vector<plan::PieceCut>& cuts = bench.bar.cuts;
    const auto inside = [&](std::size_t i, std::size_t last) {
        return std::pair{to_millimetres(cuts[i].from) + bench.slant(),
                         to_millimetres(cuts[last].stop) - bench.slant()};
    };
    const std::string& mark = bench.mark(cuts[first]);
    const auto [from, to] = inside(first, first);
    if (has_room(bench, to - from, mark)) {
        for (std::size_t i = first; i < end; ++i) {
            const auto [left, right] = inside(i, i);
            draw_text(bench, (left + right) / 2.0, mark, static_cast<int>(i));
        }
        return;
    }
    const std::string all = std::to_string(end - first) + " × " + mark;
    const auto [left, right] = inside(first, end - 1);
    if (end - first > 1 && has_room(bench, right - left, all))
        draw_text_over(
            bench, (left + right) / 2.0, all, BarStretch::piece, static_cast<int>(first));
}

void draw_pieces(Bench& bench) {
    const std::vector<plan::PieceCut>& cuts = bench.bar.cuts;
    for (std::size_t i = 0; i < cuts.size(); ++i)
        draw_piece(bench, i);
    for (std::size_t first = 0; first < cuts.size();) {
        std::size_t end = first + 1;
        while (end < cuts.size() && cuts[end].piece == cuts[first].piece)
            ++end;
        draw_marks(bench, first, end);
        first = end;
    }
}

/// With the slant that the last cut left on it.
void draw_left(Bench& bench) {
    if (bench.bar.drop == Length{})
        return;
    const double end = bench.length() - to_millimetres(bench.group.trim);
    const double from = end - to_millimetres(bench.bar.drop);
    const bool long_below = bench.group.turned && bench.bar.cuts.size() % 2 == 1;
    const double below = from - (long_below ? 0.0 : bench.slant());
    const double above = from - (long_below ? bench.slant() : 0.0);
    const BarStretch what = bench.bar.kept ? BarStretch::kept : BarStretch::scrap;
    draw_stretch(
        bench.draft, {{below, 0.0}, {end, 0.0}, {end, bench.high}, {above, bench.high}}, what);
    for (const std::string& words :
         {plan::drop_words(bench.group, bench.bar, bench.style),
          quantity::print_bare(bench.bar.drop, bench.style, Rounding::down)})
        if (has_room(bench, end - from, words))
            return draw_text_over(bench, (from + end) / 2.0, words, what, plan::k_none);
}

/// Dark from end to end, and on it what becomes of it: between two pieces the kerf is left, at the
/// ends the trim.
void draw_metal(Bench& bench) {
    const double end = bench.length();
    draw_stretch(bench.draft,
                 {{0.0, 0.0}, {end, 0.0}, {end, bench.high}, {0.0, bench.high}},
                 BarStretch::lost);
    draw_pieces(bench);
    draw_left(bench);
}

/// A figure stands right under its stop or not at all: moved aside it would be read for another.
/// The running list has all of them.
void draw_stops(Bench& bench) {
    Drafter& draft = bench.draft;
    double free = -draft.points(k_margin_points);
    for (std::size_t i = 0; i < bench.bar.cuts.size(); ++i) {
        const double at = to_millimetres(bench.bar.cuts[i].stop);
        const int piece = static_cast<int>(i);
        draft.path({{at, -draft.points(2)}, {at, -draft.points(7)}}, Pen::dimension, piece);
        const std::string text = setting_text(bench.bar.cuts[i].stop, bench.style);
        const double half = (draft.text_width(text) + draft.points(k_text_gap_points)) / 2.0;
        if (at - half < free)
            continue;
        draft.label({at, -draft.points(14)}, text, Anchor::middle, false, piece);
        free = at + half;
    }
}

Drawing finish(Bench& bench) {
    const plan::BarKind& kind = bench.group.kinds[static_cast<std::size_t>(bench.bar.kind)];
    return bench.draft.finish(plan::bar_words(kind, bench.style) + ", " +
                              std::to_string(bench.bar.cuts.size()) + " pieces, " +
                              plan::drop_words(bench.group, bench.bar, bench.style) + ".");
}

/// Millimetres of the longest bar to a point, where it is so many points wide.
double unit_of(Length longest, double wide) {
    return std::max(to_millimetres(longest), 1.0) / std::max(wide, k_least_points);
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
    const double unit = unit_of(longest, wide);
    Bench bench{group, bar, plan, style, Drafter(unit), unit * k_high_points};
    draw_metal(bench);
    bench.draft.path({{0.0, -bench.draft.points(4)}, {0.0, bench.high + bench.draft.points(4)}},
                     Pen::datum);
    // The whole width of the box, so that all bars of a group come out at one scale.
    bench.draft.include({-bench.draft.points(k_margin_points), 0.0});
    bench.draft.include({to_millimetres(longest) + bench.draft.points(k_margin_points), 0.0});
    draw_stops(bench);
    return finish(bench);
}

Drawing draw_bar_row(const plan::StockGroup& group,
                     const plan::BarPlan& bar,
                     const plan::Plan& plan,
                     PrintStyle style,
                     Length longest,
                     PictureBox box) {
    const double unit = unit_of(longest, box.width_mm * k_points_per_mm - k_edges_points);
    const double high = box.height_mm * k_points_per_mm - k_edges_points;
    Bench bench{group, bar, plan, style, Drafter(unit), unit * std::max(high, k_ground_points)};
    draw_metal(bench);
    bench.draft.include({to_millimetres(longest), 0.0});
    return finish(bench);
}

Drawing draw_bar_sample(BarStretch what, PictureBox box) {
    Drafter draft(1.0 / k_points_per_mm);
    const double wide = box.width_mm - draft.points(k_edges_points);
    const double high = box.height_mm - draft.points(k_edges_points);
    draw_stretch(draft, {{0.0, 0.0}, {wide, 0.0}, {wide, high}, {0.0, high}}, what);
    return draft.finish("");
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
