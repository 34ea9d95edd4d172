// `treadle parts` and `treadle check` of every kind: parts_command.cpp, kinds_command.cpp.

#include "archive/bundle.h"
#include "cli/ended.h"
#include "cli/kinds_command.h"
#include "cli/parts_command.h"

#include <doctest/doctest.h>

using namespace treadle;
using cli_test::content;
using cli_test::Ended;
using cli_test::Folder;
using cli_test::run;

namespace {

const std::string k_demo = TREADLE_SOURCE_DIR "/assets/demo/demo-inch.json";

void check_refused(const std::string& words, const char* field) {
    CAPTURE(words);
    const Ended ended = run(words);
    CHECK(ended.code == 2);
    CHECK_MESSAGE(ended.out.rfind(std::string(R"({"error":{"field":")") + field + "\"", 0) == 0,
                  ended.out);
}

} // namespace

TEST_CASE("a parts list is shown row by row, and nothing is written unasked") {
    const Folder folder;
    const std::string list = folder.file("list.csv",
                                         "Mark,Qty,Section,Length,Grade\n"
                                         "A,2,FB 3 x 1/2,12-1/2,A36\nB,2,FB 3 x 1/2,2-Jan,A36\n");
    const Ended ended = run("parts " + list + " --units inch");
    CHECK(ended.code == 0);
    CHECK(ended.out.find(R"("mark": "A")") != std::string::npos);
    CHECK(ended.out.find(R"("length": "12-1/2 in")") != std::string::npos);
    CHECK(ended.out.find(R"("heading": "Length")") != std::string::npos);
    CHECK(ended.out.find("has made a date of this") != std::string::npos);
    CHECK(folder.files() == 1);
}

TEST_CASE("parts of a list become a job, and a job's parts a list") {
    const Folder folder;
    const std::string list = folder.file("list.csv", "A,2,1200\nB,3,800\n");
    const std::string job = (folder.path / "job.json").string();
    check_refused("parts " + list + " --units metric --grade S235JR", "count");
    check_refused("parts " + list + " --out " + job, "units");
    const std::string wide = folder.file("wide.csv", "A;2;RD 20;1.200,5\nB;3;RD 20;800\n");
    CHECK(run("parts " + wide +
              " --units metric --grade S235JR --decimal comma "
              "--map count=2,length=4 --out " +
              job)
              .code == 0);
    CHECK(run("check " + job).out == "{\"ok\":true,\"version\":1,\"name\":\"\",\"parts\":2}\n");
    const Ended csv = run("parts " + job + " --csv");
    CHECK(csv.code == 0);
    CHECK(csv.out.rfind("Mark,Count,Section,Length,Grade,Note\r\n", 0) == 0);
    CHECK(csv.out.find("1200.5 mm") != std::string::npos);
    check_refused("parts " + job + " --map", "command");
    check_refused("parts " + wide + " --map count=9", "map");
    check_refused("parts " + wide + " --units miles", "command");
    check_refused("parts", "file");
}

TEST_CASE("check takes a file of any kind") {
    const Folder folder;
    const auto file = archive::read_file(content(k_demo));
    REQUIRE(file.ok());
    const auto& [job, shop] = *file;
    const std::string jobs = archive::write_bundle(
        {{archive::JobState::kept, *file}, {archive::JobState::trash, *file}});
    const std::string shelf = R"({"format":"treadle-shelf","version":1,"entries":[)"
                              R"({"kind":"job","title":"x","file":"a.json"}]})";
    CHECK(run("check " + folder.file("j", jobs)).out ==
          "{\"ok\":true,\"kind\":\"bundle\",\"jobs\":2}\n");
    CHECK(run("check " + folder.file("s", archive::write_shop_file(shop, UnitSystem::inch)))
              .out.rfind("{\"ok\":true,\"kind\":\"shop\"", 0) == 0);
    CHECK(run("check " + folder.file("h", shelf)).out ==
          "{\"ok\":true,\"kind\":\"shelf\",\"entries\":1}\n");
    CHECK(run("check " + folder.file("l",
                                     "Mark,Qty,Section,Length,Grade\n"
                                     "A,2,FB 3 in x 1/2 in,12 in,A36\n"))
              .out == "{\"ok\":true,\"kind\":\"parts_list\",\"parts\":1,\"refused\":0}\n");
    std::string spoilt = jobs;
    spoilt.replace(spoilt.find("\"trash\""), 7, "\"gone\"");
    check_refused("check " + folder.file("x", spoilt), "jobs[1].state");
    check_refused("check " + folder.file("n", "Mark,Qty\nA,1\n"), "length");
    check_refused("check " + folder.file("e", ""), "file");
}

TEST_CASE("jobs go into one file, and a shop into its own") {
    const Folder folder;
    const std::string metric = TREADLE_SOURCE_DIR "/assets/demo/demo-metric.json";
    const Ended two = run("jobs " + k_demo + " " + metric);
    CHECK(two.code == 0);
    CHECK(archive::read_bundle(two.out)->jobs.size() == 2);
    const Ended three = run("jobs " + folder.file("two.json", two.out) + " " + k_demo);
    CHECK(archive::read_bundle(three.out)->jobs.size() == 3);
    const Ended shop = run("shop " + k_demo);
    CHECK(shop.code == 0);
    CHECK(archive::read_shop_file(shop.out).ok());
    check_refused("jobs", "file");
    check_refused("shop", "file");
    check_refused("jobs " + folder.file("bad.json", "{}"), "format");
}
