#include <cmath>
#include <string>

#include "layout/cards.h"
#include "layout/first_fault.h"
#include "layout/saddle.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::place_fault;
using quantity::size_fault;

constexpr base::CardSymbol k_blank_symbols[] = {{"C", "between the runs' axes, square to them"},
                                                {"B", "angle between the axes"},
                                                {"w1", "cut back at the first run"},
                                                {"w2", "cut back at the second run"},
                                                {"f", "gap left at each end"},
                                                {"L", "blank, long point to long point"}};
constexpr base::CardSymbol k_throat_symbols[] = {{"C", "between the runs' axes, square to them"},
                                                 {"B", "angle between the axes"},
                                                 {"R1", "radius of the first run"},
                                                 {"R2", "radius of the second run"},
                                                 {"f", "gap left at each end"},
                                                 {"L", "crown to crown"}};
constexpr base::CardSymbol k_die_symbols[] = {{"x", "radius of the die"},
                                              {"R", "outside radius of the run"},
                                              {"r", "outside radius of the branch"},
                                              {"d", "gap left"}};

constexpr Length k_much_gap = inches(1.0 / 16.0); // common practice, no source

SaddleJoint second_joint(const SaddleBlank& blank) {
    SaddleJoint joint = blank.joint;
    joint.run_od = blank.second_run_od;
    return joint;
}

double sine(Angle angle) { return angle == degrees(90.0) ? 1.0 : std::sin(angle.in_radians()); }

/// h(x): how deep a branch of radius r sinks into a round of radius x.
Length sunk(Length x, Length r) {
    const Area under = x * x - r * r;
    return x - (under > Area{} ? quantity::square_root(under) : Length{});
}

std::string gap_note(Length gap) {
    if (gap > k_much_gap)
        return "Over 1/16 in (common practice): another die, or hand work.";
    return "";
}

} // namespace

const base::FormulaCard k_saddle_blank_card{"saddle-blank",
                                            "Branch between two parallel runs",
                                            "L = C / sin B - w1 - w2 - 2 f",
                                            k_blank_symbols,
                                            "the second template turned by 180 degrees on a "
                                            "common line along the branch",
                                            "derived-geometry",
                                            Evidence::derived,
                                            ""};
const base::FormulaCard k_saddle_throats_card{"saddle-throats",
                                              "Branch from crown to crown",
                                              "L = (C - R1 - R2) / sin B - 2 f",
                                              k_throat_symbols,
                                              "no offset; along one line of the branch",
                                              "derived-geometry",
                                              Evidence::derived,
                                              ""};
const base::FormulaCard k_saddle_die_card{
    "saddle-die",
    "Gap that a die of another radius leaves",
    "d = |h(x) - h(R)|, h(x) = x - sqrt(x^2 - r^2); at the crown for x < R, else at the flanks",
    k_die_symbols,
    "square joint, no offset, r up to x and R",
    "derived-geometry",
    Evidence::derived,
    ""};

base::Result<Working> saddle_blank_working(const SaddleBlank& blank) {
    const auto first = saddle_shape(blank.joint);
    if (!first.ok())
        return first.refusal();
    const auto second = saddle_shape(second_joint(blank));
    if (!second.ok()) {
        base::Refusal fault = second.refusal();
        fault.field = "second_run_od";
        return fault;
    }
    if (const auto fault = first_fault(
            {size_fault(blank.centres, "centres"), place_fault(blank.fit_up, "fit_up")}))
        return *fault;
    const Length ends = first->cut_back + second->cut_back + 2.0 * blank.fit_up;
    const Length length = blank.centres / sine(blank.joint.angle) - ends;
    const Length between = blank.centres - blank.joint.run_od / 2.0 - blank.second_run_od / 2.0;
    if (!(between > Length{}) || !(length > first->depth + second->depth))
        return base::Refusal{"centres", "The runs leave no room for a branch.", ""};
    return Working{&k_saddle_blank_card,
                   {{"C", blank.centres},
                    {"B", blank.joint.angle},
                    {"w1", first->cut_back},
                    {"w2", second->cut_back},
                    {"f", blank.fit_up}},
                   {"L", length},
                   blank.joint.edge == SaddleEdge::bore ? "Laid out on the bore."
                                                        : "Laid out on the outside."};
}

base::Result<Working> throat_to_throat_working(const SaddleBlank& blank) {
    const auto whole = saddle_blank_working(blank);
    if (!whole.ok())
        return whole.refusal();
    const Length first = blank.joint.run_od / 2.0;
    const Length second = blank.second_run_od / 2.0;
    return Working{
        &k_saddle_throats_card,
        {{"C", blank.centres},
         {"B", blank.joint.angle},
         {"R1", first},
         {"R2", second},
         {"f", blank.fit_up}},
        {"L", (blank.centres - first - second) / sine(blank.joint.angle) - 2.0 * blank.fit_up},
        ""};
}

base::Result<DieMismatch> die_mismatch(const SaddleDie& die) {
    if (const auto fault = first_fault({size_fault(die.die_od, "die_od"),
                                        size_fault(die.run_od, "run_od"),
                                        size_fault(die.branch_od, "branch_od")}))
        return *fault;
    if (clearly_less(die.run_od, die.branch_od))
        return base::Refusal{"branch_od", "The branch is larger than the run.", ""};
    if (clearly_less(die.die_od, die.branch_od))
        return base::Refusal{"die_od", "A die smaller than the branch cuts no saddle at once.", ""};
    const Length r = die.branch_od / 2.0;
    const Length more = sunk(die.die_od / 2.0, r) - sunk(die.run_od / 2.0, r);
    return die.die_od < die.run_od ? DieMismatch{more, Length{}} : DieMismatch{Length{}, -more};
}

base::Result<Working> crown_gap_working(const SaddleDie& die) {
    const auto gaps = die_mismatch(die);
    if (!gaps.ok())
        return gaps.refusal();
    return Working{&k_saddle_die_card,
                   {{"x", die.die_od / 2.0}, {"R", die.run_od / 2.0}, {"r", die.branch_od / 2.0}},
                   {"d", gaps->crown_gap},
                   "At the crown. " + gap_note(gaps->crown_gap)};
}

base::Result<Working> flank_gap_working(const SaddleDie& die) {
    const auto gaps = die_mismatch(die);
    if (!gaps.ok())
        return gaps.refusal();
    return Working{&k_saddle_die_card,
                   {{"x", die.die_od / 2.0}, {"R", die.run_od / 2.0}, {"r", die.branch_od / 2.0}},
                   {"d", gaps->flank_gap},
                   "At the flanks. " + gap_note(gaps->flank_gap)};
}

} // namespace treadle::layout
