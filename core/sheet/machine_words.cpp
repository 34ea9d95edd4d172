#include "sheet/machine_words.h"

#include "plan/settings.h"
#include "plan/words.h"
#include "sheet/bend_words.h"
#include "sheet/figures.h"
#include "sheet/machine_ticks.h"
#include "sheet/worksheet.h"

#include <algorithm>
#include <utility>

namespace treadle::sheet {

namespace {

using plan::MachineStep;
using plan::MachineWork;

const plan::PartPlan& part_of(const plan::Plan& plan, const MachineStep& step) {
    return *plan.parts[static_cast<std::size_t>(step.part)];
}
const plan::SetUp& set_up_of(const plan::Plan& plan, const MachineStep& step) {
    return plan.order[static_cast<std::size_t>(step.set_up)];
}

/// "hole 2 of 4", "end 1 of 2"; empty for one position.
std::string position_words(const plan::PartPlan& part, const MachineStep& step) {
    if (step.positions < 2)
        return "";
    const bool hole = std::holds_alternative<job::Punch>(
        part.part->operations[static_cast<std::size_t>(step.operation)]);
    return std::string(hole ? ", hole " : ", end ") + std::to_string(step.position + 1) + " of " +
           std::to_string(step.positions);
}

std::string title_of(const plan::Plan& plan, const MachineStep& step, PrintStyle style) {
    switch (step.kind) {
    case MachineWork::set_up:
        return "";
    case MachineWork::certificate: {
        const auto& operation =
            part_of(plan, step).operations[static_cast<std::size_t>(step.operation)];
        std::string words = plan::verdict_words(operation, style);
        words[0] = 'F';
        return words + ": read the certificate";
    }
    case MachineWork::mark:
        return "Mark the pieces";
    default:
        break;
    }
    const plan::PartPlan& part = part_of(plan, step);
    return plan::operation_title(*part.part, static_cast<std::size_t>(step.operation), style) +
           position_words(part, step);
}

void add_notes(MachineWords& words,
               const plan::Plan& plan,
               const MachineStep& step,
               const job::Job& job,
               const equipment::Shop& shop) {
    const plan::PartPlan& part = part_of(plan, step);
    if (part.bends)
        for (const plan::BendStep& bend : part.bends->steps)
            if (bend.bend == step.operation)
                words.notes.push_back(lies_words(bend));
    if (step.face != section::Face::flat)
        words.notes.push_back(std::string("on ") + section::face_word(step.face));
    if (step.strokes > 1)
        words.notes.push_back(std::to_string(step.strokes) + " strokes for each piece");
    if (step.kind != MachineWork::run)
        return;
    const plan::Step& planned = set_up_of(plan, step).steps[static_cast<std::size_t>(step.step)];
    const std::string batches = plan::batch_words(plan::batches_of(plan, planned));
    if (!batches.empty())
        words.notes.push_back(batches);
    if (plan::pieces_measured(planned.pieces, shop.rules) > 1)
        words.notes.push_back(plan::check_words(planned, shop.rules));
    (void)job;
}

void add_warnings(MachineWords& words,
                  const plan::OperationPlan& operation,
                  const equipment::Shop& shop,
                  PrintStyle style) {
    for (const plan::Check& check : operation.checks)
        if (check.warning)
            words.warnings.push_back(plan::with_names(plan::sentence(check, style), shop));
}

std::string spoken_of(const MachineWords& words, const MachineStep& step) {
    std::string spoken = words.place + ": " + words.mark + ", " + words.title;
    spoken[0] = 'S';
    for (const FigureText& figure : words.figures)
        spoken += ", " + figure.what + " " + figure.digits + " " + figure.unit + " " + figure.from;
    if (step.pieces > 0)
        spoken += ", " + std::to_string(step.pieces) + (step.pieces == 1 ? " piece" : " pieces");
    if (!words.verdict.empty())
        spoken += ", " + words.verdict;
    return spoken + ".";
}

/// "4 of 12 punched", "2 of 5 lines ticked".
std::string count_words(const plan::MachineRun& run, int index, const plan::Plan& plan) {
    const MachineStep& step = run.list.steps[static_cast<std::size_t>(index)];
    if (step.kind == MachineWork::run)
        return std::to_string(plan::pieces_done(run, index)) + " of " +
               std::to_string(plan::pieces_of(step)) + " " +
               done_word(
                   part_of(plan, step).part->operations[static_cast<std::size_t>(step.operation)]);
    return std::to_string(run.done[static_cast<std::size_t>(index)].ticked) + " of " +
           std::to_string(step.ticks.size()) +
           (step.ticks.size() == 1 ? " line ticked" : " lines ticked");
}

} // namespace

FigureText figure_text(const plan::SetFigure& figure, PrintStyle style) {
    using Kind = plan::SetFigure::Kind;
    FigureText text{figure.what, figure.from, {}, {}};
    const auto* length = std::get_if<Length>(&figure.value);
    if (length == nullptr) {
        const auto* angle = std::get_if<Angle>(&figure.value);
        const std::string words = angle != nullptr ? quantity::print(*angle, style) : std::string();
        const std::size_t space = words.find(' ');
        text.digits = words.substr(0, space);
        text.unit = space == std::string::npos ? std::string() : words.substr(space + 1);
        return text;
    }
    text.unit = style.system == UnitSystem::inch ? "in" : "mm";
    const PrintStyle rule{style.system, 32}; // as the lines of the settings print it
    switch (figure.kind) {
    case Kind::stop:
        text.digits = setting_text(*length, style);
        break;
    case Kind::stock:
        text.digits = stock_text(*length, style);
        break;
    case Kind::ram_up:
        text.digits = quantity::print_bare(*length, rule, Rounding::down);
        break;
    case Kind::ram_down:
        text.digits = quantity::print_bare(*length, rule, Rounding::nearest);
        break;
    }
    return text;
}

MachineWords machine_words(const plan::MachineRun& run,
                           int index,
                           const plan::Plan& plan,
                           const job::Job& job,
                           const equipment::Shop& shop,
                           const job::Catalog& catalog) {
    const MachineStep& step = run.list.steps[static_cast<std::size_t>(index)];
    const plan::SetUp& set_up = set_up_of(plan, step);
    MachineWords words;
    words.place =
        "step " + std::to_string(index + 1) + " of " + std::to_string(run.list.steps.size());
    words.title = title_of(plan, step, job.style);
    words.tools = plan::tooling_words(set_up.tools, shop, job.style);
    for (const plan::SetFigure& figure : step.figures)
        words.figures.push_back(figure_text(figure, job.style));
    words.ticks = tick_words({plan, job, shop}, step);
    for (CautionLine& line : set_up_cautions({plan, job, shop, catalog}, set_up))
        words.safety.push_back(std::move(line.words));
    if (step.kind == MachineWork::set_up) {
        words.mark = "Set-up " + std::to_string(step.set_up + 1);
        std::swap(words.title, words.tools); // what is mounted is what this step is about
        if (!set_up.settings.missing.empty())
            words.warnings.push_back(plan::setting_lines(set_up, shop, job.style).back());
        words.safety.insert(words.safety.begin(), tool_change_caution(catalog));
    } else {
        const plan::PartPlan& part = part_of(plan, step);
        const auto& operation = part.operations[static_cast<std::size_t>(step.operation)];
        words.mark = part.part->mark;
        if (step.kind != MachineWork::mark) { // a brush always fits
            words.verdict = plan::verdict_words(operation, job.style);
            words.outcome = operation.outcome;
        }
        words.done = done_word(part.part->operations[static_cast<std::size_t>(step.operation)]);
        if (step.kind == MachineWork::first_piece || step.kind == MachineWork::run) {
            add_notes(words, plan, step, job, shop);
            add_warnings(words, operation, shop, job.style);
        }
    }
    words.safety.emplace_back(manual_decides());
    words.spoken = spoken_of(words, step);
    return words;
}

std::string
resume_words(const plan::MachineRun& run, const plan::Plan& plan, const std::string& when) {
    if (run.list.steps.empty())
        return "";
    std::string words = "You were at step " + std::to_string(run.at + 1) + ": " +
                        count_words(run, run.at, plan) + ".";
    if (!when.empty())
        words += " Last tap " + when + ".";
    return words;
}

std::string open_words(const plan::MachineRun& run, const plan::Plan& plan) {
    constexpr std::size_t k_most = 4;
    const std::vector<int> open = plan::open_steps(run);
    std::string words;
    for (std::size_t i = 0; i < std::min(open.size(), k_most); ++i)
        words += (words.empty() ? "Left open: step " : "; step ") + std::to_string(open[i] + 1) +
                 ", " + count_words(run, open[i], plan);
    if (open.size() > k_most)
        words += "; and " + std::to_string(open.size() - k_most) + " more";
    return words.empty() ? words : words + ".";
}

std::string not_here_words(const plan::NotHere& entry, const plan::Plan& plan, PrintStyle style) {
    const plan::PartPlan& part = *plan.parts[static_cast<std::size_t>(entry.part)];
    return part.part->mark + " is not made here, " + plan::verdict_words(part, style) +
           (entry.reason.empty() ? "." : ": " + entry.reason);
}

} // namespace treadle::sheet
