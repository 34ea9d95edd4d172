#include "ui/views/working_view.h"

#include "ui/widgets/text.h"

namespace treadle::views {

namespace {

float one_working(ui::Ui& ui, ui::Rect rest, const std::vector<std::string>& lines) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
        // Title, expression, values …: the first is what it answers, the second how.
        if (i == 0) {
            const float height = ui::line_height(ui, ui::TextSize::body) + 4;
            ui::heading(ui,
                        {rest.x, rest.y, rest.w, height},
                        lines[i],
                        3,
                        {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
            rest.y += height;
            continue;
        }
        const ui::TextStyle style =
            i == 1 ? ui::TextStyle{ui::TextSize::body} : ui::TextStyle{ui::TextSize::small};
        rest.y += ui::paragraph(ui, rest, lines[i], style) + 2;
    }
    return rest.y + ui.size().margin;
}

} // namespace

float working_view(Desk& desk, const ui::Rect& rect, int part, int operation) {
    ui::Rect rest = rect;
    for (const int of : {operation, plan::k_none}) {
        if (of == plan::k_none) {
            desk.ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::line, 1);
            rest.y += desk.ui.size().gap;
        }
        for (const std::vector<std::string>& lines : desk.readings.working(desk.session, part, of))
            rest.y = one_working(desk.ui, rest, lines);
    }
    return rest.y;
}

} // namespace treadle::views
