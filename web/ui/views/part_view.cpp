#include "ui/views/part_view.h"

#include "ui/views/bend_stages.h"
#include "ui/views/layouts_view.h"
#include "ui/views/leg_rows.h"
#include "ui/views/operation_form.h"
#include "ui/views/operation_rows.h"
#include "ui/views/part_drawing.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>
#include <span>

namespace treadle::views {

namespace {

constexpr float k_room_for_each = 450; ///< drawings side by side
const std::array<std::string, 3> k_shapes = {"Flat blank", "Finished", "Bends"};

std::span<const std::string> shapes_of(const PartReading& part) {
    return {k_shapes.data(), has_bends(part) ? 3U : 2U};
}

bool has_room_for_all(const ui::Rect& rect, const PartReading& part) {
    return rect.w >= k_room_for_each * static_cast<float>(shapes_of(part).size());
}

void open_panel(Desk& desk, Panel panel) {
    desk.state.panel = desk.state.panel == panel ? Panel::checks : panel;
    desk.state.adding = false;
    desk.ui.want_frame();
}

void sides(Desk& desk, const ui::Rect& rect, const PartReading& part) {
    const auto shapes = shapes_of(part);
    const int shown =
        std::min(static_cast<int>(desk.state.shape), static_cast<int>(shapes.size()) - 1);
    if (const auto chosen = ui::tabs(desk.ui, "sides", rect, "Shape shown", shapes, shown)) {
        desk.state.shape = static_cast<Shape>(*chosen);
        desk.ui.want_frame();
    }
}

/// Mark, what it is, verdict, and the key that opens the sizes. Returns where it ended.
float header(Desk& desk, const ui::Rect& rect, const PartReading& part) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    ui::Rect first =
        rest.cut_top(std::max(ui.size().target, ui::line_height(ui, ui::TextSize::title)));
    ui::Button edit;
    const bool open = desk.state.panel == Panel::part_form;
    edit.label = open ? "Close sizes" : "Change sizes";
    const std::string name = std::string(edit.label) + " of " + part.mark;
    edit.name = name;
    edit.look = ui::KeyLook::quiet;
    if (ui::button(ui, "change-part", first.cut_right(ui::button_width(ui, edit), 8), edit))
        open_panel(desk, Panel::part_form);
    if (ui.is_narrow()) {
        ui::Button back;
        back.label = "Back to the list";
        back.icon = ui::Icon::back;
        back.icon_only = true;
        back.look = ui::KeyLook::quiet;
        if (ui::button(ui, "back", first.cut_left(ui.size().target, 4), back))
            desk.state.detail_open = false;
    }
    const ui::TextStyle title{ui::TextSize::title, true, ui::Ink::ink, ui::Align::left};
    const float mark_width = std::min(first.w / 2, ui::text_width(ui, part.mark, title) + 16);
    ui::heading(ui, first.cut_left(mark_width), part.mark, 2, title);
    ui::Mark verdict;
    verdict.verdict = part.verdict_mark;
    verdict.word = part.verdict;
    verdict.spoken = part.announcement();
    ui::verdict_mark(ui, first, verdict);
    const bool one_side = !has_room_for_all(rect, part);
    const float tabs = std::min(rest.w, ui::tabs_width(ui, shapes_of(part)));
    if (one_side && rest.w < 2 * tabs) {
        rest.cut_top(ui.size().gap);
        sides(desk, rest.cut_top(ui.size().target, ui.size().gap), part);
    }
    const float lines_top = rest.y;
    const bool beside = one_side && rest.w >= 2 * tabs;
    if (beside) {
        sides(desk, {rest.right() - tabs, lines_top + ui.size().gap, tabs, ui.size().target}, part);
        rest.w -= tabs + ui.size().gap;
    }
    rest.y += ui::paragraph(ui, rest, part.line);
    std::string figures = part.mass;
    if (!part.blank.empty())
        figures = part.blank + ", " + figures;
    rest.y += ui::paragraph(
        ui, rest, figures, {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left});
    if (beside)
        rest.y = std::max(rest.y, lines_top + ui.size().gap + ui.size().target);
    rest.w = rect.w;
    if (!part.problem.empty())
        rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, part.problem);
    return rest.y;
}

/// Returns where it ended.
float one_drawing(Desk& desk, const ui::Rect& rect, PartReading& part, Shape shape) {
    if (shape == Shape::bends)
        return bend_stages(desk, rect, part);
    return part_drawing(desk, rect, part, shape == Shape::finished);
}

/// All shapes where there is room, one with a choice where there is not; whole in sight where they
/// can be. Returns where it ended.
float drawings(Desk& desk, ui::Rect rect, PartReading& part, float in_sight) {
    ui::Ui& ui = desk.ui;
    const float keys = ui.size().target + ui.size().gap;
    rect.h = std::clamp(std::min(ui.screen().h * 0.38F, in_sight - keys), 190.0F, 460.0F);
    const auto shapes = shapes_of(part);
    if (!has_room_for_all(rect, part)) {
        const bool there = desk.state.shape != Shape::bends || has_bends(part);
        return one_drawing(desk, rect, part, there ? desk.state.shape : Shape::finished);
    }
    float bottom = rect.bottom();
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        ui::Rect place =
            rect.column(static_cast<int>(i), static_cast<int>(shapes.size()), ui.size().gap);
        ui::heading(ui,
                    place.cut_top(ui::line_height(ui, ui::TextSize::small)),
                    shapes[i],
                    3,
                    {ui::TextSize::small, true, ui::Ink::quiet, ui::Align::left});
        bottom = std::max(bottom, one_drawing(desk, place, part, static_cast<Shape>(i)));
    }
    return bottom;
}

float new_operation(Desk& desk, const ui::Rect& rect, int index) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    rest.y += ui.size().gap;
    ui::Button add;
    add.label = desk.state.adding ? "Add nothing" : "Add an operation";
    add.icon = desk.state.adding ? ui::Icon::none : ui::Icon::plus;
    add.look = ui::KeyLook::quiet;
    const ui::Rect key{rest.x, rest.y, ui::button_width(ui, add), ui.size().target};
    const bool pressed = ui::button(ui, "add-operation", key, add);
    if (pressed) {
        desk.state.adding = !desk.state.adding;
        ui.want_frame();
    }
    rest.y = key.bottom() + ui.size().gap;
    if (!desk.state.adding)
        return rest.y;
    const float bottom = operation_choice(desk, rest, index);
    if (pressed)
        ui.bring_into_sight({rest.x, key.y, rest.w, bottom - key.y});
    return bottom;
}

} // namespace

void part_view(Desk& desk, const ui::Rect& rect, int index) {
    ui::Ui& ui = desk.ui;
    PartReading& part = *desk.readings.parts()[static_cast<std::size_t>(index)];
    const ui::Scope scope(ui, "part");
    ui::ScrollArea area(ui, "view", rect, "Part " + part.mark);
    ui::Rect content = area.content().inset(ui.size().margin, 0);
    content.y += 10;
    content.y = header(desk, content, part) + 4;
    content.y = origin_line(desk, content, part.plan->part->id);
    const float used = content.y - area.content().y;
    content.y = drawings(desk, content, part, rect.h - used) + 8;
    content.y = operation_rows(desk, content, index);
    content.y = new_operation(desk, content, index);
    content.y = leg_rows(desk, content, part);
    area.finish(content.y + ui.size().margin);
}

} // namespace treadle::views
