// What version 1 left is opened by a program whose formats have gone on: to version 2, and jobs with
// layouts from 2 to 3.

#include "archive/archive.h"
#include "archive/bundle.h"
#include "archive/demo_files.h"
#include "archive/history.h"
#include "archive/job_card.h"
#include "archive/journal.h"
#include "archive/lesson_file.h"
#include "archive/progress_file.h"
#include "archive/shelf.h"

#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <regex>
#include <string>
#include <vector>

using namespace treadle;
using archive_test::demo;

namespace {

/// A fixture: a line with a key and a length, then so many bytes.
std::map<std::string, std::string> stored_in(const std::string& name) {
    std::map<std::string, std::string> stored;
    std::ifstream file(TREADLE_SOURCE_DIR "/tests/fixtures/" + name, std::ios::binary);
    for (std::string line; std::getline(file, line);) {
        const std::size_t blank = line.rfind(' ');
        std::string bytes(std::stoul(line.substr(blank + 1)), '\0');
        file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        file.get();
        stored[line.substr(0, blank)] = bytes;
    }
    REQUIRE_FALSE(stored.empty());
    return stored;
}

std::vector<archive::StoredBytes> bytes_of(const std::map<std::string, std::string>& stored) {
    std::vector<archive::StoredBytes> bytes;
    for (const auto& [key, value] : stored)
        bytes.push_back({key, value});
    return bytes;
}

template <class Answer>
void check_too_new(const Answer& answer) {
    REQUIRE_FALSE(answer.ok());
    CHECK(answer.refusal().field == "version");
}

/// The first version that is said, which is the file's own.
std::smatch version_in(const std::string& bytes) {
    static const std::regex version("(\"version\": ?)([0-9]+)");
    std::smatch found;
    REQUIRE(std::regex_search(bytes, found, version));
    return found;
}

std::string version_of(const std::string& bytes) { return version_in(bytes)[2]; }

std::string as_version(const std::string& bytes, const char* version) {
    const std::smatch found = version_in(bytes);
    return found.prefix().str() + found[1].str() + version + found.suffix().str();
}

} // namespace

TEST_CASE("a stored job of version 1 opens with its undo and redo, and goes on as version 2") {
    const auto journal = archive::read_journal("main", bytes_of(stored_in("stored-1.txt")));
    REQUIRE(journal.ok());
    CHECK(journal->is_whole);
    CHECK_FALSE(journal->trouble.has_value());
    CHECK(journal->names.size() == 4);
    CHECK(journal->cursor == 3);
    const archive::Moment& now = journal->moments[journal->cursor];
    CHECK(now.job.name == "Millrace footbridge, second");
    CHECK(now.job.parts[1]->count == 17);
    job::Job next = now.job;
    next.name = "Third";
    const std::string step = archive::write_step(now, {next, now.shop}, "name of the job");
    CHECK(version_of(step) == "2");
    CHECK(archive::apply_step(now, archive::read_step(step).value())->job.name == "Third");
    check_too_new(archive::read_step(as_version(step, "4")));
}

TEST_CASE("jobs of a store with many open whole, and so does what is beside them") {
    const auto stored = stored_in("stored-2.txt");
    int jobs = 0;
    int beside = 0;
    for (const auto& [key, bytes] : stored) {
        CAPTURE(key);
        if (key.rfind("card/", 0) == 0) {
            ++jobs;
            CHECK(archive::read_card(bytes).ok());
            const auto journal = archive::read_journal(key.substr(5), bytes_of(stored));
            REQUIRE(journal.ok());
            CHECK(journal->is_whole);
            CHECK_FALSE(journal->trouble.has_value());
        } else if (key.rfind("point/", 0) == 0) {
            ++beside;
            const auto point = archive::read_point(bytes);
            REQUIRE(point.ok());
            CHECK(archive::read_file(point->file).ok());
        } else if (key.rfind("progress/", 0) == 0) {
            ++beside;
            CHECK(archive::read_progress(bytes).ok());
        }
    }
    CHECK(jobs == 3);
    CHECK(beside == 2);
}

TEST_CASE("work on hold at the machine is there") {
    const auto progress = archive::read_progress(stored_in("stored-1.txt").at("at-machine"));
    REQUIRE(progress.ok());
    REQUIRE(progress->size() == 1);
    const std::string written = archive::write_progress(*progress);
    CHECK(version_of(written) == "2");
    CHECK(archive::read_progress(written)->size() == 1);
    check_too_new(archive::read_progress(as_version(written, "3")));
}

TEST_CASE("files of version 1 are read and written as version 2") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const std::string one = demo(name);
        const auto file = archive::read_file(one);
        REQUIRE(file.ok());
        const std::string two = archive::write_file(file->job, file->shop);
        CHECK(version_of(two) == "2");
        const auto again = archive::read_file(two);
        REQUIRE(again.ok());
        CHECK(archive::write_file(again->job, again->shop) == two);
        check_too_new(archive::read_file(as_version(one, "4")));
        check_too_new(archive::read_file(as_version(one, "0")));
    }
}

TEST_CASE("files of several jobs, a shop alone and a shelf") {
    const auto file = archive::read_file(demo("demo-inch.json"));
    const std::string bundle = archive::write_bundle({{archive::JobState::kept, *file}});
    const auto old = archive::read_bundle(as_version(bundle, "1")); // its own, not the job's
    REQUIRE(old.ok());
    CHECK(old->jobs.size() == 1);
    check_too_new(archive::read_bundle(as_version(bundle, "3")));
    const std::string shop = archive::write_shop_file(file->shop, UnitSystem::inch);
    CHECK(archive::read_shop_file(as_version(shop, "1")).ok());
    check_too_new(archive::read_shop_file(as_version(shop, "3")));
    const std::string shelf = R"({"format": "treadle-shelf", "version": 1, "entries": []})";
    CHECK(archive::read_shelf(shelf).ok());
    check_too_new(archive::read_shelf(as_version(shelf, "3")));
    const std::string lesson = R"({"format": "treadle-lesson", "version": 1, "units": "inch",
        "title": "T", "steps": [{"do": "read", "title": "R"}]})";
    CHECK(archive::read_lesson(lesson).ok());
    check_too_new(archive::read_lesson(as_version(lesson, "3")));
}
