#include "ui/views/machine_form.h"

#include "base/text.h"

#include "ui/views/shop_draft.h"

#include <array>

namespace treadle::views {

namespace {

using equipment::AttachmentKind;
using equipment::StationKind;

constexpr std::array k_stations = {StationKind::punch,
                                   StationKind::flat_shear,
                                   StationKind::angle_shear,
                                   StationKind::bar_shear,
                                   StationKind::notcher,
                                   StationKind::table};
constexpr std::array k_attachments = {AttachmentKind::brake,
                                      AttachmentKind::vee_notcher,
                                      AttachmentKind::rectangular_notcher,
                                      AttachmentKind::saddle_notcher};

template <class Things>
std::string free_id(const Things& things, const char* stem) {
    for (std::size_t number = things.size() + 1;; ++number) {
        const std::string id = stem + std::to_string(number);
        bool taken = false;
        for (const auto& thing : things)
            taken = taken || thing.id == id;
        if (!taken)
            return id;
    }
}

/// A new station knows nothing about itself: the plan then says what is missing.
void new_keys(Desk& desk, Form& form) {
    const equipment::Machine& machine = desk.session.shop().machine;
    ShopDraft draft(desk);
    form.heading("Add a station");
    for (const StationKind kind : k_stations) {
        const std::string word = equipment::station_word(kind);
        if (form.key(base::capital(word), "add-" + word, "Add station: " + word)) {
            equipment::Station station;
            station.id = free_id(machine.stations, "station-");
            station.name = word;
            station.kind = kind;
            draft.change().machine.stations.push_back(std::move(station));
            desk.state.shop_page = static_cast<int>(machine.stations.size()) + 1;
        }
    }
    form.heading("Add an attachment");
    for (const AttachmentKind kind : k_attachments) {
        const std::string word = equipment::attachment_word(kind);
        if (form.key(base::capital(word), "add-" + word, "Add attachment: " + word)) {
            equipment::Attachment attachment;
            attachment.id = free_id(machine.attachments, "attachment-");
            attachment.name = word;
            attachment.kind = kind;
            if (!machine.stations.empty())
                attachment.stations.push_back(machine.stations.front().id);
            draft.change().machine.attachments.push_back(std::move(attachment));
            desk.state.shop_page =
                static_cast<int>(machine.stations.size() + machine.attachments.size()) + 1;
        }
    }
    draft.send();
}

void batch_fields(Form& form, ShopDraft& draft, const equipment::HouseRules& rules) {
    if (const auto typed =
            form.maybe("Grind an edge after, strokes", "rules.regrind_after", rules.regrind_after))
        draft.change().rules.regrind_after = *typed;
    if (const auto typed = form.maybe(
            "Pieces in a batch", "rules.batch_pieces", rules.batch_pieces, "all at once"))
        draft.change().rules.batch_pieces = *typed;
    if (const auto typed = form.maybe("Mass of a batch", "rules.batch_mass", rules.batch_mass))
        draft.change().rules.batch_mass = *typed;
    if (const auto typed = form.maybe(
            "Measure 1 piece in", "rules.check_every", rules.check_every, "only the first"))
        draft.change().rules.check_every = *typed;
    const auto repeat = [&](const char* label,
                            const char* key,
                            std::optional<Length> equipment::HouseRules::*member) {
        if (const auto typed =
                form.maybe(label, key, rules.*member, rules.*member ? "" : "not known"))
            draft.change().rules.*member = *typed;
    };
    repeat("Back stop repeats within", "rules.stop_repeat", &equipment::HouseRules::stop_repeat);
    repeat("A cut repeats within", "rules.cut_repeat", &equipment::HouseRules::cut_repeat);
    if (const auto typed = form.text(
            "How pieces are marked", "rules.marking", rules.marking, "as paint on the far end"))
        draft.change().rules.marking = *typed;
}

} // namespace

float machine_form(Desk& desk, const ui::Rect& rect) {
    const equipment::Shop& shop = desk.session.shop();
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 200);
    if (shop.machine.invented)
        form.words("This machine is invented, and so are its figures. Type in the plate of the "
                   "machine in front of you; what is not known stays empty.");
    if (const auto typed = form.text("Name of the shop", "name", shop.name))
        draft.change().name = *typed;
    if (const auto typed = form.text("Machine", "machine.name", shop.machine.name)) {
        draft.change().machine.name = *typed;
        draft.change().machine.invented = false;
    }
    if (const auto typed =
            form.whole("People at once", "machine.operators", shop.machine.operators))
        draft.change().machine.operators = *typed;
    draft.send(form);
    new_keys(desk, form);
    return form.bottom();
}

float rules_form(Desk& desk, const ui::Rect& rect) {
    const equipment::HouseRules& rules = desk.session.shop().rules;
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 240);
    if (const auto typed = form.ratio("Least margin",
                                      "rules.least_margin",
                                      rules.least_margin,
                                      "Under this a fit is called tight"))
        draft.change().rules.least_margin = *typed;
    if (const auto typed = form.ratio("K factor of your own",
                                      "rules.blank_k",
                                      rules.blank_k,
                                      "From trial strips; 0: DIN 6935"))
        draft.change().rules.blank_k = *typed;
    if (const auto typed = form.whole(
            "Blanks rounded up to 1 over", "rules.blank_denominator", rules.blank_denominator))
        draft.change().rules.blank_denominator = *typed;
    if (const auto typed =
            form.maybe("Stripper over the stock", "rules.stripper_gap", rules.stripper_gap))
        draft.change().rules.stripper_gap = *typed;
    if (const auto typed =
            form.length("Overlap of notch strokes", "rules.notch_overlap", rules.notch_overlap))
        draft.change().rules.notch_overlap = *typed;
    batch_fields(form, draft, rules);
    const PrintStyle style = desk.style();
    if (const auto typed =
            form.whole("Finest fraction shown, 1 over", "style.denominator", style.denominator)) {
        PrintStyle next = style;
        next.denominator = *typed;
        desk.ask(FieldEdit{form.field(), form.typed(), edit::SetStyle{next}});
    }
    draft.send(form);
    return form.bottom();
}

} // namespace treadle::views
