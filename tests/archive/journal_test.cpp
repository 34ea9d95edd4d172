// Steps and records that came from elsewhere or were damaged: history.cpp, journal.cpp.

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
        const std::string key = archive::head_key(k_job);
        std::erase_if(bytes, [&](const StoredBytes& one) { return one.key == key; });
        bytes.push_back({key, archive::write_head(head)});
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
    CHECK(field_of(replaced(good, "\"version\":1", "\"version\":2")) == "version");
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
    CHECK(journal.base == base);
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
        REQUIRE(journal.moments.back().job.name == "Name 2");
        REQUIRE(journal.cursor == 2);
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

TEST_CASE("two writers upon one state keep both ways, and the head says which is meant") {
    Store store(2);
    const RecordName other{3, "b2"};
    store.keep(
        archive::RecordKind::step,
        other,
        store.names[1],
        archive::write_step(named(store.start, "Name 1"), named(store.start, "Other"), "name"));
    CHECK(store.read().moments.back().job.name == "Name 2");
    store.put_head({store.names[0], other, other});
    const archive::ReadJournal journal = store.read();
    CHECK_FALSE(journal.trouble.has_value());
    CHECK(journal.moments.back().job.name == "Other");
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
