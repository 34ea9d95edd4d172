// Every rule of the plan has a case on either side of its limit: core/plan/words.cpp names them,
// the tables of rule_limits_*_test.cpp make them.

#include <set>

#include "rule_limits.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

namespace {

template <class Table>
void append(Table& to, const Table& more) {
    to.insert(to.end(), more.begin(), more.end());
}

std::vector<Limit> limits() {
    std::vector<Limit> all = cut_limits();
    append(all, punch_limits());
    append(all, notch_limits());
    append(all, bend_limits());
    append(all, layout_limits());
    return all;
}
std::vector<WarningLimit> warnings() {
    std::vector<WarningLimit> all = tool_warnings();
    append(all, layout_warnings());
    return all;
}

const plan::OperationPlan& operation(const plan::PartPlan& plan, std::size_t index) {
    REQUIRE(index < plan.operations.size());
    return plan.operations[index];
}

/// Worst outcome of a rule where it decides; a rule that was not asked does not object.
Outcome decided(const plan::OperationPlan& plan, Rule rule) {
    Outcome worst = Outcome::fits;
    for (const plan::Check& check : plan.checks)
        if (check.rule == rule && !check.warning)
            worst = plan::worse(worst, check.outcome);
    return worst;
}

} // namespace

TEST_CASE("no rule is without a case on both sides of its limit") {
    std::set<Rule> covered;
    for (const Limit& limit : limits())
        covered.insert(limit.rule);
    for (const WarningLimit& limit : warnings())
        covered.insert(limit.rule);
    // A rule without a name of its own answers with the first one's.
    const std::string first = plan::rule_key(Rule::grade);
    int named = 0;
    for (; named == 0 || plan::rule_key(static_cast<Rule>(named)) != first; ++named) {
        CAPTURE(std::string(plan::rule_key(static_cast<Rule>(named))));
        CHECK(covered.count(static_cast<Rule>(named)) == 1);
    }
    CHECK(named == static_cast<int>(Rule::tipping) + 1); // the last one
}

TEST_CASE("a rule that decides fits on one side of its limit and does not on the other") {
    for (const Limit& limit : limits()) {
        CAPTURE(std::string(plan::rule_key(limit.rule)));
        CAPTURE(std::string(limit.what));
        const plan::PartPlan inside = limit.made(limit.inside);
        CHECK(operation(inside, limit.operation).outcome == Outcome::fits);
        CHECK(decided(operation(inside, limit.operation), limit.rule) == Outcome::fits);
        const plan::PartPlan beyond = limit.made(limit.beyond);
        CHECK(operation(beyond, limit.operation).outcome == limit.outcome);
        CHECK(decided(operation(beyond, limit.operation), limit.rule) == limit.outcome);
        CHECK(beyond.outcome == limit.outcome);
    }
}

TEST_CASE("a rule that warns is silent on one side of its limit and decides on neither") {
    for (const WarningLimit& limit : warnings()) {
        CAPTURE(std::string(plan::rule_key(limit.rule)));
        CAPTURE(std::string(limit.what));
        const plan::PartPlan inside = limit.made(limit.inside);
        const plan::PartPlan beyond = limit.made(limit.beyond);
        CHECK_FALSE(warns(operation(inside, limit.operation), limit.rule));
        CHECK(warns(operation(beyond, limit.operation), limit.rule));
        CHECK(operation(beyond, limit.operation).outcome ==
              operation(inside, limit.operation).outcome);
    }
}

TEST_CASE("every rule's sentence says something of its own") {
    const PrintStyle inch{};
    for (const Limit& limit : limits()) {
        CAPTURE(std::string(plan::rule_key(limit.rule)));
        const plan::PartPlan beyond = limit.made(limit.beyond);
        for (const plan::Check& check : operation(beyond, limit.operation).checks)
            if (check.rule == limit.rule && check.outcome == limit.outcome)
                CHECK(plan::sentence(check, inch).size() > 15);
    }
    for (const WarningLimit& limit : warnings()) {
        const plan::PartPlan beyond = limit.made(limit.beyond);
        for (const plan::Check& check : operation(beyond, limit.operation).checks)
            if (check.rule == limit.rule && check.warning)
                CHECK(plan::sentence(check, inch).size() > 25); // and what to do
    }
}
