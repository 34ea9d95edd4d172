// The plan as a table for a spreadsheet: RFC 4180, and no cell that a spreadsheet would run.

#include "plan/words.h"
#include "sheet/worksheet.h"

#include <vector>

namespace treadle::sheet {

namespace {

void add_cell(std::string& out, const std::string& value, bool last) {
    // A leading sign of a formula gets a quote before it, so that it stays text.
    const bool formula = !value.empty() &&
                         std::string_view("=+-@\t\r").find(value.front()) != std::string_view::npos;
    const std::string cell = formula ? "'" + value : value;
    if (cell.find_first_of(",\"\r\n") == std::string::npos) {
        out += cell;
    } else {
        out += '"';
        for (const char c : cell) {
            if (c == '"')
                out += '"';
            out += c;
        }
        out += '"';
    }
    out += last ? "\r\n" : ",";
}

void add_row(std::string& out, const std::vector<std::string>& cells) {
    for (std::size_t i = 0; i < cells.size(); ++i)
        add_cell(out, cells[i], i + 1 == cells.size());
}

/// Number of the set-up of every operation of every part, zero for none.
std::vector<std::vector<int>> set_up_numbers(const plan::Plan& plan) {
    std::vector<std::vector<int>> numbers;
    for (const auto& part : plan.parts)
        numbers.emplace_back(part->operations.size(), 0);
    int number = 0;
    for (const plan::SetUp& set_up : plan.order) {
        ++number;
        for (const plan::Step& step : set_up.steps)
            numbers[static_cast<std::size_t>(step.part)][static_cast<std::size_t>(step.operation)] =
                number;
    }
    return numbers;
}

} // namespace

std::string
worksheet_csv(const plan::Plan& plan, const job::Job& job, const equipment::Shop& shop) {
    std::string out;
    add_row(out,
            {"Mark",
             "Count",
             "Section",
             "Grade",
             "Blank",
             "No.",
             "Operation",
             "Set-up",
             "Tools",
             "Verdict",
             "Margin"});
    const auto numbers = set_up_numbers(plan);
    for (std::size_t p = 0; p < plan.parts.size(); ++p) {
        const plan::PartPlan& part = *plan.parts[p];
        const std::string section = plan::section_title(part.part->section, job.style);
        const std::string blank = quantity::print(part.blank_length, job.style, Rounding::up);
        const std::string count = std::to_string(part.part->count);
        for (std::size_t i = 0; i < part.operations.size(); ++i) {
            const plan::OperationPlan& operation = part.operations[i];
            add_row(out,
                    {part.part->mark,
                     count,
                     section,
                     part.part->grade,
                     blank,
                     std::to_string(i + 1),
                     plan::operation_title(*part.part, i, job.style),
                     numbers[p][i] > 0 ? std::to_string(numbers[p][i]) : std::string(),
                     plan::tooling_words(operation.tools, shop, job.style),
                     plan::verdict_words(operation, job.style),
                     plan::with_names(plan::margin_words(operation, job.style), shop)});
        }
        if (part.operations.empty())
            add_row(out,
                    {part.part->mark,
                     count,
                     section,
                     part.part->grade,
                     blank,
                     "",
                     "",
                     "",
                     "",
                     plan::verdict_words(part, job.style),
                     ""});
    }
    return out;
}

} // namespace treadle::sheet
