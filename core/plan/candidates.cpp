#include "plan/checks.h"

#include <utility>

namespace treadle::plan {

namespace {

constexpr Length k_arithmetic = quantity::millimetres(1e-6);

double margin_of(double demand, double offer) {
    if (!(offer > 0.0))
        return demand > 0.0 ? -1.0 : 0.0;
    return 1.0 - demand / offer;
}

void set_by_strength(Check& check, const Metal& metal, Stress limit) {
    check.by_strength = true;
    check.limit = limit;
    if (metal.high <= limit)
        check.outcome = Outcome::fits;
    else if (metal.low <= limit)
        check.outcome = Outcome::fits_up_to;
    else
        check.outcome = Outcome::does_not_fit;
}

} // namespace

Check force_check(const Metal& metal, Force at_high, Force offer) {
    Check check;
    check.rule = Rule::force;
    check.demand_high = at_high;
    check.demand_low = at_high * (metal.low / metal.high);
    check.offer = offer;
    check.margin = margin_of(quantity::to_newtons(at_high), quantity::to_newtons(offer));
    set_by_strength(check, metal, metal.high * (offer / at_high));
    // The comparison itself decides, not the rounding of the quotient above.
    if (at_high <= offer)
        check.outcome = Outcome::fits;
    return check;
}

Check strength_check(const Metal& metal, Stress limit) {
    Check check;
    check.rule = Rule::rated_size;
    check.demand_high = metal.high;
    check.demand_low = metal.low;
    check.offer = limit;
    check.margin = margin_of(quantity::to_megapascals(metal.high), quantity::to_megapascals(limit));
    set_by_strength(check, metal, limit);
    return check;
}

Check size_check(Rule rule, Length demand, Length offer) {
    Check check;
    check.rule = rule;
    check.demand_low = check.demand_high = demand;
    check.offer = offer;
    check.margin = margin_of(quantity::to_millimetres(demand), quantity::to_millimetres(offer));
    // Sums of sizes that are equal on paper differ in the last binary digit.
    check.outcome = demand - offer <= k_arithmetic ? Outcome::fits : Outcome::does_not_fit;
    return check;
}

Check angle_check(Rule rule, Angle demand, Angle offer) {
    Check check;
    check.rule = rule;
    check.demand_low = check.demand_high = demand;
    check.offer = offer;
    check.margin = margin_of(demand.in_degrees(), offer.in_degrees());
    check.outcome = demand <= offer ? Outcome::fits : Outcome::does_not_fit;
    return check;
}

Check missing_check(Rule rule, std::string path) {
    Check check;
    check.rule = rule;
    check.outcome = Outcome::cannot_be_said;
    check.missing = std::move(path);
    return check;
}

Check refused_check(Rule rule, std::string said) {
    Check check;
    check.rule = rule;
    check.outcome = Outcome::does_not_fit;
    check.margin = -1.0;
    check.said = std::move(said);
    return check;
}

Check warning_check(Rule rule, std::string said) {
    Check check = refused_check(rule, std::move(said));
    check.warning = true;
    check.margin = 0.0;
    return check;
}

void warn_if_under(OperationPlan& plan, Rule rule, Length needed, Length there) {
    Check check = size_check(rule, needed, there);
    if (check.outcome == Outcome::fits)
        return;
    check.warning = true;
    plan.checks.push_back(std::move(check));
}

Check size_check_or_missing(Rule rule,
                            Length demand,
                            const std::optional<Length>& offer,
                            const DatumPath& path) {
    return offer ? size_check(rule, demand, *offer) : missing_check(rule, path);
}

Check force_check_or_missing(const Metal& metal,
                             Force at_high,
                             const std::optional<Force>& offer,
                             const DatumPath& path) {
    return offer ? force_check(metal, at_high, *offer) : missing_check(Rule::force, path);
}

DatumPath::operator std::string() const {
    return std::string("machine.") + list + "[" + std::to_string(index) + "]." + datum;
}

void decide(OperationPlan& plan, double least_margin) {
    plan.outcome = Outcome::fits;
    plan.deciding = k_none;
    const auto ahead = [](const Check& a, const Check& b) {
        if (a.outcome != b.outcome)
            return b.outcome < a.outcome;
        // A fit is measured by what strength leaves over; throat or stroke only decide by failing.
        if (a.by_strength != b.by_strength)
            return a.by_strength;
        return a.margin < b.margin;
    };
    for (std::size_t i = 0; i < plan.checks.size(); ++i) {
        const Check& check = plan.checks[i];
        if (check.warning)
            continue;
        plan.outcome = worse(plan.outcome, check.outcome);
        if (plan.deciding == k_none ||
            ahead(check, plan.checks[static_cast<std::size_t>(plan.deciding)]))
            plan.deciding = static_cast<int>(i);
    }
    if (plan.deciding == k_none) // nothing was checked: nothing may be promised
        plan.outcome = Outcome::cannot_be_said;
    const bool fits = plan.outcome == Outcome::fits;
    plan.tight = fits && plan.checks[static_cast<std::size_t>(plan.deciding)].by_strength &&
                 plan.checks[static_cast<std::size_t>(plan.deciding)].margin < least_margin;
}

bool better(const OperationPlan& a, const OperationPlan& b) {
    if (a.outcome != b.outcome)
        return a.outcome < b.outcome;
    if (a.needs.size() != b.needs.size())
        return a.needs.size() < b.needs.size();
    const auto margin = [](const OperationPlan& plan) {
        return plan.deciding == k_none
                   ? -1.0
                   : plan.checks[static_cast<std::size_t>(plan.deciding)].margin;
    };
    return margin(a) > margin(b);
}

std::vector<Mounting> mountings(const equipment::Machine& machine, equipment::AttachmentKind kind) {
    std::vector<Mounting> found;
    for (std::size_t a = 0; a < machine.attachments.size(); ++a) {
        if (machine.attachments[a].kind != kind)
            continue;
        for (std::size_t s = 0; s < machine.stations.size(); ++s)
            for (const std::string& id : machine.attachments[a].stations)
                if (machine.stations[s].id == id)
                    found.push_back({static_cast<int>(s), static_cast<int>(a)});
    }
    return found;
}

OperationPlan
not_mounted(const equipment::Machine& machine, equipment::AttachmentKind kind, std::string said) {
    for (std::size_t a = 0; a < machine.attachments.size(); ++a) {
        if (machine.attachments[a].kind != kind || !machine.attachments[a].stations.empty())
            continue;
        OperationPlan plan;
        plan.checks.push_back(
            missing_check(Rule::no_station, attachment_path(static_cast<int>(a), "stations")));
        decide(plan, 0.0);
        return plan;
    }
    return refused_plan(Rule::no_station, std::move(said));
}

Check mounting_force_check(const Question& question, Mounting mounting, Force at_high) {
    const auto& machine = question.shop.machine;
    const auto& station = machine.stations[static_cast<std::size_t>(mounting.station)];
    const auto& attachment = machine.attachments[static_cast<std::size_t>(mounting.attachment)];
    if (!station.force)
        return missing_check(Rule::force, station_path(mounting.station, "force"));
    if (!attachment.force)
        return missing_check(Rule::force, attachment_path(mounting.attachment, "force"));
    return force_check(question.metal, at_high, smaller(*station.force, *attachment.force));
}

OperationPlan refused_plan(Rule rule, std::string said) {
    OperationPlan plan;
    plan.checks.push_back(refused_check(rule, std::move(said)));
    decide(plan, 0.0);
    return plan;
}

} // namespace treadle::plan
