// A lesson as a value: steps to be read, worked, tried and answered.
//
// No figure that is asked for stands in it. A step names a calculation and its inputs, or a part
// and a shop; the answer comes from calc::run or plan::plan_part when somebody asks. The one figure
// that is written down is a published one, to be compared with ours.

#pragma once

#include "base/formula_card.h"
#include "calc/value.h"
#include "equipment/shop.h"
#include "job/job.h"
#include "plan/verdict.h"
#include "quantity/print.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace treadle::lesson {

inline constexpr std::size_t k_most_steps = 60;
inline constexpr std::size_t k_most_sets = 200; ///< to choose from, in one place
inline constexpr std::size_t k_most_mistakes = 12;
inline constexpr unsigned k_most_seed = 9999; ///< can be read out to a class

/// One of these sets of inputs is put in by the seed: what belongs together stands in one set.
struct Varied {
    std::vector<calc::Input::Object> sets;
};

/// A calculation by its name, with one output that is asked for.
struct Asked {
    std::string calc;
    calc::Input::Object in;
    std::vector<Varied> vary;
    std::string output;
};

struct Scaled {
    std::string input; ///< a length
    double factor = 1.0;
};

/// A figure of another calculation, of the inputs that it knows, with some put over them.
struct Other {
    std::string calc;
    calc::Input::Object in;
    std::string output;
};

/// A usual mistake: the same calculation with one thing changed. Its figure tells it from others.
struct Mistake {
    std::string step;       ///< "Factor", "Grade", "Radius for diameter"
    std::string words;      ///< what was done, and what to do instead
    calc::Input::Object in; ///< in place of the step's own, or beside them; {size} is filled in
    std::vector<std::string> without;
    std::vector<Scaled> scaled;
    std::vector<std::string> swapped; ///< none, or two inputs
    std::string calc;          ///< another calculation, of the inputs that it knows; or empty
    std::string output;        ///< another figure of it; or empty
    double times = 1.0;        ///< a factor that was forgotten or put in twice
    std::optional<Other> plus; ///< added where it does not belong, or not taken off
    std::optional<Other> less; ///< the other way round
    std::string add;           ///< so much too much, as an answer is written: "1", "-1"
};

/// How far from our figure an answer may be: a share of it, or an amount with its unit.
struct Tolerance {
    double share = 0.01;
    std::string amount; ///< "1/32 in"; empty: the share
};

struct Published {
    std::string value;  ///< as printed, with its unit
    std::string half;   ///< half of the last printed digit
    std::string where;  ///< work, edition, table
    std::string source; ///< key of assets/sources.json; may be empty in a lesson of one's own
    base::Evidence evidence = base::Evidence::published;
};

/// A part for a shop: what comes of it is a verdict. One of the parts is put in by the seed.
struct Trial {
    std::vector<job::PartRef> parts;
    std::shared_ptr<const equipment::Shop> shop;
    std::string shop_words; ///< which one it is: "demo-inch"
};

/// What an example must not be let through with. Inputs over the example's own, or a part.
struct BreakIt {
    std::string words;
    calc::Input::Object in;
    std::vector<std::string> without;
    std::string refused_at; ///< input that the calculation refuses; empty: the part decides
    Trial trial;
    plan::Outcome outcome = plan::Outcome::does_not_fit; ///< of the part
    std::string after;                                   ///< why, once it was seen
};

/// Said when an outcome was chosen that is not the plan's.
struct WrongOutcome {
    plan::Outcome chosen = plan::Outcome::fits;
    std::string step;
    std::string words;
};

/// What the page opens beside the lesson, to be tried: nothing of it is kept.
struct Demonstration {
    enum class Opens { parts, limits, machines };
    Opens opens = Opens::limits;
    std::string job;   ///< "demo-inch", "demo-metric"
    std::string grade; ///< chosen in the picture; may be empty
    std::string part;  ///< mark that is chosen; may be empty
    std::string place; ///< station or attachment that is chosen, by its id; may be empty
};

struct Card {
    std::string title;
    std::string words;
};

enum class StepKind { words, example, exercise, verdict, demonstration, cautions };
[[nodiscard]] const char* step_kind_words(StepKind kind); ///< "Worked example", …

struct Step {
    StepKind kind = StepKind::words;
    std::string title;
    std::vector<std::string> words; ///< {size} stands for an input, as the seed has it
    std::string question;           ///< exercise, verdict
    std::string hint;               ///< exercise, verdict: before the answer, when asked for
    Asked asked;                    ///< example, exercise
    std::optional<Published> published;
    std::optional<BreakIt> break_it;
    Tolerance tolerance;
    std::vector<Mistake> mistakes;
    Trial trial; ///< verdict
    std::vector<WrongOutcome> wrong_outcomes;
    Demonstration demonstration;
    std::vector<Card> cards;
};

/// To be answered and judged.
[[nodiscard]] constexpr bool is_question(StepKind kind) {
    return kind == StepKind::exercise || kind == StepKind::verdict;
}

struct Lesson {
    std::string title;
    std::string about; ///< what one can do afterwards
    std::string author;
    UnitSystem units = UnitSystem::inch;
    std::vector<Step> steps;

    [[nodiscard]] PrintStyle style() const { return {units, 16}; }
};

} // namespace treadle::lesson
