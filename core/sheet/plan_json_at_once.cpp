#include "plan/at_once.h"
#include "sheet/plan_json_parts.h"

#include <cmath>

namespace treadle::sheet {

namespace {

/// A key that ends in what is counted.
void write_figure(base::JsonWriter& json,
                  const plan::AtOnce& shared,
                  const char* name,
                  double figure) {
    const double value = shared.timed ? quantity::to_minutes(quantity::seconds(figure)) : figure;
    json.field(std::string(name) + (shared.timed ? "_min" : "_strokes"),
               std::round(value * 1e6) / 1e6);
}

void write_run(base::JsonWriter& json, const plan::AtOnce& shared, const plan::LaneRun& run) {
    json.begin_object().field("set_up", run.task);
    write_figure(json, shared, "start", run.start);
    write_figure(json, shared, "finish", run.finish);
    write_figure(json, shared, "waits", run.waits);
    json.end_object();
}

} // namespace

void write_at_once(base::JsonWriter& json, const plan::Plan& plan, const equipment::Shop& shop) {
    json.key("at_once");
    if (shop.machine.operators < 2) {
        json.null();
        return;
    }
    const plan::AtOnce shared = plan::at_once(plan, shop);
    json.begin_object().field("people", shared.people);
    json.field("words", plan::at_once_words(shared)).field("caution", plan::at_once_caution());
    write_figure(json, shared, "longest", shared.lanes.length);
    write_figure(json, shared, "least", shared.lanes.least);
    write_figure(json, shared, "alone", shared.lanes.alone);
    json.field("proven", shared.lanes.proven()).key("stations").begin_array();
    for (const auto& [a, b] : shared.stations) {
        json.begin_array().text(shop.machine.stations[static_cast<std::size_t>(a)].id);
        json.text(shop.machine.stations[static_cast<std::size_t>(b)].id).end_array();
    }
    json.end_array().key("lanes").begin_array();
    for (int lane = 0; lane < shared.people; ++lane) {
        json.begin_array();
        for (const plan::LaneRun& run : shared.lanes.runs)
            if (run.lane == lane)
                write_run(json, shared, run);
        json.end_array();
    }
    json.end_array().end_object();
}

} // namespace treadle::sheet
