#include "equipment/shop.h"

#include "quantity/input_limits.h"

#include <algorithm>
#include <set>

namespace treadle::equipment {

namespace {

using quantity::count_fault;
using quantity::Fault;
using quantity::inside;
using quantity::item;
using quantity::place_fault;
using quantity::Presence;
using quantity::size_fault;
using quantity::text_fault;

constexpr int k_most_pieces = 100000;
constexpr int k_most_operators = 100;
constexpr int k_most_strokes = 100000000; // far over the life of any edge
constexpr Mass k_heaviest_batch = quantity::kilograms(100000.0);
constexpr std::size_t k_most_other_machines = 20;
constexpr double k_dearest_bar = 1e6; // our own limit
constexpr Length k_largest_stripper_gap = inches(0.25);
/// Load constant of the revised lifting equation (NIOSH 94-110): the most under ideal conditions.
constexpr Mass k_strongest_lift = quantity::pounds(51.0);

Fault force_fault(const std::optional<Force>& force) {
    if (!force || (*force > Force{} && is_finite(*force)))
        return std::nullopt;
    return base::Refusal{
        "force", "This has to be above zero.", "above 0, or empty when it is not known"};
}

/// What is not known stays empty; what is given has to be a size.
Fault known_size_fault(const std::optional<Length>& value, const char* field) {
    return value ? size_fault(*value, field) : std::nullopt;
}

Fault angle_fault(Angle value, Angle below, const char* field, const char* range) {
    if (value >= Angle{} && value < below)
        return std::nullopt;
    return base::Refusal{field, "The angle is out of range.", range};
}

Fault rated_fault(const RatedSize& rated, StationKind kind) {
    if (auto fault = place_fault(rated.thickness, "thickness"))
        return fault;
    if (auto fault = place_fault(rated.width, "width"))
        return fault;
    if (auto fault = place_fault(rated.round, "round"))
        return fault;
    if (auto fault = place_fault(rated.square, "square"))
        return fault;
    if (kind == StationKind::flat_shear || kind == StationKind::angle_shear) {
        if (auto fault = size_fault(rated.thickness, "thickness"))
            return fault;
        return size_fault(rated.width, "width");
    }
    if (kind == StationKind::bar_shear && rated.round == Length{} && rated.square == Length{})
        return base::Refusal{
            "round", "A bar shear is rated in round or square bar.", "one of the two above 0"};
    return std::nullopt;
}

Fault station_sizes(const Station& station) {
    if (auto fault = force_fault(station.force))
        return fault;
    if (station.base && (!(station.base->value > Stress{}) || !is_finite(station.base->value)))
        return base::Refusal{
            "base", "This has to be above zero.", "above 0, or empty when it is not known"};
    for (std::size_t i = 0; i < station.rated.size(); ++i)
        if (auto fault = rated_fault(station.rated[i], station.kind))
            return inside("rated", i, *fault);
    if (auto fault = known_size_fault(station.throat, "throat"))
        return fault;
    if (auto fault = known_size_fault(station.daylight, "daylight"))
        return fault;
    if (auto fault = known_size_fault(station.stroke, "stroke"))
        return fault;
    if (auto fault = known_size_fault(station.blade, "blade"))
        return fault;
    if (auto fault = known_size_fault(station.flange_clearance, "flange_clearance"))
        return fault;
    if (auto fault = known_size_fault(station.least_thickness, "least_thickness"))
        return fault;
    if (auto fault = known_size_fault(station.slug_opening, "slug_opening"))
        return fault;
    if (auto fault = known_size_fault(station.slug_loss, "slug_loss"))
        return fault;
    if (auto fault = known_size_fault(station.table_length, "table_length"))
        return fault;
    if (station.least_piece)
        if (auto fault = place_fault(*station.least_piece, "least_piece"))
            return fault;
    if (station.largest_mitre)
        return angle_fault(
            *station.largest_mitre, degrees(90.0), "largest_mitre", "0 to below 90 deg");
    return std::nullopt;
}

Fault station_fault(const Station& station, const Machine& machine) {
    if (auto fault = text_fault(station.id, "id", Presence::required))
        return fault;
    if (auto fault = text_fault(station.name, "name"))
        return fault;
    if (auto fault = station_sizes(station))
        return fault;
    for (std::size_t i = 0; i < station.holders.size(); ++i) {
        if (auto fault = text_fault(station.holders[i].name, "name"))
            return inside("holders", i, *fault);
        if (auto fault = size_fault(station.holders[i].largest_punch, "largest_punch"))
            return inside("holders", i, *fault);
    }
    for (std::size_t i = 0; i < station.excludes.size(); ++i) {
        if (station.excludes[i] == station.id)
            return base::Refusal{item("excludes", i), "A station cannot exclude itself.", ""};
        if (find_station(machine, station.excludes[i]) == nullptr)
            return base::Refusal{item("excludes", i), "No station has this id.", ""};
    }
    return std::nullopt;
}

Fault attachment_fault(const Attachment& attachment, const Machine& machine) {
    if (auto fault = text_fault(attachment.id, "id", Presence::required))
        return fault;
    if (auto fault = text_fault(attachment.name, "name"))
        return fault;
    for (std::size_t i = 0; i < attachment.stations.size(); ++i)
        if (find_station(machine, attachment.stations[i]) == nullptr)
            return base::Refusal{item("stations", i), "No station has this id.", ""};
    if (auto fault = force_fault(attachment.force))
        return fault;
    if (auto fault = known_size_fault(attachment.length, "length"))
        return fault;
    if (auto fault = known_size_fault(attachment.depth, "depth"))
        return fault;
    if (auto fault = known_size_fault(attachment.largest_thickness, "largest_thickness"))
        return fault;
    if (attachment.vee_included && *attachment.vee_included == Angle{})
        return base::Refusal{
            "vee_included", "The angle is out of range.", "above 0, below 180 deg"};
    if (attachment.vee_included)
        if (auto fault = angle_fault(
                *attachment.vee_included, degrees(180.0), "vee_included", "above 0, below 180 deg"))
            return fault;
    if (auto fault = known_size_fault(attachment.stroke, "stroke"))
        return fault;
    if (auto fault = known_size_fault(attachment.flange_clearance, "flange_clearance"))
        return fault;
    if (auto fault = known_size_fault(attachment.bed_width, "bed_width"))
        return fault;
    if (auto fault = known_size_fault(attachment.ram_width, "ram_width"))
        return fault;
    if (auto fault = known_size_fault(attachment.open_height, "open_height"))
        return fault;
    return known_size_fault(attachment.least_gauge, "least_gauge");
}

Fault machine_fault(const Machine& machine) {
    if (auto fault = text_fault(machine.name, "name"))
        return fault;
    if (auto fault = count_fault(machine.operators, 1, k_most_operators, "operators"))
        return fault;
    // One set for both: a plan names stations and attachments by id alone.
    std::set<std::string_view> ids;
    const base::Refusal taken{"id", "Something else on the machine has the same id.", ""};
    for (std::size_t i = 0; i < machine.stations.size(); ++i) {
        if (auto fault = station_fault(machine.stations[i], machine))
            return inside("stations", i, *fault);
        if (!ids.insert(machine.stations[i].id).second)
            return inside("stations", i, taken);
    }
    for (std::size_t i = 0; i < machine.attachments.size(); ++i) {
        if (auto fault = attachment_fault(machine.attachments[i], machine))
            return inside("attachments", i, *fault);
        if (!ids.insert(machine.attachments[i].id).second)
            return inside("attachments", i, taken);
    }
    return std::nullopt;
}

Fault known_count_fault(const std::optional<int>& value, int least, int most, const char* field) {
    return value ? count_fault(*value, least, most, field) : std::nullopt;
}

template <class Tool>
Fault edge_fault(const Tool& tool) {
    if (auto fault =
            known_count_fault(tool.strokes_since_grind, 0, k_most_strokes, "strokes_since_grind"))
        return fault;
    return known_count_fault(tool.regrind_after, 1, k_most_strokes, "regrind_after");
}

Fault hole_tool_fault(const geometry::HoleOutline& hole, int count) {
    const auto sound = geometry::checked(hole);
    if (!sound)
        return inside("hole", sound.refusal());
    if (auto fault = size_fault(hole.size, "size"))
        return inside("hole", *fault);
    if (auto fault = place_fault(hole.size2, "size2"))
        return inside("hole", *fault);
    return count_fault(count, 1, k_most_pieces, "count");
}

template <class Tool>
Fault ground_tool_fault(const Tool& tool) {
    if (auto fault = hole_tool_fault(tool.hole, tool.count))
        return fault;
    return edge_fault(tool);
}
Fault tool_fault(const PunchTool& tool) { return ground_tool_fault(tool); }
Fault tool_fault(const DieTool& tool) { return ground_tool_fault(tool); }
Fault tool_fault(const VBlock& tool) {
    if (auto fault = size_fault(tool.opening, "opening"))
        return fault;
    if (auto fault = size_fault(tool.length, "length"))
        return fault;
    if (auto fault = known_size_fault(tool.width, "width"))
        return fault;
    if (tool.width && *tool.width < tool.opening)
        return base::Refusal{"width",
                             "The block cannot be narrower than its opening.",
                             "at least the opening, or empty when it is not known"};
    if (auto fault = known_size_fault(tool.height, "height"))
        return fault;
    return count_fault(tool.count, 1, k_most_pieces, "count");
}
Fault tool_fault(const BrakePunch& tool) {
    if (auto fault = place_fault(tool.nose, "nose"))
        return fault;
    if (auto fault = size_fault(tool.length, "length"))
        return fault;
    if (auto fault = known_size_fault(tool.width, "width"))
        return fault;
    if (auto fault = known_size_fault(tool.height, "height"))
        return fault;
    if (tool.included && !(*tool.included > Angle{}))
        return base::Refusal{"included", "The angle is out of range.", "above 0, below 180 deg"};
    if (tool.included)
        if (auto fault =
                angle_fault(*tool.included, degrees(180.0), "included", "above 0, below 180 deg"))
            return fault;
    return count_fault(tool.count, 1, k_most_pieces, "count");
}
Fault tool_fault(const SaddleDie& tool) {
    if (auto fault = size_fault(tool.run_diameter, "run_diameter"))
        return fault;
    if (auto fault = size_fault(tool.branch_diameter, "branch_diameter"))
        return fault;
    if (auto fault = size_fault(tool.largest_wall, "largest_wall"))
        return fault;
    if (tool.least_wall && *tool.least_wall > tool.largest_wall)
        return base::Refusal{
            "least_wall", "This is thicker than the thickest wall.", "at most the thickest wall"};
    if (auto fault = known_size_fault(tool.least_wall, "least_wall"))
        return fault;
    return edge_fault(tool);
}

template <class Tool>
Fault tools_fault(const std::vector<Tool>& tools, const char* list) {
    for (std::size_t i = 0; i < tools.size(); ++i)
        if (auto fault = tool_fault(tools[i]))
            return inside(list, i, *fault);
    return std::nullopt;
}

Fault crib_fault(const Crib& crib) {
    if (auto fault = tools_fault(crib.punches, "punches"))
        return fault;
    if (auto fault = tools_fault(crib.dies, "dies"))
        return fault;
    if (auto fault = tools_fault(crib.vees, "vees"))
        return fault;
    if (auto fault = tools_fault(crib.brake_punches, "brake_punches"))
        return fault;
    return tools_fault(crib.saddle_dies, "saddle_dies");
}

Fault bar_fault(const StockBar& bar) {
    const auto sound = section::checked(bar.section);
    if (!sound)
        return sound.refusal();
    if (auto fault = text_fault(bar.section.designation, "section.designation"))
        return fault;
    if (auto fault = text_fault(bar.grade, "grade", Presence::required))
        return fault;
    if (auto fault = size_fault(bar.length, "length"))
        return fault;
    if (bar.price && !(*bar.price > 0.0 && *bar.price <= k_dearest_bar))
        return base::Refusal{
            "price", "This is out of range.", "above 0, or empty when it is not known"};
    if (bar.drop && !bar.count)
        return base::Refusal{"count",
                             "How many left-overs of this length there are is missing.",
                             "1 or more: left-overs cannot be bought"};
    return known_count_fault(bar.count, 1, k_most_pieces, "count");
}

Fault rules_fault(const HouseRules& rules) {
    if (!(rules.least_margin >= 0.0 && rules.least_margin < 1.0))
        return base::Refusal{"least_margin", "This is out of range.", "0 to below 100 %"};
    // The neutral line lies inside the metal, so K is a share of the thickness.
    if (!(rules.blank_k >= 0.0 && rules.blank_k < 1.0))
        return base::Refusal{"blank_k", "This is out of range.", "0 (not measured) to below 1"};
    if (auto fault = quantity::denominator_fault(rules.blank_denominator, "blank_denominator"))
        return fault;
    if (auto fault = known_size_fault(rules.stripper_gap, "stripper_gap"))
        return fault;
    if (rules.stripper_gap && *rules.stripper_gap > k_largest_stripper_gap)
        return base::Refusal{
            "stripper_gap", "The gap is too wide to keep fingers out.", "at most 1/4 in (6.35 mm)"};
    if (auto fault = place_fault(rules.notch_overlap, "notch_overlap"))
        return fault;
    if (rules.lift_limit && !(*rules.lift_limit > Mass{} && *rules.lift_limit <= k_strongest_lift))
        return base::Refusal{"lift_limit",
                             "No person lifts that, or nothing is entered.",
                             "above zero, at most 51 lb (23 kg)"};
    if (auto fault = known_size_fault(rules.support_length, "support_length"))
        return fault;
    if (auto fault = known_size_fault(rules.stop_repeat, "stop_repeat"))
        return fault;
    if (auto fault = known_size_fault(rules.cut_repeat, "cut_repeat"))
        return fault;
    if (auto fault = known_size_fault(rules.saw_kerf, "saw_kerf"))
        return fault;
    if (rules.end_trim)
        if (auto fault = place_fault(*rules.end_trim, "end_trim"))
            return fault;
    if (auto fault = known_size_fault(rules.keep_drop, "keep_drop"))
        return fault;
    if (auto fault = known_count_fault(rules.regrind_after, 1, k_most_strokes, "regrind_after"))
        return fault;
    if (auto fault = known_count_fault(rules.batch_pieces, 1, k_most_pieces, "batch_pieces"))
        return fault;
    if (rules.batch_mass && !(*rules.batch_mass > Mass{} && *rules.batch_mass <= k_heaviest_batch))
        return base::Refusal{"batch_mass", "This is out of range.", "above zero, up to 100 t"};
    if (auto fault = known_count_fault(rules.check_every, 1, k_most_pieces, "check_every"))
        return fault;
    if (auto fault = text_fault(rules.marking, "marking"))
        return fault;
    if (auto fault = times_fault(rules.times))
        return inside("times", *fault);
    return std::nullopt;
}

Fault shop_fault(const Shop& shop) {
    if (auto fault = text_fault(shop.name, "name"))
        return fault;
    if (auto fault = machine_fault(shop.machine))
        return inside("machine", *fault);
    if (shop.other_machines.size() > k_most_other_machines)
        return base::Refusal{"other_machines", "Too many machines for one shop.", "at most 20"};
    for (std::size_t i = 0; i < shop.other_machines.size(); ++i)
        if (auto fault = machine_fault(shop.other_machines[i]))
            return inside("other_machines", i, *fault);
    if (auto fault = crib_fault(shop.crib))
        return inside("crib", *fault);
    for (std::size_t i = 0; i < shop.rack.size(); ++i)
        if (auto fault = bar_fault(shop.rack[i]))
            return inside("rack", i, *fault);
    for (std::size_t i = 0; i < shop.trials.size(); ++i)
        if (auto fault = trial_record_fault(shop.trials[i]))
            return inside("trials", i, *fault);
    if (auto fault = rules_fault(shop.rules))
        return inside("rules", *fault);
    if (auto fault = supply_fault(shop.supply))
        return inside("supply", *fault);
    return std::nullopt;
}

} // namespace

base::Result<Shop> checked(Shop shop) {
    if (auto fault = shop_fault(shop))
        return *fault;
    for (StockBar& bar : shop.rack) // sizes its shape does not use are zero
        bar.section = section::checked(bar.section).value();
    return shop;
}

const Station* find_station(const Machine& machine, std::string_view id) {
    const auto found = std::find_if(machine.stations.begin(),
                                    machine.stations.end(),
                                    [&](const Station& s) { return s.id == id; });
    return found == machine.stations.end() ? nullptr : &*found;
}

} // namespace treadle::equipment
