#include "sheet/plan_json_setups.h"

#include "plan/batches.h"
#include "plan/wear.h"

#include <cmath>

namespace treadle::sheet {

namespace {

using base::JsonWriter;

double short_of(double value) { return std::round(value * 1e6) / 1e6; }

void length_or_null(JsonWriter& json, const char* name, const std::optional<Length>& value) {
    json.key(name);
    if (value)
        json.number(short_of(quantity::to_millimetres(*value)));
    else
        json.null();
}

void count_or_null(JsonWriter& json, const char* name, const std::optional<int>& value) {
    json.key(name);
    if (value)
        json.integer(*value);
    else
        json.null();
}

void write_measure(JsonWriter& json, const plan::Measure& measure) {
    json.begin_object().field("what", measure.what);
    if (const auto* length = std::get_if<Length>(&measure.value))
        json.field("value_mm", short_of(quantity::to_millimetres(*length)));
    else if (const auto* angle = std::get_if<Angle>(&measure.value))
        json.field("value_deg", short_of(angle->in_degrees()));
    json.end_object();
}

} // namespace

void write_settings(JsonWriter& json,
                    const plan::SetUp& set_up,
                    const equipment::Shop& shop,
                    PrintStyle style) {
    const plan::Settings& settings = set_up.settings;
    json.key("settings");
    if (settings.kind == plan::Settings::Kind::none) {
        json.null();
        return;
    }
    json.begin_object();
    length_or_null(json, "stripper_gap_mm", settings.stripper_gap);
    length_or_null(json, "ram_up_mm", settings.stroke_up);
    length_or_null(json, "ram_down_mm", settings.stroke_down);
    if (settings.kind == plan::Settings::Kind::brake)
        json.field("out_along_bend_line", settings.out_along);
    if (!settings.missing.empty())
        json.field("missing", settings.missing);
    json.key("words").begin_array();
    for (const std::string& line : plan::setting_lines(set_up, shop, style))
        json.text(line);
    json.end_array().end_object();
}

void write_step_work(JsonWriter& json,
                     const plan::Plan& plan,
                     const plan::Step& step,
                     const equipment::Shop& shop) {
    const plan::Batches batches = plan::batches_of(plan, step);
    json.field("begins_part", step.begins).key("batches").begin_object();
    json.field("count", batches.count).field("pieces", batches.pieces);
    json.field("last", batches.last).end_object();
    json.field("pieces_measured", plan::pieces_measured(step.pieces, shop.rules));
    json.key("first_piece").begin_array();
    for (const plan::Measure& measure :
         plan::first_piece(*plan.parts[static_cast<std::size_t>(step.part)], step.operation))
        write_measure(json, measure);
    json.end_array();
    const std::string mark = plan::mark_words(plan, step, shop.rules);
    if (!mark.empty())
        json.field("mark_words", mark);
}

void write_wear(JsonWriter& json,
                const plan::Plan& plan,
                const equipment::Shop& shop,
                PrintStyle style) {
    json.key("wear").begin_array();
    for (const plan::ToolWear& wear : plan::tool_wear(plan, shop)) {
        json.begin_object().field("kind", plan::edge_key(wear.kind)).field("tool", wear.tool);
        json.field("name", plan::edge_words(wear.kind, wear.tool, shop, style));
        json.field("strokes", wear.strokes);
        count_or_null(json, "since_grind", wear.before);
        count_or_null(json, "regrind_after", wear.interval);
        json.field("state", plan::wear_key(wear.state));
        if (wear.state == plan::WearState::reached)
            json.field("due_in_set_up", wear.set_up).field("due_after_strokes", wear.into);
        json.field("words", plan::wear_words(wear)).end_object();
    }
    json.end_array();
}

} // namespace treadle::sheet
