#include "ui/views/working_view.h"

#include "ui/views/help_view.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

namespace treadle::views {

namespace {

/// As it is read on the screen, a line for a line and a blank one between two workings.
std::string as_text(Desk& desk, int part, int operation) {
    std::string text;
    for (const int of : {operation, plan::k_none}) {
        for (const std::vector<std::string>& lines :
             desk.readings.working(desk.session, part, of)) {
            for (const std::string& line : lines)
                text += line + "\n";
            text += "\n";
        }
    }
    return text;
}

float copy_key(Desk& desk, const ui::Rect& rect, int part, int operation) {
    ui::Button key;
    key.label = "Copy";
    key.name = "Copy the working";
    key.size = ui::TextSize::small;
    const float width = ui::button_width(desk.ui, key);
    const float height = desk.ui.size().target;
    if (ui::button(desk.ui, "copy-working", {rect.x, rect.y, width, height}, key)) {
        desk.ask(CopyText{"The working", as_text(desk, part, operation)});
        desk.ui.want_frame();
    }
    return rect.y + height + desk.ui.size().gap;
}

} // namespace

float one_working(Desk& desk, ui::Rect rest, const std::vector<std::string>& lines) {
    ui::Ui& ui = desk.ui;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        // Title, expression, values …: the first is what it answers, the second how.
        if (i == 0) {
            ui::Rect first{rest.x, rest.y, rest.w, 0};
            const HelpTopic* topic = topic_of(lines[0]);
            const float height =
                topic ? ui.size().target : ui::line_height(ui, ui::TextSize::body) + 4;
            first.h = height;
            const std::string& wanted = desk.state.working_to_show;
            if (!wanted.empty() && lines[0].rfind(wanted, 0) == 0) {
                ui.bring_to_top(first);
                desk.state.working_to_show.clear();
            }
            if (topic)
                topic_key(desk, first.cut_right(ui.size().target, 4), topic);
            ui::heading(
                ui, first, lines[i], 3, {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
            rest.y += height;
            continue;
        }
        const ui::TextStyle style =
            i == 1 ? ui::TextStyle{ui::TextSize::body} : ui::TextStyle{ui::TextSize::small};
        rest.y += ui::paragraph(ui, rest, lines[i], style) + 2;
    }
    return rest.y + ui.size().margin;
}

float working_view(Desk& desk, const ui::Rect& rect, int part, int operation) {
    ui::Rect rest = rect;
    rest.y = copy_key(desk, rest, part, operation);
    for (const int of : {operation, plan::k_none}) {
        if (of == plan::k_none) {
            desk.ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::line, 1);
            rest.y += desk.ui.size().gap;
        }
        for (const std::vector<std::string>& lines : desk.readings.working(desk.session, part, of))
            rest.y = one_working(desk, rest, lines);
    }
    desk.state.working_to_show.clear();
    return rest.y;
}

} // namespace treadle::views
