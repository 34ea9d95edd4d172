// Whatever bytes come as what a browser stored: journal.h, history.h, progress_file.h.
//
// The first byte says which. Records and heads get their sums made right, for a sum keeps nothing
// out that somebody wrote on purpose. Nothing may crash, hang or be undefined; what was read leads
// to a job that can be written, and a refusal names a field and a reason.

#include "archive/archive.h"
#include "archive/history.h"
#include "archive/job_card.h"
#include "archive/journal.h"
#include "archive/progress_file.h"

#include "assets/embedded.h"

#include <cstdint>
#include <string>
#include <string_view>

#include "fuzz/must.h"
#include "fuzz/small_files.h"

using namespace treadle;
using archive::RecordName;
using archive::StoredBytes;
using fuzz::check_refusal;
using fuzz::must;

namespace {

constexpr const char* k_job = "a";

const archive::Moment& start() {
    static const archive::Moment moment = [] {
        const auto demo = archive::read_file(*assets::embedded("demo/demo-metric.json"));
        must(demo.ok());
        archive::File small = fuzz::with_part(*demo, 0);
        small.job.parts.push_back(demo->job.parts[4]);
        return archive::Moment{small.job,
                               std::make_shared<const equipment::Shop>(std::move(small.shop))};
    }();
    return moment;
}

std::string written(const archive::Moment& moment) {
    return archive::write_file(moment.job, *moment.shop);
}

void records(std::string_view bytes) {
    const auto record = archive::read_record(bytes);
    if (!record.ok())
        check_refusal(record.refusal());
    else
        must(archive::write_record(record->name, record->follows, record->body) == bytes);
    const auto head = archive::read_head(bytes);
    if (!head.ok())
        check_refusal(head.refusal());
    else
        must(archive::write_head(*head) == bytes);
}

void steps(std::string_view bytes) {
    const auto step = archive::read_step(bytes);
    if (!step.ok())
        return check_refusal(step.refusal());
    const auto after = archive::apply_step(start(), *step);
    if (!after.ok())
        return check_refusal(after.refusal());
    const auto same = archive::read_step(archive::write_step(start(), *after, step->words));
    must(same.ok() && same->words == step->words);
    const auto again = archive::apply_step(start(), *same);
    must(again.ok() && written(*again) == written(*after));
}

void progress(std::string_view bytes) {
    const auto read = archive::read_progress(bytes);
    if (!read.ok())
        return check_refusal(read.refusal());
    const std::string text = archive::write_progress(*read);
    const auto again = archive::read_progress(text);
    must(again.ok() && archive::write_progress(*again) == text);
}

RecordName name_of(unsigned char byte) { return {byte % 16, byte / 16 % 2 == 0 ? "w" : "v"}; }

/// One thing under the job's keys, from two bytes and a body; no body is a usual one.
StoredBytes stored(unsigned char which, unsigned char names, std::string_view body) {
    const RecordName name = name_of(which / 8U);
    const RecordName other = name_of(names);
    std::optional<RecordName> follows;
    if (names < 128)
        follows = other;
    static const std::string small = written(start());
    switch (which % 8U) {
    case 0:
        return {archive::record_key(k_job, archive::RecordKind::base, name),
                archive::write_record(name, follows, body.empty() ? small : body)};
    case 1:
        return {names % 2 == 0 ? archive::old_head_key(k_job)
                               : archive::head_key(k_job, names / 2U + 1),
                archive::write_head({name, other, body.empty() ? other : name})};
    case 2:
        return {archive::journal_prefix(k_job) + std::string(body), std::string(body)};
    default:
        return {archive::record_key(k_job, archive::RecordKind::step, name),
                archive::write_record(name, follows, body)};
    }
}

void journals(std::string_view bytes) {
    std::vector<StoredBytes> store;
    while (bytes.size() >= 2 && store.size() < 24) {
        const std::size_t end = bytes.find('\n', 2);
        const std::string_view body = bytes.substr(2, end == bytes.npos ? end : end - 2);
        store.push_back(stored(
            static_cast<unsigned char>(bytes[0]), static_cast<unsigned char>(bytes[1]), body));
        bytes = end == bytes.npos ? std::string_view{} : bytes.substr(end + 1);
    }
    must(archive::highest_number(k_job, store) >= 0);
    const auto read = archive::read_journal(k_job, store);
    if (!read.ok())
        return check_refusal(read.refusal());
    must(read->moments.size() == read->names.size() + 1);
    must(read->words.size() == read->names.size());
    must(read->cursor < read->moments.size());
    must(!read->bases.empty() && read->turn >= 0);
    must(read->is_whole || read->trouble);
    for (const archive::Branch& branch : read->branches)
        must(!branch.keys.empty() && archive::read_file(written(branch.moment)).ok());
    if (read->trouble)
        check_refusal(*read->trouble);
    must(archive::read_file(written(read->moments.back())).ok());
}

void cards(std::string_view bytes) {
    const auto card = archive::read_card(bytes);
    if (card.ok())
        must(archive::read_card(archive::write_card(*card)).value() == *card);
    else
        check_refusal(card.refusal());
    const auto point = archive::read_point(bytes);
    if (point.ok())
        must(archive::read_point(archive::write_point(point->point, point->file)).ok());
    else
        check_refusal(point.refusal());
    const archive::SeenDays days = archive::read_days(bytes);
    must(archive::read_days(archive::write_days(days)).count == days.count);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const std::string bytes(data + 1, data + size);
    switch (data[0] % 5) {
    case 0:
        records(bytes);
        break;
    case 1:
        steps(bytes);
        break;
    case 2:
        progress(bytes);
        break;
    case 3:
        cards(bytes);
        break;
    default:
        journals(bytes);
    }
    return 0;
}
