// Set-ups in working order, each with its steps, their running dimensions and room for a tick.

#include "base/stable_sort.h"
#include "plan/batches.h"
#include "plan/scrap.h"
#include "plan/words.h"
#include "sheet/figures.h"
#include "sheet/machine_words.h"
#include "sheet/worksheet_parts.h"

#include <algorithm>
#include <utility>

namespace treadle::sheet {

namespace {

constexpr std::size_t k_most_kept_steps = 6;

const job::Operation& operation_of(const SheetInputs& in, const plan::Step& step) {
    return in.plan.parts[static_cast<std::size_t>(step.part)]
        ->part->operations[static_cast<std::size_t>(step.operation)];
}

/// "across 1-1/2: along 1, 5, 9", a line for every row of holes.
std::vector<std::string> hole_rows(const plan::PartPlan& part, int operation, PrintStyle style) {
    std::vector<const plan::Mark*> marks;
    for (const plan::Mark& mark : part.marks)
        if (mark.operation == operation)
            marks.push_back(&mark);
    base::stable_sort(marks, [](const plan::Mark* a, const plan::Mark* b) { return a->y < b->y; });
    std::vector<std::string> rows;
    const plan::Mark* last = nullptr;
    for (const plan::Mark* mark : marks) {
        if (last == nullptr || last->y < mark->y)
            rows.push_back("across " + setting_text(mark->y, style) + ": along ");
        else
            rows.back() += ", ";
        rows.back() += setting_text(mark->x, style);
        last = mark;
    }
    return rows;
}

const char* place_words(job::NotchEdge edge) {
    switch (edge) {
    case job::NotchEdge::near_edge:
        return "datum edge";
    case job::NotchEdge::far_edge:
        return "far edge";
    case job::NotchEdge::start_end:
        return "datum end";
    case job::NotchEdge::finish_end:
        return "far end";
    case job::NotchEdge::start_near:
        return "corner at the datum end, datum edge";
    case job::NotchEdge::start_far:
        return "corner at the datum end, far edge";
    case job::NotchEdge::finish_near:
        return "corner at the far end, datum edge";
    case job::NotchEdge::finish_far:
        return "corner at the far end, far edge";
    }
    return "";
}

std::string notch_place(const job::Notch& notch, PrintStyle style) {
    std::string text = place_words(notch.edge);
    if (notch.edge == job::NotchEdge::near_edge || notch.edge == job::NotchEdge::far_edge)
        text += ", centre along " + setting_text(notch.at, style);
    else if (notch.edge == job::NotchEdge::start_end || notch.edge == job::NotchEdge::finish_end)
        text += ", centre across " + setting_text(notch.at, style);
    return text;
}

const char* end_words(job::End end) {
    return end == job::End::start    ? "the datum end"
           : end == job::End::finish ? "the far end"
                                     : "both ends";
}

/// Where to set the stops for a step, a line for each row.
std::vector<std::string> places(const SheetInputs& in, const plan::Step& step) {
    const plan::PartPlan& part = *in.plan.parts[static_cast<std::size_t>(step.part)];
    const job::Operation& operation = operation_of(in, step);
    const PrintStyle style = in.style;
    if (std::holds_alternative<job::Punch>(operation))
        return hole_rows(part, step.operation, style);
    if (const auto* notch = std::get_if<job::Notch>(&operation))
        return {notch_place(*notch, style)};
    if (const auto* saddle = std::get_if<job::Saddle>(&operation))
        return {std::string("at ") + end_words(saddle->end)};
    if (const auto* cut = std::get_if<job::Cut>(&operation)) {
        if (cut->side == job::CutSide::width)
            return {"width " + stock_text(part.blank_width, style)};
        std::vector<std::string> rows{"length " + setting_text(part.blank_length, style)};
        if (cut->start_mitre != Angle{})
            rows.push_back("datum end " + quantity::print(cut->start_mitre, style) +
                           " from square");
        if (cut->finish_mitre != Angle{})
            rows.push_back("far end " + quantity::print(cut->finish_mitre, style) + " from square");
        return rows;
    }
    std::vector<std::string> rows;
    for (const plan::Mark& mark : part.marks)
        if (mark.kind == plan::Mark::Kind::bend_line && mark.operation == step.operation)
            rows.push_back("bend line along " + setting_text(mark.x, style));
    const Length travel = part.operations[static_cast<std::size_t>(step.operation)].travel;
    if (travel > Length{})
        rows.push_back("ram down " + setting_text(travel, style) + " from touching the sheet");
    for (std::string& setting : bend_settings(part, step.operation, style))
        rows.push_back(std::move(setting));
    return rows;
}

/// Tool sizes that stay for the whole set-up and are set by hand.
std::vector<std::string> settings(const SheetInputs& in, const plan::SetUp& set_up) {
    std::vector<std::string> lines = plan::setting_lines(set_up, in.shop, in.style);
    const job::Operation& first = operation_of(in, set_up.steps.front());
    std::string by_hand = by_hand_words(first);
    if (!by_hand.empty())
        lines.push_back(std::move(by_hand));
    return lines;
}

void write_steps(Html& html,
                 const SheetInputs& in,
                 const plan::SetUp& set_up,
                 const std::string& caption) {
    const PrintStyle style = in.style;
    html.open_table(caption,
                    {"Done", "Mark", "Operation", "From the datum", "Pieces", "Strokes"},
                    "class=\"steps\"");
    for (const plan::Step& step : set_up.steps) {
        const plan::PartPlan& part = *in.plan.parts[static_cast<std::size_t>(step.part)];
        const auto index = static_cast<std::size_t>(step.operation);
        html.open("tr").open("td");
        write_tick(html,
                   in,
                   "step/" + part.part->id + "/" + std::to_string(step.operation),
                   part.part->mark + ", operation " + std::to_string(step.operation + 1));
        html.close();
        html.row_mark(part.part->mark).open("td");
        html.element("div",
                     std::to_string(index + 1) + ". " +
                         plan::operation_title(*part.part, index, style));
        html.element("div",
                     "each piece: " + plan::operation_detail(*part.part, part, index, style),
                     "class=\"small\"");
        html.element("div", plan::check_words(step, in.shop.rules), "class=\"small\"");
        const std::string mark = plan::mark_words(in.plan, step, in.shop.rules);
        if (!mark.empty())
            html.open("div", "class=\"small\"").element("strong", mark).close();
        if (part.operations[index].outcome == plan::Outcome::fits_up_to)
            html.open("div", "class=\"small\"")
                .element("strong",
                         "Certificate first: " + plan::verdict_words(part.operations[index], style))
                .close();
        html.close().open("td", "class=\"set\"");
        for (const std::string& place : places(in, step))
            html.element("div", place);
        html.close();
        html.open("td", "class=\"figure\"").text(std::to_string(step.pieces));
        const std::string batches = plan::batch_words(plan::batches_of(in.plan, step));
        if (!batches.empty())
            html.element("div", batches, "class=\"small batch\"");
        html.close();
        html.element("td", std::to_string(step.strokes), "class=\"figure\"").close();
    }
    html.close_table();
}

void write_set_up_cautions(Html& html, const SheetInputs& in, const plan::SetUp& set_up) {
    html.open("ul", "class=\"cautions small\"");
    for (const CautionLine& line : set_up_cautions({in.plan, in.job, in.shop, in.catalog}, set_up))
        html.open("li")
            .text(line.words + " ")
            .element("span", line.anchor, "class=\"anchor\"")
            .close();
    html.close();
}

} // namespace

void write_set_ups(Html& html, const SheetInputs& in) {
    html.open("section").element("h2", "Set-ups in order");
    if (in.plan.order.empty())
        html.element("p", "No operation of this job can be set up yet.");
    else
        html.element("p", plan::order_words(in.plan) + ".");
    int number = 0;
    for (const plan::SetUp& set_up : in.plan.order) {
        if (set_up.steps.empty())
            continue;
        ++number;
        const std::string title = "Set-up " + std::to_string(number);
        // A short set-up stays on one page; a long one would leave half a page empty.
        const bool whole = set_up.steps.size() <= k_most_kept_steps;
        html.open("section", whole ? "class=\"setup keep\"" : "class=\"setup\"");
        html.element("h3", title + ". " + plan::tooling_words(set_up.tools, in.shop, in.style));
        write_ticks(html, in, "set/" + std::to_string(number), settings(in, set_up));
        write_set_up_cautions(html, in, set_up);
        write_steps(html, in, set_up, "Steps of set-up " + std::to_string(number));
        write_first_pieces(html, in, set_up, number);
        for (const std::string& line : plan::scrap_words(in.plan, set_up, in.style))
            html.element("p", line, "class=\"small scrap\"");
        html.close();
    }
    html.close();
}

} // namespace treadle::sheet
