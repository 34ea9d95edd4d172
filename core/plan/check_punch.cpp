#include "plan/checks.h"
#include "process/die_clearance.h"
#include "process/punch.h"

#include <cmath>

namespace treadle::plan {

namespace {

using equipment::Holder;
using equipment::Station;
using equipment::StationKind;
using geometry::HoleOutline;
using geometry::HoleShape;
using section::Shape;

constexpr Length k_same_size = quantity::millimetres(0.005); // sizes that print alike are alike

bool same_length(Length a, Length b) { return a - b <= k_same_size && b - a <= k_same_size; }
bool same_hole(const HoleOutline& a, const HoleOutline& b) {
    const bool two = a.shape == HoleShape::rectangle || a.shape == HoleShape::obround;
    return a.shape == b.shape && same_length(a.size, b.size) &&
           (!two || same_length(a.size2, b.size2));
}
HoleOutline grown(HoleOutline hole, Length by) {
    hole.size += by;
    if (hole.shape == HoleShape::rectangle || hole.shape == HoleShape::obround)
        hole.size2 += by;
    return hole;
}

/// The smallest holder that takes the punch; a shaped punch only goes into a keyed one.
void choose_holder(OperationPlan& plan,
                   const Station& station,
                   int index,
                   const HoleOutline& hole) {
    if (station.holders.empty()) {
        plan.checks.push_back(missing_check(Rule::holder, station_path(index, "holders")));
        return;
    }
    const Length across = geometry::circumscribed(hole);
    const bool shaped = hole.shape != HoleShape::round;
    Length largest;
    bool largest_keyed = false;
    for (std::size_t i = 0; i < station.holders.size(); ++i) {
        const Holder& holder = station.holders[i];
        largest = larger(largest, holder.largest_punch);
        if (holder.largest_punch < across)
            continue;
        largest_keyed = largest_keyed || holder.keyed;
        if (shaped && !holder.keyed)
            continue;
        const auto chosen = static_cast<std::size_t>(std::max(plan.tools.holder, 0));
        if (plan.tools.holder == k_none ||
            holder.largest_punch < station.holders[chosen].largest_punch)
            plan.tools.holder = static_cast<int>(i);
    }
    const Length offer =
        plan.tools.holder == k_none
            ? largest
            : station.holders[static_cast<std::size_t>(plan.tools.holder)].largest_punch;
    plan.checks.push_back(size_check(Rule::holder, across, offer));
    if (plan.tools.holder == k_none)
        plan.needs.push_back({Need::Kind::holder, hole, across, {}});
    if (shaped && across <= largest && !largest_keyed)
        plan.checks.push_back(refused_check(
            Rule::alignment, "A shaped punch needs a keyed holder, or it turns and hits the die."));
}

/// Die nearest to the recommended clearance, inside the flagged range.
int choose_die(const equipment::Crib& crib,
               const HoleOutline& hole,
               Length thickness,
               Length recommended) {
    int chosen = k_none;
    Length off;
    for (std::size_t i = 0; i < crib.dies.size(); ++i) {
        const HoleOutline& die = crib.dies[i].hole;
        if (die.shape != hole.shape || crib.dies[i].count < 1)
            continue;
        const auto pair = process::clearance_of_pair(hole.size, die.size, thickness);
        if (!pair || !same_hole(die, grown(hole, pair->total)))
            continue;
        const bool wide_enough = pair->total >= recommended * 0.75 - k_same_size;
        const bool near = wide_enough && pair->total <= recommended * 1.25 + k_same_size;
        const bool usual = wide_enough && pair->share >= process::k_least_clearance_share &&
                           pair->share <= process::k_most_clearance_share;
        if (!near && !usual)
            continue;
        const Length apart =
            pair->total > recommended ? pair->total - recommended : recommended - pair->total;
        if (chosen == k_none || apart < off) {
            chosen = static_cast<int>(i);
            off = apart;
        }
    }
    return chosen;
}

void choose_tools(OperationPlan& plan,
                  const Question& question,
                  const HoleOutline& hole,
                  Length thickness) {
    const equipment::Crib& crib = question.shop.crib;
    plan.tools.punch_size = hole;
    for (std::size_t i = 0; i < crib.punches.size() && plan.tools.punch == k_none; ++i)
        if (crib.punches[i].count > 0 && same_hole(crib.punches[i].hole, hole))
            plan.tools.punch = static_cast<int>(i);
    const auto clearance = process::die_clearance(thickness, question.metal.grade);
    if (!clearance) {
        plan.checks.push_back(refused_check(Rule::tool_in_crib, clearance.refusal().reason));
        return;
    }
    plan.tools.die = choose_die(crib, hole, thickness, clearance->total);
    plan.tools.die_size = plan.tools.die == k_none
                              ? grown(hole, clearance->total)
                              : crib.dies[static_cast<std::size_t>(plan.tools.die)].hole;
    const bool no_punch = plan.tools.punch == k_none;
    const bool no_die = plan.tools.die == k_none;
    if (no_punch)
        plan.needs.push_back({Need::Kind::punch, hole, {}, {}});
    if (no_die)
        plan.needs.push_back({Need::Kind::die, plan.tools.die_size, {}, {}});
    if (no_punch || no_die)
        plan.checks.push_back(warning_check(Rule::tool_in_crib,
                                            no_punch && no_die
                                                ? "Neither punch nor die is in the crib."
                                            : no_punch ? "The punch is not in the crib."
                                                       : "The die is not in the crib."));
}

/// How far the station must reach: some edge of the face has to come within the throat.
Length reach_needed(const job::Part& part, const job::Punch& punch) {
    const Length width = section::width_of(part.section, punch.face);
    const bool open_heel = part.section.shape == Shape::flat || part.section.shape == Shape::plate;
    Length length = part.length;
    for (const Length leg : part.legs)
        length += leg;
    Length most;
    for (const job::HoleCentre& centre : job::centres(punch.at)) {
        Length least = width - centre.y;
        if (open_heel)
            least = smaller(least, centre.y);
        if (part.legs.empty()) // a bent leg standing in the way spoils the ends
            least = smaller(least, smaller(centre.x, length - centre.x));
        most = larger(most, least);
    }
    return most;
}

/// Height that stands up beside the punch: the other leg of an angle, a channel's flange or depth.
Length standing_height(const Section& section, section::Face face) {
    switch (section.shape) {
    case Shape::angle:
        return face == section::Face::leg_a ? section.height : section.width;
    case Shape::channel:
        return face == section::Face::web ? section.width : section.height;
    default:
        return Length{};
    }
}

void check_reach(OperationPlan& plan,
                 const Question& question,
                 const job::Punch& punch,
                 const Station& station,
                 int index,
                 Length thickness) {
    const Length gap = question.shop.rules.stripper_gap.value_or(k_default_stripper_gap);
    plan.checks.push_back(
        size_check_or_missing(Rule::throat,
                              reach_needed(question.part, punch) + k_throat_clearance,
                              station.throat,
                              station_path(index, "throat")));
    plan.checks.push_back(size_check_or_missing(Rule::stroke,
                                                thickness + gap + k_die_entry,
                                                station.stroke,
                                                station_path(index, "stroke")));
    const Length standing = standing_height(question.part.section, punch.face);
    if (!(standing > Length{}))
        return;
    plan.checks.push_back(size_check_or_missing(
        Rule::daylight, standing, station.daylight, station_path(index, "daylight")));
    if (!station.flange_clearance) {
        plan.checks.push_back(
            missing_check(Rule::flange_clearance, station_path(index, "flange_clearance")));
        return;
    }
    // From the heel: metal and fillet of the standing leg, then the room the tool body needs.
    const Section& section = question.part.section;
    const Length metal = standing_metal(section, punch.face);
    Length nearest = section::width_of(section, punch.face);
    for (const job::HoleCentre& centre : job::centres(punch.at)) {
        nearest = smaller(nearest, centre.y);
        if (stands_at_both(section, punch.face))
            nearest = smaller(nearest, section::width_of(section, punch.face) - centre.y);
    }
    plan.checks.push_back(
        size_check(Rule::flange_clearance, metal + *station.flange_clearance, nearest));
}

OperationPlan on_station(
    const Question& question, const job::Punch& punch, int index, Force at_high, Length thickness) {
    const Station& station = question.shop.machine.stations[static_cast<std::size_t>(index)];
    OperationPlan plan;
    plan.checks.reserve(k_usual_checks);
    plan.tools.station = index;
    plan.strokes = job::hole_count(punch.at);
    plan.checks.push_back(force_check_or_missing(
        question.metal, at_high, station.force, station_path(index, "force")));
    plan.checks.push_back(
        size_check(Rule::hole_thickness, thickness, geometry::least_width(punch.hole)));
    choose_holder(plan, station, index, punch.hole);
    check_reach(plan, question, punch, station, index, thickness);
    choose_tools(plan, question, punch.hole, thickness);
    decide(plan, question.shop.rules.least_margin);
    return plan;
}

} // namespace

OperationPlan plan_punch(const Question& question, const job::Punch& punch) {
    const Length thickness = section::thickness_at(question.part.section, punch.face);
    if (!(thickness > Length{}))
        return refused_plan(Rule::no_station, "This shape has no flat face to punch there.");
    const Shape shape = question.part.section.shape;
    if (shape == Shape::pipe || shape == Shape::square_tube)
        return refused_plan(Rule::no_station,
                            "A tube wall gives way under a punch: drill it, or use tooling with a "
                            "die inside the tube.");
    const Stress strength = material::shear_strength(*question.metal.grade, question.metal.high);
    const process::PunchCut cut{punch.hole, thickness, strength};
    const auto force = process::punch_force(cut);
    if (!force)
        return refused_plan(Rule::force, force.refusal().reason);
    std::optional<OperationPlan> best;
    const auto& stations = question.shop.machine.stations;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        if (stations[i].kind != StationKind::punch)
            continue;
        OperationPlan plan = on_station(question, punch, static_cast<int>(i), *force, thickness);
        if (!best || better(plan, *best))
            best = std::move(plan);
    }
    if (!best)
        return refused_plan(Rule::no_station, "This machine has no punch station.");
    const auto smallest =
        process::smallest_hole({thickness, strength, process::k_punch_stress_limit});
    if (smallest && geometry::least_width(punch.hole) < *smallest)
        best->checks.push_back(warning_check(
            Rule::punch_stress,
            "Small hole for this metal: the punch is loaded above the cautious limit."));
    return std::move(*best);
}

} // namespace treadle::plan
