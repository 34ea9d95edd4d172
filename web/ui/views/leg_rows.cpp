#include "ui/views/leg_rows.h"

#include "ui/widgets/text.h"

namespace treadle::views {

float leg_rows(Desk& desk, const ui::Rect& rect, PartReading& part) {
    if (!part.spreads)
        part.spreads = read_spreads(*part.plan, desk.session);
    if (part.spreads->empty())
        return rect.y;
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "legs");
    ui::Rect rest = rect;
    rest.y += ui.size().gap;
    ui::heading(ui,
                rest.cut_top(ui::line_height(ui, ui::TextSize::large) + 4),
                "Finished legs",
                3,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    for (const SpreadReading& leg : *part.spreads) {
        rest.y += ui::paragraph(ui, rest, leg.leg, {ui::TextSize::body, true});
        if (!leg.figures.empty())
            rest.y += ui::paragraph(ui, rest, leg.figures);
        rest.y += leg.mark
                      ? ui::message_line(ui, rest, *leg.mark, leg.verdict)
                      : ui::paragraph(
                            ui, rest, leg.verdict, {ui::TextSize::small, false, ui::Ink::quiet});
        rest.y += 6;
    }
    return rest.y;
}

} // namespace treadle::views
