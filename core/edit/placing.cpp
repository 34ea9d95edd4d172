#include "edit/placing.h"

#include "edit/placing_tracks.h"

#include <algorithm>
#include <cmath>

namespace treadle::edit {

namespace {

using base::Result;

constexpr Length k_same_place = quantity::millimetres(0.01);

Length apart(Length a, Length b) { return larger(a, b) - smaller(a, b); }

std::string bare(Length value, PrintStyle style) {
    return quantity::print_bare(value, {style.system, 64});
}

const std::optional<Track>& track(const Tracks& tracks, Axis axis) {
    return axis == Axis::along ? tracks.along : tracks.across;
}
Length place_in(const FlatPlace& place, Axis axis) {
    return axis == Axis::along ? place.along : place.across;
}

/// On a step inside the range; where the range holds no step, its lower end.
Length on_step(const Track& track, Length value, Length step) {
    double steps = std::round(value / step);
    if (step * steps > track.high)
        steps = std::floor(track.high / step + 1e-9);
    if (step * steps < track.low)
        steps = std::ceil(track.low / step - 1e-9);
    const Length found = step * steps;
    return found < track.low || found > track.high ? track.low : found;
}

Length to_edge(const Track& track, Length flat) {
    return smaller(flat, track.extent - flat - track.span);
}

Settled settled(const Track& track,
                Length value,
                SnapKind kind,
                std::string words,
                const base::FormulaCard* card = nullptr) {
    const Length flat = track.origin + value;
    return {value, flat, to_edge(track, flat), kind, std::move(words), card};
}

/// What is said of a value that was not looked for: the line that it lies on, if any.
Settled recognised(const Track& track,
                   const std::vector<SnapLine>& lines,
                   Axis axis,
                   Length value,
                   PrintStyle style) {
    for (const SnapLine& line : lines)
        if (line.axis == axis && apart(line.value, value) < k_same_place)
            return settled(track, line.value, line.kind, line.words, line.card);
    if (apart(value, track.now) < k_same_place)
        return settled(track, track.now, SnapKind::as_it_is, "as it was");
    const bool inch = style.system == UnitSystem::inch;
    return settled(track, value, SnapKind::step, inch ? "step of 1/16" : "step of 1 mm");
}

Settled caught(const Track& track,
               const std::vector<SnapLine>& lines,
               Axis axis,
               Length wished_flat,
               Length tolerance,
               PrintStyle style) {
    const Length wished = wished_flat - track.origin;
    const SnapLine* best = nullptr;
    for (const SnapLine& line : lines) {
        const Length off = apart(line.value, wished);
        if (line.axis != axis || off > tolerance)
            continue;
        const bool nearer = best == nullptr || off < apart(best->value, wished) ||
                            (off == apart(best->value, wished) && line.kind < best->kind);
        if (nearer)
            best = &line;
    }
    if (best != nullptr)
        return settled(track, best->value, best->kind, best->words, best->card);
    const Length value = on_step(track, wished, step_of(style));
    if (wished < track.low - tolerance || wished > track.high + tolerance)
        return settled(track, value, SnapKind::limit, "as far as the metal goes");
    return recognised(track, lines, axis, value, style);
}

Result<Placed> placed(const Placing& placing,
                      const Tracks& tracks,
                      std::optional<Settled> along,
                      std::optional<Settled> across) {
    const auto value = [](const std::optional<Settled>& way) {
        return way ? std::optional(way->value) : std::nullopt;
    };
    auto part =
        job::checked(moved(*placing.plan.part, placing.operation, value(along), value(across)));
    if (!part.ok())
        return part.refusal();
    Placed made;
    made.part = std::move(part).value();
    made.at = {along ? along->flat : tracks.at.along, across ? across->flat : tracks.at.across};
    made.along = std::move(along);
    made.across = std::move(across);
    return made;
}

/// Both ways at their places in `from`, one of them replaced by `value`.
Result<Placed> with_value(const Placing& placing,
                          const Tracks& tracks,
                          const std::vector<SnapLine>& lines,
                          FlatPlace from,
                          Axis changed,
                          Length value) {
    const auto way = [&](Axis axis) -> std::optional<Settled> {
        const std::optional<Track>& is = track(tracks, axis);
        if (!is)
            return std::nullopt;
        const Length wished = axis == changed ? value : place_in(from, axis) - is->origin;
        return recognised(*is, lines, axis, std::clamp(wished, is->low, is->high), placing.style);
    };
    return placed(placing, tracks, way(Axis::along), way(Axis::across));
}

base::Refusal cannot_go(Axis axis) {
    return {axis == Axis::along ? "along" : "across", "It cannot be moved this way.", ""};
}

} // namespace

Result<Movable> movable(const Placing& placing) {
    const auto tracks = tracks_of(placing);
    if (!tracks.ok())
        return tracks.refusal();
    return Movable{tracks->face, tracks->at, tracks->along.has_value(), tracks->across.has_value()};
}

std::vector<SnapLine> candidates(const Placing& placing) {
    const auto tracks = tracks_of(placing);
    return tracks.ok() ? lines_of(placing, *tracks) : std::vector<SnapLine>{};
}

Result<Placed> as_it_is(const Placing& placing) {
    const auto tracks = tracks_of(placing);
    if (!tracks.ok())
        return tracks.refusal();
    return with_value(placing,
                      *tracks,
                      lines_of(placing, *tracks),
                      tracks->at,
                      Axis::along,
                      tracks->along ? tracks->along->now : Length{});
}

Result<Placed> place(const Placing& placing, FlatPlace wished, Length tolerance) {
    const auto tracks = tracks_of(placing);
    if (!tracks.ok())
        return tracks.refusal();
    if (!std::isfinite(wished.along.in_base()) || !std::isfinite(wished.across.in_base()))
        return base::Refusal{"at", "This is no place on the metal.", ""};
    const std::vector<SnapLine> lines = lines_of(placing, *tracks);
    const auto way = [&](Axis axis) -> std::optional<Settled> {
        const std::optional<Track>& is = track(*tracks, axis);
        if (!is)
            return std::nullopt;
        return caught(*is, lines, axis, place_in(wished, axis), tolerance, placing.style);
    };
    return placed(placing, *tracks, way(Axis::along), way(Axis::across));
}

Result<Placed> place_on(const Placing& placing, FlatPlace from, const SnapLine& line) {
    const auto tracks = tracks_of(placing);
    if (!tracks.ok())
        return tracks.refusal();
    if (!track(*tracks, line.axis))
        return cannot_go(line.axis);
    return with_value(placing, *tracks, lines_of(placing, *tracks), from, line.axis, line.value);
}

Result<Placed> nudge(const Placing& placing, FlatPlace from, Axis axis, int way) {
    const auto tracks = tracks_of(placing);
    if (!tracks.ok())
        return tracks.refusal();
    const std::optional<Track>& is = track(*tracks, axis);
    if (!is)
        return cannot_go(axis);
    const Length step = step_of(placing.style);
    const double now = (place_in(from, axis) - is->origin) / step;
    const double next = way > 0 ? std::floor(now + 1e-6) + 1.0 : std::ceil(now - 1e-6) - 1.0;
    const Length value = step * next;
    const bool stays = value < is->low || value > is->high;
    return with_value(placing,
                      *tracks,
                      lines_of(placing, *tracks),
                      from,
                      axis,
                      stays ? place_in(from, axis) - is->origin : value);
}

Result<Placed> to_next_line(const Placing& placing, FlatPlace from, Axis axis, int way) {
    const auto tracks = tracks_of(placing);
    if (!tracks.ok())
        return tracks.refusal();
    const std::optional<Track>& is = track(*tracks, axis);
    if (!is)
        return cannot_go(axis);
    const std::vector<SnapLine> lines = lines_of(placing, *tracks);
    const Length now = place_in(from, axis) - is->origin;
    Length value = now;
    for (const SnapLine& line : lines) {
        const Length off = way > 0 ? line.value - now : now - line.value;
        const bool nearer = value == now || off < apart(value, now);
        if (line.axis == axis && off > k_same_place && nearer)
            value = line.value;
    }
    return with_value(placing, *tracks, lines, from, axis, value);
}

plan::PartPlan trial_plan(const Session& session, const job::Part& part) {
    return plan::plan_part(
        std::make_shared<const job::Part>(part), session.job(), session.shop(), session.catalog());
}

bool is_quick_to_plan(const job::Part& part) {
    constexpr std::size_t k_legs = 7;
    constexpr std::size_t k_operations = 100;
    return part.legs.size() <= k_legs && part.operations.size() <= k_operations;
}

std::string at_words(const Placing& placing) {
    const auto tracks = tracks_of(placing);
    const auto& operations = placing.plan.part->operations;
    const auto index = static_cast<std::size_t>(placing.operation);
    if (!tracks.ok() || std::holds_alternative<job::Cut>(operations[index]))
        return "";
    std::string words;
    for (const std::optional<Track>& way : {tracks->along, tracks->across})
        if (way)
            words += (words.empty() ? "at " : ", ") + bare(way->now, placing.style);
    return words;
}

std::string figure_words(const Placed& placed, PrintStyle style) {
    std::string words;
    for (const std::optional<Settled>& way : {placed.along, placed.across})
        if (way)
            words += (words.empty() ? "" : ", ") + bare(way->value, style);
    return words;
}

std::string caught_words(const Placed& placed) {
    if (!placed.along || !placed.across)
        return placed.along ? placed.along->words : placed.across ? placed.across->words : "";
    return placed.along->words + " along; " + placed.across->words + " across";
}

std::string edge_words(const Placed& placed, PrintStyle style) {
    std::string words;
    if (placed.along)
        words += bare(placed.along->to_edge, style) + " along";
    if (placed.across)
        words += (words.empty() ? "" : " and ") + bare(placed.across->to_edge, style) + " across";
    return words.empty() ? words : words + " to the nearest edges";
}

} // namespace treadle::edit
