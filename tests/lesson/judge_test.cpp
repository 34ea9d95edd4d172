#include "lesson/judge.h"
#include "lesson/lessons.h"

using namespace treadle;
using namespace treadle::lesson;

namespace {

constexpr PrintStyle k_inch{UnitSystem::inch, 16};

Judgement answered(const Step& step, const char* typed) {
    const auto key = key_of(step, 0, 1, tests::tables());
    REQUIRE(key.ok());
    return judge(*key, typed, k_inch);
}

} // namespace

TEST_CASE("39.27 ton: right, near enough, and wrong") {
    const Step step = tests::punching();
    CHECK(answered(step, "39.27 ton").mark == Mark::right);
    CHECK(answered(step, "349.35 kN").mark == Mark::right); // 39.27 x 8.896443
    CHECK(answered(step, "78540 lbf").mark == Mark::right);
    CHECK(answered(step, "39.8 ton").mark == Mark::within);
    CHECK(answered(step, "38.6 ton").mark == Mark::within);
    CHECK(answered(step, "41 ton").mark == Mark::wrong);
    CHECK(answered(step, "41 ton").words.find("too much") != std::string::npos);
    CHECK(answered(step, "30 ton").words.find("too little") != std::string::npos);
    CHECK(answered(step, "-39.27 ton").mark == Mark::wrong);
}

TEST_CASE("a wrong answer is told by the step that went wrong") {
    const Step step = tests::punching();
    const Judgement radius = answered(step, "19.6 ton");
    CHECK(radius.mark == Mark::wrong_step);
    CHECK(radius.step == "Radius");
    CHECK(radius.words == "Half of 1 in.");
    CHECK(answered(step, "174.7 kN").step == "Radius"); // the same in another unit
    CHECK(answered(step, "39.27 kN").step == "Unit");
    CHECK(answered(step, "3.927 ton").step == "Decimal point");
    CHECK(answered(step, "3927 ton").step == "Decimal point");
}

TEST_CASE("what cannot be read is no answer, and says how one is written") {
    const Step step = tests::punching();
    for (const char* typed : {"", "39.27", "forty ton", "39.27 in", "1/0 ton", "nan ton"}) {
        CAPTURE(typed);
        const Judgement judged = answered(step, typed);
        CHECK(judged.mark == Mark::unreadable);
        CHECK_FALSE(judged.words.empty());
    }
}

TEST_CASE("of two mistakes that lie close the nearer one is named") {
    Step step = tests::punching();
    Mistake near;
    near.step = "Near";
    near.words = "Near.";
    near.times = 0.505;
    step.mistakes.push_back(near);
    CHECK(answered(step, "19.63 ton").step == "Radius"); // 39.27 x 0.5
    CHECK(answered(step, "19.84 ton").step == "Near");   // 39.27 x 0.505
}

TEST_CASE("an amount can be the tolerance, and none is closer than our print") {
    Step step = tests::punching();
    step.tolerance.amount = "3 ton";
    CHECK(answered(step, "41.9 ton").mark == Mark::within);
    CHECK(answered(step, "42.5 ton").mark == Mark::wrong);
    step.tolerance.amount = "0.00001 ton";
    CHECK(is_right(answered(step, "39.27 ton").mark));
    step.tolerance.amount = "3 in";
    CHECK(key_of(step, 0, 1, tests::tables()).refusal().field == "tolerance");
}

TEST_CASE("a question that the calculation refuses has no key") {
    Step step = tests::punching();
    step.asked.in = {{"shape", "round"}};
    CHECK_FALSE(key_of(step, 0, 1, tests::tables()).ok());
    step = tests::punching();
    step.mistakes[0].output = "work"; // of another kind
    CHECK(key_of(step, 0, 1, tests::tables()).refusal().field == "mistakes[0]");
    step.mistakes[0].output = "nothing";
    CHECK(key_of(step, 0, 1, tests::tables()).refusal().field == "mistakes[0]");
}

TEST_CASE("a verdict is right when it is the plan's") {
    Step step;
    step.kind = StepKind::verdict;
    step.wrong_outcomes.push_back({plan::Outcome::fits, "Grade", "Look at the grade."});
    TrialPlan plan;
    plan.outcome = plan::Outcome::fits_up_to;
    plan.verdict = "fits up to 72 ksi";
    CHECK(judge(step, plan, plan::Outcome::fits_up_to).mark == Mark::right);
    CHECK(judge(step, plan, plan::Outcome::fits_up_to).words.find("72 ksi") != std::string::npos);
    const Judgement wrong = judge(step, plan, plan::Outcome::fits);
    CHECK(wrong.mark == Mark::wrong_step);
    CHECK(wrong.step == "Grade");
    CHECK(judge(step, plan, plan::Outcome::does_not_fit).mark == Mark::wrong);
}
