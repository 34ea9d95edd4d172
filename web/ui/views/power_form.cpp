#include "ui/views/power_form.h"

#include "ui/views/shop_draft.h"
#include "ui/views/working_view.h"
#include "ui/widgets/verdict.h"

namespace treadle::views {

namespace {

using equipment::PowerSupply;

void motor_fields(Form& form, ShopDraft& draft, const PowerSupply& now) {
    const auto horsepower =
        now.motor ? std::optional(quantity::to_horsepower(*now.motor)) : std::nullopt;
    if (const auto typed = form.maybe("Motor, hp", "supply.motor", horsepower))
        draft.change().supply.motor =
            *typed ? std::optional(quantity::horsepower(**typed)) : std::nullopt;
    const auto volts = now.voltage ? std::optional(quantity::to_volts(*now.voltage)) : std::nullopt;
    if (const auto typed = form.maybe("Voltage, V", "supply.voltage", volts))
        draft.change().supply.voltage =
            *typed ? std::optional(quantity::volts(**typed)) : std::nullopt;
    if (const auto typed = form.whole("Phases, 1 or 3", "supply.phases", now.phases))
        draft.change().supply.phases = *typed;
    if (const auto typed = form.text("Code letter of its plate", "supply.code", now.code, "A to V"))
        draft.change().supply.code = *typed;
}

void feed_fields(Form& form, ShopDraft& draft, const PowerSupply& now) {
    if (const auto typed = form.text("Wires of the cord", "supply.cord", now.cord, "as 10 AWG"))
        draft.change().supply.cord = *typed;
    if (const auto typed = form.maybe("Length of the cord",
                                      "supply.cord_length",
                                      now.cord_length,
                                      now.cord_length ? "" : "not known"))
        draft.change().supply.cord_length = *typed;
    const auto gives =
        now.generator ? std::optional(quantity::to_kilovolt_amperes(*now.generator)) : std::nullopt;
    if (const auto typed = form.maybe("Generator at a start, kVA", "supply.generator_VA", gives))
        draft.change().supply.generator =
            *typed ? std::optional(quantity::kilovolt_amperes(**typed)) : std::nullopt;
}

} // namespace

float power_form(Desk& desk, const ui::Rect& rect) {
    const PowerSupply& now = desk.session.shop().supply;
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 200);
    motor_fields(form, draft, now);
    feed_fields(form, draft, now);
    form.heading("For every job on this machine");
    draft.send(form);
    ui::Rect rest = rect;
    rest.y = form.bottom();
    for (const PowerReading& line : desk.readings.power(desk.session)) {
        rest.y += ui::message_line(desk.ui, rest, line.mark, line.words) + desk.ui.size().gap;
        for (const std::vector<std::string>& working : line.workings)
            rest.y = one_working(desk, rest, working);
    }
    return rest.y;
}

} // namespace treadle::views
