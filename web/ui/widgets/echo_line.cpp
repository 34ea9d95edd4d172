#include "ui/widgets/echo_line.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <cmath>

namespace treadle::ui {

namespace {

constexpr TextStyle k_read{TextSize::body, true, Ink::ink};
constexpr TextStyle k_wrong{TextSize::small, true, Ink::does_not_fit};
constexpr TextStyle k_quiet{TextSize::small, false, Ink::quiet};

Echo echo_of(const Entering& entry) {
    return entry.kind.echo ? entry.kind.echo(entry.typed) : Echo{};
}

std::string sentence(const Echo& echo) {
    return echo.allowed.empty() ? echo.trouble : echo.trouble + " " + echo.allowed;
}

/// The cross and the reason, as below a field.
void draw_trouble(Ui& ui, Rect rect, const std::string& words) {
    const float line = line_height(ui, TextSize::small);
    const float side = std::round(line * 0.6F);
    draw_verdict_shape(ui, Verdict::does_not_fit, rect.x + side / 2, rect.y + line / 2, side);
    rect.cut_left(side + 8);
    draw_paragraph(ui, rect, words, k_wrong);
}

std::optional<std::string> choice_keys(Ui& ui, Rect rect, const Echo& echo, bool side_by_side) {
    std::optional<std::string> chosen;
    const int count = static_cast<int>(echo.choices.size());
    for (int i = 0; i < count; ++i) {
        const Echo::Choice& choice = echo.choices[static_cast<std::size_t>(i)];
        const Rect place = side_by_side ? rect.column(i, count, ui.size().gap)
                                        : rect.cut_top(ui.size().target, ui.size().gap);
        Button key;
        key.label = choice.words;
        key.size = TextSize::small;
        if (button(ui, "meaning" + std::to_string(i), place, key))
            chosen = choice.typed;
    }
    return chosen;
}

} // namespace

float echo_height(const Ui& ui) {
    const float line = line_height(ui, TextSize::small);
    return line_height(ui, TextSize::title) + 4 + std::max(ui.size().target, 2 * line);
}

std::optional<std::string> echo_on_pad(Ui& ui, const Rect& rect, const Entering& entry) {
    const Scope scope(ui, "entry");
    Rect rest = rect;
    Rect head = rest.cut_top(line_height(ui, TextSize::title), 4);
    const float most = head.w * 0.5F;
    const float width = std::min(most, text_width(ui, entry.label, k_quiet));
    text(ui, head.cut_left(width, 16), entry.label, k_quiet);
    draw_text(ui, head, entry.typed, {TextSize::title, true, Ink::ink});
    ui.add_node("typed", Role::words, head, entry.typed.empty() ? "nothing typed" : entry.typed);
    const Echo echo = echo_of(entry);
    if (!echo.choices.empty()) {
        ui.add_node("echo", Role::message, {rest.x, rest.y, rest.w, 1}, sentence(echo));
        return choice_keys(ui, rest, echo, true);
    }
    const bool empty = entry.typed.empty();
    const std::string words = !echo.words.empty() ? echo.words : empty ? "" : sentence(echo);
    if (words.empty())
        return std::nullopt;
    ui.add_node("echo", echo.words.empty() ? Role::message : Role::words, rest, words);
    if (echo.words.empty())
        draw_trouble(ui, rest, words);
    else
        draw_paragraph(ui, rest, words, k_read);
    return std::nullopt;
}

std::optional<std::string> echo_beside(Ui& ui, const Rect& screen, const Entering& entry) {
    if (entry.typed == entry.value || entry.typed.empty())
        return std::nullopt;
    const Echo echo = echo_of(entry);
    const bool asks = !echo.choices.empty();
    const std::string words = echo.words.empty() ? sentence(echo) : echo.words;
    if (words.empty())
        return std::nullopt;
    constexpr float k_inside = 10;
    constexpr float k_cross = 28;
    const TextStyle& style = echo.words.empty() ? k_wrong : k_read;
    const float width = std::min(screen.w, std::max(entry.box.w, asks ? 420.0F : 340.0F));
    const float lines = paragraph_height(ui, width - 2 * k_inside - k_cross, words, style);
    const float keys = static_cast<float>(echo.choices.size()) * (ui.size().target + ui.size().gap);
    Rect slip{std::clamp(entry.box.x, screen.x, std::max(screen.x, screen.right() - width)),
              entry.box.bottom() + 4,
              width,
              lines + keys + 2 * k_inside};
    if (slip.bottom() > screen.bottom())
        slip.y = entry.box.y - line_height(ui, TextSize::small) - 8 - slip.h;
    const Group group(ui, "entry", slip, "What is typed");
    const Scope scope(ui, "entry");
    ui.semantics().last().keeps_focus = true;
    ui.fill(slip, Ink::paper);
    ui.outline(slip, Ink::ink, ui.size().stroke);
    Rect rest = slip.inset(k_inside);
    const Rect room = rest.cut_top(lines, asks ? ui.size().gap : 0);
    ui.add_node("echo", echo.words.empty() ? Role::message : Role::words, room, words);
    if (echo.words.empty())
        draw_trouble(ui, room, words);
    else
        draw_paragraph(ui, room, words, style);
    return choice_keys(ui, rest, echo, false);
}

} // namespace treadle::ui
