#include <algorithm>

#include "lesson/check.h"
#include "lesson/lessons.h"

using namespace treadle;
using namespace treadle::lesson;

namespace {

bool says(const Lesson& lesson, const std::string& field) {
    const auto faults = faults_of(lesson, 1, tests::catalog());
    return std::any_of(faults.begin(), faults.end(), [&](const base::Refusal& fault) {
        return fault.field == field;
    });
}

} // namespace

TEST_CASE("a sound lesson has no faults") {
    CHECK(faults_of(tests::lesson_of(tests::punching()), 1, tests::catalog()).empty());
}

TEST_CASE("what does not work is named with its step") {
    Step step = tests::punching();
    step.asked.calc = "punch.fource";
    CHECK(says(tests::lesson_of(step), "steps[0].calc"));
    step = tests::punching();
    step.asked.output = "work"; // an energy has no parser
    step.mistakes.clear();
    CHECK(says(tests::lesson_of(step), "steps[0].answer"));
    step = tests::punching();
    step.question = "What does {sise} ask for?";
    CHECK(says(tests::lesson_of(step), "steps[0].question"));
    step = tests::punching();
    step.mistakes[0].words = "{other}";
    CHECK(says(tests::lesson_of(step), "steps[0].mistakes"));
}

TEST_CASE("a mistake that gives the right answer is a fault, and so are two alike") {
    Step step = tests::punching();
    step.mistakes[0].scaled.clear();
    CHECK(says(tests::lesson_of(step), "steps[0].mistakes[0]"));
    step = tests::punching();
    step.mistakes.push_back(step.mistakes[0]);
    step.mistakes[1].step = "Other";
    const auto faults = faults_of(tests::lesson_of(step), 1, tests::catalog());
    CHECK(faults.size() == 1);
}

TEST_CASE("a published figure is compared with ours") {
    Step step = tests::punching();
    step.published = Published{"39.27 ton", "0.005 ton", "by hand", "", base::Evidence::derived};
    CHECK_FALSE(says(tests::lesson_of(step), "steps[0].published"));
    step.published->value = "39.28 ton";
    CHECK(says(tests::lesson_of(step), "steps[0].published"));
    step.published->value = "39.27";
    CHECK(says(tests::lesson_of(step), "steps[0].published.value"));
    step.published->value = "39.27 ton";
    step.published->half = "a bit";
    CHECK(says(tests::lesson_of(step), "steps[0].published.half"));
}

TEST_CASE("what is to break has to break, and at the place that is named") {
    Step step = tests::punching();
    BreakIt break_it;
    break_it.in = {{"thickness", "-1 in"}};
    break_it.refused_at = "thickness";
    step.break_it = break_it;
    CHECK_FALSE(says(tests::lesson_of(step), "steps[0].break_it"));
    step.break_it->refused_at = "size";
    CHECK(says(tests::lesson_of(step), "steps[0].break_it"));
    step.break_it->refused_at = "thickness";
    step.break_it->in = {{"thickness", "1/4 in"}};
    CHECK(says(tests::lesson_of(step), "steps[0].break_it"));
}
