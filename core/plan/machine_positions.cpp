#include "plan/machine_positions.h"

#include <utility>

namespace treadle::plan {

namespace {

using Kind = SetFigure::Kind;

SetFigure along(Length value) { return {Kind::stop, "along", "from the heavy end", value}; }
SetFigure across(Length value) { return {Kind::stop, "across", "from the heavy edge", value}; }

/// Hole after hole; the first and the last are measured, as the plan has it for a first piece.
std::vector<Position> holes(const PartPlan& part, int operation) {
    std::vector<Position> list;
    for (const Mark& mark : part.marks)
        if (mark.kind == Mark::Kind::hole && mark.operation == operation)
            list.push_back({{along(mark.x), across(mark.y)}, {}, mark.face, 1});
    if (list.empty())
        return list;
    std::vector<Measure> measures = first_piece(part, operation);
    constexpr std::size_t k_of_the_last = 2; // along and across
    if (list.size() > 1 && measures.size() > k_of_the_last) {
        const auto from = measures.end() - static_cast<std::ptrdiff_t>(k_of_the_last);
        list.back().measures.assign(from, measures.end());
        measures.erase(from, measures.end());
    }
    list.front().measures = std::move(measures);
    return list;
}

std::vector<Position> cuts(const PartPlan& part, int operation, const job::Cut& cut) {
    const std::vector<Measure> measures = first_piece(part, operation);
    if (cut.side == job::CutSide::width)
        return {
            {{{Kind::stock, "width", "from the heavy edge", part.blank_width}}, measures, {}, 1}};
    const SetFigure length{Kind::stop, "length", "from the heavy end", part.blank_length};
    const auto from_square = [](Angle angle) {
        return SetFigure{Kind::stop, "angle", "from square", angle};
    };
    if (part.operations[static_cast<std::size_t>(operation)].strokes < 2)
        return {{{length}, measures, {}, 1}};
    return {{{from_square(cut.start_mitre)}, {}, {}, 1},
            {{length, from_square(cut.finish_mitre)}, measures, {}, 1}};
}

/// Corner notches by their own sides, edge notches by the middle of their mouth.
std::vector<SetFigure> notch_figures(const job::Notch& notch) {
    switch (notch.edge) {
    case job::NotchEdge::near_edge:
    case job::NotchEdge::far_edge:
        return {{Kind::stop, "middle along", "from the heavy end", notch.at},
                {Kind::stop, "deep", "from the edge that is cut", notch.depth}};
    case job::NotchEdge::start_end:
    case job::NotchEdge::finish_end:
        return {{Kind::stop, "middle across", "from the heavy edge", notch.at},
                {Kind::stop, "deep", "from the end that is cut", notch.depth}};
    default:
        return {{Kind::stop, "along", "from the end that is cut", notch.along},
                {Kind::stop, "deep", "from the edge that is cut", notch.depth}};
    }
}

std::vector<SetFigure> bend_figures(const PartPlan& part, int operation) {
    std::vector<SetFigure> figures;
    if (part.bends)
        for (const BendStep& step : part.bends->steps)
            if (step.bend == operation)
                figures.push_back(
                    {Kind::stop,
                     "stop",
                     step.against == k_none
                         ? std::string(step.start_gauged ? "from the punch line to the heavy end"
                                                         : "from the punch line to the far end")
                         : "from the punch line to the outside of leg " +
                               std::to_string(step.against + 1),
                     step.stop});
    if (figures.empty()) // no order is planned: the line itself is marked out
        for (const Mark& mark : part.marks)
            if (mark.kind == Mark::Kind::bend_line && mark.operation == operation)
                figures.push_back({Kind::stop, "bend line", "from the heavy end", mark.x});
    const Length travel = part.operations[static_cast<std::size_t>(operation)].travel;
    if (travel > Length{})
        figures.push_back({Kind::stop, "ram down", "from touching the sheet", travel});
    return figures;
}

std::vector<Position> saddles(const PartPlan& part, int operation, const job::Saddle& saddle) {
    const int strokes = part.operations[static_cast<std::size_t>(operation)].strokes;
    const std::vector<Measure> measures = first_piece(part, operation);
    const auto at = [&](const char* from, int each) {
        return Position{
            {{Kind::stock, "run", from, saddle.run_diameter}}, measures, section::Face::flat, each};
    };
    if (saddle.end == job::End::both)
        return {at("at the heavy end", strokes / 2), at("at the far end", strokes - strokes / 2)};
    return {at(saddle.end == job::End::start ? "at the heavy end" : "at the far end", strokes)};
}

} // namespace

std::vector<Position> positions_of(const PartPlan& part, int operation) {
    const auto index = static_cast<std::size_t>(operation);
    const job::Operation& made = part.part->operations[index];
    if (std::holds_alternative<job::Punch>(made))
        return holes(part, operation);
    if (const auto* cut = std::get_if<job::Cut>(&made))
        return cuts(part, operation, *cut);
    if (const auto* saddle = std::get_if<job::Saddle>(&made))
        return saddles(part, operation, *saddle);
    Position one;
    one.measures = first_piece(part, operation);
    one.strokes = part.operations[index].strokes;
    if (const auto* notch = std::get_if<job::Notch>(&made)) {
        one.figures = notch_figures(*notch);
        one.face = notch->face;
    } else {
        one.figures = bend_figures(part, operation);
    }
    return {one};
}

std::vector<SetFigure> ram_figures(const Settings& settings) {
    std::vector<SetFigure> figures;
    if (settings.stroke_up)
        figures.push_back({Kind::ram_up,
                           "ram up",
                           settings.kind == Settings::Kind::punch   ? "over the die"
                           : settings.kind == Settings::Kind::brake ? "over the V"
                                                                    : "over the lower blade",
                           *settings.stroke_up});
    if (settings.stroke_down)
        figures.push_back(
            {Kind::ram_down,
             "ram down",
             settings.kind == Settings::Kind::punch ? "into the die" : "from touching the sheet",
             *settings.stroke_down});
    return figures;
}

} // namespace treadle::plan
