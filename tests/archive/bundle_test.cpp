// bundle.cpp, json_scan.cpp: several jobs in one file, a shop alone, and what kind a file is.

#include "archive/bundle.h"
#include "archive/demo_files.h"
#include "archive/json_scan.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive::Bundle;
using archive::FileKind;
using archive::JobState;
using archive_test::demo;
using archive_test::replaced;

namespace {

archive::File file_of(const char* name) {
    auto read = archive::read_file(demo(name));
    REQUIRE(read.ok());
    return std::move(read).value();
}

std::string two_jobs() {
    return archive::write_bundle({{JobState::kept, file_of("demo-inch.json")},
                                  {JobState::trash, file_of("demo-metric.json")}});
}

void check_refused(const std::string& bytes, const char* field) {
    const auto read = archive::read_bundle(bytes);
    REQUIRE_FALSE(read.ok());
    CHECK(read.refusal().field == field);
    CHECK_FALSE(read.refusal().reason.empty());
}

} // namespace

TEST_CASE("jobs come back from one file as they were written, with where they lay") {
    const auto read = archive::read_bundle(two_jobs());
    REQUIRE(read.ok());
    CHECK(read->refused.empty());
    REQUIRE(read->jobs.size() == 2);
    CHECK(read->jobs[0].state == JobState::kept);
    CHECK(read->jobs[1].state == JobState::trash);
    for (const archive::BundledJob& job : read->jobs) {
        const auto& [written, shop] = job.file;
        const auto alone = file_of(written.style.system == UnitSystem::inch ? "demo-inch.json"
                                                                            : "demo-metric.json");
        CHECK(archive::write_file(written, shop) == archive::write_file(alone.job, alone.shop));
    }
    CHECK(archive::write_bundle(read->jobs) == two_jobs());
    CHECK(archive::read_bundle(archive::write_bundle({}))->jobs.empty());
}

TEST_CASE("one bad job does not lose the others, and is told with its place") {
    auto read = archive::read_bundle(replaced(two_jobs(), "\"length\": \"8 in\"", "\"length\": 8"));
    REQUIRE(read.ok());
    CHECK(read->jobs.size() == 1);
    REQUIRE(read->refused.size() == 1);
    CHECK(read->refused[0].field == "jobs[0].file.parts[0].length");
    read = archive::read_bundle(replaced(two_jobs(), "\"trash\"", "\"burnt\""));
    REQUIRE(read.ok());
    CHECK(read->jobs.size() == 1);
    REQUIRE(read->refused.size() == 1);
    CHECK(read->refused[0].field == "jobs[1].state");
    std::string deep = "{\"state\":\"kept\",\"file\":" + std::string(100'000, '[') +
                       std::string(100'000, ']') + "},";
    read = archive::read_bundle(replaced(two_jobs(), "[\n{\"state\"", "[\n" + deep + "{\"state\""));
    REQUIRE(read.ok());
    CHECK(read->jobs.size() == 2);
    REQUIRE(read->refused.size() == 1);
    CHECK(read->refused[0].field == "jobs[0].file");
}

TEST_CASE("what is no sound file of jobs is refused as a whole") {
    const std::string head = R"({"format":"treadle-bundle","version":1,"jobs":[)";
    check_refused("", "file");
    check_refused(two_jobs().substr(0, two_jobs().size() / 2), "file");
    check_refused(two_jobs() + "x", "file");
    check_refused(head + "]", "file");
    check_refused(head + "],}", "file");
    check_refused(head + "{\"state\":\"kept\",\"file\":[}]}]}", "file");
    check_refused(R"({"version":1,"jobs":[]})", "format");
    check_refused(R"({"format":"treadle-job","version":1,"jobs":[]})", "format");
    check_refused(R"({"format":"treadle-bundle","jobs":[]})", "version");
    check_refused(R"({"format":"treadle-bundle","version":2,"jobs":[]})", "version");
    check_refused(R"({"format":"treadle-bundle","version":1e9,"jobs":[]})", "version");
    check_refused(R"({"format":"treadle-bundle","version":1})", "jobs");
    check_refused(R"({"format":"treadle-bundle","version":1,"jobs":{}})", "jobs");
    check_refused(head + R"(],"version":1})", "version");
    check_refused(head + R"(],"__proto__":1})", "__proto__");
    check_refused(head + R"({"state":"kept","file":{},"more":1}]})", "jobs[0].more");
    check_refused(R"({"format":"treadle-bundle","":1})", "(no name)");
    const std::string no_text = "f" + std::string(120, '\x80');
    CHECK_FALSE(archive::read_bundle("{\"" + no_text + "\":1}").refusal().field.empty());
    std::string many = head;
    for (int i = 0; i < 501; ++i)
        many += std::string(i == 0 ? "" : ",") + "{}";
    check_refused(many + "]}", "jobs[500]");
    check_refused(std::string(archive::k_largest_bundle + 1, ' '), "file");
}

TEST_CASE("a shop alone comes back as it was written") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const auto [job, shop] = file_of(name);
        const std::string bytes = archive::write_shop_file(shop, job.style.system);
        const auto read = archive::read_shop_file(bytes);
        REQUIRE(read.ok());
        CHECK(archive::write_shop_file(read.value(), job.style.system) == bytes);
        CHECK(archive::write_file(job, read.value()) == archive::write_file(job, shop));
        for (const auto& [what, by, field] :
             {std::tuple{"treadle-shop", "treadle-job", "format"},
              std::tuple{"\"version\": 1", "\"version\": 2", "version"},
              std::tuple{"\"version\": 1", "\"version\": 0", "version"},
              std::tuple{"\"shop\": {", "\"shop\": {\"extra\": 1,", "shop.extra"},
              std::tuple{"\"shop\":", "\"shops\":", "shop"}}) {
            const auto bad = archive::read_shop_file(replaced(bytes, what, by));
            REQUIRE_FALSE(bad.ok());
            CHECK(bad.refusal().field == field);
        }
    }
}

TEST_CASE("a nought below nought is read as nought") {
    archive::File file = file_of("demo-inch.json");
    file.shop.rules.least_margin = 0.0;
    const std::string bytes = archive::write_shop_file(file.shop, UnitSystem::inch);
    const auto read =
        archive::read_shop_file(replaced(bytes, "\"least_margin\": 0", "\"least_margin\": -0.0"));
    REQUIRE(read.ok());
    CHECK(archive::write_shop_file(read.value(), UnitSystem::inch) == bytes);
}

TEST_CASE("what kind a file is") {
    CHECK(archive::kind_of_file(demo("demo-inch.json")) == FileKind::job);
    CHECK(archive::kind_of_file(two_jobs()) == FileKind::bundle);
    CHECK(archive::kind_of_file(archive::write_shop_file(file_of("demo-inch.json").shop,
                                                         UnitSystem::inch)) == FileKind::shop);
    CHECK(archive::kind_of_file("\xEF\xBB\xBF {\"version\":1,\"x\":[{\"format\":\"treadle-job\"}],"
                                "\"format\":\"treadle-shelf\"}") == FileKind::shelf);
    CHECK(archive::kind_of_file("Mark,Qty\nA,1\n") == FileKind::parts_list);
    CHECK(archive::kind_of_file("\xFF\xFEM\0a\0") == FileKind::parts_list);
    for (const char* other :
         {"", "  \n", "{}", "[1]", "{\"format\":\"x\"}", "{\"a\":", "PK\x03\x04"})
        CHECK(archive::kind_of_file(other) == FileKind::unknown);
    CHECK(archive::kind_of_file("\x89PNG\r\n\x1A\n") == FileKind::unknown);
    CHECK(std::string(archive::file_kind_words(FileKind::parts_list)) == "a parts list");
}

TEST_CASE("a text is cut into its values without building them") {
    archive::JsonScan scan(R"({ "a" : "x\"}" , "b":[1,{"c":"]"}], "d" : -1.5e3 })");
    CHECK(scan.take('{'));
    CHECK(scan.take_word() == "a");
    CHECK(scan.take(':'));
    CHECK(scan.take_value() == R"("x\"}")");
    CHECK(scan.take(','));
    CHECK(scan.take_word() == "b");
    CHECK(scan.take(':'));
    CHECK(scan.take_value() == R"([1,{"c":"]"}])");
    CHECK_FALSE(scan.take('}'));
    CHECK(scan.take(','));
    CHECK(scan.take_word() == "d");
    CHECK(scan.take(':'));
    CHECK(scan.take_value() == "-1.5e3");
    CHECK(scan.place() == "line 1, column 49");
    CHECK_FALSE(scan.at_end());
    CHECK(scan.take('}'));
    CHECK(scan.at_end());
    CHECK_FALSE(archive::JsonScan("[1,[2]").take_value());
    CHECK_FALSE(archive::JsonScan("[}").take_value());
    CHECK_FALSE(archive::JsonScan("\"x\\\"").take_value());
    CHECK_FALSE(archive::JsonScan("\"\\u0061\"").take_word());
}
