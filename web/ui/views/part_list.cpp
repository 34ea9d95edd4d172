#include "ui/views/part_list.h"

#include "ui/views/layouts_form.h"
#include "ui/views/paint.h"
#include "ui/views/parts_edit.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr float k_picture_width = 58;
constexpr float k_mark_width = 108;
/// Up to so many parts a screen reader hears all of them, not only those in sight.
constexpr std::size_t k_whole_list = 300;

void full_row(Desk& desk, const ui::Rect& rect, const PartReading& part, bool chosen) {
    ui::Ui& ui = desk.ui;
    const job::Part& is = *part.plan->part;
    ui::ListRow row;
    row.title = part.mark;
    row.beside = part.count;
    row.detail = part.title;
    row.spoken = part.spoken;
    row.selected = chosen;
    row.slots_width = k_mark_width;
    const ui::RowTouch touch = ui::list_row(ui, is.id, rect, row);
    ui::Mark mark;
    mark.verdict = part.verdict_mark;
    mark.word = part.short_verdict;
    mark.layout = ui::MarkLayout::below;
    mark.size = ui::TextSize::small;
    mark.silent = true;
    ui::verdict_mark(ui, touch.slots, mark);
    // Above the second line, which needs the whole width; a long mark needs its own.
    const float high = rect.h * 0.54F;
    if (touch.first_rest >= k_picture_width)
        paint_small(
            ui, {touch.slots.x - k_picture_width, rect.y + 5, k_picture_width, high}, part.small);
    if (touch.pressed)
        choose_part(desk, is.id);
}

void rail_row(Desk& desk, const ui::Rect& rect, const PartReading& part, bool chosen) {
    ui::ListRow row;
    row.title = part.mark;
    row.spoken = part.spoken;
    row.selected = chosen;
    row.slots_width = 34;
    const ui::RowTouch touch = ui::list_row(desk.ui, part.plan->part->id, rect, row);
    ui::draw_verdict_shape(desk.ui,
                           part.verdict_mark,
                           touch.slots.x + touch.slots.w / 2,
                           touch.slots.y + touch.slots.h / 2,
                           18);
    if (touch.pressed)
        choose_part(desk, part.plan->part->id);
}

/// Beside the key that adds: the chosen part one place up or down. Takes its room off `foot`.
void move_keys(Desk& desk, ui::Rect& foot) {
    const int chosen = desk.chosen_part();
    if (chosen == plan::k_none)
        return;
    const std::string& mark = desk.readings.parts()[static_cast<std::size_t>(chosen)]->mark;
    for (const int by : {1, -1}) {
        ui::Button key;
        key.label = by < 0 ? "Up" : "Down";
        const std::string name = std::string(by < 0 ? "Move up: " : "Move down: ") + mark;
        key.name = name;
        key.enabled = can_move_part(desk, chosen, by);
        key.why_not = by < 0 ? "It is the first." : "It is the last.";
        const float width = ui::button_width(desk.ui, key) - 16;
        if (ui::button(desk.ui,
                       by < 0 ? "part-up" : "part-down",
                       foot.cut_right(width, desk.ui.size().gap),
                       key))
            move_part(desk, chosen, by);
    }
}

/// To the layouts of the job, or to a first one.
void layouts_key(Desk& desk, const ui::Rect& rect) {
    ui::Button key;
    key.label = "Lay out parts";
    key.name = "Lay out parts: railings, frames, plates, pipe and more";
    if (ui::button(desk.ui, "lay-out", rect, key))
        open_new_layout(desk);
}

} // namespace

void part_list(Desk& desk, const ui::Rect& rect, bool rail) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = ui::side_ground(ui, rect);
    const float lines = rail ? 1.0F : 2.0F; ///< of keys under the list
    ui::Rect foot = rest.cut_bottom(lines * (ui.size().target + ui.size().gap) + ui.size().gap)
                        .inset(rail ? 6.0F : 14.0F, ui.size().gap);
    if (!rail)
        layouts_key(desk, foot.cut_bottom(ui.size().target, ui.size().gap));
    {
        ui::ScrollArea area(ui, "parts", rest, "Parts of the job");
        ui::Rect content = area.content();
        const float height = ui::row_height(ui, rail ? 0 : ui.size().row);
        const bool whole = desk.readings.parts().size() <= k_whole_list;
        for (const auto& part : desk.readings.parts()) {
            const ui::Rect row = content.cut_top(height);
            const bool wanted = part->plan->part->id == desk.state.part_to_show;
            if (!whole && !wanted && !ui.is_near(row))
                continue;
            if (wanted) {
                ui.move_focus(part->plan->part->id);
                desk.state.part_to_show.clear();
            }
            const bool chosen = part->plan->part->id == desk.state.part;
            if (rail)
                rail_row(desk, row, *part, chosen);
            else
                full_row(desk, row, *part, chosen);
        }
        area.finish(content.y);
    }
    if (!rail && desk.session.job().parts.size() > 1)
        move_keys(desk, foot);
    ui::Button add;
    add.label = rail ? "Add" : "Add a part";
    add.name = "Add a part";
    add.icon = rail ? ui::Icon::none : ui::Icon::plus;
    if (ui::button(ui, "add-part", foot, add))
        add_part(desk);
}

} // namespace treadle::views
