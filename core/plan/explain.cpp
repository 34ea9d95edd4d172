#include "plan/explain.h"

#include "plan/checks.h"
#include "plan/leg_spread.h"
#include "plan/trial_use.h"
#include "process/air_bend.h"
#include "process/die_clearance.h"
#include "process/notch.h"
#include "process/punch.h"
#include "process/shear.h"

namespace treadle::plan {

namespace {

using section::Shape;

void add(std::vector<Working>& list, base::Result<Working> working) {
    if (working)
        list.push_back(std::move(working).value());
}

void explain_punch(std::vector<Working>& list,
                   const job::Part& part,
                   const job::Punch& punch,
                   const Metal& metal) {
    const Length thickness = section::thickness_at(part.section, punch.face);
    const Stress strength = material::shear_strength(*metal.grade, metal.high);
    const process::PunchCut cut{punch.hole, thickness, strength};
    add(list, process::punch_force_working(cut));
    add(list, process::stripping_working(cut));
    add(list, process::punch_work_working(cut));
    add(list, process::die_clearance_working(thickness, metal.grade));
    add(list, process::smallest_hole_working({thickness, strength, process::k_punch_stress_limit}));
}

void explain_cut(std::vector<Working>& list, const job::Part& part, const Metal& metal) {
    const Section& s = part.section;
    const Stress strength = material::shear_strength(*metal.grade, metal.high);
    switch (s.shape) {
    case Shape::round:
        add(list, process::bar_shear_working({process::BarShape::round, s.width, strength}));
        break;
    case Shape::square:
        add(list, process::bar_shear_working({process::BarShape::square, s.width, strength}));
        break;
    case Shape::angle:
        add(list, process::angle_shear_working({s.width, s.height, s.thickness, strength}));
        break;
    case Shape::flat:
    case Shape::plate:
        add(list, process::flat_shear_working({s.width, s.thickness, strength, {}, 1.0}));
        break;
    default:
        break;
    }
}

void explain_notch(std::vector<Working>& list,
                   const job::Part& part,
                   const job::Notch& notch,
                   const Metal& metal) {
    geometry::NotchOutline outline;
    outline.shape = notch.shape;
    const bool corner = notch.edge >= job::NotchEdge::start_near;
    outline.place = notch.shape == geometry::NotchShape::rectangle && corner
                        ? geometry::NotchPlace::corner
                        : geometry::NotchPlace::edge;
    outline.width = notch.along;
    outline.depth = notch.depth;
    outline.included = notch.included;
    add(list,
        process::notch_force_working({outline,
                                      section::thickness_at(part.section, notch.face),
                                      material::shear_strength(*metal.grade, metal.high)}));
}

void explain_bend(std::vector<Working>& list,
                  const PartPlan& plan,
                  const OperationPlan& bend,
                  const Metal& metal,
                  const equipment::Shop& shop) {
    const job::Part& part = *plan.part;
    if (!(bend.tools.opening > Length{}))
        return;
    add(list,
        process::bend_force_working(
            {metal.thickness, part.section.width, bend.tools.opening, metal.high}));
    add(list, process::usual_opening_working(metal.thickness, metal.high));
    add(list,
        process::air_bend_radius_working(
            {metal.thickness, bend.tools.opening, metal.grade->air_bend_share, bend.tools.nose}));
    add(list,
        process::least_radius_working(metal.thickness, *metal.grade, part.grain, bend.bend.angle));
    add(list,
        process::least_leg_working(
            {bend.tools.opening, metal.thickness, bend.bend.radius, bend.bend.angle}));
    if (bend.trial != k_none)
        if (const auto trial = read_trial(shop.trials[static_cast<std::size_t>(bend.trial)]))
            list.insert(list.end(), trial->workings.begin(), trial->workings.end());
    const auto with_source = [&](base::Result<Working> working) {
        if (!working)
            return;
        list.push_back(std::move(working).value());
        if (bend.blank_source != BlankSource::din6935)
            list.back().note = std::string("K from ") + blank_source_words(bend.blank_source) + ".";
    };
    add(list, process::setback_working(bend.bend, bend.blank_rule));
    with_source(process::allowance_working(bend.bend, bend.blank_rule));
    with_source(process::deduction_working(bend.bend, bend.blank_rule));
}

} // namespace

std::vector<Working> explain_operation(const PartPlan& plan,
                                       std::size_t operation,
                                       const job::Job& job,
                                       const equipment::Shop& shop,
                                       const job::Catalog& catalog) {
    std::vector<Working> list;
    const auto metal = metal_of(*plan.part, job, catalog);
    if (!metal)
        return list;
    const job::Operation& op = plan.part->operations[operation];
    if (const auto* punch = std::get_if<job::Punch>(&op))
        explain_punch(list, *plan.part, *punch, *metal);
    else if (std::holds_alternative<job::Cut>(op))
        explain_cut(list, *plan.part, *metal);
    else if (const auto* notch = std::get_if<job::Notch>(&op))
        explain_notch(list, *plan.part, *notch, *metal);
    else if (std::holds_alternative<job::Bend>(op))
        explain_bend(list, plan, plan.operations[operation], *metal, shop);
    return list;
}

std::vector<Working> explain_part(const PartPlan& plan,
                                  const job::Job& job,
                                  const equipment::Shop& shop,
                                  const job::Catalog& catalog) {
    std::vector<Working> list;
    const auto metal = metal_of(*plan.part, job, catalog);
    if (!metal)
        return list;
    list.push_back(section::mass_per_length_working(plan.part->section, metal->grade->density));
    if (plan.blank.bends.empty())
        return list;
    process::BentPart bent;
    std::vector<process::BlankRule> rules;
    bent.outside_legs = plan.part->legs;
    for (std::size_t i = 0; i < plan.operations.size(); ++i)
        if (std::holds_alternative<job::Bend>(plan.part->operations[i])) {
            bent.bends.push_back(plan.operations[i].bend);
            rules.push_back(plan.operations[i].blank_rule);
        }
    add(list, process::blank_working_by_bend(bent, rules));
    for (const LegSpread& leg : leg_spreads(plan, job, shop))
        list.insert(list.end(), leg.workings.begin(), leg.workings.end());
    return list;
}

} // namespace treadle::plan
