// The plan for other programs: SI units, keys that end in their unit, always in the same order.

#include "base/json_writer.h"
#include "plan/handling.h"
#include "plan/job_time.h"
#include "plan/power_check.h"
#include "plan/trial_use.h"
#include "plan/words.h"
#include "sheet/plan_json_parts.h"
#include "sheet/plan_json_setups.h"
#include "sheet/trial_sheet.h"
#include "sheet/worksheet.h"

#include <cmath>

namespace treadle::sheet {

namespace {

using base::JsonWriter;

/// A millionth of a millimetre or kilonewton is below any tool, and short numbers are written fast.
double short_of(double value) { return std::round(value * 1e6) / 1e6; }

/// Millimetres as they are written.
double mm(Length value) { return short_of(quantity::to_millimetres(value)); }

/// Writes `name` with the unit of the quantity behind it.
struct UnitField {
    JsonWriter& json;
    const char* name;

    void put(const char* unit, double value) const {
        json.field(std::string(name) + unit, short_of(value));
    }
    void operator()(Length q) const { put("_mm", mm(q)); }
    void operator()(Area q) const { put("_mm2", quantity::to_square_millimetres(q)); }
    void operator()(Force q) const { put("_kN", quantity::to_kilonewtons(q)); }
    void operator()(Stress q) const { put("_MPa", quantity::to_megapascals(q)); }
    void operator()(Energy q) const { put("_J", quantity::to_joules(q)); }
    void operator()(Mass q) const { put("_kg", quantity::to_kilograms(q)); }
    void operator()(MassPerLength q) const {
        put("_kg_per_m", quantity::to_kilograms_per_metre(q));
    }
    void operator()(Angle q) const { put("_deg", quantity::to_degrees(q)); }
    void operator()(Voltage q) const { put("_V", quantity::to_volts(q)); }
    void operator()(Current q) const { put("_A", quantity::to_amperes(q)); }
    void operator()(ApparentPower q) const { put("_kVA", quantity::to_kilovolt_amperes(q)); }
    void operator()(Power q) const { put("_kW", quantity::to_kilowatts(q)); }
    void operator()(Resistance q) const { put("_ohm", quantity::to_ohms(q)); }
    void operator()(ResistancePerLength q) const {
        put("_ohm_per_km", quantity::to_ohms_per_kilometre(q));
    }
    void operator()(quantity::Number q) const { put("", q.value); }
    void operator()(quantity::Share q) const { put("_pct", q.value * 100.0); }
};

void write_hole(JsonWriter& json, const char* name, const geometry::HoleOutline& hole, bool owned) {
    json.key(name).begin_object();
    json.field("shape", geometry::hole_shape_word(hole.shape));
    json.field("size_mm", mm(hole.size));
    if (hole.size2 > Length{})
        json.field("size2_mm", mm(hole.size2));
    json.field("in_crib", owned).end_object();
}

void write_tools(JsonWriter& json, const plan::Tooling& tools, const equipment::Shop& shop) {
    json.key("tools").begin_object();
    if (tools.holder != plan::k_none && tools.station != plan::k_none)
        json.field("holder",
                   shop.machine.stations[static_cast<std::size_t>(tools.station)]
                       .holders[static_cast<std::size_t>(tools.holder)]
                       .name);
    if (tools.punch_size.size > Length{})
        write_hole(json, "punch", tools.punch_size, tools.punch != plan::k_none);
    if (tools.die_size.size > Length{})
        write_hole(json, "die", tools.die_size, tools.die != plan::k_none);
    if (tools.opening > Length{})
        json.field("opening_mm", mm(tools.opening));
    if (tools.nose > Length{})
        json.field("nose_mm", mm(tools.nose));
    if (tools.saddle_run > Length{})
        json.field("saddle_run_mm", mm(tools.saddle_run));
    if (tools.mitre != Angle{})
        json.field("mitre_deg", short_of(tools.mitre.in_degrees()));
    json.end_object();
}

/// Ids of where the work is done, null for nowhere.
void write_place(JsonWriter& json, const plan::Tooling& tools, const equipment::Shop& shop) {
    json.key("station");
    if (tools.station == plan::k_none)
        json.null();
    else
        json.text(shop.machine.stations[static_cast<std::size_t>(tools.station)].id);
    json.key("attachment");
    if (tools.attachment == plan::k_none)
        json.null();
    else
        json.text(shop.machine.attachments[static_cast<std::size_t>(tools.attachment)].id);
}

void write_check(JsonWriter& json, const plan::Check& check, PrintStyle style) {
    json.begin_object();
    json.field("rule", plan::rule_key(check.rule));
    json.field("outcome", plan::outcome_key(check.outcome));
    json.field("warning", check.warning);
    if (check.missing.empty() && check.said.empty()) {
        std::visit(UnitField{json, "demand_low"}, check.demand_low);
        std::visit(UnitField{json, "demand_high"}, check.demand_high);
        std::visit(UnitField{json, "offer"}, check.offer);
        json.field("margin_pct", short_of(check.margin * 100.0));
    }
    if (check.outcome == plan::Outcome::fits_up_to)
        json.field("limit_MPa", short_of(quantity::to_megapascals(check.limit)));
    if (!check.missing.empty())
        json.field("missing", check.missing);
    json.field("sentence", plan::sentence(check, style)).end_object();
}

void write_bend(JsonWriter& json, const plan::OperationPlan& operation) {
    json.key("bend").begin_object();
    json.field("angle_deg", short_of(operation.bend.angle.in_degrees()));
    json.field("radius_mm", mm(operation.bend.radius));
    json.field("thickness_mm", mm(operation.bend.thickness));
    json.field("allowance_mm", mm(operation.figures.allowance));
    json.field("deduction_mm", mm(operation.figures.deduction));
    json.field("setback_mm", mm(operation.figures.setback));
    json.field("k", short_of(operation.figures.k));
    json.field("blank_source", plan::blank_source_key(operation.blank_source)).key("trial");
    if (operation.trial == plan::k_none)
        json.null();
    else
        json.number(operation.trial);
    json.end_object();
}

const char* operation_key(const job::Operation& operation) {
    static constexpr const char* k_keys[] = {"cut", "punch", "notch", "bend", "saddle"};
    return k_keys[operation.index()];
}

void write_operation(JsonWriter& json,
                     const plan::PartPlan& part,
                     std::size_t index,
                     const job::Job& job,
                     const equipment::Shop& shop) {
    const plan::OperationPlan& operation = part.operations[index];
    json.begin_object();
    json.field("index", static_cast<int>(index));
    json.field("operation", operation_key(part.part->operations[index]));
    json.field("title", plan::operation_title(*part.part, index, job.style));
    json.field("outcome", plan::outcome_key(operation.outcome));
    json.field("words", plan::verdict_words(operation, job.style));
    json.field("tight", operation.tight);
    const bool decided = operation.deciding != plan::k_none;
    const plan::Check* check =
        decided ? &operation.checks[static_cast<std::size_t>(operation.deciding)] : nullptr;
    json.key("margin_pct");
    if (check != nullptr && check->missing.empty() && check->said.empty())
        json.number(short_of(check->margin * 100.0));
    else
        json.null();
    json.key("deciding_rule");
    if (check != nullptr)
        json.text(plan::rule_key(check->rule));
    else
        json.null();
    write_place(json, operation.tools, shop);
    write_tools(json, operation.tools, shop);
    json.field("strokes", operation.strokes);
    if (std::holds_alternative<job::Bend>(part.part->operations[index]) &&
        operation.bend.thickness > Length{})
        write_bend(json, operation);
    json.key("checks").begin_array();
    for (const plan::Check& one : operation.checks)
        write_check(json, one, job.style);
    json.end_array().end_object();
}

const char* obstacle_key(plan::BendObstacle obstacle) {
    static constexpr const char* k_keys[] = {"punch", "ram", "die", "bed", "stop", "open_height"};
    return k_keys[static_cast<std::size_t>(obstacle)];
}

/// Null for a part without bends.
void write_bend_order(JsonWriter& json, const plan::PartPlan& part) {
    json.key("bend_order");
    if (!part.bends) {
        json.null();
        return;
    }
    json.begin_object().field("turns", part.bends->turns);
    json.field("missing", part.bends->missing).field("too_many", part.bends->too_many);
    json.key("steps").begin_array();
    for (const plan::BendStep& step : part.bends->steps) {
        json.begin_object().field("operation", step.bend);
        json.field("datum_face_up", step.datum_up).field("datum_end_gauged", step.start_gauged);
        json.field("turned_first", step.turned).field("stop_mm", mm(step.stop)).key("against_leg");
        if (step.against == plan::k_none)
            json.null();
        else
            json.number(step.against);
        json.end_object();
    }
    json.end_array().key("blocked").begin_array();
    for (const plan::BendBlock& block : part.bends->blocked) {
        json.begin_object().field("operation", block.bend);
        json.field("obstacle", obstacle_key(block.obstacle)).key("leg");
        if (block.leg == plan::k_none)
            json.null();
        else
            json.number(block.leg);
        json.end_object();
    }
    json.end_array().end_object();
}

const char* mark_key(plan::Mark::Kind kind) {
    switch (kind) {
    case plan::Mark::Kind::hole:
        return "hole";
    case plan::Mark::Kind::bend_line:
        return "bend_line";
    case plan::Mark::Kind::notch:
        return "notch";
    }
    return "";
}

void write_part(JsonWriter& json,
                const plan::PartPlan& part,
                const job::Job& job,
                const equipment::Shop& shop) {
    json.begin_object();
    json.field("mark", part.part->mark);
    json.field("id", part.part->id);
    json.field("count", part.part->count);
    json.field("outcome", plan::outcome_key(part.outcome));
    json.field("words", plan::verdict_words(part, job.style));
    if (part.problem) {
        json.key("problem").begin_object();
        json.field("field", part.problem->field).field("reason", part.problem->reason);
        json.field("detail", part.problem->detail).end_object();
    }
    json.field("blank_length_mm", mm(part.blank_length));
    json.field("blank_exact_mm", mm(part.blank_exact));
    json.field("blank_width_mm", mm(part.blank_width));
    json.field("mass_each_kg", short_of(quantity::to_kilograms(part.mass_each)));
    write_bend_order(json, part);
    write_leg_spreads(json, part, job, shop);
    json.key("operations").begin_array();
    for (std::size_t i = 0; i < part.operations.size(); ++i)
        write_operation(json, part, i, job, shop);
    json.end_array().key("marks").begin_array();
    for (const plan::Mark& mark : part.marks) {
        json.begin_object().field("kind", mark_key(mark.kind)).field("operation", mark.operation);
        json.field("face", section::face_word(mark.face));
        json.field("x_mm", mm(mark.x)).field("y_mm", mm(mark.y));
        json.end_object();
    }
    json.end_array().end_object();
}

/// Left open for the time.
void write_set_up(JsonWriter& json,
                  const plan::SetUp& set_up,
                  const plan::Plan& plan,
                  const job::Job& job,
                  const equipment::Shop& shop) {
    json.begin_object();
    json.field("words", plan::tooling_words(set_up.tools, shop, job.style));
    write_place(json, set_up.tools, shop);
    write_tools(json, set_up.tools, shop);
    write_settings(json, set_up, shop, job.style);
    json.field("strokes", set_up.strokes).key("steps").begin_array();
    for (const plan::Step& step : set_up.steps) {
        json.begin_object();
        json.field("part", plan.parts[static_cast<std::size_t>(step.part)]->part->id);
        json.field("operation", step.operation);
        json.field("pieces", step.pieces).field("strokes", step.strokes);
        write_step_work(json, plan, step, shop);
        json.end_object();
    }
    json.end_array();
}

void write_minutes(JsonWriter& json, const std::optional<Duration>& time) {
    json.key("time_min");
    if (time)
        json.number(short_of(quantity::to_minutes(*time)));
    else
        json.null();
}

/// Labour is in the shop's own money: no unit to name.
void write_time(JsonWriter& json, const base::Result<plan::JobTime>& time) {
    write_minutes(json, time ? std::optional(time->total) : std::nullopt);
    json.key("labour_cost");
    if (time && time->labour)
        json.number(short_of(*time->labour));
    else
        json.null();
    json.field("time_words", plan::time_words(time));
}

const char* need_key(plan::Need::Kind kind) {
    switch (kind) {
    case plan::Need::Kind::punch:
        return "punch";
    case plan::Need::Kind::die:
        return "die";
    case plan::Need::Kind::vee_block:
        return "vee_block";
    case plan::Need::Kind::brake_punch:
        return "brake_punch";
    case plan::Need::Kind::saddle_die:
        return "saddle_die";
    case plan::Need::Kind::holder:
        return "holder";
    }
    return "";
}

} // namespace

std::string plan_json(const plan::Plan& plan, const job::Job& job, const equipment::Shop& shop) {
    JsonWriter json(1);
    json.begin_object();
    json.field("job", job.name).field("machine", shop.machine.name);
    json.field("outcome", plan::outcome_key(plan.outcome));
    json.key("parts").begin_array();
    for (const auto& part : plan.parts)
        write_part(json, *part, job, shop);
    json.end_array().key("set_ups").begin_array();
    const auto time = plan::job_time(plan, shop);
    for (std::size_t i = 0; i < plan.order.size(); ++i) {
        write_set_up(json, plan.order[i], plan, job, shop);
        write_minutes(json, time ? std::optional(time->set_ups[i].total()) : std::nullopt);
        json.end_object();
    }
    json.end_array();
    write_at_once(json, plan, shop);
    json.key("shopping").begin_array();
    for (const plan::Need& need : plan.shopping) {
        json.begin_object().field("kind", need_key(need.kind));
        json.field("words", plan::need_words(need, job.style)).end_object();
    }
    json.end_array();
    write_wear(json, plan, shop, job.style);
    json.key("power").begin_array();
    for (const plan::PowerLine& line : plan::check_power(shop.supply)) {
        json.begin_object().field("outcome", plan::outcome_key(line.outcome));
        json.field("warning", line.warning).field("words", line.words).end_object();
    }
    json.end_array().key("totals").begin_object();
    json.field("parts", static_cast<int>(plan.parts.size())).field("pieces", plan.pieces);
    json.field("strokes", plan.strokes).field("set_ups", static_cast<int>(plan.order.size()));
    json.field("least_set_ups", plan.least_set_ups).field("set_ups_proven", plan.order_proven);
    json.field("mass_kg", short_of(quantity::to_kilograms(plan.mass)));
    write_time(json, time);
    json.field("handling_words", plan::handling_words(plan, shop, job.style)).end_object();
    json.end_object();
    return json.take() + "\n";
}

} // namespace treadle::sheet
