#include "archive/progress_file.h"

#include "archive/json_reader.h"
#include "base/json_writer.h"

#include <algorithm>
#include <utility>

namespace treadle::archive {

namespace {

constexpr const char* k_format = "treadle-progress";

} // namespace

// Found by the reader of lists through their argument, so not hidden in this file.
void read_value(const Place& at, job::StepDone& out);
void read_value(const Place& at, job::Progress& out);

void read_value(const Place& at, job::StepDone& out) {
    Members members(at);
    members.need("place", out.place).need("content", out.content);
    members.may("ticked", out.ticked).may("pieces", out.pieces);
    members.finish();
}

void read_value(const Place& at, job::Progress& out) {
    Members members(at);
    members.need("job", out.job).need("steps", out.steps).may("at", out.at);
    members.may("open", out.open).may("held", out.held).may("note", out.note).may("when", out.when);
    members.finish();
    if (at.failed())
        return;
    if (const auto sound = job::checked(out); !sound)
        at.refuse(sound.refusal());
}

namespace {

void read_versioned(const Place& root, std::vector<job::Progress>& jobs) {
    Members members(root);
    std::string format;
    int version = 0;
    members.need("format", format);
    if (!root.failed() && format != k_format)
        root.refuse("This is no record of work at the machine.", "", "format");
    members.need("version", version);
    if (!root.failed() && version > k_progress_version)
        root.refuse("A newer Treadle left this record; it was not read and nothing was changed.",
                    "this one reads up to version " + std::to_string(k_progress_version),
                    "version");
    if (!root.failed() && version < k_oldest_version)
        root.refuse("There was never such a version of the format.", "", "version");
    members.need("jobs", jobs);
    members.finish();
    for (std::size_t i = 0; i < jobs.size() && !root.failed(); ++i)
        for (std::size_t other = 0; other < i; ++other)
            if (jobs[other].job == jobs[i].job)
                root.refuse("This job is there twice.", "", "jobs[" + std::to_string(i) + "].job");
}

void write_job(base::JsonWriter& json, const job::Progress& progress) {
    json.begin_object().field("job", progress.job);
    json.key("steps").begin_array();
    for (const job::StepDone& step : progress.steps) {
        json.begin_object().field("place", step.place).field("content", step.content);
        json.field("ticked", step.ticked).field("pieces", step.pieces).end_object();
    }
    json.end_array();
    json.field("at", progress.at).field("open", progress.open).field("held", progress.held);
    json.field("note", progress.note).field("when", progress.when).end_object();
}

} // namespace

base::Result<std::vector<job::Progress>> read_progress(std::string_view bytes) {
    const base::Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    std::vector<job::Progress> jobs;
    read_versioned(Place(reading, 0), jobs);
    if (reading.refusal)
        return std::move(*reading.refusal);
    return jobs;
}

std::string write_progress(const std::vector<job::Progress>& jobs) {
    base::JsonWriter json;
    json.begin_object().field("format", k_format).field("version", k_progress_version);
    json.key("jobs").begin_array();
    for (std::size_t i = 0; i < std::min(jobs.size(), k_most_progress); ++i)
        write_job(json, jobs[i]);
    json.end_array().end_object();
    return json.take();
}

} // namespace treadle::archive
