// The safety notice, and cautions for exactly the stations that a plan uses.
//
// Common practice, no source, in our own words; the duty to guard the point of operation is in
// 29 CFR 1910.212(a), eye protection in 1910.133(a), lockout in 1910.147(c)-(d).

#include "sheet/worksheet.h"

#include <algorithm>
#include <array>

namespace treadle::sheet {

namespace {

using equipment::AttachmentKind;
using equipment::StationKind;

constexpr const char* k_tool_change =
    "Before a tool is changed or a jam cleared: power unplugged and the plug kept in sight, ram "
    "down, pressure released.";

constexpr std::array k_always = {
    "Every guard is on before the first stroke. No part of anybody is in the point of operation "
    "while the ram moves, down or up.",
    "Glasses with side shields for everyone in the area, safety boots, ears protected against the "
    "snap of the break. No gloves near a moving tool, no loose sleeves, rings or open hair.",
    "One operator, one pedal. The foot is on it only while both hands are clear; it is never "
    "propped, and it is moved away when the machine rests.",
    k_tool_change,
    "Nothing hardened, brittle or unknown goes into the machine, and no weld or torch-cut edge: "
    "it can shatter. Never two thicknesses at once.",
    "Long or heavy stock is carried at working height; two people agree on signals first and the "
    "one at the pedal gives the stroke. Short pieces are held with a tool, not with fingers.",
    "Hydraulic leaks are never felt for by hand: oil under pressure goes through skin.",
    "Slugs and offcuts off the floor; edges deburred before the piece is handed on."};

std::vector<std::string> station_cautions(StationKind kind) {
    switch (kind) {
    case StationKind::punch:
        return {"Punch: stripper flat on the stock and close above it. A tall gap lets the stock "
                "jump and catches fingers on the way up.",
                "Punch: read the sizes on punch and die, tighten the nut and the die screw, and "
                "bring them together by hand before the first stroke. Clear slugs under the die; "
                "no hand in the chute."};
    case StationKind::flat_shear:
        return {"Flat shear: hold-down set to the stock. The end tips up and kicks when the cut "
                "goes through: stand beside it, never in line."};
    case StationKind::angle_shear:
        return {"Angle shear: both legs lie against their supports before the stroke; the cut "
                "piece swings and falls, keep feet and hands from under it."};
    case StationKind::bar_shear:
        return {"Bar shear: the bar fills its own opening and is held down; solid bar only. The "
                "cut end drops or springs away."};
    case StationKind::notcher:
        return {"Notcher: the blades are open on three sides. Hands stay behind the table's edge "
                "and trimmings are taken out only when the machine is at rest."};
    case StationKind::table:
        return {"Table: bolts of whatever is mounted are checked before the first stroke."};
    }
    return {};
}

std::vector<std::string> attachment_cautions(AttachmentKind kind) {
    switch (kind) {
    case AttachmentKind::brake:
        return {"Brake: the sheet whips up in front of the punch as it bends. Face and hands out "
                "of its way, fingers out of the V, against a stop instead of by hand."};
    case AttachmentKind::vee_notcher:
    case AttachmentKind::rectangular_notcher:
        return {"Notching tool: set the stops so that every bite cuts on all its sides; a thin "
                "sliver bends into the gap and jams the tool.",
                "Notching tool: a piece that stays in the die is pushed out with a rod before the "
                "next stroke, with the foot off the pedal; never two strokes on one slug."};
    case AttachmentKind::saddle_notcher:
        return {"Saddle notcher: the pipe is pushed to the stop and held outside the tool; the "
                "crescent that falls is sharp."};
    }
    return {};
}

void add_once(std::vector<std::string>& list, const std::vector<std::string>& more) {
    for (const std::string& line : more)
        if (std::find(list.begin(), list.end(), line) == list.end())
            list.push_back(line);
}

} // namespace

const char* safety_notice() {
    return "The machine's manual, local codes and a competent person decide. All figures here are "
           "estimates: check the first piece before making the rest, and stop when anything is "
           "not as expected.";
}

const char* manual_decides() {
    return "The machine's manual, local codes and a competent person decide.";
}

const char* tool_change_caution() { return k_tool_change; }

std::vector<std::string> set_up_cautions(const plan::Tooling& tools, const equipment::Shop& shop) {
    std::vector<std::string> list;
    const equipment::Machine& machine = shop.machine;
    if (tools.station != plan::k_none)
        add_once(list,
                 station_cautions(machine.stations[static_cast<std::size_t>(tools.station)].kind));
    if (tools.attachment != plan::k_none)
        add_once(list,
                 attachment_cautions(
                     machine.attachments[static_cast<std::size_t>(tools.attachment)].kind));
    return list;
}

std::vector<std::string> cautions(const plan::Plan& plan, const equipment::Shop& shop) {
    std::vector<std::string> list(k_always.begin(), k_always.end());
    for (const plan::SetUp& set_up : plan.order)
        add_once(list, set_up_cautions(set_up.tools, shop));
    if (shop.machine.operators > 1)
        list.emplace_back("Two at one machine: only at stations that the manual allows together, "
                          "each with a pedal and a clear view of the other.");
    return list;
}

} // namespace treadle::sheet
