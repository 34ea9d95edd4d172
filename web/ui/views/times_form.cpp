#include "ui/views/times_form.h"

#include "ui/views/shop_draft.h"

namespace treadle::views {

namespace {

using equipment::WorkTimes;

struct TimeField {
    const char* label;
    const char* key;
    std::optional<Duration> WorkTimes::*value;
};
constexpr TimeField k_fields[] = {
    {"Set-up at another station, s", "rules.times.new_station_s", &WorkTimes::new_station},
    {"Change of tools, s", "rules.times.new_tool_s", &WorkTimes::new_tool},
    {"Stroke, s", "rules.times.stroke_s", &WorkTimes::stroke},
    {"To the next position, s", "rules.times.position_s", &WorkTimes::position},
    {"Check of a first piece, s", "rules.times.first_piece_s", &WorkTimes::first_piece}};

std::optional<double> shown(const std::optional<Duration>& time) {
    return time ? std::optional(quantity::to_seconds(*time)) : std::nullopt;
}

void times(Form& form, ShopDraft& draft, const WorkTimes& now) {
    form.heading("Times");
    form.words(now.invented
                   ? "These times are invented. No standard has any: type in what your own "
                     "hands take, then turn \"invented\" off."
                   : "No standard has any: every figure is this shop's own. Without all of "
                     "them the time of a job is not computed.");
    for (const TimeField& field : k_fields)
        if (const auto typed = form.maybe(field.label, field.key, shown(now.*field.value)))
            draft.change().rules.times.*field.value =
                *typed ? std::optional(quantity::seconds(**typed)) : std::nullopt;
    if (const auto typed = form.maybe(
            "Labour an hour, own money", "rules.times.labour_per_hour", now.labour_per_hour))
        draft.change().rules.times.labour_per_hour = *typed;
    if (form.toggle("Times are invented", "rules.times.invented", now.invented))
        draft.change().rules.times.invented = !now.invented;
}

void handling(Form& form, ShopDraft& draft, const WorkTimes& now) {
    form.heading("A piece onto the machine and off");
    for (std::size_t i = 0; i < now.handling.size(); ++i) {
        const equipment::HandlingTime& band = now.handling[i];
        const std::string number = std::to_string(i + 1);
        const std::string path = "rules.times.handling[" + std::to_string(i) + "].";
        if (const auto typed = form.mass("Pieces up to", path + "up_to", band.up_to))
            draft.change().rules.times.handling[i].up_to = *typed;
        if (const auto typed =
                form.ratio("Each takes, s", path + "each_s", quantity::to_seconds(band.each)))
            draft.change().rules.times.handling[i].each = quantity::seconds(*typed);
        if (form.key("Remove", path + "remove", "Remove handling time " + number, true)) {
            auto& bands = draft.change().rules.times.handling;
            bands.erase(bands.begin() + static_cast<int>(i));
        }
        form.new_line();
    }
    if (form.key("Add a weight", "add-handling", "Add a handling time")) {
        equipment::HandlingTime next{quantity::kilograms(5.0), quantity::seconds(10.0)};
        if (!now.handling.empty())
            next = {now.handling.back().up_to * 2.0, now.handling.back().each * 2.0};
        draft.change().rules.times.handling.push_back(next);
    }
    form.new_line();
}

} // namespace

float times_form(Desk& desk, const ui::Rect& rect) {
    const equipment::HouseRules& rules = desk.session.shop().rules;
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 200);
    form.heading("Limits");
    if (const auto typed = form.maybe("One person lifts", "rules.lift_limit", rules.lift_limit))
        draft.change().rules.lift_limit = *typed;
    if (const auto typed = form.maybe("Longest piece without a stand",
                                      "rules.support_length",
                                      rules.support_length,
                                      rules.support_length ? "" : "not known"))
        draft.change().rules.support_length = *typed;
    times(form, draft, rules.times);
    handling(form, draft, rules.times);
    draft.send(form);
    return form.bottom();
}

} // namespace treadle::views
