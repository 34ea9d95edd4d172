#include "quantity/working_text.h"

#include <string_view>

namespace treadle::quantity {

namespace {

std::string meaning_of(const base::FormulaCard& card, std::string_view symbol) {
    for (const base::CardSymbol& known : card.symbols)
        if (symbol == known.symbol)
            return known.meaning;
    return "";
}

std::string equals(const WorkingValue& value, PrintStyle style) {
    return value.symbol + " = " + print_working(value.value, style);
}

} // namespace

WorkingText in_words(const Working& working, PrintStyle style) {
    const base::FormulaCard& card = *working.card;
    WorkingText text;
    text.title = card.title;
    text.expression = card.expression;
    for (const WorkingValue& value : working.values) {
        const std::string meaning = meaning_of(card, value.symbol);
        text.values.push_back(equals(value, style) + (meaning.empty() ? "" : ", ") + meaning);
    }
    text.result = equals(working.result, style);
    text.rounding = card.rounding;
    text.holds_for = card.validity;
    text.note = working.note;
    text.source = card.source;
    text.evidence = base::evidence_words(card.evidence);
    return text;
}

std::vector<std::string> working_lines(const Working& working, PrintStyle style) {
    WorkingText text = in_words(working, style);
    std::vector<std::string> lines{text.title, text.expression};
    lines.insert(lines.end(), text.values.begin(), text.values.end());
    lines.push_back(text.result);
    const auto add = [&lines](const char* what, const std::string& said) {
        if (!said.empty())
            lines.push_back(what + said);
    };
    add("Rounding: ", text.rounding);
    add("Holds for: ", text.holds_for);
    add("Note: ", text.note);
    add("Source: ", text.source);
    add("Evidence: ", text.evidence);
    return lines;
}

} // namespace treadle::quantity
