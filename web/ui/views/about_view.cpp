#include "ui/views/about_view.h"

#include "ui/views/version_bar.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

float about_words(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    rest.y = version_words(desk, rest);
    for (const std::string& line : desk.about)
        rest.y += ui::paragraph(ui, rest, line) + ui.size().gap;
    rest.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::large) + 8;
    ui::heading(ui,
                {rest.x, rest.y, rest.w, height},
                "Who decides",
                2,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    rest.y += height;
    return rest.y + ui::paragraph(ui, rest, desk.notice);
}

void notice(Desk& desk) {
    ui::Ui& ui = desk.ui;
    if (!desk.state.notice_open)
        return;
    const float margin = ui.size().margin * 1.5F;
    ui::Rect paper = ui.screen();
    const float width = std::min(paper.w - 32, 620 * ui.size().text_scale);
    const float text = ui::paragraph_height(ui, width - 2 * margin, desk.notice);
    const float title = ui::line_height(ui, ui::TextSize::title) + ui.size().gap;
    const float height =
        std::min(paper.h - 16, text + title + ui.size().primary + 2 * margin + ui.size().margin);
    paper = {(paper.w - width) / 2, (paper.h - height) / 2, width, height};
    const ui::Dialog dialog(ui, "notice", paper, "Before you start");
    ui::Rect rest = paper.inset(margin);
    ui::heading(ui,
                rest.cut_top(title),
                "Before you start",
                1,
                {ui::TextSize::title, true, ui::Ink::ink, ui::Align::left});
    ui::Button key;
    key.label = "Understood";
    key.look = ui::KeyLook::primary;
    ui::Rect foot = rest.cut_bottom(ui.size().primary, ui.size().gap);
    if (ui::button(
            ui, "understood", foot.cut_right(std::max(180.0F, ui::button_width(ui, key))), key))
        desk.ask(Wish::accept_notice);
    ui::ScrollArea area(ui, "text", rest, "Safety notice");
    const ui::Rect content = area.content();
    area.finish(content.y + ui::paragraph(ui, content, desk.notice));
}

float messages(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "messages");
    ui::Rect rest = rect;
    for (std::size_t i = 0; i < desk.state.messages.size(); ++i) {
        const Message& message = desk.state.messages[i];
        const std::string words = message.title + " " + message.text;
        ui::Button key;
        key.label = "Dismiss";
        key.look = ui::KeyLook::normal;
        const float key_width = ui::button_width(ui, key);
        const float width = rest.w - key_width - 3 * ui.size().margin;
        const float text = ui::paragraph_height(ui, width - 40, words);
        const float height = std::max(text, ui.size().target) + 2 * ui.size().gap;
        ui::Rect strip{rest.x, rest.y, rest.w, height};
        ui.fill(strip, ui::Ink::paper);
        ui.rule(strip.x,
                strip.bottom() - 1,
                strip.right(),
                strip.bottom() - 1,
                ui::Ink::does_not_fit,
                ui.size().key_stroke);
        ui::Rect inner = strip.inset(ui.size().margin, ui.size().gap);
        ui::Rect right = inner.cut_right(key_width, ui.size().margin);
        right.h = ui.size().target;
        ui::message_line(ui, inner, ui::Verdict::does_not_fit, words);
        if (ui::button(ui, "dismiss-" + std::to_string(i), right, key)) {
            desk.state.messages.erase(desk.state.messages.begin() + static_cast<int>(i));
            ui.want_frame();
            break;
        }
        rest.y += height;
    }
    return rest.y - rect.y;
}

} // namespace treadle::views
