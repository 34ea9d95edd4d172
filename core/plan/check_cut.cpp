#include "plan/checks.h"
#include "process/shear.h"

#include <cmath>

namespace treadle::plan {

namespace {

using equipment::RatedSize;
using equipment::Station;
using equipment::StationKind;
using section::Shape;

/// The station kind that shears a shape, or none: open blades crush tube and twist channel.
std::optional<StationKind> station_for(Shape shape) {
    switch (shape) {
    case Shape::flat:
    case Shape::plate:
        return StationKind::flat_shear;
    case Shape::angle:
        return StationKind::angle_shear;
    case Shape::round:
    case Shape::square:
        return StationKind::bar_shear;
    case Shape::channel:
    case Shape::pipe:
    case Shape::square_tube:
        return std::nullopt;
    }
    return std::nullopt;
}

/// Size that a rated line publishes for this section, against the section's own.
struct SizePair {
    Length rated;
    Length own;
};
SizePair thickness_pair(const RatedSize& rated, const Section& section) {
    switch (section.shape) {
    case Shape::round:
        return {rated.round, section.width};
    case Shape::square:
        return {rated.square, section.width};
    default:
        return {rated.thickness, section.thickness};
    }
}
SizePair width_pair(const RatedSize& rated, const Section& section, Length cut_width) {
    switch (section.shape) {
    case Shape::round:
    case Shape::square:
        return {Length{}, Length{}};
    case Shape::angle:
        return {rated.width, larger(section.width, section.height)};
    default:
        return {rated.width, cut_width};
    }
}

/// Dominance only. Stronger stock takes thickness down in proportion; weaker never takes it up.
Check rated_size_check(const Question& question,
                       const Station& station,
                       int index,
                       Length cut_width) {
    if (station.rated.empty())
        return missing_check(Rule::rated_size, station_path(index, "rated"));
    if (!station.base)
        return missing_check(Rule::rated_size, station_path(index, "base"));
    Stress limit;
    bool any_line = false;
    for (const RatedSize& rated : station.rated) {
        const SizePair thick = thickness_pair(rated, question.part.section);
        const SizePair wide = width_pair(rated, question.part.section, cut_width);
        if (!(thick.rated > Length{}))
            continue;
        any_line = true;
        if (thick.own <= thick.rated && wide.own <= wide.rated)
            limit = larger(limit, station.base->value * (thick.rated / thick.own));
    }
    if (!any_line)
        return missing_check(Rule::rated_size, station_path(index, "rated"));
    if (!(limit > Stress{}))
        return refused_check(Rule::rated_size, "No published size of the plate covers this one.");
    return strength_check(question.metal, limit);
}

/// Bars and angles may be rated by a force instead of by sizes; flats only with parallel blades,
/// which is what the force formula assumes and what the careful choice is.
Check shear_force_check(const Question& question,
                        const Station& station,
                        Length cut_width,
                        double mitre_factor) {
    const Section& section = question.part.section;
    const Stress strength = material::shear_strength(*question.metal.grade, question.metal.high);
    base::Result<Force> force = [&]() -> base::Result<Force> {
        switch (section.shape) {
        case Shape::round:
            return process::bar_shear_force({process::BarShape::round, section.width, strength});
        case Shape::square:
            return process::bar_shear_force({process::BarShape::square, section.width, strength});
        case Shape::angle:
            return process::angle_shear_force(
                {section.width, section.height, section.thickness, strength});
        default:
            return process::flat_shear_force(
                {cut_width, section.thickness, strength, std::nullopt, 1.0});
        }
    }();
    if (!force)
        return refused_check(Rule::force, force.refusal().reason);
    const double fillet = section.shape == Shape::angle ? process::k_rolled_fillet_factor : 1.0;
    // The width of a mitred flat is already the longer one.
    const bool flat = section.shape == Shape::flat || section.shape == Shape::plate;
    return force_check(
        question.metal, *force * (fillet * (flat ? 1.0 : mitre_factor)), *station.force);
}

void check_mitre(OperationPlan& plan, const Station& station, int index, Angle mitre) {
    if (mitre == Angle{})
        return;
    if (station.largest_mitre)
        plan.checks.push_back(angle_check(Rule::mitre, mitre, *station.largest_mitre));
    else
        plan.checks.push_back(missing_check(Rule::mitre, station_path(index, "largest_mitre")));
}

constexpr Length k_thin = inches(1.0 / 16.0); // common practice, no source

/// A warning: a verdict that turned from no to yes with thicker metal could not be trusted to say
/// no to the next thicker one.
void check_gap(OperationPlan& plan, const Station& station, Length thickness) {
    if (station.least_thickness)
        warn_if_under(plan, Rule::thin_stock, *station.least_thickness, thickness);
    else if (thickness < k_thin)
        plan.checks.push_back(
            warning_check(Rule::thin_stock,
                          "Thin metal folds into the gap between the blades, and nothing says how "
                          "thin this shear cuts: try an offcut, or use a hand shear."));
}

OperationPlan on_station(const Question& question, const job::Cut& cut, int index) {
    const Station& station = question.shop.machine.stations[static_cast<std::size_t>(index)];
    const Section& section = question.part.section;
    const bool flat = section.shape == Shape::flat || section.shape == Shape::plate;
    OperationPlan plan;
    plan.checks.reserve(k_usual_checks);
    plan.tools.station = index;
    const Angle mitre = Angle::from_degrees(
        std::max(std::abs(cut.start_mitre.in_degrees()), std::abs(cut.finish_mitre.in_degrees())));
    plan.tools.mitre = mitre;
    plan.strokes = cut.side == job::CutSide::length && mitre != Angle{} ? 2 : 1;
    check_mitre(plan, station, index, mitre);
    const auto factor = process::mitre_factor(mitre);
    if (!factor)
        return refused_plan(Rule::mitre, factor.refusal().reason);
    // Slitting runs along the whole part; a bent part is slit in the flat, which is longer still.
    Length run = question.part.length;
    for (const Length leg : question.part.legs)
        run += leg;
    const Length cut_width = cut.side == job::CutSide::width ? run : section.width * *factor;

    if (!station.rated.empty() || !station.force)
        plan.checks.push_back(rated_size_check(question, station, index, cut_width));
    else
        plan.checks.push_back(shear_force_check(question, station, cut_width, *factor));
    if (flat || section.shape == Shape::angle)
        check_gap(plan, station, section.thickness);
    if (flat)
        plan.checks.push_back(size_check_or_missing(
            Rule::blade, cut_width, station.blade, station_path(index, "blade")));
    if (station.least_piece) {
        const Length piece = cut.side == job::CutSide::width ? section.width : run;
        plan.checks.push_back(size_check(Rule::least_piece, *station.least_piece, piece));
    } else {
        plan.checks.push_back(missing_check(Rule::least_piece, station_path(index, "least_piece")));
    }
    decide(plan, question.shop.rules.least_margin);
    return plan;
}

} // namespace

OperationPlan plan_cut(const Question& question, const job::Cut& cut) {
    const Shape shape = question.part.section.shape;
    const std::optional<StationKind> kind = station_for(shape);
    if (!kind)
        return refused_plan(Rule::no_station,
                            shape == Shape::channel
                                ? "Open blades twist a channel: saw it to length."
                                : "Open blades crush a tube or pipe: saw it to length.");
    const bool flat = *kind == StationKind::flat_shear;
    if (cut.side == job::CutSide::width && !flat)
        return refused_plan(Rule::no_station, "Only flats and plates are slit to width.");
    std::optional<OperationPlan> best;
    const auto& stations = question.shop.machine.stations;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        if (stations[i].kind != *kind)
            continue;
        OperationPlan plan = on_station(question, cut, static_cast<int>(i));
        if (!best || better(plan, *best))
            best = std::move(plan);
    }
    if (!best)
        return refused_plan(Rule::no_station, "This machine has no shear for this shape.");
    return std::move(*best);
}

} // namespace treadle::plan
