#include "base/result.h"

#include <doctest/doctest.h>

#include <memory>

using namespace treadle::base;

TEST_CASE("a result is an answer or a refusal, never both") {
    const Result<int> answer = 7;
    CHECK(answer.ok());
    CHECK(*answer == 7);
    const Result<int> none = Refusal{"thickness", "has to be above zero", ""};
    CHECK_FALSE(none);
    CHECK(none.refusal() == Refusal{"thickness", "has to be above zero", ""});
    CHECK_FALSE(none.refusal() == Refusal{"width", "has to be above zero", ""});
}

TEST_CASE("an answer can be moved out") {
    Result<std::unique_ptr<int>> answer = std::make_unique<int>(3);
    const std::unique_ptr<int> taken = std::move(answer).value();
    CHECK(*taken == 3);
}
