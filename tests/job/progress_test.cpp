#include "job/progress.h"

#include <doctest/doctest.h>

#include <string>
#include <utility>

using namespace treadle;

namespace {

job::Progress with(job::StepDone step) {
    job::Progress progress;
    progress.steps = {{"set-up/1", "a", 1, 0}, std::move(step)};
    return progress;
}

std::string field_of(job::StepDone step) {
    const auto checked = job::checked(with(std::move(step)));
    REQUIRE_FALSE(checked.ok());
    CHECK_FALSE(checked.refusal().reason.empty());
    return checked.refusal().field;
}

} // namespace

TEST_CASE("counts from nothing to as many pieces as a part may have are sound") {
    CHECK(job::checked(with({"part/a", "b", 0, 0})).ok());
    CHECK(job::checked(with({"part/a", "b", 0, 100000})).ok());
}

TEST_CASE("a place that is empty or there twice, and counts out of range, are refused") {
    CHECK(field_of({"", "b", 0, 0}) == "steps[1].place");
    CHECK(field_of({"set-up/1", "b", 0, 0}) == "steps[1].place");
    CHECK(field_of({"part/a", "b", -1, 0}) == "steps[1].ticked");
    CHECK(field_of({"part/a", "b", 0, 100001}) == "steps[1].pieces");
}
