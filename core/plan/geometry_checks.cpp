#include "base/stable_sort.h"
#include "plan/checks.h"
#include "plan/part_checks.h"

#include <algorithm>
#include <cmath>

namespace treadle::plan {

namespace {

using section::Face;

constexpr Length k_large_hole = inches(1.0);                // rule for hole to bend changes here
constexpr Length k_same_place = quantity::millimetres(0.5); // nobody marks out closer

struct Blank {
    Length length;
    Length width;
};

Length gap_between(Length a_centre, Length a_half, Length b_centre, Length b_half) {
    const Length apart = a_centre > b_centre ? a_centre - b_centre : b_centre - a_centre;
    return apart - a_half - b_half;
}

OperationPlan& operation_of(PartPlan& plan, const PlacedHole& hole) {
    return plan.operations[static_cast<std::size_t>(hole.operation)];
}

void check_edges(PartPlan& plan, const PlacedHole& hole, Blank blank, Length thickness) {
    const Length web =
        smaller(smaller(hole.x - hole.half_along, blank.length - hole.x - hole.half_along),
                smaller(hole.y - hole.half_across, blank.width - hole.y - hole.half_across));
    OperationPlan& operation = operation_of(plan, hole);
    if (web < Length{}) {
        say_once(operation,
                 refused_check(Rule::on_metal,
                               "The hole runs off the metal: a part hole pushes the punch aside."));
        return;
    }
    const Length needed = larger(thickness, smaller(hole.half_along, hole.half_across));
    if (web < needed)
        say_once(operation,
                 web_warning(Rule::edge_web,
                             needed,
                             web,
                             "Little metal to the edge: it bulges and pushes the punch "
                             "sideways."));
}

/// Metal between two holes. Two round ones are measured between their centres, others by the boxes
/// round them, which never promise more than there is.
Length web_between(const PlacedHole& a, const PlacedHole& b) {
    const Length box = larger(gap_between(a.x, a.half_along, b.x, b.half_along),
                              gap_between(a.y, a.half_across, b.y, b.half_across));
    if (!a.round || !b.round)
        return box;
    const Length centres = quantity::millimetres(
        std::hypot(quantity::to_millimetres(a.x - b.x), quantity::to_millimetres(a.y - b.y)));
    return larger(box, centres - a.half_along - b.half_along);
}

bool same_place(const PlacedHole& a, const PlacedHole& b) {
    const auto near = [](Length one, Length other) {
        return one - other <= k_same_place && other - one <= k_same_place;
    };
    return near(a.x, b.x) && near(a.y, b.y) && near(a.half_along, b.half_along) &&
           near(a.half_across, b.half_across);
}

void check_neighbours(PartPlan& plan, const std::vector<PlacedHole>& holes, Length thickness) {
    // Sorted by x: only those that could still touch are looked at.
    Length widest;
    for (const PlacedHole& hole : holes)
        widest = larger(widest, hole.half_along);
    for (std::size_t i = 0; i < holes.size(); ++i) {
        for (std::size_t j = i + 1; j < holes.size(); ++j) {
            const PlacedHole& a = holes[i];
            const PlacedHole& b = holes[j];
            if (b.x - a.x > a.half_along + widest + thickness)
                break;
            if (a.face != b.face)
                continue;
            const Length web = web_between(a, b);
            if (same_place(a, b))
                say_once(operation_of(plan, b),
                         refused_check(Rule::doubled_stroke,
                                       "The same hole is there twice: a second stroke into an "
                                       "open hole breaks the punch. Take one out."));
            else if (web < Length{})
                say_once(operation_of(plan, b),
                         refused_check(Rule::hole_web,
                                       "Two holes overlap: a cut beside an open hole pushes the "
                                       "punch aside and breaks it. Move one, or nibble with a "
                                       "tool that is made for it."));
            else if (web < thickness)
                say_once(operation_of(plan, b),
                         web_warning(Rule::hole_web,
                                     thickness,
                                     web,
                                     "Little metal between holes: it tears or bulges."));
        }
    }
}

void check_bends(const Question& question, PartPlan& plan, const PlacedHole& hole) {
    if (plan.blank.bend_lines.empty())
        return;
    std::size_t number = 0;
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        if (!std::holds_alternative<job::Bend>(question.part.operations[i]))
            continue;
        if (number >= plan.blank.bend_lines.size())
            return;
        const OperationPlan& bend = plan.operations[i];
        const Length line = plan.blank.bend_lines[number++];
        const Length from_line = (hole.x > line ? hole.x - line : line - hole.x) - hole.half_along;
        const bool large = hole.half_along * 2.0 > k_large_hole;
        const bool along_bend = hole.half_across > hole.half_along;
        // Past the die shoulder, and past the curve by 2.5 t (3 t for large holes, 4 t for slots
        // along the bend): the printed rules disagree from 1.5 t to 4 t; this is the careful
        // middle, common practice, no source.
        const Length past_curve =
            bend.figures.allowance * 0.5 + plan.operations[i].bend.thickness * (along_bend ? 4.0
                                                                                : large    ? 3.0
                                                                                           : 2.5);
        const Length needed = larger(bend.tools.opening * 0.5, past_curve);
        if (from_line < needed)
            say_once(operation_of(plan, hole),
                     web_warning(Rule::hole_to_bend,
                                 needed,
                                 larger(from_line, Length{}),
                                 "Close to a bend: the hole is pulled oval. Punch it after "
                                 "bending, or move it."));
    }
}

Length mouth_of(const job::Notch& notch) {
    return notch.shape == geometry::NotchShape::vee
               ? notch.depth * (2.0 * std::tan(notch.included.in_radians() / 2.0))
               : notch.along;
}

/// Extent of a notch along the blank, for notches on the long edges and corners.
std::optional<std::pair<Length, Length>> notch_span(const job::Notch& notch, Length blank) {
    const Length mouth = mouth_of(notch);
    switch (notch.edge) {
    case job::NotchEdge::near_edge:
    case job::NotchEdge::far_edge:
        return std::pair{notch.at - mouth * 0.5, notch.at + mouth * 0.5};
    case job::NotchEdge::start_near:
    case job::NotchEdge::start_far:
        return std::pair{Length{}, mouth};
    case job::NotchEdge::finish_near:
    case job::NotchEdge::finish_far:
        return std::pair{blank - mouth, blank};
    case job::NotchEdge::start_end:
        return std::pair{Length{}, notch.depth};
    case job::NotchEdge::finish_end:
        return std::pair{blank - notch.depth, blank};
    }
    return std::nullopt;
}

void check_notch_at_bends(const Question& question,
                          const PartPlan& plan,
                          OperationPlan& notch,
                          const std::pair<Length, Length>& span) {
    std::size_t number = 0;
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        if (!std::holds_alternative<job::Bend>(question.part.operations[i]))
            continue;
        if (number >= plan.blank.bend_lines.size())
            return;
        const Length line = plan.blank.bend_lines[number++];
        const Length shoulder = plan.operations[i].tools.opening * 0.5;
        if (line > span.first && line < span.second)
            say_once(notch,
                     warning_check(Rule::notch_at_bend,
                                   "The notch lies across a bend line: the bend tears or wanders "
                                   "there unless it is meant as relief."));
        else if (line + shoulder > span.first && line - shoulder < span.second)
            say_once(notch,
                     warning_check(Rule::notch_at_bend,
                                   "The notch lies over the V of a bend: its edge is pulled out of "
                                   "shape. Cut it after bending, or move it."));
    }
}

void check_notches(const Question& question, PartPlan& plan, Blank blank) {
    for (std::size_t i = 0; i < question.part.operations.size(); ++i) {
        const auto* notch = std::get_if<job::Notch>(&question.part.operations[i]);
        if (notch == nullptr)
            continue;
        const auto span = notch_span(*notch, blank.length);
        OperationPlan& operation = plan.operations[i];
        plan.marks.push_back({Mark::Kind::notch,
                              static_cast<int>(i),
                              notch->face,
                              (span->first + span->second) * 0.5,
                              Length{}});
        const bool at_end =
            notch->edge == job::NotchEdge::start_end || notch->edge == job::NotchEdge::finish_end;
        const Length width = section::width_of(question.part.section, notch->face);
        const Length across = at_end ? blank.length : width;
        const Length slack = inches(0.001);
        const Length half = mouth_of(*notch) * 0.5;
        const bool beside =
            at_end && (notch->at - half < -slack || notch->at + half > width + slack);
        if (span->first < -slack || span->second > blank.length + slack || notch->depth >= across ||
            beside)
            operation.checks.push_back(
                refused_check(Rule::on_metal, "The notch is larger than the metal there."));
        check_notch_at_bends(question, plan, operation, *span);
    }
}

} // namespace

void say_once(OperationPlan& operation, Check check) {
    for (Check& known : operation.checks)
        if (known.rule == check.rule && known.warning == check.warning) {
            if (check.margin < known.margin)
                known = std::move(check);
            return;
        }
    operation.checks.push_back(std::move(check));
}

Check web_warning(Rule rule, Length needed, Length web, const char* said) {
    Check check = size_check(rule, needed, web);
    check.outcome = Outcome::does_not_fit;
    check.warning = true;
    check.said = said;
    return check;
}

std::vector<PlacedHole> placed_holes(const job::Part& part, const process::Blank& blank) {
    std::vector<PlacedHole> holes;
    for (std::size_t i = 0; i < part.operations.size(); ++i) {
        const auto* punch = std::get_if<job::Punch>(&part.operations[i]);
        if (punch == nullptr)
            continue;
        const auto half = geometry::half_extent(punch->hole, punch->turned);
        const auto leg = static_cast<std::size_t>(std::max(punch->leg, 0));
        const Length origin = leg < blank.leg_origins.size() ? blank.leg_origins[leg] : Length{};
        for (const job::HoleCentre& centre : job::centres(punch->at))
            holes.push_back({static_cast<int>(i),
                             punch->face,
                             punch->leg,
                             origin + centre.x,
                             centre.y,
                             half.along,
                             half.across,
                             punch->hole.shape == geometry::HoleShape::round});
    }
    return holes;
}

void check_layout(const Question& question, PartPlan& plan) {
    std::vector<PlacedHole> holes = placed_holes(question.part, plan.blank);
    for (const PlacedHole& hole : holes) {
        const Length thickness = section::thickness_at(question.part.section, hole.face);
        const Blank blank{plan.blank_exact, section::width_of(question.part.section, hole.face)};
        check_edges(plan, hole, blank, thickness);
        check_bends(question, plan, hole);
        plan.marks.push_back({Mark::Kind::hole, hole.operation, hole.face, hole.x, hole.y});
    }
    check_cut_webs(question, plan, holes);
    base::stable_sort(holes, [](const PlacedHole& a, const PlacedHole& b) { return a.x < b.x; });
    check_neighbours(plan, holes, question.metal.thickness);
    check_notches(question, plan, {plan.blank_exact, question.part.section.width});
    std::size_t number = 0;
    for (std::size_t i = 0; i < question.part.operations.size(); ++i)
        if (std::holds_alternative<job::Bend>(question.part.operations[i]) &&
            number < plan.blank.bend_lines.size())
            plan.marks.push_back({Mark::Kind::bend_line,
                                  static_cast<int>(i),
                                  Face::flat,
                                  plan.blank.bend_lines[number++],
                                  Length{}});
    base::stable_sort(plan.marks, [](const Mark& a, const Mark& b) {
        return a.x < b.x || (a.x == b.x && a.y < b.y);
    });
    check_doubled(question, plan);
    check_resting(question, plan);
    check_strokes(question, plan);
}

} // namespace treadle::plan
