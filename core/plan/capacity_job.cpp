// The job's operations as points in the picture of what a place can do, and the picture's words.

#include "plan/capacity_trial.h"

namespace treadle::plan {

namespace {

using section::Shape;

struct Spot {
    Length x;
    Length thickness;
};

/// Width that was cut as the check saw it: along the mitre, or along a slit.
Length cut_width(const OperationPlan& plan, const job::Part& part) {
    for (const Check& check : plan.checks)
        if (check.rule == Rule::blade)
            if (const auto* width = std::get_if<Length>(&check.demand_high))
                return *width;
    return part.section.width;
}

std::optional<Spot> cut_spot(CapacityKind kind, const job::Part& part, const OperationPlan& plan) {
    const Section& section = part.section;
    switch (section.shape) {
    case Shape::flat:
    case Shape::plate:
        if (kind != CapacityKind::width)
            return std::nullopt;
        return Spot{cut_width(plan, part), section.thickness};
    case Shape::angle:
        if (kind != CapacityKind::leg)
            return std::nullopt;
        return Spot{larger(section.width, section.height), section.thickness};
    case Shape::round:
    case Shape::square:
        if (kind != CapacityKind::bar)
            return std::nullopt;
        return Spot{Length{}, section.width};
    default:
        return std::nullopt; // nothing shears these
    }
}

bool takes_notch(const CapacityCase& c, const job::Notch& notch) {
    if (c.kind != CapacityKind::notch_depth)
        return false;
    const auto& tool = c.shop.machine.attachments[static_cast<std::size_t>(c.place.attachment)];
    return (tool.kind == equipment::AttachmentKind::vee_notcher) ==
           (notch.shape == geometry::NotchShape::vee);
}

/// Where an operation lies in the picture; none when another kind of place does it.
std::optional<Spot> spot_of(const CapacityCase& c,
                            const job::Part& part,
                            const job::Operation& operation,
                            const OperationPlan& plan) {
    std::optional<Spot> spot;
    if (std::holds_alternative<job::Cut>(operation))
        spot = cut_spot(c.kind, part, plan);
    if (const auto* punch = std::get_if<job::Punch>(&operation))
        if (c.kind == CapacityKind::hole)
            spot = Spot{geometry::circumscribed(punch->hole),
                        section::thickness_at(part.section, punch->face)};
    if (const auto* notch = std::get_if<job::Notch>(&operation))
        if (takes_notch(c, *notch))
            spot = Spot{notch->depth, section::thickness_at(part.section, notch->face)};
    if (std::holds_alternative<job::Bend>(operation) && c.kind == CapacityKind::bend_length)
        spot = Spot{part.section.width, part.section.thickness};
    return spot && spot->thickness > Length{} ? spot : std::nullopt;
}

} // namespace

std::vector<JobPoint> job_points(const CapacityCase& c,
                                 const Plan& plan,
                                 const job::Job& job,
                                 const equipment::Shop& shop,
                                 const job::Catalog& catalog) {
    const bool rivals = has_rivals(shop.machine, c.place);
    const Grade* grade = job::find_grade(job, catalog, c.grade);
    std::vector<JobPoint> points;
    for (std::size_t p = 0; p < job.parts.size(); ++p) {
        const PartPlan& planned = *plan.parts[p];
        const job::Part& part = *job.parts[p];
        std::optional<PartPlan> here;
        for (std::size_t o = 0; o < part.operations.size(); ++o) {
            const auto spot = spot_of(c, part, part.operations[o], planned.operations[o]);
            if (!spot)
                continue;
            if (rivals && !here)
                here = plan_part(job.parts[p], job, c.shop, catalog);
            JobPoint point;
            point.x = spot->x;
            point.thickness = spot->thickness;
            point.shape = part.section.shape;
            point.part = static_cast<int>(p);
            point.operation = static_cast<int>(o);
            point.outcome = planned.operations[o].outcome;
            if (here)
                point.outcome = worse(point.outcome, here->operations[o].outcome);
            point.same_grade = job::find_grade(job, catalog, part.grade) == grade;
            points.push_back(point);
        }
    }
    return points;
}

const char* capacity_axis_words(CapacityKind kind) {
    switch (kind) {
    case CapacityKind::hole:
        return "hole diameter";
    case CapacityKind::width:
        return "width cut";
    case CapacityKind::leg:
        return "longer leg";
    case CapacityKind::bar:
        return "bar";
    case CapacityKind::notch_depth:
        return "depth of notch";
    case CapacityKind::bend_length:
        return "length of bend";
    }
    return "";
}

const char* capacity_key(CapacityKind kind) {
    switch (kind) {
    case CapacityKind::hole:
        return "hole";
    case CapacityKind::width:
        return "width";
    case CapacityKind::leg:
        return "leg";
    case CapacityKind::bar:
        return "bar";
    case CapacityKind::notch_depth:
        return "notch_depth";
    case CapacityKind::bend_length:
        return "bend_length";
    }
    return "";
}

std::string place_words(Mounting place, const equipment::Machine& machine) {
    const auto& station = machine.stations[static_cast<std::size_t>(place.station)];
    const std::string name =
        station.name.empty() ? std::string(equipment::station_word(station.kind)) : station.name;
    if (place.attachment == k_none)
        return name;
    const auto& tool = machine.attachments[static_cast<std::size_t>(place.attachment)];
    return (tool.name.empty() ? std::string(equipment::attachment_word(tool.kind)) : tool.name) +
           " on " + name;
}

} // namespace treadle::plan
