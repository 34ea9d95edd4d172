// The program as a shell runs it: commands.cpp, machine_json.cpp, files.cpp, main.cpp.

#include "archive/archive.h"
#include "cli/commands.h"
#include "cli/ended.h"
#include "cli/files.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <iterator>

using namespace treadle;
using cli_test::content;
using cli_test::Ended;
using cli_test::Folder;
using cli_test::run;
namespace fs = std::filesystem;

namespace {

std::string demo(const char* name) {
    return std::string(TREADLE_SOURCE_DIR "/assets/demo/") + name;
}

/// Exit 2 and nothing but one error object with this field.
void check_refused(const std::string& words, const char* field) {
    CAPTURE(words);
    const Ended ended = run(words);
    CHECK(ended.code == 2);
    const std::string head = std::string(R"({"error":{"field":")") + field + R"(","reason":")";
    CHECK_MESSAGE(ended.out.rfind(head, 0) == 0, ended.out);
    CHECK(ended.out.find('\n') == ended.out.size() - 1);
}

} // namespace

TEST_CASE("a job that does not fit is an answer") {
    const Ended ended = run("plan " + demo("demo-inch.json"));
    CHECK(ended.code == 0);
    CHECK(ended.out.find("\"does_not_fit\"") != std::string::npos);
    CHECK(ended.out.find("\"mark\": \"HT1\"") != std::string::npos);
}

TEST_CASE("the same job gives the same plan, byte for byte") {
    CHECK(run("plan " + demo("demo-metric.json")).out ==
          run("plan " + demo("demo-metric.json")).out);
}

TEST_CASE("each machine of the shop answers, with what stops it") {
    const Ended ended = run("machines " + demo("demo-inch.json"));
    CHECK(ended.code == 0);
    CHECK(ended.out.rfind(R"x({"machines":[{"name":"Demo machine (invented)","whole_job":false,)x",
                          0) == 0);
    CHECK(ended.out.find(R"x("name":"Truck machine (invented)")x") != std::string::npos);
    CHECK(ended.out.find(R"("missing":"other_machines[0].stations[0].flange_clearance")") !=
          std::string::npos);
    CHECK(ended.out.find(R"("reason":"HB1, Punch 13/16 round: fits up to 65 ksi, force: )") !=
          std::string::npos);
    check_refused("machines", "file");
    check_refused("machines /no/such/file.json", "file");
}

TEST_CASE("a place answers what it can do with a metal") {
    const std::string file = "capacity " + demo("demo-inch.json");
    const Ended punch = run(file + " --station punch --grade A36");
    CHECK(punch.code == 0);
    CHECK(punch.out.rfind(R"({"place":"Punch","grade":"A36","kind":"hole","cannot_be_said":null,)",
                          0) == 0);
    // 50 tons, 80 ksi x 0.80, pi x 1 in: 0.497 in; at 58 ksi 0.686 in (worked by hand).
    CHECK(punch.out.find(R"({"x_mm":25.4,"fits_mm":11.1125,"fits_up_to_mm":15.875,)"
                         R"("stopped_by":"force"})") != std::string::npos);
    CHECK(punch.out.find(R"("job":[{"part":"p1","operation":2,"shape":"plate",)"
                         R"("x_mm":20.6375,"thickness_mm":9.525,"outcome":"fits",)") !=
          std::string::npos);
    CHECK(run(file + " --grade A36 --attachment brake --station table").code == 0);
    check_refused(file + " --station punch", "grade");
    check_refused(file + " --grade A36", "station");
    check_refused(file + " --station anvil --grade A36", "station");
    check_refused(file + " --station punch --grade unobtainium", "grade");
    check_refused(file + " --station table --grade A36", "attachment");
    check_refused(file + " --station table --grade A36 --attachment hook", "attachment");
    check_refused(file + " --station punch --grade", "command");
    check_refused("capacity --station punch --grade A36", "file");
}

TEST_CASE("a sound file is said to be sound") {
    const Ended ended = run("check " + demo("demo-metric.json"));
    CHECK(ended.code == 0);
    CHECK(ended.out.rfind(R"({"ok":true)", 0) == 0);
}

TEST_CASE("a worksheet holds each part, and nothing else is left behind") {
    const Folder folder;
    const fs::path out = folder.path / "sheet.html";
    const Ended ended = run("sheet " + demo("demo-inch.json") + " --out " + out.string());
    CHECK(ended.code == 0);
    CHECK(folder.files() == 1);
    const std::string html = content(out);
    const auto file = archive::read_file(content(demo("demo-inch.json")));
    REQUIRE(file.ok());
    for (const job::PartRef& part : file->job.parts) {
        CAPTURE(part->mark);
        CHECK(html.find(part->mark) != std::string::npos);
    }
}

TEST_CASE("what cannot be read is refused and nothing is written") {
    const Folder folder;
    const std::string whole = content(demo("demo-inch.json"));
    const std::string out = (folder.path / "sheet.html").string();
    struct Bad {
        const char* name;
        std::string bytes;
        const char* field;
    };
    const Bad files[] = {
        {"malformed.json", "{\"format\": treadle}", "file"},
        {"truncated.json", whole.substr(0, whole.size() / 2), "file"},
        {"empty.json", "", "file"},
        {"newer.json", R"({"format": "treadle-job", "version": 99})", "version"},
        {"nan.json", R"({"format": "treadle-job", "version": NaN})", "file"},
        {"enormous.json", std::string(archive::k_largest_file + 1, ' '), "file"},
    };
    for (const Bad& bad : files) {
        const std::string path = folder.file(bad.name, bad.bytes);
        check_refused("plan " + path, bad.field);
        check_refused("check " + path, bad.field);
        check_refused("sheet " + path + " --out " + out, bad.field);
        CHECK(content(path) == bad.bytes);
    }
    CHECK(folder.files() == std::size(files));
}

TEST_CASE("an old worksheet stays when a new one cannot be made") {
    const Folder folder;
    const std::string bad = folder.file("bad.json", "{}");
    const std::string out = folder.file("sheet.html", "the old one");
    check_refused("sheet " + bad + " --out " + out, "format");
    CHECK(content(out) == "the old one");
}

TEST_CASE("a worksheet never overwrites the job it is made from") {
    const Folder folder;
    const std::string bytes = content(demo("demo-metric.json"));
    const std::string job = folder.file("job.json", bytes);
    check_refused("sheet " + job + " --out " + job, "out");
    check_refused("sheet " + job + " --out " + folder.path.string(), "out");
    check_refused("sheet " + job + " --out " + (folder.path / "no" / "sheet.html").string(), "out");
    CHECK(content(job) == bytes);
    CHECK(folder.files() == 1);
}

TEST_CASE("words that mean nothing are refused") {
    check_refused("", "command");
    check_refused("dance", "command");
    check_refused("plan", "file");
    check_refused("plan /no/such/file.json", "file");
    check_refused("plan /", "file");
    check_refused("sheet " + demo("demo-inch.json"), "out");
    check_refused("sheet " + demo("demo-inch.json") + " --poem a4", "command");
    check_refused("calc", "calc");
    check_refused("calc punch.force", "in");
    check_refused("calc no.such '{}'", "calc");
    check_refused("calc punch.force '[]'", "in");
    check_refused("calc punch.force '{\"size\": \"1 in\", \"size\": \"2 in\"}'", "size");
}

TEST_CASE("a calculation answers in SI with its working and sources") {
    const Ended ended = run(R"(calc punch.force '{"shape":"round","size":"1 in",)"
                            R"("thickness":"1/4 in","material":"A36"}')");
    CHECK(ended.code == 0);
    CHECK(ended.out.rfind(R"({"calc":"punch.force","out":{"force":{"value":)", 0) == 0);
    CHECK(ended.out.find(R"("unit":"kN")") != std::string::npos);
    CHECK(ended.out.find(R"("working":[{)") != std::string::npos);
    CHECK(ended.out.find(R"("sources":[)") != std::string::npos);
}

TEST_CASE("a working is said in words, in the units asked for") {
    const std::string bar =
        R"(calc shear.bar '{"shape":"round","size":"1 in","shear_strength":"60 ksi"}' --words )";
    // pi / 4 x 1 x 60 = 47.12 kip = 23.56 US ton = 209.6 kN (worked by hand).
    CHECK(run(bar + "inch").out.find("F = 23.56 ton\n") != std::string::npos);
    CHECK(run(bar + "metric").out.find("F = 209.62 kN\n") != std::string::npos);
    CHECK(run(bar + "metric").out.find("Evidence: ") != std::string::npos);
    CHECK(run(bar + "furlong").code == 2);
}

TEST_CASE("the list, the help and the version are there") {
    CHECK(run("calc --list").out.find("\"punch.force\"") != std::string::npos);
    CHECK(run("--help").code == 0);
    CHECK(run("--help").out.find("treadle plan FILE.json") != std::string::npos);
    CHECK(run("--version").out.find("format 2") != std::string::npos);
}

TEST_CASE("lines on standard input are answered one by one, bad ones too") {
    const Ended ended =
        run("calc - < /dev/null; printf 'rubbish\\n{\"calc\":\"no\",\"in\":{}}' | " TREADLE_PROGRAM
            " calc -");
    CHECK(ended.code == 0);
    CHECK(ended.out.find("\"line\"") != std::string::npos);
    CHECK(ended.out.find("\"calc\"") != std::string::npos);
}

TEST_CASE("output that nobody can take is no success") {
    if (fs::exists("/dev/full"))
        CHECK(run("--help > /dev/full").code == 1);
}
