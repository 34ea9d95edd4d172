// A branch of pipe on a run, or between two: the saddle tool's where the joint is square and the
// axes meet, else a blank with a paper template for each end.
//
// One end   L = C / sin B - w - f, the other end square            card one-saddle

#include <cmath>

#include "assembly/cards.h"
#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/rule_lines.h"
#include "layout/saddle.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;
using layout::SaddleJoint;

constexpr calc::InputSpec k_inputs[] = {
    {"branch", InputKind::section, true, "the pipe that is saddled", "", "pipe 1.66 x 0.14 in"},
    {"run", InputKind::length, true, "outside diameter of the pipe it sits on", "", "1.9 in"},
    {"second_run", InputKind::length, false, "outside diameter at the other end", "", "1.9 in"},
    {"centres",
     InputKind::length,
     true,
     "axis to axis, square; or axis to the square end",
     "",
     "24 in"},
    {"angle", InputKind::angle, false, "between the axes; square if not given", "", "60 deg"},
    {"offset", InputKind::length, false, "between the axes; they meet if not given", "", "1/16 in"},
    {"lay_out", InputKind::word, false, "edge that the template follows", "outside|bore"},
    {"fit_up",
     InputKind::length,
     false,
     "gap left at each saddle; none if not given",
     "",
     "1/32 in"},
    {"die",
     InputKind::length,
     false,
     "outside diameter that the saddle die at hand is for; the run's own if not given",
     "",
     "1.9 in"},
    {"count", InputKind::count, false, "of branches; 1 if not given", "", "4"},
    {"grade", InputKind::material, true, "of the pipe", "", "A53-B"},
};

constexpr base::CardSymbol k_symbols[] = {
    {"C", "axis of the run to the square end, square to the run"},
    {"B", "angle between the axes"},
    {"w", "cut back at the run"},
    {"f", "gap left at the saddle"},
    {"L", "blank, long point to the square end"}};

struct Branch {
    Section pipe;
    SaddleJoint joint;
    Length second_run; ///< zero: a square end
    Length centres, fit_up;
    Length die; ///< zero: one for each run
    int count = 1;
    std::string grade;
    /// What a tool that saddles square pipe on meeting axes can make.
    [[nodiscard]] bool by_tool() const {
        return joint.angle == degrees(90.0) && joint.offset == Length{};
    }
};

Branch read(Inputs& in) {
    Branch b;
    b.pipe = in.section("branch");
    b.joint.branch_od = b.pipe.width;
    b.joint.branch_wall = b.pipe.thickness;
    b.joint.run_od = in.size("run");
    b.second_run = in.size("second_run");
    b.centres = in.size("centres");
    b.joint.angle = in.angle_or("angle", degrees(90.0));
    b.joint.offset = in.place_or("offset", Length{});
    b.joint.edge = in.word<layout::SaddleEdge>("lay_out");
    b.fit_up = in.place_or("fit_up", Length{});
    b.die = in.size("die");
    b.count = in.count_or("count", 1, 10000, 1);
    b.grade = in.grade("grade");
    if (!in.failed() && b.pipe.shape != section::Shape::pipe)
        in.refuse({"branch", "Only pipe is saddled here.", "pipe 1.66 x 0.14 in"});
    return b;
}

/// The name of a layout's input for a formula's.
Refusal renamed(Refusal refusal) {
    if (refusal.field == "branch_od" || refusal.field == "branch_wall")
        refusal.field = "branch";
    if (refusal.field == "run_od")
        refusal.field = "run";
    if (refusal.field == "second_run_od")
        refusal.field = "second_run";
    return refusal;
}

Result<Working> blank_of(const Branch& b) {
    if (b.second_run > Length{})
        return layout::saddle_blank_working({b.joint, b.second_run, b.centres, b.fit_up});
    const auto shape = layout::saddle_shape(b.joint);
    if (!shape.ok())
        return shape.refusal();
    const double sine = b.by_tool() ? 1.0 : std::sin(b.joint.angle.in_radians());
    const Length length = b.centres / sine - shape->cut_back - b.fit_up;
    if (!(length > shape->depth))
        return Refusal{"centres", "The run leaves no room for a branch so short.", ""};
    return Working{
        &k_one_saddle_card,
        {{"C", b.centres}, {"B", b.joint.angle}, {"w", shape->cut_back}, {"f", b.fit_up}},
        {"L", length},
        ""};
}

std::optional<Refusal> add_end(Made& made, job::Part& part, const Branch& b, bool finish) {
    SaddleJoint joint = b.joint;
    if (finish)
        joint.run_od = b.second_run;
    const auto shape = layout::saddle_shape(joint);
    if (!shape.ok())
        return Refusal{finish ? "second_run" : renamed(shape.refusal()).field,
                       shape.refusal().reason,
                       shape.refusal().detail};
    made.workings.push_back(layout::cut_back_working(joint, *shape));
    made.workings.push_back(layout::throat_working(joint, *shape));
    made.figures.push_back(
        {finish ? "throat at the finish" : "throat at the start", shape->throat});
    if (b.by_tool()) {
        part.operations.emplace_back(
            job::Saddle{finish ? job::End::finish : job::End::start, joint.run_od});
        return std::nullopt;
    }
    made.templates.push_back({part.mark, finish ? "finish" : "start", joint});
    return std::nullopt;
}

/// What a die for another run leaves open, at one end.
std::optional<Refusal> hold_die(Made& made, const Branch& b, Length run_od, const char* end) {
    const layout::SaddleDie die{b.die, run_od, b.joint.branch_od};
    const auto gaps = layout::die_mismatch(die);
    if (!gaps.ok())
        return Refusal{"die", gaps.refusal().reason, gaps.refusal().detail};
    const bool at_crown = gaps->crown_gap > Length{};
    const auto working = at_crown ? layout::crown_gap_working(die) : layout::flank_gap_working(die);
    if (working.ok())
        made.workings.push_back(*working);
    hold(made.rules,
         {"saddle-die-gap",
          inches(1.0 / 16.0),
          true,
          false,
          "common-practice-layout",
          base::Evidence::common_practice,
          "Over it: another die, or hand work."},
         std::string(at_crown ? "gap at the crown, " : "gap at the flanks, ") + end,
         at_crown ? gaps->crown_gap : gaps->flank_gap);
    return std::nullopt;
}

void draw(Made& made, const Branch& b, Length length) {
    Elevation& out = made.elevation;
    const Length run = b.joint.run_od;
    const double cosine = b.by_tool() ? 0.0 : std::cos(b.joint.angle.in_radians());
    const double sine = b.by_tool() ? 1.0 : std::sin(b.joint.angle.in_radians());
    const Length half = b.joint.branch_od / 2.0;
    const Length reach = std::max(run * 2.0, length * 0.25);
    const Length along = b.centres / sine;
    const auto at = [&](Length axis, Length side) {
        return Spot{axis * cosine - side * sine, axis * sine + side * cosine};
    };
    out.outlines.push_back(
        {{at({}, half), at(along, half), at(along, -half), at({}, -half)}, Shade::bar, ""});
    out.outlines.push_back(box({-reach, -(run / 2.0)}, reach * 2.0, run));
    if (b.second_run > Length{})
        out.outlines.push_back(box(
            {along * cosine - reach, b.centres - b.second_run / 2.0}, reach * 2.0, b.second_run));
    out.spans = {
        {{reach, {}}, {reach, b.centres}, b.second_run > Length{} ? "axes" : "to the end"}};
    out.description = "Branch of pipe on its run.";
}

Result<Made> make_branch(Inputs& in, const std::string& mark) {
    const Branch b = read(in);
    if (in.failed())
        return in.refusal();
    const auto blank = blank_of(b);
    if (!blank.ok())
        return renamed(blank.refusal());
    const Length length = std::get<Length>(blank->result.value);
    Made made;
    const Piece piece{"branch", "B", "pipe branch"};
    job::Part part = straight_part(piece, mark, b.grade, b.pipe, length, b.count);
    cut_ends(part);
    add_note(part,
             b.second_run > Length{} ? "long point to long point" : "long point to the square end");
    if (auto fault = add_end(made, part, b, false))
        return *fault;
    if (b.second_run > Length{})
        if (auto fault = add_end(made, part, b, true))
            return *fault;
    if (b.die > Length{} && !b.by_tool())
        made.cautions.emplace_back("The die is not used: none saddles pipe at an angle or off "
                                   "centre.");
    else if (b.die > Length{}) {
        auto fault = hold_die(made, b, b.joint.run_od, "start");
        if (!fault && b.second_run > Length{})
            fault = hold_die(made, b, b.second_run, "finish");
        if (fault)
            return *fault;
    }
    if (!b.by_tool()) {
        add_note(part,
                 "angled or offset: no saddle tool makes this end; cut by its paper template");
        made.cautions.emplace_back("Scribe one line along the pipe: the second template is turned "
                                   "by 180 degrees from it.");
    }
    add(made, piece, std::move(part));
    made.workings.insert(made.workings.begin(), *blank);
    if (b.second_run > Length{} && b.joint.offset == Length{})
        if (const auto throats =
                layout::throat_to_throat_working({b.joint, b.second_run, b.centres, b.fit_up});
            throats.ok()) {
            made.workings.push_back(*throats);
            made.figures.push_back({"crown to crown", std::get<Length>(throats->result.value)});
        }
    made.cautions.emplace_back("Try one end on the run before the others are cut; a die's radius "
                               "is half the run's outside.");
    draw(made, b, length);
    return made;
}

} // namespace

const base::FormulaCard k_one_saddle_card{"one-saddle",
                                          "Branch from a run to a square end",
                                          "L = C / sin B - w - f",
                                          k_symbols,
                                          "the far end cut square to the branch",
                                          "derived-geometry",
                                          base::Evidence::derived,
                                          ""};

const Kind k_pipe_branch{"pipe-branch",
                         "Pipe on pipe",
                         "A branch saddled on one run or between two; square, angled or offset.",
                         k_inputs,
                         make_branch};

} // namespace treadle::assembly
