#include "cli/lesson_command.h"

#include "archive/archive.h"
#include "archive/lesson_file.h"
#include "base/json_writer.h"
#include "cli/files.h"
#include "quantity/parse.h"
#include "quantity/working_text.h"

#include "lesson/check.h"
#include "lesson/numbers.h"

namespace treadle::cli {

namespace {

using base::Refusal;
using base::Result;

constexpr unsigned k_seeds_tried = 20;
constexpr const char* k_example = "treadle lesson FILE.json [--seed 7]";

struct Asked {
    std::string file;
    unsigned seed = 1;
};

Result<Asked> asked_in(const std::vector<std::string>& words) {
    Asked asked;
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i] == "--seed" && i + 1 < words.size()) {
            const auto seed = quantity::parse_whole(words[++i], "seed");
            if (!seed)
                return seed.refusal();
            if (*seed < 0 || *seed > static_cast<int>(lesson::k_most_seed))
                return Refusal{"seed", "This is no seed.", "from 0 to 9999"};
            asked.seed = static_cast<unsigned>(*seed);
        } else if (asked.file.empty() && words[i].rfind("--", 0) != 0) {
            asked.file = words[i];
        } else {
            return Refusal{"command", "This word is not known here.", words[i]};
        }
    }
    if (asked.file.empty())
        return Refusal{"file", "One lesson file is needed.", k_example};
    return asked;
}

/// Prints one lesson as one seed has it.
class Printer {
public:
    Printer(const lesson::Lesson& lesson, unsigned seed, const job::Catalog& catalog)
        : lesson_(lesson),
          seed_(seed),
          catalog_(catalog) {}

    [[nodiscard]] std::string all() && {
        line(0, lesson_.title);
        line(0, lesson_.about);
        line(0, "numbers: set " + std::to_string(seed_));
        for (std::size_t i = 0; i < lesson_.steps.size(); ++i)
            step(lesson_.steps[i], i);
        const auto faults = lesson::faults_of(lesson_, seed_, catalog_);
        line(0, "");
        line(0, faults.empty() ? "Nothing is wrong with it." : "Wrong with it:");
        for (const Refusal& fault : faults)
            line(1,
                 fault.field + ": " + fault.reason +
                     (fault.detail.empty() ? "" : " (" + fault.detail + ")"));
        return std::move(out_);
    }

private:
    void line(int indent, const std::string& words) {
        out_ += std::string(static_cast<std::size_t>(indent) * 2, ' ') + words + "\n";
    }
    void lines(int indent, const std::vector<std::string>& all) {
        for (const std::string& one : all)
            line(indent, one);
    }

    void step(const lesson::Step& step, std::size_t index) {
        line(0, "");
        line(0,
             std::to_string(index + 1) + ". " + lesson::step_kind_words(step.kind) + ": " +
                 step.title);
        const calc::Input::Object in = lesson::inputs_of(step.asked, seed_, index);
        for (const std::string& words : step.words)
            line(1, lesson::filled(words, in));
        if (!step.question.empty())
            line(1, lesson::filled(step.question, in));
        for (const lesson::Card& card : step.cards)
            line(1, card.title + ": " + card.words);
        if (!step.asked.calc.empty()) {
            lines(2, lesson::given_lines(step.asked.calc, in));
            figures(step, index);
        }
        if (step.kind == lesson::StepKind::verdict)
            verdict(step, index);
        if (step.break_it) {
            line(1, "Break it: " + step.break_it->words);
            line(2, lesson::try_to_break(step, index, seed_, lesson_.style(), catalog_).words);
        }
    }

    void figures(const lesson::Step& step, std::size_t index) {
        const auto key = lesson::key_of(step, index, seed_, {catalog_.grades, catalog_.sections});
        if (!key)
            return line(2, key.refusal().field + ": " + key.refusal().reason);
        line(2, "answer: " + lesson::in_both_systems(key->answer, lesson_.style()));
        if (step.published)
            line(2,
                 "published: " + step.published->value + " (" + step.published->where + ", " +
                     base::evidence_words(step.published->evidence) + ")");
        for (const Working& working : key->workings)
            lines(3, quantity::working_lines(working, lesson_.style()));
        for (const lesson::Key::Slip& slip : key->slips)
            line(2,
                 slip.step + ": " + lesson::figure_text(slip.figure, lesson_.style()) + " - " +
                     slip.words);
    }

    void verdict(const lesson::Step& step, std::size_t index) {
        const lesson::TrialPlan plan = lesson::plan_trial(
            lesson::part_of(step.trial, seed_, index), step.trial, lesson_.style(), catalog_);
        line(2, plan.part);
        lines(2, plan.work);
        line(2, "answer: " + plan.verdict);
        lines(3, plan.reasons);
    }

    const lesson::Lesson& lesson_;
    unsigned seed_;
    const job::Catalog& catalog_;
    std::string out_;
};

} // namespace

Result<std::string> lesson_answer(const std::vector<std::string>& words) {
    const auto asked = asked_in(words);
    if (!asked)
        return asked.refusal();
    const auto bytes = read_bytes(asked->file);
    if (!bytes)
        return bytes.refusal();
    const auto lesson = archive::read_lesson(*bytes);
    if (!lesson)
        return lesson.refusal();
    const auto catalog = archive::read_catalog();
    if (!catalog)
        return catalog.refusal();
    return Printer(*lesson, asked->seed, *catalog).all();
}

Result<std::string> check_lesson(std::string_view bytes) {
    const auto lesson = archive::read_lesson(bytes);
    if (!lesson)
        return lesson.refusal();
    const auto catalog = archive::read_catalog();
    if (!catalog)
        return catalog.refusal();
    for (unsigned seed = 1; seed <= k_seeds_tried; ++seed) {
        const auto faults = lesson::faults_of(*lesson, seed, *catalog);
        if (faults.empty())
            continue;
        Refusal first = faults.front();
        first.detail += (first.detail.empty() ? "" : "; ") +
                        std::string("with the numbers of set ") + std::to_string(seed) + ", " +
                        std::to_string(faults.size()) + " wrong";
        return first;
    }
    base::JsonWriter json;
    json.begin_object().field("ok", true).field("kind", "lesson");
    json.field("version", archive::k_lesson_version).field("title", lesson->title);
    json.field("steps", static_cast<int>(lesson->steps.size())).end_object();
    return json.take() + "\n";
}

} // namespace treadle::cli
