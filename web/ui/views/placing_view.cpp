#include "ui/views/placing_view.h"

#include "ui/views/paint.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr double k_catch_px = 14;

edit::Placing placing_of(const Desk& desk, const PartReading& part) {
    return {*part.plan, desk.state.operation, desk.style()};
}

void refresh(Desk& desk, const PartReading& part, const std::vector<sheet::FacePlace>& faces) {
    State& state = desk.state;
    if (state.trial &&
        (state.trial->part != part.plan->part->id || state.trial->operation != state.operation))
        state.trial.reset();
    const int last = static_cast<int>(part.operations().size()) - 1;
    const int operation = state.operation > last ? plan::k_none : state.operation;
    desk.readings.placing.look_at(part.plan, operation, desk.style());
    desk.readings.placing.look_at(desk.session, state.trial, faces);
}

void try_place(Desk& desk, const PartReading& part, base::Result<edit::Placed> placed) {
    if (placed)
        desk.state.trial =
            Trial{part.plan->part->id, desk.state.operation, std::move(placed).value()};
    desk.ui.want_frame();
}

/// The trial becomes the part: one edit.
void take(Desk& desk) {
    State& state = desk.state;
    if (state.trial)
        desk.ask(PlainEdit{edit::ReplacePart{std::move(state.trial->placed.part)}, "", false});
    state.trial.reset();
    desk.ui.want_frame();
}

void put_back(Desk& desk) {
    desk.state.trial.reset();
    desk.ui.want_frame();
}

void follow(Desk& desk, const PartReading& part, double scale, const ui::HandleDrag& drag) {
    State& state = desk.state;
    if (!state.grabbed)
        state.grabbed = desk.readings.placing.at;
    const edit::FlatPlace wished{
        state.grabbed->along + quantity::millimetres(static_cast<double>(drag.dx) / scale),
        state.grabbed->across - quantity::millimetres(static_cast<double>(drag.dy) / scale)};
    if (drag.phase == ui::HandleDrag::Phase::cancelled)
        put_back(desk);
    else
        try_place(
            desk,
            part,
            edit::place(placing_of(desk, part), wished, quantity::millimetres(k_catch_px / scale)));
    if (drag.phase == ui::HandleDrag::Phase::moves)
        return;
    state.grabbed.reset();
    if (drag.phase == ui::HandleDrag::Phase::dropped)
        take(desk);
}

void by_keyboard(Desk& desk, const PartReading& part) {
    using Mod = ui::Ui::Mod;
    struct Way {
        const char* key;
        edit::Axis axis;
        int way;
    };
    constexpr Way k_ways[] = {{"ArrowLeft", edit::Axis::along, -1},
                              {"ArrowRight", edit::Axis::along, 1},
                              {"ArrowUp", edit::Axis::across, 1},
                              {"ArrowDown", edit::Axis::across, -1}};
    ui::Ui& ui = desk.ui;
    if (!ui.has_attention())
        return;
    const edit::FlatPlace at = desk.readings.placing.at;
    for (const Way& way : k_ways) {
        if (ui.key(way.key))
            try_place(desk, part, edit::nudge(placing_of(desk, part), at, way.axis, way.way));
        if (ui.key(way.key, Mod::shift))
            try_place(
                desk, part, edit::to_next_line(placing_of(desk, part), at, way.axis, way.way));
    }
    if (desk.state.trial && ui.key("Enter"))
        take(desk);
    if (ui.key("Escape")) {
        desk.state.placing = desk.state.trial.has_value();
        put_back(desk);
    }
}

/// Figure in big type, what it caught on, and what the plan says to it.
float words(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const PlacingReading& reading = desk.readings.placing;
    const float line = ui::line_height(ui, ui::TextSize::figure);
    ui::text(ui,
             {rest.x, rest.y, rest.w, line},
             reading.figure,
             {ui::TextSize::figure, true, ui::Ink::ink, ui::Align::left});
    rest.y += line;
    rest.y += ui::paragraph(
        ui, rest, reading.caught, {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
    rest.y += ui::paragraph(
        ui, rest, reading.edges, {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left});
    rest.y += ui::message_line(ui, rest, reading.mark, reading.verdict);
    return rest.y + ui.size().gap;
}

/// Keys side by side, as many to a line as there is room for.
class KeyFlow {
public:
    KeyFlow(ui::Ui& ui, const ui::Rect& rect) : ui_(ui), rect_(rect), row_(rect) {
        row_.h = ui.size().target;
    }
    bool key(const std::string& id, const ui::Button& button) {
        const float width = std::min(rect_.w, ui::button_width(ui_, button));
        if (row_.w < width && row_.x > rect_.x) {
            row_ = {rect_.x, row_.bottom() + ui_.size().gap, rect_.w, ui_.size().target};
        }
        return ui::button(ui_, id, row_.cut_left(width, ui_.size().gap), button);
    }
    [[nodiscard]] float bottom() const { return row_.bottom() + ui_.size().gap; }

private:
    ui::Ui& ui_;
    ui::Rect rect_;
    ui::Rect row_;
};

float trial_keys(Desk& desk, const ui::Rect& rest) {
    if (!desk.state.trial || desk.state.grabbed)
        return rest.y;
    KeyFlow flow(desk.ui, rest);
    ui::Button button;
    button.label = "Take this place";
    if (flow.key("take", button))
        take(desk);
    button.label = "Put it back";
    button.look = ui::KeyLook::quiet;
    if (flow.key("put-back", button))
        put_back(desk);
    return flow.bottom();
}

float snap_keys(Desk& desk, ui::Rect rest, const PartReading& part, edit::Axis axis) {
    ui::Ui& ui = desk.ui;
    const PlacingReading& reading = desk.readings.placing;
    const auto& lines = reading.lines;
    const bool along = axis == edit::Axis::along;
    const auto mine = [&](const edit::SnapLine& line) { return line.axis == axis; };
    if (std::none_of(lines.begin(), lines.end(), mine))
        return rest.y;
    const float height = ui::line_height(ui, ui::TextSize::small) + 4;
    ui::heading(ui,
                {rest.x, rest.y, rest.w, height},
                along ? "Snap to, along" : "Snap to, across",
                4,
                {ui::TextSize::small, true, ui::Ink::quiet, ui::Align::left});
    rest.y += height;
    KeyFlow flow(ui, rest);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!mine(lines[i]))
            continue;
        ui::Button button;
        button.label = lines[i].words;
        const std::string name =
            std::string(along ? "Snap along to " : "Snap across to ") + lines[i].words;
        button.name = name;
        button.size = ui::TextSize::small;
        if (!flow.key("snap-" + std::to_string(i), button))
            continue;
        try_place(desk, part, edit::place_on(placing_of(desk, part), reading.at, lines[i]));
        return take(desk), flow.bottom();
    }
    return flow.bottom();
}

} // namespace

void placing_handle(Desk& desk,
                    const ui::Rect& rect,
                    ui::Surface& surface,
                    const PartReading& part,
                    const Picture& picture) {
    refresh(desk, part, picture.faces);
    PlacingReading& reading = desk.readings.placing;
    if (!reading.movable || picture.faces.empty())
        return;
    by_keyboard(desk, part);
    const auto face = std::find_if(
        picture.faces.begin(), picture.faces.end(), [&](const sheet::FacePlace& place) {
            return place.face == reading.movable->face;
        });
    const sheet::FacePlace& on = face == picture.faces.end() ? picture.faces.front() : *face;
    const ui::PointMm at{quantity::to_millimetres(on.datum.x + reading.at.along),
                         quantity::to_millimetres(on.datum.y + reading.at.across)};
    paint_trial(desk.ui,
                rect,
                surface,
                picture.bounds,
                reading.picture,
                {at, reading.movable->along, reading.movable->across});
    const ui::PointMm px = surface.on_screen(at);
    if (!rect.contains(static_cast<float>(px.x), static_cast<float>(px.y)))
        return; // zoomed to somewhere else
    const ui::KnobTouch touch =
        ui::knob(desk.ui,
                 "handle",
                 rect,
                 {px, reading.handle, reading.movable->along, reading.movable->across});
    if (touch.drag)
        follow(desk, part, surface.scale(), *touch.drag);
    if (touch.pressed)
        take(desk);
}

float placing_keys(Desk& desk, const ui::Rect& all, ui::Rect row, PartReading& part) {
    ui::Ui& ui = desk.ui;
    State& state = desk.state;
    refresh(desk, part, part.flat ? part.flat->picture.faces : std::vector<sheet::FacePlace>{});
    const PlacingReading& reading = desk.readings.placing;
    ui::Button begin;
    begin.label = state.placing ? "Stop placing" : "Place by touch";
    const std::string name =
        std::string(begin.label) + ", operation " + std::to_string(state.operation + 1);
    begin.enabled = state.placing || reading.movable.has_value();
    if (begin.enabled && state.operation != plan::k_none)
        begin.name = name;
    begin.why_not = reading.refusal;
    const float width = ui::button_width(ui, begin);
    if (row.w < width)
        row = {all.x, row.y + ui.size().target + ui.size().gap, all.w, ui.size().target};
    if (ui::button(ui, "place", row.cut_right(std::min(width, row.w)), begin)) {
        state.placing = !state.placing;
        if (state.placing)
            ui.bring_into_sight(all);
        put_back(desk);
    }
    ui::Rect rest{all.x, row.y + ui.size().target + ui.size().gap, all.w, all.h};
    if (!state.placing)
        return rest.y;
    if (!reading.movable)
        return rest.y + ui::message_line(ui, rest, ui::Verdict::not_known, reading.refusal) +
               ui.size().gap;
    rest.y = words(desk, rest);
    rest.y = trial_keys(desk, rest);
    rest.y = snap_keys(desk, rest, part, edit::Axis::along);
    return snap_keys(desk, rest, part, edit::Axis::across);
}

} // namespace treadle::views
