// Trial strips in the plan: which record a bend goes by, and what it does to the blank.

#include "plan/bend_bench.h"
#include "plan/explain.h"
#include "plan/trial_use.h"

#include <algorithm>

using namespace treadle;
using namespace treadle::test;
using plan::BlankSource;
using plan::Rule;

namespace {

/// Strips of the bench's eighth over its V of 1-1/4: deductions 0.255 and 0.265 in, invented.
equipment::TrialRecord record_of(std::vector<double> deductions_in = {0.255, 0.265}) {
    equipment::TrialRecord record;
    record.grade = "A36";
    record.thickness = inches(0.125);
    record.opening = inches(1.25);
    record.radius = inches(0.2);
    record.angle = degrees(90.0);
    for (const double deduction : deductions_in)
        record.strips.push_back({inches(6.0), inches(3.1), inches(2.9 + deduction)});
    return record;
}

const job::Part k_part = bent({3, 4}, {true});

plan::OperationPlan bend_with(const std::vector<equipment::TrialRecord>& trials,
                              double house_k = 0.0) {
    Bench bench = with_sizes();
    bench.shop.trials = trials;
    bench.shop.rules.blank_k = house_k;
    return bench.plan(k_part).operations.at(1);
}

template <class Change>
plan::OperationPlan bend_with_changed(Change change) {
    equipment::TrialRecord record = record_of();
    change(record);
    return bend_with({record});
}

} // namespace

TEST_CASE("trial strips go before the house's K, that before the table") {
    CHECK(bend_with({}).blank_source == BlankSource::din6935);
    const auto house = bend_with({}, 0.40);
    CHECK(house.blank_source == BlankSource::house_k);
    CHECK(house.figures.k == 0.40);
    const auto trial = bend_with({record_of()}, 0.40);
    CHECK(trial.blank_source == BlankSource::trial);
    CHECK(trial.trial == 0);
    // SB 0.325: BA = 0.65 - 0.26 = 0.39, K = (0.39 / 1.570796 - 0.2) / 0.125 = 0.3863.
    CHECK(trial.figures.k == doctest::Approx(0.3863).epsilon(0.0002));
    CHECK(quantity::to_inches(trial.figures.deduction) == doctest::Approx(0.26));
}

TEST_CASE("a record of another grade, thickness, V or grain is not used") {
    const auto source = [](auto change) { return bend_with_changed(change).blank_source; };
    using Record = equipment::TrialRecord;
    CHECK(source([](Record&) {}) == BlankSource::trial);
    CHECK(source([](Record& r) { r.grade = "A572-50"; }) == BlankSource::din6935);
    CHECK(source([](Record& r) { r.thickness = inches(0.135); }) == BlankSource::din6935);
    CHECK(source([](Record& r) { r.opening = inches(1.5); }) == BlankSource::din6935);
    CHECK(source([](Record& r) { r.thickness = inches(0.1255); }) == BlankSource::trial);
    CHECK(source([](Record& r) { r.opening += millimetres(0.049); }) == BlankSource::trial);
    CHECK(source([](Record& r) { r.opening += millimetres(0.051); }) == BlankSource::din6935);
    // The bench's parts say that they lie across the grain.
    CHECK(source([](Record& r) { r.grain = material::Grain::across; }) == BlankSource::trial);
    CHECK(source([](Record& r) { r.grain = material::Grain::along; }) == BlankSource::din6935);
}

TEST_CASE("strips with the part's own grain go before those that do not say theirs") {
    equipment::TrialRecord across = record_of({0.27});
    across.grain = material::Grain::across;
    CHECK(bend_with({record_of(), across}).trial == 1);
    CHECK(bend_with({across, record_of()}).trial == 0);
    CHECK(bend_with({record_of(), record_of()}).trial == 0);
}

TEST_CASE("a record without a sound K is left aside, and said") {
    // K 0.25 at BD 0.650 - 1.570796 (0.2 + 0.03125) = 0.28675, K 0.50 at 0.23767.
    for (const double sound : {0.2378, 0.2867}) {
        CAPTURE(sound);
        const auto bend = bend_with({record_of({sound})}, 0.40);
        CHECK(bend.blank_source == BlankSource::trial);
        CHECK(find(bend, Rule::trial_strip) == nullptr);
    }
    for (const double unsound : {0.2376, 0.2868, 0.10}) {
        CAPTURE(unsound);
        const auto bend = bend_with({record_of({unsound})}, 0.40);
        CHECK(bend.blank_source == BlankSource::house_k);
        CHECK(bend.trial == plan::k_none);
        CHECK(warns(bend, Rule::trial_strip));
        CHECK(find(bend, Rule::trial_strip)->said.find("re-measure their radius") !=
              std::string::npos);
        CHECK(bend.outcome == bend_with({}).outcome);
    }
    const auto second = bend_with({record_of({0.10}), record_of()});
    CHECK(second.trial == 1);
    CHECK(warns(second, Rule::trial_strip));
}

TEST_CASE("the blank and its working go by the strips") {
    Bench bench = with_sizes();
    bench.shop.trials = {record_of()};
    const auto part = bench.plan(k_part);
    CHECK(quantity::to_inches(part.blank_exact) == doctest::Approx(7.0 - 0.26));
    const auto list = plan::explain_operation(part, 1, bench.job, bench.shop, bench.catalog);
    const auto card = [&](const char* id) {
        return std::find_if(list.begin(), list.end(), [&](const Working& working) {
            return std::string(working.card->id) == id;
        });
    };
    for (const char* id : {"trial-k", "trial-deduction", "trial-spread"})
        CHECK(card(id) != list.end());
    REQUIRE(card("bend-allowance-given") != list.end());
    CHECK(card("bend-allowance-given")->note == "K from trial strips.");
}

TEST_CASE("a bend without a V goes by the house's K as it did") {
    Bench bench = with_sizes();
    bench.shop.crib.vees.clear();
    bench.shop.rules.blank_k = 0.40;
    const auto part = bench.plan(k_part);
    CHECK(part.operations[1].blank_source == BlankSource::house_k);
    CHECK_FALSE(part.problem);
    CHECK(part.blank.bends.at(0).k == 0.40);
}

TEST_CASE("bends of one part may go by different rules") {
    // The second bend is wide open: DIN's table there, strips for the first.
    Bench bench = with_sizes();
    job::Part part = bent({3, 4, 3}, {true, true});
    std::get<job::Bend>(part.operations[2]).radius = inches(0.48);
    bench.shop.crib.vees.push_back({inches(3.0), inches(10.0), 1, inches(3.5), inches(3.0)});
    bench.shop.trials = {record_of()};
    const auto made = bench.plan(part);
    REQUIRE(made.operations[1].blank_source == BlankSource::trial);
    REQUIRE(made.operations[2].blank_source == BlankSource::din6935);
    CHECK(made.blank.bends[0].k == doctest::Approx(0.3863).epsilon(0.0002));
    CHECK(made.blank.bends[1].k == made.operations[2].figures.k);
    CHECK(quantity::to_inches(made.blank_exact) ==
          doctest::Approx(10.0 - quantity::to_inches(made.blank.bends[0].deduction +
                                                     made.blank.bends[1].deduction)));
}

TEST_CASE("every part that goes by a record is shown with its blank before and after") {
    Bench bench = with_sizes();
    bench.shop.trials = {record_of(), record_of()};
    bench.shop.trials[1].grade = "A572-50";
    job::Part flat = plate(inches(0.125), inches(4.0), inches(10.0));
    flat.operations = {job::Cut{}};
    bench.job.parts = {std::make_shared<const job::Part>(flat),
                       std::make_shared<const job::Part>(k_part)};
    const auto plan = plan::make_plan(bench.job, bench.shop, bench.catalog);
    const auto effects = plan::trial_effects(plan, 0, bench.job, bench.shop, bench.catalog);
    REQUIRE(effects.size() == 1);
    CHECK(effects[0].part == 1);
    CHECK(effects[0].otherwise == BlankSource::din6935);
    CHECK(effects[0].with_record == inches(6.75));
    Bench none = with_sizes();
    CHECK(effects[0].without_record == none.plan(k_part).blank_length);
    CHECK(plan::trial_effect_words(effects[0], plan, bench.job.style)
              .find("P1: blank 6-3/4 in by trial strips, ") == 0);
    CHECK(plan::trial_effects(plan, 1, bench.job, bench.shop, bench.catalog).empty());
    CHECK(plan::trial_effects(plan, 7, bench.job, bench.shop, bench.catalog).empty());
}

TEST_CASE("a record in words gives K, deduction and spread, or what is wrong") {
    const PrintStyle style;
    CHECK(plan::trial_words(record_of(), style).find("2 strips: K 0.386") != std::string::npos);
    CHECK(plan::trial_words(record_of({0.26}), style).find("bend a second strip") !=
          std::string::npos);
    CHECK(plan::trial_words(record_of({0.10}), style).find("left aside") != std::string::npos);
}
