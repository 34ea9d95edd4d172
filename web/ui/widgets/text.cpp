#include "ui/widgets/text.h"

#include <imgui.h>

#include <algorithm>
#include <cfloat>
#include <cmath>

namespace treadle::ui {

namespace {

constexpr std::string_view k_cut_sign = "\xE2\x80\xA6";
constexpr float k_line_per_em = 1.3F;

ImFont& face(const Ui& ui, const TextStyle& style) {
    return *ui.fonts().get(style.size, style.bold);
}

float width_of(const ImFont& font, std::string_view words) {
    if (words.empty()) // Dear ImGui takes an end that is null for "until the zero byte"
        return 0;
    return font.CalcTextSizeA(font.FontSize, FLT_MAX, 0, words.data(), words.data() + words.size())
        .x;
}

/// As much of `words` as fits in `width`, never half a letter.
std::string_view fitting(const ImFont& font, std::string_view words, float width) {
    const char* rest = nullptr;
    (void)font.CalcTextSizeA(
        font.FontSize, width, 0, words.data(), words.data() + words.size(), &rest);
    return words.substr(0, static_cast<std::size_t>(rest - words.data()));
}

void put(Ui& ui, ImFont& font, float x, float y, std::string_view words, Ink ink) {
    ui.draw().AddText(&font,
                      font.FontSize,
                      {std::round(x), std::round(y)},
                      ui.colour(ink),
                      words.data(),
                      words.data() + words.size());
}

/// How much of `words` goes into a line of this width: up to a space, for a figure ("53.5") is not
/// parted. A word that is wider than the line is.
std::size_t line_length(const ImFont& font, float width, std::string_view words) {
    const std::string_view line = words.substr(0, words.find('\n'));
    std::size_t fits = fitting(font, line, width).size();
    if (fits == line.size() || line[fits] == ' ')
        return fits;
    const std::size_t space = line.rfind(' ', fits);
    if (space != std::string_view::npos && space > 0)
        return space;
    constexpr unsigned k_continues = 0x80; // of a letter of several bytes
    for (fits = std::max<std::size_t>(fits, 1);
         fits < line.size() && (static_cast<unsigned char>(line[fits]) & 0xC0U) == k_continues;)
        ++fits;
    return fits;
}

/// Calls `line(words, index)` for each line of the wrapped text; returns how many there were.
template <typename Line>
int wrap(const ImFont& font, float width, std::string_view words, const Line& line) {
    int count = 0;
    while (!words.empty()) {
        const std::size_t length = line_length(font, width, words);
        line(words.substr(0, length), count++);
        words.remove_prefix(length);
        while (!words.empty() && words.front() == ' ')
            words.remove_prefix(1);
        if (!words.empty() && words.front() == '\n')
            words.remove_prefix(1);
    }
    return count;
}

float aligned_x(const Rect& rect, float width, Align align) {
    if (align == Align::right)
        return rect.right() - width;
    return align == Align::centre ? rect.x + (rect.w - width) / 2 : rect.x;
}

} // namespace

float text_width(const Ui& ui, std::string_view words, const TextStyle& style) {
    return std::ceil(width_of(face(ui, style), words));
}

float line_height(const Ui& ui, TextSize size) {
    const float scale = size < TextSize::figure ? ui.size().text_scale : 1.0F;
    return std::round(text_px(size) * scale * k_line_per_em);
}

float draw_text(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style) {
    if (words.empty() || !ui.is_visible(rect))
        return 0;
    ImFont& font = face(ui, style);
    const float y = rect.y + (rect.h - font.FontSize) / 2;
    const float width = width_of(font, words);
    if (width <= rect.w + 0.5F) {
        put(ui, font, aligned_x(rect, width, style.align), y, words, style.ink);
        return width;
    }
    ui.note_cut(words);
    const float sign = width_of(font, k_cut_sign);
    std::string cut(fitting(font, words, std::max(0.0F, rect.w - sign)));
    while (!cut.empty() && cut.back() == ' ')
        cut.pop_back();
    cut += k_cut_sign;
    put(ui, font, rect.x, y, cut, style.ink);
    return rect.w;
}

float text(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style) {
    ui.add_node(ui.next_id("words"), Role::words, rect, words);
    return draw_text(ui, rect, words, style);
}

float heading(Ui& ui, const Rect& rect, std::string_view words, int level, TextStyle style) {
    ui.add_node(ui.next_id("heading"), Role::heading, rect, words).level = level;
    style.bold = true;
    return draw_text(ui, rect, words, style);
}

float draw_paragraph(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style) {
    ImFont& font = face(ui, style);
    const float height = line_height(ui, style.size);
    const int lines = wrap(font, rect.w, words, [&](std::string_view line, int index) {
        draw_text(
            ui, {rect.x, rect.y + height * static_cast<float>(index), rect.w, height}, line, style);
    });
    return height * static_cast<float>(lines);
}

float paragraph_height(const Ui& ui, float width, std::string_view words, const TextStyle& style) {
    const int lines = wrap(face(ui, style), width, words, [](std::string_view, int) {});
    return line_height(ui, style.size) * static_cast<float>(lines);
}

float paragraph(Ui& ui, const Rect& rect, std::string_view words, const TextStyle& style) {
    const float height = paragraph_height(ui, rect.w, words, style);
    ui.add_node(ui.next_id("words"), Role::words, {rect.x, rect.y, rect.w, height}, words);
    return draw_paragraph(ui, rect, words, style);
}

} // namespace treadle::ui
