// The working sheets: every formula with its values, its range and its source.

#include "plan/explain.h"
#include "plan/words.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

namespace {

std::string meaning_of(const base::FormulaCard& card, const std::string& symbol) {
    for (const base::CardSymbol& known : card.symbols)
        if (symbol == known.symbol)
            return known.meaning;
    return "";
}

std::string
value_line(const Working& working, const quantity::WorkingValue& value, PrintStyle style) {
    const std::string meaning = meaning_of(*working.card, value.symbol);
    return value.symbol + " = " + quantity::print_working(value.value, style) +
           (meaning.empty() ? "" : ", " + meaning);
}

std::string result_line(const Working& working, PrintStyle style) {
    return working.result.symbol + " = " + quantity::print_working(working.result.value, style);
}

using WorkingList = std::vector<std::pair<std::string, Working>>;

/// The same formula with the same values stands once, for all the operations it is for.
void add_once(WorkingList& list, const std::string& where, Working working, PrintStyle style) {
    for (auto& [known_where, known] : list)
        if (known.card == working.card &&
            working_lines(known, style) == working_lines(working, style)) {
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
    const PrintStyle style = in.job.style;
    const base::FormulaCard& card = *working.card;
    html.open("tr").open("th", "scope=\"row\"");
    html.element("div", where).element("div", card.title, "class=\"small\"").close();
    html.open("td").element("div", card.expression, "class=\"formula\"");
    for (const quantity::WorkingValue& value : working.values)
        html.element("div", value_line(working, value, style), "class=\"small\"");
    html.close();
    html.open("td").element("strong", result_line(working, style));
    if (card.rounding[0] != '\0')
        html.element("div", std::string("rounding: ") + card.rounding, "class=\"small\"");
    html.close().open("td").element("div", card.validity);
    if (!working.note.empty())
        html.element("div", working.note);
    html.close().open("td").element("div", source_of(in, card));
    html.element("div", base::evidence_words(card.evidence), "class=\"small\"").close().close();
}

} // namespace

std::vector<std::string> working_lines(const Working& working, PrintStyle style) {
    const base::FormulaCard& card = *working.card;
    std::vector<std::string> lines{card.title, card.expression};
    for (const quantity::WorkingValue& value : working.values)
        lines.push_back(value_line(working, value, style));
    lines.push_back(result_line(working, style));
    if (card.rounding[0] != '\0')
        lines.push_back(std::string("Rounding: ") + card.rounding);
    lines.push_back(std::string("Holds for: ") + card.validity);
    if (!working.note.empty())
        lines.push_back("Note: " + working.note);
    lines.push_back(std::string("Source: ") + card.source);
    lines.push_back(std::string("Evidence: ") + base::evidence_words(card.evidence));
    return lines;
}

void write_workings(Html& html, const SheetInputs& in) {
    html.open("section", "class=\"workings\"").element("h2", "Working sheets");
    html.element("p",
                 "Forces are worked out with the strongest metal that the grade allows, or with "
                 "the certificate's strength where one was read.");
    for (const auto& part : in.plan.parts) {
        WorkingList list;
        for (Working& working : plan::explain_part(*part, in.job, in.shop, in.catalog))
            add_once(list, "Blank", std::move(working), in.job.style);
        for (std::size_t i = 0; i < part->operations.size(); ++i)
            for (Working& working : plan::explain_operation(*part, i, in.job, in.shop, in.catalog))
                add_once(list,
                         std::to_string(i + 1) + ". " +
                             plan::operation_title(*part->part, i, in.job.style),
                         std::move(working),
                         in.job.style);
        if (list.empty())
            continue;
        html.open_table("Working of " + part->part->mark,
                        {"For", "Formula and values", "Result", "Holds for", "Source"});
        for (const auto& [where, working] : list)
            write_working(html, in, where, working);
        html.close_table();
    }
    html.close();
}

} // namespace treadle::sheet
