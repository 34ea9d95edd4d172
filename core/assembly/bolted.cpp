#include "assembly/bolted.h"

#include "assembly/rule_lines.h"
#include "layout/spacing.h"

namespace treadle::assembly {

BoltChoice read_bolt(Inputs& in, bool has_edge) {
    BoltChoice choice;
    const auto bolt = in.bolt("bolt");
    if (!bolt)
        return choice;
    choice.bolt = *bolt;
    if (has_edge)
        choice.edge = in.word<layout::EdgeKind>("edge");
    const auto hole = layout::bolt_hole(choice.bolt, layout::HoleKind::standard);
    if (hole.ok())
        choice.hole = *hole;
    else
        in.refuse_at("bolt", hole.refusal());
    return choice;
}

void hold_edge(Made& made, const BoltChoice& choice, const std::string& words, Length distance) {
    layout::EdgeQuestion question;
    question.bolt = choice.bolt;
    question.hole = choice.hole.width;
    question.edge = choice.edge;
    if (const auto working = layout::least_edge_working(question); working.ok()) {
        hold(made.rules, *working, words, distance);
        made.workings.push_back(*working);
    }
}

void hold_edge_greatest(Made& made,
                        const BoltChoice& choice,
                        Length thickness,
                        const std::string& words,
                        Length distance) {
    if (const auto working = layout::greatest_edge_working(thickness, choice.bolt.system);
        working.ok()) {
        hold(made.rules, *working, words, distance, true);
        made.workings.push_back(*working);
    }
}

void hold_spacing(Made& made, const BoltChoice& choice, const std::string& words, Length spacing) {
    if (const auto working = layout::least_spacing_working(choice.bolt, choice.hole.width);
        working.ok()) {
        hold(made.rules, *working, words, spacing);
        made.workings.push_back(*working);
    }
}

void show_hole(Made& made, const BoltChoice& choice) {
    made.figures.push_back({"hole", choice.hole.width});
    if (const auto working = layout::bolt_hole_working(choice.bolt, layout::HoleKind::standard);
        working.ok())
        made.workings.push_back(*working);
}

job::Punch round_holes(const BoltChoice& choice, const job::HolePattern& at) {
    job::Punch punch;
    punch.hole = {geometry::HoleShape::round, choice.hole.width, {}};
    punch.at = at;
    return punch;
}

} // namespace treadle::assembly
