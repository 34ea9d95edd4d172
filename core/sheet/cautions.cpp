// The safety notice, and of the catalogue's cautions those that a plan's own work calls for.

#include "sheet/worksheet.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

using equipment::Caution;
using equipment::CautionCase;

constexpr const char* k_tool_change = "tool-change";

struct WorkOf {
    equipment::Work operator()(const job::Cut&) const { return equipment::Work::cut; }
    equipment::Work operator()(const job::Punch&) const { return equipment::Work::punch; }
    equipment::Work operator()(const job::Notch&) const { return equipment::Work::notch; }
    equipment::Work operator()(const job::Bend&) const { return equipment::Work::bend; }
    equipment::Work operator()(const job::Saddle&) const { return equipment::Work::saddle; }
};

CautionCase case_of(const CautionInputs& in, const plan::SetUp& set_up, const plan::Step& step) {
    const job::Part& part = *in.plan.parts[static_cast<std::size_t>(step.part)]->part;
    CautionCase at;
    at.work = std::visit(WorkOf{}, part.operations[static_cast<std::size_t>(step.operation)]);
    if (const Grade* grade = job::find_grade(in.job, in.catalog, part.grade))
        at.metal = grade->family;
    const equipment::Machine& machine = in.shop.machine;
    const plan::Tooling& tools = set_up.tools;
    if (tools.station != plan::k_none)
        at.station = machine.stations[static_cast<std::size_t>(tools.station)].kind;
    if (tools.attachment != plan::k_none)
        at.attachment = machine.attachments[static_cast<std::size_t>(tools.attachment)].kind;
    return at;
}

/// Rows of the table that any of these cases calls for, in the table's order.
std::vector<CautionLine> lines_for(const CautionInputs& in, const std::vector<CautionCase>& cases) {
    std::vector<CautionLine> lines;
    for (const Caution& row : in.catalog.cautions) {
        const bool called = std::any_of(cases.begin(), cases.end(), [&](const CautionCase& at) {
            return equipment::applies(row, at);
        });
        if (called)
            lines.push_back({row.words, equipment::anchor_words(row)});
    }
    return lines;
}

void add_cases(const CautionInputs& in,
               const plan::SetUp& set_up,
               std::vector<CautionCase>& cases) {
    for (const plan::Step& step : set_up.steps)
        cases.push_back(case_of(in, set_up, step));
}

} // namespace

const char* safety_notice() {
    return "The machine's manual, local codes and a competent person decide. All figures here are "
           "estimates: check the first piece before making the rest, and stop when anything is "
           "not as expected.";
}

const char* manual_decides() {
    return "The machine's manual, local codes and a competent person decide.";
}

std::string tool_change_caution(const job::Catalog& catalog) {
    for (const Caution& row : catalog.cautions)
        if (row.id == k_tool_change)
            return row.words;
    return k_cautions_missing;
}

std::vector<CautionLine> set_up_cautions(const CautionInputs& in, const plan::SetUp& set_up) {
    if (in.catalog.cautions.empty())
        return {{k_cautions_missing, ""}};
    std::vector<CautionCase> cases;
    add_cases(in, set_up, cases);
    return lines_for(in, cases);
}

std::vector<CautionLine> cautions(const CautionInputs& in, std::optional<equipment::Work> only) {
    if (in.catalog.cautions.empty())
        return {{k_cautions_missing, ""}};
    std::vector<CautionLine> lines;
    for (const Caution& row : in.catalog.cautions)
        if (row.general && in.shop.machine.operators >= row.least_operators)
            lines.push_back({row.words, equipment::anchor_words(row)});
    std::vector<CautionCase> cases;
    for (const plan::SetUp& set_up : in.plan.order)
        add_cases(in, set_up, cases);
    if (only)
        cases.erase(std::remove_if(cases.begin(),
                                   cases.end(),
                                   [&](const CautionCase& at) { return at.work != *only; }),
                    cases.end());
    for (CautionLine& line : lines_for(in, cases))
        lines.push_back(std::move(line));
    return lines;
}

} // namespace treadle::sheet
