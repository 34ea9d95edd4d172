// The flat blank, face under face, each with running dimensions from its own datum corner.

#include "plan/words.h"
#include "sheet/drawing_near.h"
#include "sheet/figures.h"
#include "sheet/outline.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_points_per_mm = 72.0 / 25.4;
constexpr double k_row_below_points = 30.0; ///< ticks and figures under a face
constexpr double k_row_above_points = 8.0;
constexpr double k_bend_row_points = 30.0; ///< angle and balloon over a bend line
constexpr double k_name_row_points = 12.0;
constexpr double k_right_points = 22.0;
constexpr double k_figure_gap_points = 6.0;

struct Frame { ///< where one face lies in the drawing
    section::Face face = section::Face::flat;
    double low = 0.0;
    double width = 0.0;
};

struct Sheet {
    const plan::PartPlan& plan;
    PrintStyle style;
    double length = 0.0;
    Drafter draft;
    double wide = 0.0; ///< points of the picture to the right of the datum end
    int dropped = 0;
};

std::string figure_text(double mm, PrintStyle style) {
    return setting_text(millimetres(mm), style);
}

/// The whole width is a size of the stock, not a place to set a stop to.
std::string across_text(double mm, const Frame& frame, PrintStyle style) {
    return mm == frame.width ? stock_text(millimetres(mm), style) : figure_text(mm, style);
}

void add_figure(std::vector<Figure>& figures, double mm, int operation) {
    for (const Figure& known : figures)
        if (std::abs(known.at - mm) < 1e-6)
            return;
    Figure figure;
    figure.at = mm;
    figure.operation = operation;
    figures.push_back(figure);
}

/// Values along (x) or across (y) that a face is set out by.
std::vector<Figure>
values_of(const Sheet& sheet, const Frame& frame, const FaceOutline& outline, bool along) {
    std::vector<Figure> figures;
    const double end = along ? sheet.length : frame.width;
    add_figure(figures, 0.0, plan::k_none);
    add_figure(figures, end, plan::k_none);
    for (const plan::Mark& mark : sheet.plan.marks) {
        const bool hole = mark.kind == plan::Mark::Kind::hole;
        const bool bend = mark.kind == plan::Mark::Kind::bend_line;
        if (mark.face == frame.face && (hole || (bend && along)))
            add_figure(figures, to_millimetres(along ? mark.x : mark.y), mark.operation);
    }
    for (const NotchEdges& notch : outline.notches)
        for (const Spot spot : notch.edges)
            add_figure(figures, along ? spot.x : spot.y, notch.operation);
    return figures;
}

void draw_figures_along(Sheet& sheet, const Frame& frame, std::vector<Figure> figures) {
    Drafter& draft = sheet.draft;
    const auto y = [&](double points) { return frame.low - draft.points(points); };
    Dimension& line = draft.dimension({0.0, y(7)}, {sheet.length, y(7)});
    const auto tick = [&](Spot from, Spot to, int operation) {
        line.ticks.push_back({to_point(from), to_point(to), operation});
    };
    for (const Figure& figure : figures)
        tick({figure.at, y(3)}, {figure.at, y(11)}, figure.operation);
    for (Figure& figure : figures) {
        figure.text = figure_text(figure.at, sheet.style);
        figure.room = draft.text_width(figure.text) + draft.points(k_figure_gap_points);
    }
    const double lowest = -draft.points(12);
    sheet.dropped += spread(figures, std::max(sheet.length, draft.points(sheet.wide)), lowest);
    for (const Figure& figure : figures) {
        if (std::abs(figure.placed - figure.at) > draft.points(0.5))
            tick({figure.at, y(11)}, {figure.placed, y(16)}, plan::k_none);
        draft.label({figure.placed, y(22)}, figure.text, Anchor::middle, false, figure.operation);
    }
}

void draw_figures_across(Sheet& sheet, const Frame& frame, std::vector<Figure> figures) {
    Drafter& draft = sheet.draft;
    const double dim = -draft.points(7);
    const double low = frame.low;
    Dimension& line = draft.dimension({dim, low}, {dim, low + frame.width});
    const auto tick = [&](double from_points, double from, double to_points, double to, int of) {
        line.ticks.push_back({to_point({-draft.points(from_points), low + from}),
                              to_point({-draft.points(to_points), low + to}),
                              of});
    };
    for (const Figure& figure : figures)
        tick(3, figure.at, 11, figure.at, figure.operation);
    for (Figure& figure : figures) {
        figure.text = across_text(figure.at, frame, sheet.style);
        figure.room = draft.points(11.5);
    }
    const double most = frame.width + draft.points(k_row_below_points);
    sheet.dropped += spread(figures, most, -draft.points(k_row_below_points));
    for (const Figure& figure : figures) {
        if (std::abs(figure.placed - figure.at) > draft.points(0.5))
            tick(11, figure.at, 16, figure.placed, plan::k_none);
        draft.label({-draft.points(18), low + figure.placed},
                    figure.text,
                    Anchor::end,
                    false,
                    figure.operation);
    }
}

void number_holes(Sheet& sheet, const Frame& frame) {
    std::vector<int> done;
    for (const plan::Mark& mark : sheet.plan.marks) {
        if (mark.kind != plan::Mark::Kind::hole || mark.face != frame.face ||
            std::find(done.begin(), done.end(), mark.operation) != done.end())
            continue;
        done.push_back(mark.operation);
        const auto index = static_cast<std::size_t>(mark.operation);
        const auto& punch = std::get<job::Punch>(sheet.plan.part->operations[index]);
        const auto half = geometry::half_extent(punch.hole, punch.turned);
        sheet.draft.balloon({to_millimetres(mark.x), frame.low + to_millimetres(mark.y)},
                            to_millimetres(smaller(half.along, half.across)) * 0.8,
                            mark.operation);
    }
}

std::string bend_text(const job::Bend& bend, PrintStyle style) {
    return quantity::print(bend.angle, style) + (bend.up ? " up" : " down");
}

void draw_bends(Sheet& sheet, const Frame& frame) {
    Drafter& draft = sheet.draft;
    std::vector<Figure> figures;
    const double top = frame.low + frame.width;
    for (const plan::Mark& mark : sheet.plan.marks) {
        if (mark.kind != plan::Mark::Kind::bend_line)
            continue;
        const double x = to_millimetres(mark.x);
        draft.path({{x, frame.low}, {x, top}}, Pen::bend_line, mark.operation);
        draft.keep_free({{x - draft.points(1), frame.low}, {x + draft.points(1), top}});
        const auto index = static_cast<std::size_t>(mark.operation);
        const auto& bend = std::get<job::Bend>(sheet.plan.part->operations[index]);
        Figure figure;
        figure.at = x;
        figure.text = bend_text(bend, sheet.style);
        figure.room = draft.text_width(figure.text) + draft.points(k_figure_gap_points);
        figure.operation = mark.operation;
        figures.push_back(std::move(figure));
    }
    sheet.dropped += spread(
        figures, std::max(sheet.length, draft.points(sheet.wide)), -draft.points(k_right_points));
    for (const Figure& figure : figures) {
        draft.path({{figure.at, top + draft.points(2)}, {figure.placed, top + draft.points(7)}},
                   Pen::dimension);
        const Spot at{figure.placed, top + draft.points(13)};
        draft.label(at, figure.text, Anchor::middle, false, figure.operation);
        const Spot number{at.x, at.y + draft.points(14)};
        draft.circle(number, draft.points(7), Fill::paper, figure.operation);
        draft.label(
            number, std::to_string(figure.operation + 1), Anchor::middle, true, figure.operation);
    }
}

/// Cuts and saddles are numbered beside the end they make.
void number_ends(Sheet& sheet, const Frame& frame) {
    const double half = sheet.draft.points(3);
    const double middle = frame.width / 2.0;
    const EndPlaces ends = ends_at(sheet.plan, frame.face, sheet.length, middle);
    for (std::size_t i = 0; i < sheet.plan.part->operations.size(); ++i) {
        const job::Operation& operation = sheet.plan.part->operations[i];
        const auto* cut = std::get_if<job::Cut>(&operation);
        const auto* saddle = std::get_if<job::Saddle>(&operation);
        if (cut == nullptr && saddle == nullptr)
            continue;
        Spot at{ends.finish + half, frame.low + middle};
        if (cut != nullptr && cut->side == job::CutSide::width)
            at = {sheet.length * 0.75, frame.low + frame.width - half};
        sheet.draft.balloon(at, half, static_cast<int>(i));
    }
}

void draw_face(Sheet& sheet, const Frame& frame, bool named) {
    Drafter& draft = sheet.draft;
    FaceOutline outline = face_outline(sheet.plan, frame.face, sheet.length);
    // Figures first: nothing else may take their places.
    const std::vector<Figure> along = values_of(sheet, frame, outline, true);
    const std::vector<Figure> across = values_of(sheet, frame, outline, false);
    const auto lift = [&](std::vector<Spot>& spots) {
        for (Spot& spot : spots)
            spot.y += frame.low;
    };
    lift(outline.outline);
    draft.shape(outline.outline, Fill::steel, Pen::outline);
    for (NotchEdges& notch : outline.notches) {
        lift(notch.edges);
        draft.path(notch.edges, Pen::outline, notch.operation);
    }
    const double top = frame.low + frame.width;
    draft.path({{0.0, top}, {0.0, frame.low}, {sheet.length, frame.low}}, Pen::datum);
    draw_figures_along(sheet, frame, along);
    draw_figures_across(sheet, frame, across);
    if (named)
        draft.label({0.0, top + draft.points(7)},
                    std::string(section::face_word(frame.face)),
                    Anchor::start,
                    true);
    draw_holes(draft, sheet.plan, frame.face, frame.low);
    draw_bends(sheet, frame);
    number_holes(sheet, frame);
    for (const NotchEdges& notch : outline.notches) {
        const Spot a = notch.edges.front();
        const Spot b = notch.edges.back();
        draft.balloon({(a.x + b.x) / 2.0, (a.y + b.y) / 2.0}, draft.points(2), notch.operation);
    }
}

/// In as many lines as the picture is narrow: one long line would make all the rest small.
void note_dropped(Sheet& sheet, double below) {
    const double room = sheet.draft.points(sheet.wide);
    std::string line;
    const auto put = [&] {
        sheet.draft.label({0.0, below}, line, Anchor::start);
        below -= sheet.draft.points(12.0);
        line.clear();
    };
    for (const char* word :
         {"Figures", "without", "room", "here", "are", "in", "the", "running", "list."}) {
        const std::string longer = line.empty() ? word : line + " " + word;
        if (!line.empty() && sheet.draft.text_width(longer) > room) {
            put();
            line = word;
        } else {
            line = longer;
        }
    }
    put();
}

/// How the picture is shared out, in points.
struct Shares {
    double wide = 0.0; ///< right of the datum end, with room for numbers
    double high = 0.0; ///< for the faces themselves
};

Shares shares_of(const plan::PartPlan& plan,
                 const std::vector<Frame>& frames,
                 double length,
                 PrintStyle style,
                 PictureBox box) {
    const bool bends = std::any_of(plan.marks.begin(), plan.marks.end(), [](const plan::Mark& m) {
        return m.kind == plan::Mark::Kind::bend_line;
    });
    const Sheet measure{plan, style, length, Drafter(1.0)};
    double rows = 0.0;
    double left = 0.0;
    for (const Frame& frame : frames) {
        rows += k_row_below_points + (bends ? k_bend_row_points : k_row_above_points) +
                (frames.size() > 1 ? k_name_row_points : 0.0);
        const FaceOutline outline = face_outline(plan, frame.face, length);
        for (const Figure& figure : values_of(measure, frame, outline, false))
            left = std::max(left, measure.draft.text_width(across_text(figure.at, frame, style)));
    }
    return {std::max(3.0 * k_right_points, box.width_mm * k_points_per_mm - left - 22.0),
            std::max(24.0, box.height_mm * k_points_per_mm - rows)};
}

} // namespace

Drawing draw_flat(const plan::PartPlan& plan, PrintStyle style, PictureBox box) {
    return draw_flat_near(plan, style, box, std::numeric_limits<double>::infinity());
}

Drawing
draw_flat_near(const plan::PartPlan& plan, PrintStyle style, PictureBox box, double mm_per_point) {
    const double length = blank_length_mm(plan);
    std::vector<Frame> frames;
    for (const section::Face face : faces_shown(*plan.part))
        frames.push_back({face, 0.0, face_width_mm(plan, face)});
    const bool drawable =
        length > 0.0 && std::all_of(frames.begin(), frames.end(), [](const Frame& frame) {
            return frame.width > 0.0;
        });
    if (!drawable)
        return no_drawing(plan);
    double widths = 0.0;
    for (const Frame& frame : frames)
        widths += frame.width;
    const Shares shares = shares_of(plan, frames, length, style, box);
    // Millimetres of the part for one point of the picture, so that all of it finds room.
    const double whole =
        std::max(length / (shares.wide - 2.0 * k_right_points), widths / shares.high);
    Sheet sheet{plan, style, length, Drafter(std::min(whole, mm_per_point)), shares.wide};
    const bool named = frames.size() > 1 || frames.front().face != section::Face::flat;
    double low = 0.0;
    for (std::size_t i = 0; i < frames.size(); ++i) {
        if (i > 0)
            low -= frames[i].width +
                   whole * (k_row_below_points + k_row_above_points + k_name_row_points);
        frames[i].low = low;
        draw_face(sheet, frames[i], named);
    }
    std::vector<FacePlace> places;
    for (const Frame& frame : frames)
        places.push_back({frame.face, to_point({0.0, frame.low}), millimetres(frame.width)});
    number_ends(sheet, frames.front());
    if (sheet.dropped > 0)
        note_dropped(sheet, low - sheet.draft.points(k_row_below_points + 8.0));
    Drawing drawing = sheet.draft.finish("Flat view of " + plan.part->mark + ", " +
                                         plan::part_title(*plan.part, style) +
                                         ", with running dimensions from the datum corner.");
    drawing.faces = std::move(places);
    return drawing;
}

} // namespace treadle::sheet
