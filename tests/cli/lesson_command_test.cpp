// lesson_command.cpp: a lesson with its answers, and what is wrong with one.

#include "cli/ended.h"

#include <doctest/doctest.h>

using namespace treadle;
using cli_test::Ended;
using cli_test::Folder;
using cli_test::run;

namespace {

const std::string k_lesson = TREADLE_SOURCE_DIR "/assets/lessons/1-punching-force.json";

std::string changed(const std::string& from, const std::string& to) {
    std::string file = cli_test::content(k_lesson);
    const std::size_t at = file.find(from);
    REQUIRE(at != std::string::npos);
    return file.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("a lesson is printed with its answers, as the seed has it") {
    const Ended ended = run("lesson " + k_lesson);
    CHECK(ended.code == 0);
    CHECK(ended.out.find("published: 549.8 kN") != std::string::npos);
    // pi x 20 x 25 x 350 N
    CHECK(ended.out.find("answer: 61.80 ton (549.78 kN)") != std::string::npos);
    CHECK(ended.out.find("Nothing is wrong with it.") != std::string::npos);
    CHECK(run("lesson " + k_lesson + " --seed 1").out == ended.out);
    CHECK(run("lesson " + k_lesson + " --seed 2").out != ended.out);
}

TEST_CASE("words that are no lesson, no seed or not known are refused") {
    for (const char* const words : {"", " a.json b.json", " --seed 1", " --seed", " --other"}) {
        CAPTURE(words);
        CHECK(run(std::string("lesson") + words).code == 2);
    }
    CHECK(run("lesson " + k_lesson + " --seed x").code == 2);
    CHECK(run("lesson " + k_lesson + " --seed 10000").code == 2);
    CHECK(run("lesson " + k_lesson + " --seed -1").code == 2);
    const Ended other = run("lesson " TREADLE_SOURCE_DIR "/assets/demo/demo-inch.json");
    CHECK(other.code == 2);
    CHECK(other.out.rfind(R"({"error":{"field":"format")", 0) == 0);
}

TEST_CASE("check tries a lesson with twenty seeds and names the step that does not work") {
    CHECK(run("check " + k_lesson).out.rfind(R"({"ok":true,"kind":"lesson")", 0) == 0);
    const Folder folder;
    const Ended alike = run(
        "check " + folder.file("alike.json", changed("\"times\": \"1.25\"", "\"times\": \"1\"")));
    CHECK(alike.code == 2);
    CHECK(alike.out.rfind(R"({"error":{"field":"steps[2].mistakes[0]")", 0) == 0);
    const Ended published =
        run("check " + folder.file("other.json", changed("549.8 kN", "550.8 kN")));
    CHECK(published.out.rfind(R"({"error":{"field":"steps[1].published")", 0) == 0);
    const Ended said = run("lesson " + folder.file("said.json", changed("549.8 kN", "550.8 kN")));
    CHECK(said.code == 0);
    CHECK(said.out.find("Wrong with it:") != std::string::npos);
}
