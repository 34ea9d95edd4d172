#include "plan/settings.h"

#include "plan/checks.h"
#include "process/bend_rules.h"
#include "process/punch_tool.h"
#include "process/ram_opening.h"

namespace treadle::plan {

namespace {

using equipment::AttachmentKind;
using equipment::StationKind;
using Kind = Settings::Kind;

/// One step of a set-up, looked up.
struct Work {
    const PartPlan& part;
    const job::Operation& operation;
    const OperationPlan& planned;
};
Work work_of(const Plan& plan, const Step& step) {
    const PartPlan& part = *plan.parts[static_cast<std::size_t>(step.part)];
    const auto index = static_cast<std::size_t>(step.operation);
    return {part, part.part->operations[index], part.operations[index]};
}

Length gap_of(const equipment::Shop& shop) {
    return shop.rules.stripper_gap.value_or(k_default_stripper_gap);
}

/// Stroke of what the work is done with. The station drives the attachment's ram: where both are
/// known the shorter counts.
std::optional<Length> stroke_of(const Tooling& tools, const equipment::Shop& shop) {
    const equipment::Machine& machine = shop.machine;
    const auto& station = machine.stations[static_cast<std::size_t>(tools.station)];
    if (tools.attachment == k_none)
        return station.stroke;
    const auto& tool = machine.attachments[static_cast<std::size_t>(tools.attachment)];
    if (tool.stroke && station.stroke)
        return smaller(*tool.stroke, *station.stroke);
    return tool.stroke ? tool.stroke : station.stroke;
}

Kind kind_of(const Tooling& tools, const equipment::Shop& shop) {
    const equipment::Machine& machine = shop.machine;
    if (tools.station == k_none)
        return Kind::none;
    if (tools.attachment != k_none)
        switch (machine.attachments[static_cast<std::size_t>(tools.attachment)].kind) {
        case AttachmentKind::brake:
            return Kind::brake;
        case AttachmentKind::vee_notcher:
        case AttachmentKind::rectangular_notcher:
            return Kind::blade;
        case AttachmentKind::saddle_notcher:
            return Kind::none;
        }
    switch (machine.stations[static_cast<std::size_t>(tools.station)].kind) {
    case StationKind::punch:
        return Kind::punch;
    case StationKind::flat_shear:
    case StationKind::notcher:
        return Kind::blade;
    case StationKind::angle_shear:
    case StationKind::bar_shear:
        return Kind::shaped_blade;
    case StationKind::table:
        return Kind::none;
    }
    return Kind::none;
}

Length thickness_of(const Work& work) {
    const Section& section = work.part.part->section;
    if (const auto* punch = std::get_if<job::Punch>(&work.operation))
        return section::thickness_at(section, punch->face);
    if (const auto* notch = std::get_if<job::Notch>(&work.operation))
        return section::thickness_at(section, notch->face);
    return section::governing_thickness(section);
}

/// The shorter leg of a part with one bend stands up while the other lies on the V; with more
/// bends the piece is no plain L and comes out along the bend line.
process::BrakeOpening opening_of(const Work& work, Length gap) {
    const job::Part& part = *work.part.part;
    const Length leg = part.legs.size() == 2 ? smaller(part.legs[0], part.legs[1]) : Length{};
    return {work.planned.bend.thickness, leg, work.planned.bend.angle, gap};
}

/// Nose over the V for one bend, at most `most`.
struct Opening {
    Length up;
    bool along = false; ///< the bend line
};
Opening brake_opening_of(const Work& work, Length gap, Length most) {
    process::BrakeOpening opening = opening_of(work, gap);
    const auto to_front = process::brake_opening(opening);
    if (opening.leg > Length{} && to_front && *to_front <= most)
        return {*to_front, false};
    opening.leg = Length{};
    const auto sideways = process::brake_opening(opening);
    return {sideways ? smaller(*sideways, most) : most, true};
}

void raise(std::optional<Length>& setting, Length value, int& at, int step) {
    if (setting && *setting >= value)
        return;
    setting = value;
    at = step;
}

void choose_brake(Settings& settings,
                  const Plan& plan,
                  const SetUp& set_up,
                  const equipment::Shop& shop,
                  Length stroke) {
    Length most = stroke; // below it, what is left of the stroke has to reach every angle
    for (const Step& step : set_up.steps) {
        const OperationPlan& bend = work_of(plan, step).planned;
        most = smaller(most, stroke - bend.stroke_needed + bend.bend.thickness);
    }
    for (std::size_t i = 0; i < set_up.steps.size(); ++i) {
        const Work work = work_of(plan, set_up.steps[i]);
        const Opening opening = brake_opening_of(work, gap_of(shop), most);
        const int step = static_cast<int>(i);
        raise(settings.stroke_up, opening.up, settings.up_step, step);
        raise(settings.stroke_down, work.planned.travel, settings.down_step, step);
        settings.out_along = settings.out_along || opening.along;
    }
    if (most < settings.thickness) // thick stock does not go in where thin stock is bent far
        settings.stroke_up.reset();
}

/// Thickest stock of the set-up, and the step that it is worked in.
void find_thickest(Settings& settings, const Plan& plan, const SetUp& set_up) {
    for (std::size_t i = 0; i < set_up.steps.size(); ++i) {
        const Length thickness = thickness_of(work_of(plan, set_up.steps[i]));
        if (thickness > settings.thickness) {
            settings.thickness = thickness;
            settings.up_step = settings.down_step = static_cast<int>(i);
        }
    }
}

Settings chosen(const Plan& plan, const SetUp& set_up, const equipment::Shop& shop) {
    Settings settings;
    settings.kind = kind_of(set_up.tools, shop);
    if (settings.kind == Kind::none || settings.kind == Kind::shaped_blade)
        return settings;
    find_thickest(settings, plan, set_up);
    if (settings.kind == Kind::punch)
        settings.stripper_gap = gap_of(shop);
    const std::optional<Length> stroke = stroke_of(set_up.tools, shop);
    if (!stroke) {
        settings.missing = std::string(set_up.tools.attachment == k_none
                                           ? station_path(set_up.tools.station, "stroke")
                                           : attachment_path(set_up.tools.attachment, "stroke"));
        return settings;
    }
    const Length open = settings.thickness + gap_of(shop);
    if (settings.kind == Kind::brake) {
        choose_brake(settings, plan, set_up, shop, *stroke);
    } else if (open <= *stroke) { // else the stock is let in by the whole stroke, and no figure
        settings.stroke_up = open;
        if (settings.kind == Kind::punch)
            settings.stroke_down = k_die_entry;
    }
    return settings;
}

void add(std::vector<Working>& list, base::Result<Working> working) {
    if (working)
        list.push_back(std::move(working).value());
}

} // namespace

void choose_settings(Plan& plan, const equipment::Shop& shop) {
    for (SetUp& set_up : plan.order)
        set_up.settings = chosen(plan, set_up, shop);
}

std::vector<Working>
explain_settings(const Plan& plan, const SetUp& set_up, const equipment::Shop& shop) {
    std::vector<Working> list;
    const Settings& settings = set_up.settings;
    const Length gap = gap_of(shop);
    if (settings.kind == Kind::punch && settings.stroke_up)
        add(list, process::punch_stroke_working({settings.thickness, gap, k_die_entry}));
    if (settings.kind == Kind::blade && settings.stroke_up)
        add(list, process::blade_opening_working(settings.thickness, gap));
    if (settings.kind != Kind::brake || !settings.stroke_down)
        return list;
    const Work up = work_of(plan, set_up.steps[static_cast<std::size_t>(settings.up_step)]);
    process::BrakeOpening opening = opening_of(up, gap);
    if (settings.out_along)
        opening.leg = Length{};
    const auto wanted = process::brake_opening(opening);
    if (settings.stroke_up && wanted && *wanted == *settings.stroke_up) // not cut by the stroke
        add(list, process::brake_opening_working(opening));
    const Work down = work_of(plan, set_up.steps[static_cast<std::size_t>(settings.down_step)]);
    add(list,
        process::punch_travel_working(down.planned.tools.opening,
                                      down.planned.bend.radius,
                                      down.planned.bend.thickness,
                                      down.planned.bend.angle));
    return list;
}

} // namespace treadle::plan
