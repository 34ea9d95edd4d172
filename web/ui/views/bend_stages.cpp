#include "ui/views/bend_stages.h"

#include "base/text.h"
#include "plan/words.h"
#include "sheet/bend_words.h"

#include "ui/views/drawing_keys.h"
#include "ui/views/paint.h"
#include "ui/views/shop_paths.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>

namespace treadle::views {

namespace {

constexpr float k_side_by_side = 540;  ///< words beside the drawing
constexpr float k_words_share = 0.45F; ///< of the width, when they stand beside it
constexpr float k_least_picture = 140; ///< under the words

BendReading read(const plan::PartPlan& plan, const equipment::Shop& shop, PrintStyle style) {
    BendReading reading;
    const plan::BendSequence& bends = *plan.bends;
    const std::string last = std::to_string(bends.steps.size());
    for (std::size_t i = 0; i < bends.steps.size(); ++i) {
        const plan::BendStep& step = bends.steps[i];
        const auto operation = static_cast<std::size_t>(step.bend);
        reading.stages.push_back({"Bend " + std::to_string(i + 1) + " of " + last,
                                  "Operation " + std::to_string(operation + 1) + ": " +
                                      plan::operation_title(*plan.part, operation, style),
                                  base::capital(sheet::stop_words(step, style)),
                                  base::capital(sheet::lies_words(step)),
                                  to_picture(sheet::draw_bend_stage(plan, i))});
    }
    for (std::size_t i = 0; i < plan.operations.size(); ++i)
        for (const plan::Check& check : plan.operations[i].checks)
            if (check.rule == plan::Rule::bend_order)
                reading.blocked.push_back("Operation " + std::to_string(i + 1) + ": " +
                                          plan::with_names(plan::sentence(check, style), shop));
    reading.none = sheet::no_order_words(bends, shop);
    reading.shop_page = shop_page_of(bends.missing, shop);
    return reading;
}

float no_order(Desk& desk, ui::Rect rest, const BendReading& reading) {
    ui::Ui& ui = desk.ui;
    for (const std::string& sentence : reading.blocked)
        rest.y += ui::message_line(ui, rest, ui::Verdict::does_not_fit, sentence) + 4;
    if (!reading.blocked.empty())
        return rest.y;
    rest.y += ui::message_line(ui, rest, ui::Verdict::not_known, reading.none) + ui.size().gap;
    if (!reading.shop_page)
        return rest.y;
    ui::Button fill;
    fill.label = "Fill in under Shop";
    const ui::Rect key{rest.x, rest.y, ui::button_width(ui, fill), ui.size().target};
    if (ui::button(ui, "fill-in", key, fill)) {
        desk.state.place = Place::shop;
        desk.state.shop_page = *reading.shop_page;
        ui.want_frame();
    }
    return key.bottom();
}

/// Both stand where they are from the first stage to the last.
void keys(Desk& desk, ui::Rect rect, int last) {
    int& step = desk.state.bend_step;
    const auto key = [&](const char* label, const char* name, bool enabled, int by) {
        ui::Button button;
        button.label = label;
        button.name = name;
        button.enabled = enabled;
        button.why_not = by < 0 ? "This is the first bend" : "This is the last bend";
        const float width = ui::button_width(desk.ui, button);
        const ui::Rect place = rect.cut_left(width, desk.ui.size().danger_gap);
        if (ui::button(desk.ui, name, place, button)) {
            step += by;
            desk.ui.want_frame();
        }
    };
    key("Previous", "Previous bend", step > 0, -1);
    key("Next", "Next bend", step < last, 1);
}

} // namespace

float bend_stages(Desk& desk, const ui::Rect& rect, PartReading& part) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "bends");
    if (!part.bends)
        part.bends = read(*part.plan, desk.session.shop(), desk.style());
    const BendReading& reading = *part.bends;
    if (reading.stages.empty())
        return no_order(desk, rect, reading);
    const int last = static_cast<int>(reading.stages.size()) - 1;
    desk.state.bend_step = std::clamp(desk.state.bend_step, 0, last);
    const auto& stage = reading.stages[static_cast<std::size_t>(desk.state.bend_step)];
    ui::Rect picture = rect;
    const bool beside = rect.w >= k_side_by_side;
    ui::Rect words = beside ? picture.cut_left(rect.w * k_words_share, ui.size().gap) : rect;
    keys(desk, words.cut_top(ui.size().target, ui.size().gap), last);
    const float height = ui::line_height(ui, ui::TextSize::large) + 4;
    ui::heading(ui,
                words.cut_top(height),
                stage.place,
                3,
                {ui::TextSize::large, true, ui::Ink::ink, ui::Align::left});
    words.y += ui::paragraph(ui, words, stage.operation);
    words.y += ui::paragraph(
        ui, words, stage.stop, {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
    words.y += ui::paragraph(ui, words, stage.lies);
    if (!beside)
        picture = {rect.x, words.y + 4, rect.w, std::max(k_least_picture, rect.bottom() - words.y)};
    ui::Surface& surface = ui.add_surface("surface", picture);
    surface.show(part.plan->part->id);
    paint_part(ui, "stage", picture, surface, stage.picture, plan::k_none);
    ui::Rect row{picture.x, picture.bottom() + ui.size().gap, picture.w, ui.size().target};
    zoom_keys(desk, row, surface, "side view");
    zoom_by_keyboard(desk, surface, true);
    return std::max(words.y, row.bottom());
}

} // namespace treadle::views
