#include "ui/views/operation_rows.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr float k_ring = 44;

void strip(Desk& desk, const ui::Rect& rect, const OperationReading& operation) {
    ui::Strip strip;
    strip.low_share = operation.low_share;
    strip.high_share = operation.high_share;
    strip.verdict = operation.mark;
    strip.spoken = operation.strip;
    ui::demand_strip(desk.ui, rect, strip);
}

void one_row(Desk& desk, const ui::Rect& rect, const OperationReading& operation, int index) {
    ui::Ui& ui = desk.ui;
    const bool chosen = desk.state.operation == index;
    ui.rule(rect.x, rect.bottom() - 0.5F, rect.x + k_ring, rect.bottom() - 0.5F, ui::Ink::line, 1);
    const float verdict_width = std::min(200.0F, rect.w * 0.3F);
    const float room = rect.w - k_ring - verdict_width - 230;
    const float strip_width = room < 90 ? 0 : std::min(room, 270.0F);
    ui::Rect ring = rect;
    ring = ring.cut_left(k_ring);
    ui::ListRow row;
    row.title = operation.title;
    row.detail = operation.detail;
    row.spoken = operation.spoken;
    row.slots_width = strip_width + verdict_width;
    ui::Rect rest = rect;
    rest.cut_left(k_ring);
    const ui::RowTouch touch = ui::list_row(ui, "operation-" + std::to_string(index), rest, row);
    ui::number_ring(ui, ring.x + 18, ring.y + ring.h / 2, index + 1, chosen);
    ui::Rect slots = touch.slots;
    ui::Rect verdict = slots.cut_right(verdict_width);
    const ui::Ink ink = ui::ink_of(operation.mark);
    const float height = ui::line_height(ui, ui::TextSize::body);
    verdict = verdict.inset(0, std::max(0.0F, (verdict.h - 2 * height) / 2));
    ui::draw_text(ui,
                  verdict.cut_top(height),
                  operation.verdict,
                  {ui::TextSize::body, true, ink, ui::Align::right});
    ui::draw_text(ui,
                  verdict,
                  operation.margin,
                  {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::right});
    if (strip_width > 0)
        strip(desk, slots.inset(8, (slots.h - 44) / 2), operation);
    if (touch.pressed) {
        desk.state.operation = chosen ? plan::k_none : index;
        if (chosen && desk.state.panel != Panel::part_form)
            desk.state.panel = Panel::checks;
        desk.state.adding = false;
        ui.want_frame();
    }
}

/// What was checked, in sentences, and the two keys. Returns where it ended.
float checks(Desk& desk, const ui::Rect& rect, const OperationReading& operation, int index) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "checks");
    ui::Rect rest = rect;
    rest.cut_left(k_ring);
    if (!operation.tools.empty())
        rest.y += ui::paragraph(ui, rest, operation.tools) + 4;
    for (const CheckReading& check : operation.checks) {
        const ui::Verdict verdict = check.warning && check.verdict == ui::Verdict::fits
                                        ? ui::Verdict::up_to
                                        : check.verdict;
        rest.y += ui::message_line(ui, rest, verdict, check.sentence) + 4;
    }
    for (const std::string& need : operation.needs)
        rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, "To buy: " + need) + 4;
    rest.y += ui.size().gap / 2;
    ui::Rect keys{rest.x, rest.y, rest.w, ui.size().target};
    const auto key = [&](const char* id, const char* closed, const char* open, Panel panel) {
        const bool is_open = desk.state.panel == panel;
        ui::Button button;
        button.label = is_open ? open : closed;
        const std::string name =
            std::string(button.label) + ", operation " + std::to_string(index + 1);
        button.name = name;
        const float width = ui::button_width(ui, button);
        if (ui::button(ui, id, keys.cut_left(width, ui.size().gap), button)) {
            desk.state.panel = is_open ? Panel::checks : panel;
            ui.want_frame();
        }
    };
    key("working", "Show working", "Hide working", Panel::working);
    key("change", "Change operation", "Close", Panel::operation_form);
    return keys.bottom() + ui.size().gap;
}

} // namespace

float operation_rows(Desk& desk, const ui::Rect& rect, int index) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "operations");
    const PartReading& part = *desk.readings.parts()[static_cast<std::size_t>(index)];
    const float height = std::max(70.0F, ui.size().target + 6);
    ui::Rect rest = rect;
    ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::line, 1);
    for (std::size_t i = 0; i < part.operations.size(); ++i) {
        const ui::Rect row{rest.x, rest.y, rest.w, height};
        rest.y += height;
        const int operation = static_cast<int>(i);
        one_row(desk, row, part.operations[i], operation);
        if (desk.state.operation == operation)
            rest.y = checks(desk, rest, part.operations[i], operation);
        if (desk.state.operation == operation)
            ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::line, 1);
    }
    return rest.y;
}

} // namespace treadle::views
