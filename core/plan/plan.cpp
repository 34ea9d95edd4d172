#include "plan/plan.h"

#include "base/stable_sort.h"
#include "plan/batches.h"
#include "plan/checks.h"
#include "plan/trial_use.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <unordered_map>

namespace treadle::plan {

namespace {

using base::Refusal;

OperationPlan
plan_operation(const Question& question, const job::Operation& operation, std::size_t bend_number) {
    const material::GradeRefusal& refusal = question.metal.grade->refusal;
    const bool is_bend = std::holds_alternative<job::Bend>(operation);
    if (is_bend ? refusal.bending : refusal.cutting)
        return refused_plan(Rule::grade, refusal.reason);
    if (const auto* cut = std::get_if<job::Cut>(&operation))
        return plan_cut(question, *cut);
    if (const auto* punch = std::get_if<job::Punch>(&operation))
        return plan_punch(question, *punch);
    if (const auto* notch = std::get_if<job::Notch>(&operation))
        return plan_notch(question, *notch);
    if (const auto* bend = std::get_if<job::Bend>(&operation))
        return plan_bend(question, *bend, bend_number);
    return plan_saddle(question, std::get<job::Saddle>(operation));
}

Length round_blank(Length exact, const equipment::HouseRules& rules, PrintStyle style) {
    if (style.system == UnitSystem::metric) {
        const double half_millimetres = quantity::to_millimetres(exact) * 2.0;
        return millimetres(std::ceil(half_millimetres - 1e-9) / 2.0);
    }
    return quantity::round_to_step(
        exact, {UnitSystem::inch, rules.blank_denominator}, Rounding::up);
}

/// Deductions of all bends, in order along the part, put together to a blank.
void lay_out_blank(const Question& question, PrintStyle style, PartPlan& plan) {
    const job::Part& part = question.part;
    plan.blank_width = part.section.width;
    plan.blank_exact = part.length;
    if (!part.legs.empty()) {
        process::BentPart bent;
        bent.outside_legs = part.legs;
        std::vector<process::BlankRule> rules;
        for (std::size_t i = 0; i < part.operations.size(); ++i)
            if (std::holds_alternative<job::Bend>(part.operations[i])) {
                bent.bends.push_back(plan.operations[i].bend);
                rules.push_back(plan.operations[i].blank_rule);
            }
        auto blank = process::blank_length_by_bend(bent, rules);
        if (blank) {
            plan.blank = *blank;
            plan.blank_exact = plan.blank.length;
        } else {
            plan.blank_exact = Length{};
            plan.problem = blank.refusal();
        }
    }
    plan.blank_length = part.legs.empty()
                            ? plan.blank_exact
                            : round_blank(plan.blank_exact, question.shop.rules, style);
    plan.mass_each =
        section::mass_per_length(part.section, question.metal.grade->density) * plan.blank_length;
}

void sum_up(PartPlan& plan, double least_margin) {
    for (OperationPlan& operation : plan.operations) {
        decide(operation, least_margin);
        plan.outcome = worse(plan.outcome, operation.outcome);
        plan.tight = plan.tight || operation.tight;
    }
    if (plan.problem)
        plan.outcome = worse(plan.outcome, Outcome::cannot_be_said);
}

/// A holder takes every punch up to its size; other tools are bought by the size of their hole.
auto need_key(const Need& need) {
    const bool holder = need.kind == Need::Kind::holder;
    const bool keyed = need.hole.shape != geometry::HoleShape::round;
    return std::tuple{static_cast<int>(need.kind),
                      holder ? static_cast<int>(keyed) : static_cast<int>(need.hole.shape),
                      holder ? 0.0 : need.hole.size.in_base(),
                      holder ? 0.0 : need.hole.size2.in_base(),
                      holder ? 0.0 : need.size.in_base(),
                      need.branch.in_base()};
}

/// Each tool once, in the largest size that is asked of it.
std::vector<Need> shopping_list(const std::vector<std::shared_ptr<const PartPlan>>& parts) {
    std::vector<Need> all;
    for (const auto& part : parts)
        for (const OperationPlan& operation : part->operations)
            all.insert(all.end(), operation.needs.begin(), operation.needs.end());
    base::stable_sort(all, [](const Need& a, const Need& b) { return need_key(a) < need_key(b); });
    std::vector<Need> list;
    for (const Need& need : all) {
        if (list.empty() || need_key(list.back()) < need_key(need)) {
            list.push_back(need);
            continue;
        }
        list.back().size = larger(list.back().size, need.size);
        list.back().length = larger(list.back().length, need.length);
    }
    return list;
}

PartPlan planned(const job::PartRef& part,
                 const job::Job& job,
                 const equipment::Shop& shop,
                 const job::Catalog& catalog,
                 BendOrders& orders) {
    PartPlan plan;
    plan.part = part;
    const auto metal = metal_of(*part, job, catalog);
    if (!metal) {
        plan.problem = metal.refusal();
        plan.outcome = Outcome::cannot_be_said;
        plan.operations.resize(part->operations.size());
        for (OperationPlan& operation : plan.operations) {
            operation.checks.push_back(missing_check(Rule::grade, plan.problem->field));
            operation.checks.back().said = plan.problem->reason;
            decide(operation, 0.0);
        }
        return plan;
    }
    const Question question{*part, shop, *metal};
    plan.operations.reserve(part->operations.size());
    std::size_t bends = 0;
    for (const job::Operation& operation : part->operations) {
        plan.operations.push_back(plan_operation(question, operation, bends));
        if (!std::holds_alternative<job::Bend>(operation))
            continue;
        ++bends;
        OperationPlan& bend = plan.operations.back();
        if (bend.trial == k_none) { // also where no tools were found for it
            const BlankChoice house = house_choice(shop.rules);
            bend.blank_rule = house.rule;
            bend.blank_source = house.source;
        }
    }
    lay_out_blank(question, job.style, plan);
    if (!plan.problem) {
        check_layout(question, plan);
        check_bend_order(question, orders, plan);
    }
    check_handling(question, plan);
    plan.batch = batch_of(shop.rules, plan.mass_each);
    sum_up(plan, shop.rules.least_margin);
    list_work(plan);
    return plan;
}

Plan put_together(std::vector<std::shared_ptr<const PartPlan>> parts, const equipment::Shop& shop) {
    Plan plan;
    plan.parts = std::move(parts);
    for (const auto& part : plan.parts) {
        plan.outcome = worse(plan.outcome, part->outcome);
        plan.pieces += part->part->count;
        plan.mass += part->mass_each * static_cast<double>(part->part->count);
    }
    plan.shopping = shopping_list(plan.parts);
    put_in_order(plan);
    choose_settings(plan, shop);
    for (const SetUp& set_up : plan.order)
        plan.strokes += set_up.strokes;
    return plan;
}

} // namespace

base::Result<Metal>
metal_of(const job::Part& part, const job::Job& job, const job::Catalog& catalog) {
    Metal metal;
    metal.grade = job::find_grade(job, catalog, part.grade);
    if (metal.grade == nullptr)
        return Refusal{"grade",
                       "This grade is not in the catalogue: " + part.grade + ".",
                       "Choose one of the list, or enter its strengths as a grade of your own."};
    metal.thickness = section::governing_thickness(part.section);
    if (metal.grade->refusal.cutting && metal.grade->refusal.bending)
        return metal; // refused whatever its strength, which nobody may know
    const auto printed = material::minimum_tensile(*metal.grade, metal.thickness);
    if (!printed)
        return printed.refusal();
    const auto low = material::careful_minimum(*metal.grade, metal.thickness);
    if (!low)
        return low.refusal();
    const auto high = material::upper_tensile(*metal.grade, metal.thickness);
    if (!high)
        return high.refusal();
    metal.low = low->value;
    metal.high = high->value;
    if (!(part.certified_tensile > Stress{}))
        return metal;
    if (part.certified_tensile < printed->value)
        return Refusal{"certified",
                       "The certificate's strength is under the least this grade allows.",
                       "Check the grade and the certificate."};
    metal.low = metal.high = part.certified_tensile;
    return metal;
}

PartPlan plan_part(const job::PartRef& part,
                   const job::Job& job,
                   const equipment::Shop& shop,
                   const job::Catalog& catalog) {
    BendOrders orders;
    return planned(part, job, shop, catalog, orders);
}

Plan make_plan(const job::Job& job, const equipment::Shop& shop, const job::Catalog& catalog) {
    return replan(Plan{}, job, shop, catalog);
}

Plan replan(const Plan& before,
            const job::Job& job,
            const equipment::Shop& shop,
            const job::Catalog& catalog) {
    // One edit moves parts by at most one place; only other changes need a table.
    std::unordered_map<const job::Part*, std::size_t> places;
    const auto place_of = [&](const job::PartRef& part, std::size_t at) {
        for (const std::size_t near : {at, at + 1, at - 1}) // before the first: past the end
            if (near < before.parts.size() && before.parts[near]->part == part)
                return near;
        if (places.empty())
            for (std::size_t i = 0; i < before.parts.size(); ++i)
                places.emplace(before.parts[i]->part.get(), i);
        const auto found = places.find(part.get());
        return found == places.end() ? before.parts.size() : found->second;
    };
    std::vector<std::shared_ptr<const PartPlan>> parts;
    parts.reserve(job.parts.size());
    BendOrders orders;
    for (std::size_t i = 0; i < job.parts.size(); ++i) {
        const job::PartRef& part = job.parts[i];
        const std::size_t place = place_of(part, i);
        parts.push_back(place < before.parts.size() ? before.parts[place]
                                                    : std::make_shared<const PartPlan>(planned(
                                                          part, job, shop, catalog, orders)));
    }
    return put_together(std::move(parts), shop);
}

} // namespace treadle::plan
