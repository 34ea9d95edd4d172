#include "ui/views/store_strip.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <string>
#include <vector>

namespace treadle::views {

namespace {

struct Key {
    const char* id;
    ui::Button key;
    Ask ask;
    bool to_jobs = false;
};

std::vector<Key> keys_of(const JobsBoard& board) {
    std::vector<Key> keys;
    const auto add = [&](const char* id, const char* label, Ask ask, bool to_jobs = false) {
        keys.push_back({id, {}, std::move(ask), to_jobs});
        keys.back().key.label = label;
    };
    if (board.strip_takes)
        add("take", "Write here instead", JobAsk{JobAsk::Do::edit_here, ""});
    if (board.strip_saves)
        add("save", "Save file", Wish::export_file);
    if (board.strip_frees)
        add("jobs", "To the jobs", JobAsk{JobAsk::Do::none, ""}, true);
    return keys;
}

} // namespace

float store_strip(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const JobsBoard& board = desk.jobs;
    if (board.strip.empty())
        return 0;
    const ui::Scope scope(ui, "store");
    const std::vector<Key> keys = keys_of(board);
    const float gap = std::max(12.0F, ui.size().gap);
    float wide = 0;
    for (const Key& one : keys)
        wide += ui::button_width(ui, one.key) + gap;
    const bool below = rect.w - wide < 420 * ui.size().text_scale;
    ui::Rect strip = rect;
    const float width = rect.w - 2 * ui.size().margin - (below ? 0 : wide);
    const float text = ui::paragraph_height(ui, width, board.strip);
    const float target = ui.size().target;
    strip.h = below ? text + (keys.empty() ? 2 * gap : target + 3 * gap)
                    : std::max(text, target) + 2 * gap;
    ui.fill(strip, ui::Ink::steel);
    ui.rule(strip.x,
            strip.bottom() - 1,
            strip.right(),
            strip.bottom() - 1,
            ui::Ink::does_not_fit,
            ui.size().stroke);
    ui::Rect inner = strip.inset(ui.size().margin, gap);
    ui::Rect row = below ? inner.cut_bottom(target) : inner.cut_right(wide - gap, gap);
    row = {row.x, row.y + (row.h - target) / 2, row.w, target};
    ui::paragraph(
        ui, inner.inset(0, below ? 0 : std::max(0.0F, (inner.h - text) / 2)), board.strip);
    for (const Key& one : keys) {
        if (!ui::button(ui, one.id, row.cut_left(ui::button_width(ui, one.key), gap), one.key))
            continue;
        if (one.to_jobs)
            desk.state.place = Place::jobs;
        desk.ask(one.ask);
    }
    return strip.h;
}

} // namespace treadle::views
