#include "lesson/check.h"

#include <cmath>
#include <string>

#include "lesson/numbers.h"

namespace treadle::lesson {

namespace {

using base::Refusal;

/// Takes the faults of one step, each with the step in front.
class Checker {
public:
    Checker(const Lesson& lesson, unsigned seed, const job::Catalog& catalog)
        : lesson_(lesson),
          seed_(seed),
          catalog_(catalog),
          tables_{catalog.grades, catalog.sections} {}

    [[nodiscard]] std::vector<Refusal> all() && {
        for (index_ = 0; index_ < lesson_.steps.size(); ++index_)
            check(lesson_.steps[index_]);
        return std::move(faults_);
    }

private:
    void say(const std::string& field, std::string reason, std::string detail = "") {
        faults_.push_back(
            {"steps[" + std::to_string(index_) + "]" + (field.empty() ? "" : "." + field),
             std::move(reason),
             std::move(detail)});
    }
    void say(const Refusal& refusal) { say(refusal.field, refusal.reason, refusal.detail); }

    void check(const Step& step) {
        const bool asks = step.kind == StepKind::example || step.kind == StepKind::exercise;
        const calc::Input::Object in =
            asks ? inputs_of(step.asked, seed_, index_) : calc::Input::Object{};
        names(step, in);
        if (asks)
            answer(step);
        if (step.kind == StepKind::verdict)
            verdict(step);
        if (step.break_it &&
            !try_to_break(step, index_, seed_, lesson_.style(), catalog_).is_stopped)
            say("break_it", "This is not stopped as the lesson says.", broken_words(step));
    }

    [[nodiscard]] std::string broken_words(const Step& step) const {
        return try_to_break(step, index_, seed_, lesson_.style(), catalog_).words;
    }

    void name_in(const std::string& words, const calc::Input::Object& in, const char* field) {
        if (const std::string name = unknown_name(words, in); !name.empty())
            say(field, "There is no input of the name in braces.", name);
    }

    void names(const Step& step, const calc::Input::Object& in) {
        for (const std::string& words : step.words)
            name_in(words, in, "words");
        name_in(step.question, in, "question");
        name_in(step.hint, in, "hint");
        for (const Mistake& mistake : step.mistakes)
            name_in(mistake.words, in, "mistakes");
    }

    void answer(const Step& step) {
        const auto key = key_of(step, index_, seed_, tables_);
        if (!key)
            return say(key.refusal());
        if (step.published) {
            const auto agreement = compare(*step.published, key->answer);
            if (!agreement)
                say(agreement.refusal());
            else if (!agreement->agrees)
                say("published",
                    "Ours does not agree with the published figure.",
                    figure_text(key->answer, lesson_.style()));
        }
        if (step.kind != StepKind::exercise)
            return;
        if (!can_be_asked(key->answer))
            return say("answer", "A figure of this kind cannot be typed as an answer.");
        mistakes(step, *key);
    }

    /// Each mistake, typed as somebody would, has to come back as itself.
    void mistakes(const Step& step, const Key& key) {
        for (std::size_t i = 0; i < key.slips.size(); ++i) {
            const std::string typed = figure_text(key.slips[i].figure, lesson_.style());
            const Judgement judged = judge(key, typed, lesson_.style());
            if (judged.mark != Mark::wrong_step || judged.step != step.mistakes[i].step)
                say("mistakes[" + std::to_string(i) + "]",
                    "This mistake cannot be told from the right answer or from another one.",
                    typed + " counts as " + mark_words(judged.mark) +
                        (judged.step.empty() ? "" : ", " + judged.step));
        }
    }

    void verdict(const Step& step) {
        const TrialPlan plan =
            plan_trial(part_of(step.trial, seed_, index_), step.trial, lesson_.style(), catalog_);
        for (std::size_t i = 0; i < step.wrong_outcomes.size(); ++i)
            if (step.wrong_outcomes[i].chosen == plan.outcome && step.trial.parts.size() == 1)
                say("wrong[" + std::to_string(i) + "]",
                    "This is what the plan says, so it is not wrong.",
                    plan.verdict);
    }

    const Lesson& lesson_;
    unsigned seed_;
    const job::Catalog& catalog_;
    calc::Tables tables_;
    std::size_t index_ = 0;
    std::vector<Refusal> faults_;
};

Breaking
break_calculation(const Step& step, const calc::Input::Object& in, const job::Catalog& catalog) {
    const calc::Tables tables{catalog.grades, catalog.sections};
    const auto answer =
        calc::run(step.asked.calc, calc::Input(broken_inputs(*step.break_it, in)), tables);
    if (answer)
        return {false, "The calculation answers; nothing was refused."};
    const Refusal& why = answer.refusal();
    return {why.field == step.break_it->refused_at,
            "Refused at " + why.field + ": " + why.reason +
                (why.detail.empty() ? "" : " (" + why.detail + ")")};
}

} // namespace

base::Result<Agreement> compare(const Published& published, const AnyQuantity& ours) {
    const auto printed = read_like(ours, published.value);
    if (!printed)
        return Refusal{"published.value", printed.refusal().reason, printed.refusal().detail};
    const auto half = read_like(ours, published.half);
    if (!half)
        return Refusal{"published.half", half.refusal().reason, half.refusal().detail};
    const double off = std::fabs(base_value(*printed) - base_value(ours));
    // The last bits of a sum in millimetres are no disagreement.
    return Agreement{ours, off <= base_value(*half) * (1.0 + 1e-9) + 1e-9};
}

Breaking try_to_break(const Step& step,
                      std::size_t index,
                      unsigned seed,
                      PrintStyle style,
                      const job::Catalog& catalog) {
    TREADLE_EXPECT(step.break_it.has_value());
    const BreakIt& break_it = *step.break_it;
    if (!break_it.refused_at.empty())
        return break_calculation(step, inputs_of(step.asked, seed, index), catalog);
    const TrialPlan plan =
        plan_trial(part_of(break_it.trial, seed, index), break_it.trial, style, catalog);
    std::string words = plan.part + ": " + plan.verdict + ".";
    for (const std::string& reason : plan.reasons)
        words += " " + reason;
    const bool is_stopped = plan.outcome == break_it.outcome && plan.outcome != plan::Outcome::fits;
    return {is_stopped, std::move(words)};
}

std::vector<Refusal> faults_of(const Lesson& lesson, unsigned seed, const job::Catalog& catalog) {
    return Checker(lesson, seed, catalog).all();
}

} // namespace treadle::lesson
