// Steps and records that came from elsewhere or were damaged: history.cpp, journal.cpp,
// journal_read.cpp.

#include "archive/archive.h"
#include "archive/demo_files.h"
#include "archive/history.h"
#include "archive/journal.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace treadle;
using archive::Moment;
using archive::RecordName;
using archive::StoredBytes;
using archive_test::demo;
using archive_test::replaced;

namespace {

Moment demo_moment() {
    auto file = archive::read_file(demo("demo-inch.json"));
    REQUIRE(file.ok());
    return {file->job, std::make_shared<const equipment::Shop>(file->shop)};
}

Moment named(Moment at, const std::string& name) {
    at.job.name = name;
    return at;
}

Moment with_count(Moment at, std::size_t part, int count) {
    job::Part changed = *at.job.parts[part];
    changed.count = count;
    at.job.parts[part] = std::make_shared<const job::Part>(changed);
    return at;
}

std::string written(const Moment& at) { return archive::write_file(at.job, *at.shop); }

std::string field_of(const std::string& bytes) {
    const auto step = archive::read_step(bytes);
    return step.ok() ? "read" : step.refusal().field;
}

constexpr const char* k_job = "main";

/// A store with five names of the job, one after the other, and the head.
struct Store {
    Moment start = demo_moment();
    std::vector<StoredBytes> bytes;
    std::vector<RecordName> names;
    long long turn = 0;

    explicit Store(int steps = 5) {
        RecordName at{1, "a1"};
        names.push_back(at);
        keep(archive::RecordKind::base, at, std::nullopt, written(start));
        Moment now = start;
        for (int i = 1; i <= steps; ++i) {
            const Moment next = named(now, "Name " + std::to_string(i));
            const RecordName before = at;
            at.number += 1;
            keep(archive::RecordKind::step, at, before, archive::write_step(now, next, "name"));
            names.push_back(at);
            now = next;
        }
        put_head({names.front(), names.back(), names.back()});
    }
    void keep(archive::RecordKind kind,
              const RecordName& name,
              const std::optional<RecordName>& follows,
              const std::string& body) {
        bytes.push_back(
            {archive::record_key(k_job, kind, name), archive::write_record(name, follows, body)});
    }
    void put_head(const archive::Head& head) {
        bytes.push_back({archive::head_key(k_job, ++turn), archive::write_head(head)});
    }
    void snapshot(std::size_t state, long long number) {
        const RecordName name{number, "a1"};
        keep(archive::RecordKind::base,
             name,
             names[state],
             written(named(start, "Name " + std::to_string(state))));
    }
    StoredBytes& of(archive::RecordKind kind, std::size_t name) {
        const std::string key = archive::record_key(k_job, kind, names[name]);
        const auto found = std::find_if(
            bytes.begin(), bytes.end(), [&](const StoredBytes& one) { return one.key == key; });
        REQUIRE(found != bytes.end());
        return *found;
    }
    StoredBytes& head() { return bytes.back(); }
    [[nodiscard]] archive::ReadJournal read() const {
        auto journal = archive::read_journal(k_job, bytes);
        REQUIRE(journal.ok());
        return std::move(journal).value();
    }
};

} // namespace

TEST_CASE("a step from elsewhere is refused with its field") {
    const Moment before = demo_moment();
    const Moment after = with_count(named(before, "Another"), 1, 7);
    const std::string good = archive::write_step(before, after, "words");
    REQUIRE(field_of(good) == "read");
    CHECK(field_of(replaced(good, "treadle-step", "treadle-job")) == "format");
    CHECK(field_of(replaced(good, "\"version\":1", "\"version\":3")) == "version");
    CHECK(field_of(replaced(good, "\"version\":1", "\"version\":0")) == "version");
    CHECK(field_of(replaced(good, "\"words\"", "\"wordz\"")) == "words");
    CHECK(field_of(replaced(good, "\"count\":7", "\"count\":0")) == "parts[0].count");
    CHECK(field_of(replaced(good, "\"count\":7", "\"count\":\"7\"")) == "parts[0].count");
    CHECK(field_of(replaced(good, "\"denominator\":16", "\"denominator\":15")) ==
          "header.style.denominator");
    CHECK(field_of(replaced(good, "\"words\"", "\"more\":1,\"words\"")) == "more");
    CHECK(field_of(replaced(good, "\"parts\"", "\"at\":-1,\"parts\"")) == "at");
    CHECK(field_of(replaced(good, "\"parts\"", "\"out\":-1,\"parts\"")) == "out");
    CHECK(field_of("") == "file");
    CHECK(field_of(good.substr(0, good.size() / 2)) == "file");
}

TEST_CASE("a step for another job is refused and leaves none behind") {
    const Moment before = demo_moment();
    Moment less = before;
    less.job.parts.pop_back();
    const auto step = [](const Moment& from, const Moment& to) {
        return archive::read_step(archive::write_step(from, to, "")).value();
    };
    const std::size_t last = before.job.parts.size() - 1;
    const auto changed = step(before, with_count(before, last, 77));
    const auto refused = archive::apply_step(less, changed);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.refusal().field == "parts");
    const auto removed = archive::apply_step(less, step(before, less));
    REQUIRE_FALSE(removed.ok());
    CHECK(removed.refusal().field == "out");
    const auto doubled = archive::apply_step(before, step(less, before));
    REQUIRE_FALSE(doubled.ok());
    CHECK(doubled.refusal().field == "in");
}

TEST_CASE("a journal is read to its last step, with undo where it stood") {
    Store store;
    store.put_head({store.names[0], store.names[5], store.names[3]});
    const archive::ReadJournal journal = store.read();
    CHECK_FALSE(journal.trouble.has_value());
    REQUIRE(journal.moments.size() == 6);
    CHECK(journal.cursor == 3);
    CHECK(journal.moments[0].job.name == store.start.job.name);
    CHECK(journal.moments[3].job.name == "Name 3");
    CHECK(journal.moments[5].job.name == "Name 5");
    CHECK(archive::highest_number(k_job, store.bytes) == 6);
}

TEST_CASE("a later base stands for the steps before it") {
    Store store;
    const RecordName base{7, "a1"};
    store.keep(
        archive::RecordKind::base, base, store.names[2], written(named(store.start, "Name 2")));
    store.put_head({base, store.names[5], store.names[2]});
    std::erase_if(store.bytes, [&](const StoredBytes& one) {
        return one.key == archive::record_key(k_job, archive::RecordKind::base, store.names[0]) ||
               one.key == archive::record_key(k_job, archive::RecordKind::step, store.names[1]);
    });
    const archive::ReadJournal journal = store.read();
    CHECK_FALSE(journal.trouble.has_value());
    REQUIRE(journal.bases.size() == 1);
    CHECK(journal.bases.front().record == base);
    CHECK(journal.bases.front().state == store.names[2]);
    CHECK(journal.names.size() == 3);
    CHECK(journal.cursor == 0);
    CHECK(journal.moments.front().job.name == "Name 2");
    CHECK(journal.moments.back().job.name == "Name 5");
}

TEST_CASE("a damaged step ends the journal before it, wherever one bit is wrong") {
    const std::size_t length = Store().of(archive::RecordKind::step, 3).bytes.size();
    for (std::size_t at = 0; at < length; at += 7) {
        Store store;
        store.of(archive::RecordKind::step, 3).bytes[at] ^= 1;
        const archive::ReadJournal journal = store.read();
        REQUIRE(journal.trouble.has_value());
        REQUIRE_FALSE(journal.is_whole);
        REQUIRE(journal.moments.back().job.name == "Name 2");
        REQUIRE(journal.cursor == 2);
        REQUIRE(journal.branches.empty());
    }
}

TEST_CASE("a step that reads well and does not fit ends the journal before it") {
    Store store(2);
    const RecordName next{4, "a1"};
    Moment less = store.start;
    less.job.parts.erase(less.job.parts.begin() + 1, less.job.parts.end());
    store.keep(archive::RecordKind::step,
               next,
               store.names[2],
               archive::write_step(less, with_count(store.start, 1, 9), "another job's"));
    store.put_head({store.names[0], next, next});
    const archive::ReadJournal journal = store.read();
    REQUIRE(journal.trouble.has_value());
    CHECK(journal.trouble->field == "in");
    CHECK(journal.names.size() == 2);
    CHECK(journal.cursor == 2);
}

TEST_CASE("a missing step is told, and so is a head that cannot be read") {
    Store missing;
    missing.of(archive::RecordKind::step, 5).key = "elsewhere";
    CHECK(missing.read().trouble.has_value());
    CHECK(missing.read().moments.back().job.name == "Name 4");

    Store torn;
    torn.head().bytes.pop_back();
    const archive::ReadJournal journal = torn.read();
    REQUIRE(journal.trouble.has_value());
    CHECK(journal.moments.back().job.name == "Name 5");
    CHECK(journal.cursor == 5);

    Store newer;
    newer.head().bytes = replaced(newer.head().bytes, "treadle-head 1", "treadle-head 2");
    CHECK(newer.read().trouble->field == "version");
}

TEST_CASE("a bad step before a later snapshot costs older undo and nothing else") {
    Store store;
    store.snapshot(4, 50);
    store.of(archive::RecordKind::step, 3).bytes[90] ^= 1;
    const archive::ReadJournal journal = store.read();
    CHECK(journal.is_whole);
    REQUIRE(journal.trouble.has_value());
    CHECK(journal.start == store.names[4]);
    CHECK(journal.moments.back().job.name == "Name 5");
    CHECK(journal.cursor == 1);
    CHECK(journal.branches.empty());
    // The bad one, and what only it led on from: two steps and the first base.
    CHECK(journal.unread.size() >= 2);
    REQUIRE(journal.bases.size() == 1);
    CHECK(journal.bases.front().record.number == 50);
}

TEST_CASE("a bad snapshot is passed over for the one before it, wherever one bit is wrong") {
    Store sound;
    sound.snapshot(3, 50);
    const std::size_t length = sound.bytes.back().bytes.size();
    for (std::size_t at = 0; at < length; at += 977) {
        Store store;
        store.snapshot(3, 50);
        store.bytes.back().bytes[at] ^= 1;
        const archive::ReadJournal journal = store.read();
        REQUIRE(journal.is_whole);
        REQUIRE(journal.trouble.has_value());
        REQUIRE(journal.moments.size() == 6);
        REQUIRE(journal.moments.back().job.name == "Name 5");
        REQUIRE(journal.unread.size() == 1);
    }
}

TEST_CASE("a bad first snapshot costs the undo before the next one") {
    Store store;
    store.snapshot(2, 50);
    store.of(archive::RecordKind::base, 0).bytes[100] ^= 1;
    const archive::ReadJournal journal = store.read();
    CHECK(journal.is_whole);
    CHECK(journal.start == store.names[2]);
    CHECK(journal.moments.size() == 4);
    CHECK(journal.moments.back().job.name == "Name 5");
}

TEST_CASE("the latest head that reads is taken, and what was done after it is found") {
    Store store(3);
    const RecordName next{9, "a1"};
    store.keep(archive::RecordKind::step,
               next,
               store.names[3],
               archive::write_step(named(store.start, "Name 3"), named(store.start, "Last"), "n"));
    store.put_head({store.names[0], next, next});
    store.head().bytes[30] ^= 1;
    const archive::ReadJournal journal = store.read();
    CHECK(journal.is_whole);
    REQUIRE(journal.trouble.has_value());
    CHECK(journal.turn == 2);
    CHECK(journal.moments.back().job.name == "Last");
    CHECK(journal.cursor == 4);
}

TEST_CASE("a head of pages before turns counts as turn nothing") {
    Store store(2);
    store.head().key = archive::old_head_key(k_job);
    const archive::ReadJournal journal = store.read();
    CHECK_FALSE(journal.trouble.has_value());
    CHECK(journal.turn == 0);
    CHECK(journal.is_whole);
    CHECK(journal.moments.back().job.name == "Name 2");
}

TEST_CASE("two writers upon one state keep both ways, and the head says which is meant") {
    Store store(2);
    const RecordName other{3, "b2"};
    store.keep(
        archive::RecordKind::step,
        other,
        store.names[1],
        archive::write_step(named(store.start, "Name 1"), named(store.start, "Other"), "name"));
    const archive::ReadJournal beside = store.read();
    CHECK(beside.is_whole);
    CHECK_FALSE(beside.trouble.has_value());
    CHECK(beside.moments.back().job.name == "Name 2");
    REQUIRE(beside.branches.size() == 1);
    CHECK(beside.branches.front().moment.job.name == "Other");
    REQUIRE(beside.branches.front().keys.size() == 1);
    CHECK(beside.branches.front().keys.front() ==
          archive::record_key(k_job, archive::RecordKind::step, other));
    store.put_head({store.names[0], other, other});
    const archive::ReadJournal journal = store.read();
    CHECK_FALSE(journal.trouble.has_value());
    CHECK(journal.moments.back().job.name == "Other");
    REQUIRE(journal.branches.size() == 1);
    CHECK(journal.branches.front().moment.job.name == "Name 2");
}

TEST_CASE("a way beside the present that has a base at its end still names its records") {
    Store store(2);
    const RecordName other{3, "b2"};
    const Moment beside = named(store.start, "Other");
    store.keep(archive::RecordKind::step,
               other,
               store.names[1],
               archive::write_step(named(store.start, "Name 1"), beside, "name"));
    store.keep(archive::RecordKind::base,
               other,
               std::nullopt,
               archive::write_file(beside.job, *beside.shop));
    const archive::ReadJournal journal = store.read();
    REQUIRE(journal.branches.size() == 1);
    CHECK(journal.branches.front().moment.job.name == "Other");
    REQUIRE(journal.branches.front().keys.size() == 1);
    CHECK(journal.branches.front().keys.front() ==
          archive::record_key(k_job, archive::RecordKind::step, other));
}

TEST_CASE("without a base that can be read there is no job") {
    Store store;
    store.of(archive::RecordKind::base, 0).bytes[100] ^= 1;
    const auto journal = archive::read_journal(k_job, store.bytes);
    REQUIRE_FALSE(journal.ok());
    CHECK(journal.refusal().field == "sum");
    CHECK_FALSE(archive::read_journal(k_job, {}).ok());
}

TEST_CASE("a record under the name of another is not taken") {
    Store store;
    store.of(archive::RecordKind::step, 4).bytes = store.of(archive::RecordKind::step, 5).bytes;
    CHECK(store.read().moments.back().job.name == "Name 3");
}
