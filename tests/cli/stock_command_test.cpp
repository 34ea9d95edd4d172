// `treadle stock` as a shell runs it: commands.cpp.

#include "cli/ended.h"

#include <doctest/doctest.h>

using namespace treadle;
using cli_test::Ended;
using cli_test::run;

namespace {

const std::string k_demo = TREADLE_SOURCE_DIR "/assets/demo/demo-inch.json";

bool refuses(const std::string& words, const std::string& field) {
    const Ended ended = run(words);
    return ended.code == 2 && ended.out.rfind(R"({"error":{"field":")" + field + '"', 0) == 0;
}

} // namespace

TEST_CASE("the bars of a job are an answer, the same one every time") {
    const Ended ended = run("stock " + k_demo);
    CHECK(ended.code == 0);
    CHECK(ended.out.find("\"whole_bars\": ") != std::string::npos);
    CHECK(ended.out.find("no plan needs fewer") != std::string::npos);
    CHECK(run("stock " + k_demo).out == ended.out);
}

TEST_CASE("more work is asked for by a number") {
    const Ended little = run("stock " + k_demo + " --work 1");
    CHECK(little.code == 0);
    CHECK(little.out.find("\"bars\"") != std::string::npos); // longest first is there at once
    CHECK(refuses("stock " + k_demo + " --work 0", "work"));
    CHECK(refuses("stock " + k_demo + " --work many", "work"));
    CHECK(refuses("stock " + k_demo + " --work", "command"));
}

TEST_CASE("a command about stock without its file is refused") {
    CHECK(refuses("stock", "file"));
    CHECK(refuses("stock nobody.json", "file"));
    CHECK(refuses("stock " + k_demo + " more", "command"));
}
