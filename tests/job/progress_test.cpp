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

TEST_CASE("boxes of the worksheet are ticked and cleared by their key, beside the steps") {
    job::Progress progress;
    progress.steps = {{"part/p1/0/run", "sum", 2, 3}};
    CHECK_FALSE(job::is_ticked(progress, "fetch/Punch 13/16 round"));
    job::tick(progress, "fetch/Punch 13/16 round", true);
    job::tick(progress, "fetch/Punch 13/16 round", true);
    CHECK(job::is_ticked(progress, "fetch/Punch 13/16 round"));
    CHECK_FALSE(job::is_ticked(progress, "part/p1/0/run"));
    REQUIRE(progress.steps.size() == 2);
    CHECK_FALSE(job::is_sheet_tick(progress.steps[0]));
    CHECK(job::is_sheet_tick(progress.steps[1]));
    CHECK(job::checked(progress).ok());
    job::tick(progress, "fetch/Punch 13/16 round", false);
    CHECK(progress.steps.size() == 1);
}
