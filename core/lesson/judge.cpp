#include "lesson/judge.h"

#include <cmath>
#include <utility>

#include "lesson/numbers.h"
#include "lesson/units.h"

namespace treadle::lesson {

namespace {

using base::Refusal;
using base::Result;

/// Within this share of the tolerance an answer is ours, as far as anybody writes it.
constexpr double k_as_good_as_ours = 0.1;
/// A mistake is known within the lesson's tolerance, and never from further off than this.
constexpr double k_slip_share = 0.05;
/// No answer has to be closer than our own print of it.
constexpr double k_least_share = 0.0005;

Result<double> tolerance_of(const Tolerance& tolerance, const AnyQuantity& answer) {
    const double least = std::fabs(base_value(answer)) * k_least_share;
    if (tolerance.amount.empty())
        return std::fmax(least, std::fabs(base_value(answer)) * tolerance.share);
    const auto amount = read_like(answer, tolerance.amount);
    if (!amount)
        return Refusal{"tolerance", amount.refusal().reason, amount.refusal().detail};
    return std::fmax(least, std::fabs(base_value(*amount)));
}

bool near(double a, double b, double tolerance) { return std::fabs(a - b) <= tolerance; }

/// 10, 100 or 1000 times too much or too little.
bool is_decimal_slip(double typed, const Key& key) {
    const double answer = base_value(key.answer);
    for (const double factor : {10.0, 100.0, 1000.0})
        if (near(typed * factor, answer, key.tolerance) ||
            near(typed / factor, answer, key.tolerance))
            return true;
    return false;
}

/// Of two mistakes that lie close together the nearer one.
const Key::Slip* nearest_slip(const Key& key, double value) {
    const Key::Slip* found = nullptr;
    double nearest = std::fmin(key.tolerance, std::fabs(value) * k_slip_share);
    for (const Key::Slip& slip : key.slips) {
        const double off = std::fabs(value - base_value(slip.figure));
        if (off > nearest)
            continue;
        nearest = off;
        found = &slip;
    }
    return found;
}

Judgement wrong(const Key& key, std::string_view text, const AnyQuantity& typed) {
    const double value = base_value(typed);
    if (const Key::Slip* const slip = nearest_slip(key, value))
        return {Mark::wrong_step, slip->step, slip->words};
    if (const auto mixed = mixed_units(key.answer, value, key.tolerance, text))
        return {Mark::wrong_step,
                "Unit",
                "The number is right in " + mixed->meant + ", but it stands there in " +
                    mixed->written + "."};
    if (is_decimal_slip(value, key))
        return {Mark::wrong_step,
                "Decimal point",
                "The digits are right, the decimal point is not. Estimate the size first."};
    const bool more = std::fabs(value) > std::fabs(base_value(key.answer));
    return {Mark::wrong,
            "",
            std::string("That is not it: too ") + (more ? "much" : "little") +
                ". Go through what is given once more, or look at the working."};
}

} // namespace

const char* mark_words(Mark mark) {
    switch (mark) {
    case Mark::right:
        return "right";
    case Mark::within:
        return "near enough";
    case Mark::wrong_step:
        return "wrong step";
    case Mark::wrong:
        return "wrong";
    case Mark::unreadable:
        break;
    }
    return "not readable";
}

Result<Key> key_of(const Step& step, std::size_t index, unsigned seed, const calc::Tables& tables) {
    const calc::Input::Object in = inputs_of(step.asked, seed, index);
    auto solved = solve(step.asked.calc, in, step.asked.output, tables);
    if (!solved)
        return solved.refusal();
    const auto tolerance = tolerance_of(step.tolerance, solved->figure);
    if (!tolerance)
        return tolerance.refusal();
    Key key{solved->figure, *tolerance, std::move(solved).value().workings, {}};
    for (std::size_t i = 0; i < step.mistakes.size(); ++i) {
        const Mistake& mistake = step.mistakes[i];
        const auto figure = mistaken(mistake, step.asked, in, tables);
        const std::string place = "mistakes[" + std::to_string(i) + "]";
        if (!figure)
            return Refusal{place,
                           figure.refusal().field + ": " + figure.refusal().reason,
                           figure.refusal().detail};
        if (figure->index() != key.answer.index())
            return Refusal{place, "Its figure is of another kind than the answer.", ""};
        key.slips.push_back({*figure, mistake.step, filled(mistake.words, in)});
    }
    return key;
}

Judgement judge(const Key& key, std::string_view typed, PrintStyle style) {
    const auto read = read_like(key.answer, typed);
    if (!read) {
        const Refusal& why = read.refusal();
        return {
            Mark::unreadable, "", why.reason + (why.detail.empty() ? "" : " (" + why.detail + ")")};
    }
    const double value = base_value(*read);
    const double answer = base_value(key.answer);
    const double ours =
        std::fmax(key.tolerance * k_as_good_as_ours, std::fabs(answer) * k_least_share);
    if (near(value, answer, ours))
        return {Mark::right, "", "Right: " + figure_text(key.answer, style) + "."};
    if (near(value, answer, key.tolerance))
        return {Mark::within,
                "",
                "Near enough. Worked out without rounding on the way it is " +
                    figure_text(key.answer, style) + "."};
    return wrong(key, typed, *read);
}

Judgement judge(const Step& step, const TrialPlan& plan, plan::Outcome chosen) {
    if (chosen == plan.outcome)
        return {Mark::right, "", "Right: it " + plan.verdict + "."};
    for (const WrongOutcome& wrong : step.wrong_outcomes)
        if (wrong.chosen == chosen)
            return {Mark::wrong_step, wrong.step, wrong.words};
    return {Mark::wrong, "", "The plan says otherwise. Look at the reasons."};
}

} // namespace treadle::lesson
