#include "ui/views/machine_rows.h"

#include "ui/views/parts_edit.h"
#include "ui/views/shop_draft.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};

float stop_row(Desk& desk, const ui::Rect& rect, const StopReading& stop, std::size_t index) {
    ui::Ui& ui = desk.ui;
    constexpr float k_shape = 36;
    const float words = ui::paragraph_height(ui, rect.w - k_shape - 8, stop.words);
    ui::Rect place{rect.x, rect.y, rect.w, ui::row_height(ui, std::max(44.0F, words + 16))};
    ui::ListRow row;
    row.spoken = stop.words;
    if (ui::list_row(ui, "stop-" + std::to_string(index), place, row).pressed)
        show_operation(desk, stop.part, stop.operation);
    const float bottom = place.bottom();
    if (ui.is_visible(place)) {
        const ui::Rect shape = place.cut_left(k_shape);
        ui::draw_verdict_shape(ui, stop.mark, shape.x + 14, shape.y + shape.h / 2, 16);
        place.cut_right(8);
        ui::draw_paragraph(ui, place.inset(0, (place.h - words) / 2), stop.words);
    }
    return bottom;
}

/// Returns true when it was pressed.
bool key(Desk& desk,
         ui::Rect& rest,
         std::string_view id,
         std::string_view label,
         const std::string& name,
         bool danger = false) {
    ui::Ui& ui = desk.ui;
    ui::Button button;
    button.label = label;
    button.name = name;
    button.look = danger ? ui::KeyLook::danger : ui::KeyLook::normal;
    if (danger)
        rest.cut_left(ui.size().danger_gap);
    return ui::button(ui, id, rest.cut_left(ui::button_width(ui, button), ui.size().gap), button);
}

float one_machine(Desk& desk, ui::Rect rest, const MachineReading& machine, int index) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "machine-" + std::to_string(index));
    ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::ink, ui.size().stroke);
    rest.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::large) + 6;
    ui::Rect head{rest.x, rest.y, rest.w, height};
    if (index == 0)
        ui::text(ui,
                 head.cut_right(90 * ui.size().text_scale, 8),
                 "in use",
                 {ui::TextSize::body, true, ui::Ink::quiet, ui::Align::right});
    ui::heading(
        ui, head, machine.name, 2, {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    rest.y += height;
    rest.y += ui::message_line(ui, rest, machine.mark, machine.words) + 4;
    rest.y += ui::paragraph(ui, rest, machine.counts, k_quiet) + 4;
    for (std::size_t i = 0; i < machine.stops.size(); ++i)
        rest.y = stop_row(desk, rest, machine.stops[i], i);
    if (!machine.more.empty())
        rest.y += ui::paragraph(ui, rest, machine.more, k_quiet);
    rest.y += ui.size().gap;
    ui::Rect keys{rest.x, rest.y, rest.w, ui.size().target};
    if (index == 0) {
        if (key(desk, keys, "change", "Change under Shop", "Change " + machine.name)) {
            desk.state.place = Place::shop;
            desk.state.shop_page = 0;
            ui.want_frame();
        }
        return keys.bottom() + ui.size().margin;
    }
    if (key(desk, keys, "use", "Use this machine", "Use " + machine.name))
        desk.ask(PlainEdit{edit::UseMachine{index}, "", false});
    if (key(desk, keys, "remove", "Remove", "Remove " + machine.name, true)) {
        ShopDraft draft(desk);
        auto& others = draft.change().other_machines;
        others.erase(others.begin() + (index - 1));
        draft.send();
    }
    return keys.bottom() + ui.size().margin;
}

void add_machine(Desk& desk, equipment::Machine machine) {
    ShopDraft draft(desk);
    draft.change().other_machines.push_back(std::move(machine));
    draft.send();
}

} // namespace

float machine_rows(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "machines");
    ui::Rect rest = rect;
    const std::vector<MachineReading>& machines = desk.readings.limits.machines(desk.session);
    for (std::size_t i = 0; i < machines.size(); ++i)
        rest.y = one_machine(desk, rest, machines[i], static_cast<int>(i));
    ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::ink, ui.size().stroke);
    rest.y += ui.size().gap;
    rest.y += ui::paragraph(ui,
                            rest,
                            "Every machine is planned with the same crib, rack and house rules. To "
                            "fill in a plate, use that machine first; undo brings the other back.",
                            k_quiet) +
              ui.size().gap;
    ui::Rect keys{rest.x, rest.y, rest.w, ui.size().target};
    const equipment::Machine& now = desk.session.shop().machine;
    if (key(desk, keys, "copy", "Copy the one in use", "Copy " + now.name)) {
        equipment::Machine copy = now;
        copy.name += ", copy";
        add_machine(desk, std::move(copy));
    }
    if (keys.w < 260 * ui.size().text_scale)
        keys = {rest.x, keys.bottom() + ui.size().gap, rest.w, keys.h};
    if (key(desk, keys, "describe", "Describe another machine", "Describe another machine")) {
        equipment::Machine machine;
        machine.name = "Another machine";
        add_machine(desk, std::move(machine));
    }
    return keys.bottom() + ui.size().margin;
}

} // namespace treadle::views
