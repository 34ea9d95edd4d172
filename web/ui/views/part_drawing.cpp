#include "ui/views/part_drawing.h"

#include "ui/views/drawing_keys.h"
#include "ui/views/near_picture.h"
#include "ui/views/paint.h"
#include "ui/views/placing_view.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr double k_finger_px = 28;
constexpr float k_least_target = 44;

void choose(Desk& desk, int operation) {
    State& state = desk.state;
    if (state.operation != operation)
        state.trial.reset();
    state.operation = operation;
    if (!state.placing) // its handle is on the drawing, which stays where it is
        state.operation_to_show = operation;
    state.adding = false;
    desk.ui.want_frame();
}

/// Operations whose targets would cover each other share one; the list tells them apart.
void gather(const ui::Ui& ui,
            const ui::Rect& rect,
            const ui::Surface& surface,
            const PartReading& part,
            PartReading::Kept& kept) {
    const ui::PointMm zero = surface.on_screen({});
    const PartReading::Seen seen{zero, surface.scale(), rect, ui.size().target};
    if (kept.seen == seen)
        return;
    kept.seen = seen;
    kept.targets.clear();
    const float side = std::max(k_least_target, ui.size().target);
    for (const Picture::Ring& target : kept.picture.targets) {
        const ui::PointMm at = surface.on_screen(target.at);
        const auto x = static_cast<float>(at.x);
        const auto y = static_cast<float>(at.y);
        if (!rect.contains(x, y))
            continue;
        const ui::Rect place{std::clamp(x - side / 2, rect.x, rect.right() - side),
                             std::clamp(y - side / 2, rect.y, rect.bottom() - side),
                             side,
                             side};
        const auto shared = std::find_if(kept.targets.begin(), kept.targets.end(), [&](auto& one) {
            return !one.rect.common(place).is_empty();
        });
        const std::string& name =
            part.operations()[static_cast<std::size_t>(target.operation)].on_drawing;
        if (shared == kept.targets.end()) {
            kept.targets.push_back({place, {target.operation}, name});
        } else {
            shared->operations.push_back(target.operation);
            shared->name += "; " + name;
        }
    }
}

/// Each operation as a button of its own for keyboard and screen reader; pointers hit the drawing
/// itself, and what is nearest there.
void operation_targets(Desk& desk, const std::vector<PartReading::Target>& targets) {
    ui::Ui& ui = desk.ui;
    for (const PartReading::Target& target : targets) {
        const int first = target.operations.front();
        ui::Node& node = ui.add_node(
            "operation-" + std::to_string(first), ui::Role::row, target.rect, target.name);
        const auto chosen =
            std::find(target.operations.begin(), target.operations.end(), desk.state.operation);
        node.on = chosen != target.operations.end();
        const std::string full = node.id;
        ui.draw_focus_ring(full, target.rect);
        if (!ui.take_activation(full))
            continue;
        const bool to_next =
            chosen != target.operations.end() && chosen + 1 != target.operations.end();
        choose(desk, to_next ? *(chosen + 1) : first);
    }
}

/// The chosen operation, when it is in sight: keys zoom in on it.
std::optional<ui::PointMm> chosen_place(const Desk& desk,
                                        const ui::Rect& rect,
                                        const ui::Surface& surface,
                                        const Picture& picture) {
    for (const Picture::Ring& target : picture.targets) {
        const ui::PointMm at = surface.on_screen(target.at);
        const bool seen = rect.contains(static_cast<float>(at.x), static_cast<float>(at.y));
        if (target.operation == desk.state.operation && seen)
            return at;
    }
    return std::nullopt;
}

} // namespace

float part_drawing(Desk& desk, const ui::Rect& rect, PartReading& part, bool finished) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, finished ? "finished" : "flat");
    ui::Surface& surface = ui.add_surface("surface", rect);
    surface.show(part.plan->part->id);
    PartReading::Kept& kept =
        near_picture(part,
                     finished,
                     desk.style(),
                     {rect.w, rect.h, ui::line_height(ui, ui::TextSize::small)},
                     surface.laid_out_zoom());
    paint_part(ui, "drawing", rect, surface, kept.picture, desk.state.operation);
    const bool placing = !finished && desk.state.placing;
    if (const auto tap = ui.take_tap("surface")) {
        const int hit = nearest_operation(kept.picture, surface, *tap, k_finger_px);
        if (hit != plan::k_none)
            choose(desk, hit);
    }
    gather(ui, rect, surface, part, kept);
    operation_targets(desk, kept.targets);
    if (placing)
        placing_handle(desk, rect, surface, part, kept.picture);
    ui::Rect row{rect.x, rect.bottom() + ui.size().gap, rect.w, ui.size().target};
    zoom_keys(desk,
              row,
              surface,
              finished ? "finished shape" : "flat blank",
              chosen_place(desk, rect, surface, kept.picture));
    zoom_by_keyboard(desk, surface, !placing);
    if (finished)
        return row.y + ui.size().target;
    return placing_keys(desk, rect, row, part);
}

} // namespace treadle::views
