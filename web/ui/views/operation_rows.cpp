#include "ui/views/operation_rows.h"

#include "ui/views/help_view.h"
#include "ui/views/parts_edit.h"
#include "ui/views/remedy_rows.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr float k_ring = 44;
constexpr float k_strip_below = 30;
constexpr float k_title_room = 276;

void strip(Desk& desk, const ui::Rect& rect, const OperationReading& operation) {
    ui::Strip strip;
    strip.low_share = operation.low_share;
    strip.high_share = operation.high_share;
    strip.verdict = operation.mark;
    strip.spoken = operation.strip;
    ui::demand_strip(desk.ui, rect, strip);
}

struct RowLayout {
    float verdict = 0; ///< width of the words at the right
    float strip = 0;   ///< width of the strip beside them; 0: it stands below
    float height = 0;
};

RowLayout lay_out(const ui::Ui& ui, float width) {
    RowLayout layout;
    layout.verdict = std::clamp(width * 0.3F, 168.0F, 210.0F);
    const float room = width - k_ring - layout.verdict - k_title_room;
    layout.strip = room < 90 ? 0 : std::min(room, 270.0F);
    layout.height = ui::row_height(ui, 66);
    if (layout.strip == 0)
        layout.height += k_strip_below;
    return layout;
}

/// Words at the left and words at the right of one line; each gets what the other leaves, those at
/// the right at least half.
void line_of_two(ui::Ui& ui,
                 ui::Rect line,
                 std::string_view left,
                 ui::TextStyle left_style,
                 std::string_view right,
                 ui::TextStyle right_style,
                 float least_right) {
    const float free = line.w - ui::text_width(ui, left, left_style) - 10;
    const float needed =
        std::min(ui::text_width(ui, right, right_style) + 2, std::max(line.w / 2, free));
    ui::draw_text(ui, line.cut_right(std::max(needed, least_right), 8), right, right_style);
    line.cut_right(4);
    if (left_style.size == ui::TextSize::large && ui::text_width(ui, left, left_style) > line.w)
        left_style.size = ui::TextSize::body;
    ui::draw_text(ui, line, left, left_style);
}

void row_words(ui::Ui& ui,
               ui::Rect rest,
               const OperationReading& operation,
               const RowLayout& layout) {
    const float title = ui::line_height(ui, ui::TextSize::large);
    const float detail = ui::line_height(ui, ui::TextSize::small);
    rest = rest.inset(0, std::max(0.0F, (rest.h - title - detail) / 2));
    // A strip beside the words keeps its column, whatever the words of this row are.
    const float column = layout.strip > 0 ? layout.verdict + layout.strip : 0;
    line_of_two(ui,
                rest.cut_top(title),
                operation.title,
                {ui::TextSize::large, true},
                operation.verdict,
                {ui::TextSize::body, true, ui::ink_of(operation.mark), ui::Align::right},
                column);
    line_of_two(ui,
                {rest.x, rest.y, rest.w, detail},
                operation.detail,
                {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left},
                operation.margin,
                {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::right},
                column);
}

void one_row(Desk& desk, const ui::Rect& rect, const OperationReading& operation, int index) {
    ui::Ui& ui = desk.ui;
    const bool chosen = desk.state.operation == index;
    const RowLayout layout = lay_out(ui, rect.w);
    ui::ListRow row;
    row.spoken = operation.spoken;
    const ui::RowTouch touch = ui::list_row(ui, "operation-" + std::to_string(index), rect, row);
    ui::Rect rest = rect;
    ui::Rect below = layout.strip == 0 ? rest.cut_bottom(k_strip_below) : ui::Rect{};
    const ui::Rect ring = rest.cut_left(k_ring, 6);
    ui::number_ring(ui, ring.x + 20, ring.y + ring.h / 2, index + 1, chosen);
    rest.cut_right(6);
    const ui::Rect words = rest;
    if (layout.strip > 0) {
        rest.cut_right(layout.verdict, 8);
        strip(desk, rest.cut_right(layout.strip).inset(0, (rest.h - 40) / 2), operation);
    } else {
        below.cut_left(k_ring, 6);
        below.cut_right(6);
        below.cut_bottom(6);
        strip(desk, below, operation);
    }
    row_words(ui, words, operation, layout);
    if (touch.pressed) {
        desk.state.operation = chosen ? plan::k_none : index;
        desk.state.trial.reset();
        if (chosen && desk.state.panel != Panel::part_form)
            desk.state.panel = Panel::checks;
        desk.state.adding = false;
        ui.want_frame();
    }
}

/// Keys one after the other, on as many lines as they need.
class KeyFlow {
public:
    KeyFlow(Desk& desk, const ui::Rect& rect)
        : desk_(desk),
          all_(rect),
          rest_{rect.x, rect.y, rect.w, desk.ui.size().target} {}

    bool key(const char* id, const char* label, const std::string& name) {
        ui::Button key;
        key.label = label;
        key.name = name;
        const float gap = desk_.ui.size().gap;
        const float width = ui::button_width(desk_.ui, key);
        if (rest_.w < width && rest_.x > all_.x)
            rest_ = {all_.x, rest_.bottom() + gap, all_.w, rest_.h};
        return ui::button(desk_.ui, id, rest_.cut_left(width, gap), key);
    }
    [[nodiscard]] float bottom() const { return rest_.bottom(); }

private:
    Desk& desk_;
    ui::Rect all_;
    ui::Rect rest_;
};

/// What can be done about the chosen operation. Returns where the keys ended.
float keys(Desk& desk, const ui::Rect& rect, const OperationReading& operation, int index) {
    KeyFlow flow(desk, rect);
    const std::string which = "operation " + std::to_string(index + 1);
    const auto toggle = [&](const char* id, const char* closed, const char* open, Panel panel) {
        const bool is_open = desk.state.panel == panel;
        const char* label = is_open ? open : closed;
        if (!flow.key(id, label, std::string(label) + ", " + which))
            return;
        desk.state.panel = is_open ? Panel::checks : panel;
        desk.ui.want_frame();
    };
    if (!operation.missing.empty() &&
        flow.key("fill-in", "Fill in under Shop", "Fill in under Shop")) {
        desk.state.place = Place::shop;
        desk.state.shop_page = operation.shop_page;
        desk.ui.want_frame();
    }
    toggle("working", "Show working", "Hide working", Panel::working);
    toggle("change", "Change operation", "Close", Panel::operation_form);
    const job::Part& part = *desk.session.job().parts[static_cast<std::size_t>(desk.chosen_part())];
    if (index > 0 && flow.key("up", "Up", "Move up: " + which))
        move_operation(desk, part, index, -1);
    if (index + 1 < static_cast<int>(part.operations.size()) &&
        flow.key("down", "Down", "Move down: " + which))
        move_operation(desk, part, index, 1);
    if (flow.key("what", "?", "What is this: Verdict"))
        open_topic(desk, "verdict");
    return flow.bottom();
}

/// What was checked, in sentences, and the two keys. Returns where it ended.
float checks(Desk& desk, const ui::Rect& rect, const OperationReading& operation, int index) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "checks");
    ui::Rect rest = rect;
    rest.cut_left(k_ring);
    if (!operation.tools.empty())
        rest.y += ui::paragraph(ui, rest, operation.tools) + 4;
    for (const CheckReading& check : operation.checks) {
        const ui::Verdict verdict = check.warning && check.verdict == ui::Verdict::fits
                                        ? ui::Verdict::up_to
                                        : check.verdict;
        rest.y += ui::message_line(ui, rest, verdict, check.sentence) + 4;
    }
    for (const std::string& need : operation.needs)
        rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, "To buy: " + need) + 4;
    rest.y += ui.size().gap / 2;
    return keys(desk, rest, operation, index) + ui.size().gap;
}

} // namespace

float operation_rows(Desk& desk, const ui::Rect& rect, int index) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "operations");
    const PartReading& part = *desk.readings.parts()[static_cast<std::size_t>(index)];
    const float height = lay_out(ui, rect.w).height;
    ui::Rect rest = rect;
    ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::line, 1);
    const std::vector<OperationReading>& operations = part.operations();
    for (std::size_t i = 0; i < operations.size(); ++i) {
        const ui::Rect row{rest.x, rest.y, rest.w, height};
        rest.y += height;
        const int operation = static_cast<int>(i);
        one_row(desk, row, operations[i], operation);
        if (desk.state.operation == operation) {
            rest.y = checks(desk, rest, operations[i], operation);
            ui::Rect below = rest;
            below.cut_left(k_ring);
            rest.y = remedy_rows(desk, below, index, operation);
            ui.rule(rest.x, rest.y, rest.right(), rest.y, ui::Ink::line, 1);
        }
        if (desk.state.operation_to_show == operation) {
            // The row alone: as much of the drawing as can be stays in sight.
            ui.bring_into_sight(row);
            desk.state.operation_to_show = plan::k_none;
        }
    }
    return rest.y;
}

} // namespace treadle::views
