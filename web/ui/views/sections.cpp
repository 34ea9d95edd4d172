#include "ui/views/sections.h"

#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

float section_title(ui::Ui& ui, ui::Rect rest, std::string_view words, std::string_view more) {
    rest.y += ui.size().margin;
    const float height = ui::line_height(ui, ui::TextSize::large) + 6;
    ui::heading(ui,
                {rest.x, rest.y, rest.w, height},
                words,
                2,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    rest.y += height;
    if (!more.empty())
        rest.y += ui::paragraph(
            ui, rest, more, {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left});
    return rest.y + ui.size().gap;
}

float section_keys(Desk& desk, const ui::Rect& rect, std::span<const SectionKey> keys) {
    ui::Ui& ui = desk.ui;
    const float gap = std::max(12.0F, ui.size().gap);
    float x = rect.x;
    float y = rect.y;
    for (const SectionKey& one : keys) {
        ui::Button key;
        key.label = one.label;
        key.name = one.name;
        key.icon = one.icon;
        key.look = one.look;
        key.enabled = one.enabled;
        key.why_not = one.why_not;
        const float width = std::min(rect.w, ui::button_width(ui, key));
        if (x > rect.x && x + width > rect.right()) {
            x = rect.x;
            y += ui.size().primary + gap;
        }
        if (ui::button(ui, one.label, {x, y, width, ui.size().primary}, key))
            desk.ask(one.ask);
        x += width + gap;
    }
    return y + ui.size().primary + gap;
}

} // namespace treadle::views
