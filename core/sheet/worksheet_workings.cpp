// The working sheets: every formula with its values, its range and its source.

#include "plan/explain.h"
#include "plan/power_check.h"
#include "plan/settings.h"
#include "plan/words.h"
#include "quantity/working_text.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

namespace {

using WorkingList = std::vector<std::pair<std::string, Working>>;

/// The same formula with the same values stands once, for all the operations it is for.
void add_once(WorkingList& list, const std::string& where, Working working, PrintStyle style) {
    for (auto& [known_where, known] : list)
        if (known.card == working.card &&
            quantity::working_lines(known, style) == quantity::working_lines(working, style)) {
            if (known_where != where)
                known_where += "; " + where;
            return;
        }
    list.emplace_back(where, std::move(working));
}

std::string source_of(const SheetInputs& in, const base::FormulaCard& card) {
    const std::string title =
        in.options.source_title ? in.options.source_title(card.source) : std::string();
    return title.empty() ? std::string(card.source) : title;
}

void write_working(Html& html,
                   const SheetInputs& in,
                   const std::string& where,
                   const Working& working) {
    const quantity::WorkingText text = quantity::in_words(working, in.style);
    html.open("tr").open("th", "scope=\"row\"");
    html.element("div", where).element("div", text.title, "class=\"small\"").close();
    html.open("td").element("div", text.expression, "class=\"formula\"");
    for (const std::string& value : text.values)
        html.element("div", value, "class=\"small\"");
    html.close();
    html.open("td").element("strong", text.result);
    if (!text.rounding.empty())
        html.element("div", "rounding: " + text.rounding, "class=\"small\"");
    html.close().open("td").element("div", text.holds_for);
    if (!text.note.empty())
        html.element("div", text.note);
    html.close().open("td").element("div", source_of(in, *working.card));
    html.element("div", text.evidence, "class=\"small\"").close().close();
}

void write_list(Html& html,
                const SheetInputs& in,
                const std::string& title,
                const WorkingList& list) {
    if (list.empty())
        return;
    html.open_table(title, {"For", "Formula and values", "Result", "Holds for", "Source"});
    for (const auto& [where, working] : list)
        write_working(html, in, where, working);
    html.close_table();
}

/// What the ram is set to; the same setting in several set-ups stands once.
void write_setting_workings(Html& html, const SheetInputs& in) {
    WorkingList list;
    for (std::size_t i = 0; i < in.plan.order.size(); ++i)
        for (Working& working : plan::explain_settings(in.plan, in.plan.order[i], in.shop))
            add_once(list, "Set-up " + std::to_string(i + 1), std::move(working), in.style);
    write_list(html, in, "Working of the ram settings", list);
}

void write_power_workings(Html& html, const SheetInputs& in) {
    WorkingList list;
    for (plan::PowerLine& line : plan::check_power(in.shop.supply))
        for (Working& working : line.workings)
            add_once(list, line.words, std::move(working), in.style);
    write_list(html, in, "Working of the power supply", list);
}

} // namespace

void write_workings(Html& html, const SheetInputs& in) {
    html.open("section", "class=\"workings\"").element("h2", "Working sheets");
    html.element("p",
                 "Forces are worked out with the strongest metal that the grade allows, or with "
                 "the certificate's strength where one was read.");
    for (const auto& part : in.plan.parts) {
        WorkingList list;
        for (Working& working : plan::explain_part(*part, in.job, in.shop, in.catalog))
            add_once(list, "Blank", std::move(working), in.style);
        for (std::size_t i = 0; i < part->operations.size(); ++i)
            for (Working& working : plan::explain_operation(*part, i, in.job, in.shop, in.catalog))
                add_once(list,
                         std::to_string(i + 1) + ". " +
                             plan::operation_title(*part->part, i, in.style),
                         std::move(working),
                         in.style);
        write_list(html, in, "Working of " + part->part->mark, list);
    }
    write_setting_workings(html, in);
    write_power_workings(html, in);
    html.close();
}

} // namespace treadle::sheet
