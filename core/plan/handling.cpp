#include "plan/handling.h"

#include "plan/checks.h"

#include "supply/lift.h"

namespace treadle::plan {

namespace {

constexpr int k_pair = 2;

Check warning(Rule rule, AnyQuantity demand, AnyQuantity offer, double margin) {
    Check check;
    check.rule = rule;
    check.warning = true;
    check.demand_low = check.demand_high = demand;
    check.offer = offer;
    check.margin = margin;
    return check;
}

/// Marks of the parts that take these carriers: "BP2, CL1".
std::string marks(const Plan& plan, Mass limit, Carriers wanted) {
    std::string list;
    for (const auto& part : plan.parts)
        if (carriers(part->mass_each, limit) == wanted)
            list += (list.empty() ? "" : ", ") + part->part->mark;
    return list;
}

} // namespace

Mass limit_of_two(Mass one_person) {
    const auto team = supply::lift_team_working(one_person, k_pair);
    return team ? std::get<Mass>(team->result.value) : one_person;
}

Carriers carriers(Mass piece, Mass one_person) {
    if (piece <= one_person)
        return Carriers::one;
    return piece <= limit_of_two(one_person) ? Carriers::two : Carriers::hoist;
}

void check_handling(const Question& question, PartPlan& plan) {
    if (plan.operations.empty())
        return;
    const equipment::HouseRules& rules = question.shop.rules;
    std::vector<Check>& checks = plan.operations.front().checks;
    if (rules.lift_limit) {
        const Carriers who = carriers(plan.mass_each, *rules.lift_limit);
        const Mass limit =
            who == Carriers::hoist ? limit_of_two(*rules.lift_limit) : *rules.lift_limit;
        if (who != Carriers::one)
            checks.push_back(warning(who == Carriers::two ? Rule::handling : Rule::hoist,
                                     plan.mass_each,
                                     limit,
                                     1.0 - plan.mass_each / limit));
    }
    if (rules.support_length && plan.blank_length > *rules.support_length)
        checks.push_back(warning(Rule::support,
                                 plan.blank_length,
                                 *rules.support_length,
                                 1.0 - plan.blank_length / *rules.support_length));
}

std::string handling_words(const Plan& plan, const equipment::Shop& shop, PrintStyle style) {
    if (!shop.rules.lift_limit)
        return "not checked: the house rules have no lift limit";
    const Mass limit = *shop.rules.lift_limit;
    for (const auto& part : plan.parts)
        if (!(part->mass_each > Mass{}))
            return "not known: the weight of " + part->part->mark;
    const std::string two = marks(plan, limit, Carriers::two);
    const std::string hoist = marks(plan, limit, Carriers::hoist);
    std::string words;
    if (!two.empty())
        words = two + ": two people or a hoist";
    if (!hoist.empty())
        words += (words.empty() ? "" : "; ") + hoist + ": a hoist";
    return words.empty() ? "every piece within " + quantity::print(limit, style, Rounding::down) +
                               ", one person"
                         : words;
}

} // namespace treadle::plan
