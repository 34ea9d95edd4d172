// One block per part: drawings, metal, blank, and the figures of its bends.

#include "plan/trial_use.h"
#include "plan/words.h"
#include "sheet/drawing.h"
#include "sheet/figures.h"
#include "sheet/trial_sheet.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

namespace {

using quantity::print;
using quantity::print_decimal;

void write_fact(Html& html, const char* name, const std::string& value) {
    if (!value.empty())
        html.open("div").element("dt", name).element("dd", value).close();
}

const char* grain_words(material::Grain grain) {
    switch (grain) {
    case material::Grain::across:
        return "bend lines across the grain";
    case material::Grain::along:
        return "bend lines along the grain";
    case material::Grain::unknown:
        break;
    }
    return "not known, counted as along the bend lines";
}

bool has_bends(const plan::PartPlan& part) { return !part.part->legs.empty(); }

void write_facts(Html& html, const SheetInputs& in, const plan::PartPlan& part) {
    const PrintStyle style = in.style;
    const Grade* grade = job::find_grade(in.job, in.catalog, part.part->grade);
    html.open("dl", "class=\"facts\"");
    write_fact(html, "Pieces", std::to_string(part.part->count));
    write_fact(html, "Grade", grade != nullptr ? grade->name : part.part->grade);
    if (part.blank_length > Length{})
        write_fact(html, "Blank", with_unit(part.blank_length, style));
    if (part.mass_each > Mass{})
        write_fact(html, "Mass of a blank", print(part.mass_each, style));
    if (part.part->certified_tensile > Stress{})
        write_fact(html, "Certificate", print(part.part->certified_tensile, style));
    if (has_bends(part))
        write_fact(html, "Grain", grain_words(part.part->grain));
    write_fact(html, "Note", part.part->note);
    html.close();
}

void write_bends(Html& html, const SheetInputs& in, const plan::PartPlan& part) {
    if (!has_bends(part) || part.problem)
        return;
    const PrintStyle style = in.style;
    html.open_table("Bends of " + part.part->mark + ", air bent",
                    {"Operation",
                     "Turned through",
                     "Opening angle",
                     "Inside radius",
                     "V",
                     "Deduction",
                     "K",
                     "K from"});
    for (std::size_t i = 0; i < part.operations.size(); ++i) {
        const auto* bend = std::get_if<job::Bend>(&part.part->operations[i]);
        if (bend == nullptr)
            continue;
        const plan::OperationPlan& operation = part.operations[i];
        html.open("tr").element("th", std::to_string(i + 1), "scope=\"row\"");
        html.element("td", print(bend->angle, style) + (bend->up ? " up" : " down"));
        html.element("td", print(degrees(180.0) - bend->angle, style));
        html.element("td", print_decimal(operation.bend.radius, style));
        html.element("td", stock_text(operation.tools.opening, style));
        html.element("td", print_decimal(operation.figures.deduction, style));
        html.element("td",
                     quantity::print_working(quantity::Number{operation.figures.k, 3}, style));
        html.element("td",
                     plan::blank_source_words(operation.blank_source) +
                         (operation.trial == plan::k_none
                              ? std::string()
                              : " " + std::to_string(operation.trial + 1)));
        html.close();
    }
    html.close_table();
}

/// Verdict of every operation, and whatever is said beside it.
void write_operations(Html& html, const SheetInputs& in, const plan::PartPlan& part) {
    const PrintStyle style = in.style;
    html.open_table("Operations of " + part.part->mark + ", numbered as in the drawing",
                    {"No.", "Operation", "Tools", "Verdict", "Margin"},
                    "class=\"ops\"");
    for (std::size_t i = 0; i < part.operations.size(); ++i) {
        const plan::OperationPlan& operation = part.operations[i];
        html.open("tr").element("th", std::to_string(i + 1), "scope=\"row\"").open("td");
        html.element("div", plan::operation_title(*part.part, i, style));
        for (const plan::Check& check : operation.checks)
            if (check.warning)
                html.element("div",
                             plan::with_names(plan::sentence(check, style), in.shop),
                             "class=\"small\"");
        html.close();
        html.element("td", plan::tooling_words(operation.tools, in.shop, style)).open("td");
        write_verdict(html, operation.outcome, plan::verdict_words(operation, style));
        html.close()
            .element("td", plan::with_names(plan::margin_words(operation, style), in.shop))
            .close();
    }
    html.close_table();
}

/// A plain flat's finished shape is its flat view again.
bool finished_differs(const plan::PartPlan& part) {
    const section::Shape shape = part.part->section.shape;
    return has_bends(part) || (shape != section::Shape::flat && shape != section::Shape::plate);
}

void write_drawings(Html& html, const SheetInputs& in, const plan::PartPlan& part) {
    html.open("div", "class=\"drawings\"").open("figure");
    html.markup(
        to_svg(draw_flat(part, quantity::one_system(in.style)), k_flat_width_mm, k_flat_height_mm));
    html.element("figcaption", has_bends(part) ? "Flat, before bending" : "Setting out").close();
    if (finished_differs(part)) {
        html.open("figure");
        html.markup(to_svg(draw_finished(part, quantity::one_system(in.style)),
                           k_finished_width_mm,
                           k_finished_height_mm));
        html.element("figcaption",
                     has_bends(part) ? "Finished, outside lengths"
                                     : "Section, length not to scale");
        html.close();
    }
    html.close();
}

} // namespace

void write_parts(Html& html, const SheetInputs& in) {
    if (in.plan.parts.empty())
        return;
    html.open("section", "class=\"parts\"").element("h2", "Part drawings");
    html.element("p",
                 "Running dimensions count from the heavy datum end and datum edge; each figure "
                 "is complete in itself, never add them up.");
    for (const auto& part : in.plan.parts) {
        html.open("section", "class=\"part\"");
        html.element("h3", part->part->mark + "  " + plan::part_title(*part->part, in.style));
        write_facts(html, in, *part);
        write_drawings(html, in, *part);
        write_operations(html, in, *part);
        write_bends(html, in, *part);
        write_bend_order(html, in, *part);
        write_leg_spreads(html, in, *part);
        html.close();
    }
    html.close();
}

} // namespace treadle::sheet
