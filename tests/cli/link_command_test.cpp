// `treadle link` and the code on the sheet: link_command.cpp.

#include "cli/ended.h"

#include <doctest/doctest.h>

using namespace treadle;
using cli_test::content;
using cli_test::Ended;
using cli_test::Folder;
using cli_test::run;

namespace {

std::string demo(const char* name) {
    return std::string(TREADLE_SOURCE_DIR "/assets/demo/") + name;
}

void check_refused(const std::string& words, const char* field) {
    CAPTURE(words);
    const Ended ended = run(words);
    CHECK(ended.code == 2);
    const std::string head = std::string(R"({"error":{"field":")") + field + R"(","reason":")";
    CHECK_MESSAGE(ended.out.rfind(head, 0) == 0, ended.out);
}

} // namespace

TEST_CASE("a job file becomes an address, and the address the file") {
    const Folder folder;
    const Ended link = run("link " + demo("demo-metric.json") + " --base https://host/path/");
    REQUIRE(link.code == 0);
    CHECK(link.out.rfind("https://host/path/#j=1.", 0) == 0);
    const std::string address = link.out.substr(0, link.out.size() - 1);
    const Ended back = run("link --read '" + address + "'");
    REQUIRE(back.code == 0);
    const std::string file = folder.file("back.json", back.out);
    CHECK(run("link " + file).out == address.substr(address.find('#') + 1) + "\n");
}

TEST_CASE("what is no job, no link or no address is refused") {
    check_refused("link", "file");
    check_refused("link /no/such/file.json", "file");
    check_refused("link --read 'j=1.AAAA'", "link");
    check_refused("link --read 'j=2.AAAA'", "version");
    check_refused("link --read", "command");
    check_refused("link " + demo("demo-inch.json") + " --base file:///tmp/", "base");
    check_refused("link " + demo("demo-inch.json") + " --read 'j=1.AAAA'", "file");
    check_refused("link --read 'j=1.AAAA' --base https://host/", "base");
    check_refused("link a.json b.json", "command");
}

TEST_CASE("a sheet carries the code where it is said which page opens it") {
    const Folder folder;
    const std::string out = (folder.path / "sheet.html").string();
    const std::string words = "sheet " + demo("demo-metric.json") + " --out " + out;
    CHECK(run(words + " --link-base https://host/").code == 0);
    CHECK(content(out).find("Scan to open this job at https://host/") != std::string::npos);
    check_refused(words + " --link-base file:///tmp/", "link-base");
    check_refused(words + " --link-base", "command");
}
