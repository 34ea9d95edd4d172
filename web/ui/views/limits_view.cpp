#include "ui/views/limits_view.h"

#include "ui/views/limits_picture.h"
#include "ui/views/machine_rows.h"
#include "ui/views/parts_edit.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>

namespace treadle::views {

namespace {

constexpr float k_room_for_both = 720; ///< operations beside the figures
constexpr std::size_t k_most_listed = 40;
constexpr ui::TextStyle k_head{ui::TextSize::small, true, ui::Ink::quiet, ui::Align::left};
const std::array<std::string, 2> k_sides = {"One station", "Which machine"};

void go_to(Desk& desk, const LimitPoint& point) {
    show_operation(desk, point.part, point.operation);
}

/// Station and grade. Returns where it ended.
float question(Desk& desk, const ui::Rect& rect, const std::string& grade) {
    ui::Ui& ui = desk.ui;
    LimitsReadings& limits = desk.readings.limits;
    const int columns = rect.w < 520 * ui.size().text_scale ? 1 : 2;
    const float height = ui::field_height(ui, false);
    ui::Rect rest{rect.x, rect.y, rect.w, height};
    const auto next = [&](int index) {
        return columns == 2 ? rest.column(index, 2, ui.size().gap)
                            : rest.moved(0, static_cast<float>(index) * (height + ui.size().gap));
    };
    ui::Field field;
    field.label = "Station or attachment";
    if (const auto chosen = ui::choice(
            ui, "place", next(0), field, limits.places(desk.session), desk.state.limits_place)) {
        desk.state.limits_place = *chosen;
        ui.want_frame();
    }
    field.label = "Grade";
    if (const auto chosen = ui::choice(ui,
                                       "grade",
                                       next(1),
                                       field,
                                       limits.grades(desk.session),
                                       limits.grade_index(desk.session, grade))) {
        desk.state.limits_grade = limits.grade_id(*chosen);
        ui.want_frame();
    }
    return next(columns == 2 ? 0 : 1).bottom() + ui.size().gap;
}

float operations(Desk& desk, const ui::Rect& rect, const LimitsReading& reading) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    ui::heading(ui,
                rest.cut_top(ui::line_height(ui, ui::TextSize::body) + 6),
                "Operations of the job",
                2,
                {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
    if (reading.points.empty())
        rest.y += ui::paragraph(ui, rest, "None is done here.");
    const float row = ui::row_height(ui, 56);
    for (std::size_t i = 0; i < reading.points.size() && i < k_most_listed; ++i) {
        const LimitPoint& point = reading.points[i];
        ui::Rect place{rest.x, rest.y, rest.w, row};
        rest.y += row;
        if (!ui.is_visible(place))
            continue;
        ui::ListRow entry;
        const std::string spoken = point.label + ", " + point.words + ": " + point.outcome;
        entry.spoken = spoken;
        const bool pressed =
            ui::list_row(ui, "operation-" + std::to_string(i), place, entry).pressed;
        const ui::Rect shape = place.cut_left(28, 8);
        ui::draw_verdict_shape(ui, point.mark, shape.x + 14, shape.y + row / 2, 16);
        ui::draw_text(ui,
                      place.cut_left(64 * ui.size().text_scale, 4),
                      point.label,
                      {ui::TextSize::body, true});
        const float line = ui::line_height(ui, ui::TextSize::body);
        place = place.inset(0, (row - line - ui::line_height(ui, ui::TextSize::small)) / 2);
        ui::draw_text(ui, place.cut_top(line), point.words);
        ui::draw_text(
            ui, place, point.outcome, {ui::TextSize::small, false, ui::ink_of(point.mark)});
        if (pressed)
            go_to(desk, point);
    }
    if (reading.points.size() > k_most_listed)
        rest.y += ui::paragraph(ui,
                                rest,
                                "And " + std::to_string(reading.points.size() - k_most_listed) +
                                    " more, none of them worse.");
    return rest.y + ui.size().gap;
}

float figures(Desk& desk, const ui::Rect& rect, const LimitsReading& reading) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    ui::heading(ui,
                rest.cut_top(ui::line_height(ui, ui::TextSize::body) + 6),
                "Figures by " + reading.chart.axis,
                2,
                {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
    const float line = ui::line_height(ui, ui::TextSize::body) + 4;
    const auto columns = [&](std::array<std::string_view, 4> words, ui::TextStyle style) {
        ui::Rect place{rest.x, rest.y, rest.w, line};
        constexpr std::array k_shares = {0.17F, 0.17F, 0.22F, 0.44F};
        for (std::size_t i = 0; i < words.size(); ++i) {
            if (i == 3)
                style.size = ui::TextSize::small;
            ui::draw_text(ui, place.cut_left(rest.w * k_shares[i]).inset(2, 0), words[i], style);
        }
    };
    columns({"size", "fits", "certificate", "stopped by"}, k_head);
    rest.y += line;
    for (std::size_t i = 0; i < reading.rows.size(); ++i) {
        const LimitRow& row = reading.rows[i];
        const ui::Rect place{rest.x, rest.y, rest.w, line};
        ui.add_node("figure-" + std::to_string(i), ui::Role::words, place, row.spoken);
        if (ui.is_visible(place)) {
            ui.fill({place.x, place.y, place.w, 1}, ui::Ink::line);
            columns({row.size, row.fits, row.up_to, row.stopped_by}, {});
        }
        rest.y += line;
    }
    return rest.y + ui.size().gap;
}

/// A sentence, and the key to where the missing datum is filled in. Returns where it ended.
float said(Desk& desk, const ui::Rect& rect, const std::string& words, int shop_page) {
    ui::Ui& ui = desk.ui;
    ui::Rect rest = rect;
    rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, words) + ui.size().gap;
    if (shop_page < 0)
        return rest.y;
    ui::Button fill;
    fill.label = "Fill in under Shop";
    const ui::Rect place{rest.x, rest.y, ui::button_width(ui, fill), ui.size().target};
    if (ui::button(ui, "fill-in", place, fill)) {
        desk.state.place = Place::shop;
        desk.state.shop_page = shop_page;
        ui.want_frame();
    }
    return place.bottom() + ui.size().gap;
}

float one_station(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    LimitsReadings& limits = desk.readings.limits;
    const int places = static_cast<int>(limits.places(desk.session).size());
    ui::Rect rest = rect;
    if (places == 0)
        return rest.y +
               ui::paragraph(ui, rest, "The machine has no station to draw. Add one under Shop.");
    desk.state.limits_place = std::clamp(desk.state.limits_place, 0, places - 1);
    if (desk.state.limits_grade.empty())
        desk.state.limits_grade = first_grade(desk);
    rest.y = question(desk, rest, desk.state.limits_grade);
    LimitsReading& reading = limits.of(
        desk.session, desk.readings.parts(), desk.state.limits_place, desk.state.limits_grade);
    if (!reading.problem.empty())
        return said(desk, rest, reading.problem, reading.shop_page);
    if (!reading.said.empty())
        rest.y = said(desk, rest, reading.said, reading.shop_page);
    const ui::Rect picture{
        rest.x, rest.y, rest.w, std::clamp(ui.screen().h * 0.45F, 260.0F, 520.0F)};
    if (const auto pressed = limits_picture(desk, picture, reading))
        go_to(desk, reading.points[*pressed]);
    rest.y = picture.bottom() + 4;
    rest.y += limits_legend(desk, rest, reading) + 4;
    if (!reading.note.empty())
        rest.y += ui::paragraph(ui, rest, reading.note, k_head);
    if (reading.other_grades)
        rest.y += ui::paragraph(ui, rest, "Marks in grey letters are of another metal.", k_head);
    rest.y += ui.size().gap;
    if (rest.w < k_room_for_both) {
        rest.y = operations(desk, rest, reading);
        return figures(desk, rest, reading);
    }
    // The table needs more of the width: its last column names the limit in words.
    const ui::Rect table = rest.cut_right(rest.w * 0.56F, 24);
    return std::max(operations(desk, rest, reading), figures(desk, table, reading));
}

} // namespace

void limits_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "limits");
    ui::ScrollArea area(ui, "view", rect, "What it can do");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    rest.w = std::min(rest.w, 960 * ui.size().text_scale);
    rest.y += ui.size().gap;
    const float height = std::max(ui.size().target, ui::line_height(ui, ui::TextSize::title) + 6);
    ui::Rect head{rest.x, rest.y, rest.w, height};
    const float tabs = ui::tabs_width(ui, k_sides);
    const ui::TextStyle title{ui::TextSize::title, true, ui::Ink::ink, ui::Align::left};
    const std::string_view words = "What it can do";
    const bool one_line = head.w >= tabs + ui::text_width(ui, words, title) + 16;
    const ui::Rect sides = one_line ? head.cut_right(tabs, 8) : head.moved(0, height);
    ui::heading(ui, head, words, 1, title);
    const auto chosen = ui::tabs(ui,
                                 "sides",
                                 {sides.x, sides.y, std::min(tabs, sides.w), sides.h},
                                 "Question",
                                 k_sides,
                                 desk.state.limits_machines ? 1 : 0);
    if (chosen) {
        desk.state.limits_machines = *chosen == 1;
        ui.want_frame();
    }
    rest.y = sides.bottom() + ui.size().gap;
    area.finish(desk.state.limits_machines ? machine_rows(desk, rest) : one_station(desk, rest));
}

} // namespace treadle::views
