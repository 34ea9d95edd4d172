#include "ui/views/parts_place.h"

#include "ui/views/layouts_view.h"
#include "ui/views/next_action.h"
#include "ui/views/operation_form.h"
#include "ui/views/part_form.h"
#include "ui/views/part_list.h"
#include "ui/views/part_view.h"
#include "ui/views/working_view.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

namespace {

struct Layout {
    ui::Rect list;
    ui::Rect part;
    ui::Rect panel;
    bool rail = false;
};

/// The panel never covers the part: beside it where the screen is wide, below where it is high.
Layout lay_out(const Desk& desk, ui::Rect rest) {
    const ui::Ui& ui = desk.ui;
    const float scale = ui.size().text_scale;
    const bool panel = desk.state.panel != Panel::checks;
    const bool high = rest.h > rest.w;
    Layout layout;
    if (ui.is_narrow()) {
        if (desk.state.detail_open && panel)
            layout.panel = rest.cut_bottom(rest.h * 0.55F);
        (desk.state.detail_open ? layout.part : layout.list) = rest;
        return layout;
    }
    if (panel && high)
        layout.panel = rest.cut_bottom(rest.h * 0.42F);
    layout.rail = panel && rest.w < 1300 * scale;
    const float list = layout.rail ? 132 * scale : std::min(340 * scale, rest.w * 0.425F);
    layout.list = rest.cut_left(list);
    if (panel && !high) {
        const float beside = std::clamp(rest.w * 0.42F, 360 * scale, 520 * scale);
        // What the number pad leaves may be too little for a drawing that can be read.
        const bool has_room = rest.w - beside >= 340 * scale || rest.h >= 560 * scale;
        layout.panel = rest.cut_right(has_room ? beside : rest.w);
    }
    layout.part = rest;
    return layout;
}

std::string panel_title(const Desk& desk, const PartReading& part) {
    const std::string operation = "operation " + std::to_string(desk.state.operation + 1);
    switch (desk.state.panel) {
    case Panel::working:
        return "Working, " + operation;
    case Panel::operation_form:
        return part.mark + ", " + operation;
    case Panel::part_form:
    case Panel::checks:
        break;
    }
    return part.mark;
}

void panel(Desk& desk, const ui::Rect& rect, int part, bool below) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "panel");
    ui.fill(rect, ui::Ink::bench);
    if (below)
        ui.rule(rect.x, rect.y, rect.right(), rect.y, ui::Ink::ink, ui.size().stroke);
    else
        ui.rule(rect.x, rect.y, rect.x, rect.bottom(), ui::Ink::ink, ui.size().stroke);
    ui::Rect rest = rect.inset(ui.size().margin, ui.size().gap);
    ui::Rect head = rest.cut_top(ui.size().target, ui.size().gap);
    ui::Button close;
    close.label = "Close";
    close.name = "Close this panel";
    close.look = ui::KeyLook::quiet;
    if (ui::button(ui, "close", head.cut_right(ui::button_width(ui, close)), close)) {
        desk.state.panel = Panel::checks;
        ui.want_frame();
    }
    const PartReading& reading = *desk.readings.parts()[static_cast<std::size_t>(part)];
    ui::heading(ui,
                head,
                panel_title(desk, reading),
                2,
                {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
    ui::ScrollArea area(ui, "content", rest, "Panel");
    ui::Rect content = area.content();
    content.w -= 6;
    float bottom = content.y;
    const bool has_operation = desk.state.operation >= 0 &&
                               desk.state.operation < static_cast<int>(reading.operations().size());
    if (desk.state.panel == Panel::part_form)
        bottom = part_form(desk, content, part);
    else if (desk.state.panel == Panel::operation_form && has_operation)
        bottom = operation_form(desk, content, part, desk.state.operation);
    else if (desk.state.panel == Panel::working && has_operation)
        bottom = working_view(desk, content, part, desk.state.operation);
    area.finish(bottom + ui.size().margin);
}

void empty(Desk& desk, const ui::Rect& rect) {
    ui::ScrollArea area(desk.ui, "empty", rect, "No parts yet");
    ui::Rect rest = area.content().inset(desk.ui.size().margin, 0);
    rest.y += desk.ui.size().margin;
    rest.w = std::min(rest.w, 640 * desk.ui.size().text_scale);
    area.finish(no_parts_yet(desk,
                             rest,
                             "This job has no parts yet. A part is one mark: its metal, its sizes, "
                             "how many, and what is done to it."));
}

} // namespace

void parts_place(Desk& desk, const ui::Rect& rect) {
    if (desk.state.layouts.open)
        return layouts_view(desk, rect);
    if (desk.session.job().parts.empty())
        return empty(desk, rect); // a list of nothing would hide on a phone what to do next
    const Layout layout = lay_out(desk, rect);
    const int chosen = desk.chosen_part();
    if (!layout.list.is_empty())
        part_list(desk, layout.list, layout.rail);
    if (!layout.part.is_empty() && chosen != plan::k_none)
        part_view(desk, layout.part, chosen);
    if (!layout.panel.is_empty() && chosen != plan::k_none)
        panel(desk, layout.panel, chosen, layout.panel.x <= rect.x);
}

} // namespace treadle::views
