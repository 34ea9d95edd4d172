// machine_words.cpp, machine_ticks.cpp and machine_drawing.cpp: a step as the one at the machine
// reads and sees it.

#include "sheet/machine_drawing.h"
#include "sheet/machine_words.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace treadle;
using plan::MachineStep;
using plan::MachineWork;
using sheet_test::Sample;

namespace {

struct AtWork {
    Sample sample;
    plan::MachineRun run;
    AtWork() { make(); }
    void make() {
        run = plan::resume(plan::machine_steps(sample.plan, sample.job, sample.shop), {});
    }
    [[nodiscard]] int index(const std::string& place) const {
        const auto& steps = run.list.steps;
        for (std::size_t i = 0; i < steps.size(); ++i)
            if (steps[i].key.place == place)
                return static_cast<int>(i);
        FAIL("no step " << place);
        return 0;
    }
    [[nodiscard]] const MachineStep& step(const std::string& place) const {
        return run.list.steps[static_cast<std::size_t>(index(place))];
    }
    [[nodiscard]] sheet::MachineWords words(const std::string& place) const {
        return sheet::machine_words(
            run, index(place), sample.plan, sample.job, sample.shop, sample.catalog);
    }
    [[nodiscard]] sheet::Drawing drawing(const std::string& place) const {
        const MachineStep& of = step(place);
        return sheet::draw_machine_step(*sample.plan.parts[static_cast<std::size_t>(of.part)], of);
    }
};

bool says(const std::vector<std::string>& lines, const std::string& words) {
    return std::any_of(lines.begin(), lines.end(), [&](const std::string& line) {
        return line.find(words) != std::string::npos;
    });
}

int heavy(const sheet::Drawing& drawing) {
    int count = 0;
    for (const sheet::Path& path : drawing.paths)
        count += path.pen == sheet::Pen::highlight ? 1 : 0;
    for (const sheet::Circle& circle : drawing.circles)
        count += circle.pen == sheet::Pen::highlight ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("a hole's figures say from which edge, and its lines carry them") {
    const AtWork work;
    const auto words = work.words("part/BP1/2.2/run");
    CHECK(words.mark == "BP1");
    CHECK(words.title == "Punch 13/16 round, hole 2 of 4");
    REQUIRE(words.figures.size() == 2);
    CHECK(words.figures[0].digits == "1-1/2");
    CHECK(words.figures[0].unit == "in");
    CHECK(words.figures[0].from == "from the heavy end");
    CHECK(words.figures[1].digits == "6-1/2");
    CHECK(words.figures[1].from == "from the heavy edge");
    REQUIRE(words.ticks.size() == 1); // only "across" has changed
    CHECK(words.ticks[0] == "Stop set to 6-1/2 in across");
    CHECK(words.done == "punched");
    CHECK(words.spoken.find("across 6-1/2 in from the heavy edge, 4 pieces, fits") !=
          std::string::npos);
}

TEST_CASE("the last word of each step is the beginning of the safety notice") {
    const AtWork work;
    const std::string last = work.words("part/BP1/2.2/run").safety.back();
    CHECK(last == sheet::manual_decides());
    CHECK(std::string(sheet::safety_notice()).rfind(last + " ", 0) == 0);
}

TEST_CASE("metric figures have no fractions") {
    AtWork work;
    work.sample.job.style = {UnitSystem::metric, 16};
    work.sample.make();
    work.make();
    const auto words = work.words("part/BP1/2.2/run");
    CHECK(words.figures[0].digits == "38.1");
    CHECK(words.figures[0].unit == "mm");
    CHECK(words.ticks[0] == "Stop set to 165.1 mm across");
}

TEST_CASE("a set-up says what comes on, what is set and what is tried by hand") {
    const AtWork work;
    int with_punch = 0;
    for (std::size_t i = 0; i < work.run.list.steps.size(); ++i) {
        const MachineStep& step = work.run.list.steps[i];
        if (step.kind != MachineWork::set_up)
            continue;
        const auto words = sheet::machine_words(work.run,
                                                static_cast<int>(i),
                                                work.sample.plan,
                                                work.sample.job,
                                                work.sample.shop,
                                                work.sample.catalog);
        CHECK(words.safety.front().find("power unplugged") != std::string::npos);
        CHECK(words.safety.back().find("manual") != std::string::npos);
        if (!says(words.ticks, "punch 13/16"))
            continue;
        ++with_punch;
        CHECK(says(words.ticks, "On: die "));
        CHECK(says(words.ticks, "Ram up: "));
        CHECK(says(words.ticks, "Stripper gap"));
        CHECK(says(words.ticks, "jogged through by hand"));
    }
    CHECK(with_punch > 0);
}

TEST_CASE("a bend says its stop, how it lies and what is measured") {
    const AtWork work;
    for (const char* place : {"part/HG1/3.1/first", "part/HG1/4.1/first"}) {
        CAPTURE(place);
        const auto words = work.words(place);
        CHECK(says(words.ticks, "First piece bent"));
        CHECK(says(words.ticks, "Measured: angle "));
    }
}

TEST_CASE("the piece is drawn with its datum heavy and one place heavier than the others") {
    const AtWork work;
    for (const char* place : {"part/BP1/1.1/first", // cut
                              "part/BP1/2.1/first", // round hole
                              "part/BP1/2.3/run",
                              "part/BP1/3.1/first", // slot
                              "part/BP1/4.1/first", // corner notch
                              "part/BP1/5.1/first", // V notch
                              "part/CL1/3.1/first", // hole in the other leg
                              "part/RL1/1.1/first"}) {
        CAPTURE(place);
        const auto drawing = work.drawing(place);
        CHECK(heavy(drawing) == 1);
        CHECK(std::any_of(drawing.paths.begin(), drawing.paths.end(), [](const sheet::Path& path) {
            return path.pen == sheet::Pen::datum;
        }));
        CHECK_FALSE(drawing.description.empty());
    }
}

TEST_CASE("marking has no place that is heavier") {
    const AtWork work;
    CHECK(heavy(work.drawing("part/BP1/1.1/mark")) == 0);
    CHECK(work.words("part/BP1/1.1/mark").ticks.at(0).rfind("All 4 pieces are marked BP1", 0) == 0);
}

TEST_CASE("coming back says the step, the count and when") {
    AtWork work;
    work.run.at = work.index("part/BP1/2.2/run");
    for (int i = 0; i < 3; ++i)
        REQUIRE(plan::add_one(work.run)); // the stop, and two pieces
    CHECK(sheet::resume_words(work.run, work.sample.plan, "26 Nov, 10:41") ==
          "You were at step " + std::to_string(work.run.at + 1) +
              ": 2 of 4 punched. Last tap 26 Nov, 10:41.");
    CHECK(sheet::open_words(work.run, work.sample.plan).rfind("Left open: step 1, 0 of ", 0) == 0);
}
