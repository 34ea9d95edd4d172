// Boxes to tick, and the first piece of a set-up: wanted, measured, initialled, held.

#include "base/text.h"
#include "plan/batches.h"
#include "plan/words.h"
#include "sheet/figures.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

void write_tick(Html& html,
                const SheetInputs& in,
                const std::string& key,
                const std::string& name) {
    const bool done = in.options.ticked && in.options.ticked(key);
    if (!in.options.live_ticks) {
        html.element("span", done ? "x" : "", "class=\"tick\"");
        return;
    }
    html.empty("input",
               "type=\"checkbox\" class=\"tick\" data-tick=\"" + base::escape_markup(key) +
                   "\" aria-label=\"" + base::escape_markup(name) + "\"" +
                   (done ? " checked" : ""));
}

void write_ticks(Html& html,
                 const SheetInputs& in,
                 const std::string& key,
                 const std::vector<std::string>& lines) {
    html.open("ul", "class=\"ticks\"");
    for (const std::string& line : lines) {
        html.open("li");
        write_tick(html, in, key + "/" + line, line);
        html.text(line).close();
    }
    html.close();
}

namespace {

constexpr const char* k_blank = "class=\"blank\"";

void write_measures(Html& html, const SheetInputs& in, const plan::Step& step) {
    const plan::PartPlan& part = *in.plan.parts[static_cast<std::size_t>(step.part)];
    const std::vector<plan::Measure> measures = plan::first_piece(part, step.operation);
    if (measures.empty())
        return;
    html.open("tr").row_mark(part.part->mark + ", " + std::to_string(step.operation + 1));
    html.open("td");
    for (const plan::Measure& measure : measures) {
        html.open("span", "class=\"measure\"").text(std::string(measure.what) + " ");
        html.element("strong", measure_value(measure, in.style)).element("span", "", k_blank);
        html.close();
    }
    html.close();
    html.open("td").element("span", "", "class=\"blank short\"").close().close();
}

} // namespace

void write_first_pieces(Html& html, const SheetInputs& in, const plan::SetUp& set_up, int number) {
    const std::string name = "set-up " + std::to_string(number);
    html.open_table("First pieces of " + name + ": wanted, and what was measured",
                    {"Mark", "Measure", "Initials"},
                    "class=\"checks\"");
    for (const plan::Step& step : set_up.steps)
        write_measures(html, in, step);
    html.close_table();
    html.open("p", "class=\"first\"");
    write_tick(html, in, "hold/" + std::to_string(number), "First pieces of " + name);
    html.element("strong", "Hold: ");
    html.text("the rest is made when every line above is in order. Released by: ");
    html.element("span", "", k_blank).close();
}

} // namespace treadle::sheet
