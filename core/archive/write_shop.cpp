#include "archive/writers.h"

namespace treadle::archive {

namespace {

using namespace equipment;

void write_rated(Writer& out, const RatedSize& rated) {
    out.json.begin_object();
    out.unless_zero("thickness", rated.thickness);
    out.unless_zero("width", rated.width);
    out.unless_zero("round", rated.round);
    out.unless_zero("square", rated.square);
    out.json.end_object();
}

void write_holder(Writer& out, const Holder& holder) {
    out.json.begin_object().field("name", holder.name);
    out.quantity("largest_punch", holder.largest_punch);
    out.if_true("keyed", holder.keyed);
    out.json.end_object();
}

void write_ids(Writer& out, std::string_view key, const std::vector<std::string>& ids) {
    out.list(key, ids, [&](const std::string& id) { out.json.text(id); });
}

void write_station(Writer& out, const Station& station) {
    out.json.begin_object().field("id", station.id);
    out.unless_empty("name", station.name);
    out.word("kind", station.kind);
    out.if_known("force", station.force);
    out.if_known("base", station.base);
    out.list("rated", station.rated, [&](const auto& rated) { write_rated(out, rated); });
    out.if_known("throat", station.throat);
    out.if_known("daylight", station.daylight);
    out.if_known("stroke", station.stroke);
    out.if_known("blade", station.blade);
    out.if_known("least_piece", station.least_piece);
    out.if_known("largest_mitre", station.largest_mitre);
    out.if_known("flange_clearance", station.flange_clearance);
    out.if_known("least_thickness", station.least_thickness);
    out.if_known("slug_opening", station.slug_opening);
    out.if_known("slug_loss", station.slug_loss);
    out.if_known("table_length", station.table_length);
    out.list("holders", station.holders, [&](const auto& holder) { write_holder(out, holder); });
    write_ids(out, "excludes", station.excludes);
    out.json.end_object();
}

void write_attachment(Writer& out, const Attachment& attachment) {
    out.json.begin_object().field("id", attachment.id);
    out.unless_empty("name", attachment.name);
    out.word("kind", attachment.kind);
    write_ids(out, "stations", attachment.stations);
    out.if_known("force", attachment.force);
    out.if_known("base", attachment.base);
    out.if_known("length", attachment.length);
    out.if_known("depth", attachment.depth);
    out.if_known("largest_thickness", attachment.largest_thickness);
    out.if_known("vee_included", attachment.vee_included);
    out.if_known("stroke", attachment.stroke);
    out.if_known("bed_width", attachment.bed_width);
    out.if_known("ram_width", attachment.ram_width);
    out.if_known("open_height", attachment.open_height);
    out.if_known("least_gauge", attachment.least_gauge);
    out.if_known("flange_clearance", attachment.flange_clearance);
    out.json.end_object();
}

void write_machine(Writer& out, const Machine& machine) {
    out.json.begin_object();
    out.unless_empty("name", machine.name);
    out.if_true("invented", machine.invented);
    out.unless_one("operators", machine.operators);
    out.list("stations", machine.stations, [&](const auto& item) { write_station(out, item); });
    out.list(
        "attachments", machine.attachments, [&](const auto& item) { write_attachment(out, item); });
    out.json.end_object();
}

template <class Tool>
void write_edge(Writer& out, const Tool& tool) {
    out.if_known("strokes_since_grind", tool.strokes_since_grind);
    out.if_known("regrind_after", tool.regrind_after);
}

template <class Tool>
void write_tool(Writer& out, const Tool& tool) {
    out.json.begin_object().key("hole");
    write_hole(out, tool.hole);
    out.unless_one("count", tool.count);
    write_edge(out, tool);
    out.json.end_object();
}

void write_crib(Writer& out, const Crib& crib) {
    out.json.key("crib").begin_object();
    out.list("punches", crib.punches, [&](const auto& t) { write_tool(out, t); });
    out.list("dies", crib.dies, [&](const auto& t) { write_tool(out, t); });
    out.list("vees", crib.vees, [&](const VBlock& vee) {
        out.json.begin_object();
        out.quantity("opening", vee.opening);
        out.quantity("length", vee.length);
        out.unless_one("count", vee.count);
        out.if_known("width", vee.width);
        out.if_known("height", vee.height);
        out.json.end_object();
    });
    out.list("brake_punches", crib.brake_punches, [&](const BrakePunch& punch) {
        out.json.begin_object();
        out.quantity("nose", punch.nose);
        out.quantity("length", punch.length);
        out.unless_one("count", punch.count);
        out.if_known("width", punch.width);
        out.if_known("height", punch.height);
        out.if_known("included", punch.included);
        out.json.end_object();
    });
    out.list("saddle_dies", crib.saddle_dies, [&](const SaddleDie& die) {
        out.json.begin_object();
        out.quantity("run_diameter", die.run_diameter);
        out.quantity("branch_diameter", die.branch_diameter);
        out.quantity("largest_wall", die.largest_wall);
        write_edge(out, die);
        out.if_known("least_wall", die.least_wall);
        out.json.end_object();
    });
    out.json.end_object();
}

void write_bar(Writer& out, const StockBar& bar) {
    out.json.begin_object().key("section");
    write_section(out, bar.section);
    out.json.field("grade", bar.grade);
    out.quantity("length", bar.length);
    out.if_known("count", bar.count);
    if (bar.price)
        out.json.field("price", *bar.price);
    out.if_true("drop", bar.drop);
    out.json.end_object();
}

void write_trial(Writer& out, const TrialRecord& record) {
    out.json.begin_object().field("grade", record.grade);
    out.quantity("thickness", record.thickness);
    out.quantity("opening", record.opening);
    out.quantity("radius", record.radius);
    out.quantity("angle", record.angle);
    out.word_unless("grain", record.grain, material::Grain::unknown);
    out.list("strips", record.strips, [&](const TrialStrip& strip) {
        out.json.begin_object();
        out.quantity("blank", strip.blank);
        out.quantity("leg_a", strip.leg_a);
        out.quantity("leg_b", strip.leg_b);
        out.json.end_object();
    });
    out.json.end_object();
}

void write_times(Writer& out, const WorkTimes& times) {
    out.json.key("times").begin_object();
    out.if_true("invented", times.invented);
    out.if_known("new_station_s", times.new_station);
    out.if_known("new_tool_s", times.new_tool);
    out.if_known("stroke_s", times.stroke);
    out.if_known("position_s", times.position);
    out.if_known("first_piece_s", times.first_piece);
    out.list("handling", times.handling, [&](const HandlingTime& band) {
        out.json.begin_object();
        out.quantity("up_to", band.up_to);
        out.json.field("each_s", quantity::to_seconds(band.each)).end_object();
    });
    if (times.labour_per_hour)
        out.json.field("labour_per_hour", *times.labour_per_hour);
    out.json.end_object();
}

/// All of them, always: a rule that changes its usual value later must not change an old job.
void write_rules(Writer& out, const HouseRules& rules) {
    out.json.key("rules").begin_object();
    out.json.field("least_margin", rules.least_margin).field("blank_k", rules.blank_k);
    out.json.field("blank_denominator", rules.blank_denominator);
    out.if_known("stripper_gap", rules.stripper_gap);
    out.quantity("notch_overlap", rules.notch_overlap);
    out.if_known("lift_limit", rules.lift_limit);
    out.if_known("support_length", rules.support_length);
    out.if_known("regrind_after", rules.regrind_after);
    out.if_known("batch_pieces", rules.batch_pieces);
    out.if_known("batch_mass", rules.batch_mass);
    out.if_known("check_every", rules.check_every);
    out.unless_empty("marking", rules.marking);
    out.if_known("stop_repeat", rules.stop_repeat);
    out.if_known("cut_repeat", rules.cut_repeat);
    out.if_known("saw_kerf", rules.saw_kerf);
    out.if_known("end_trim", rules.end_trim);
    out.if_known("keep_drop", rules.keep_drop);
    write_times(out, rules.times);
    out.json.end_object();
}

void write_supply(Writer& out, const PowerSupply& supply) {
    out.json.key("supply").begin_object();
    out.if_known("motor", supply.motor);
    out.if_known("voltage", supply.voltage);
    out.unless_one("phases", supply.phases);
    out.unless_empty("code", supply.code);
    out.unless_empty("cord", supply.cord);
    out.if_known("cord_length", supply.cord_length);
    if (supply.generator)
        out.json.field("generator_VA", supply.generator->in_base());
    out.json.end_object();
}

} // namespace

void write_shop(Writer& out, const equipment::Shop& shop) {
    out.json.begin_object();
    out.unless_empty("name", shop.name);
    out.json.key("machine");
    write_machine(out, shop.machine);
    out.list("other_machines", shop.other_machines, [&](const Machine& machine) {
        write_machine(out, machine);
    });
    write_crib(out, shop.crib);
    out.list("rack", shop.rack, [&](const StockBar& bar) { write_bar(out, bar); });
    out.list("trials", shop.trials, [&](const TrialRecord& trial) { write_trial(out, trial); });
    write_rules(out, shop.rules);
    write_supply(out, shop.supply);
    out.json.end_object();
}

} // namespace treadle::archive
