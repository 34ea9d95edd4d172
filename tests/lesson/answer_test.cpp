#include "lesson/answer.h"
#include "lesson/figure.h"
#include "lesson/lessons.h"
#include "lesson/numbers.h"

using namespace treadle;
using namespace treadle::lesson;

namespace {

double tons(const base::Result<AnyQuantity>& figure) {
    REQUIRE(figure.ok());
    return quantity::to_us_tons(*std::get_if<Force>(&*figure));
}

double mistaken_tons(const Mistake& mistake) {
    const Asked asked = tests::punching().asked;
    return tons(mistaken(mistake, asked, asked.in, tests::tables()));
}

} // namespace

TEST_CASE("an answer is the figure of the calculation") {
    const Asked asked = tests::punching().asked;
    const auto solved = solve(asked.calc, asked.in, "force", tests::tables());
    REQUIRE(solved.ok());
    // pi x 1 x 0.5 x 50 / 2 US ton
    CHECK(quantity::to_us_tons(*std::get_if<Force>(&solved->figure)) ==
          doctest::Approx(39.2699).epsilon(1e-5));
    // Stripping and work come after the force and answer other questions.
    REQUIRE(solved->workings.size() == 1);
    const auto work = solve(asked.calc, asked.in, "work", tests::tables());
    REQUIRE(work.ok());
    CHECK(work->workings.size() == 3);
    CHECK(solve(asked.calc, asked.in, "nonsense", tests::tables()).refusal().field == "answer");
    CHECK(solve("no.such", asked.in, "force", tests::tables()).refusal().field == "calc");
    CHECK(solve("running.places",
                {{"length", "20 in"}, {"first", "1 in"}, {"last", "1 in"}, {"count", "4"}},
                "positions",
                tests::tables())
              .refusal()
              .reason.find("list") != std::string::npos);
}

TEST_CASE("a mistake is the same calculation with one thing changed") {
    Mistake half;
    half.scaled = {{"size", 0.5}};
    CHECK(mistaken_tons(half) == doctest::Approx(39.2699 / 2).epsilon(1e-5));
    Mistake factor;
    factor.times = 1.25;
    CHECK(mistaken_tons(factor) == doctest::Approx(39.2699 * 1.25).epsilon(1e-5));
    Mistake other;
    other.in = {{"shear_strength", "40 ksi"}};
    CHECK(mistaken_tons(other) == doctest::Approx(39.2699 * 0.8).epsilon(1e-5));
    Mistake grade;
    grade.without = {"shear_strength"};
    grade.in = {{"material", "A36"}}; // 0.8 x 80 ksi
    CHECK(mistaken_tons(grade) == doctest::Approx(39.2699 * 64 / 50).epsilon(1e-4));
    Mistake area; // pi/4 x 1 x 50 / 2
    area.calc = "shear.bar";
    CHECK(mistaken_tons(area) == doctest::Approx(19.6350).epsilon(1e-5));
    Mistake filled_in;
    filled_in.in = {{"size", "{thickness}"}};
    CHECK(mistaken_tons(filled_in) == doctest::Approx(39.2699 / 2).epsilon(1e-5));
    Mistake more;
    more.add = "2 ton";
    CHECK(mistaken_tons(more) == doctest::Approx(41.2699).epsilon(1e-5));
    Mistake plus;
    plus.plus = Other{"shear.bar", {}, "force"};
    CHECK(mistaken_tons(plus) == doctest::Approx(39.2699 + 19.6350).epsilon(1e-5));
    Mistake less;
    less.less = Other{"shear.bar", {}, "force"};
    CHECK(mistaken_tons(less) == doctest::Approx(39.2699 - 19.6350).epsilon(1e-5));
    Mistake stripping;
    stripping.output = "stripping";
    CHECK(mistaken_tons(stripping) < 39.0);
}

TEST_CASE("two inputs are swapped, and only two that are there") {
    const Asked asked = tests::punching().asked;
    Mistake swapped;
    swapped.calc = "notch.force";
    const calc::Input::Object notch{{"shape", "rectangle"},
                                    {"width", "1 in"},
                                    {"depth", "2 in"},
                                    {"thickness", "1/4 in"},
                                    {"shear_strength", "50 ksi"}};
    const Asked of_notch{"notch.force", notch, {}, "force"};
    Mistake other_way;
    other_way.swapped = {"width", "depth"};
    // (1 + 2 x 2) x 1/4 x 50 / 2 = 31.25; swapped (2 + 2 x 1): 25
    CHECK(tons(mistaken({}, of_notch, notch, tests::tables())) == doctest::Approx(31.25));
    CHECK(tons(mistaken(other_way, of_notch, notch, tests::tables())) == doctest::Approx(25.0));
    Mistake wrong;
    wrong.swapped = {"width"};
    CHECK_FALSE(mistaken(wrong, of_notch, notch, tests::tables()).ok());
    wrong.swapped = {"width", "nothing"};
    CHECK_FALSE(mistaken(wrong, of_notch, notch, tests::tables()).ok());
    Mistake scaled;
    scaled.scaled = {{"nothing", 2.0}};
    CHECK(mistaken(scaled, asked, asked.in, tests::tables()).refusal().field == "nothing");
    scaled.scaled = {{"shape", 2.0}};
    CHECK(mistaken(scaled, asked, asked.in, tests::tables()).refusal().field == "shape");
}

TEST_CASE("a trial is planned by the plan, with its reasons") {
    const Step& step = tests::built_in()[0].lesson.steps[1];
    REQUIRE(step.break_it.has_value());
    const Trial& trial = step.break_it->trial;
    const TrialPlan plan =
        plan_trial(trial.parts[0], trial, {UnitSystem::inch, 16}, tests::catalog());
    CHECK(plan.outcome == plan::Outcome::does_not_fit);
    CHECK(plan.verdict == "does not fit");
    REQUIRE_FALSE(plan.reasons.empty());
    CHECK(plan.reasons[0].find("50.0 ton") != std::string::npos);
    CHECK(plan.part.find("A36") != std::string::npos);
}

TEST_CASE("what is given is said in the calculation's words") {
    const Asked asked = tests::punching().asked;
    const auto lines = given_lines(asked.calc, asked.in);
    REQUIRE(lines.size() == 4);
    CHECK(lines[2].rfind("thickness: 1/2 in", 0) == 0);
    CHECK(lines[3].rfind("shear strength: 50 ksi", 0) == 0); // the underline is for files
    CHECK(output_words("punch.force", "force") == "force of the stroke");
    CHECK(output_words("no.such", "force") == "force");
}
