// What falls in a set-up, counted by the plan's own strokes.

#include "plan/fixture.h"
#include "plan/scrap.h"

#include <doctest/doctest.h>

using namespace treadle;

namespace {

plan::Plan plan_of(std::vector<job::Operation> operations, int count) {
    job::Part part;
    part.id = part.mark = "BP1";
    part.grade = "A36";
    part.section.shape = section::Shape::plate;
    part.section.width = inches(8.0);
    part.section.thickness = inches(0.25);
    part.length = inches(10.0);
    part.count = count;
    part.operations = std::move(operations);
    job::Job job;
    job.parts = {std::make_shared<const job::Part>(job::checked(part).value())};
    job::Catalog catalog;
    catalog.grades.rows = {test::a36()};
    return plan::make_plan(job, test::shop(), catalog);
}

std::string words_of(const plan::Plan& plan) {
    std::string all;
    for (const plan::SetUp& set_up : plan.order)
        for (const std::string& line : plan::scrap_words(plan, set_up, {}))
            all += line + "|";
    return all;
}

} // namespace

TEST_CASE("a slug falls with every stroke, of the punch's own size") {
    job::Punch punch = test::one_hole(inches(0.8125), inches(1.5), inches(1.5));
    punch.at.columns = 2;
    punch.at.column_pitch = inches(5.0);
    const std::string words = words_of(plan_of({punch}, 4));
    CHECK(words.find("8 slugs of 13/16 round fall") != std::string::npos);
    CHECK(words.find("trimming") == std::string::npos);
}

TEST_CASE("one slug, and the drops of a cut") {
    const std::string words = words_of(
        plan_of({job::Cut{}, test::one_hole(inches(0.8125), inches(1.5), inches(1.5))}, 1));
    CHECK(words.find("1 slug of ") != std::string::npos);
    CHECK(words.find("Drops: ") != std::string::npos);
}
