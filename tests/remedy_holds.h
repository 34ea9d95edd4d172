// Applies a remedy and checks that it does what it said; for made-up parts and for the demo jobs.

#pragma once

#include "plan/remedy.h"
#include "plan/words.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace treadle::test {

inline long warnings_of(const plan::OperationPlan& operation) {
    return std::count_if(
        operation.checks.begin(), operation.checks.end(), [](const plan::Check& check) {
            return check.warning && check.rule != plan::Rule::tool_in_crib;
        });
}

/// Outcome, margin and blank as promised; every other operation no worse than before.
inline void check_remedy_holds(const plan::PartPlan& before,
                               std::size_t operation,
                               const plan::Remedy& remedy,
                               const job::Job& job,
                               const equipment::Shop& shop,
                               const job::Catalog& catalog) {
    CAPTURE(remedy.words);
    const plan::PartPlan after =
        plan::plan_part(std::make_shared<const job::Part>(remedy.part), job, shop, catalog);
    CHECK(remedy.part.id == before.part->id);
    CHECK_FALSE(remedy.words.empty());
    CHECK_FALSE(remedy.why.empty());
    CHECK_FALSE(after.problem.has_value());
    CHECK(after.blank_length == remedy.blank_length);
    CHECK(remedy.new_blank == (after.blank_length != before.blank_length));
    const bool leaves = remedy.kind == plan::Remedy::Kind::elsewhere;
    REQUIRE(after.operations.size() + (leaves ? 1 : 0) == before.operations.size());
    for (std::size_t i = 0; i < after.operations.size(); ++i) {
        CAPTURE(i);
        const std::size_t old = leaves && i >= operation ? i + 1 : i;
        const plan::OperationPlan& was = before.operations[old];
        const plan::OperationPlan& is = after.operations[i];
        if (old != operation) {
            CHECK(is.outcome <= was.outcome);
            if (is.outcome == was.outcome) // better work may come with a warning, the same not
                CHECK(warnings_of(is) <= warnings_of(was));
            CHECK_FALSE((was.outcome == plan::Outcome::fits && is.tight && !was.tight));
            continue;
        }
        CHECK(is.outcome < was.outcome);
        CHECK(is.outcome <= plan::Outcome::fits_up_to);
        CHECK(is.outcome == remedy.planned.outcome);
        CHECK(plan::verdict_words(is, job.style) == plan::verdict_words(remedy.planned, job.style));
        CHECK(plan::margin_words(is, job.style) == plan::margin_words(remedy.planned, job.style));
    }
    if (leaves)
        CHECK(remedy.part.note.size() > before.part->note.size());
}

} // namespace treadle::test
