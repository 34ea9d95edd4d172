#include "edit/placing_tracks.h"

#include "quantity/input_limits.h"

#include <algorithm>
#include <cmath>

namespace treadle::edit {

namespace {

using base::Refusal;
using base::Result;

Length blank_length(const plan::PartPlan& plan) {
    return plan.part->legs.empty() ? plan.part->length : plan.blank_exact;
}

Length mouth_of(const job::Notch& notch) {
    return notch.shape == geometry::NotchShape::vee
               ? notch.depth * (2.0 * std::tan(notch.included.in_radians() / 2.0))
               : notch.along;
}

Result<Tracks> tracks_of_punch(const plan::PartPlan& plan, const job::Punch& punch) {
    const HolesOnBlank holes = holes_on_blank(plan, punch);
    Tracks tracks;
    tracks.face = punch.face;
    tracks.at = {holes.along, holes.across};
    const Length origin = holes.along - punch.at.x;
    const Length length = blank_length(plan);
    const Length width = section::width_of(plan.part->section, punch.face);
    tracks.along = Track{origin,
                         larger(Length{}, holes.half_along - origin),
                         length - holes.half_along - holes.span_along - origin,
                         punch.at.x,
                         holes.span_along,
                         length};
    tracks.across = Track{Length{},
                          holes.half_across,
                          width - holes.half_across - holes.span_across,
                          punch.at.y,
                          holes.span_across,
                          width};
    if (tracks.along->high < tracks.along->low)
        return Refusal{"at.x", "The holes are longer than the metal there.", ""};
    if (tracks.across->high < tracks.across->low)
        return Refusal{"at.y", "The holes are wider than the metal there.", ""};
    return tracks;
}

Result<Tracks> tracks_of_notch(const plan::PartPlan& plan, const job::Notch& notch) {
    using job::NotchEdge;
    const Length length = blank_length(plan);
    const Length width = section::width_of(plan.part->section, notch.face);
    const bool on_edge = notch.edge == NotchEdge::near_edge || notch.edge == NotchEdge::far_edge;
    const bool on_end = notch.edge == NotchEdge::start_end || notch.edge == NotchEdge::finish_end;
    if (!on_edge && !on_end)
        return Refusal{"edge", "A corner notch has no place of its own.", "Change its sizes."};
    const Length half = mouth_of(notch) / 2.0;
    const Length extent = on_edge ? length : width;
    if (extent < half * 2.0)
        return Refusal{"at", "The notch is wider than the metal there.", ""};
    const Track track{Length{}, half, extent - half, notch.at, Length{}, extent};
    Tracks tracks;
    tracks.face = notch.face;
    if (on_edge) {
        tracks.along = track;
        tracks.at = {notch.at, notch.edge == NotchEdge::near_edge ? Length{} : width};
    } else {
        tracks.across = track;
        tracks.at = {notch.edge == NotchEdge::start_end ? Length{} : length, notch.at};
    }
    return tracks;
}

/// How far the work on a straight part reaches, so that a shorter one would cut into it.
struct Reach {
    Length along;
    Length across;
    Length from_far; ///< of notches at the far edge or the finish end
};

Reach reach_of(const plan::PartPlan& plan, bool across) {
    using job::NotchEdge;
    Reach reach;
    Length at_finish;
    Length at_far;
    for (const job::Operation& operation : plan.part->operations) {
        if (const auto* punch = std::get_if<job::Punch>(&operation)) {
            const HolesOnBlank holes = holes_on_blank(plan, *punch);
            reach.along = larger(reach.along, holes.along + holes.span_along + holes.half_along);
            reach.across =
                larger(reach.across, holes.across + holes.span_across + holes.half_across);
        } else if (const auto* notch = std::get_if<job::Notch>(&operation)) {
            const Length mouth = mouth_of(*notch);
            switch (notch->edge) {
            case NotchEdge::near_edge:
            case NotchEdge::far_edge:
                reach.along = larger(reach.along, notch->at + mouth / 2.0);
                (notch->edge == NotchEdge::near_edge ? reach.across : at_far) = larger(
                    notch->edge == NotchEdge::near_edge ? reach.across : at_far, notch->depth);
                break;
            case NotchEdge::start_end:
            case NotchEdge::finish_end:
                reach.across = larger(reach.across, notch->at + mouth / 2.0);
                (notch->edge == NotchEdge::start_end ? reach.along : at_finish) = larger(
                    notch->edge == NotchEdge::start_end ? reach.along : at_finish, notch->depth);
                break;
            case NotchEdge::start_near:
            case NotchEdge::start_far:
                reach.along = larger(reach.along, notch->along);
                reach.across = larger(reach.across, notch->depth);
                break;
            case NotchEdge::finish_near:
            case NotchEdge::finish_far:
                at_finish = larger(at_finish, notch->along);
                reach.across = larger(reach.across, notch->depth);
                break;
            }
        } else if (const auto* cut = std::get_if<job::Cut>(&operation)) {
            if (cut->side == job::CutSide::length)
                at_finish = larger(at_finish,
                                   plan.part->section.width *
                                       (std::abs(std::tan(cut->start_mitre.in_radians())) +
                                        std::abs(std::tan(cut->finish_mitre.in_radians()))));
        }
    }
    reach.from_far = across ? at_far : at_finish;
    return reach;
}

Result<Tracks> tracks_of_cut(const Placing& placing, const job::Cut& cut) {
    const job::Part& part = *placing.plan.part;
    const bool slit = cut.side == job::CutSide::width;
    if (!slit && !part.legs.empty())
        return Refusal{"legs", "A bent part is as long as its legs.", "Change the legs."};
    if (slit && !part.section.designation.empty())
        return Refusal{"section", "The section has its width by name.", "Change the section."};
    const Reach reach = reach_of(placing.plan, slit);
    const Length now = slit ? part.section.width : part.length;
    const Length step = step_of(placing.style);
    const Length low = larger((slit ? reach.across : reach.along) + reach.from_far, step);
    const Track track{Length{},
                      smaller(low, now), // what is there already may stay
                      quantity::k_longest_length - step,
                      now,
                      Length{},
                      now};
    Tracks tracks;
    const std::vector<section::Face> faces = section::faces_of(part.section.shape);
    tracks.face = faces.empty() ? section::Face::flat : faces.front();
    const Length width = section::width_of(part.section, tracks.face);
    if (slit) {
        tracks.across = track;
        tracks.at = {part.length / 2.0, now};
    } else {
        tracks.along = track;
        tracks.at = {now, width / 2.0};
    }
    return tracks;
}

Result<Tracks> tracks_of_bend(const Placing& placing) {
    const plan::PartPlan& plan = placing.plan;
    const job::Part& part = *plan.part;
    const std::size_t number = bends_before(part, static_cast<std::size_t>(placing.operation));
    const process::Blank& blank = plan.blank;
    const Length line = blank.bend_lines[number];
    const auto setback = [&](std::size_t bend) {
        return bend < blank.bends.size() ? blank.bends[bend].setback : Length{};
    };
    const Length before = number > 0 ? setback(number - 1) : Length{};
    const Length sum = part.legs[number] + part.legs[number + 1];
    // A leg that its bends use up altogether is refused by the blank: a step of it stays straight.
    const Length step = step_of(placing.style);
    const Track track{line - part.legs[number],
                      before + setback(number) + step,
                      sum - setback(number) - setback(number + 1) - step,
                      part.legs[number],
                      Length{},
                      blank.length};
    if (track.high < track.low)
        return Refusal{"legs", "The bends leave no room between these legs.", ""};
    Tracks tracks;
    tracks.along = track;
    tracks.at = {line, section::width_of(part.section, section::Face::flat) / 2.0};
    return tracks;
}

} // namespace

Length step_of(PrintStyle style) {
    return style.system == UnitSystem::inch ? inches(1.0 / 16) : millimetres(1.0);
}

std::size_t bends_before(const job::Part& part, std::size_t operation) {
    std::size_t bends = 0;
    for (std::size_t i = 0; i < operation; ++i)
        bends += std::holds_alternative<job::Bend>(part.operations[i]) ? 1U : 0U;
    return bends;
}

HolesOnBlank holes_on_blank(const plan::PartPlan& plan, const job::Punch& punch) {
    const auto leg = static_cast<std::size_t>(std::max(punch.leg, 0));
    const std::vector<Length>& origins = plan.blank.leg_origins;
    const auto half = geometry::half_extent(punch.hole, punch.turned);
    const job::HolePattern& at = punch.at;
    return {(leg < origins.size() ? origins[leg] : Length{}) + at.x,
            at.y,
            at.column_pitch * (at.columns - 1),
            at.row_pitch * (at.rows - 1),
            half.along,
            half.across};
}

Result<Tracks> tracks_of(const Placing& placing) {
    const job::Part& part = *placing.plan.part;
    const auto index = static_cast<std::size_t>(placing.operation);
    if (placing.operation < 0 || index >= part.operations.size())
        return Refusal{"operation", "There is no such operation in this part.", ""};
    const bool bent = !part.legs.empty();
    if (bent && placing.plan.blank.leg_origins.size() != part.legs.size())
        return Refusal{"legs", "The blank is not known, so nothing has a place on it.", ""};
    const job::Operation& operation = part.operations[index];
    if (const auto* punch = std::get_if<job::Punch>(&operation))
        return tracks_of_punch(placing.plan, *punch);
    if (const auto* notch = std::get_if<job::Notch>(&operation))
        return tracks_of_notch(placing.plan, *notch);
    if (const auto* cut = std::get_if<job::Cut>(&operation))
        return tracks_of_cut(placing, *cut);
    if (std::holds_alternative<job::Bend>(operation))
        return tracks_of_bend(placing);
    return Refusal{"end", "A saddle sits on an end: it has no place of its own.", ""};
}

job::Part moved(const job::Part& part,
                int operation,
                const std::optional<Length>& along,
                const std::optional<Length>& across) {
    job::Part next = part;
    const auto index = static_cast<std::size_t>(operation);
    job::Operation& is = next.operations[index];
    if (auto* punch = std::get_if<job::Punch>(&is)) {
        punch->at.x = along.value_or(punch->at.x);
        punch->at.y = across.value_or(punch->at.y);
    } else if (auto* notch = std::get_if<job::Notch>(&is)) {
        notch->at = along ? *along : across.value_or(notch->at);
    } else if (std::holds_alternative<job::Cut>(is)) {
        next.length = along.value_or(next.length);
        next.section.width = across.value_or(next.section.width);
    } else if (std::holds_alternative<job::Bend>(is) && along) {
        const std::size_t leg = bends_before(part, index);
        const Length sum = next.legs[leg] + next.legs[leg + 1];
        next.legs[leg] = *along;
        next.legs[leg + 1] = sum - *along;
    }
    return next;
}

} // namespace treadle::edit
