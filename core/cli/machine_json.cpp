#include "cli/machine_json.h"

#include "base/json_writer.h"
#include "plan/words.h"

#include <cmath>

namespace treadle::cli {

namespace {

using base::JsonWriter;

constexpr const char* k_operation_keys[] = {"cut", "punch", "notch", "bend", "saddle"};

/// A millionth of a millimetre is below any tool.
double mm(Length value) { return std::round(quantity::to_millimetres(value) * 1e6) / 1e6; }

/// Where the datum stands in the file, whichever machine was looked at.
std::string path_in_file(const std::string& path, int machine) {
    const std::string own = "machine.";
    if (machine == 0 || path.rfind(own, 0) != 0)
        return path;
    return "other_machines[" + std::to_string(machine - 1) + "]." + path.substr(own.size());
}

void write_stop(JsonWriter& json,
                const plan::Stop& stop,
                const plan::MachineAnswer& answer,
                const job::Job& job,
                const equipment::Shop& shop) {
    const job::Part& part = *job.parts[static_cast<std::size_t>(stop.part)];
    json.begin_object().field("part", part.id).field("mark", part.mark).key("operation");
    if (stop.operation == plan::k_none)
        json.null().key("kind").null();
    else
        json.number(stop.operation)
            .field("kind",
                   k_operation_keys[part.operations[static_cast<std::size_t>(stop.operation)]
                                        .index()]);
    json.field("outcome", plan::outcome_key(stop.outcome));
    if (stop.deciding && !stop.deciding->missing.empty())
        json.field("missing", path_in_file(stop.deciding->missing, answer.machine));
    json.field("reason", plan::stop_words(stop, answer, job, shop)).end_object();
}

void write_rule(JsonWriter& json, const std::optional<plan::Rule>& rule) {
    json.key("stopped_by");
    if (rule)
        json.text(plan::rule_key(*rule));
    else
        json.null();
}

void write_limit(JsonWriter& json, const plan::CapacityLimit& limit) {
    json.field("fits_mm", mm(limit.fits)).field("fits_up_to_mm", mm(limit.fits_up_to));
    if (limit.least > Length{})
        json.field("least_mm", mm(limit.least));
    if (limit.opening > Length{})
        json.field("opening_mm", mm(limit.opening));
    write_rule(json, limit.stopped_by);
}

void write_envelope(JsonWriter& json, const plan::Capacity& capacity) {
    json.key("points").begin_array();
    for (const plan::CapacityPoint& point : capacity.points) {
        json.begin_object().field("x_mm", mm(point.x));
        write_limit(json, point.thickness);
        json.end_object();
    }
    json.end_array().key("bars").begin_array();
    for (const plan::CapacityBar& bar : capacity.bars) {
        json.begin_object().field("shape", section::shape_word(bar.shape));
        if (bar.missing.empty())
            write_limit(json, bar.size);
        else
            json.field("missing", bar.missing);
        json.end_object();
    }
    json.end_array();
}

} // namespace

std::string machines_json(const std::vector<plan::MachineAnswer>& answers,
                          const job::Job& job,
                          const equipment::Shop& shop) {
    JsonWriter json;
    json.begin_object().key("machines").begin_array();
    for (const plan::MachineAnswer& answer : answers) {
        json.begin_object().field("name", plan::machine_at(shop, answer.machine).name);
        json.field("whole_job", answer.does_whole_job);
        for (const plan::Outcome outcome : {plan::Outcome::fits,
                                            plan::Outcome::fits_up_to,
                                            plan::Outcome::cannot_be_said,
                                            plan::Outcome::does_not_fit})
            json.field(plan::outcome_key(outcome), plan::count_of(answer, outcome));
        json.field("words", plan::machine_words(answer, job, shop));
        json.key("stops").begin_array();
        for (const plan::Stop& stop : answer.stops)
            write_stop(json, stop, answer, job, shop);
        json.end_array().end_object();
    }
    json.end_array().end_object();
    return json.take() + "\n";
}

std::string capacity_json(const plan::Capacity& capacity,
                          plan::Mounting place,
                          const std::string& grade,
                          const job::Job& job,
                          const equipment::Shop& shop) {
    JsonWriter json;
    json.begin_object().field("place", plan::place_words(place, shop.machine));
    json.field("grade", grade).field("kind", plan::capacity_key(capacity.kind));
    json.key("cannot_be_said");
    if (capacity.missing.empty())
        json.null();
    else
        json.text(capacity.missing);
    write_envelope(json, capacity);
    json.key("job").begin_array();
    for (const plan::JobPoint& point : capacity.job) {
        json.begin_object().field("part", job.parts[static_cast<std::size_t>(point.part)]->id);
        json.field("operation", point.operation);
        json.field("shape", section::shape_word(point.shape));
        if (point.x > Length{})
            json.field("x_mm", mm(point.x));
        json.field("thickness_mm", mm(point.thickness));
        json.field("outcome", plan::outcome_key(point.outcome));
        json.field("same_grade", point.same_grade).end_object();
    }
    json.end_array().end_object();
    return json.take() + "\n";
}

} // namespace treadle::cli
