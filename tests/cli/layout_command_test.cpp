// `treadle layout`: layout_command.cpp.

#include "archive/archive.h"
#include "cli/ended.h"
#include "cli/layout_command.h"

#include <doctest/doctest.h>

using namespace treadle;
using cli_test::run;

namespace {

const std::string k_ring = "layout ring 'bar=round 1/2 in' 'diameter=8 in' grade=A36";

std::string refused_field(const std::vector<std::string>& words) {
    const auto answer = cli::layout_answer(words);
    return answer.ok() ? "" : answer.refusal().field;
}

} // namespace

TEST_CASE("the list has every kind with its inputs") {
    const auto ended = run("layout --list");
    CHECK(ended.code == 0);
    for (const char* kind :
         {"guard-run", "guard-stair", "fence-run", "frame", "pipe-branch", "eye"})
        CHECK(ended.out.find(std::string(R"("kind":")") + kind) != std::string::npos);
    CHECK(ended.out.find(R"("required":true)") != std::string::npos);
}

TEST_CASE("a layout is said with parts, rules, figures and workings") {
    const auto ended = run(k_ring + " --mark R7");
    CHECK(ended.code == 0);
    CHECK(ended.out.find("R7-R  1 x Round 1/2") != std::string::npos);
    CHECK(ended.out.find("meets bar radius") != std::string::npos);
    CHECK(ended.out.find("inside diameter: 8 in") != std::string::npos);
    CHECK(ended.out.find("Caution:") != std::string::npos);
    CHECK(run(k_ring + " --metric").out.find("203.2 mm") != std::string::npos);
}

TEST_CASE("--job gives a job file with the layout and its parts in it") {
    const auto ended = run(k_ring + " --job");
    CHECK(ended.code == 0);
    const auto file = archive::read_file(ended.out);
    REQUIRE(file.ok());
    CHECK(file->job.layouts.size() == 1);
    CHECK(file->job.parts.size() == 1);
    CHECK(file->job.layouts[0].made[0].part == file->job.parts[0]->id);
}

TEST_CASE("what is not understood is refused with its name") {
    CHECK(refused_field({"layout"}) == "kind");
    CHECK(refused_field({"layout", "no-such"}) == "kind");
    CHECK(refused_field({"layout", "ring"}) == "bar");
    CHECK(refused_field({"layout", "ring", "--loud"}) == "layout");
    CHECK(refused_field({"layout", "ring", "hoop"}) == "layout");
    CHECK(refused_field({"layout", "ring", "bar=round 1/2 in", "diameter=8", "grade=A36"}).empty());
    CHECK(run("layout ring bar=blob").code == 2);
}
