#include "archive/archive.h"
#include "edit/layout_reading.h"

#include <doctest/doctest.h>

using namespace treadle;

namespace {

const job::Catalog& catalog() {
    static const job::Catalog whole = archive::read_catalog().value();
    return whole;
}

job::Job job_in(UnitSystem units) {
    job::Job job;
    job.style = {units, 16};
    return job;
}

} // namespace

TEST_CASE("each kind has fields, and its example can be read in both units") {
    CHECK(edit::layout_kinds().size() >= 15);
    for (const edit::LayoutKindRow& kind : edit::layout_kinds())
        for (const UnitSystem units : {UnitSystem::inch, UnitSystem::metric}) {
            const auto reading = edit::read_layout(
                job_in(units), {kind.id, "L1", edit::layout_example(kind.id, units)}, catalog());
            if (reading.refusal)
                FAIL_CHECK(kind.id << ": " << reading.refusal->field << ": "
                                   << reading.refusal->reason);
            CHECK_FALSE(reading.parts.empty());
            CHECK_FALSE(reading.cautions.empty());
            for (const edit::LayoutField& field : edit::layout_fields(kind.id)) {
                CHECK_FALSE(field.meaning.empty());
                CHECK(field.name.find(' ') == std::string::npos);
                CHECK((field.kind == edit::FieldKind::choice) == !field.choices.empty());
            }
        }
    CHECK(edit::layout_fields("no-such").empty());
    CHECK(edit::layout_example("no-such", UnitSystem::inch).empty());
}

TEST_CASE("a rule is said with its value, its bound, its answer and its source") {
    auto values = edit::layout_example("guard-run", UnitSystem::inch);
    values.push_back({"margin", "0 in"});
    for (job::LayoutValue& value : values)
        if (value.name == "height")
            value.text = "35 in";
    const auto reading =
        edit::read_layout(job_in(UnitSystem::inch), {"guard-run", "G1", values}, catalog());
    bool found = false;
    for (const edit::LayoutRuleRow& rule : reading.rules)
        if (rule.answer == "breaks IRC, guard of a dwelling") {
            CHECK(rule.words == "height of the top edge: 35 in, at least 36 in");
            CHECK(rule.source == "irc-r312");
            CHECK(rule.evidence == "published");
            found = true;
        }
    CHECK(found);
    CHECK(reading.worst == assembly::Held::breaks);
}

TEST_CASE("what cannot be made is a refusal and nothing else") {
    const auto reading = edit::read_layout(job_in(UnitSystem::inch), {"ring", "R1", {}}, catalog());
    REQUIRE(reading.refusal);
    CHECK(reading.refusal->field == "bar");
    CHECK(reading.parts.empty());
}

TEST_CASE("a slanted branch brings its paper template in words") {
    auto values = edit::layout_example("pipe-branch", UnitSystem::inch);
    values.push_back({"angle", "45 deg"});
    const auto reading =
        edit::read_layout(job_in(UnitSystem::inch), {"pipe-branch", "B1", values}, catalog());
    REQUIRE(reading.templates.size() == 1);
    CHECK(reading.templates[0].find("B1-B") != std::string::npos);
}

TEST_CASE("layouts of a job and the origin of a part are said in words") {
    job::Job job = job_in(UnitSystem::inch);
    const auto made = edit::with_layout(
        job,
        edit::AddLayout{"ring", "R1", edit::layout_example("ring", UnitSystem::inch)},
        catalog());
    REQUIRE(made.ok());
    const auto rows = edit::layouts_of(made->job);
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].title == "Ring");
    CHECK(rows[0].parts == 1);
    CHECK(edit::part_origin(made->job, made->job.parts[0]->id).words == "Ring R1: ring");
    CHECK(edit::part_origin(made->job, "none").words.empty());
}
