#include "ui/views/order_view.h"

#include "ui/views/lane_rows.h"
#include "ui/views/next_action.h"
#include "ui/views/parts_edit.h"
#include "ui/views/wear_rows.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_title{ui::TextSize::large, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_setting{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr float k_indent = 12; ///< where the words of a row begin
/// From this width on what goes with the set-ups stands beside them.
constexpr float k_two_columns = 1180;
/// Up to so many rows a screen reader hears all of them at once, not only those about in sight.
constexpr std::size_t k_whole_list = 200;
constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};

/// ", 3 of 8 steps done", once work at the machine has begun.
std::string done_words(const Desk& desk, std::size_t index) {
    const AtMachineBoard& board = desk.at_machine;
    return board.is_begun && index < board.set_ups.size() ? ", " + board.set_ups[index] : "";
}

float to_the_machine(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const bool begun = desk.at_machine.is_begun;
    ui::Button key;
    key.label = "To the machine";
    key.name = begun ? "To the machine, where the work stands" : "To the machine, step by step";
    key.look = ui::KeyLook::primary;
    key.size = ui::TextSize::large;
    const ui::Rect place{rest.x,
                         rest.y,
                         std::min(rest.w, ui::button_width(ui, key) + 40),
                         std::max(ui.size().primary, ui.size().target)};
    if (ui::button(ui, "to-the-machine", place, key))
        desk.ask(AtMachine{AtMachine::Do::enter, {}});
    rest.y = place.bottom() + ui.size().gap;
    if (begun)
        rest.y += ui::paragraph(ui, rest, desk.at_machine.resume) + ui.size().gap;
    return rest.y;
}

/// Measures an entry only when the width or the size of the type is another one.
template <class Measure>
float height_of(const ui::Ui& ui, KeptHeight& kept, float width, const Measure& measure) {
    const float type = ui::line_height(ui, ui::TextSize::body) + ui.size().target / 1000;
    if (kept.width != width || kept.type != type)
        kept = {width, type, measure()};
    return kept.height;
}

float step_height(const ui::Ui& ui, float width, const StepReading& step) {
    const float row = ui::row_height(ui, 44);
    if (step.notes.empty())
        return row;
    return row + ui::paragraph_height(ui, width - 2 * k_indent, step.notes, k_quiet) + 6;
}

void one_step(Desk& desk, ui::Rect rest, const StepReading& step, std::size_t index) {
    ui::Ui& ui = desk.ui;
    const ui::Rect place{rest.x, rest.y, rest.w, ui::row_height(ui, 44)};
    rest.y += place.h;
    ui::ListRow entry;
    entry.title = step.title;
    entry.spoken = step.spoken;
    entry.beside = step.detail;
    if (ui::list_row(ui, "step-" + std::to_string(index), place, entry).pressed)
        show_operation(desk, step.part, step.operation);
    if (step.notes.empty())
        return;
    // The rule of the row goes below its notes.
    ui.fill({place.x, place.bottom() - 2, place.w, 3}, ui::Ink::paper);
    const ui::Scope scope(ui, "notes-" + std::to_string(index));
    rest.y += ui::paragraph(ui, rest.inset(k_indent, 0), step.notes, k_quiet) + 6;
    ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::line, 1);
}

float head(Desk& desk, ui::Rect rest, const SetUpReading& reading, std::size_t number) {
    ui::Ui& ui = desk.ui;
    ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::ink, ui.size().stroke);
    rest.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::large) + 6;
    ui::Rect head{rest.x, rest.y, rest.w, height};
    ui::text(ui,
             head.cut_right(240),
             reading.strokes,
             {ui::TextSize::body, false, ui::Ink::quiet, ui::Align::right});
    ui::heading(ui, head, reading.title + done_words(desk, number), 2, k_title);
    rest.y += height;
    rest.y += ui::paragraph(ui, rest, reading.tools);
    for (const std::string& line : reading.settings)
        rest.y += ui::paragraph(ui, rest, line, k_setting);
    return rest.y + ui.size().gap / 2;
}

float head_height(const ui::Ui& ui, float width, const SetUpReading& reading) {
    float height = ui.size().gap + ui::line_height(ui, ui::TextSize::large) + 6;
    height += ui::paragraph_height(ui, width, reading.tools);
    for (const std::string& line : reading.settings)
        height += ui::paragraph_height(ui, width, line, k_setting);
    return height + ui.size().gap / 2;
}

/// What lies far out of sight keeps its place undrawn, unless the order is short.
float set_up(Desk& desk, ui::Rect rest, SetUpReading& reading, std::size_t index, bool whole) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "set-up-" + std::to_string(index));
    const float above =
        height_of(ui, reading.head, rest.w, [&] { return head_height(ui, rest.w, reading); });
    if (whole || ui.is_near({rest.x, rest.y, rest.w, above}))
        head(desk, rest, reading, index);
    rest.y += above;
    const float below = height_of(ui, reading.all_steps, rest.w, [&] {
        float sum = 0;
        for (StepReading& step : reading.steps)
            sum += height_of(ui, step.drawn, rest.w, [&] { return step_height(ui, rest.w, step); });
        return sum;
    });
    const float bottom = rest.y + below + ui.size().margin;
    if (!whole && !ui.is_near({rest.x, rest.y, rest.w, below}))
        return bottom;
    for (std::size_t i = 0; i < reading.steps.size(); ++i) {
        const StepReading& step = reading.steps[i];
        if (whole || ui.is_near({rest.x, rest.y, rest.w, step.drawn.height}))
            one_step(desk, rest, step, i);
        rest.y += step.drawn.height;
    }
    return bottom;
}

bool is_left_out(const PartReading& part) {
    return part.verdict_mark == ui::Verdict::does_not_fit ||
           part.verdict_mark == ui::Verdict::not_known;
}

float not_in_order(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "left-out");
    bool any = false;
    const bool whole = desk.readings.parts().size() <= k_whole_list;
    for (const auto& part : desk.readings.parts()) {
        if (!is_left_out(*part))
            continue;
        if (!any)
            rest.y += ui::paragraph(ui,
                                    rest,
                                    "Operations that do not fit, or of which nothing can be said, "
                                    "are left out of the order:") +
                      4;
        any = true;
        const float height = height_of(ui, part->announced, rest.w, [&] {
            return ui::message_height(ui, rest.w, part->announcement());
        });
        if (whole || ui.is_near({rest.x, rest.y, rest.w, height}))
            ui::message_line(ui, rest, part->verdict_mark, part->announcement());
        rest.y += height + 4;
    }
    return any ? rest.y + ui.size().gap : rest.y;
}

float to_buy(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const std::vector<std::string>& shopping = desk.readings.order(desk.session).shopping;
    if (shopping.empty())
        return rest.y;
    ui::heading(ui,
                rest.cut_top(ui::line_height(ui, ui::TextSize::large) + 6),
                "To buy before the work starts",
                2,
                k_title);
    for (const std::string& need : shopping)
        rest.y += ui::paragraph(ui, rest, need);
    return rest.y + ui.size().margin;
}

float set_ups(Desk& desk, ui::Rect rest) {
    std::vector<SetUpReading>& order = desk.readings.order(desk.session).set_ups;
    constexpr std::array k_to_parts = {NextKey{"Go to Parts", Command::none, Place::parts}};
    if (desk.session.job().parts.empty())
        return no_parts_yet(desk, rest, "The order of work is made from the parts; none is there.");
    if (order.empty())
        return next_action(desk,
                           rest,
                           "No operation can be put in order yet. Each says under Parts what it "
                           "lacks and what would make it fit.",
                           k_to_parts);
    std::size_t steps = 0;
    for (const SetUpReading& reading : order)
        steps += reading.steps.size();
    for (std::size_t i = 0; i < order.size(); ++i)
        rest.y = set_up(desk, rest, order[i], i, steps <= k_whole_list);
    return rest.y;
}

} // namespace

void order_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "order");
    ui::ScrollArea area(ui, "view", rect, "Order of work");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    const float scale = ui.size().text_scale;
    const bool two_columns = rest.w >= k_two_columns * scale;
    rest.w = std::min(rest.w, (two_columns ? 1500.0F : 900.0F) * scale);
    rest.y += ui.size().gap;
    const float height = ui::line_height(ui, ui::TextSize::title) + 6;
    ui::heading(ui,
                {rest.x, rest.y, rest.w, height},
                "Order of work",
                1,
                {ui::TextSize::title, true, ui::Ink::ink, ui::Align::left});
    rest.y += height;
    const OrderReading& order = desk.readings.order(desk.session);
    rest.y += ui::paragraph(ui, rest, order.totals, k_quiet);
    rest.y += ui::paragraph(ui, rest, order.time, k_quiet) + ui.size().gap;
    if (!order.set_ups.empty())
        rest.y = to_the_machine(desk, rest);
    rest.y = not_in_order(desk, rest);
    if (!two_columns) {
        rest.y = set_ups(desk, rest.moved(0, to_buy(desk, rest) - rest.y));
        rest.y = lane_rows(desk, rest);
        return area.finish(wear_rows(desk, rest));
    }
    ui::Rect beside = rest.cut_right(rest.w * 0.42F, 2 * ui.size().margin);
    const float left = set_ups(desk, rest);
    beside.y = to_buy(desk, beside);
    beside.y = lane_rows(desk, beside);
    area.finish(std::max(left, wear_rows(desk, beside)));
}

} // namespace treadle::views
