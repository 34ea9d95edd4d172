#include "ui/views/remedy_rows.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

namespace {

void try_it(Desk& desk, const RemedyReading& remedy, int part) {
    const job::Part& before = *desk.session.job().parts[static_cast<std::size_t>(part)];
    if (remedy.part.operations.size() < before.operations.size()) {
        desk.state.operation = plan::k_none; // it has left the machine
        desk.state.panel = Panel::checks;
    }
    desk.ask(PlainEdit{edit::ReplacePart{remedy.part}, "", false});
    desk.ui.want_frame();
}

/// Returns where it ended.
float one_remedy(
    Desk& desk, const ui::Rect& rect, const RemedyReading& remedy, std::size_t index, int part) {
    ui::Ui& ui = desk.ui;
    ui::Button key;
    key.label = "Try it";
    key.name = remedy.key;
    const float width = ui::button_width(ui, key);
    const ui::Rect place{rect.right() - width, rect.y, width, ui.size().target};
    ui::Rect words{rect.x, rect.y, rect.w - width - ui.size().gap, 0};
    words.y += ui::paragraph(ui, words, remedy.words, {ui::TextSize::body, true});
    words.y += ui::paragraph(
        ui, words, remedy.result, {ui::TextSize::body, false, remedy.ink, ui::Align::left});
    words.y += ui::paragraph(
        ui, words, remedy.why, {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left});
    if (remedy.key.empty())
        return words.y + ui.size().gap;
    if (ui::button(ui, "try-" + std::to_string(index), place, key))
        try_it(desk, remedy, part);
    return std::max(words.y, place.bottom()) + ui.size().gap;
}

} // namespace

float remedy_rows(Desk& desk, const ui::Rect& rect, int part, int operation) {
    const std::vector<RemedyReading>& list =
        desk.readings.remedies.of(desk.session, part, operation);
    if (list.empty())
        return rect.y;
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "remedies");
    ui::Rect rest = rect;
    ui::heading(ui,
                rest.cut_top(ui::line_height(ui, ui::TextSize::body) + ui.size().gap),
                "What would make it fit",
                3,
                {ui::TextSize::body, true, ui::Ink::quiet, ui::Align::left});
    for (std::size_t i = 0; i < list.size(); ++i)
        rest.y = one_remedy(desk, rest, list[i], i, part);
    return rest.y;
}

} // namespace treadle::views
