#include "lesson_blocks.h"

#include "quantity/working_text.h"

#include <utility>

#include "lesson/numbers.h"

namespace treadle::web {

namespace {

using Do = views::LessonAsk::Do;
using Kind = views::LessonBlock::Kind;
using views::LessonBlock;
using views::LessonKey;

constexpr plan::Outcome k_outcomes[] = {plan::Outcome::fits,
                                        plan::Outcome::fits_up_to,
                                        plan::Outcome::does_not_fit,
                                        plan::Outcome::cannot_be_said};

LessonBlock block(Kind kind, std::string text, std::string detail = "") {
    LessonBlock out;
    out.kind = kind;
    out.text = std::move(text);
    out.detail = std::move(detail);
    return out;
}

LessonKey key(const char* id, std::string label, Do what) {
    LessonKey out;
    out.id = id;
    out.label = std::move(label);
    out.ask.what = what;
    return out;
}

Kind kind_of(lesson::Mark mark) {
    switch (mark) {
    case lesson::Mark::right:
    case lesson::Mark::within:
        return Kind::right;
    case lesson::Mark::wrong_step:
    case lesson::Mark::wrong:
        return Kind::wrong;
    case lesson::Mark::unreadable:
        break;
    }
    return Kind::unsure;
}

/// Fills the blocks of one step.
class Blocks {
public:
    explicit Blocks(const StepSight& sight)
        : sight_(sight),
          step_(sight.step()),
          state_(sight.state()),
          in_(lesson::inputs_of(step_.asked, sight.course.record.seed, sight.course.step)) {}

    [[nodiscard]] std::vector<LessonBlock> all() && {
        for (const std::string& words : step_.words)
            add(block(Kind::words, lesson::filled(words, in_)));
        for (const lesson::Card& card : step_.cards)
            add(block(Kind::card, card.title, card.words));
        if (!step_.question.empty())
            add(block(Kind::figures, lesson::filled(step_.question, in_)));
        given();
        if (lesson::is_question(step_.kind))
            question();
        working();
        if (step_.break_it)
            breaking();
        if (step_.kind == lesson::StepKind::cautions)
            add(block(Kind::quiet,
                      "The machine's manual, local rules and a competent person decide."));
        return std::move(out_);
    }

private:
    void add(LessonBlock one) { out_.push_back(std::move(one)); }
    void add_keys(std::vector<LessonKey> keys) {
        LessonBlock out;
        out.kind = Kind::keys;
        out.keys = std::move(keys);
        add(std::move(out));
    }

    void given() {
        if (!step_.asked.calc.empty()) {
            add(block(Kind::heading, "Given"));
            for (std::string& line : lesson::given_lines(step_.asked.calc, in_))
                add(block(Kind::figures, std::move(line)));
        }
        if (step_.kind != lesson::StepKind::verdict)
            return;
        const lesson::TrialPlan plan = trial(step_.trial);
        add(block(Kind::heading, "The part"));
        add(block(Kind::figures, plan.part));
        for (const std::string& work : plan.work)
            add(block(Kind::figures, work));
    }

    [[nodiscard]] lesson::TrialPlan trial(const lesson::Trial& trial) const {
        return lesson::plan_trial(
            lesson::part_of(trial, sight_.course.record.seed, sight_.course.step),
            trial,
            sight_.course.lesson.style(),
            sight_.catalog);
    }

    void question() {
        if (step_.kind == lesson::StepKind::exercise)
            typed();
        else
            outcomes();
        if (state_.said) {
            const std::string step =
                state_.said->step.empty() ? "" : "Wrong step: " + state_.said->step + ". ";
            add(block(kind_of(state_.said->mark), step + state_.said->words));
        }
        if (state_.hinted)
            add(block(Kind::words, "Hint: " + lesson::filled(step_.hint, in_)));
    }

    [[nodiscard]] LessonKey hint_key() const {
        LessonKey hint = key("hint", "Hint", Do::hint);
        hint.enabled = !state_.hinted && !step_.hint.empty();
        hint.why_not = state_.hinted ? "The hint is shown." : "There is none for this one.";
        return hint;
    }

    void typed() {
        LessonBlock field = block(Kind::field, "Your answer, with its unit");
        field.value = state_.typed;
        add(std::move(field));
        add(block(Kind::quiet,
                  "Counts as right within " +
                      (step_.tolerance.amount.empty()
                           ? quantity::print_working(quantity::Share{step_.tolerance.share},
                                                     sight_.course.lesson.style())
                           : step_.tolerance.amount) +
                      ". Inches or millimetres, whichever you like."));
        LessonKey check = key("check", "Check", Do::check);
        check.primary = true;
        check.name = "Check the answer";
        add_keys({std::move(check), hint_key()});
    }

    void outcomes() {
        std::vector<LessonKey> keys;
        for (std::size_t i = 0; i < std::size(k_outcomes); ++i) {
            const std::string words = lesson::outcome_words(k_outcomes[i]);
            LessonKey one = key("pick", "It " + words, Do::pick);
            one.id += std::to_string(i);
            one.ask.choice = static_cast<int>(k_outcomes[i]);
            keys.push_back(std::move(one));
        }
        add_keys(std::move(keys));
        if (!step_.hint.empty())
            add_keys({hint_key()});
    }

    void working() {
        const std::vector<std::string> lines = solution_lines(sight_);
        if (lines.empty())
            return;
        add(block(Kind::heading,
                  step_.kind == lesson::StepKind::verdict ? "What the plan says" : "Working"));
        for (std::size_t i = 0; i < lines.size() && i < state_.revealed; ++i)
            add(block(Kind::figures, lines[i]));
        const bool may =
            !sight_.hides_answers || sight_.is_tried() || !lesson::is_question(step_.kind);
        const bool done = state_.revealed >= lines.size();
        LessonKey next = key("reveal", "Show the next line", Do::reveal);
        next.primary = !lesson::is_question(step_.kind) && !done;
        LessonKey all = key("reveal-all", "Show all of it", Do::reveal_all);
        for (LessonKey* one : {&next, &all}) {
            one->enabled = may && !done;
            one->why_not = may ? "All of it is shown." : "This lesson wants your answer first.";
        }
        LessonKey cover = key("cover", "Cover it", Do::cover);
        cover.enabled = state_.revealed > 0;
        cover.why_not = "Nothing is shown.";
        add_keys({std::move(next), std::move(all), std::move(cover)});
    }

    void breaking() {
        const lesson::BreakIt& break_it = *step_.break_it;
        add(block(Kind::heading, "Break it"));
        add(block(Kind::words, break_it.words));
        if (!state_.broken) {
            add_keys({key("break", "Break it", Do::break_it)});
            return;
        }
        const lesson::Breaking breaking = lesson::try_to_break(step_,
                                                               sight_.course.step,
                                                               sight_.course.record.seed,
                                                               sight_.course.lesson.style(),
                                                               sight_.catalog);
        add(block(breaking.is_stopped ? Kind::wrong : Kind::unsure,
                  breaking.is_stopped
                      ? breaking.words
                      : "This was not stopped as the lesson says: " + breaking.words));
        if (!break_it.after.empty())
            add(block(Kind::words, break_it.after));
    }

    const StepSight& sight_;
    const lesson::Step& step_;
    LessonStepState state_;
    calc::Input::Object in_;
    std::vector<LessonBlock> out_;
};

void add_working(std::vector<std::string>& lines, const Working& working, const StepSight& sight) {
    const quantity::WorkingText text = quantity::in_words(working, sight.course.lesson.style());
    lines.push_back(text.title + ": " + text.expression);
    for (const std::string& value : text.values)
        lines.push_back(value);
    lines.push_back(text.result);
    if (!text.rounding.empty())
        lines.push_back("Rounding: " + text.rounding);
    lines.push_back("Holds for: " + text.holds_for);
    if (!text.note.empty())
        lines.push_back(text.note);
    const std::string title = sight.source_title ? sight.source_title(text.source) : "";
    lines.push_back("Source: " + (title.empty() ? text.source : title) + " (" + text.evidence +
                    ")");
}

void add_published(std::vector<std::string>& lines,
                   const lesson::Published& published,
                   const AnyQuantity& ours) {
    const auto agreement = lesson::compare(published, ours);
    const bool agrees = agreement && agreement->agrees;
    lines.push_back("Published: " + published.value + ". " + published.where + " (" +
                    base::evidence_words(published.evidence) + ")");
    lines.push_back(agrees ? "Ours agrees within " + published.half + "."
                           : "Ours does not agree with it.");
}

} // namespace

std::vector<LessonBlock> step_blocks(const StepSight& sight) { return Blocks(sight).all(); }

std::vector<std::string> solution_lines(const StepSight& sight) {
    const lesson::Step& step = sight.step();
    const unsigned seed = sight.course.record.seed;
    std::vector<std::string> lines;
    if (step.kind == lesson::StepKind::verdict) {
        const lesson::TrialPlan plan =
            lesson::plan_trial(lesson::part_of(step.trial, seed, sight.course.step),
                               step.trial,
                               sight.course.lesson.style(),
                               sight.catalog);
        lines.push_back("It " + plan.verdict + ".");
        lines.insert(lines.end(), plan.reasons.begin(), plan.reasons.end());
        return lines;
    }
    if (step.asked.calc.empty())
        return lines;
    const auto solved = lesson::solve(step.asked.calc,
                                      lesson::inputs_of(step.asked, seed, sight.course.step),
                                      step.asked.output,
                                      {sight.catalog.grades, sight.catalog.sections});
    if (!solved)
        return {solved.refusal().field + ": " + solved.refusal().reason};
    for (const Working& working : solved->workings)
        add_working(lines, working, sight);
    lines.push_back("Answer: " +
                    lesson::in_both_systems(solved->figure, sight.course.lesson.style()));
    if (step.published)
        add_published(lines, *step.published, solved->figure);
    return lines;
}

std::vector<LessonKey> head_keys(const StepSight& sight, bool can_bring_back) {
    LessonKey present =
        key("present", sight.is_presenting ? "Leave presenter view" : "Present (P)", Do::present);
    present.name = sight.is_presenting ? "Leave presenter view" : "Presenter view";
    if (sight.is_presenting)
        return {std::move(present)}; // the others are folded away
    LessonKey back = key("close", "All lessons", Do::close);
    LessonKey print = key("print", "Print results", Do::print);
    LessonKey link = key("link", "Copy a link", Do::copy_link);
    link.name = "Copy a link to this lesson with these numbers";
    LessonKey numbers = key("numbers", "Other numbers", Do::new_numbers);
    LessonKey reset = key("reset-all", "Reset the lesson", Do::reset_all);
    std::vector<LessonKey> keys{std::move(back),
                                std::move(present),
                                std::move(print),
                                std::move(link),
                                std::move(numbers),
                                std::move(reset)};
    if (can_bring_back)
        keys.push_back(key("bring-back", "Undo the reset", Do::undo_reset));
    return keys;
}

std::vector<LessonKey> foot_keys(const StepSight& sight) {
    LessonKey back = key("back", "Back", Do::back);
    back.name = "Back one step";
    back.enabled = sight.course.step > 0;
    back.why_not = "This is the first step.";
    LessonKey next = key("next", "Next", Do::next);
    next.name = "Next step";
    next.enabled = sight.course.step + 1 < sight.course.lesson.steps.size();
    next.why_not = "This is the last step.";
    std::vector<LessonKey> keys{std::move(back), std::move(next)};
    if (lesson::is_question(sight.step().kind) && !sight.is_presenting)
        keys.push_back(key("reset-step", "Reset this exercise", Do::reset_step));
    if (sight.step().kind == lesson::StepKind::demonstration)
        keys.push_back(key("again", "Begin it anew", Do::begin_again));
    return keys;
}

} // namespace treadle::web
