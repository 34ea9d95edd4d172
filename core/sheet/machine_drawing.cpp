#include "sheet/machine_drawing.h"

#include "plan/words.h"
#include "sheet/outline.h"

#include <algorithm>
#include <optional>

namespace treadle::sheet {

namespace {

using plan::MachineStep;
using quantity::to_millimetres;

/// The picture is laid out so large, in points; a screen gives more.
constexpr double k_wide_points = 480.0;
constexpr double k_high_points = 240.0;
constexpr double k_bar_points = 16.0; ///< of a bar from the edge of the piece
constexpr double k_tick_points = 5.0;

struct Piece {
    const plan::PartPlan& plan;
    const MachineStep& step;
    section::Face face;
    double length;
    double width;
    Drafter draft;
};

section::Face face_of(const plan::PartPlan& plan, const MachineStep& step) {
    const auto shown = faces_shown(*plan.part);
    const bool there = std::find(shown.begin(), shown.end(), step.face) != shown.end();
    return there || shown.empty() ? step.face : shown.front();
}

/// The hole of this step: the operation's marks stand in running order.
std::optional<plan::Mark> mark_of(const plan::PartPlan& plan, const MachineStep& step) {
    int position = 0;
    for (const plan::Mark& mark : plan.marks)
        if (mark.operation == step.operation && mark.kind == plan::Mark::Kind::hole &&
            position++ == step.position)
            return mark;
    return std::nullopt;
}

void bar_along(Piece& piece, double to) {
    Drafter& draft = piece.draft;
    const double y = -draft.points(k_bar_points);
    const double tick = draft.points(k_tick_points);
    draft.path({{0.0, y}, {to, y}}, Pen::outline);
    for (const double x : {0.0, to})
        draft.path({{x, y - tick}, {x, y + tick}}, Pen::outline);
}

void bar_across(Piece& piece, double to) {
    Drafter& draft = piece.draft;
    const double x = piece.length + draft.points(k_bar_points);
    const double tick = draft.points(k_tick_points);
    draft.path({{x, 0.0}, {x, to}}, Pen::outline);
    for (const double y : {0.0, to})
        draft.path({{x - tick, y}, {x + tick, y}}, Pen::outline);
}

void draw_hole(Piece& piece, const job::Punch& punch) {
    const auto mark = mark_of(piece.plan, piece.step);
    if (!mark)
        return;
    const Spot at{to_millimetres(mark->x), to_millimetres(mark->y)};
    bar_along(piece, at.x);
    bar_across(piece, at.y);
    std::vector<Spot> corners = hole_corners(punch.hole, punch.turned);
    for (Spot& corner : corners)
        corner = {corner.x + at.x, corner.y + at.y, corner.bulge};
    if (!corners.empty())
        piece.draft.shape(corners, Fill::paper, Pen::highlight, piece.step.operation);
}

/// Round holes are circles of the drawing, which are drawn over all lines: the one of this step
/// changes its pen, and is large enough to be seen on a long bar.
void make_heavy(Drawing& drawing,
                const plan::PartPlan& plan,
                const MachineStep& step,
                Length least) {
    const auto mark = mark_of(plan, step);
    if (!mark || step.pieces == 0)
        return;
    for (Circle& circle : drawing.circles)
        if (circle.operation == step.operation && circle.centre.x == mark->x &&
            circle.centre.y == mark->y) {
            circle.pen = Pen::highlight;
            circle.radius = larger(circle.radius, least);
        }
}

void draw_end(Piece& piece, bool far) {
    const EndPlaces low = ends_at(piece.plan, piece.face, piece.length, 0.0);
    const EndPlaces high = ends_at(piece.plan, piece.face, piece.length, piece.width);
    piece.draft.path(
        {{far ? low.finish : low.start, 0.0}, {far ? high.finish : high.start, piece.width}},
        Pen::highlight,
        piece.step.operation);
}

void draw_cut(Piece& piece, const job::Cut& cut) {
    if (cut.side == job::CutSide::width) {
        piece.draft.path({{0.0, piece.width}, {piece.length, piece.width}},
                         Pen::highlight,
                         piece.step.operation);
        bar_across(piece, piece.width);
        return;
    }
    const bool far = piece.step.position + 1 == piece.step.positions;
    draw_end(piece, far);
    if (far)
        bar_along(piece, piece.length);
}

void draw_saddle(Piece& piece, const job::Saddle& saddle) {
    const bool far = saddle.end == job::End::finish ||
                     (saddle.end == job::End::both && piece.step.position == 1);
    draw_end(piece, far);
}

void draw_notch(Piece& piece, const FaceOutline& outline, const job::Notch& notch) {
    for (const NotchEdges& edges : outline.notches)
        if (edges.operation == piece.step.operation)
            piece.draft.path(edges.edges, Pen::highlight, piece.step.operation);
    if (notch.edge == job::NotchEdge::near_edge || notch.edge == job::NotchEdge::far_edge)
        bar_along(piece, to_millimetres(notch.at));
    if (notch.edge == job::NotchEdge::start_end || notch.edge == job::NotchEdge::finish_end)
        bar_across(piece, to_millimetres(notch.at));
}

/// Only a step that makes something has a place to be drawn heavy.
void draw_place(Piece& piece, const FaceOutline& outline) {
    if (piece.step.kind != plan::MachineWork::first_piece &&
        piece.step.kind != plan::MachineWork::run)
        return;
    const job::Operation& operation =
        piece.plan.part->operations[static_cast<std::size_t>(piece.step.operation)];
    if (const auto* punch = std::get_if<job::Punch>(&operation))
        draw_hole(piece, *punch);
    else if (const auto* cut = std::get_if<job::Cut>(&operation))
        draw_cut(piece, *cut);
    else if (const auto* notch = std::get_if<job::Notch>(&operation))
        draw_notch(piece, outline, *notch);
    else if (const auto* saddle = std::get_if<job::Saddle>(&operation))
        draw_saddle(piece, *saddle);
    else
        for (const plan::Mark& mark : piece.plan.marks)
            if (mark.kind == plan::Mark::Kind::bend_line &&
                mark.operation == piece.step.operation) {
                const double x = to_millimetres(mark.x);
                piece.draft.path(
                    {{x, 0.0}, {x, piece.width}}, Pen::highlight, piece.step.operation);
            }
}

Drawing draw_lying(const plan::PartPlan& plan, const MachineStep& step) {
    const section::Face face = face_of(plan, step);
    const double length = blank_length_mm(plan);
    const double width = face_width_mm(plan, face);
    if (!(length > 0.0) || !(width > 0.0))
        return no_drawing(plan);
    Piece piece{plan,
                step,
                face,
                length,
                width,
                Drafter(std::max(length / k_wide_points, width / k_high_points))};
    const FaceOutline outline = face_outline(plan, face, length);
    piece.draft.shape(outline.outline, Fill::steel, Pen::outline);
    draw_holes(piece.draft, plan, face, 0.0);
    piece.draft.path({{0.0, width}, {0.0, 0.0}, {length, 0.0}}, Pen::datum);
    draw_place(piece, outline);
    Drawing drawing = piece.draft.finish(
        plan.part->mark + " as it lies: heavy end to the left, heavy edge below" +
        (step.positions > 1 ? ", place " + std::to_string(step.position + 1) + " of " +
                                  std::to_string(step.positions) + " marked"
                            : std::string()) +
        ".");
    make_heavy(drawing, plan, step, millimetres(piece.draft.points(4.0)));
    return drawing;
}

/// The stage after this bend, and a ring round it.
Drawing draw_bent(const plan::PartPlan& plan, const MachineStep& step, std::size_t stage) {
    Drawing drawing = draw_bend_stage(plan, stage);
    std::vector<int> made;
    for (std::size_t i = 0; i <= stage; ++i)
        made.push_back(plan.bends->steps[i].bend);
    const auto profile = bent_profile(plan, made);
    if (!profile)
        return drawing;
    const Length wide = larger(drawing.high.x - drawing.low.x, drawing.high.y - drawing.low.y);
    const auto& bend = plan.operations[static_cast<std::size_t>(step.operation)].bend;
    for (const ProfileBend& one : profile->bends)
        if (one.operation == step.operation)
            drawing.circles.push_back({to_point(one.apex),
                                       larger(wide * 0.06, bend.thickness * 2.0),
                                       Pen::highlight,
                                       Fill::none,
                                       step.operation});
    return drawing;
}

} // namespace

Drawing draw_machine_step(const plan::PartPlan& plan, const MachineStep& step) {
    if (plan.bends && step.kind != plan::MachineWork::mark)
        for (std::size_t i = 0; i < plan.bends->steps.size(); ++i)
            if (plan.bends->steps[i].bend == step.operation)
                return draw_bent(plan, step, i);
    return draw_lying(plan, step);
}

} // namespace treadle::sheet
