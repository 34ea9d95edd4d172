// What the place of an operation can catch on.

#include "base/stable_sort.h"
#include "edit/placing_tracks.h"

#include <algorithm>
#include <cmath>

#include "layout/angle_gage.h"
#include "layout/edge.h"

namespace treadle::edit {

namespace {

constexpr Length k_same_place = quantity::millimetres(0.01);

std::string bare(Length value, PrintStyle style) {
    return quantity::print_bare(value, {style.system, 64});
}

std::string operation_words(std::size_t index) { return "operation " + std::to_string(index + 1); }

/// A distance that a hole keeps from an edge, as it would be set out.
struct EdgeDistance {
    Length least;
    std::string words;
    const base::FormulaCard* card = nullptr;
};

class Lines {
public:
    Lines(const Placing& placing, const Tracks& tracks) : placing_(placing), tracks_(tracks) {}

    std::vector<SnapLine> make() {
        const job::Operation& is = part().operations[static_cast<std::size_t>(placing_.operation)];
        if (const auto* punch = std::get_if<job::Punch>(&is))
            for_punch(*punch);
        else if (std::holds_alternative<job::Notch>(is))
            for_notch();
        else if (const auto* cut = std::get_if<job::Cut>(&is))
            for_cut(cut->side == job::CutSide::width ? Axis::across : Axis::along);
        else if (std::holds_alternative<job::Bend>(is))
            for_bend();
        base::stable_sort(lines_, [](const SnapLine& a, const SnapLine& b) {
            if (a.axis != b.axis)
                return a.axis < b.axis;
            return a.value < b.value;
        });
        return std::move(lines_);
    }

private:
    [[nodiscard]] const job::Part& part() const { return *placing_.plan.part; }
    [[nodiscard]] const std::optional<Track>& track(Axis axis) const {
        return axis == Axis::along ? tracks_.along : tracks_.across;
    }

    /// The first that is said for a place keeps it.
    void add(Axis axis,
             Length value,
             SnapKind kind,
             std::string words,
             const base::FormulaCard* card = nullptr) {
        const std::optional<Track>& way = track(axis);
        if (!way || value < way->low || value > way->high)
            return;
        for (const SnapLine& known : lines_) {
            const Length apart = larger(known.value, value) - smaller(known.value, value);
            if (known.axis == axis && apart < k_same_place)
                return;
        }
        lines_.push_back({axis, value, way->origin + value, kind, std::move(words), card});
    }
    void add_flat(Axis axis, Length flat, SnapKind kind, std::string words) {
        if (const std::optional<Track>& way = track(axis))
            add(axis, flat - way->origin, kind, std::move(words));
    }

    void for_punch(const job::Punch& punch) {
        gauge_lines(punch);
        for (const Axis axis : {Axis::along, Axis::across})
            for (const EdgeDistance& edge : edge_distances(punch, axis))
                from_both_ends(axis, edge);
        const std::string ways = part().legs.empty() ? "length" : "blank";
        middle(Axis::along, "middle of the " + ways);
        middle(Axis::across, "middle of the width");
        middle_of_leg(punch);
        others();
    }

    void gauge_lines(const job::Punch& punch) {
        if (part().section.shape != section::Shape::angle)
            return;
        const Length leg = section::width_of(part().section, punch.face);
        const auto gages = layout::angle_gages(leg);
        if (!gages.ok())
            return;
        const auto line = [&](Length at, int which, const char* words) {
            const auto working = layout::angle_gage_working(leg, which);
            add(Axis::across,
                at,
                SnapKind::gauge_line,
                words + bare(at, placing_.style),
                working.ok() ? working->card : nullptr);
        };
        line(gages->single, 0, "gauge line ");
        if (gages->first == Length{})
            return;
        line(gages->first, 1, "first gauge line ");
        line(gages->first + gages->first_to_second, 2, "second gauge line ");
    }

    /// A sheared edge asks for more in the older tables: that is the usual distance, and the newer
    /// table's the least. Long edges of bars are rolled unless they are slit.
    [[nodiscard]] layout::EdgeKind edge_kind(Axis axis) const {
        const bool slit = std::any_of(
            part().operations.begin(), part().operations.end(), [](const job::Operation& o) {
                const auto* cut = std::get_if<job::Cut>(&o);
                return cut != nullptr && cut->side == job::CutSide::width;
            });
        const bool rolled =
            axis == Axis::across && !slit && part().section.shape != section::Shape::plate;
        return rolled ? layout::EdgeKind::rolled : layout::EdgeKind::sheared;
    }

    /// Distances are for bolts: a hole that is none has none.
    [[nodiscard]] std::vector<EdgeDistance> edge_distances(const job::Punch& punch,
                                                           Axis axis) const {
        const bool slot = punch.hole.shape == geometry::HoleShape::obround;
        if (!slot && punch.hole.shape != geometry::HoleShape::round)
            return {};
        const auto bolt = layout::bolt_of_hole(punch.hole.size);
        if (!bolt.ok())
            return {};
        layout::EdgeQuestion question;
        question.bolt = *bolt;
        question.hole = punch.hole.size;
        question.edge = edge_kind(axis);
        if (slot) {
            const auto kind = layout::slot_kind(*bolt, punch.hole.size2);
            if (!kind.ok())
                return {};
            question.kind = *kind;
            question.slot_length = punch.hole.size2;
            const bool lies_along = !punch.turned;
            question.axis = lies_along == (axis == Axis::along) ? layout::SlotAxis::square
                                                                : layout::SlotAxis::parallel;
        }
        std::vector<EdgeDistance> made;
        const auto ask = [&](layout::EdgeRule rule, const char* words) {
            question.rule = rule;
            const auto working = layout::least_edge_working(question);
            const auto least = layout::least_edge(question);
            if (!working.ok() || !least.ok())
                return;
            // Set out in whole steps, never less than the table has it.
            const Length step = step_of(placing_.style);
            const Length set = step * std::ceil(*least / step - 1e-9);
            if (made.empty() || !(made.back().least == set))
                made.push_back({set, words + bare(set, placing_.style), working->card});
        };
        ask(layout::EdgeRule::careful, "edge distance ");
        const bool metric = placing_.style.system == UnitSystem::metric && !slot;
        ask(metric ? layout::EdgeRule::en_1993 : layout::EdgeRule::aisc_2016,
            "least edge distance ");
        return made;
    }

    void from_both_ends(Axis axis, const EdgeDistance& edge) {
        const std::optional<Track>& way = track(axis);
        if (!way)
            return;
        const char* near = axis == Axis::along ? " from the start" : " from the datum edge";
        const char* far = axis == Axis::along ? " from the finish" : " from the far edge";
        add(axis, edge.least - way->origin, SnapKind::edge_distance, edge.words + near, edge.card);
        add(axis,
            way->extent - way->span - edge.least - way->origin,
            SnapKind::edge_distance,
            edge.words + far,
            edge.card);
    }

    void middle(Axis axis, std::string words) {
        if (const std::optional<Track>& way = track(axis))
            add_flat(axis, (way->extent - way->span) / 2.0, SnapKind::middle, std::move(words));
    }

    void middle_of_leg(const job::Punch& punch) {
        const auto leg = static_cast<std::size_t>(std::max(punch.leg, 0));
        if (leg < part().legs.size() && tracks_.along)
            add(Axis::along,
                (part().legs[leg] - tracks_.along->span) / 2.0,
                SnapKind::middle,
                "middle of leg " + std::to_string(leg + 1));
    }

    /// In line with the first and the last of another pattern, and mirrored about the middle.
    void in_line(Axis axis, std::size_t other, Length first, Length span) {
        const std::string words = "in line with " + operation_words(other);
        add_flat(axis, first, SnapKind::in_line, words);
        if (span > Length{})
            add_flat(axis, first + span, SnapKind::in_line, words);
    }
    void mirrored(Axis axis, std::size_t other, Length first) {
        if (const std::optional<Track>& way = track(axis))
            add_flat(axis,
                     way->extent - first - way->span,
                     SnapKind::mirrored,
                     "mirrors " + operation_words(other));
    }

    template <class Each>
    void each_other(const Each& each) {
        for (std::size_t i = 0; i < part().operations.size(); ++i)
            if (static_cast<int>(i) != placing_.operation)
                each(i, part().operations[i]);
    }

    void others() {
        each_other([&](std::size_t i, const job::Operation& other) {
            if (const auto* punch = std::get_if<job::Punch>(&other)) {
                const HolesOnBlank holes = holes_on_blank(placing_.plan, *punch);
                in_line(Axis::along, i, holes.along, holes.span_along);
                if (punch->face == tracks_.face)
                    in_line(Axis::across, i, holes.across, holes.span_across);
            } else if (const auto* notch = std::get_if<job::Notch>(&other)) {
                if (notch->edge == job::NotchEdge::near_edge ||
                    notch->edge == job::NotchEdge::far_edge)
                    in_line(Axis::along, i, notch->at, Length{});
            }
        });
        each_other([&](std::size_t i, const job::Operation& other) {
            const auto* punch = std::get_if<job::Punch>(&other);
            if (punch == nullptr)
                return;
            const HolesOnBlank holes = holes_on_blank(placing_.plan, *punch);
            mirrored(Axis::along, i, holes.along);
            if (punch->face == tracks_.face)
                mirrored(Axis::across, i, holes.across);
        });
    }

    void for_notch() {
        middle(Axis::along, "middle of the edge");
        middle(Axis::across, "middle of the end");
        std::size_t bend = 0;
        each_other([&](std::size_t i, const job::Operation& other) {
            if (!std::holds_alternative<job::Bend>(other))
                return;
            if (bend < placing_.plan.blank.bend_lines.size())
                add_flat(Axis::along,
                         placing_.plan.blank.bend_lines[bend++],
                         SnapKind::in_line,
                         "on the bend of " + operation_words(i));
        });
        others();
        each_other([&](std::size_t i, const job::Operation& other) {
            const auto* notch = std::get_if<job::Notch>(&other);
            if (notch != nullptr && notch->edge < job::NotchEdge::start_end)
                mirrored(Axis::along, i, notch->at);
        });
    }

    /// The finish end, or the far edge, measured from the holes that are there.
    void for_cut(Axis axis) {
        each_other([&](std::size_t i, const job::Operation& other) {
            const auto* punch = std::get_if<job::Punch>(&other);
            if (punch == nullptr)
                return;
            const HolesOnBlank holes = holes_on_blank(placing_.plan, *punch);
            const bool along = axis == Axis::along;
            const Length first = along ? holes.along : holes.across;
            const Length last = first + (along ? holes.span_along : holes.span_across);
            for (const EdgeDistance& edge : edge_distances(*punch, axis))
                add(axis,
                    last + edge.least,
                    SnapKind::edge_distance,
                    edge.words + " from " + operation_words(i),
                    edge.card);
            add(axis, first + last, SnapKind::mirrored, operation_words(i) + " in the middle");
        });
    }

    void for_bend() {
        const std::size_t leg = bends_before(part(), static_cast<std::size_t>(placing_.operation));
        const Length sum = part().legs[leg] + part().legs[leg + 1];
        add(Axis::along, sum / 2.0, SnapKind::middle, "both legs alike");
        for (std::size_t i = 0; i < part().legs.size(); ++i) {
            if (i == leg || i == leg + 1)
                continue;
            const std::string like = "as long as leg " + std::to_string(i + 1);
            add(Axis::along,
                part().legs[i],
                SnapKind::in_line,
                "leg " + std::to_string(leg + 1) + " " + like);
            add(Axis::along,
                sum - part().legs[i],
                SnapKind::in_line,
                "leg " + std::to_string(leg + 2) + " " + like);
        }
    }

    const Placing& placing_;
    const Tracks& tracks_;
    std::vector<SnapLine> lines_;
};

} // namespace

std::vector<SnapLine> lines_of(const Placing& placing, const Tracks& tracks) {
    return Lines(placing, tracks).make();
}

} // namespace treadle::edit
