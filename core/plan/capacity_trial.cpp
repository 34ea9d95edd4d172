#include "plan/capacity_trial.h"

#include <algorithm>
#include <cmath>

namespace treadle::plan {

namespace {

using equipment::Attachment;
using equipment::Machine;
using equipment::Station;

const Station& station_of(const CapacityCase& c) {
    return c.shop.machine.stations[static_cast<std::size_t>(c.place.station)];
}
const Attachment& attachment_of(const CapacityCase& c) {
    return c.shop.machine.attachments[static_cast<std::size_t>(c.place.attachment)];
}

bool is_rival(const Machine& machine, Mounting place, std::size_t station) {
    return place.attachment == k_none && static_cast<int>(station) != place.station &&
           machine.stations[station].kind ==
               machine.stations[static_cast<std::size_t>(place.station)].kind;
}
bool same_work(const Machine& machine, Mounting place, std::size_t attachment) {
    return place.attachment != k_none &&
           machine.attachments[attachment].kind ==
               machine.attachments[static_cast<std::size_t>(place.attachment)].kind;
}

Length widest_rated(const Station& station) {
    Length widest;
    for (const equipment::RatedSize& rated : station.rated)
        widest = larger(widest, rated.width);
    return widest;
}

/// What is not described gets one inch: the checks then name what is missing.
Length largest_of(const CapacityCase& c) {
    const Length unknown = inches(1.0);
    switch (c.kind) {
    case CapacityKind::hole: {
        Length largest;
        for (const equipment::Holder& holder : station_of(c).holders)
            largest = larger(largest, holder.largest_punch);
        return largest > Length{} ? largest : unknown;
    }
    case CapacityKind::width:
        return station_of(c).blade.value_or(unknown);
    case CapacityKind::leg: {
        // Rated by force alone, a shear names no leg: up to the largest of the usual angles.
        const Length usual = c.units == UnitSystem::inch ? inches(8.0) : millimetres(200.0);
        return station_of(c).rated.empty() ? usual : widest_rated(station_of(c));
    }
    case CapacityKind::bar:
        return Length{};
    case CapacityKind::notch_depth:
        return attachment_of(c).depth.value_or(unknown);
    case CapacityKind::bend_length:
        return attachment_of(c).length.value_or(unknown);
    }
    return unknown;
}

/// 1/16, 1/8, 1/4 … inch or 1, 2, 5, 10 … mm.
Length column(const CapacityCase& c, int coarse, int n) {
    if (c.units == UnitSystem::inch)
        return inches(std::ldexp(static_cast<double>(n), coarse - 4));
    static constexpr double k_steps_mm[] = {1.0, 2.0, 5.0};
    return millimetres(n * k_steps_mm[coarse % 3] * std::pow(10.0, coarse / 3));
}

int steps_below(const CapacityCase& c, int coarse, Length largest) {
    const double share = largest / column(c, coarse, 1);
    return static_cast<int>(std::min(std::ceil(share) - 1.0, 1e6));
}

job::Punch trial_hole(Length size) {
    job::Punch punch;
    punch.hole.size = size;
    punch.at.x = punch.at.y = size * 1.5;
    return punch;
}

/// The whole tool bites, from an edge: nothing that the tool takes in one bite is harder.
job::Notch trial_notch(const Attachment& tool, Length depth) {
    job::Notch notch;
    notch.edge = job::NotchEdge::near_edge;
    notch.depth = depth;
    if (tool.kind == equipment::AttachmentKind::vee_notcher) {
        notch.shape = geometry::NotchShape::vee;
        notch.included = tool.vee_included.value_or(degrees(90.0));
    } else {
        notch.along = tool.length.value_or(inches(1.0));
    }
    return notch;
}

/// Long enough to bridge every V of the crib and to reach the back stop.
Length trial_leg(const CapacityCase& c) {
    Length widest = inches(1.0);
    for (const equipment::VBlock& vee : c.shop.crib.vees)
        widest = larger(widest, vee.opening);
    return widest + attachment_of(c).least_gauge.value_or(Length{});
}

} // namespace

equipment::Shop with_only(const equipment::Shop& shop, Mounting place) {
    equipment::Shop only = shop;
    for (std::size_t i = 0; i < only.machine.stations.size(); ++i)
        if (is_rival(shop.machine, place, i))
            only.machine.stations[i].kind = equipment::StationKind::table;
    for (std::size_t i = 0; i < only.machine.attachments.size(); ++i)
        if (same_work(shop.machine, place, i)) {
            only.machine.attachments[i].stations.clear();
            if (static_cast<int>(i) == place.attachment)
                only.machine.attachments[i].stations = {
                    only.machine.stations[static_cast<std::size_t>(place.station)].id};
        }
    return only;
}

bool has_rivals(const Machine& machine, Mounting place) {
    for (std::size_t i = 0; i < machine.stations.size(); ++i)
        if (is_rival(machine, place, i))
            return true;
    std::size_t places = 0;
    for (std::size_t i = 0; i < machine.attachments.size(); ++i)
        if (same_work(machine, place, i))
            places += machine.attachments[i].stations.size();
    return places > 1;
}

std::vector<Length> capacity_columns(const CapacityCase& c) {
    const Length largest = largest_of(c);
    constexpr int k_even = k_most_columns * 2 / 3; // the rest is for rated widths
    int coarse = 0;
    while (steps_below(c, coarse, largest) >= k_even)
        ++coarse;
    std::vector<Length> columns;
    for (int n = 1; n <= steps_below(c, coarse, largest); ++n)
        columns.push_back(column(c, coarse, n));
    columns.push_back(largest);
    if (c.kind == CapacityKind::width || c.kind == CapacityKind::leg)
        for (const equipment::RatedSize& rated : station_of(c).rated)
            if (columns.size() < k_most_columns && rated.width > Length{} && rated.width < largest)
                columns.push_back(rated.width);
    std::sort(columns.begin(), columns.end());
    columns.erase(std::unique(columns.begin(), columns.end()), columns.end());
    return columns;
}

Length capacity_step(const CapacityCase& c, int n) {
    return c.units == UnitSystem::inch ? inches(n / 16.0) : millimetres(n / 2.0);
}

int capacity_steps(const CapacityCase& c, Length x) {
    const Length most = c.units == UnitSystem::inch ? k_thickest_inch : k_thickest_metric;
    int steps = static_cast<int>(std::round(most / capacity_step(c, 1)));
    // The metal of an angle's leg is thinner than the leg is wide.
    while (c.kind == CapacityKind::leg && steps > 0 && !(capacity_step(c, steps) < x))
        --steps;
    return steps;
}

job::Part trial_part(const CapacityCase& c, Length x, Length thickness) {
    job::Part part;
    part.grade = c.grade;
    part.section.shape = section::Shape::plate;
    part.section.thickness = thickness;
    part.section.width = x;
    switch (c.kind) {
    case CapacityKind::hole:
        part.section.width = part.length = x * 3.0;
        part.operations = {trial_hole(x)};
        return part;
    case CapacityKind::leg:
        part.section.shape = section::Shape::angle;
        part.section.height = x;
        break;
    case CapacityKind::bar:
        part.section.shape = c.bar;
        part.section.width = thickness;
        part.section.thickness = Length{};
        break;
    case CapacityKind::notch_depth: {
        const job::Notch notch = trial_notch(attachment_of(c), x);
        const Length mouth = larger(notch.along, x * 4.0);
        part.section.width = x * 3.0;
        part.length = mouth * 3.0;
        part.operations = {notch};
        std::get<job::Notch>(part.operations[0]).at = mouth * 1.5;
        return part;
    }
    case CapacityKind::bend_length:
        part.legs = {trial_leg(c), trial_leg(c)};
        part.operations = {job::Bend{degrees(90.0), Length{}, true}};
        return part;
    case CapacityKind::width:
        break;
    }
    part.length = larger(inches(12.0), station_of(c).least_piece.value_or(Length{}));
    part.operations = {job::Cut{}};
    return part;
}

} // namespace treadle::plan
