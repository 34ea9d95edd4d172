#include "ui/widgets/drawing.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace treadle::ui {

namespace {

constexpr double k_pi = 3.14159265358979;
constexpr float k_dash = 8;
constexpr float k_dash_gap = 5;
constexpr float k_ring_radius = 13;

ImVec2 to_im(const PointMm& point) {
    return {static_cast<float>(point.x), static_cast<float>(point.y)};
}

void dashes(ImDrawList& draw, ImVec2 from, ImVec2 to, Colour colour, float stroke) {
    const float length = std::hypot(to.x - from.x, to.y - from.y);
    if (!(length > 0))
        return;
    const float ux = (to.x - from.x) / length;
    const float uy = (to.y - from.y) / length;
    const int count = static_cast<int>(length / (k_dash + k_dash_gap)) + 1;
    for (int i = 0; i < count; ++i) {
        const float at = (k_dash + k_dash_gap) * static_cast<float>(i);
        const float end = std::min(length, at + k_dash);
        draw.AddLine({from.x + ux * at, from.y + uy * at},
                     {from.x + ux * end, from.y + uy * end},
                     colour,
                     stroke);
    }
}

} // namespace

void DrawingPainter::fill(std::span<const PointMm> outline,
                          std::span<const std::array<int, 3>> triangles,
                          Ink ink) {
    ImDrawList& draw = ui_.draw();
    // Smoothed edges would leave a hair between two triangles.
    const ImDrawListFlags flags = draw.Flags;
    draw.Flags &= ~ImDrawListFlags_AntiAliasedFill;
    const auto at = [&](int i) { return to_im(on_screen(outline[static_cast<std::size_t>(i)])); };
    for (const auto& [a, b, c] : triangles)
        draw.AddTriangleFilled(at(a), at(b), at(c), ui_.colour(ink));
    draw.Flags = flags;
}

void DrawingPainter::line(std::span<const PointMm> points, const Stroke& stroke, bool closed) {
    ImDrawList& draw = ui_.draw();
    const Colour colour = ui_.colour(stroke.ink);
    if (stroke.dashed) {
        for (std::size_t i = 1; i < points.size(); ++i)
            dashes(draw,
                   to_im(on_screen(points[i - 1])),
                   to_im(on_screen(points[i])),
                   colour,
                   stroke.px);
        if (closed && points.size() > 2)
            dashes(draw,
                   to_im(on_screen(points.back())),
                   to_im(on_screen(points.front())),
                   colour,
                   stroke.px);
        return;
    }
    for (const PointMm& point : points)
        draw.PathLineTo(to_im(on_screen(point)));
    draw.PathStroke(colour, closed ? ImDrawFlags_Closed : ImDrawFlags_None, stroke.px);
}

void DrawingPainter::segment(PointMm from, PointMm to, const Stroke& stroke) {
    const std::array<PointMm, 2> points{from, to};
    line(points, stroke);
}

void DrawingPainter::arc(
    PointMm centre, double radius_mm, double from_deg, double to_deg, const Stroke& stroke) {
    // As many corners as keep the chord within a fifth of a pixel.
    const double radius_px = std::max(radius_mm * scale(), 0.5);
    const double step = 2 * std::acos(std::max(0.0, 1 - 0.2 / std::max(radius_px, 0.4)));
    const double sweep = (to_deg - from_deg) * k_pi / 180;
    const int count = std::clamp(static_cast<int>(std::ceil(std::fabs(sweep) / step)), 4, 256);
    std::vector<PointMm> points;
    points.reserve(static_cast<std::size_t>(count) + 1);
    for (int i = 0; i <= count; ++i) {
        const double angle = from_deg * k_pi / 180 + sweep * i / count;
        points.push_back(
            {centre.x + radius_mm * std::cos(angle), centre.y + radius_mm * std::sin(angle)});
    }
    line(points, stroke);
}

void DrawingPainter::circle(PointMm centre, double radius_mm, const Stroke& stroke) {
    if (stroke.dashed) {
        arc(centre, radius_mm, 0, 360, stroke);
        return;
    }
    ui_.draw().AddCircle(to_im(on_screen(centre)),
                         static_cast<float>(radius_mm * scale()),
                         ui_.colour(stroke.ink),
                         0,
                         stroke.px);
}

void DrawingPainter::disc(PointMm centre, double radius_mm, Ink ink) {
    ui_.draw().AddCircleFilled(
        to_im(on_screen(centre)), static_cast<float>(radius_mm * scale()), ui_.colour(ink));
}

void DrawingPainter::text(PointMm at,
                          std::string_view words,
                          const TextStyle& style,
                          float shift_x_px,
                          float shift_y_px) {
    const ImVec2 p = to_im(on_screen(at));
    const float width = text_width(ui_, words, style);
    const float height = line_height(ui_, style.size);
    const float x = style.align == Align::left     ? p.x
                    : style.align == Align::centre ? p.x - width / 2
                                                   : p.x - width;
    draw_text(ui_,
              {x + shift_x_px, p.y - height / 2 + shift_y_px, width, height},
              words,
              {style.size, style.bold, style.ink, Align::left});
}

void DrawingPainter::ring(PointMm at, int number, bool chosen, float shift_x_px, float shift_y_px) {
    ImVec2 p = to_im(on_screen(at));
    p.x += shift_x_px;
    p.y += shift_y_px;
    ImDrawList& draw = ui_.draw();
    draw.AddCircleFilled(p, k_ring_radius, ui_.colour(chosen ? Ink::ink : Ink::paper), 32);
    draw.AddCircle(p, k_ring_radius - 0.75F, ui_.colour(Ink::ink), 32, 1.5F);
    draw_text(ui_,
              {p.x - k_ring_radius, p.y - k_ring_radius, 2 * k_ring_radius, 2 * k_ring_radius},
              std::to_string(number),
              {TextSize::small, true, chosen ? Ink::paper : Ink::ink, Align::centre});
}

void drawing(Ui& ui,
             std::string_view id,
             const Rect& rect,
             const Drawing& what,
             const std::function<void(DrawingPainter&)>& paint) {
    Surface whole;
    drawing(ui, id, rect, whole, what, paint);
}

void drawing(Ui& ui,
             std::string_view id,
             const Rect& rect,
             Surface& surface,
             const Drawing& what,
             const std::function<void(DrawingPainter&)>& paint) {
    if (!what.spoken.empty())
        ui.add_node(id, Role::picture, rect, what.spoken);
    surface.fit(rect.inset(what.margin_px), what.bounds);
    if (!ui.is_visible(rect))
        return;
    ui.draw().PushClipRect({rect.x, rect.y}, {rect.right(), rect.bottom()}, true);
    DrawingPainter painter(ui, surface);
    paint(painter);
    ui.draw().PopClipRect();
}

namespace {

constexpr float k_knob_stem = 40;
constexpr float k_cross = 12;
constexpr float k_arrow = 7;

void arrow(ImDrawList& draw, ImVec2 at, float dx, float dy, Colour colour) {
    const ImVec2 tip{at.x + dx * k_arrow, at.y + dy * k_arrow};
    draw.AddTriangleFilled(tip,
                           {at.x - dy * k_arrow, at.y + dx * k_arrow},
                           {at.x + dy * k_arrow, at.y - dx * k_arrow},
                           colour);
}

} // namespace

KnobTouch knob(Ui& ui, std::string_view id, const Rect& inside, const Knob& what) {
    const float side = std::max(48.0F, ui.size().target);
    const auto place = to_im(what.at);
    // To the lower right, and to the other side where there is no room.
    const auto beside = [&](float at, float low, float high) {
        const float far = k_knob_stem + side / 2;
        const float centre = at + far + side / 2 <= high ? at + far : at - far;
        return std::clamp(centre, low + side / 2, std::max(low + side / 2, high - side / 2));
    };
    const float x =
        what.along || !what.across ? beside(place.x, inside.x, inside.right()) : place.x;
    const float y = beside(place.y, inside.y, inside.bottom());
    const Rect rect{x - side / 2, y - side / 2, side, side};
    const std::string full = ui.add_handle(id, rect, what.name).id;
    const Touch touch = ui.touch(full);
    ImDrawList& draw = ui.draw();
    const Colour ink = ui.colour(Ink::touch);
    const Colour ground = ui.colour(touch.pressed ? Ink::touch : Ink::paper);
    const Colour sign = ui.colour(touch.pressed ? Ink::paper : Ink::touch);
    draw.AddLine(place, {x, y}, ink, 2);
    draw.AddLine({place.x - k_cross, place.y}, {place.x + k_cross, place.y}, ink, 2);
    draw.AddLine({place.x, place.y - k_cross}, {place.x, place.y + k_cross}, ink, 2);
    draw.AddCircleFilled({x, y}, side / 2 - 2, ground, 32);
    draw.AddCircle({x, y}, side / 2 - 3, ink, 32, 3);
    const float off = side / 2 - 16;
    if (what.along) {
        arrow(draw, {x - off, y}, -1, 0, sign);
        arrow(draw, {x + off, y}, 1, 0, sign);
    }
    if (what.across) {
        arrow(draw, {x, y - off}, 0, -1, sign);
        arrow(draw, {x, y + off}, 0, 1, sign);
    }
    ui.draw_focus_ring(full, rect);
    return {ui.take_drag(full), ui.take_activation(full)};
}

} // namespace treadle::ui
