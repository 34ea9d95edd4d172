// Weight and length of a piece against the shop's own limits: core/plan/handling.cpp.
//
// Two people together lift 2/3 of the sum of what each lifts alone: HSE guidance L23, from memory.

#include "plan/handling.h"
#include "plan/words.h"

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Carriers;
using quantity::pounds;

namespace {

constexpr PrintStyle k_inch{};

/// 1/2 x 8 x 40 in plate of 7850 kg/m3 is 45.4 lb.
Bench heavy(std::optional<Mass> limit, std::optional<Length> support = std::nullopt) {
    Bench bench;
    bench.shop.rules.lift_limit = limit;
    bench.shop.rules.support_length = support;
    job::Part part = plate(inches(0.5), inches(8.0), inches(40.0));
    part.operations.emplace_back(one_hole(inches(0.8125), inches(2.0), inches(2.0)));
    bench.job.parts.push_back(std::make_shared<const job::Part>(part));
    return bench;
}

plan::Plan plan_of(const Bench& bench) {
    return plan::make_plan(bench.job, bench.shop, bench.catalog);
}

const plan::Check* found(const plan::Plan& plan, plan::Rule rule) {
    for (const plan::Check& check : plan.parts[0]->operations[0].checks)
        if (check.rule == rule)
            return &check;
    return nullptr;
}

} // namespace

TEST_CASE("one person up to the limit, two up to four thirds of it, then a hoist") {
    CHECK(plan::carriers(pounds(30.0), pounds(30.0)) == Carriers::one);
    CHECK(plan::carriers(pounds(30.01), pounds(30.0)) == Carriers::two);
    CHECK(plan::carriers(pounds(39.99), pounds(30.0)) == Carriers::two);
    CHECK(plan::carriers(pounds(40.01), pounds(30.0)) == Carriers::hoist);
}

TEST_CASE("a piece just over the limit warns and its verdict stays") {
    const Mass weight = plan_of(heavy(std::nullopt)).parts[0]->mass_each;
    CHECK(quantity::to_pounds(weight) == doctest::Approx(45.4).epsilon(0.002));
    const plan::Plan at_limit = plan_of(heavy(weight));
    CHECK(found(at_limit, plan::Rule::handling) == nullptr);
    CHECK(found(at_limit, plan::Rule::hoist) == nullptr);
    const plan::Plan over = plan_of(heavy(weight * 0.999));
    const plan::Check* check = found(over, plan::Rule::handling);
    REQUIRE(check != nullptr);
    CHECK(check->warning);
    CHECK(check->outcome == plan::Outcome::fits);
    CHECK(over.outcome == at_limit.outcome);
    CHECK(plan::sentence(*check, k_inch).find("two people or a hoist") != std::string::npos);
    const plan::Plan far_over = plan_of(heavy(pounds(30.0)));
    CHECK(found(far_over, plan::Rule::handling) == nullptr);
    REQUIRE(found(far_over, plan::Rule::hoist) != nullptr);
    CHECK(far_over.outcome == at_limit.outcome);
}

TEST_CASE("without a limit nothing is said to be liftable") {
    const Bench bench = heavy(std::nullopt);
    const plan::Plan plan = plan_of(bench);
    CHECK(found(plan, plan::Rule::handling) == nullptr);
    CHECK(plan::handling_words(plan, bench.shop, k_inch) ==
          "not checked: the house rules have no lift limit");
}

TEST_CASE("the head of the sheet says who carries which part") {
    const auto words = [](Mass limit) {
        const Bench bench = heavy(limit);
        return plan::handling_words(plan_of(bench), bench.shop, k_inch);
    };
    CHECK(words(pounds(30.0)) == "P1: a hoist");
    CHECK(words(pounds(40.0)) == "P1: two people or a hoist");
    CHECK(words(pounds(50.0)).rfind("every piece within 50", 0) == 0);
    Bench unknown = heavy(pounds(50.0));
    job::Part part = *unknown.job.parts[0];
    part.grade = "nobody knows";
    unknown.job.parts[0] = std::make_shared<const job::Part>(part);
    CHECK(plan::handling_words(plan_of(unknown), unknown.shop, k_inch) ==
          "not known: the weight of P1");
}

TEST_CASE("a piece longer than the machine holds asks for a stand") {
    CHECK(found(plan_of(heavy(std::nullopt)), plan::Rule::support) == nullptr);
    CHECK(found(plan_of(heavy(std::nullopt, inches(40.0))), plan::Rule::support) == nullptr);
    const plan::Plan over = plan_of(heavy(std::nullopt, inches(39.99)));
    const plan::Check* check = found(over, plan::Rule::support);
    REQUIRE(check != nullptr);
    CHECK(check->warning);
    CHECK(plan::sentence(*check, k_inch).find("a stand or a second hand") != std::string::npos);
}
