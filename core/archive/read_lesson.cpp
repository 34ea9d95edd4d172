#include "archive/archive.h"
#include "archive/lesson_file.h"
#include "archive/lesson_readers.h"
#include "archive/lesson_words.h"
#include "archive/readers.h"
#include "base/text.h"
#include "quantity/input_limits.h"
#include "quantity/parse.h"

#include "assets/embedded.h"

#include <cmath>
#include <memory>
#include <utility>

namespace treadle::archive {

using base::Refusal;

namespace {

/// Text as people read it: clean, and no book.
void check_text(const Place& at,
                const std::string& text,
                const char* field,
                quantity::Presence presence = quantity::Presence::optional,
                std::size_t most = quantity::k_longest_note) {
    if (at.failed())
        return;
    if (const auto fault = quantity::text_fault(text, field, presence, most))
        at.refuse(*fault);
}

void check_name(const Place& at, const std::string& text, const char* field) {
    check_text(at, text, field, quantity::Presence::required, quantity::k_longest_name);
}

/// A share or a fraction that is above zero.
void take_factor(const Place& at, const std::string& text, const char* field, double& out) {
    if (at.failed())
        return;
    const auto factor = quantity::parse_ratio(text, field);
    if (!factor)
        return at.refuse(factor.refusal());
    if (!(*factor > 0.0) || !std::isfinite(*factor))
        return at.refuse("The factor has to be above zero.", "", field);
    out = *factor;
}

struct ShopChoice {
    std::shared_ptr<const equipment::Shop> shop;
    std::string words;
};

} // namespace

// Found by the reader of lists through their argument, so not hidden in this file.
void read_value(const Place& at, lesson::Scaled& out);
void read_value(const Place& at, lesson::Other& out);
void read_value(const Place& at, lesson::Mistake& out);
void read_value(const Place& at, lesson::Published& out);
void read_value(const Place& at, lesson::BreakIt& out);
void read_value(const Place& at, lesson::WrongOutcome& out);
void read_value(const Place& at, lesson::Card& out);
void read_value(const Place& at, lesson::Step& out);
static void read_value(const Place& at, ShopChoice& out);

void read_value(const Place& at, lesson::Scaled& out) {
    std::string factor;
    Members members(at);
    members.need("input", out.input).need("times", factor);
    members.finish();
    take_factor(at, factor, "times", out.factor);
}

void read_value(const Place& at, lesson::Other& out) {
    Members members(at);
    members.need("calc", out.calc).may("in", out.in).need("answer", out.output);
    members.finish();
}

void read_value(const Place& at, lesson::Mistake& out) {
    std::string times = "1";
    Members members(at);
    members.need("step", out.step).need("words", out.words);
    members.may("in", out.in).may("without", out.without).may("scaled", out.scaled);
    members.may("swapped", out.swapped).may("calc", out.calc).may("answer", out.output);
    members.may("times", times).may("plus", out.plus).may("less", out.less);
    members.may("add", out.add);
    members.finish();
    check_name(at, out.step, "step");
    check_text(at, out.words, "words", quantity::Presence::required);
    take_factor(at, times, "times", out.times);
}

void read_value(const Place& at, lesson::Published& out) {
    Members members(at);
    members.need("value", out.value).need("half", out.half).need("where", out.where);
    members.may("source", out.source).may("evidence", out.evidence);
    members.finish();
    check_name(at, out.value, "value");
    check_name(at, out.half, "half");
    check_text(at, out.where, "where", quantity::Presence::required);
    check_text(at, out.source, "source", quantity::Presence::optional, quantity::k_longest_name);
}

namespace {

/// Parts are checked one by one, as a job checks its own.
void check_parts(const Place& at, const std::vector<job::PartRef>& parts) {
    check_count(at, parts, lesson::k_most_sets, "parts");
    for (std::size_t i = 0; i < parts.size() && !at.failed(); ++i)
        if (const auto sound = job::checked(*parts[i]); !sound)
            at.refuse(quantity::inside("parts", i, sound.refusal()));
}

/// Reads `shop` and `parts`; finish() is the caller's.
void read_trial(Members& members, lesson::Trial& out) {
    ShopChoice choice;
    members.may("shop", choice).may("parts", out.parts);
    out.shop = std::move(choice.shop);
    out.shop_words = std::move(choice.words);
}

std::optional<File> demo_file(const Place& at, Demo demo) {
    const std::string path = demo_path(word_for(demo));
    auto file = read_file(assets::embedded(path).value_or(""));
    if (file)
        return std::move(file).value();
    at.refuse("The demo job is missing from this build.", path);
    return std::nullopt;
}

} // namespace

static void read_value(const Place& at, ShopChoice& out) {
    if (at.node().kind != Kind::text) {
        auto shop = std::make_shared<equipment::Shop>();
        read_value(at, *shop);
        out.words = shop->name;
        out.shop = std::move(shop);
        return;
    }
    auto demo = Demo::inch;
    read_value(at, demo);
    if (at.failed())
        return;
    if (auto file = demo_file(at, demo))
        out.shop = std::make_shared<const equipment::Shop>(std::move(file->shop));
    out.words = word_for(demo);
}

void read_value(const Place& at, lesson::BreakIt& out) {
    Members members(at);
    members.need("words", out.words).may("in", out.in).may("without", out.without);
    members.may("refused_at", out.refused_at).may("outcome", out.outcome);
    members.may("after", out.after);
    read_trial(members, out.trial);
    members.finish();
    check_text(at, out.words, "words", quantity::Presence::required);
    check_text(at, out.after, "after");
    if (at.failed())
        return;
    const bool has_part = !out.trial.parts.empty() && out.trial.shop != nullptr;
    if (out.refused_at.empty() != has_part)
        return at.refuse("Either the input at which the calculation refuses, or a shop with parts.",
                         "",
                         "refused_at");
    if (has_part && out.outcome == plan::Outcome::fits)
        return at.refuse("What is broken must not fit.", "", "outcome");
    check_parts(at, out.trial.parts);
}

void read_value(const Place& at, lesson::WrongOutcome& out) {
    Members members(at);
    members.need("chosen", out.chosen).need("step", out.step).need("words", out.words);
    members.finish();
    check_name(at, out.step, "step");
    check_text(at, out.words, "words", quantity::Presence::required);
}

void read_value(const Place& at, lesson::Card& out) {
    Members members(at);
    members.need("title", out.title).need("words", out.words);
    members.finish();
    check_name(at, out.title, "title");
    check_text(at, out.words, "words", quantity::Presence::required);
}

namespace {

/// "2 %" is a share of the answer, "1/32 in" an amount.
void take_tolerance(const Place& at, const std::string& text, lesson::Tolerance& out) {
    if (text.empty() || at.failed())
        return;
    if (text.find('%') == text.npos) {
        out.amount = text;
        return;
    }
    take_factor(at, text, "tolerance", out.share);
    if (!at.failed() && out.share > 0.2)
        at.refuse("Such a tolerance lets anything be right.", "at most 20 %", "tolerance");
}

void read_asked(Members& members, lesson::Asked& out) {
    members.need("calc", out.calc).need("in", out.in).may("vary", out.vary);
    members.need("answer", out.output);
}

void read_example(Members& members, lesson::Step& out) {
    read_asked(members, out.asked);
    members.may("published", out.published).may("break", out.break_it);
}

void read_exercise(Members& members, const Place& at, lesson::Step& out) {
    std::string tolerance;
    members.need("ask", out.question).may("hint", out.hint);
    read_asked(members, out.asked);
    members.may("tolerance", tolerance).may("mistakes", out.mistakes);
    take_tolerance(at, tolerance, out.tolerance);
    check_count(at, out.mistakes, lesson::k_most_mistakes, "mistakes");
}

void read_verdict(Members& members, const Place& at, lesson::Step& out) {
    members.need("ask", out.question).may("hint", out.hint).may("wrong", out.wrong_outcomes);
    read_trial(members, out.trial);
    if (at.failed())
        return;
    if (out.trial.shop == nullptr || out.trial.parts.empty())
        return at.refuse("A verdict needs a shop and a part at least.", "", "parts");
    check_parts(at, out.trial.parts);
}

void read_show(Members& members, lesson::Step& out) {
    auto demo = Demo::inch;
    lesson::Demonstration& show = out.demonstration;
    members.need("open", show.opens).need("job", demo).may("grade", show.grade);
    members.may("part", show.part).may("place", show.place);
    show.job = word_for(demo);
}

} // namespace

void read_value(const Place& at, lesson::Step& out) {
    Members members(at);
    members.need("do", out.kind).need("title", out.title).may("words", out.words);
    switch (out.kind) {
    case lesson::StepKind::words:
        break;
    case lesson::StepKind::example:
        read_example(members, out);
        break;
    case lesson::StepKind::exercise:
        read_exercise(members, at, out);
        break;
    case lesson::StepKind::verdict:
        read_verdict(members, at, out);
        break;
    case lesson::StepKind::demonstration:
        read_show(members, out);
        break;
    case lesson::StepKind::cautions:
        members.need("cards", out.cards);
        break;
    }
    members.finish();
    check_name(at, out.title, "title");
    check_count(at, out.words, lesson::k_most_steps, "words");
    for (std::size_t i = 0; i < out.words.size(); ++i)
        check_text(at, out.words[i], "words", quantity::Presence::required);
    if (lesson::is_question(out.kind))
        check_text(at, out.question, "ask", quantity::Presence::required);
    check_text(at, out.hint, "hint");
    check_count(at, out.cards, lesson::k_most_steps, "cards");
}

namespace {

void read_contents(Members& members, const Place& root, lesson::Lesson& out) {
    members.need("units", out.units).need("title", out.title).may("about", out.about);
    members.may("author", out.author).need("steps", out.steps);
    members.finish();
    check_name(root, out.title, "title");
    check_text(root, out.about, "about");
    check_text(root, out.author, "author", quantity::Presence::optional, quantity::k_longest_name);
    check_count(root, out.steps, lesson::k_most_steps, "steps");
    if (!root.failed() && out.steps.empty())
        root.refuse("A lesson has one step at least.", "", "steps");
}

} // namespace

std::string demo_path(std::string_view name) { return "demo/" + std::string(name) + ".json"; }

base::Result<lesson::Lesson> read_lesson(std::string_view bytes) {
    if (bytes.size() > k_largest_lesson)
        return Refusal{"file", "The file is larger than any lesson.", "at most 512 KB"};
    const base::Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    const Place root(reading, 0);
    Members members(root);
    std::string format;
    int version = 0;
    members.need("format", format);
    if (!root.failed() && format != "treadle-lesson")
        root.refuse("This is not a lesson of Treadle.", "\"treadle-lesson\"", "format");
    members.need("version", version);
    if (!root.failed() && (version < k_oldest_version || version > k_lesson_version))
        root.refuse(version > k_lesson_version
                        ? "This lesson was made for a newer Treadle; it was not read."
                        : "There was never such a version of the format.",
                    "this one reads up to version " + std::to_string(k_lesson_version),
                    "version");
    lesson::Lesson lesson;
    read_contents(members, root, lesson);
    if (reading.refusal)
        return std::move(*reading.refusal);
    return lesson;
}

base::Result<std::vector<BuiltInLesson>> read_built_in_lessons() {
    constexpr std::string_view k_folder = "lessons/";
    constexpr std::string_view k_ending = ".json";
    std::vector<BuiltInLesson> lessons;
    for (const std::string_view path : assets::embedded_under(k_folder)) {
        auto lesson = read_lesson(assets::embedded(path).value_or(""));
        if (!lesson)
            return quantity::inside(path, lesson.refusal());
        const std::string_view name = path.substr(k_folder.size());
        lessons.push_back({std::string(name.substr(0, name.size() - k_ending.size())),
                           std::move(lesson).value()});
    }
    return lessons;
}

} // namespace treadle::archive
