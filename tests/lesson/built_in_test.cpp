// The lessons that come with the program: every one, with many seeds, right and wrong.

#include "assets/embedded.h"

#include <algorithm>
#include <map>
#include <set>

#include "lesson/lessons.h"
#include "lesson/numbers.h"

using namespace treadle;
using namespace treadle::lesson;

namespace {

constexpr unsigned k_seeds = 60;
constexpr PrintStyle k_styles[] = {{UnitSystem::inch, 16}, {UnitSystem::metric, 16}};

template <class Each>
void each_step(StepKind kind, const Each& each) {
    for (const archive::BuiltInLesson& built : tests::built_in())
        for (std::size_t i = 0; i < built.lesson.steps.size(); ++i)
            if (built.lesson.steps[i].kind == kind)
                each(built, built.lesson.steps[i], i);
}

/// Keyed by hand from the works that are named, not read from the lessons.
struct Printed {
    const char* lesson;
    const char* where;
    double printed; ///< in base units: N, mm, MPa, A
    double half;
};
constexpr double k_mm = 25.4;
const Printed k_printed[] = {
    {"1-punching-force", "Pytel & Singer, problem 115: 549.8 kN", 549'800.0, 50.0},
    {"2-hole-and-die",
     "Pytel & Singer, problem 116(a): 50 ksi, which 0.781 in is rounded from",
     50.0 * 6.894757,
     0.05 * 6.894757},
    {"3-shear-ratings", "TU Delft report 2338: 652.8 kN", 652'800.0, 50.0},
    {"4-bending-force", "Lange, Umformtechnik 3: 4.34 kN, rounds its steps", 4'340.0, 9.0},
    {"5-blank-length", "German school sheet: 7.71, rounds its steps", 7.71, 0.01},
    {"6-notch-and-saddle", "geometry: half of 1.9 in", 0.95 * k_mm, 1e-6},
    {"7-railing-gaps", "IRC R312: 4 in", 4.0 * k_mm, 1e-9},
    {"8-edge-distance", "AISC 360-16: 13/16 in", 13.0 / 16.0 * k_mm, 1e-9},
    {"9-stock-and-drop", "arithmetic: 5960 mm", 5960.0, 1e-9},
    {"91-power-and-cord", "NFPA 70: 25 A", 25.0, 1e-9},
    {"92-order-and-verdicts", "arithmetic: 11/16 in", 11.0 / 16.0 * k_mm, 1e-9},
    {"93-shop-practice", "29 CFR 1910.217, from memory: 1/2 in", 0.5 * k_mm, 1e-9},
};

} // namespace

TEST_CASE("there are twelve lessons, with something of every kind") {
    CHECK(tests::built_in().size() == 12);
    std::map<StepKind, int> kinds;
    for (const archive::BuiltInLesson& built : tests::built_in())
        for (const Step& step : built.lesson.steps)
            ++kinds[step.kind];
    CHECK(kinds[StepKind::example] == 12);
    CHECK(kinds[StepKind::exercise] >= 24);
    CHECK(kinds[StepKind::verdict] >= 9);
    CHECK(kinds[StepKind::demonstration] >= 5);
    CHECK(kinds[StepKind::cautions] >= 7);
}

TEST_CASE("no step of any lesson is at fault, with sixty seeds") {
    for (const archive::BuiltInLesson& built : tests::built_in())
        for (unsigned seed = 0; seed < k_seeds; ++seed)
            for (const base::Refusal& fault : faults_of(built.lesson, seed, tests::catalog())) {
                CAPTURE(built.id);
                CAPTURE(seed);
                FAIL_CHECK(fault.field, ": ", fault.reason, " ", fault.detail);
            }
}

TEST_CASE("the right answer is accepted in inch and in metric, with every seed") {
    int answered = 0;
    each_step(StepKind::exercise, [&](const auto& built, const Step& step, std::size_t index) {
        CAPTURE(built.id);
        CAPTURE(step.title);
        for (unsigned seed = 0; seed < k_seeds; ++seed) {
            const auto key = key_of(step, index, seed, tests::tables());
            REQUIRE(key.ok());
            for (const PrintStyle style : k_styles) {
                const std::string typed = figure_text(key->answer, style);
                CAPTURE(typed);
                CHECK(is_right(judge(*key, typed, style).mark));
                ++answered;
            }
        }
    });
    CHECK(answered >= 24 * static_cast<int>(k_seeds) * 2);
}

TEST_CASE("every named mistake is recognised as itself, in inch and in metric") {
    int met = 0;
    each_step(StepKind::exercise, [&](const auto& built, const Step& step, std::size_t index) {
        CAPTURE(built.id);
        CAPTURE(step.title);
        for (unsigned seed = 0; seed < k_seeds; ++seed) {
            const auto key = key_of(step, index, seed, tests::tables());
            REQUIRE(key.ok());
            for (const Key::Slip& slip : key->slips)
                for (const PrintStyle style : k_styles) {
                    const Judgement judged = judge(*key, figure_text(slip.figure, style), style);
                    CAPTURE(figure_text(slip.figure, style));
                    CHECK(judged.mark == Mark::wrong_step);
                    CHECK(judged.step == slip.step);
                    CHECK(judged.words == slip.words);
                    ++met;
                }
        }
    });
    CHECK(met >= 40 * static_cast<int>(k_seeds) * 2);
}

TEST_CASE("every exercise can be got wrong without a name for it") {
    each_step(StepKind::exercise, [&](const auto& built, const Step& step, std::size_t index) {
        CAPTURE(built.id);
        CAPTURE(step.title);
        const auto key = key_of(step, index, 1, tests::tables());
        REQUIRE(key.ok());
        const AnyQuantity off = std::visit(
            [](auto value) {
                if constexpr (std::is_same_v<decltype(value), quantity::Number>)
                    return AnyQuantity(quantity::Number{value.value * 7.3, value.decimals});
                else if constexpr (std::is_same_v<decltype(value), quantity::Share>)
                    return AnyQuantity(quantity::Share{value.value * 7.3});
                else
                    return AnyQuantity(value * 7.3);
            },
            key->answer);
        CHECK(judge(*key, figure_text(off, k_styles[0]), k_styles[0]).mark == Mark::wrong);
    });
}

TEST_CASE("the published figures are those that were keyed by hand, and ours agree") {
    std::size_t compared = 0;
    each_step(StepKind::example, [&](const auto& built, const Step& step, std::size_t index) {
        CAPTURE(built.id);
        REQUIRE(step.published.has_value());
        const auto row = std::find_if(std::begin(k_printed),
                                      std::end(k_printed),
                                      [&](const Printed& one) { return built.id == one.lesson; });
        REQUIRE(row != std::end(k_printed));
        const auto key = key_of(step, index, 1, tests::tables());
        REQUIRE(key.ok());
        CHECK(std::abs(base_value(key->answer) - row->printed) <= row->half * 1.0001);
        const auto stated = read_like(key->answer, step.published->value);
        REQUIRE(stated.ok());
        CHECK(base_value(*stated) == doctest::Approx(row->printed).epsilon(1e-6));
        ++compared;
    });
    CHECK(compared == std::size(k_printed));
}

TEST_CASE("every source of a published figure is in the list of sources") {
    const auto sources = archive::read_sources(assets::embedded("sources.json").value_or(""));
    REQUIRE(sources.ok());
    each_step(StepKind::example, [&](const auto& built, const Step& step, std::size_t) {
        CAPTURE(built.id);
        CHECK(std::any_of(sources->begin(), sources->end(), [&](const archive::Source& source) {
            return source.key == step.published->source;
        }));
    });
}

TEST_CASE("every worked example has a way to break it, and that is stopped with a reason") {
    each_step(StepKind::example, [&](const auto& built, const Step& step, std::size_t index) {
        CAPTURE(built.id);
        REQUIRE(step.break_it.has_value());
        CHECK_FALSE(step.break_it->after.empty());
        for (unsigned seed = 0; seed < 5; ++seed) {
            const Breaking breaking =
                try_to_break(step, index, seed, built.lesson.style(), tests::catalog());
            CAPTURE(breaking.words);
            CHECK(breaking.is_stopped);
            CHECK(breaking.words.size() > 20);
        }
    });
}

TEST_CASE("a verdict has one right answer, and each wrong one says why") {
    int asked = 0;
    std::set<plan::Outcome> met;
    each_step(StepKind::verdict, [&](const auto& built, const Step& step, std::size_t) {
        for (const job::PartRef& part : step.trial.parts) {
            const TrialPlan plan =
                plan_trial(part, step.trial, built.lesson.style(), tests::catalog());
            CAPTURE(built.id);
            CAPTURE(plan.part);
            met.insert(plan.outcome);
            int right = 0;
            for (const plan::Outcome outcome : {plan::Outcome::fits,
                                                plan::Outcome::fits_up_to,
                                                plan::Outcome::cannot_be_said,
                                                plan::Outcome::does_not_fit}) {
                const Judgement judged = judge(step, plan, outcome);
                right += judged.mark == Mark::right ? 1 : 0;
                if (judged.mark != Mark::right) {
                    CHECK(judged.mark == Mark::wrong_step);
                    CHECK_FALSE(judged.words.empty());
                }
            }
            CHECK(right == 1);
            ++asked;
        }
    });
    CHECK(asked >= 15);
    CHECK(met.size() == 4); // each of the four answers is right somewhere
}

TEST_CASE("different seeds give different numbers, the same seed the same") {
    each_step(StepKind::exercise, [&](const auto& built, const Step& step, std::size_t index) {
        CAPTURE(built.id);
        CAPTURE(step.title);
        std::set<std::string> questions;
        for (unsigned seed = 0; seed < k_seeds; ++seed) {
            std::string all;
            for (const std::string& line :
                 given_lines(step.asked.calc, inputs_of(step.asked, seed, index)))
                all += line + "\n";
            questions.insert(all);
        }
        CHECK(questions.size() >= 3);
    });
}

TEST_CASE("no file of a lesson holds the answer of an exercise") {
    for (const archive::BuiltInLesson& built : tests::built_in()) {
        const std::string path = "lessons/" + built.id + ".json";
        const std::string file(assets::embedded(path).value_or(""));
        REQUIRE_FALSE(file.empty());
        for (std::size_t i = 0; i < built.lesson.steps.size(); ++i) {
            const Step& step = built.lesson.steps[i];
            if (step.kind != StepKind::exercise)
                continue;
            const auto key = key_of(step, i, 1, tests::tables());
            REQUIRE(key.ok());
            const std::string answer = figure_text(key->answer, built.lesson.style());
            CAPTURE(answer);
            if (answer.find('.') != std::string::npos)
                CHECK(file.find("\"" + answer + "\"") == std::string::npos);
        }
    }
}
