#include "ui/widgets/verdict.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace treadle::ui {

namespace {

// The offer stands at the same share of every strip's width, so that strips compare at a glance.
constexpr float k_offer_at = 0.72F;
constexpr float k_band = 12; ///< height of the demand
constexpr float k_hatch = 7; ///< from stripe to stripe
constexpr float k_pi = 3.14159265F;

/// Stripes at 45 degrees, clipped to the band.
void hatch(ImDrawList& draw, const Rect& band, Colour colour) {
    draw.PushClipRect({band.x, band.y}, {band.right(), band.bottom()}, true);
    const int stripes = static_cast<int>((band.w + band.h) / k_hatch) + 1;
    for (int i = 0; i < stripes; ++i) {
        const float x = band.x - band.h + k_hatch * static_cast<float>(i);
        const std::array<ImVec2, 4> stripe{ImVec2(x, band.bottom()),
                                           ImVec2(x + band.h, band.y),
                                           ImVec2(x + band.h + k_hatch / 2, band.y),
                                           ImVec2(x + k_hatch / 2, band.bottom())};
        draw.AddConvexPolyFilled(stripe.data(), static_cast<int>(stripe.size()), colour);
    }
    draw.PopClipRect();
}

void dashed_box(Ui& ui, const Rect& box, Ink ink, float stroke) {
    const float dash = 5;
    const float step = 9;
    const auto count = [&](float length) { return static_cast<int>(length / step) + 1; };
    for (int i = 0; i < count(box.w); ++i) {
        const float x = box.x + step * static_cast<float>(i);
        const float length = std::clamp(box.right() - x, 0.0F, dash);
        ui.fill({x, box.y, length, stroke}, ink);
        ui.fill({x, box.bottom() - stroke, length, stroke}, ink);
    }
    for (int i = 0; i < count(box.h); ++i) {
        const float y = box.y + step * static_cast<float>(i);
        const float length = std::clamp(box.bottom() - y, 0.0F, dash);
        ui.fill({box.x, y, stroke, length}, ink);
        ui.fill({box.right() - stroke, y, stroke, length}, ink);
    }
}

} // namespace

Ink ink_of(Verdict verdict) {
    switch (verdict) {
    case Verdict::fits:
        return Ink::fits;
    case Verdict::up_to:
        return Ink::up_to;
    case Verdict::does_not_fit:
        return Ink::does_not_fit;
    case Verdict::not_known:
        break;
    }
    return Ink::not_known;
}

void draw_verdict_shape(Ui& ui, Verdict verdict, float x, float y, float size) {
    ImDrawList& draw = ui.draw();
    const Colour colour = ui.colour(ink_of(verdict));
    const float half = size / 2;
    const float stroke = std::max(2.0F, size * 0.12F);
    switch (verdict) {
    case Verdict::fits:
        draw.AddCircleFilled({x, y}, half, colour, 32);
        break;
    case Verdict::up_to:
        draw.AddCircle({x, y}, half - stroke / 2, colour, 32, stroke);
        draw.PathArcTo({x, y}, half - stroke / 2, k_pi / 2, k_pi * 1.5F, 24);
        draw.PathFillConvex(colour);
        break;
    case Verdict::does_not_fit: {
        const float arm = half * 0.86F;
        const float heavy = std::max(2.5F, size * 0.2F);
        draw.AddLine({x - arm, y - arm}, {x + arm, y + arm}, colour, heavy);
        draw.AddLine({x - arm, y + arm}, {x + arm, y - arm}, colour, heavy);
        break;
    }
    case Verdict::not_known:
        dashed_box(ui, {x - half, y - half, size, size}, Ink::not_known, stroke);
        break;
    }
}

bool verdict_point(Ui& ui, std::string_view id, const Rect& rect, const VerdictPoint& point) {
    const std::string full = ui.add_control(id, Role::button, rect, point.spoken).id;
    if (ui.is_visible(rect)) {
        const Touch touch = ui.touch(full);
        const TextStyle style{
            TextSize::small, true, point.firm ? Ink::ink : Ink::quiet, Align::centre};
        const float line = line_height(ui, style.size);
        const float side = std::round(line * 0.8F);
        const ImVec2 at(rect.x + rect.w / 2, rect.y + rect.h / 2);
        const Ink ground = touch.pressed || touch.hovered ? Ink::steel : Ink::paper;
        ui.draw().AddCircleFilled(at, side / 2 + 4, ui.colour(ground), 32);
        draw_verdict_shape(ui, point.verdict, at.x, at.y, side);
        const float width = text_width(ui, point.label, style) + 6;
        const Rect words{at.x - width / 2, at.y + side / 2 + 2, width, line};
        ui.fill(words.inset(0, 2), ground);
        draw_text(ui, words, point.label, style);
        ui.draw_focus_ring(full, rect);
    }
    return ui.take_activation(full);
}

void verdict_mark(Ui& ui, const Rect& rect, const Mark& mark) {
    if (!mark.silent)
        ui.add_node(ui.next_id("verdict"),
                    Role::picture,
                    rect,
                    mark.spoken.empty() ? mark.word : mark.spoken);
    if (!ui.is_visible(rect))
        return;
    const Ink ink = ink_of(mark.verdict);
    const float line = line_height(ui, mark.size);
    const float side = std::round(text_px(mark.size) * ui.size().text_scale *
                                  (mark.layout == MarkLayout::below ? 1.3F : 1.0F));
    if (mark.layout == MarkLayout::below) {
        // A long word takes a second line rather than lose its end.
        const TextStyle style{mark.size, true, ink, Align::centre};
        const float words = std::min(paragraph_height(ui, rect.w, mark.word, style), 2 * line);
        const float top = rect.y + (rect.h - side - words - 3) / 2;
        draw_verdict_shape(ui, mark.verdict, rect.x + rect.w / 2, top + side / 2, side);
        draw_paragraph(ui, {rect.x, top + side + 3, rect.w, words}, mark.word, style);
        return;
    }
    draw_verdict_shape(ui, mark.verdict, rect.x + side / 2, rect.y + rect.h / 2, side);
    Rect words = rect;
    words.cut_left(side + 10);
    draw_text(ui, words, mark.word, {mark.size, true, ink});
}

void demand_strip(Ui& ui, const Rect& rect, const Strip& strip) {
    if (!strip.spoken.empty())
        ui.add_node(ui.next_id("strip"), Role::picture, rect, strip.spoken);
    if (!ui.is_visible(rect))
        return;
    const Rect band{rect.x, std::round(rect.y + (rect.h - k_band) / 2), rect.w, k_band};
    // Not a number is no demand that could be drawn: it is not known.
    const bool drawable = strip.verdict != Verdict::not_known && strip.low_share >= 0 &&
                          strip.high_share >= strip.low_share;
    if (!drawable) {
        dashed_box(ui, band, Ink::not_known, 2);
        return;
    }
    const Ink ink = ink_of(strip.verdict);
    const auto at = [&](double share) {
        return std::round(
            std::min(rect.w, static_cast<float>(std::min(share, 10.0)) * rect.w * k_offer_at));
    };
    const float low = at(strip.low_share);
    const float high = at(strip.high_share);
    ui.fill(band, Ink::bench);
    ui.fill({band.x, band.y, low, band.h}, ink);
    if (high > low) {
        const Rect unsure{band.x + low, band.y, high - low, band.h};
        hatch(ui.draw(), unsure, ui.colour(ink));
        ui.outline(unsure, ink, 1);
    }
    const float height = std::min(rect.h, 34.0F);
    ui.fill(
        {rect.x + std::round(rect.w * k_offer_at) - 2, rect.y + (rect.h - height) / 2, 4, height},
        Ink::ink);
}

namespace {

float sign_px(const Ui& ui) { return std::round(text_px(TextSize::body) * ui.size().text_scale); }

} // namespace

float message_height(const Ui& ui, float width, std::string_view words) {
    return paragraph_height(ui, width - sign_px(ui) - 10, words);
}

float message_line(Ui& ui, const Rect& rect, Verdict verdict, std::string_view words) {
    const float line = line_height(ui, TextSize::body);
    const float side = sign_px(ui);
    Rect body = rect;
    body.cut_left(side + 10);
    const float height = paragraph_height(ui, body.w, words);
    ui.add_node(ui.next_id("message"), Role::message, {rect.x, rect.y, rect.w, height}, words);
    draw_verdict_shape(ui, verdict, rect.x + side / 2, rect.y + line / 2, side);
    draw_paragraph(ui, body, words, {TextSize::body, false, ink_of(verdict)});
    return height;
}

void number_ring(Ui& ui, float x, float y, int number, bool chosen) {
    const float radius = 17;
    ImDrawList& draw = ui.draw();
    draw.AddCircleFilled({x, y}, radius, ui.colour(chosen ? Ink::ink : Ink::paper), 40);
    draw.AddCircle({x, y}, radius - 1, ui.colour(Ink::ink), 40, 2);
    draw_text(ui,
              {x - radius, y - radius, 2 * radius, 2 * radius},
              std::to_string(number),
              {TextSize::small, true, chosen ? Ink::paper : Ink::ink, Align::centre});
}

} // namespace treadle::ui
