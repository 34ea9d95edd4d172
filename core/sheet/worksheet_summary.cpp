// What the sheet says first: verdict per part, what cannot be made and why, what to buy.

#include "plan/remedy.h"
#include "plan/words.h"
#include "sheet/figures.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

namespace {

/// Full disc, half disc, broken square, cross: told apart in black and white.
const char* shape_of(plan::Outcome outcome) {
    switch (outcome) {
    case plan::Outcome::fits:
        return "<circle cx=\"6\" cy=\"6\" r=\"5\" fill=\"#000\"/>";
    case plan::Outcome::fits_up_to:
        return "<circle cx=\"6\" cy=\"6\" r=\"5\" fill=\"#fff\" stroke=\"#000\"/>"
               "<path d=\"M6 1A5 5 0 0 0 6 11Z\" fill=\"#000\"/>";
    case plan::Outcome::cannot_be_said:
        return "<path d=\"M1.5 1.5H10.5V10.5H1.5Z\" fill=\"#fff\" stroke=\"#000\" "
               "stroke-width=\"1.5\" stroke-dasharray=\"2.5 2\"/>";
    case plan::Outcome::does_not_fit:
        return "<path d=\"M2 2L10 10M10 2L2 10\" fill=\"none\" stroke=\"#000\" "
               "stroke-width=\"2.5\"/>";
    }
    return "";
}

/// Margin of the operation that decides a part: the worst, and of equals the tightest.
std::string part_margin(const plan::PartPlan& part, PrintStyle style) {
    if (part.problem)
        return part.problem->reason;
    const plan::OperationPlan* worst = nullptr;
    const auto margin = [](const plan::OperationPlan& operation) {
        return operation.deciding == plan::k_none
                   ? 1.0
                   : operation.checks[static_cast<std::size_t>(operation.deciding)].margin;
    };
    for (const plan::OperationPlan& operation : part.operations) {
        const bool worse =
            worst == nullptr || operation.outcome > worst->outcome ||
            (operation.outcome == worst->outcome && !plan::margin_words(operation, style).empty() &&
             (plan::margin_words(*worst, style).empty() || margin(operation) < margin(*worst)));
        if (worse)
            worst = &operation;
    }
    return worst == nullptr ? "no operations" : plan::margin_words(*worst, style);
}

/// Each change was planned: the verdict beside it is the plan's own.
void write_remedies(Html& html,
                    const SheetInputs& in,
                    const plan::PartPlan& part,
                    std::size_t operation) {
    const std::vector<plan::Remedy> list =
        plan::remedies(part, operation, in.job, in.shop, in.catalog);
    html.open("td");
    for (const plan::Remedy& remedy : list)
        html.element("div",
                     remedy.words + ": " + plan::remedy_result_words(remedy, in.shop, in.style));
    if (list.empty())
        html.text("–");
    html.close();
}

} // namespace

void write_verdict(Html& html, plan::Outcome outcome, const std::string& words) {
    html.open("span", "class=\"verdict\"");
    html.markup("<svg viewBox=\"0 0 12 12\" width=\"12\" height=\"12\" aria-hidden=\"true\">");
    html.markup(shape_of(outcome)).markup("</svg>");
    html.text(" " + words).close();
}

void write_summary(Html& html, const SheetInputs& in) {
    const PrintStyle style = in.style;
    html.open("section").element("h2", "Parts and verdicts");
    html.open_table("Every part of the job, with the verdict of its hardest operation",
                    {"Mark", "Pieces", "Part", "Grade", "Blank", "Each", "Verdict", "Margin"},
                    "class=\"summary\"");
    for (const auto& part : in.plan.parts) {
        const job::Part& made = *part->part;
        const Grade* grade = job::find_grade(in.job, in.catalog, made.grade);
        html.open("tr").row_mark(made.mark);
        html.element("td", std::to_string(made.count), "class=\"figure\"");
        html.element("td", plan::part_title(made, style));
        html.element("td", grade != nullptr ? grade->name : made.grade);
        html.element("td",
                     part->blank_length > Length{} ? setting_text(part->blank_length, style)
                                                   : std::string("–"),
                     "class=\"figure\"");
        html.element("td", quantity::print(part->mass_each, style), "class=\"figure\"");
        html.open("td");
        write_verdict(html, part->outcome, plan::verdict_words(*part, style));
        html.close().element("td", plan::with_names(part_margin(*part, style), in.shop)).close();
    }
    html.close_table().close();
}

void write_not_made(Html& html, const SheetInputs& in) {
    bool any = false;
    for (const auto& part : in.plan.parts)
        any = any || part->outcome > plan::Outcome::fits_up_to;
    if (!any)
        return;
    const PrintStyle style = in.style;
    html.open("section").element("h2", "Not to be made as it stands");
    html.element("p", "These parts are in no set-up below. Clear the reason first.");
    html.open_table("Parts that do not fit or of which it cannot be said, with every reason",
                    {"Mark", "Operation", "Verdict", "Reason", "What would make it fit"});
    for (const auto& part : in.plan.parts) {
        if (part->outcome <= plan::Outcome::fits_up_to)
            continue;
        if (part->problem) {
            html.open("tr").row_mark(part->part->mark);
            html.element("td", "whole part").open("td");
            write_verdict(html, part->outcome, plan::verdict_words(*part, style));
            html.close();
            html.element("td", part->problem->reason + " " + part->problem->detail);
            html.element("td", "–").close();
            continue;
        }
        for (std::size_t i = 0; i < part->operations.size(); ++i) {
            const plan::OperationPlan& operation = part->operations[i];
            if (operation.outcome <= plan::Outcome::fits_up_to)
                continue;
            html.open("tr").row_mark(part->part->mark);
            html.element(
                "td", std::to_string(i + 1) + ". " + plan::operation_title(*part->part, i, style));
            html.open("td");
            write_verdict(html, operation.outcome, plan::verdict_words(operation, style));
            html.close().open("td");
            for (const plan::Check& check : operation.checks)
                if (!check.warning && check.outcome > plan::Outcome::fits_up_to)
                    html.element("div", plan::with_names(plan::sentence(check, style), in.shop));
            html.close();
            write_remedies(html, in, *part, i);
            html.close();
        }
    }
    html.close_table().close();
}

void write_shopping(Html& html, const SheetInputs& in) {
    if (in.plan.shopping.empty())
        return;
    html.open("section").element("h2", "Not in the crib");
    html.element("p", "The set-ups below count on these. Buy or borrow them before the work.");
    std::vector<std::string> lines;
    for (const plan::Need& need : in.plan.shopping)
        lines.push_back(plan::need_words(need, in.style));
    write_ticks(html, in, "buy", lines);
    html.close();
}

} // namespace treadle::sheet
