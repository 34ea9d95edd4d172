#include "lesson/record.h"

#include <algorithm>
#include <utility>

#include "lesson/numbers.h"

namespace treadle::lesson {

namespace {

std::string judged_words(const Tried& tried) {
    std::string words = mark_words(tried.last.mark);
    if (!tried.last.step.empty())
        words += ": " + tried.last.step;
    if (tried.tries > 1)
        words += ", at try " + std::to_string(tried.tries);
    if (tried.looked)
        words += ", after a look at the working";
    if (is_right(tried.last.mark) && !tried.steps.empty()) {
        words += "; on the way: ";
        for (std::size_t i = 0; i < tried.steps.size(); ++i)
            words += (i == 0 ? "" : ", ") + tried.steps[i];
    }
    return words;
}

ResultLine line_of(const Lesson& lesson,
                   std::size_t index,
                   const Record& record,
                   const job::Catalog& catalog) {
    const Step& step = lesson.steps[index];
    const auto found = record.tried.find(index);
    const bool answered = found != record.tried.end() && found->second.tries > 0;
    ResultLine line;
    line.title = step.title;
    if (answered) {
        line.typed = found->second.typed;
        line.judged = judged_words(found->second);
    }
    if (step.kind == StepKind::verdict) {
        const job::PartRef& part = part_of(step.trial, record.seed, index);
        const TrialPlan plan = plan_trial(part, step.trial, lesson.style(), catalog);
        line.question = step.question;
        line.given = plan.work;
        line.given.insert(line.given.begin(), plan.part);
        if (answered)
            line.answer = plan.verdict;
        return line;
    }
    const calc::Input::Object in = inputs_of(step.asked, record.seed, index);
    line.question = filled(step.question, in);
    line.given = given_lines(step.asked.calc, in);
    const auto solved =
        solve(step.asked.calc, in, step.asked.output, {catalog.grades, catalog.sections});
    if (solved && answered)
        line.answer = figure_text(solved->figure, lesson.style());
    if (solved && !solved->workings.empty())
        line.source = solved->workings.front().card->source;
    return line;
}

} // namespace

void note(Record& record, std::size_t step, std::string typed, const Judgement& judged) {
    if (judged.mark == Mark::unreadable)
        return;
    Tried& tried = record.tried[step];
    if (is_right(tried.last.mark) && tried.tries > 0)
        return; // answered: trying on changes no result
    ++tried.tries;
    tried.typed = std::move(typed);
    tried.last = judged;
    if (!judged.step.empty() &&
        std::find(tried.steps.begin(), tried.steps.end(), judged.step) == tried.steps.end())
        tried.steps.push_back(judged.step);
}

void note_look(Record& record, std::size_t step) {
    Tried& tried = record.tried[step];
    if (tried.tries == 0 || !is_right(tried.last.mark))
        tried.looked = true;
}

Count count(const Lesson& lesson, const Record& record) {
    Count count;
    for (std::size_t i = 0; i < lesson.steps.size(); ++i) {
        if (!is_question(lesson.steps[i].kind))
            continue;
        ++count.questions;
        const auto found = record.tried.find(i);
        if (found == record.tried.end() || found->second.tries == 0)
            continue;
        ++count.answered;
        count.right += is_right(found->second.last.mark) ? 1 : 0;
    }
    return count;
}

std::string count_words(const Count& count) {
    if (count.questions == 0)
        return "No questions";
    return std::to_string(count.answered) + " of " + std::to_string(count.questions) +
           " answered, " + std::to_string(count.right) + " right";
}

Results results(const Lesson& lesson, const Record& record, const job::Catalog& catalog) {
    Results out{lesson.title, lesson.author, record.seed, count_words(count(lesson, record)), {}};
    for (std::size_t i = 0; i < lesson.steps.size(); ++i)
        if (is_question(lesson.steps[i].kind))
            out.lines.push_back(line_of(lesson, i, record, catalog));
    return out;
}

} // namespace treadle::lesson
