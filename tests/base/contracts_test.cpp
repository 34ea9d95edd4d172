#include "base/contracts.h"
#include "base/result.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle::base;

namespace {
struct Caught {
    std::string condition;
};
void throw_instead(const char* condition, const char*, int) { throw Caught{condition}; }
} // namespace

TEST_CASE("reading the answer of a refusal is our own fault and reaches the handler") {
    set_fault_handler(throw_instead);
    const Result<int> none = Refusal{"thickness", "is missing", ""};
    const Result<int> answer = 1;
    CHECK_THROWS_AS((void)none.value(), Caught);
    CHECK_THROWS_AS((void)answer.refusal(), Caught);
    CHECK_NOTHROW(TREADLE_EXPECT(1 + 1 == 2));
    set_fault_handler(nullptr);
}
