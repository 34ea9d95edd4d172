#include "ui/views/lane_rows.h"

#include "plan/at_once.h"

#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_title{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_figure{ui::TextSize::small, true, ui::Ink::ink, ui::Align::centre};
constexpr float k_bar = 34;

/// Set-ups as boxes along the time, the same scale in every lane.
void bar(Desk& desk, const ui::Rect& rect, const PeopleReading::Lane& lane) {
    ui::Ui& ui = desk.ui;
    ui.rule(rect.x, rect.bottom(), rect.right(), rect.bottom(), ui::Ink::line, 1);
    for (const PeopleReading::Run& run : lane.runs) {
        const auto wide = rect.w;
        const ui::Rect box{rect.x + wide * static_cast<float>(run.from_share),
                           rect.y,
                           wide * static_cast<float>(run.to_share - run.from_share),
                           rect.h};
        ui.fill(box, ui::Ink::steel);
        ui.outline(box, ui::Ink::ink, 1);
        if (ui::text_width(ui, run.number, k_figure) + 4 < box.w)
            ui::draw_text(ui, box, run.number, k_figure);
    }
}

float one_lane(Desk& desk, ui::Rect rest, const PeopleReading::Lane& lane) {
    ui::Ui& ui = desk.ui;
    ui::heading(
        ui, rest.cut_top(ui::line_height(ui, ui::TextSize::body) + 4), lane.title, 3, k_title);
    bar(desk, {rest.x, rest.y, rest.w, k_bar}, lane);
    rest.y += k_bar + 6;
    for (const PeopleReading::Run& run : lane.runs)
        rest.y += ui::paragraph(ui, rest, run.words);
    return rest.y + ui.size().gap;
}

} // namespace

float lane_rows(Desk& desk, const ui::Rect& rect) {
    const PeopleReading& reading = desk.readings.work.people(desk.session);
    if (reading.lanes.empty())
        return rect.y;
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "people");
    ui::Rect rest = rect;
    ui::heading(ui,
                rest.cut_top(ui::line_height(ui, ui::TextSize::large) + 6),
                "Who does what",
                2,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    rest.y += ui::paragraph(ui, rest, reading.words);
    rest.y += ui::paragraph(ui, rest, reading.pairs);
    rest.y += ui::message_line(ui, rest, ui::Verdict::up_to, plan::at_once_caution());
    rest.y += ui.size().gap;
    // Below each other where a line would wrap: the bars then share one scale as well.
    for (const PeopleReading::Lane& lane : reading.lanes)
        rest.y = one_lane(desk, rest, lane);
    return rest.y;
}

} // namespace treadle::views
