#include "ui/views/lesson_view.h"

#include "ui/views/limits_view.h"
#include "ui/views/order_view.h"
#include "ui/views/parts_place.h"
#include "ui/views/shop_view.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>
#include <array>
#include <span>
#include <utility>

namespace treadle::views {

namespace {

using Do = LessonAsk::Do;
using Kind = LessonBlock::Kind;

constexpr float k_widest = 900; ///< of words, at the size of letters that the user has
/// From the last row: digits of so much of the screen's height (22 minutes of arc at six heights).
constexpr float k_seen_share = 0.04F;
constexpr float k_digit_share = 0.70F; ///< of a line of type that its digits are high, at least
constexpr float k_shape = 34;

struct Sight {
    Desk& desk;
    ui::Ui& ui;
    const LessonBoard& board;
    bool follows = false; ///< a line was shown in the last frame: its keys stay in sight

    void ask(const LessonAsk& what) {
        desk.ask(what);
        ui.want_frame();
    }
};

/// The least size of type whose digits are seen from the last row.
ui::TextSize seen_size(const ui::Ui& ui) {
    constexpr std::array k_sizes = {
        ui::TextSize::body, ui::TextSize::large, ui::TextSize::title, ui::TextSize::figure};
    for (const ui::TextSize size : k_sizes)
        if (ui::text_px(size) * ui.size().text_scale * k_digit_share >=
            k_seen_share * ui.screen().h)
            return size;
    return ui::TextSize::huge;
}

ui::TextStyle style_of(const Sight& sight, Kind kind) {
    const bool far = sight.board.is_presenting;
    const ui::TextSize body = far ? seen_size(sight.ui) : ui::TextSize::body;
    if (kind == Kind::quiet)
        return {
            far ? ui::TextSize::body : ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};
    return {body, kind == Kind::heading, ui::Ink::ink, ui::Align::left};
}

/// As many lines as it needs: a title stands nowhere else. Returns where it ended.
float title(
    Sight& sight, const ui::Rect& rest, std::string_view words, int level, ui::TextStyle style) {
    const float height = ui::paragraph_height(sight.ui, rest.w, words, style);
    const ui::Rect rect{rest.x, rest.y, rest.w, height};
    sight.ui.add_node(sight.ui.next_id("title"), ui::Role::heading, rect, words).level = level;
    ui::draw_paragraph(sight.ui, rect, words, style);
    return rect.bottom();
}

float key_height(const Sight& sight) { return std::max(sight.ui.size().target, 44.0F); }

/// On a phone only these stay over and below the step; the others stand at its end.
constexpr std::size_t k_staying = 2;
std::span<const LessonKey> staying(const Sight& sight, std::span<const LessonKey> all) {
    return sight.ui.is_narrow() ? all.first(std::min(all.size(), k_staying)) : all;
}
std::span<const LessonKey> others(const Sight& sight, std::span<const LessonKey> all) {
    return all.subspan(staying(sight, all).size());
}

/// Side by side on as many lines as they need; only measured when `draw` is false.
float keys(Sight& sight, const ui::Rect& rect, std::span<const LessonKey> all, bool draw) {
    const float gap = std::max(12.0F, sight.ui.size().gap);
    const float height = key_height(sight);
    float x = rect.x;
    float y = rect.y;
    for (const LessonKey& one : all) {
        ui::Button key;
        key.label = one.label;
        key.name = one.name.empty() ? one.label : one.name;
        key.look = one.primary ? ui::KeyLook::primary : ui::KeyLook::normal;
        key.enabled = one.enabled;
        key.why_not = one.why_not;
        const float width = std::min(rect.w, ui::button_width(sight.ui, key));
        if (x > rect.x && x + width > rect.right()) {
            x = rect.x;
            y += height + gap;
        }
        if (draw && ui::button(sight.ui, one.id, {x, y, width, height}, key)) {
            sight.ask(one.ask);
            if (one.ask.what == Do::reveal)
                sight.desk.state.focus_next = one.id;
        }
        if (draw && sight.follows && one.ask.what == Do::reveal)
            sight.ui.bring_into_sight({x, y, width, height});
        x += width + gap;
    }
    return all.empty() ? 0 : y + height - rect.y;
}

float field(Sight& sight, const ui::Rect& rest, const LessonBlock& block, std::size_t index) {
    ui::Field box;
    box.label = block.text;
    box.value = block.value;
    box.error = block.detail;
    const float width = std::min(rest.w, 360 * sight.ui.size().text_scale);
    const ui::Rect place{rest.x, rest.y, width, ui::field_height(sight.ui, false)};
    const std::string id = "field-" + std::to_string(index);
    if (const auto typed = ui::text_field(sight.ui, id, place, box))
        sight.ask({block.takes, *typed, 0});
    if (block.detail.empty())
        return place.bottom();
    return place.bottom() +
           ui::field_error(sight.ui, id, {rest.x, place.bottom(), rest.w, 0}, block.detail);
}

/// What was said to an answer, with a shape: never by colour alone.
float said(Sight& sight, const ui::Rect& rest, const LessonBlock& block) {
    const ui::Verdict mark = block.kind == Kind::right   ? ui::Verdict::fits
                             : block.kind == Kind::wrong ? ui::Verdict::does_not_fit
                                                         : ui::Verdict::not_known;
    if (!sight.board.is_presenting)
        return rest.y + ui::message_line(sight.ui, rest, mark, block.text);
    const float line = ui::line_height(sight.ui, seen_size(sight.ui));
    ui::draw_verdict_shape(sight.ui, mark, rest.x + k_shape / 2, rest.y + line / 2, k_shape);
    const ui::Rect words{rest.x + k_shape + 16, rest.y, rest.w - k_shape - 16, 0};
    return rest.y + ui::paragraph(sight.ui, words, block.text, style_of(sight, block.kind));
}

float card(Sight& sight, ui::Rect rest, const LessonBlock& block) {
    ui::TextStyle bold = style_of(sight, Kind::words);
    bold.bold = true;
    const float top = rest.y;
    ui::Rect inside = rest.inset(20, 0);
    inside.y += 8;
    inside.y += ui::paragraph(sight.ui, inside, block.text, bold) + 4;
    inside.y += ui::paragraph(sight.ui, inside, block.detail, style_of(sight, Kind::words)) + 8;
    sight.ui.fill({rest.x, top, 6, inside.y - top}, ui::Ink::ink);
    return inside.y;
}

float one_block(Sight& sight, ui::Rect rest, std::size_t index) {
    const LessonBlock& block = sight.board.blocks[index];
    switch (block.kind) {
    case Kind::heading: {
        const ui::TextStyle style = style_of(sight, block.kind);
        const float height = ui::line_height(sight.ui, style.size) + 4;
        ui::heading(sight.ui, {rest.x, rest.y, rest.w, height}, block.text, 3, style);
        return rest.y + height;
    }
    case Kind::words:
    case Kind::figures:
    case Kind::quiet:
        return rest.y + ui::paragraph(sight.ui, rest, block.text, style_of(sight, block.kind));
    case Kind::right:
    case Kind::wrong:
    case Kind::unsure:
        return said(sight, rest, block);
    case Kind::card:
        return card(sight, rest, block);
    case Kind::field:
        return field(sight, rest, block, index);
    case Kind::keys:
        return rest.y + keys(sight, rest, block.keys, true);
    }
    return rest.y;
}

float blocks(Sight& sight, ui::Rect rest) {
    for (std::size_t i = 0; i < sight.board.blocks.size(); ++i)
        rest.y = one_block(sight, rest, i) + sight.ui.size().gap;
    return rest.y;
}

/// Where the demonstration has gone by its own keys. Places that it has no view for lead back.
void demonstration(Desk& shown, const ui::Rect& rect) {
    shown.readings.refresh(shown.session);
    if (shown.ui.key("z", ui::Ui::Mod::control))
        shown.ask(Wish::undo);
    if (shown.ui.key("y", ui::Ui::Mod::control))
        shown.ask(Wish::redo);
    switch (shown.state.place) {
    case Place::limits:
        return limits_view(shown, rect);
    case Place::order:
        return order_view(shown, rect);
    case Place::shop:
        return shop_view(shown, rect);
    default:
        break;
    }
    shown.state.place = Place::parts;
    parts_place(shown, rect);
}

void list(Sight& sight, const ui::Rect& rect) {
    ui::Ui& ui = sight.ui;
    ui::ScrollArea area(ui, "list", rect, "Lessons");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    rest.w = std::min(rest.w, k_widest * ui.size().text_scale);
    rest.y += ui.size().gap;
    const ui::TextStyle quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};
    rest.y += ui::paragraph(ui,
                            rest,
                            "Worked examples, exercises and demonstrations. Nothing here touches "
                            "your jobs, and what you answer is kept nowhere: print it.",
                            quiet) +
              ui.size().gap;
    if (!sight.board.trouble.empty())
        rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, sight.board.trouble);
    for (const LessonRow& row : sight.board.rows) {
        const ui::Scope scope(ui, row.id);
        const ui::TextStyle bold{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
        rest.y += ui::paragraph(ui, rest, row.title, bold);
        rest.y += ui::paragraph(ui, rest, row.about);
        rest.y += ui::paragraph(ui, rest, row.detail, quiet) + ui.size().gap;
        const std::vector<LessonKey> open{
            {"open", "Open", "Open lesson: " + row.title, {Do::open, row.id, 0}, false, true, ""}};
        rest.y += keys(sight, rest, open, true) + ui.size().gap;
        ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::quiet, 1);
        rest.y += ui.size().gap;
    }
    area.finish(rest.y + ui.size().margin);
}

/// Title and keys over a lesson. Returns what is left of the room.
ui::Rect head(Sight& sight, ui::Rect rect) {
    ui::Ui& ui = sight.ui;
    ui::Rect rest = rect.inset(ui.size().margin, ui.size().gap);
    const bool small = sight.board.is_presenting || ui.is_narrow();
    const ui::TextSize size = small ? ui::TextSize::body : ui::TextSize::large;
    const std::string words = !sight.board.is_open        ? "Lessons"
                              : sight.board.is_presenting ? "Presenter view: " + sight.board.title
                                                          : sight.board.title;
    const float end = title(sight, rest, words, 1, {size, true, ui::Ink::ink, ui::Align::left}) + 4;
    rest.cut_top(end - rest.y);
    const float height = keys(sight, rest, staying(sight, sight.board.head), false);
    keys(sight, rest.cut_top(height, ui.size().gap), staying(sight, sight.board.head), true);
    ui.rule(rect.x, rest.y, rect.right(), rest.y, ui::Ink::ink, ui.size().stroke);
    return {rect.x, rest.y + 1, rect.w, rect.bottom() - rest.y - 1};
}

void step(Sight& sight, ui::Rect rect) {
    ui::Ui& ui = sight.ui;
    const float foot = keys(sight,
                            rect.inset(ui.size().margin, ui.size().gap),
                            staying(sight, sight.board.foot),
                            false);
    const ui::Rect foot_rect =
        rect.cut_bottom(foot + 2 * ui.size().gap).inset(ui.size().margin, ui.size().gap);
    {
        const ui::Scope scope(ui, sight.board.step);
        ui::ScrollArea area(ui, "step", rect, sight.board.step_title);
        ui::Rect rest = area.content().inset(ui.size().margin, 0);
        rest.w = sight.board.is_presenting ? rest.w - 16
                                           : std::min(rest.w, k_widest * ui.size().text_scale);
        rest.y += ui.size().gap;
        ui::TextStyle bold = style_of(sight, Kind::heading);
        bold.size = sight.board.is_presenting ? bold.size : ui::TextSize::title;
        rest.y += ui::paragraph(ui, rest, sight.board.place, style_of(sight, Kind::quiet));
        rest.y = title(sight, rest, sight.board.step_title, 2, bold) + ui.size().gap;
        rest.y = blocks(sight, rest);
        rest.y += keys(sight, rest, others(sight, sight.board.foot), true) + ui.size().gap;
        rest.y += keys(sight, rest, others(sight, sight.board.head), true);
        area.finish(rest.y + ui.size().margin);
    }
    ui.rule(rect.x,
            foot_rect.y - ui.size().gap,
            rect.right(),
            foot_rect.y - ui.size().gap,
            ui::Ink::ink,
            ui.size().stroke);
    keys(sight, foot_rect, staying(sight, sight.board.foot), true);
}

void keyboard(Sight& sight) {
    if (!sight.board.is_open) {
        if (sight.ui.key("Escape"))
            sight.ask({Do::leave, "", 0});
        return;
    }
    if (sight.ui.key("p") || sight.ui.key("P"))
        sight.ask({Do::present, "", 0});
    if (sight.ui.key("Escape"))
        sight.ask({sight.board.is_presenting ? Do::present : Do::close, "", 0});
    if (sight.ui.key("PageDown"))
        sight.ask({Do::next, "", 0});
    if (sight.ui.key("PageUp"))
        sight.ask({Do::back, "", 0});
}

} // namespace

void lesson_view(Desk& desk, const ui::Rect& rect, Desk* shown) {
    Sight sight{desk, desk.ui, desk.lessons};
    sight.follows = !std::exchange(desk.state.focus_next, {}).empty();
    const bool shows = desk.lessons.is_open && desk.lessons.shows && shown != nullptr;
    ui::Rect rest = rect;
    {
        const ui::Scope scope(desk.ui, "lessons");
        keyboard(sight);
        rest = head(sight, rest);
        if (!desk.lessons.is_open)
            return list(sight, rest);
        if (!shows)
            return step(sight, rest);
        const float words = std::min(rest.h * 0.42F, 260 * desk.ui.size().text_scale);
        step(sight, rest.cut_top(words));
    }
    demonstration(*shown, rest);
}

} // namespace treadle::views
