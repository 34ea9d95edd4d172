#include "sheet/worksheet.h"

#include "base/text.h"
#include "plan/handling.h"
#include "plan/job_time.h"
#include "plan/power_check.h"
#include "plan/words.h"
#include "quantity/working_text.h"
#include "sheet/trial_sheet.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

namespace {

void write_head(Html& html, const SheetInputs& in) {
    html.open("head");
    html.empty("meta", "charset=\"utf-8\"");
    html.empty("meta", "name=\"viewport\" content=\"width=device-width, initial-scale=1\"");
    html.title("Worksheet: " + in.job.name);
    if (in.options.style_address.empty())
        html.open("style").markup(worksheet_style()).close();
    else
        html.empty("link",
                   "rel=\"stylesheet\" href=\"" + base::escape_markup(in.options.style_address) +
                       "\"");
    html.close();
}

void write_fact(Html& html, const char* name, const std::string& value) {
    if (value.empty())
        return;
    html.open("div").element("dt", name).element("dd", value).close();
}

std::string unit_words(PrintStyle style) {
    const std::string inch = "inch, fractions to 1/" + std::to_string(style.denominator);
    if (style.both)
        return style.system == UnitSystem::inch ? inch + " (millimetre)"
                                                : "millimetre (" + inch + ")";
    return style.system == UnitSystem::inch ? inch : "millimetre";
}

void write_header(Html& html, const SheetInputs& in) {
    html.open("header");
    write_code(html, in);
    html.element("h1", in.job.name.empty() ? "Worksheet" : in.job.name);
    if (in.job.invented || in.shop.machine.invented)
        html.element("p",
                     in.job.invented && in.shop.machine.invented
                         ? "Invented: this job and this machine are an example. Nobody ordered "
                           "the parts and no such machine is built."
                     : in.job.invented ? "Invented: this job is an example, not an order."
                                       : "Invented: no such machine is built.",
                     "class=\"invented\"");
    html.open("dl", "class=\"facts\"");
    write_fact(html, "Due", in.job.due);
    write_fact(html, "Shop", in.shop.name);
    write_fact(html, "Machine", in.shop.machine.name);
    write_fact(html, "Pieces", std::to_string(in.plan.pieces));
    write_fact(html, "Strokes", std::to_string(in.plan.strokes));
    write_fact(html, "Mass of all blanks", quantity::print(in.plan.mass, in.style));
    write_fact(html, "Time of the set-ups", plan::time_words(plan::job_time(in.plan, in.shop)));
    write_fact(html, "Lifting", plan::handling_words(in.plan, in.shop, in.style));
    write_fact(html, "Units", unit_words(in.style));
    html.close();
    if (!in.job.note.empty())
        html.element("p", in.job.note);
    html.element("p", safety_notice(), "class=\"safety\"");
    html.close();
}

/// Verdict of cord and generator; their workings stand with the others.
void write_power(Html& html, const SheetInputs& in) {
    html.open("section").element("h2", "Power at the machine").open("ul", "class=\"cautions\"");
    for (const plan::PowerLine& line : plan::check_power(in.shop.supply))
        html.element("li", line.words + (line.warning ? ": take care." : "."));
    html.close().close();
}

void write_cautions(Html& html, const SheetInputs& in, std::optional<equipment::Work> only) {
    html.open("section").element("h2", "Cautions for this work").open("ul", "class=\"cautions\"");
    for (const CautionLine& line : cautions({in.plan, in.job, in.shop, in.catalog}, only))
        html.open("li")
            .text(line.words + " ")
            .element("span", line.anchor, "class=\"anchor\"")
            .close();
    html.close().close();
}

std::string foot_words(const SheetInputs& in) {
    std::string words = in.job.name.empty() ? "worksheet" : in.job.name + " · worksheet";
    for (const std::string& more : {in.options.date, in.options.program})
        if (!more.empty())
            words += " · " + more;
    if (!in.options.code.empty())
        words += " · job " + in.options.code;
    return words;
}

void write_kinds(Html& html, const SheetInputs& in) {
    const SheetKinds& kinds = in.options.kinds;
    if (kinds.summary) {
        write_summary(html, in);
        write_not_made(html, in);
    }
    if (kinds.tools) {
        write_shopping(html, in);
        write_tools(html, in);
    }
    // A cutting list goes to the shear alone: it takes its own cautions with it.
    if (kinds.set_ups)
        write_cautions(html, in, std::nullopt);
    else if (kinds.cutting)
        write_cautions(html, in, equipment::Work::cut);
    if (kinds.set_ups) {
        write_power(html, in);
        write_at_once(html, in);
        write_trials(html, in);
    }
    if (kinds.cutting)
        write_stock(html, in);
    if (kinds.set_ups)
        write_set_ups(html, in);
    if (kinds.parts) {
        write_layouts(html, in);
        write_parts(html, in);
    }
    if (kinds.workings)
        write_workings(html, in);
}

} // namespace

PrintStyle sheet_style(PrintStyle of_job, SheetUnits units) {
    if (units == SheetUnits::inch)
        of_job.system = UnitSystem::inch;
    if (units == SheetUnits::metric)
        of_job.system = UnitSystem::metric;
    of_job.both = units == SheetUnits::both;
    return of_job;
}

std::string worksheet_html(const plan::Plan& plan,
                           const job::Job& job,
                           const equipment::Shop& shop,
                           const job::Catalog& catalog,
                           const SheetOptions& options) {
    const SheetInputs in{plan, job, shop, catalog, options, sheet_style(job.style, options.units)};
    Html html;
    html.markup("<!DOCTYPE html>\n").open("html", "lang=\"en\"");
    write_head(html, in);
    html.open("body", options.paper == Paper::letter ? "class=\"letter\"" : "class=\"a4\"");
    // First in the source, last on every printed page: a footer group repeats.
    html.element("div", foot_words(in), "class=\"running\" aria-hidden=\"true\"");
    html.open("div", "class=\"sheet\"");
    write_header(html, in);
    html.open("main");
    write_kinds(html, in);
    html.close().close().close().close();
    return html.take();
}

} // namespace treadle::sheet
