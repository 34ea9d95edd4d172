// Who does which set-up when two or more work at the machine: a row for every time somebody begins.

#include "plan/at_once.h"
#include "sheet/worksheet_parts.h"

#include <iterator>
#include <set>

namespace treadle::sheet {

namespace {

std::string station_name(const SheetInputs& in, int station) {
    return station == plan::k_none
               ? "no station"
               : in.shop.machine.stations[static_cast<std::size_t>(station)].name;
}

/// What one person does from a time on.
std::string cell(const SheetInputs& in, const plan::AtOnce& shared, int lane, double from) {
    for (const plan::LaneRun& run : shared.lanes.runs) {
        if (run.lane != lane || run.start > from || run.finish <= from)
            continue;
        const std::string set_up = "Set-up " + std::to_string(run.task + 1);
        if (run.start < from)
            return set_up + " goes on";
        const plan::SetUp& planned = in.plan.order[static_cast<std::size_t>(run.task)];
        std::string words = set_up + ", " + station_name(in, planned.tools.station) + ", to " +
                            plan::lane_words(shared, run.finish);
        if (run.waits > 0.0)
            words += "; waits " + plan::lane_words(shared, run.waits) + " for parts";
        return words;
    }
    return "–";
}

std::string pairs_words(const SheetInputs& in, const plan::AtOnce& shared) {
    if (shared.stations.empty())
        return "No two stations of this work may run at once: one works, the other hands on.";
    std::string words;
    for (const auto& [a, b] : shared.stations)
        words += (words.empty() ? "May run at once: " : "; ") + station_name(in, a) + " with " +
                 station_name(in, b);
    return words + ". No other pair.";
}

} // namespace

void write_at_once(Html& html, const SheetInputs& in) {
    if (in.shop.machine.operators < 2 || in.plan.order.size() < 2)
        return;
    const plan::AtOnce shared = plan::at_once(in.plan, in.shop);
    html.open("section").element("h2", "Who does what");
    html.element("p", plan::at_once_words(shared) + ".");
    html.element("p", pairs_words(in, shared));
    html.element("p", plan::at_once_caution(), "class=\"safety\"");
    static constexpr const char* k_heads[] = {
        "From", "Operator 1", "Operator 2", "Operator 3", "Operator 4"};
    static_assert(std::size(k_heads) == plan::k_most_lanes + 1);
    html.open_table("Set-ups side by side, each worked through in the order of its steps",
                    std::vector<const char*>(k_heads, k_heads + shared.people + 1));
    std::set<double> times;
    for (const plan::LaneRun& run : shared.lanes.runs)
        times.insert(run.start);
    for (const double from : times) {
        html.open("tr").element("th", plan::lane_words(shared, from), "scope=\"row\"");
        for (int lane = 0; lane < shared.people; ++lane)
            html.element("td", cell(in, shared, lane, from));
        html.close();
    }
    html.close_table().close();
}

} // namespace treadle::sheet
