// What to pull and buy, and every bar in cutting order with its running stops.

#include "plan/stock_words.h"
#include "sheet/stock_sheet.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

namespace {

void write_piece_cautions(Html& html, const SheetInputs& in, const plan::StockGroup& group) {
    for (const plan::StockPiece& piece : group.pieces) {
        const std::string caution = plan::piece_caution(piece);
        if (!caution.empty())
            html.element("p",
                         plan::piece_words(piece, in.plan, in.style) + ": " + caution +
                             ". It is in the list all the same.",
                         "class=\"small\"");
    }
}

void write_bar(Html& html,
               const SheetInputs& in,
               const plan::StockGroup& group,
               const plan::GroupPlan& planned,
               const plan::BarPlan& bar) {
    const plan::BarKind& kind = group.kinds[static_cast<std::size_t>(bar.kind)];
    html.open("tr").open("th", "scope=\"row\"").text(plan::bar_words(kind, in.style));
    if (bar.times > 1)
        html.element("div", std::to_string(bar.times) + " alike", "class=\"small\"");
    html.close().open("td");
    html.markup(to_svg(draw_bar(group,
                                bar,
                                in.plan,
                                quantity::one_system(in.style),
                                longest_bar(group, planned),
                                k_list_bar_box),
                       k_list_bar_box.width_mm,
                       k_list_bar_box.height_mm));
    for (const StopRun& run : running_stops(group, bar, in.plan, in.style))
        html.open("div").element("strong", run.words).text(": " + run.stops).close();
    html.close().element("td", plan::drop_words(group, bar, in.style)).close();
}

void write_group(Html& html,
                 const SheetInputs& in,
                 const plan::StockGroup& group,
                 const plan::GroupPlan& planned) {
    const PrintStyle style = in.style;
    html.open("section", "class=\"setup stock\"").element("h3", plan::stock_title(group, style));
    html.element("p", plan::proof_words(group, planned, style), "class=\"formula\"");
    if (group.problem)
        html.element("p", group.problem->detail);
    write_piece_cautions(html, in, group);
    if (planned.has_plan) {
        html.element("p", plan::parting_words(group, style) + ".");
        write_ticks(html,
                    in,
                    "pull/" + plan::stock_title(group, in.job.style),
                    plan::use_words(group, planned, style));
        html.element("p", plan::sums_words(planned.sums, style));
        html.open_table("Cutting list: stops run from the datum end of the bar",
                        {"Bar", "Pieces in cutting order, and their stops", "Left"},
                        "class=\"bars\"");
        for (const plan::BarPlan& bar : planned.bars)
            write_bar(html, in, group, planned, bar);
        html.close_table();
    }
    html.close();
}

} // namespace

void write_stock(Html& html, const SheetInputs& in) {
    const std::vector<plan::StockGroup> groups =
        plan::stock_groups(in.plan, in.job, in.shop, in.catalog);
    const plan::StockPlan stock =
        plan::stock_plan(groups, plan::stock_answers(groups, plan::k_sheet_work));
    const std::string others = plan::not_from_bars_words(in.plan);
    if (groups.empty() && others.empty())
        return;
    html.open("section").element("h2", "Bars to cut");
    html.element("p", plan::stock_words(groups, stock) + ".");
    if (!groups.empty())
        html.element("p", plan::sums_words(stock.sums, in.style));
    if (in.shop.machine.invented)
        html.element("p", "The rack and its prices are invented, as the machine is.");
    if (!others.empty())
        html.element("p", others + ".");
    for (std::size_t i = 0; i < groups.size(); ++i)
        write_group(html, in, groups[i], stock.groups[i]);
    html.close();
}

} // namespace treadle::sheet
