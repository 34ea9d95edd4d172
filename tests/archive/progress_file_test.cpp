// progress_file.cpp, and the checks of core/job/progress.cpp.

#include "archive/progress_file.h"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace treadle;

namespace {

job::Progress some(const char* name) {
    job::Progress progress;
    progress.job = name;
    progress.steps = {{"set-up/1", "a1", 3, 0}, {"part/a \"b\"/1.2/run", "b2", 1, 4}};
    progress.at = progress.steps.back().place;
    progress.open = progress.held = true;
    progress.note = "coffee";
    progress.when = "26 Nov 10:41";
    return progress;
}

std::string with(const std::string& jobs) {
    return R"({"format":"treadle-progress","version":1,"jobs":[)" + jobs + "]}";
}

void is_refused(const std::string& bytes, const char* field) {
    const auto read = archive::read_progress(bytes);
    REQUIRE_MESSAGE(!read.ok(), bytes);
    CHECK_MESSAGE(read.refusal().field == field, bytes);
    CHECK_FALSE(read.refusal().reason.empty());
}

} // namespace

TEST_CASE("what is written comes back the same") {
    const std::vector<job::Progress> jobs{some("Stair"), some("Gate"), {}};
    const auto read = archive::read_progress(archive::write_progress(jobs));
    REQUIRE(read.ok());
    CHECK(*read == jobs);
    // The example that the schema is judged with is what is written.
    std::ifstream example(TREADLE_SOURCE_DIR "/tests/schema/examples/progress.json");
    CHECK(archive::write_progress(jobs) + "\n" ==
          std::string(std::istreambuf_iterator<char>(example), {}));
}

TEST_CASE("only the latest jobs are kept") {
    std::vector<job::Progress> jobs;
    for (int i = 0; i < 30; ++i)
        jobs.push_back(some(("job " + std::to_string(i)).c_str()));
    const auto read = archive::read_progress(archive::write_progress(jobs));
    REQUIRE(read.ok());
    REQUIRE(read->size() == archive::k_most_progress);
    CHECK(read->front() == jobs.front());
}

TEST_CASE("foreign bytes are refused with their place") {
    is_refused("no json", "file");
    is_refused(R"({"format":"treadle-job","version":1,"jobs":[]})", "format");
    is_refused(R"({"version":1,"jobs":[]})", "format");
    is_refused(R"({"format":"treadle-progress","jobs":[]})", "version");
    is_refused(R"({"format":"treadle-progress","version":2,"jobs":[]})", "version");
    is_refused(R"({"format":"treadle-progress","version":0,"jobs":[]})", "version");
    is_refused(R"({"format":"treadle-progress","version":1})", "jobs");
    is_refused(with(R"({"steps":[]})"), "jobs[0].job");
    is_refused(with(R"({"job":"a","steps":[],"more":1})"), "jobs[0].more");
    is_refused(with(R"({"job":"a","steps":[]},{"job":"a","steps":[]})"), "jobs[1].job");
    is_refused(with(R"({"job":"a","steps":[{"place":"p"}]})"), "jobs[0].steps[0].content");
    is_refused(with(R"({"job":"a","steps":[{"place":"p","content":"c","pieces":1.5}]})"),
               "jobs[0].steps[0].pieces");
    is_refused(with(R"({"job":"a","steps":[{"place":"p","content":"c","pieces":-1}]})"),
               "jobs[0].steps[0].pieces");
    is_refused(with(R"({"job":"a","steps":[{"place":"p","content":"c","ticked":100001}]})"),
               "jobs[0].steps[0].ticked");
    is_refused(with(R"({"job":"a","steps":[{"place":"","content":"c"}]})"),
               "jobs[0].steps[0].place");
    is_refused(
        with(R"({"job":"a","steps":[{"place":"p","content":"c"},{"place":"p","content":"d"}]})"),
        "jobs[0].steps[1].place");
}
