#include "ui/widgets/controls.h"

#include <imgui.h>

#include <cmath>

namespace treadle::ui {

namespace {

constexpr float k_key_margin = 20;
constexpr float k_icon_gap = 10;

float icon_px(const Ui& ui, TextSize size) {
    return std::round(text_px(size) * ui.size().text_scale);
}

struct KeyInks {
    Ink ground = Ink::paper;
    Ink edge = Ink::touch;
    Ink words = Ink::touch;
    bool has_ground = false;
    bool has_edge = true;
};

KeyInks inks_of(const Button& key, const Touch& touch) {
    KeyInks inks;
    if (key.look == KeyLook::danger)
        inks.edge = inks.words = Ink::does_not_fit;
    if (key.look == KeyLook::quiet)
        inks.has_edge = false;
    if (key.look == KeyLook::primary)
        inks = {Ink::ink, Ink::ink, Ink::paper, true, true};
    if (!key.enabled) {
        // Still readable: it says why it cannot be pressed.
        const bool edge = inks.has_edge;
        return {Ink::bench, Ink::line, Ink::quiet, key.look != KeyLook::quiet, edge};
    }
    if (touch.pressed) {
        // A pressed key is seen, because glass is not felt: its two inks change places.
        const Ink solid = key.look == KeyLook::primary ? Ink::touch : inks.words;
        return {solid, solid, Ink::paper, true, true};
    }
    if (touch.hovered && key.look != KeyLook::primary)
        return {Ink::steel, inks.edge, inks.words, true, inks.has_edge};
    return inks;
}

void draw_key(Ui& ui, const Rect& rect, const Button& key, const Touch& touch) {
    const KeyInks inks = inks_of(key, touch);
    if (inks.has_ground)
        ui.fill(rect, inks.ground);
    // Thin when it cannot be pressed: the sun's look has no grey to say it with.
    if (inks.has_edge)
        ui.outline(rect, inks.edge, key.enabled ? ui.size().key_stroke : 1);
    const TextStyle style{key.size, key.enabled, inks.words, Align::left};
    const float side = icon_px(ui, key.size);
    const bool has_icon = key.icon != Icon::none;
    if (key.icon_only) {
        draw_icon(ui.draw(),
                  key.icon,
                  rect.x + rect.w / 2,
                  rect.y + rect.h / 2,
                  side,
                  ui.colour(inks.words));
        return;
    }
    const float before = has_icon ? side + k_icon_gap : 0;
    const float room = std::max(0.0F, rect.w - 12 - before);
    const float words = std::min(text_width(ui, key.label, style), room);
    const float x = rect.x + (rect.w - words - before) / 2;
    if (has_icon)
        draw_icon(
            ui.draw(), key.icon, x + side / 2, rect.y + rect.h / 2, side, ui.colour(inks.words));
    draw_text(ui, {x + before, rect.y, words, rect.h}, key.label, style);
}

} // namespace

float button_width(const Ui& ui, const Button& key) {
    const float side = icon_px(ui, key.size);
    if (key.icon_only)
        return std::max(ui.size().target, side + 24);
    const float before = key.icon != Icon::none ? side + k_icon_gap : 0;
    const TextStyle style{key.size, true, Ink::touch, Align::left};
    return text_width(ui, key.label, style) + before + 2 * k_key_margin;
}

bool button(Ui& ui, std::string_view id, const Rect& rect, const Button& key) {
    Node& node = ui.add_control(
        id, Role::button, rect, key.name.empty() ? key.label : key.name, key.enabled);
    if (!key.enabled)
        node.note.assign(key.why_not);
    const std::string full = node.id;
    if (ui.is_visible(rect)) {
        draw_key(ui, rect, key, ui.touch(full));
        ui.draw_focus_ring(full, rect);
    }
    return ui.take_activation(full) && key.enabled;
}

bool button(Ui& ui, std::string_view id, const Rect& rect, std::string_view label) {
    Button key;
    key.label = label;
    return button(ui, id, rect, key);
}

bool press_area(Ui& ui, std::string_view id, const Rect& rect, std::string_view name) {
    const std::string full = ui.add_control(id, Role::button, rect, name).id;
    const Touch touch = ui.touch(full);
    if (touch.pressed || touch.hovered)
        ui.fill(rect, Ink::steel);
    ui.draw_focus_ring(full, rect.inset(4));
    return ui.take_activation(full);
}

namespace {

constexpr float k_tab_margins = 32;
constexpr float k_least_tab_margins = 10;

float words_width(const Ui& ui, std::span<const std::string> labels, TextSize size) {
    float width = 0;
    for (const std::string& label : labels)
        width += text_width(ui, label, {size, true});
    return width;
}

} // namespace

float tabs_width(const Ui& ui, std::span<const std::string> labels) {
    return words_width(ui, labels, TextSize::body) +
           k_tab_margins * static_cast<float>(labels.size());
}

float least_tabs_width(const Ui& ui, std::span<const std::string> labels) {
    return words_width(ui, labels, TextSize::small) +
           k_least_tab_margins * static_cast<float>(labels.size());
}

std::optional<int> tabs(Ui& ui,
                        std::string_view id,
                        const Rect& rect,
                        std::string_view name,
                        std::span<const std::string> labels,
                        int selected) {
    std::optional<int> chosen;
    // Too narrow: the margins give way, then the size of the words, then all of it alike.
    const float count = static_cast<float>(std::max<std::size_t>(1, labels.size()));
    const auto margins_at = [&](TextSize at) {
        return std::min(k_tab_margins, (rect.w - words_width(ui, labels, at)) / count);
    };
    const TextSize size =
        margins_at(TextSize::body) < k_least_tab_margins ? TextSize::small : TextSize::body;
    const float margins = std::max(0.0F, margins_at(size));
    const float squeeze =
        std::min(1.0F, rect.w / std::max(1.0F, words_width(ui, labels, size) + margins * count));
    const Group group(ui, id, rect, name, Role::tabs);
    const Scope scope(ui, id);
    Rect rest = rect;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const TextStyle words{size, true};
        const Rect place = rest.cut_left((text_width(ui, labels[i], words) + margins) * squeeze);
        const bool on = static_cast<int>(i) == selected;
        const float aside = std::min(margins * squeeze, ui.size().gap) / 2;
        const float above = std::clamp(place.h - ui.size().target, 0.0F, ui.size().gap) / 2;
        Node& node = ui.add_control(labels[i], Role::tab, place.inset(aside, above), labels[i]);
        node.on = on;
        const std::string full = node.id;
        const Touch touch = ui.touch(full);
        if (touch.pressed || (touch.hovered && !on))
            ui.fill(place, Ink::steel);
        draw_text(ui,
                  place.inset(margins / 8, 0),
                  labels[i],
                  {size, true, on ? Ink::ink : Ink::touch, Align::centre});
        if (on)
            ui.fill({place.x, place.bottom() - 6, place.w, 6}, Ink::ink);
        ui.draw_focus_ring(full, place.inset(5));
        if (ui.take_activation(full) && !on)
            chosen = static_cast<int>(i);
    }
    return chosen;
}

float row_height(const Ui& ui, float least) {
    return std::max(least, ui.size().target + ui.size().gap);
}

RowTouch list_row(Ui& ui, std::string_view id, const Rect& rect, const ListRow& row) {
    std::string spoken(row.spoken);
    if (spoken.empty()) {
        spoken.append(row.title).append(" ").append(row.beside);
        spoken.append(", ").append(row.detail);
    }
    // Rows are drawn edge to edge, but a finger between two of them presses neither.
    const float apart = std::clamp(rect.h - ui.size().target, 0.0F, ui.size().gap) / 2;
    Node& node = ui.add_control(id, Role::row, rect.inset(0, apart), spoken);
    node.on = row.selected;
    const std::string full = node.id;
    Rect inner = rect;
    inner.cut_left(14);
    inner.cut_right(8);
    RowTouch result{ui.take_activation(full), inner.cut_right(row.slots_width, 6)};
    if (!ui.is_visible(rect))
        return result;
    const Touch touch = ui.touch(full);
    if (touch.pressed || touch.hovered)
        ui.fill(rect, Ink::steel);
    else if (row.selected)
        ui.fill(rect, Ink::paper);
    if (row.selected)
        ui.fill({rect.x, rect.y, 8, rect.h}, Ink::ink);
    ui.fill({rect.x, rect.bottom() - 1, rect.w, 1}, Ink::line);

    const float scale = ui.size().text_scale;
    const float title_height = line_height(ui, TextSize::large);
    const float detail_height = row.detail.empty() ? 0 : line_height(ui, TextSize::small);
    const float top = rect.y + (rect.h - title_height - detail_height) / 2;
    const float gap = 12 * scale;
    const float kept = row.beside.empty() ? 0 : text_width(ui, row.beside) + gap;
    const Rect first{inner.x, top, std::max(inner.w - kept, inner.w / 2), title_height};
    float used = draw_text(ui, first, row.title, {TextSize::large, true});
    if (!row.beside.empty() && used + gap < inner.w) {
        const Rect beside{first.x + used + gap, top + 1, inner.w - used - gap, title_height};
        used += gap + draw_text(ui, beside, row.beside, {});
    }
    result.first_rest = std::max(inner.w - used, 0.0F);
    draw_text(ui,
              {inner.x, top + title_height, inner.w, detail_height},
              row.detail,
              {TextSize::small, false, Ink::quiet});
    ui.draw_focus_ring(full, rect.inset(5));
    return result;
}

namespace {

float tick_side(const Ui& ui) { return std::round(24 * ui.size().text_scale); }
constexpr float k_beside_tick = 18;

} // namespace

Rect side_ground(Ui& ui, const Rect& rect) {
    ui.fill(rect, Ink::bench);
    const float edge = rect.right() - 1;
    ui.rule(edge, rect.y, edge, rect.bottom(), Ink::ink, ui.size().stroke);
    return {rect.x, rect.y, rect.w - ui.size().stroke, rect.h};
}

float toggle_width(const Ui& ui, std::string_view label) {
    return tick_side(ui) + k_beside_tick + text_width(ui, label);
}

bool toggle(Ui& ui, std::string_view id, const Rect& rect, std::string_view label, bool on) {
    Node& node = ui.add_control(id, Role::toggle, rect, label);
    node.on = on;
    const std::string full = node.id;
    if (ui.is_visible(rect)) {
        const Touch touch = ui.touch(full);
        if (touch.hovered || touch.pressed)
            ui.fill(rect, Ink::steel);
        const float side = tick_side(ui);
        const Rect box{rect.x + 6, rect.y + (rect.h - side) / 2, side, side};
        if (on)
            ui.fill(box, Ink::touch);
        ui.outline(box, Ink::touch, ui.size().key_stroke);
        if (on)
            draw_icon(ui.draw(),
                      Icon::tick,
                      box.x + side / 2,
                      box.y + side / 2,
                      side * 0.7F,
                      ui.colour(Ink::paper));
        Rect words = rect;
        words.cut_left(side + k_beside_tick);
        draw_text(ui, words, label, {});
        ui.draw_focus_ring(full, rect);
    }
    return ui.take_activation(full);
}

Dialog::Dialog(Ui& ui, std::string_view id, const Rect& rect, std::string_view name) : ui_(ui) {
    ui.begin_container(id, Role::dialog, rect, name);
    // The page behind steps back; the sheet has one heavy edge and no shadow.
    const Rect& all = ui.screen();
    ui.draw().AddRectFilled({all.x, all.y},
                            {all.right(), all.bottom()},
                            (ui.colour(Ink::bench) & 0xFFFFFFU) | 0xD0000000U);
    ui.fill(rect, Ink::paper);
    ui.outline(rect, Ink::ink, 3);
}

} // namespace treadle::ui
