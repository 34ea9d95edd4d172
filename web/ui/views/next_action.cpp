#include "ui/views/next_action.h"

#include "ui/views/find_commands.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

constexpr const char* k_hint =
    "This is an invented job. Tap a part to see what the machine makes of "
    "it, or start your own.";

} // namespace

float next_action(Desk& desk,
                  const ui::Rect& rect,
                  std::string_view words,
                  std::span<const NextKey> keys) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "next");
    ui::Rect rest = rect;
    rest.y += ui::paragraph(ui, rest, words) + ui.size().gap;
    const float gap = std::max(12.0F, ui.size().gap);
    ui::Rect row{rest.x, rest.y, rest.w, ui.size().primary};
    for (const NextKey& one : keys) {
        ui::Button key;
        key.label = one.label;
        key.look = &one == keys.data() ? ui::KeyLook::primary : ui::KeyLook::normal;
        const float width = std::min(rest.w, ui::button_width(ui, key));
        if (row.w < width && row.x > rest.x)
            row = {rest.x, row.bottom() + gap, rest.w, row.h};
        if (!ui::button(ui, one.label, row.cut_left(width, gap), key))
            continue;
        if (one.place)
            desk.state.place = *one.place;
        do_command(desk, one.command);
        ui.want_frame();
    }
    return row.bottom() + ui.size().gap;
}

float no_parts_yet(Desk& desk, const ui::Rect& rect, std::string_view words) {
    const bool inch = desk.style().system == UnitSystem::inch;
    const std::array keys = {
        NextKey{"Add a part", Command::add_part},
        NextKey{"Lay out parts", Command::lay_out},
        NextKey{"Open a file", Command::open_file},
        NextKey{"Look at the demo job", inch ? Command::demo_inch : Command::demo_metric}};
    return next_action(desk, rect, words, keys);
}

float first_hint(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    if (!desk.state.hint_open || !desk.session.job().invented)
        return 0;
    const ui::Scope scope(ui, "hint");
    ui::Button own;
    own.label = "Start your own";
    ui::Button gone;
    gone.label = "Dismiss";
    gone.name = "Dismiss this line; Help has it again";
    const float gap = std::max(12.0F, ui.size().gap);
    const float keys = ui::button_width(ui, own) + ui::button_width(ui, gone) + gap;
    const bool below = rect.w - keys < 420 * ui.size().text_scale;
    ui::Rect strip = rect;
    const float width = rect.w - 2 * ui.size().margin - (below ? 0 : keys + gap);
    const float text = ui::paragraph_height(ui, width, k_hint);
    strip.h =
        below ? text + ui.size().target + 3 * gap : std::max(text, ui.size().target) + 2 * gap;
    ui.fill(strip, ui::Ink::steel);
    ui.rule(strip.x, strip.bottom() - 1, strip.right(), strip.bottom() - 1, ui::Ink::ink, 1);
    ui::Rect inner = strip.inset(ui.size().margin, gap);
    ui::Rect row = below ? inner.cut_bottom(ui.size().target) : inner.cut_right(keys, gap);
    row = {row.x, row.y + (row.h - ui.size().target) / 2, row.w, ui.size().target};
    ui::paragraph(ui, inner.inset(0, below ? 0 : std::max(0.0F, (inner.h - text) / 2)), k_hint);
    if (ui::button(ui, "own", row.cut_left(ui::button_width(ui, own), gap), own))
        desk.ask(Wish::new_job);
    if (ui::button(ui, "dismiss", row.cut_left(ui::button_width(ui, gone)), gone))
        desk.ask(Wish::hide_hint);
    return strip.h;
}

} // namespace treadle::views
