#include "archive/readers.h"

namespace treadle::archive {

using namespace equipment;

// Not in an unnamed namespace: the readers of lists find these by their argument, and such a
// look-up does not see into one.

static void read_value(const Place& at, RatedSize& out) {
    Members members(at);
    members.may("thickness", out.thickness).may("width", out.width);
    members.may("round", out.round).may("square", out.square);
    members.finish();
}

static void read_value(const Place& at, Holder& out) {
    Members members(at);
    members.need("name", out.name).need("largest_punch", out.largest_punch);
    members.may("keyed", out.keyed);
    members.finish();
}

static void read_value(const Place& at, Station& out) {
    Members members(at);
    members.need("id", out.id).may("name", out.name).need("kind", out.kind);
    members.may("force", out.force).may("base", out.base).may("rated", out.rated);
    members.may("throat", out.throat).may("daylight", out.daylight).may("stroke", out.stroke);
    members.may("blade", out.blade).may("least_piece", out.least_piece);
    members.may("largest_mitre", out.largest_mitre);
    members.may("flange_clearance", out.flange_clearance);
    members.may("least_thickness", out.least_thickness).may("slug_opening", out.slug_opening);
    members.may("slug_loss", out.slug_loss);
    members.may("table_length", out.table_length);
    members.may("holders", out.holders).may("excludes", out.excludes);
    members.finish();
}

static void read_value(const Place& at, Attachment& out) {
    Members members(at);
    members.need("id", out.id).may("name", out.name).need("kind", out.kind);
    members.may("stations", out.stations).may("force", out.force).may("base", out.base);
    members.may("length", out.length).may("depth", out.depth);
    members.may("largest_thickness", out.largest_thickness);
    members.may("vee_included", out.vee_included).may("stroke", out.stroke);
    members.may("bed_width", out.bed_width).may("ram_width", out.ram_width);
    members.may("open_height", out.open_height).may("least_gauge", out.least_gauge);
    members.may("flange_clearance", out.flange_clearance);
    members.finish();
}

static void read_value(const Place& at, Machine& out) {
    Members members(at);
    members.may("name", out.name).may("invented", out.invented).may("operators", out.operators);
    members.may("stations", out.stations).may("attachments", out.attachments);
    members.finish();
}

static void read_value(const Place& at, PunchTool& out) {
    Members members(at);
    members.need("hole", out.hole).may("count", out.count);
    members.may("strokes_since_grind", out.strokes_since_grind);
    members.may("regrind_after", out.regrind_after);
    members.finish();
}

static void read_value(const Place& at, DieTool& out) {
    Members members(at);
    members.need("hole", out.hole).may("count", out.count);
    members.may("strokes_since_grind", out.strokes_since_grind);
    members.may("regrind_after", out.regrind_after);
    members.finish();
}

static void read_value(const Place& at, VBlock& out) {
    Members members(at);
    members.need("opening", out.opening).need("length", out.length).may("count", out.count);
    members.may("width", out.width).may("height", out.height);
    members.finish();
}

static void read_value(const Place& at, BrakePunch& out) {
    Members members(at);
    members.need("nose", out.nose).need("length", out.length).may("count", out.count);
    members.may("width", out.width).may("height", out.height).may("included", out.included);
    members.finish();
}

static void read_value(const Place& at, SaddleDie& out) {
    Members members(at);
    members.need("run_diameter", out.run_diameter).need("branch_diameter", out.branch_diameter);
    members.need("largest_wall", out.largest_wall).may("least_wall", out.least_wall);
    members.may("strokes_since_grind", out.strokes_since_grind);
    members.may("regrind_after", out.regrind_after);
    members.finish();
}

static void read_value(const Place& at, Crib& out) {
    Members members(at);
    members.may("punches", out.punches).may("dies", out.dies).may("vees", out.vees);
    members.may("brake_punches", out.brake_punches).may("saddle_dies", out.saddle_dies);
    members.finish();
}

static void read_value(const Place& at, StockBar& out) {
    Members members(at);
    members.need("section", out.section).need("grade", out.grade);
    members.need("length", out.length).may("count", out.count);
    members.may("price", out.price).may("drop", out.drop);
    members.finish();
}

static void read_value(const Place& at, TrialStrip& out) {
    Members members(at);
    members.need("blank", out.blank).need("leg_a", out.leg_a).need("leg_b", out.leg_b);
    members.finish();
}

static void read_value(const Place& at, TrialRecord& out) {
    Members members(at);
    members.need("grade", out.grade).need("thickness", out.thickness);
    members.need("opening", out.opening).need("radius", out.radius).need("angle", out.angle);
    members.may("grain", out.grain).need("strips", out.strips);
    members.finish();
}

static void read_value(const Place& at, HandlingTime& out) {
    Members members(at);
    members.need("up_to", out.up_to).need("each_s", out.each);
    members.finish();
}

static void read_value(const Place& at, WorkTimes& out) {
    Members members(at);
    members.may("invented", out.invented);
    members.may("new_station_s", out.new_station).may("new_tool_s", out.new_tool);
    members.may("stroke_s", out.stroke).may("position_s", out.position);
    members.may("first_piece_s", out.first_piece).may("handling", out.handling);
    members.may("labour_per_hour", out.labour_per_hour);
    members.finish();
}

static void read_value(const Place& at, HouseRules& out) {
    Members members(at);
    members.may("least_margin", out.least_margin).may("blank_k", out.blank_k);
    members.may("blank_denominator", out.blank_denominator);
    members.may("stripper_gap", out.stripper_gap).may("notch_overlap", out.notch_overlap);
    members.may("lift_limit", out.lift_limit).may("support_length", out.support_length);
    members.may("regrind_after", out.regrind_after).may("batch_pieces", out.batch_pieces);
    members.may("batch_mass", out.batch_mass).may("check_every", out.check_every);
    members.may("stop_repeat", out.stop_repeat).may("cut_repeat", out.cut_repeat);
    members.may("saw_kerf", out.saw_kerf).may("end_trim", out.end_trim);
    members.may("keep_drop", out.keep_drop);
    members.may("marking", out.marking).may("times", out.times);
    members.finish();
}

static void read_value(const Place& at, PowerSupply& out) {
    Members members(at);
    members.may("motor", out.motor).may("voltage", out.voltage).may("phases", out.phases);
    members.may("code", out.code).may("cord", out.cord).may("cord_length", out.cord_length);
    std::optional<double> generator;
    members.may("generator_VA", generator);
    members.finish();
    if (generator)
        out.generator = ApparentPower::from_base(*generator);
}

void read_value(const Place& at, Shop& out) {
    Members members(at);
    members.may("name", out.name).may("machine", out.machine);
    members.may("other_machines", out.other_machines).may("crib", out.crib);
    members.may("rack", out.rack)
        .may("trials", out.trials)
        .may("rules", out.rules)
        .may("supply", out.supply);
    members.finish();
    if (at.failed())
        return;
    auto made = checked(out);
    if (made.ok())
        out = std::move(made).value();
    else
        at.refuse(made.refusal());
}

} // namespace treadle::archive
