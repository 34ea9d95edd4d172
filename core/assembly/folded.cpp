#include "assembly/folded.h"

#include "assembly/pieces.h"

namespace treadle::assembly {

using base::Result;

Result<FoldedMade> add_folded(Made& made, const FoldedBar& asked, const std::string& mark) {
    const process::BlankRule rule{process::BlankMethod::k_factor, asked.k};
    const process::SharpBend bend{asked.bar.thickness, asked.radius, asked.turn};
    const process::BentPart shape{asked.legs,
                                  std::vector<process::SharpBend>(asked.legs.size() - 1, bend)};
    const auto blank = process::blank_length(shape, rule);
    if (!blank.ok())
        return blank.refusal();
    const auto notch = layout::corner_notch(asked.notch());
    if (!notch.ok())
        return notch.refusal();
    const Piece piece{"bar", "B", "frame of one bar"};
    job::Part part = straight_part(piece, mark, asked.grade, asked.bar, blank->length, asked.count);
    cut_ends(part, asked.closing, asked.closing);
    for (const Length at : blank->bend_lines) {
        job::Notch cut;
        cut.shape = geometry::NotchShape::vee;
        cut.edge = job::NotchEdge::far_edge;
        cut.at = at;
        cut.depth = notch->depth;
        cut.included = asked.turn;
        cut.face = section::Face::leg_a;
        part.operations.emplace_back(cut);
    }
    add_note(part,
             "fold the standing leg at the notches; try one corner first. No V die takes an angle");
    add(made, piece, std::move(part));
    for (const auto& working : {layout::notch_depth_working(asked.notch()),
                                layout::notch_width_working(asked.notch()),
                                process::deduction_working(bend, rule),
                                process::blank_working(shape, rule)})
        if (working.ok())
            made.workings.push_back(*working);
    return FoldedMade{blank->bend_lines, *notch};
}

base::Refusal renamed_for_frame(base::Refusal refusal, const char* side) {
    if (refusal.field == "leg" || refusal.field == "thickness")
        refusal.field = "bar";
    if (refusal.field.rfind("bends", 0) == 0)
        refusal.field = "radius";
    if (refusal.field.rfind("legs", 0) == 0)
        refusal.field = side;
    return refusal;
}

} // namespace treadle::assembly
