#include "paper_text.h"

#include "base/text.h"
#include "sheet/template.h"

#include <array>
#include <cmath>

#include "kept_text.h"

namespace treadle::web {

namespace {

constexpr const char* k_title = "treadle-paper 1";
constexpr KeptWord<bool> k_papers[] = {{"letter", true}, {"a4", false}};
constexpr KeptWord<int> k_units[] = {{"job", 0}, {"inch", 1}, {"metric", 2}, {"both", 3}};
constexpr std::array<const char*, views::k_sheet_kinds> k_kinds = {
    "summary", "tools", "set-ups", "cutting", "parts", "workings"};

/// "1.0081 0.9952 Office": the name last, for it may hold blanks.
void take_printer(std::string_view text, views::PaperWishes& wishes) {
    const std::size_t first = text.find(' ');
    const std::size_t second = text.find(' ', first == std::string_view::npos ? first : first + 1);
    if (second == std::string_view::npos || wishes.printers.size() >= views::k_most_printers)
        return;
    const auto x = base::read_number(text.substr(0, first));
    const auto y = base::read_number(text.substr(first + 1, second - first - 1));
    if (x && y && sheet::is_print_factor(*x) && sheet::is_print_factor(*y))
        wishes.printers.push_back({std::string(text.substr(second + 1)), *x, *y});
}

} // namespace

std::string paper_text(const views::PaperWishes& wishes) {
    std::vector<KeptLine> lines;
    if (wishes.chosen_paper)
        lines.push_back({"paper", word_of(k_papers, wishes.letter)});
    lines.push_back({"units", word_of(k_units, wishes.units)});
    for (int kind = 0; kind < views::k_sheet_kinds; ++kind)
        if (!wants(wishes, static_cast<views::SheetKind>(kind)))
            lines.push_back({"without", k_kinds[static_cast<std::size_t>(kind)]});
    for (const views::MeasuredPrinter& printer : wishes.printers)
        lines.push_back({"printer",
                         base::write_short(printer.x, 6) + " " + base::write_short(printer.y, 6) +
                             " " + printer.name});
    if (wishes.printer >= 0)
        lines.push_back({"in-use", std::to_string(wishes.printer)});
    return write_lines(k_title, lines);
}

std::optional<views::PaperWishes> read_paper_text(std::string_view text) {
    const auto lines = read_lines(k_title, text);
    if (!lines)
        return std::nullopt;
    views::PaperWishes wishes;
    for (const KeptLine& line : *lines) {
        if (line.name == "paper") {
            take_word(k_papers, line.value, wishes.letter);
            wishes.chosen_paper = true;
        } else if (line.name == "units") {
            take_word(k_units, line.value, wishes.units);
        } else if (line.name == "printer") {
            take_printer(line.value, wishes);
        } else if (line.name == "in-use") {
            const auto index = base::read_number(line.value);
            if (index && *index >= 0 && *index < static_cast<double>(wishes.printers.size()))
                wishes.printer = static_cast<int>(*index);
        } else if (line.name == "without") {
            for (unsigned kind = 0; kind < k_kinds.size(); ++kind)
                if (line.value == k_kinds[kind])
                    wishes.kinds &= ~(1U << kind);
        }
    }
    return wishes;
}

} // namespace treadle::web
