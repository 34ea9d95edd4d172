// The part as it comes off the machine: side view of a bent flat, or section beside its length.

#include "plan/words.h"
#include "sheet/arc.h"
#include "sheet/drawing_near.h"
#include "sheet/figures.h"
#include "sheet/outline.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_points_per_mm = 72.0 / 25.4;
constexpr double k_margin_points = 30.0; ///< room for dimensions on each side
/// A length view longer than this many times the section is shown broken.
constexpr double k_most_length_in_sections = 2.2;

constexpr double k_least_points = 24.0; ///< of metal, however small the box

double unit_for(double width, double height, PictureBox room) {
    const double wide =
        std::max(k_least_points, room.width_mm * k_points_per_mm - 2.0 * k_margin_points);
    const double high =
        std::max(k_least_points, room.height_mm * k_points_per_mm - 2.0 * k_margin_points);
    return std::max(width / wide, height / high);
}

Spot along(Spot from, Spot way, double by) { return {from.x + way.x * by, from.y + way.y * by}; }

/// Keeps labels off a line: small boxes on the way along it, back to its beginning.
void keep_line_free(Drafter& draft, const std::vector<Spot>& line) {
    const double half = draft.points(1.5);
    const std::vector<Spot> outline = straightened(line, true, half);
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Spot a = outline[i];
        const Spot b = outline[(i + 1) % outline.size()];
        const double gap = std::hypot(b.x - a.x, b.y - a.y);
        const int steps = std::min(400, 1 + static_cast<int>(gap / (2.0 * half)));
        for (int k = 0; k < steps; ++k) {
            const double share = static_cast<double>(k) / steps;
            const Spot at{a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share};
            draft.keep_free({{at.x - half, at.y - half}, {at.x + half, at.y + half}});
        }
    }
}

/// Dimension line of one outside leg and its figure.
void dimension_leg(
    Drafter& draft, const ProfileLeg& leg, double thickness, Length value, PrintStyle style) {
    const double gap = std::hypot(leg.to.x - leg.from.x, leg.to.y - leg.from.y);
    if (gap <= 0.0)
        return;
    const Spot way{(leg.to.x - leg.from.x) / gap, (leg.to.y - leg.from.y) / gap};
    const Spot out{-way.y * leg.side, way.x * leg.side};
    // The leg's line is its lower face; the outside may be the upper one.
    const double skin = leg.side > 0.0 ? thickness : 0.0;
    const Spot a = along(along(leg.from, way, -leg.setback_from), out, skin);
    const Spot b = along(along(leg.to, way, leg.setback_to), out, skin);
    const auto off = [&](Spot from, double points) {
        return along(from, out, draft.points(points));
    };
    draft.measure(a, b, out, 2, 8, 11);
    keep_line_free(draft, {off(a, 8), off(b, 8)});
    keep_line_free(draft, {off(a, 2), off(a, 11)});
    keep_line_free(draft, {off(b, 2), off(b, 11)});
    const std::string text = setting_text(value, style);
    const double half_text = draft.text_width(text) / draft.points(2.0);
    std::vector<Spot> spots;
    const double lift = 8.0 + std::abs(out.x) * half_text + std::abs(out.y) * 6.0 + 2.0;
    for (const double extra : {0.0, 8.0, 16.0, 24.0})
        for (const double share : {0.5, 0.3, 0.7, 0.1, 0.9})
            spots.push_back(
                off({a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share}, lift + extra));
    draft.label_where_free(spots, text, plan::k_none);
}

void dimension_bend(Drafter& draft,
                    const ProfileBend& bend,
                    const job::Bend& wanted,
                    PrintStyle style) {
    std::vector<Spot> spots;
    for (double far = 12.0; far <= 48.0; far += 4.0)
        spots.push_back(along(bend.apex, bend.inward, draft.points(far)));
    for (double far = 16.0; far <= 70.0; far += 4.0)
        spots.push_back(along(bend.apex, bend.inward, -draft.points(far)));
    draft.label_where_free(spots, quantity::print(wanted.angle, style), bend.operation);
}

Drawing draw_bent(const plan::PartPlan& plan, PrintStyle style, PictureBox room, double near) {
    const auto profile = bent_profile(plan);
    if (!profile)
        return no_drawing(plan);
    const Box box = bounds_of(profile->outline, true);
    Drafter draft(std::min(near, unit_for(box.high.x - box.low.x, box.high.y - box.low.y, room)));
    const double thickness = to_millimetres(plan.part->section.thickness);
    draft.shape(profile->outline, Fill::steel, Pen::outline);
    keep_line_free(draft, profile->outline);
    for (std::size_t i = 0; i < profile->legs.size(); ++i)
        dimension_leg(draft, profile->legs[i], thickness, plan.part->legs[i], style);
    for (const ProfileBend& bend : profile->bends)
        dimension_bend(
            draft,
            bend,
            std::get<job::Bend>(plan.part->operations[static_cast<std::size_t>(bend.operation)]),
            style);
    return draft.finish("Side view of " + plan.part->mark +
                        " when bent, with outside lengths of its legs and bend angles.");
}

/// A dimension under (or left of) a shape, from zero to `size`.
void dimension_below(Drafter& draft, double from, double to, double y, const std::string& text) {
    const auto below = [&](double points) { return y - draft.points(points); };
    draft.measure({from, y}, {to, y}, {0.0, -1.0}, 3, 8, 11);
    draft.label({(from + to) / 2.0, below(18)}, text, Anchor::middle);
}
void dimension_left(Drafter& draft, double from, double to, double x, const std::string& text) {
    const auto left = [&](double points) { return x - draft.points(points); };
    draft.measure({x, from}, {x, to}, {-1.0, 0.0}, 3, 8, 11);
    draft.label({left(13), (from + to) / 2.0}, text, Anchor::end);
}

/// The length view with a break in it: both ends true, the middle left out.
struct LengthView {
    std::vector<std::vector<Spot>> pieces;
    double width = 0.0;
    double height = 0.0;
};

LengthView length_view(const plan::PartPlan& plan, double most) {
    const double length = blank_length_mm(plan);
    const section::Face face = faces_shown(*plan.part).front();
    const FaceOutline outline = face_outline(plan, face, length);
    LengthView view;
    view.height = face_width_mm(plan, face);
    if (length <= most) {
        view.width = length;
        view.pieces = {outline.outline};
        return view;
    }
    // Each half keeps the points of its own end; the break is a shallow zigzag.
    const double half = most / 2.0;
    const double jag = most * 0.03;
    const double h = view.height;
    view.width = most + 2.0 * jag;
    std::vector<Spot> left{{half, 0.0}, {half + jag, h * 0.4}, {half - jag, h * 0.6}, {half, h}};
    std::vector<Spot> right;
    const FaceOutline start = face_outline(plan, face, length);
    const std::size_t count = start.outline.size();
    std::size_t far_end = 0; // the walk comes back to the start end after the finish end
    for (std::size_t i = 0; i < count; ++i)
        if (start.outline[i].x > length / 2.0)
            far_end = i;
    for (std::size_t k = 1; k <= count; ++k) {
        const Spot spot = start.outline[(far_end + k) % count];
        if (spot.x <= half)
            left.push_back(spot);
    }
    const double moved = length - view.width;
    right.push_back({half + 2.0 * jag, 0.0});
    for (const Spot spot : start.outline)
        if (spot.x >= length - half)
            right.push_back({spot.x - moved, spot.y, spot.bulge});
    right.push_back({half + 2.0 * jag, h});
    right.push_back({half + jag, h * 0.6});
    right.push_back({half + 3.0 * jag, h * 0.4});
    view.pieces = {left, right};
    return view;
}

Drawing draw_section(const plan::PartPlan& plan, PrintStyle style, PictureBox room, double near) {
    const Section& section = plan.part->section;
    const auto outlines = section_outlines(section);
    const Box box = bounds_of(outlines.front(), true);
    const double tall = std::max(box.high.y, face_width_mm(plan, faces_shown(*plan.part).front()));
    if (!(tall > 0.0) || !(blank_length_mm(plan) > 0.0))
        return no_drawing(plan);
    const double across = std::max(tall, box.high.x);
    const LengthView view = length_view(plan, across * k_most_length_in_sections);
    // Side by side: section, a gap for the second view's figure, length view.
    const double gap_points = 36.0;
    const double wide = std::max(
        k_least_points, room.width_mm * k_points_per_mm - k_margin_points - gap_points - 8.0);
    const double high =
        std::max(k_least_points, room.height_mm * k_points_per_mm - 2.0 * k_margin_points);
    const double whole = std::max((box.high.x + view.width) / wide, tall / high);
    Drafter draft(std::min(near, whole));
    draft.shape(outlines.front(), Fill::steel, Pen::outline);
    for (std::size_t i = 1; i < outlines.size(); ++i)
        draft.shape(outlines[i], Fill::paper, Pen::outline);
    const auto text = [&](double mm) { return stock_text(millimetres(mm), style); };
    dimension_below(draft, 0.0, box.high.x, 0.0, text(box.high.x));
    const bool ring =
        section.shape == section::Shape::round || section.shape == section::Shape::pipe;
    if (!ring && section.shape != section::Shape::square)
        dimension_left(draft, 0.0, box.high.y, 0.0, text(box.high.y));
    if (section.thickness > Length{})
        draft.label({box.high.x / 2.0, box.high.y + draft.points(9)},
                    text(to_millimetres(section.thickness)) + " thick",
                    Anchor::middle);
    const double x = box.high.x + whole * gap_points;
    for (std::vector<Spot> piece : view.pieces) {
        for (Spot& spot : piece)
            spot.x += x;
        draft.shape(piece, Fill::steel, Pen::outline);
    }
    dimension_below(
        draft, x, x + view.width, 0.0, setting_text(millimetres(blank_length_mm(plan)), style));
    return draft.finish("Section and length of " + plan.part->mark + ", " +
                        plan::part_title(*plan.part, style) + ".");
}

Drawing draw_plain(const plan::PartPlan& plan, PrintStyle style, PictureBox room, double near) {
    const double length = blank_length_mm(plan);
    const double width = face_width_mm(plan, section::Face::flat);
    if (!(length > 0.0) || !(width > 0.0))
        return no_drawing(plan);
    Drafter draft(std::min(near, unit_for(length, width, room)));
    draft.shape(face_outline(plan, section::Face::flat, length).outline, Fill::steel, Pen::outline);
    draw_holes(draft, plan, section::Face::flat, 0.0);
    dimension_below(draft, 0.0, length, 0.0, setting_text(millimetres(length), style));
    dimension_left(draft, 0.0, width, 0.0, stock_text(millimetres(width), style));
    return draft.finish("Outline of " + plan.part->mark + ".");
}

} // namespace

Drawing draw_finished(const plan::PartPlan& plan, PrintStyle style, PictureBox room) {
    return draw_finished_near(plan, style, room, std::numeric_limits<double>::infinity());
}

Drawing draw_finished_near(const plan::PartPlan& plan,
                           PrintStyle style,
                           PictureBox room,
                           double mm_per_point) {
    if (is_bent(*plan.part))
        return draw_bent(plan, style, room, mm_per_point);
    const section::Shape shape = plan.part->section.shape;
    if (shape == section::Shape::flat || shape == section::Shape::plate)
        return draw_plain(plan, style, room, mm_per_point);
    return draw_section(plan, style, room, mm_per_point);
}

Drawing draw_small(const plan::PartPlan& plan) {
    const section::Shape shape = plan.part->section.shape;
    Drafter draft(1.0);
    if (is_bent(*plan.part)) {
        const auto profile = bent_profile(plan);
        if (!profile)
            return no_drawing(plan);
        draft.shape(profile->outline, Fill::steel, Pen::outline);
    } else if (shape == section::Shape::angle || shape == section::Shape::channel) {
        draft.shape(section_outlines(plan.part->section).front(), Fill::steel, Pen::outline);
    } else {
        const double width = face_width_mm(plan, section::Face::flat);
        const double length = blank_length_mm(plan);
        if (!(width > 0.0) || !(length > 0.0))
            return no_drawing(plan);
        constexpr double k_most_small_lengths = 4.0;
        const bool plain = shape == section::Shape::flat || shape == section::Shape::plate;
        if (plain && length <= width * k_most_small_lengths) {
            draft.shape(
                face_outline(plan, section::Face::flat, length).outline, Fill::steel, Pen::outline);
            draw_holes(draft, plan, section::Face::flat, 0.0);
        } else {
            for (const auto& piece : length_view(plan, width * k_most_small_lengths).pieces)
                draft.shape(piece, Fill::steel, Pen::outline);
        }
    }
    return draft.finish(plan.part->mark);
}

} // namespace treadle::sheet
