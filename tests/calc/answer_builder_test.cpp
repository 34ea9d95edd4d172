#include "calc/answer_builder.h"
#include "process/punch.h"

#include <doctest/doctest.h>

using namespace treadle;

namespace {

process::PunchCut cut(Length thickness) {
    return {{geometry::HoleShape::round, inches(1.0), {}}, thickness, ksi(50.0)};
}

} // namespace

TEST_CASE("a figure is its working's result, with the note in front") {
    const auto answer = calc::AnswerBuilder()
                            .add("work", process::punch_work_working(cut(inches(0.25))), "First.")
                            .finish();
    REQUIRE(answer.ok());
    REQUIRE(answer->figures.size() == 1);
    REQUIRE(answer->workings.size() == 1);
    CHECK(std::get<Energy>(answer->figures[0].value) ==
          std::get<Energy>(answer->workings[0].result.value));
    CHECK(answer->workings[0].note.rfind("First. ", 0) == 0);
}

TEST_CASE("one refusal leaves no half answer") {
    const auto answer = calc::AnswerBuilder()
                            .add("force", process::punch_force_working(cut(inches(0.25))))
                            .add("stripping", process::stripping_working(cut({})), "Note.")
                            .show(process::punch_work_working(cut(inches(-1.0))))
                            .finish();
    REQUIRE_FALSE(answer.ok());
    CHECK(answer.refusal().field == "thickness");
}
