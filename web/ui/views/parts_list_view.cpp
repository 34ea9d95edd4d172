#include "ui/views/parts_list_view.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>
#include <cmath>

namespace treadle::views {

namespace {

using Do = PartsListAsk::Do;

constexpr ui::TextStyle k_title{ui::TextSize::large, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_bold{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};
/// Up to so many rows a screen reader hears all of them, not only those about in sight.
constexpr std::size_t k_whole_list = 300;
constexpr float k_field_width = 220;
constexpr float k_shape_width = 30;

/// What the view has for one frame.
struct Sight {
    ui::Ui& ui;
    const PartsListBoard& board;
    std::vector<Ask>& asks;

    // Not inlined into the callers: GCC 12 takes what a variant does not hold for something it
    // reads.
    void ask(Do what, int choice = 0, int column = 0) {
        asks.emplace_back(PartsListAsk{what, choice, column});
        ui.want_frame();
    }
};

float heading(Sight& sight, ui::Rect rest, const char* words) {
    const float height = ui::line_height(sight.ui, ui::TextSize::large) + 6;
    rest.y += sight.ui.size().gap;
    ui::heading(sight.ui, {rest.x, rest.y, rest.w, height}, words, 3, k_title);
    return rest.y + height;
}

/// One choice with its reason below, as wide as its column.
struct Choice {
    std::string id;
    std::string label;
    std::string why;
    std::string trouble;
    const std::vector<std::string>& options;
    int selected;
    Do what;
    int column;
};

float one_choice(Sight& sight, const ui::Rect& rect, const Choice& choice) {
    ui::Ui& ui = sight.ui;
    ui::Field field;
    field.label = choice.label;
    field.error = choice.trouble;
    ui::Rect rest = rect;
    const ui::Rect box = rest.cut_top(ui::field_height(ui, false), 2);
    if (const auto chosen = ui::choice(ui, choice.id, box, field, choice.options, choice.selected))
        sight.ask(choice.what, *chosen, choice.column);
    if (!choice.trouble.empty())
        return rest.y + ui::field_error(ui, choice.id, rest, choice.trouble);
    return choice.why.empty() ? rest.y : rest.y + ui::paragraph(ui, rest, choice.why, k_quiet);
}

/// Choices in as many columns as the width has room for.
float choices(Sight& sight, ui::Rect rest, const std::vector<Choice>& all) {
    const float gap = sight.ui.size().gap;
    const float least = k_field_width * sight.ui.size().text_scale;
    const int columns = std::max(1, static_cast<int>((rest.w + gap) / (least + gap)));
    for (std::size_t i = 0; i < all.size(); i += static_cast<std::size_t>(columns)) {
        float bottom = rest.y;
        for (int c = 0; c < columns && i + static_cast<std::size_t>(c) < all.size(); ++c)
            bottom = std::max(bottom,
                              one_choice(sight,
                                         rest.column(c, columns, gap),
                                         all[i + static_cast<std::size_t>(c)]));
        rest.y = bottom + gap;
    }
    return rest.y;
}

float columns(Sight& sight, ui::Rect rest) {
    rest.y = heading(sight, rest, "What each column holds");
    std::vector<Choice> all;
    for (std::size_t i = 0; i < sight.board.columns.size(); ++i) {
        const PartsListColumn& column = sight.board.columns[i];
        all.push_back({"column-" + std::to_string(i),
                       column.heading,
                       column.open ? "" : column.why,
                       column.open ? column.why : "",
                       sight.board.meanings,
                       column.holds,
                       Do::column,
                       static_cast<int>(i)});
    }
    return choices(sight, rest, all);
}

float common(Sight& sight, ui::Rect rest) {
    const PartsListBoard& board = sight.board;
    rest.y = heading(sight, rest, "For rows that do not say it");
    return choices(
        sight,
        rest,
        {{"unit", "Numbers without a unit are", "", "", board.units, board.unit, Do::unit, 0},
         {"grade", "Grade", "", "", board.grades, board.grade, Do::grade, 0},
         {"decimal",
          "Before decimals stands",
          "",
          "",
          board.decimals,
          board.decimal,
          Do::decimal,
          0}});
}

ui::Verdict verdict_of(PartsListRow::Became became) {
    switch (became) {
    case PartsListRow::Became::part:
        return ui::Verdict::fits;
    case PartsListRow::Became::refused:
        return ui::Verdict::does_not_fit;
    case PartsListRow::Became::passed:
        break;
    }
    return ui::Verdict::not_known;
}

/// A reason is up to about 180 letters, which need more lines the narrower the page is.
float row_height(const ui::Ui& ui, float width, const PartsListRow& row) {
    const float line = ui::line_height(ui, ui::TextSize::small);
    constexpr float k_letters_wide = 0.55F * 180;
    const float lines = row.became == PartsListRow::Became::refused
                            ? std::ceil(k_letters_wide * line / std::max(1.0F, width))
                            : 1.0F;
    return ui::line_height(ui, ui::TextSize::body) + lines * line + ui.size().gap;
}

void one_row(Sight& sight, ui::Rect rect, std::size_t index) {
    ui::Ui& ui = sight.ui;
    const PartsListRow& row = sight.board.rows[index];
    ui.add_node("row-" + std::to_string(index),
                ui::Role::words,
                rect,
                row.title + (row.detail.empty() ? "" : ". " + row.detail));
    const ui::Rect shape = rect.cut_left(k_shape_width);
    const float line = ui::line_height(ui, ui::TextSize::body);
    ui::draw_verdict_shape(ui, verdict_of(row.became), shape.x + 10, shape.y + line / 2, 15);
    ui::draw_text(ui, rect.cut_top(line), row.title, k_bold);
    ui::draw_paragraph(ui, rect, row.detail, k_quiet);
}

float rows(Sight& sight, ui::Rect rest) {
    const PartsListBoard& board = sight.board;
    rest.y = heading(sight, rest, "What each row becomes");
    if (!board.fault.empty())
        return rest.y + ui::message_line(sight.ui, rest, ui::Verdict::not_known, board.fault);
    const bool whole = board.rows.size() <= k_whole_list;
    for (std::size_t i = 0; i < board.rows.size(); ++i) {
        const ui::Rect place{
            rest.x, rest.y, rest.w, row_height(sight.ui, rest.w - k_shape_width, board.rows[i])};
        rest.y = place.bottom();
        if (whole || sight.ui.is_near(place))
            one_row(sight, place, i);
    }
    return rest.y;
}

std::string counted(std::size_t number, const char* one, const char* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

float counts(Sight& sight, const ui::Rect& rect) {
    const PartsListBoard& board = sight.board;
    std::string words = counted(board.parts, "row is taken", "rows are taken") + ", " +
                        counted(board.refused, "row is refused", "rows are refused") + ", " +
                        counted(board.passed, "row is passed over", "rows are passed over") +
                        ". The job stays as it is until you add them. " + board.letters;
    return ui::paragraph(sight.ui, rect, words, k_quiet);
}

struct Key {
    const char* id;
    std::string label;
    Do what;
    ui::KeyLook look;
    bool enabled;
    const char* why_not;
};

/// Keys side by side, on as many lines as they need; only measured when `draw` is false.
float keys(Sight& sight, const ui::Rect& rect, bool draw) {
    const PartsListBoard& board = sight.board;
    const Key all[] = {{"add",
                        "Add " + counted(board.parts, "part", "parts"),
                        Do::add,
                        ui::KeyLook::primary,
                        board.parts > 0,
                        "No row makes a part yet."},
                       {"save-refused",
                        "Save the refused rows",
                        Do::save_refused,
                        ui::KeyLook::normal,
                        board.refused > 0,
                        "No row is refused."},
                       {"cancel", "Cancel", Do::cancel, ui::KeyLook::normal, true, ""}};
    const float gap = std::max(12.0F, sight.ui.size().gap);
    const float height = sight.ui.size().target;
    float x = rect.x;
    float y = rect.y;
    for (const Key& one : all) {
        ui::Button key;
        key.label = one.label;
        key.look = one.look;
        key.enabled = one.enabled;
        key.why_not = one.why_not;
        const float width = std::min(rect.w, ui::button_width(sight.ui, key));
        if (x > rect.x && x + width > rect.right()) {
            x = rect.x;
            y += height + gap;
        }
        if (draw && ui::button(sight.ui, one.id, {x, y, width, height}, key))
            sight.ask(one.what);
        x += width + gap;
    }
    return y + height - rect.y;
}

} // namespace

void parts_list_view(ui::Ui& ui, const PartsListBoard& board, std::vector<Ask>& asks) {
    if (!board.open)
        return;
    Sight sight{ui, board, asks};
    const float margin = ui.is_narrow() ? ui.size().gap : ui.size().margin;
    const ui::Rect paper = ui.is_narrow() ? ui.screen() : ui.screen().inset(margin);
    const std::string name = "Parts list " + board.name;
    const ui::Dialog dialog(ui, "parts-list", paper, name);
    const ui::Scope scope(ui, "parts-list");
    ui::Rect rest = paper.inset(margin);
    ui::heading(ui, rest.cut_top(ui::line_height(ui, ui::TextSize::large) + 6), name, 2, k_title);
    rest.cut_top(counts(sight, rest), ui.size().gap);
    const ui::Rect foot = rest.cut_bottom(keys(sight, rest, false), ui.size().gap);
    {
        ui::ScrollArea area(ui, "view", rest, "Columns and rows");
        ui::Rect content = area.content();
        content.w -= 8;
        content.y = columns(sight, content);
        content.y = common(sight, content);
        content.y = rows(sight, content);
        area.finish(content.y + ui.size().gap);
    }
    keys(sight, foot, true);
    if (ui.key("Escape"))
        sight.ask(Do::cancel);
}

} // namespace treadle::views
