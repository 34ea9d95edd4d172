// Sheets and templates as a shell asks for them: paper_command.h, opened.h.

#include "cli/ended.h"
#include "cli/opened.h"
#include "cli/paper_command.h"

#include <doctest/doctest.h>

using namespace treadle;
using cli_test::content;
using cli_test::Ended;
using cli_test::Folder;
using cli_test::run;

namespace {

const std::string k_demo = TREADLE_SOURCE_DIR "/assets/demo/demo-inch.json";

std::string sheet_with(const Folder& folder, const std::string& words) {
    const std::string out = (folder.path / "sheet.html").string();
    const Ended ended = run("sheet " + k_demo + " --out " + out + " " + words);
    CHECK_MESSAGE(ended.code == 0, ended.out);
    return content(out);
}
bool has(const std::string& text, const char* what) { return text.find(what) != std::string::npos; }

} // namespace

TEST_CASE("a worksheet holds only the sheets that are asked for") {
    const Folder folder;
    const std::string cutting = sheet_with(folder, "--only cutting,tools");
    CHECK(has(cutting, "<h2>Bars to cut"));
    CHECK(has(cutting, "<h2>Punches and dies to fetch"));
    for (const char* other : {"<h2>Set-ups in order",
                              "<h2>Part drawings",
                              "<h2>Working sheets",
                              "<h2>Parts and verdicts"})
        CHECK_FALSE(has(cutting, other));
    // It goes to the shear alone, with the shear's cautions and no other tool's.
    CHECK(has(cutting, "Flat shear: hold-down"));
    CHECK_FALSE(has(cutting, "Brake: the sheet"));
    // Whatever is printed, the notice is.
    CHECK(has(cutting, "class=\"safety\""));
    CHECK(has(sheet_with(folder, "--only set-ups"), "<h2>Cautions"));
}

TEST_CASE("paper, units and date are as asked, and each sheet says which job it is of") {
    const Folder folder;
    const std::string sheet =
        sheet_with(folder, "--paper a4 --units both --date '12 March' --only summary");
    CHECK(has(sheet, "<body class=\"a4\">"));
    CHECK(has(sheet, "8 (203.2)")); // a plate of 8 in, in both
    CHECK(has(sheet, " · 12 March · job "));
    // 8 in x 10 in in millimetres alone: no inch figure is left in the list of parts.
    const std::string metric = sheet_with(folder, "--units metric --only summary");
    CHECK(has(metric, "203.2"));
    CHECK_FALSE(has(metric, "8 (203.2)"));
    CHECK(has(metric, "<dd>millimetre</dd>"));
}

TEST_CASE("templates are listed with their pages, and written") {
    const Folder folder;
    const Ended list = run("template " + k_demo + " --list");
    CHECK(list.code == 0);
    CHECK(has(list.out, R"({"key":"holes/p1","title":"HB1: holes","pages":2})"));
    const std::string out = (folder.path / "t.html").string();
    CHECK(run("template " + k_demo + " --key holes/p1 --out " + out).code == 0);
    CHECK(has(content(out), "class=\"bar level-mm\""));
    CHECK(run("template " + k_demo + " --all --paper a4 --out " + out).code == 0);
    CHECK(has(content(out), "full-a4"));
}

TEST_CASE("what cannot be printed is refused at its word, and nothing is written") {
    const Folder folder;
    const std::string out = (folder.path / "t.html").string();
    const auto refused = [&](const std::string& words, const char* field) {
        CAPTURE(words);
        const Ended ended = run(words);
        CHECK(ended.code == 2);
        CHECK(ended.out.rfind(std::string(R"({"error":{"field":")") + field + '"', 0) == 0);
        CHECK(folder.files() == 0);
    };
    refused("sheet " + k_demo + " --out " + out + " --paper legal", "paper");
    refused("sheet " + k_demo + " --out " + out + " --units cubits", "units");
    refused("sheet " + k_demo + " --out " + out + " --only poems", "only");
    refused("sheet " + k_demo, "out");
    refused("sheet --out " + out, "file");
    refused("template " + k_demo + " --out " + out, "key");
    refused("template " + k_demo + " --out " + out + " --key holes/none", "key");
    refused("template " + k_demo + " --all --out " + out + " --factor-x 1.3", "factor");
    refused("template " + k_demo + " --all --out " + out + " --factor-y wide", "factor-y");
    refused("template " + k_demo + " --all", "out");
}
