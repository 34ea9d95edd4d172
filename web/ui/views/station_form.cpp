#include "ui/views/station_form.h"

#include "ui/views/shop_draft.h"

#include <algorithm>

namespace treadle::views {

namespace {

using equipment::Station;
using equipment::StationKind;

/// One station while its form is drawn.
struct Editing {
    Form& form;
    ShopDraft& draft;
    const Station& station;
    std::size_t index;
    std::string path; ///< "machine.stations[0]."

    Station& change() { return draft.change().machine.stations[index]; }
    [[nodiscard]] std::string key(const std::string& name) const { return path + name; }
    void maybe(const char* label,
               const char* name,
               std::optional<Length> Station::*member,
               const char* empty = "not known") {
        if (const auto typed =
                form.maybe(label, key(name), station.*member, station.*member ? "" : empty))
            change().*member = *typed;
    }
};

bool is_shear(StationKind kind) {
    return kind == StationKind::flat_shear || kind == StationKind::angle_shear ||
           kind == StationKind::bar_shear;
}

void plate(Editing& editing) {
    Form& form = editing.form;
    const Station& station = editing.station;
    if (const auto typed = form.text("Name", editing.key("name"), station.name))
        editing.change().name = *typed;
    if (const auto typed = form.maybe("Force", editing.key("force"), station.force))
        editing.change().force = *typed;
    std::optional<Stress> base;
    if (station.base)
        base = station.base->value;
    if (const auto typed = form.maybe(
            "Plate rated for metal of", editing.key("base"), base, base ? "" : "not known")) {
        editing.change().base.reset();
        if (*typed)
            editing.change().base = material::RatingBase{**typed};
    }
    if (!is_shear(station.kind)) {
        editing.maybe("Throat", "throat", &Station::throat);
        editing.maybe("Daylight", "daylight", &Station::daylight);
    }
    editing.maybe("Stroke", "stroke", &Station::stroke);
    if (is_shear(station.kind)) {
        editing.maybe("Blade", "blade", &Station::blade);
        editing.maybe("Shortest piece held", "least_piece", &Station::least_piece);
        if (const auto typed =
                form.maybe("Largest mitre", editing.key("largest_mitre"), station.largest_mitre))
            editing.change().largest_mitre = *typed;
        editing.maybe(
            "Width lost a cut", "slug_loss", &Station::slug_loss, "Empty: nothing falls out");
        editing.maybe("Thinnest metal cut", "least_thickness", &Station::least_thickness);
    } else {
        editing.maybe("Opening slugs fall through", "slug_opening", &Station::slug_opening);
        editing.maybe("Table along the stock", "table_length", &Station::table_length);
    }
    if (station.kind == StationKind::punch)
        editing.maybe(
            "Hole centre to a standing leg", "flange_clearance", &Station::flange_clearance);
}

void rated_sizes(Editing& editing) {
    Form& form = editing.form;
    const Station& station = editing.station;
    form.heading("Sizes on the plate");
    form.words("Each line as printed on the machine: all of it together. Nothing is read between "
               "two lines.");
    form.columns_of(136);
    const auto size = [&](std::size_t i,
                          const char* label,
                          const char* name,
                          Length equipment::RatedSize::*member) {
        const std::string key =
            editing.key("rated[" + std::to_string(i) + "]." + std::string(name));
        if (const auto typed = form.length(label, key, station.rated[i].*member))
            editing.change().rated[i].*member = *typed;
    };
    for (std::size_t i = 0; i < station.rated.size(); ++i) {
        if (station.kind == StationKind::bar_shear) {
            size(i, "Round", "round", &equipment::RatedSize::round);
            size(i, "Square", "square", &equipment::RatedSize::square);
        } else {
            size(i, "Thickness", "thickness", &equipment::RatedSize::thickness);
            size(i,
                 station.kind == StationKind::angle_shear ? "Longer leg" : "Width",
                 "width",
                 &equipment::RatedSize::width);
        }
        const std::string number = std::to_string(i + 1);
        if (form.key("Remove",
                     editing.key("remove-rated-" + number),
                     "Remove plate size " + number,
                     true))
            editing.change().rated.erase(editing.change().rated.begin() + static_cast<int>(i));
        form.new_line();
    }
    if (form.key("Add a size", editing.key("add-rated"), "Add a size from the plate")) {
        equipment::RatedSize next;
        if (!station.rated.empty())
            next = station.rated.back();
        else if (station.kind == StationKind::bar_shear)
            next.round = next.square = inches(0.5);
        else
            next.thickness = inches(0.25), next.width = inches(2);
        editing.change().rated.push_back(next);
    }
    form.new_line();
}

void holders(Editing& editing) {
    Form& form = editing.form;
    const Station& station = editing.station;
    form.heading("Holders");
    form.columns_of(136);
    for (std::size_t i = 0; i < station.holders.size(); ++i) {
        const equipment::Holder& holder = station.holders[i];
        const std::string path = "holders[" + std::to_string(i) + "].";
        if (const auto typed = form.text("Holder", editing.key(path + "name"), holder.name))
            editing.change().holders[i].name = *typed;
        if (const auto typed = form.length(
                "Largest punch", editing.key(path + "largest_punch"), holder.largest_punch))
            editing.change().holders[i].largest_punch = *typed;
        if (form.toggle("Keyed", editing.key(path + "keyed"), holder.keyed))
            editing.change().holders[i].keyed = !holder.keyed;
        if (form.key("Remove", editing.key(path + "remove"), "Remove holder " + holder.name, true))
            editing.change().holders.erase(editing.change().holders.begin() + static_cast<int>(i));
        form.new_line();
    }
    if (form.key("Add a holder", editing.key("add-holder"), "Add a holder"))
        editing.change().holders.push_back({"Holder", inches(1), false});
    form.new_line();
}

bool names(const Station& station, const std::string& id) {
    return std::find(station.excludes.begin(), station.excludes.end(), id) !=
           station.excludes.end();
}

/// One tick stands for both directions, whichever of the two stations names the other.
void not_at_once(Editing& editing, const std::vector<Station>& all) {
    Form& form = editing.form;
    if (all.size() < 2)
        return;
    form.heading("May not run while these run");
    form.columns_of(150);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Station& other = all[i];
        const Station& station = editing.station;
        if (i == editing.index)
            continue;
        const bool on = names(station, other.id) || names(other, station.id);
        if (!form.toggle(other.name, editing.key("excludes." + other.id), on))
            continue;
        auto& here = editing.change().excludes;
        if (on) {
            std::erase(here, other.id);
            std::erase(editing.draft.change().machine.stations[i].excludes, station.id);
        } else {
            here.push_back(other.id);
        }
    }
    form.new_line();
}

void remove_station(Desk& desk, ShopDraft& draft, std::size_t index) {
    equipment::Machine& machine = draft.change().machine;
    const std::string id = machine.stations[index].id;
    machine.stations.erase(machine.stations.begin() + static_cast<int>(index));
    // Nothing may go on naming a station that is gone.
    for (equipment::Station& other : machine.stations)
        std::erase(other.excludes, id);
    for (equipment::Attachment& attachment : machine.attachments)
        std::erase(attachment.stations, id);
    desk.state.shop_page = 0;
}

} // namespace

float station_form(Desk& desk, const ui::Rect& rect, int station) {
    const auto index = static_cast<std::size_t>(station);
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 200);
    Editing editing{form,
                    draft,
                    desk.session.shop().machine.stations[index],
                    index,
                    "machine.stations[" + std::to_string(station) + "]."};
    plate(editing);
    rated_sizes(editing);
    if (editing.station.kind == StationKind::punch)
        holders(editing);
    not_at_once(editing, desk.session.shop().machine.stations);
    form.heading("Station");
    if (form.key("Remove this station",
                 editing.key("remove"),
                 "Remove station " + editing.station.name,
                 true))
        remove_station(desk, draft, index);
    draft.send(form);
    return form.bottom();
}

} // namespace treadle::views
