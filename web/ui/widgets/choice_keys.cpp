#include "ui/widgets/choice_keys.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>

namespace treadle::ui {

namespace {

constexpr float k_margin = 14; ///< between the edge of a key and its words

float tick_px(const Ui& ui) { return std::round(text_px(TextSize::body) * ui.size().text_scale); }

bool one_key(Ui& ui, std::string_view label, const Rect& rect, bool on) {
    Node& node = ui.add_control(label, Role::row, rect, label);
    node.on = on;
    const std::string full = node.id;
    if (ui.is_visible(rect)) {
        const Touch touch = ui.touch(full);
        if (on)
            ui.fill(rect, Ink::ink);
        else if (touch.pressed || touch.hovered)
            ui.fill(rect, Ink::steel);
        ui.outline(rect, on ? Ink::ink : Ink::touch, ui.size().key_stroke);
        Rect room = rect.inset(k_margin, 0);
        if (on) {
            const float side = tick_px(ui);
            const Rect tick = room.cut_left(side, 8);
            draw_icon(ui.draw(),
                      Icon::tick,
                      tick.x + side / 2,
                      tick.y + tick.h / 2,
                      side,
                      ui.colour(Ink::paper));
        }
        draw_text(
            ui, room, label, {TextSize::body, true, on ? Ink::paper : Ink::touch, Align::centre});
        ui.draw_focus_ring(full, rect);
    }
    return ui.take_activation(full) && !on;
}

} // namespace

std::optional<int> choice_keys(Ui& ui,
                               std::string_view id,
                               const Rect& rect,
                               std::string_view name,
                               std::span<const std::string> labels,
                               int selected,
                               float& bottom) {
    float widest = 0;
    for (const std::string& label : labels)
        widest = std::max(widest, text_width(ui, label, {TextSize::body, true}));
    widest += 2 * k_margin + tick_px(ui) + 8;
    const float gap = ui.size().gap;
    const int count = static_cast<int>(labels.size());
    const int fitting = static_cast<int>((rect.w + gap) / (widest + gap));
    const int columns = std::clamp(fitting, 1, std::max(1, count));
    const int ranks = (count + columns - 1) / columns;
    const float height = std::max(44.0F, ui.size().target);
    bottom = rect.y + static_cast<float>(ranks) * (height + gap) - gap;
    const Group group(ui, id, {rect.x, rect.y, rect.w, bottom - rect.y}, name);
    const Scope scope(ui, id);
    std::optional<int> chosen;
    for (int i = 0; i < count; ++i) {
        const Rect rank{
            rect.x, rect.y + static_cast<float>(i / columns) * (height + gap), rect.w, height};
        if (one_key(ui,
                    labels[static_cast<std::size_t>(i)],
                    rank.column(i % columns, columns, gap),
                    i == selected))
            chosen = i;
    }
    return chosen;
}

} // namespace treadle::ui
