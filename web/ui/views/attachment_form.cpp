#include "ui/views/attachment_form.h"

#include "ui/views/shop_draft.h"

#include <algorithm>

namespace treadle::views {

namespace {

using equipment::Attachment;
using equipment::AttachmentKind;

void stations(
    Desk& desk, Form& form, ShopDraft& draft, std::size_t index, const std::string& path) {
    const equipment::Machine& machine = desk.session.shop().machine;
    const Attachment& attachment = machine.attachments[index];
    form.heading("Bolts on to");
    for (const equipment::Station& station : machine.stations) {
        const auto& fits = attachment.stations;
        const bool on = std::find(fits.begin(), fits.end(), station.id) != fits.end();
        if (!form.toggle(station.name, path + "stations/" + station.id, on))
            continue;
        auto& next = draft.change().machine.attachments[index].stations;
        if (on)
            std::erase(next, station.id);
        else
            next.push_back(station.id);
    }
}

void limits(Form& form,
            ShopDraft& draft,
            std::size_t index,
            const Attachment& is,
            const std::string& path) {
    const auto change = [&]() -> Attachment& { return draft.change().machine.attachments[index]; };
    const auto length =
        [&](const char* label, const char* name, std::optional<Length> Attachment::*member) {
            if (const auto typed =
                    form.maybe(label, path + name, is.*member, is.*member ? "" : "not known"))
                change().*member = *typed;
        };
    if (const auto typed = form.text("Name", path + "name", is.name))
        change().name = *typed;
    if (const auto typed = form.maybe("Force", path + "force", is.force))
        change().force = *typed;
    const bool brake = is.kind == AttachmentKind::brake;
    const bool saddle = is.kind == AttachmentKind::saddle_notcher;
    if (!saddle)
        length(brake ? "Longest bend" : "Tool along the edge", "length", &Attachment::length);
    if (!brake && !saddle) {
        length("Deepest bite", "depth", &Attachment::depth);
        length("Cut to a standing leg", "flange_clearance", &Attachment::flange_clearance);
    }
    length("Thickest metal", "largest_thickness", &Attachment::largest_thickness);
    length("Stroke", "stroke", &Attachment::stroke);
    if (brake) {
        length("Width of the bed", "bed_width", &Attachment::bed_width);
        length("Width of the ram", "ram_width", &Attachment::ram_width);
        length("Bed to ram, open", "open_height", &Attachment::open_height);
        length("Stop at its nearest", "least_gauge", &Attachment::least_gauge);
    }
    if (is.kind == AttachmentKind::vee_notcher) {
        if (const auto typed =
                form.maybe("Angle of the blades", path + "vee_included", is.vee_included))
            change().vee_included = *typed;
    }
    std::optional<Stress> base;
    if (is.base)
        base = is.base->value;
    if (const auto typed =
            form.maybe("Rated for metal of", path + "base", base, base ? "" : "not known")) {
        change().base.reset();
        if (*typed)
            change().base = material::RatingBase{**typed};
    }
}

} // namespace

float attachment_form(Desk& desk, const ui::Rect& rect, int attachment) {
    const auto index = static_cast<std::size_t>(attachment);
    const Attachment& is = desk.session.shop().machine.attachments[index];
    const std::string path = "machine.attachments[" + std::to_string(attachment) + "].";
    ShopDraft draft(desk);
    Form form(desk, rect, "shop", 200);
    limits(form, draft, index, is, path);
    stations(desk, form, draft, index, path);
    form.heading("Attachment");
    if (form.key("Remove this attachment", path + "remove", "Remove attachment " + is.name, true)) {
        auto& attachments = draft.change().machine.attachments;
        attachments.erase(attachments.begin() + attachment);
        desk.state.shop_page = 0;
    }
    draft.send(form);
    return form.bottom();
}

} // namespace treadle::views
