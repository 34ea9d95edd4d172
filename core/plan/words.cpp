#include "plan/words.h"

#include "base/text.h"

#include <cmath>

namespace treadle::plan {

namespace {

using quantity::print;

/// Demand is rounded up, offer down: against us.
std::string figure(const AnyQuantity& value, PrintStyle style, Rounding rounding) {
    if (const auto* length = std::get_if<Length>(&value)) {
        const PrintStyle fine{style.system, 64, style.both};
        return print(*length, fine, rounding);
    }
    if (const auto* force = std::get_if<Force>(&value))
        return print(*force, style, rounding);
    if (const auto* stress = std::get_if<Stress>(&value))
        return print(*stress, style, rounding);
    if (const auto* angle = std::get_if<Angle>(&value))
        return print(*angle, style);
    if (const auto* mass = std::get_if<Mass>(&value))
        return print(*mass, style, rounding);
    return quantity::print_working(value, style);
}

/// Whole per cent, rounded against us.
std::string per_cent(double share) {
    return base::write_fixed(std::floor(share * 100.0 + 1e-9), 0) + " %";
}

const Check* deciding(const OperationPlan& plan) {
    return plan.deciding == k_none ? nullptr
                                   : &plan.checks[static_cast<std::size_t>(plan.deciding)];
}

Stress limit_of(const OperationPlan& plan) {
    Stress limit;
    for (const Check& check : plan.checks)
        if (!check.warning && check.outcome == Outcome::fits_up_to)
            limit = limit > Stress{} ? smaller(limit, check.limit) : check.limit;
    return limit;
}

std::string up_to(Stress limit, PrintStyle style) {
    return "fits up to " + print(limit, style, Rounding::down);
}

bool numeric(const Check& check) { return check.said.empty() && check.missing.empty(); }

} // namespace

std::string verdict_words(const OperationPlan& plan, PrintStyle style) {
    switch (plan.outcome) {
    case Outcome::fits:
        return "fits";
    case Outcome::fits_up_to:
        return up_to(limit_of(plan), style);
    case Outcome::cannot_be_said:
        return "cannot be said";
    case Outcome::does_not_fit:
        return "does not fit";
    }
    return "";
}

std::string verdict_words(const PartPlan& plan, PrintStyle style) {
    if (plan.operations.empty() && !plan.problem)
        return "no work here"; // nothing was checked, so nothing is said to fit
    if (plan.outcome != Outcome::fits_up_to) {
        OperationPlan same;
        same.outcome = plan.outcome;
        return verdict_words(same, style);
    }
    Stress limit;
    for (const OperationPlan& operation : plan.operations)
        if (operation.outcome == Outcome::fits_up_to) {
            const Stress own = limit_of(operation);
            limit = limit > Stress{} ? smaller(limit, own) : own;
        }
    return up_to(limit, style);
}

std::string margin_words(const OperationPlan& plan, PrintStyle) {
    const Check* check = deciding(plan);
    if (check == nullptr)
        return "nothing checked";
    switch (plan.outcome) {
    case Outcome::fits:
        if (!check->by_strength)
            return "";
        return per_cent(check->margin) + (plan.tight ? " to spare: tight" : " to spare");
    case Outcome::fits_up_to:
        return "certificate needed";
    case Outcome::cannot_be_said:
        return check->said.empty() ? "not known: " + check->missing : rule_words(check->rule);
    case Outcome::does_not_fit:
        if (numeric(*check) && check->by_strength)
            return base::write_fixed(std::ceil(-check->margin * 100.0 - 1e-9), 0) + " % over";
        return rule_words(check->rule);
    }
    return "";
}

const char* outcome_key(Outcome outcome) {
    switch (outcome) {
    case Outcome::fits:
        return "fits";
    case Outcome::fits_up_to:
        return "fits_up_to";
    case Outcome::cannot_be_said:
        return "cannot_be_said";
    case Outcome::does_not_fit:
        return "does_not_fit";
    }
    return "";
}

namespace {

struct RuleName {
    Rule rule;
    const char* key;
    const char* words;
};
constexpr RuleName k_rules[] = {{Rule::grade, "grade", "grade"},
                                {Rule::no_station, "no_station", "no station for it"},
                                {Rule::force, "force", "force"},
                                {Rule::rated_size, "rated_size", "rated size"},
                                {Rule::blade, "blade", "blade length"},
                                {Rule::mitre, "mitre", "mitre angle"},
                                {Rule::least_piece, "least_piece", "shortest piece"},
                                {Rule::bar_end, "bar_end", "end of the bar"},
                                {Rule::thin_stock, "thin_stock", "thinnest metal"},
                                {Rule::hole_thickness, "hole_thickness", "hole against thickness"},
                                {Rule::punch_stress, "punch_stress", "stress in the punch"},
                                {Rule::holder, "holder", "holder"},
                                {Rule::alignment, "alignment", "punch alignment"},
                                {Rule::throat, "throat", "throat"},
                                {Rule::daylight, "daylight", "daylight"},
                                {Rule::stroke, "stroke", "stroke"},
                                {Rule::flange_clearance, "flange_clearance", "room beside the leg"},
                                {Rule::on_metal, "on_metal", "whole on the metal"},
                                {Rule::edge_web, "edge_web", "hole to edge"},
                                {Rule::hole_web, "hole_web", "hole to hole"},
                                {Rule::cut_web, "cut_web", "hole to notch or mitre"},
                                {Rule::doubled_stroke, "doubled_stroke", "same stroke twice"},
                                {Rule::die_clearance, "die_clearance", "die clearance"},
                                {Rule::slug, "slug", "slug stays"},
                                {Rule::snap_through, "snap_through", "snap of the break"},
                                {Rule::hole_to_bend, "hole_to_bend", "hole to bend"},
                                {Rule::notch_tool, "notch_tool", "notch tool"},
                                {Rule::notch_overlap, "notch_overlap", "overlap of bites"},
                                {Rule::notch_at_bend, "notch_at_bend", "notch at bend"},
                                {Rule::opening, "opening", "V opening"},
                                {Rule::brake_length, "brake_length", "length of bend"},
                                {Rule::thickness_limit, "thickness_limit", "largest thickness"},
                                {Rule::least_leg, "least_leg", "shortest leg"},
                                {Rule::least_radius, "least_radius", "inside radius"},
                                {Rule::wanted_radius, "wanted_radius", "radius asked for"},
                                {Rule::trial_strip, "trial_strip", "trial strips"},
                                {Rule::bend_order, "bend_order", "order of bends"},
                                {Rule::saddle_die, "saddle_die", "saddle die"},
                                {Rule::tube_wall, "tube_wall", "wall of the pipe"},
                                {Rule::tool_in_crib, "tool_in_crib", "tool in the crib"},
                                {Rule::handling, "handling", "weight of a piece"},
                                {Rule::hoist, "hoist", "weight of a piece"},
                                {Rule::support, "support", "length of a piece"},
                                {Rule::tipping, "tipping", "piece on the table"}};

const RuleName& name_of(Rule rule) {
    for (const RuleName& name : k_rules)
        if (name.rule == rule)
            return name;
    return k_rules[0];
}

} // namespace

const char* rule_key(Rule rule) { return name_of(rule).key; }
const char* rule_words(Rule rule) { return name_of(rule).words; }

std::string sentence(const Check& check, PrintStyle style) {
    if (!check.missing.empty())
        return check.said.empty() ? "Not known: " + check.missing + "."
                                  : check.said + " (" + check.missing + ")";
    if (!check.said.empty())
        return check.said;
    const std::string demand = figure(check.demand_high, style, Rounding::up);
    const std::string offer = figure(check.offer, style, Rounding::down);
    switch (check.rule) {
    case Rule::force:
        return "The strongest of the grade needs " + demand + ", the station gives " + offer + ".";
    case Rule::rated_size:
        return "The plate's sizes cover this up to " + offer +
               " tensile strength; the grade may "
               "reach " +
               demand + ".";
    case Rule::hole_thickness:
        return "The metal is " + demand + " thick, the hole's smallest width is " + offer + ".";
    case Rule::least_piece:
        return "The hold-down grips from " + demand + " on, the piece is " + offer + ".";
    case Rule::thin_stock:
        return "The shear cuts from " + demand + " on; " + offer +
               " folds into the gap between its blades: use a hand shear.";
    case Rule::tube_wall:
        return "This die holds walls from " + demand + " on; one of " + offer +
               " collapses: plug the pipe with a close mandrel, or use a hole saw.";
    case Rule::flange_clearance:
        return "The tool needs " + demand + " to the edge where the other leg stands; there is " +
               offer + ".";
    case Rule::least_leg:
        return "The leg must be " + demand + " to bridge the V; the shorter one is " + offer + ".";
    case Rule::least_radius:
        return "The grade asks for an inside radius of " + demand + "; the tools make " + offer +
               ".";
    case Rule::handling:
        return "A piece weighs " + demand + ", one person lifts " + offer +
               " here: two people or a hoist.";
    case Rule::hoist:
        return "A piece weighs " + demand + ", two people lift " + offer + " here: a hoist.";
    case Rule::support:
        return "A piece is " + demand + " long, over " + offer +
               ": a stand or a second hand at its far end.";
    case Rule::opening:
        return "The V must be at least " + demand + "; it is " + offer + ".";
    default:
        return "Needs " + demand + ", there is " + offer + ".";
    }
}

std::string order_words(const Plan& plan) {
    const std::string count =
        std::to_string(plan.order.size()) + (plan.order.size() == 1 ? " set-up" : " set-ups");
    return plan.order_proven
               ? count + ", proven fewest"
               : count + ", at least " + std::to_string(plan.least_set_ups) + " needed";
}

} // namespace treadle::plan
