// One operation of a flat view by itself.

#include "sheet/outline.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

void draw_end(Drafter& draft, const plan::PartPlan& plan, bool slit, const FacePlace& face) {
    const double low = to_millimetres(face.datum.y);
    const double length = blank_length_mm(plan);
    const double width = face_width_mm(plan, face.face);
    if (slit)
        draft.path({{0.0, low + width}, {length, low + width}}, Pen::highlight);
    else
        draft.path({{ends_at(plan, face.face, length, 0.0).finish, low},
                    {ends_at(plan, face.face, length, width).finish, low + width}},
                   Pen::highlight);
}

} // namespace

Drawing draw_alone(const plan::PartPlan& plan, int operation, const std::vector<FacePlace>& on) {
    Drafter draft(1.0);
    const job::Operation& is = plan.part->operations[static_cast<std::size_t>(operation)];
    const auto* cut = std::get_if<job::Cut>(&is);
    for (const FacePlace& face : on) {
        const double low = to_millimetres(face.datum.y);
        draw_holes(draft, plan, face.face, low, operation);
        if (cut != nullptr)
            draw_end(draft, plan, cut->side == job::CutSide::width, face);
        for (const NotchEdges& notch :
             face_outline(plan, face.face, blank_length_mm(plan)).notches) {
            if (notch.operation != operation)
                continue;
            std::vector<Spot> edges = notch.edges;
            for (Spot& spot : edges)
                spot.y += low;
            draft.path(edges, Pen::highlight, operation);
        }
        for (const plan::Mark& mark : plan.marks) {
            if (mark.operation != operation || mark.kind != plan::Mark::Kind::bend_line)
                continue;
            const double x = to_millimetres(mark.x);
            draft.path(
                {{x, low}, {x, low + to_millimetres(face.width)}}, Pen::bend_line, operation);
        }
    }
    return draft.finish("Operation " + std::to_string(operation + 1) + " of " + plan.part->mark);
}

} // namespace treadle::sheet
