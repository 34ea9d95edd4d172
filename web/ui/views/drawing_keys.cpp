#include "ui/views/drawing_keys.h"

#include "ui/widgets/controls.h"

#include <string>

namespace treadle::views {

namespace {

constexpr float k_arrow_px = 60;

} // namespace

void zoom_keys(Desk& desk,
               ui::Rect& row,
               ui::Surface& surface,
               std::string_view what,
               const std::optional<ui::PointMm>& around) {
    ui::Ui& ui = desk.ui;
    const auto zoom = [&](float factor) {
        if (around)
            surface.zoom_by(factor, static_cast<float>(around->x), static_cast<float>(around->y));
        else
            surface.zoom_by(factor);
    };
    const auto key = [&](const char* id, ui::Button button, const std::string& name) {
        button.name = name;
        const float width = ui::button_width(ui, button);
        ui::Rect place = row.cut_left(width, ui.size().gap);
        place.h = ui.size().target;
        const bool pressed = ui::button(ui, id, place, button);
        if (pressed)
            ui.want_frame();
        return pressed;
    };
    const std::string drawing(what);
    ui::Button out;
    out.label = "Smaller";
    out.icon = ui::Icon::minus;
    out.icon_only = true;
    out.enabled = !surface.is_whole();
    out.why_not = "All of the drawing is shown";
    if (key("zoom-out", out, "Zoom out, " + drawing))
        zoom(1 / ui::Surface::k_step);
    ui::Button in;
    in.label = "Larger";
    in.icon = ui::Icon::plus;
    in.icon_only = true;
    in.enabled = surface.zoom() < ui::Surface::k_most_zoom;
    in.why_not = "It is as large as it gets";
    if (key("zoom-in", in, "Zoom in, " + drawing))
        zoom(ui::Surface::k_step);
    ui::Button whole;
    whole.label = "Whole";
    whole.enabled = !surface.is_whole();
    whole.why_not = "All of the drawing is shown";
    if (key("zoom-whole", whole, "Whole drawing, " + drawing))
        surface.see_whole();
}

void zoom_by_keyboard(Desk& desk, ui::Surface& surface, bool arrows) {
    ui::Ui& ui = desk.ui;
    if (!ui.has_attention())
        return;
    if (ui.key("+") || ui.key("="))
        surface.zoom_by(ui::Surface::k_step);
    if (ui.key("-"))
        surface.zoom_by(1 / ui::Surface::k_step);
    if (ui.key("0"))
        surface.see_whole();
    if (!arrows || surface.is_whole())
        return; // at whole the arrows scroll the page
    if (ui.key("ArrowLeft"))
        surface.pan(k_arrow_px, 0);
    if (ui.key("ArrowRight"))
        surface.pan(-k_arrow_px, 0);
    if (ui.key("ArrowUp"))
        surface.pan(0, k_arrow_px);
    if (ui.key("ArrowDown"))
        surface.pan(0, -k_arrow_px);
}

} // namespace treadle::views
