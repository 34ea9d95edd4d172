#include "lesson/answer.h"

#include "plan/words.h"
#include "quantity/parse.h"
#include "quantity/print.h"

#include <algorithm>

#include "lesson/figure.h"
#include "lesson/numbers.h"

namespace treadle::lesson {

namespace {

using base::Refusal;
using base::Result;

const calc::Calculation* find_calculation(std::string_view name) {
    for (const calc::Calculation* one : calc::all())
        if (name == one->name)
            return one;
    return nullptr;
}

/// A length times a factor, as text that reads back to the same length.
Result<std::string> scaled_text(const std::string& text, double factor, std::string_view name) {
    const auto length = quantity::parse_length(text, std::nullopt, name);
    if (!length)
        return length.refusal();
    return quantity::write_exact(*length * factor, UnitSystem::metric);
}

std::optional<Refusal> scale(calc::Input::Object& in, const std::vector<Scaled>& all) {
    for (const Scaled& scaled : all) {
        const calc::Input* const input = find_input(in, scaled.input);
        if (input == nullptr || input->text() == nullptr)
            return Refusal{scaled.input, "There is no such input to scale.", ""};
        const auto text = scaled_text(*input->text(), scaled.factor, scaled.input);
        if (!text)
            return text.refusal();
        put_over(in, {{scaled.input, calc::Input(*text)}});
    }
    return std::nullopt;
}

std::optional<Refusal> swap(calc::Input::Object& in, const std::vector<std::string>& names) {
    if (names.empty())
        return std::nullopt;
    const calc::Input* const first = names.size() == 2 ? find_input(in, names[0]) : nullptr;
    const calc::Input* const second = names.size() == 2 ? find_input(in, names[1]) : nullptr;
    if (first == nullptr || second == nullptr)
        return Refusal{"swapped", "Two inputs of the exercise are swapped, not these.", ""};
    const calc::Input kept = *first;
    put_over(in, {{names[0], *second}, {names[1], kept}});
    return std::nullopt;
}

/// Another calculation takes what it knows.
void keep_known(calc::Input::Object& in, const calc::Calculation& calculation) {
    const auto unknown = [&](const calc::Input::Member& member) {
        return std::none_of(calculation.inputs.begin(),
                            calculation.inputs.end(),
                            [&](const calc::InputSpec& spec) { return member.first == spec.name; });
    };
    in.erase(std::remove_if(in.begin(), in.end(), unknown), in.end());
}

template <class Q>
Q times(Q value, double factor) {
    return value * factor;
}
quantity::Number times(quantity::Number value, double factor) {
    return {value.value * factor, value.decimals};
}
quantity::Share times(quantity::Share value, double factor) { return {value.value * factor}; }

/// What stands in braces in a text is another input.
calc::Input::Object filled_inputs(const calc::Input::Object& over, const calc::Input::Object& in) {
    calc::Input::Object out = over;
    for (auto& [name, value] : out)
        if (const std::string* const text = value.text())
            value = calc::Input(filled(*text, in));
    return out;
}

quantity::Number plus(quantity::Number a, quantity::Number b, double sign) {
    return {a.value + sign * b.value, a.decimals};
}
quantity::Share plus(quantity::Share a, quantity::Share b, double sign) {
    return {a.value + sign * b.value};
}
Angle plus(Angle a, Angle b, double sign) { return a + b * sign; }
template <class Q>
Q plus(Q a, Q b, double sign) {
    return Q::from_base(a.in_base() + sign * b.in_base());
}

/// Of the same kind, or a refusal.
Result<AnyQuantity> sum(const AnyQuantity& a, const AnyQuantity& b, double sign) {
    if (a.index() != b.index())
        return Refusal{"plus", "Figures of two kinds are not added.", ""};
    return std::visit(
        [&](auto value) {
            return Result<AnyQuantity>(
                AnyQuantity(plus(value, *std::get_if<decltype(value)>(&b), sign)));
        },
        a);
}

std::optional<Refusal> add_other(AnyQuantity& figure,
                                 const std::optional<Other>& other,
                                 double sign,
                                 const calc::Input::Object& inputs,
                                 const calc::Tables& tables) {
    if (!other)
        return std::nullopt;
    calc::Input::Object in = inputs;
    if (const calc::Calculation* const calculation = find_calculation(other->calc))
        keep_known(in, *calculation);
    put_over(in, filled_inputs(other->in, inputs));
    const auto solved = solve(other->calc, in, other->output, tables);
    if (!solved)
        return solved.refusal();
    auto total = sum(figure, solved->figure, sign);
    if (!total)
        return total.refusal();
    figure = std::move(total).value();
    return std::nullopt;
}

/// Those up to the one that ends in the figure: what comes after it answers another question. All
/// of them when none ends in it.
std::vector<Working> leading_to(const AnyQuantity& figure, const std::vector<Working>& all) {
    const auto ends_in_it = [&](const Working& working) {
        return working.result.value.index() == figure.index() &&
               base_value(working.result.value) == base_value(figure);
    };
    const auto last = std::find_if(all.begin(), all.end(), ends_in_it);
    return {all.begin(), last == all.end() ? last : last + 1};
}

} // namespace

Result<Solved> solve(std::string_view calc,
                     const calc::Input::Object& in,
                     std::string_view output,
                     const calc::Tables& tables) {
    const auto answer = calc::run(calc, calc::Input(in), tables);
    if (!answer)
        return answer.refusal();
    for (const calc::Figure& figure : answer->figures) {
        if (figure.name != output)
            continue;
        if (figure.list)
            return Refusal{"answer", "This figure is a list; one figure is asked for.", ""};
        return Solved{figure.value, leading_to(figure.value, answer->workings)};
    }
    return Refusal{"answer", "The calculation gives no figure of this name.", std::string(output)};
}

Result<AnyQuantity> mistaken(const Mistake& mistake,
                             const Asked& asked,
                             const calc::Input::Object& inputs,
                             const calc::Tables& tables) {
    calc::Input::Object in = inputs;
    leave_out(in, mistake.without);
    if (const auto fault = swap(in, mistake.swapped))
        return *fault;
    if (const auto fault = scale(in, mistake.scaled))
        return *fault;
    const std::string& calc = mistake.calc.empty() ? asked.calc : mistake.calc;
    if (!mistake.calc.empty())
        if (const calc::Calculation* const other = find_calculation(calc))
            keep_known(in, *other);
    put_over(in, filled_inputs(mistake.in, inputs));
    const auto solved =
        solve(calc, in, mistake.output.empty() ? asked.output : mistake.output, tables);
    if (!solved)
        return solved.refusal();
    AnyQuantity figure = std::visit(
        [&](auto value) { return AnyQuantity(times(value, mistake.times)); }, solved->figure);
    if (const auto fault = add_other(figure, mistake.plus, 1.0, inputs, tables))
        return *fault;
    if (const auto fault = add_other(figure, mistake.less, -1.0, inputs, tables))
        return *fault;
    if (mistake.add.empty())
        return figure;
    const auto added = read_like(figure, mistake.add);
    if (!added)
        return added.refusal();
    return sum(figure, *added, 1.0);
}

calc::Input::Object broken_inputs(const BreakIt& break_it, calc::Input::Object in) {
    leave_out(in, break_it.without);
    put_over(in, break_it.in);
    return in;
}

TrialPlan plan_trial(const job::PartRef& part,
                     const Trial& trial,
                     PrintStyle style,
                     const job::Catalog& catalog) {
    TREADLE_EXPECT(trial.shop != nullptr);
    job::Job job;
    job.style = style;
    job.parts.push_back(part);
    const plan::PartPlan made = plan::plan_part(part, job, *trial.shop, catalog);
    TrialPlan out;
    out.outcome = made.outcome;
    out.verdict = plan::verdict_words(made, style);
    out.part = plan::part_title(*part, style) + ", " + part->grade;
    if (made.problem) {
        out.reasons.push_back(made.problem->reason);
        return out;
    }
    for (std::size_t i = 0; i < made.operations.size(); ++i) {
        const plan::OperationPlan& operation = made.operations[i];
        const std::string detail = plan::operation_detail(*part, made, i, style);
        out.work.push_back(plan::operation_title(*part, i, style) +
                           (detail.empty() ? "" : ", " + detail));
        for (const plan::Check& check : operation.checks)
            if (check.outcome == made.outcome && check.outcome != plan::Outcome::fits)
                out.reasons.push_back(plan::with_names(plan::sentence(check, style), *trial.shop));
        if (made.outcome == plan::Outcome::fits && operation.deciding != plan::k_none)
            out.reasons.push_back(plan::with_names(
                plan::sentence(operation.checks[static_cast<std::size_t>(operation.deciding)],
                               style),
                *trial.shop));
    }
    return out;
}

const char* outcome_words(plan::Outcome outcome) {
    switch (outcome) {
    case plan::Outcome::fits:
        return "fits";
    case plan::Outcome::fits_up_to:
        return "fits up to a strength";
    case plan::Outcome::cannot_be_said:
        return "cannot be said";
    case plan::Outcome::does_not_fit:
        break;
    }
    return "does not fit";
}

namespace {

std::string input_text(const calc::Input& input) {
    if (const std::string* const text = input.text())
        return *text;
    std::string out;
    if (const calc::Input::List* const list = input.list())
        for (const calc::Input& item : *list)
            out += (out.empty() ? "" : "; ") + input_text(item);
    if (const calc::Input::Object* const object = input.object())
        for (const auto& [name, value] : *object)
            out += (out.empty() ? "" : ", ") + name + " " + input_text(value);
    return out;
}

} // namespace

std::vector<std::string> given_lines(std::string_view calc, const calc::Input::Object& in) {
    const calc::Calculation* const calculation = find_calculation(calc);
    std::vector<std::string> lines;
    for (const auto& [name, value] : in) {
        std::string line = name + ": " + input_text(value);
        if (calculation != nullptr)
            for (const calc::InputSpec& spec : calculation->inputs)
                if (name == spec.name)
                    line += std::string(" (") + spec.meaning + ")";
        std::replace(
            line.begin(), line.begin() + static_cast<std::ptrdiff_t>(name.size()), '_', ' ');
        lines.push_back(std::move(line));
    }
    return lines;
}

std::string output_words(std::string_view calc, std::string_view output) {
    if (const calc::Calculation* const calculation = find_calculation(calc))
        for (const calc::OutputSpec& spec : calculation->outputs)
            if (output == spec.name)
                return spec.meaning;
    return std::string(output);
}

const char* step_kind_words(StepKind kind) {
    switch (kind) {
    case StepKind::words:
        return "To read";
    case StepKind::example:
        return "Worked example";
    case StepKind::exercise:
        return "Exercise";
    case StepKind::verdict:
        return "Will it fit?";
    case StepKind::demonstration:
        return "Demonstration";
    case StepKind::cautions:
        break;
    }
    return "Cautions";
}

} // namespace treadle::lesson
