#include "ui/widgets/figure.h"

#include "ui/widgets/text.h"

#include <imgui.h>

#include <cfloat>
#include <cmath>

namespace treadle::ui {

namespace {

constexpr TextStyle k_unit{TextSize::title, false, Ink::quiet, Align::left};
constexpr float k_unit_gap = 10;

ImFont& face(const Ui& ui) { return *ui.fonts().get(TextSize::huge, true); }

/// Where the digits of a face begin and how high they are, at its own size.
struct Digits {
    float top = 0;
    float height = 1;
};
Digits digits_of(const ImFont& font) {
    const ImFontGlyph* zero = font.FindGlyph('0');
    if (zero == nullptr || !(zero->Y1 > zero->Y0))
        return {0, font.FontSize};
    return {zero->Y0, zero->Y1 - zero->Y0};
}

float width_at_own_size(const ImFont& font, std::string_view words) {
    return font.CalcTextSizeA(font.FontSize, FLT_MAX, 0, words.data(), words.data() + words.size())
        .x;
}

float unit_width(const Ui& ui, std::string_view unit) {
    return unit.empty() ? 0 : k_unit_gap + text_width(ui, unit, k_unit);
}

} // namespace

float figure_height(const Ui& ui, const BigFigure& figure, float width, float most) {
    const ImFont& font = face(ui);
    const float own = width_at_own_size(font, figure.digits);
    const float room = std::max(1.0F, width - unit_width(ui, figure.unit));
    if (!(own > 0))
        return most;
    return std::min(most, digits_of(font).height * room / own);
}

void big_figure(
    Ui& ui, std::string_view id, float x, float y, float digit_height, const BigFigure& figure) {
    ImFont& font = face(ui);
    const Digits digits = digits_of(font);
    const float scale = digit_height / digits.height;
    const float width = width_at_own_size(font, figure.digits) * scale;
    const Rect rect{x, y, width + unit_width(ui, figure.unit), digit_height};
    ui.add_node(id, Role::words, rect, figure.spoken);
    if (!ui.is_visible(rect))
        return;
    ui.draw().AddText(&font,
                      font.FontSize * scale,
                      {std::round(x), std::round(y - digits.top * scale)},
                      ui.colour(Ink::ink),
                      figure.digits.data(),
                      figure.digits.data() + figure.digits.size());
    const float line = line_height(ui, k_unit.size);
    draw_text(ui,
              {x + width + k_unit_gap, rect.bottom() - line + 4, unit_width(ui, figure.unit), line},
              figure.unit,
              k_unit);
}

} // namespace treadle::ui
