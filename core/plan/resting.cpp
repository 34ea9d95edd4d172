// Where the metal lies during a stroke: what the shear can still hold, and what tips.

#include "plan/part_checks.h"
#include "plan/stock_list.h"

#include <cmath>

namespace treadle::plan {

namespace {

constexpr Length k_same_size = quantity::millimetres(0.005);

/// A bent part is cut as its blank, which is shorter than its legs together.
void hold_blank(OperationPlan& cut, Length least, Length blank) {
    for (Check& check : cut.checks)
        if (check.rule == Rule::least_piece && check.missing.empty())
            check = size_check(Rule::least_piece, least, blank);
}

/// What a bar of the rack has left after its last piece: that end is in the shear for the cut.
void check_bar_end(const Question& question, OperationPlan& cut, Length least, Length piece) {
    for (const equipment::StockBar& bar : question.shop.rack) {
        if (bar.grade != question.part.grade || !same_section(bar.section, question.part.section))
            continue;
        const double fit = std::floor(bar.length / piece + 1e-9);
        const Length left =
            bar.length - piece * std::min(fit, static_cast<double>(question.part.count));
        if (fit >= 1.0 && left > k_same_size && least - left > k_same_size)
            say_once(cut,
                     web_warning(Rule::bar_end,
                                 least,
                                 left,
                                 "The last cut of a bar leaves an end too short for the hold-down: "
                                 "cut one piece fewer from that bar, or saw the last one."));
    }
}

void check_cut(const Question& question, PartPlan& plan, std::size_t i, job::CutSide side) {
    OperationPlan& cut = plan.operations[i];
    if (cut.tools.station == k_none || side != job::CutSide::length)
        return;
    const auto& least =
        question.shop.machine.stations[static_cast<std::size_t>(cut.tools.station)].least_piece;
    if (!least || !(plan.blank_exact > Length{}))
        return;
    if (!question.part.legs.empty())
        hold_blank(cut, *least, plan.blank_exact);
    check_bar_end(question, cut, *least, plan.blank_length);
}

} // namespace

void check_resting(const Question& question, PartPlan& plan) {
    for (std::size_t i = 0; i < plan.operations.size(); ++i)
        if (const auto* cut = std::get_if<job::Cut>(&question.part.operations[i]))
            check_cut(question, plan, i, cut->side);
    for (const Mark& mark : plan.marks) {
        if (mark.kind == Mark::Kind::bend_line)
            continue;
        OperationPlan& operation = plan.operations[static_cast<std::size_t>(mark.operation)];
        if (operation.tools.station == k_none)
            continue;
        const auto& table =
            question.shop.machine.stations[static_cast<std::size_t>(operation.tools.station)]
                .table_length;
        if (!table)
            continue;
        // A uniform piece balances at its middle, and the tool stands in the middle of the table.
        const Length middle = plan.blank_length * 0.5;
        const Length off = mark.x > middle ? mark.x - middle : middle - mark.x;
        if (off * 2.0 > *table)
            say_once(operation,
                     web_warning(Rule::tipping,
                                 off * 2.0,
                                 *table,
                                 "More of the piece hangs over than rests on the table: it tips. "
                                 "Set a stand under the far end before the stroke."));
    }
}

} // namespace treadle::plan
