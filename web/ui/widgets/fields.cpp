#include "ui/widgets/fields.h"

#include "ui/widgets/icons.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <imgui.h>

#include <cmath>

namespace treadle::ui {

namespace {

struct Parts {
    Rect label;
    Rect box;
    Rect below;
};

Parts parts_of(const Ui& ui, Rect rect, const Field& field) {
    Parts parts;
    const float line = line_height(ui, TextSize::small);
    if (!field.label.empty())
        parts.label = rect.cut_top(line, 4);
    parts.box = rect.cut_top(std::max(44.0F, ui.size().target));
    rect.cut_top(4);
    parts.below = rect;
    return parts;
}

/// Draws all but the value. Returns the room of the value.
Rect draw_frame(Ui& ui, const Parts& parts, const Field& field, const Touch& touch) {
    const bool wrong = !field.error.empty();
    draw_text(ui, parts.label, field.label, {TextSize::small, false, Ink::quiet});
    ui.fill(parts.box, field.enabled ? Ink::paper : Ink::bench);
    if (touch.hovered || touch.pressed)
        ui.fill(parts.box, Ink::steel);
    const Ink edge = wrong ? Ink::does_not_fit : field.enabled ? Ink::touch : Ink::line;
    ui.outline(parts.box, edge, wrong ? ui.size().key_stroke : 2);
    if (!field.note.empty())
        draw_paragraph(ui, parts.below, field.note, {TextSize::small, false, Ink::quiet});
    Rect room = parts.box.inset(k_field_inside, 0);
    if (!field.unit.empty()) {
        const TextStyle quiet{TextSize::small, false, Ink::quiet, Align::right};
        draw_text(ui, room.cut_right(text_width(ui, field.unit, quiet), 8), field.unit, quiet);
    }
    return room;
}

std::optional<std::string>
field_of_words(Ui& ui, std::string_view id, const Rect& rect, const Field& field, Role role) {
    const Parts parts = parts_of(ui, rect, field);
    Node& node = ui.add_control(id, role, parts.box, field.label, field.enabled);
    node.value.assign(field.value);
    node.note.assign(field.unit);
    if (!field.note.empty())
        node.note.append(node.note.empty() ? "" : ", ").append(field.note);
    node.error.assign(field.error);
    node.live = field.live;
    node.on = role == Role::number && ui.pad_wish() != PadWish::never;
    const std::string full = node.id;
    if (const platform::Typing* typing = ui.typing_in(full)) {
        ui.keep_in_sight(rect.common({rect.x, rect.y, rect.w, parts.box.bottom() - rect.y}));
        if (role == Role::number && field.kind != nullptr)
            ui.enter({full,
                      std::string(field.label),
                      std::string(field.value),
                      typing->text,
                      parts.box,
                      *field.kind,
                      typing->by_touch});
    }
    if (ui.is_visible(rect)) {
        const Rect room = draw_frame(ui, parts, field, ui.touch(full));
        const TextSize size = role == Role::number ? TextSize::large : TextSize::body;
        draw_text(ui, room, field.value, {size, false, field.enabled ? Ink::ink : Ink::quiet});
        ui.draw_focus_ring(full, parts.box);
    }
    return ui.take_text(full);
}

} // namespace

float field_error(Ui& ui, std::string_view id, const Rect& rect, std::string_view words) {
    constexpr TextStyle k_reason{TextSize::small, true, Ink::does_not_fit, Align::left};
    const float line = line_height(ui, TextSize::small);
    const float side = std::round(line * 0.6F);
    Rect room = rect;
    room.cut_left(side + 8);
    const float height = paragraph_height(ui, room.w, words, k_reason);
    std::string error_id(id);
    error_id += ".error";
    ui.add_node(error_id, Role::message, {rect.x, rect.y, rect.w, height}, words);
    draw_verdict_shape(ui, Verdict::does_not_fit, rect.x + side / 2, rect.y + line / 2, side);
    draw_paragraph(ui, room, words, k_reason);
    return height;
}

float field_height(const Ui& ui, bool with_line) {
    const float line = line_height(ui, TextSize::small);
    return line + 4 + std::max(44.0F, ui.size().target) + (with_line ? line + 4 : 0);
}

std::optional<std::string>
text_field(Ui& ui, std::string_view id, const Rect& rect, const Field& field) {
    return field_of_words(ui, id, rect, field, Role::text);
}

std::optional<std::string>
number_field(Ui& ui, std::string_view id, const Rect& rect, const Field& field) {
    return field_of_words(ui, id, rect, field, Role::number);
}

std::optional<int> choice(Ui& ui,
                          std::string_view id,
                          const Rect& rect,
                          const Field& field,
                          std::span<const std::string> options,
                          int selected) {
    const Parts parts = parts_of(ui, rect, field);
    const bool known = selected >= 0 && static_cast<std::size_t>(selected) < options.size();
    Node& node = ui.add_control(id, Role::choice, parts.box, field.label, field.enabled);
    node.options.assign(options.begin(), options.end());
    node.selected = known ? selected : -1;
    node.note.assign(field.note);
    node.error.assign(field.error);
    const std::string full = node.id;
    if (ui.is_visible(rect)) {
        Rect room = draw_frame(ui, parts, field, ui.touch(full));
        const Rect arrow = room.cut_right(20, 8);
        draw_icon(ui.draw(),
                  Icon::down,
                  arrow.x + arrow.w / 2,
                  arrow.y + arrow.h / 2,
                  16,
                  ui.colour(field.enabled ? Ink::touch : Ink::quiet));
        if (known)
            draw_text(ui,
                      room,
                      options[static_cast<std::size_t>(selected)],
                      {TextSize::body, false, field.enabled ? Ink::ink : Ink::quiet});
        ui.draw_focus_ring(full, parts.box);
    }
    const std::optional<int> chosen = ui.take_choice(full);
    const bool is_new = chosen && *chosen != selected && *chosen >= 0 &&
                        static_cast<std::size_t>(*chosen) < options.size();
    return is_new ? chosen : std::nullopt;
}

} // namespace treadle::ui
