#include "ui/views/wear_rows.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

namespace treadle::views {

float wear_rows(Desk& desk, const ui::Rect& rect) {
    const std::vector<WearReading>& list = desk.readings.work.wear(desk.session);
    if (list.empty())
        return rect.y;
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "wear");
    ui::Rect rest = rect;
    const float height = ui::line_height(ui, ui::TextSize::large) + 6;
    ui::heading(ui,
                rest.cut_top(height),
                "Strokes on the cutting edges",
                2,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    bool counted = false;
    for (const WearReading& edge : list) {
        if (!edge.counted)
            continue;
        counted = true;
        rest.y += edge.mark ? ui::message_line(ui, rest, *edge.mark, edge.words)
                            : ui::paragraph(ui, rest, edge.words);
        rest.y += 4;
    }
    if (!counted)
        return rest.y +
               ui::paragraph(ui,
                             rest,
                             "No edge that this job uses has a count: type in under Shop how many "
                             "strokes a punch or die has made since it was ground.") +
               ui.size().margin;
    ui::Button book;
    book.label = "Book this job's strokes";
    book.name = "Book this job's strokes, when the job is done";
    const ui::Rect key{rest.x, rest.y + 4, ui::button_width(ui, book), ui.size().target};
    if (ui::button(ui, "book", key, book))
        desk.ask(PlainEdit{edit::BookStrokes{}, "", false});
    return key.bottom() + ui.size().margin;
}

} // namespace treadle::views
