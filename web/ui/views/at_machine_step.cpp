#include "ui/views/at_machine_step.h"

#include "ui/views/paint.h"
#include "ui/views/reading.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>
#include <cmath>

namespace treadle::views {

namespace {

constexpr float k_readable = 96;   ///< height of digits that is read from two metres
constexpr float k_most_high = 150; ///< in a tall place
constexpr float k_most_low = 116;  ///< where words and picture stand side by side
constexpr float k_gap = 12;
constexpr float k_least_picture = 170;
constexpr float k_most_picture = 460;
constexpr float k_tick_box = 26;
constexpr float k_below_slash = 8; ///< the stroke of a fraction reaches below its digits

constexpr ui::TextStyle k_title{ui::TextSize::title, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_smaller_title{ui::TextSize::large, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_bold{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_plain{ui::TextSize::body, false, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_quiet{ui::TextSize::body, false, ui::Ink::quiet, ui::Align::left};

float tooling(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const sheet::MachineWords& words = desk.at_machine.words;
    const ui::TextStyle& title = ui.is_narrow() ? k_smaller_title : k_title;
    rest.y += ui::paragraph(ui, rest, words.title, title);
    if (!words.tools.empty())
        rest.y += ui::paragraph(ui, rest, words.tools, k_plain);
    for (const std::string& note : words.notes)
        rest.y += ui::paragraph(ui, rest, note, k_bold);
    if (desk.at_machine.changed)
        rest.y += ui::message_line(
            ui, rest, ui::Verdict::up_to, "Changed since you began: check it from the start.");
    return rest.y + k_gap;
}

std::string spoken(const sheet::FigureText& text) {
    return text.what + " " + text.digits + " " + text.unit + ", " + text.from;
}

std::string label_of(const sheet::FigureText& text) { return text.what + ", " + text.from; }

/// The largest of the labels, so that figures beside each other stand in one line.
float label_height(Desk& desk, float width) {
    float height = 0;
    for (const sheet::FigureText& text : desk.at_machine.words.figures)
        height = std::max(height, ui::paragraph_height(desk.ui, width, label_of(text), k_quiet));
    return height + k_gap / 2;
}

/// Where it is measured from, and below it the digits. Returns where it ended.
float one_figure(Desk& desk, const ui::Rect& rect, std::size_t index, float label, float height) {
    ui::Ui& ui = desk.ui;
    const sheet::FigureText& text = desk.at_machine.words.figures[index];
    const std::string words = spoken(text);
    ui::paragraph(ui, rect, label_of(text), k_quiet);
    ui::big_figure(ui,
                   "figure-" + std::to_string(index),
                   rect.x,
                   rect.y + label,
                   height,
                   {text.digits, text.unit, words});
    return rect.y + label + height + k_gap;
}

/// Height at which the widest of the figures just fits.
float common_height(Desk& desk, float width, float most) {
    float height = most;
    for (const sheet::FigureText& text : desk.at_machine.words.figures)
        height =
            std::min(height, ui::figure_height(desk.ui, {text.digits, text.unit, {}}, width, most));
    return height;
}

/// Beside each other when both can be read from two metres like that, else below each other.
float figures(Desk& desk, const ui::Rect& rect, float most) {
    const auto& list = desk.at_machine.words.figures;
    if (list.empty())
        return rect.y;
    const int count = static_cast<int>(list.size());
    const float beside = common_height(desk, rect.column(0, count, 2 * k_gap).w, most);
    float bottom = rect.y;
    if (count > 1 && beside >= k_readable) {
        for (int i = 0; i < count; ++i) {
            const ui::Rect place = rect.column(i, count, 2 * k_gap);
            const float label = label_height(desk, place.w);
            bottom = std::max(bottom,
                              one_figure(desk, place, static_cast<std::size_t>(i), label, beside));
        }
        return bottom + k_gap;
    }
    const float stacked = most > k_most_low ? k_readable + 2 * k_gap : k_readable;
    const float height = common_height(desk, rect.w, count > 1 ? std::min(most, stacked) : most);
    ui::Rect rest = rect;
    for (std::size_t i = 0; i < list.size(); ++i)
        rest.y = one_figure(desk, rest, i, label_height(desk, rest.w), height) + k_below_slash;
    return rest.y;
}

void tick_box(ui::Ui& ui, const ui::Rect& line, bool done, bool now) {
    const ui::Rect box{line.x, line.y + 2, k_tick_box, k_tick_box};
    ui.outline(box, done || !now ? ui::Ink::quiet : ui::Ink::ink, now ? 3.0F : 2.0F);
    if (done)
        ui::draw_icon(ui.draw(),
                      ui::Icon::tick,
                      box.x + k_tick_box / 2,
                      box.y + k_tick_box / 2,
                      k_tick_box * 0.8F,
                      ui.colour(ui::Ink::ink));
}

/// Each line carries its figure; the one that the next tap ticks is bold.
float ticks(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    const auto& lines = board.words.ticks;
    if (lines.empty())
        return rest.y;
    const int done = board.run.done[static_cast<std::size_t>(board.run.at)].ticked;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const int index = static_cast<int>(i);
        const bool is_done = index < done;
        ui::TextStyle style = index == done ? k_bold : is_done ? k_quiet : k_plain;
        if (!board.has_picture && !ui.is_narrow())
            style.size = ui::TextSize::large; // a set-up has the room
        ui::Rect line{rest.x + k_tick_box + k_gap, rest.y, rest.w - k_tick_box - k_gap, 0};
        line.h = ui::paragraph_height(ui, line.w, lines[i], style);
        ui.add_node("tick-" + std::to_string(i),
                    ui::Role::words,
                    {rest.x, rest.y, rest.w, std::max(line.h, k_tick_box + 4)},
                    (is_done         ? "Ticked: "
                     : index == done ? "To tick now: "
                                     : "To tick: ") +
                        lines[i]);
        if (ui.is_visible(line)) {
            tick_box(ui, {rest.x, rest.y, rest.w, line.h}, is_done, index == done);
            ui::draw_paragraph(ui, line, lines[i], style);
        }
        rest.y += std::max(line.h, k_tick_box + 4) + 6;
    }
    return rest.y + k_gap / 2;
}

float picture(Desk& desk, const ui::Rect& rect, float height) {
    if (!desk.at_machine.has_picture)
        return rect.y;
    const ui::Rect place{rect.x, rect.y, rect.w, height};
    paint_part(desk.ui, "piece", place, desk.at_machine.picture, plan::k_none);
    return place.bottom() + k_gap;
}

float verdict_and_safety(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    if (!board.words.verdict.empty()) {
        ui::Mark mark;
        mark.verdict = mark_of(board.words.outcome);
        mark.word = board.words.verdict;
        const std::string about = board.words.mark + ": " + board.words.verdict;
        mark.spoken = about;
        mark.size = ui::TextSize::large;
        ui::verdict_mark(ui, rest.cut_top(ui::line_height(ui, ui::TextSize::large) + 4), mark);
    }
    for (const std::string& warning : board.words.warnings)
        rest.y += ui::message_line(ui, rest, ui::Verdict::up_to, warning) + 4;
    if (!board.not_kept.empty())
        rest.y += ui::message_line(ui, rest, ui::Verdict::does_not_fit, board.not_kept) + 4;
    for (const std::string& line : board.words.safety)
        rest.y += ui::paragraph(ui, rest, line, k_quiet) + 4;
    if (!board.can_stay_awake)
        rest.y += ui::paragraph(
            ui, rest, "The screen may sleep: set it in the device's settings.", k_quiet);
    return rest.y + k_gap;
}

/// What the words below a picture take: the picture gets the rest.
float height_of_words(Desk& desk, float width) {
    const ui::Ui& ui = desk.ui;
    const AtMachineBoard& board = desk.at_machine;
    float height =
        board.words.verdict.empty() ? 0 : ui::line_height(ui, ui::TextSize::large) + 4 + k_gap;
    for (const std::string& line : board.words.safety)
        height += ui::paragraph_height(ui, width, line, k_quiet) + 4;
    for (const std::string& line : board.words.warnings)
        height += ui::paragraph_height(ui, width - 40, line, k_plain) + 4;
    return height;
}

} // namespace

void at_machine_step(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    ui::ScrollArea area(ui, "step", rect, "This step");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    rest.y += k_gap;
    if (rect.w >= 900 && rect.w > rect.h) {
        const float middle = std::floor(rect.w * 0.6F);
        ui::Rect words{rest.x, rest.y, middle - rest.x, rest.h};
        ui::Rect beside{middle + 24, rest.y, rect.right() - middle - 40, rest.h};
        words.y = tooling(desk, words);
        if (common_height(desk, words.w, k_most_low) < k_readable) // over both columns then
            beside.y = words.y = figures(desk, {rest.x, words.y, rest.w, rest.h}, k_most_low);
        else
            words.y = figures(desk, words, k_most_low);
        words.y = ticks(desk, words);
        const float room = rect.bottom() - beside.y - height_of_words(desk, beside.w) - 2 * k_gap;
        beside.y = picture(desk, beside, std::clamp(room, k_least_picture, k_most_picture));
        beside.y = verdict_and_safety(desk, beside);
        area.finish(std::max(words.y, beside.y));
        return;
    }
    rest.y = tooling(desk, rest);
    rest.y = figures(desk, rest, k_most_high);
    rest.y = ticks(desk, rest);
    const float used = rest.y - area.content().y;
    const float room = rect.h - used - height_of_words(desk, rest.w) - 2 * k_gap;
    rest.y = picture(desk, rest, std::clamp(room, k_least_picture, k_most_picture));
    area.finish(verdict_and_safety(desk, rest));
}

} // namespace treadle::views
