#include "cli/kinds_command.h"

#include "archive/bundle.h"
#include "archive/parts_list.h"
#include "archive/shelf.h"
#include "base/json_writer.h"
#include "cli/files.h"
#include "cli/lesson_command.h"

namespace treadle::cli {

namespace {

using base::Refusal;
using base::Result;

Result<std::string> check_job(std::string_view bytes) {
    const auto file = archive::read_file(bytes);
    if (!file.ok())
        return file.refusal();
    const job::Job& job = file->job;
    base::JsonWriter json;
    json.begin_object().field("ok", true).field("version", archive::written_version(job));
    json.field("name", job.name).field("parts", static_cast<int>(job.parts.size())).end_object();
    return json.take() + "\n";
}

Result<std::string> check_shop(std::string_view bytes) {
    const auto shop = archive::read_shop_file(bytes);
    if (!shop.ok())
        return shop.refusal();
    base::JsonWriter json;
    json.begin_object().field("ok", true).field("kind", "shop");
    json.field("version", archive::k_shop_version).field("name", shop->name).end_object();
    return json.take() + "\n";
}

/// A file of several things is sound when all of them are.
std::string sound(const char* kind, const char* things, std::size_t count) {
    base::JsonWriter json;
    json.begin_object().field("ok", true).field("kind", kind);
    json.field(things, static_cast<int>(count)).end_object();
    return json.take() + "\n";
}

Refusal first_of(const std::vector<Refusal>& refused, std::size_t good) {
    Refusal refusal = refused.front();
    refusal.detail += (refusal.detail.empty() ? "" : "; ") + std::to_string(refused.size()) +
                      " refused, " + std::to_string(good) + " good";
    return refusal;
}

Result<std::string> check_bundle(std::string_view bytes) {
    const auto bundle = archive::read_bundle(bytes);
    if (!bundle.ok())
        return bundle.refusal();
    if (!bundle->refused.empty())
        return first_of(bundle->refused, bundle->jobs.size());
    return sound("bundle", "jobs", bundle->jobs.size());
}

Result<std::string> check_shelf(std::string_view bytes) {
    const auto shelf = archive::read_shelf(bytes);
    if (!shelf.ok())
        return shelf.refusal();
    if (!shelf->refused.empty())
        return first_of(shelf->refused, shelf->entries.size());
    return sound("shelf", "entries", shelf->entries.size());
}

/// Without the user's choices, bare numbers and rows without a grade have no meaning yet: the list
/// is sound when its columns are known and not every filled row is at fault in itself.
Result<std::string> check_list(std::string_view bytes) {
    const auto table = archive::read_table(bytes);
    if (!table.ok())
        return table.refusal();
    const auto catalog = archive::read_catalog();
    if (!catalog.ok())
        return catalog.refusal();
    const archive::Mapping mapping = archive::propose_mapping(*table, *catalog);
    const auto read = archive::read_parts(*table, mapping, {}, *catalog);
    if (!read.ok())
        return read.refusal();
    if (read->taken.empty()) {
        Refusal refusal{"file", "No row of this list makes a part.", ""};
        if (!read->refused.empty()) {
            const archive::RefusedRow& first = read->refused.front();
            refusal = first.refusal;
            refusal.field = "row " + std::to_string(first.row) + ", " + refusal.field;
        }
        return refusal;
    }
    base::JsonWriter json;
    json.begin_object().field("ok", true).field("kind", "parts_list");
    json.field("parts", static_cast<int>(read->taken.size()));
    json.field("refused", static_cast<int>(read->refused.size())).end_object();
    return json.take() + "\n";
}

} // namespace

Result<std::string> check_answer(std::string_view bytes) {
    using archive::FileKind;
    switch (archive::kind_of_file(bytes)) {
    case FileKind::shop:
        return check_shop(bytes);
    case FileKind::bundle:
        return check_bundle(bytes);
    case FileKind::shelf:
        return check_shelf(bytes);
    case FileKind::lesson:
        return check_lesson(bytes);
    case FileKind::parts_list:
        return check_list(bytes);
    case FileKind::job:
    case FileKind::unknown:
        break;
    }
    return check_job(bytes);
}

Result<std::string> jobs_answer(const std::vector<std::string>& words) {
    std::vector<archive::BundledJob> jobs;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const auto bytes = read_bytes(words[i], archive::k_largest_bundle);
        if (!bytes.ok())
            return bytes.refusal();
        if (archive::kind_of_file(*bytes) == archive::FileKind::bundle) {
            auto bundle = archive::read_bundle(*bytes);
            if (!bundle.ok())
                return bundle.refusal();
            if (!bundle->refused.empty())
                return first_of(bundle->refused, bundle->jobs.size());
            for (const archive::BundledJob& job : bundle->jobs)
                jobs.push_back(job);
            continue;
        }
        auto file = archive::read_file(*bytes);
        if (!file.ok())
            return file.refusal();
        jobs.push_back({archive::JobState::kept, std::move(file).value()});
    }
    if (jobs.empty() || jobs.size() > archive::k_most_jobs)
        return Refusal{"file",
                       "From one job file to as many as one file may hold are needed.",
                       "at most " + std::to_string(archive::k_most_jobs)};
    return archive::write_bundle(jobs);
}

Result<std::string> shop_answer(const std::vector<std::string>& words) {
    if (words.size() != 2)
        return Refusal{"file", "One job file is needed.", "treadle shop FILE.json"};
    const auto bytes = read_bytes(words[1]);
    if (!bytes.ok())
        return bytes.refusal();
    const auto file = archive::read_file(*bytes);
    if (!file.ok())
        return file.refusal();
    return archive::write_shop_file(file->shop, file->job.style.system);
}

} // namespace treadle::cli
